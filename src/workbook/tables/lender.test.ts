import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { readSeason } from "../readSeason";

const farm = "Crops\n| Crop | Expected price |\n| Corn | 4 |\nFields\n| Field | Crop | Acres | Yield goal |\n| Alder | Corn | 100 | 200 |\n";
const read = (table: string) => {
  const { season, problems } = readSeason(contentFromText(farm + table));
  return { season, faults: problems.filter(({ at }) => at.table === "Loans" || at.table === "Insurance").map(({ code, at, touches }) => `${code} ${at.column ?? ""} ${touches.map((subject) => ("name" in subject ? subject.name : subject.of)).join()}`) };
};
const loans = (...rows: readonly string[]) => read(`Loans\n| Name | Kind | Balance | Rate | Payment | Payments a year | Next due |\n${rows.join("\n")}`);
const insurance = (...rows: readonly string[]) => read(`Insurance\n| Crop | Form | Approved yield | Coverage | Projected price | Harvest price | Harvest price option | Price cap |\n${rows.join("\n")}`);

describe("the table Loans", () => {
  it("takes a loan for a term loan that is paid once a year unless it says otherwise", () => {
    const { season, faults } = loans("| Land | | 90000 | 6% | 9000 | | 2031-12-01 |", "| Planter | term | 50000 | 0.065 | 4500 | 2 | 2031-03-15 |");
    expect(faults).toEqual([]);
    expect(season.loans!.map(({ kind, balance, rate, payment, paymentsAYear, nextDue }) => [kind, ...[balance, rate, payment!, paymentsAYear].map(String), nextDue])).toEqual([
      ["term", "90000", "0.06", "9000", "1", "2031-12-01"], ["term", "50000", "0.065", "4500", "2", "2031-03-15"],
    ]);
  });

  it("asks a term loan for its payment and its day, and an operating loan for neither", () => {
    expect(loans("| Line | operating | 20000 | 8 | | | |")).toMatchObject({ faults: [], season: { loans: [{ kind: "operating", payment: null, nextDue: null }] } });
    expect(loans("| Land | term | 90000 | 6 | | | 2031-12-01 |").faults).toEqual(["payment-missing  farm"]);
    expect(loans("| Land | term | 90000 | 6 | 9000 | | |").faults).toEqual(["payment-missing  farm"]);
  });

  it("leaves a row out that lacks its name, its balance or its rate, and names what lacks", () => {
    const { season, faults } = loans("| | operating | 20000 | 8 | | | |", "| Line | operating | | 8 | | | |", "| Line | operating | 20000 | | | | |");
    expect(season.loans).toEqual([]);
    expect(faults.map((fault) => fault.split(" ")[1])).toEqual(["Name", "Balance", "Rate"]);
  });
});

describe("the table Insurance", () => {
  it("takes a policy for one of revenue, its harvest price counted up to twice the projected, unless it says otherwise", () => {
    const { season, faults } = insurance("| Corn | | 180 | 75% | 4.60 | | | |", "| corn | yield | 170 | 0.8 | 4.50 | 5.10 | yes | 1.5 |");
    expect(faults).toEqual([]);
    expect(season.insurance!.map(({ crop, form, approvedYield, coverage, projectedPrice, harvestPrice, harvestPriceOption, priceCap }) =>
      [crop, form, ...[approvedYield, coverage, projectedPrice, harvestPrice, priceCap].map(String), harvestPriceOption])).toEqual([
      ["Corn", "revenue", "180", "0.75", "4.6", "null", "2", false], ["Corn", "yield", "170", "0.8", "4.5", "5.1", "1.5", true],
    ]);
    expect(insurance("| Corn | | 180 | 75% | 4.60 | | no | |")).toMatchObject({ faults: [], season: { insurance: [{ harvestPriceOption: false }] } });
  });

  it("leaves a row out that lacks what a guarantee needs, and says which crop that touches", () => {
    const { season, faults } = insurance("| Corn | | | 75% | 4.60 | | | |", "| Corn | | 180 | | 4.60 | | | |", "| Corn | | 180 | 75% | | | | |", "| Oats | | 180 | 75% | 4.60 | | | |");
    expect(season.insurance).toEqual([]);
    expect(faults.map((fault) => fault.split(" ").slice(1).join(" "))).toEqual(["Approved yield Corn", "Coverage Corn", "Projected price Corn", "Crop farm"]);
  });

  it("is not read without its headings", () => {
    expect(read("Insurance\n| Crop | Approved yield | Coverage |\n| Corn | 180 | 75% |").faults).toEqual(["column-missing Projected price farm"]);
  });
});
