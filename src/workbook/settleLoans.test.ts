import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { explain } from "./explain";
import { toFix } from "./problem";
import { layers } from "../core/kinds";
import { sheetLines } from "../../tests/support/sheetLines";
import { ofLayer } from "./incompleteMark";
import { costPerAcreSheet } from "./sheets/costPerAcre";
import { seasonReport } from "./report";

const farm = `Season
| Setting | Value |
| Season year | 2031 |
Crops
| Crop | Expected price |
| Corn | 4 |
Fields
| Field | Crop | Acres | Yield goal | Land charge per acre |
| Alder | Corn | 100 | 200 | 50 |
`;
const report = (...tables: readonly string[]) => seasonReport(contentFromText(farm + tables.join("\n")));
const costs = (...rows: readonly string[]) => `Other costs\n| Item | Kind | Amount | Basis |\n${rows.join("\n")}`;
const loans = (...rows: readonly string[]) =>
  `Loans\n| Name | Kind | Balance | Rate | Payment | Payments a year | Next due |\n${rows.join("\n")}`;
const told = ({ problems }: ReturnType<typeof report>) =>
  problems.map((problem) =>
    `${problem.code} ${problem.at.table} ${problem.at.row}: ${problem.other?.table ?? ""} ${problem.other?.row ?? ""}`.trim(),
  );
const perAcre = ({ figures }: ReturnType<typeof report>) =>
  Object.fromEntries([...figures.crops[0]!.outlook.costPerArea.byKind].map(([kind, amount]) => [kind, amount.toFixed()]));

describe("term interest and principal among the other costs", () => {
  const entered = costs(
    "| Note | term interest | 7000 | whole farm |",
    "| Note | term principal | 130 | per acre |",
    "| Office | overhead | 5 | per acre |",
  );

  it("count where no loan is entered", () => {
    expect(told(report(entered))).toEqual([]);
    expect(perAcre(report(entered))).toMatchObject({ "term interest": "70", "term principal": "130" });
  });

  it("give way to a term loan, and both places are named", () => {
    // 8 % of 100,000 is 8,000 of the 20,000; 7,000 and 13,000 are left out.
    const both = report(entered, loans("| Note | term | 100000 | 8% | 20000 | 1 | 2031-03-01 |"));
    expect(told(both)).toEqual(["cost-twice Other costs 1: Loans 1", "cost-twice Other costs 2: Loans 1"]);
    expect(toFix(both.problems)).toHaveLength(2);
    expect(explain(both.problems[0]!).what).toBe(
      "Other costs, entry 1, Kind: term interest is entered here and counted by Loans, entry 1 as well. That counts, and this is left out.",
    );
    expect(perAcre(both)).toEqual({ overhead: "5", "land charge": "50", "term interest": "80", "term principal": "120" });
  });

  it("give way to an operating loan as far as it brings interest, and to no loan that is paid", () => {
    // 50,000 at 8 % all the year.
    const operating = report(entered, loans("| Line | operating | 50000 | 8% | | | |"));
    expect(told(operating)).toEqual(["cost-twice Other costs 1: Loans 1"]);
    expect(perAcre(operating)).toMatchObject({ "term interest": "40", "term principal": "130" });
    expect(told(report(entered, loans("| Line | operating | 0 | 8% | | | |")))).toEqual([]);
  });
});

describe("operating interest beside the rate that charges it", () => {
  const rate = farm.replace("| Season year | 2031 |", "| Season year | 2031 |\n| Operating interest rate | 8% |\n| Interest months | 6 |");
  const withRate = (...tables: readonly string[]) => seasonReport(contentFromText(rate + tables.join("\n")));
  const entered = costs("| Interest | operating interest | 900 | whole farm |", "| Twine | supplies | 100 | per acre |");

  it("gives way to it, and both places are named", () => {
    // 8 % of 100 an acre for half a year.
    const both = withRate(entered);
    expect(told(both)).toEqual(["cost-twice Other costs 1: Season 2"]);
    expect(perAcre(both)["operating interest"]).toBe("4");
    expect(told(report(entered))).toEqual([]);
    expect(perAcre(report(entered))["operating interest"]).toBe("9");
  });

  it("is told of an operation of that kind, which counts", () => {
    const work =
      "Operations\n| Field | Operation | Rate | Basis | Status | Kind | Date |\n| Alder | Bank | 3 | per acre | plan | operating " +
      "interest | 2031-05-01 |";
    expect(told(withRate(work))).toEqual(["cost-twice Operations 1: Season 2"]);
    expect(perAcre(withRate(work))["operating interest"]).toBe("3");
  });
});

describe("term interest of fields without a charge for capital", () => {
  it("is told with the fields that it leaves incomplete", () => {
    const two = farm.replace("| Alder | Corn | 100 | 200 | 50 |", "| Alder | Corn | 100 | 200 | 50 |\n| Birch | Corn | 100 | 200 | |");
    const both = seasonReport(
      contentFromText(two + costs("| Inputs | supplies | 580 | per acre |", "| Note | term interest | 20 | per acre |")),
    );
    expect(told(both)).toEqual(["capital-not-charged Other costs 2:"]);
    expect(
      [both.problemsOf({ of: "field", name: "Alder" }), both.problemsOf({ of: "field", name: "Birch" })].map(({ length }) => length),
    ).toEqual([0, 1]);
    // Operating, cash and cash need rest on nothing that is unsaid.
    expect(layers.filter((layer) => ofLayer(both.problemsOf({ of: "field", name: "Birch" }), layer).length > 0)).toEqual(["full"]);
    expect(sheetLines(costPerAcreSheet(both)).filter((line) => line.startsWith("Birch"))[0]).toContain("Birch (full cost incomplete)");
    // Alder: 600 less 20 and 50 of land. Birch: 600 with its 20.
    expect(both.figures.crops[0]!.fields.map(({ outlook: { budget } }) => budget.costPerArea.layers.full.toFixed())).toEqual([
      "630",
      "600",
    ]);
    const answered = seasonReport(
      contentFromText(
        two.replace("| Birch | Corn | 100 | 200 | |", "| Birch | Corn | 100 | 200 | 0 |") +
          costs("| Note | term interest | 20 | per acre |"),
      ),
    );
    expect(told(answered)).toEqual([]);
    expect(answered.figures.crops[0]!.fields[1]!.outlook.budget.costPerArea.layers.full.toFixed()).toBe("20");
  });
});
