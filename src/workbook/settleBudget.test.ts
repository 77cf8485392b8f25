/** Budget lines all the way from the workbook: into every stage and the cash flow, or told and left out. */
import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { sum } from "../core/numbers/decimal";
import { paidAndCharged } from "../core/lender/paidAndCharged";
import { explain } from "./explain";
import { seasonReport } from "./report";
import { reportJson } from "./reportJson";
import { farmCashFlow } from "./sheets/lender/farmCashFlow";

const farm = (lines: string, more = "", crop = "| Corn | 4 | |", field = "| Alder | Corn | 100 | 200 | | |") =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
${more}
Crops
| Crop | Expected price | Per-unit selling cost |
${crop}
Fields
| Field | Crop | Acres | Yield goal | Rent per acre | Tenure |
${field}
Budget
| For | Kind | Amount | Basis | Month | All in |
${lines}
`),
  );
type Report = ReturnType<typeof farm>;
const outlook = ({ figures }: Report) =>
  Object.fromEntries([...figures.crops[0]!.outlook.costPerArea.byKind].map(([kind, value]) => [kind, value.toFixed()]));
const told = ({ problems }: Report) =>
  problems.map(
    ({ code, at, other }) => `${code} ${at.table} ${at.row ?? ""}${other === undefined ? "" : `: ${other.table} ${other.row ?? ""}`}`,
  );
const outOf = (report: Report) => {
  const flow = farmCashFlow(report)!;
  expect(
    paidAndCharged(report.season, report.figures, flow)
      .filter(({ charged, differences, paid }) =>
        sum([charged, ...Object.values(differences)])
          .minus(paid)
          .abs()
          .gt("1e-9"),
      )
      .map(({ group }) => group),
  ).toEqual([]);
  return sum(flow.months.map(({ moneyOut }) => moneyOut))
    .toDecimalPlaces(9)
    .toFixed();
};

describe("a season of budget lines alone", () => {
  const lines = `
| Corn | Seed | 120 | | | |
| all | fertilizer | 15000 | whole | April | |
| Alder | custom work | 60 | per acre | | |
| all | overhead | 30 | per acre | | |
| all | family living | 20000 | whole | | |`;
  it("has its cost and leaves nothing to fix: 120 + 150 + 60 are operating, with 30 cash, with 200 cash need", () => {
    const report = farm(lines);
    expect(told(report)).toEqual([]);
    expect(outlook(report)).toEqual({ seed: "120", fertilizer: "150", "custom work": "60", overhead: "30", "family living": "200" });
    const { layers } = report.figures.crops[0]!.outlook.costPerArea;
    expect([layers.operating, layers.cash, layers.cashNeed].map((each) => each.toFixed())).toEqual(["330", "360", "560"]);
  });
  it("is in the data, per acre and for the farm", () => {
    const {
      crops: [crop],
      fields: [field],
      farm: whole,
    } = reportJson(farm(lines));
    expect(field!.budget[0]).toEqual({ kind: "seed", budgeted: "120", rows: "0", soFar: "0", left: "120", outlook: "120" });
    expect(crop!.budget.map(({ kind, outlook: amount }) => `${kind} ${amount}`)).toEqual([
      "seed 120",
      "fertilizer 150",
      "custom work 60",
      "overhead 30",
      "family living 200",
    ]);
    // 80,000 of grain; the loan peaks before it is sold in November: 56,000 less the twelfths of November and December.
    expect([whole.income, whole.costs.cash, whole.leftOver.cash]).toEqual(["80000", "36000", "44000"]);
    expect(whole.loanPeak!.month).toBe("2031-10");
  });
  it("pays all of it in the year, once: 56,000, the fertilizer in April", () => {
    const report = farm(lines);
    expect(outOf(report)).toBe("56000");
    expect(
      farmCashFlow(report)!
        .months.find(({ month }) => month === "2031-04")!
        .flows.get("fertilizer")
        ?.toFixed(),
    ).toBe("-15000");
  });
});

describe("a budget line of what another table counts", () => {
  it.each([
    [
      "cash rent",
      "| all | cash rent | 200 | | | |",
      "",
      "| Corn | 4 | |",
      "| Alder | Corn | 100 | 200 | 210 | cash rent |",
      "Fields 1",
      "21000",
    ],
    ["haul", "| all | haul | 30 | | | |", "", "| Corn | 4 | 0.10 |", undefined, "Crops 1", "2000"],
    ["drying", "| all | drying | 20 | | | |", "| Drying charge per point | 0.04 |", undefined, undefined, "Season 2", "0"],
    [
      "operating interest",
      "| all | operating interest | 20 | | | |",
      "| Operating interest rate | 8% |\n| Interest months | 6 |",
      undefined,
      undefined,
      "Season 2",
      "0",
    ],
  ] as const)(
    "of the kind %s gives way in every stage and in the cash flow, and both places are named",
    (kind, line, more, crop, field, other, out) => {
      const report = farm(`${line}\n| all | supplies | 0 | | | |`, more, crop, field);
      expect(told(report).filter((each) => each.startsWith("cost-twice"))).toEqual([`cost-twice Budget 1: ${other}`]);
      expect(outOf(report)).toBe(out);
      expect(outlook(report)[kind] ?? "0").not.toBe(line.split(" | ")[2]);
    },
  );
  it("of term interest and principal gives way to a loan", () => {
    const report = farm(
      "| all | term principal | 50 | | | |\n| all | supplies | 10 | | | |\nLoans\n| Name | Kind | Balance | Rate | Payment | " +
        "Payments a year | Next due |\n| Land | term | 10000 | 5 | 1000 | 1 | 2031-03-01 |",
    );
    expect(told(report)).toContain("cost-twice Budget 1: Loans 1");
    expect(report.figures.crops[0]!.outlook.costPerArea.layers.cashNeed.toFixed()).toBe("20");
  });
  it("says which of the two counts", () => {
    const [problem] = farm("| all | haul | 20 | | | |", "", "| Corn | 4 | 0.10 |").problems.filter(({ code }) => code === "cost-twice");
    expect(explain(problem!).what).toContain("That counts, and this is left out.");
  });
});

describe("budget lines that say the same twice, or cannot be read", () => {
  it("are told: alike lines to check, a name that is nowhere and a basis of the other unit to fix", () => {
    expect(told(farm("| all | seed | 100 | | | |\n| all | seed | 100 | | | |"))).toEqual(["budget-twice Budget 2: Budget 1"]);
    expect(told(farm("| Aldr | seed | 100 | | | |\n| all | seed | 1 | | | |"))).toEqual(["unknown-name Budget 1"]);
    expect(told(farm("| all | seed | 100 | per hectare | | |\n| all | supplies | 1 | | | |")).length).toBe(1);
    expect(told(farm("| | seed | 100 | | | |\n| all | supplies | 1 | | | |"))).toEqual(["blank Budget 1"]);
  });
  it("add where both are meant: 100 and 100 are 200", () => {
    expect(outlook(farm("| all | seed | 100 | | | |\n| all | seed | 100 | | | |")).seed).toBe("200");
  });
});
