import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { readSeason } from "../readSeason";

const farm =
  "Crops\n| Crop | Expected price |\n| Corn | 4 |\n| Barley | 3 |\nFields\n| Field | Crop | Acres | Yield goal |\n| Alder | Corn | " +
  "100 | 200 |\n";
const read = (table: string) => {
  const { season, problems } = readSeason(contentFromText(farm + table));
  return {
    season,
    faults: problems
      .filter(({ at }) => at.table === "Loans" || at.table === "Insurance")
      .map(
        ({ code, at, touches }) =>
          `${code} ${at.column ?? ""} ${touches.map((subject) => ("name" in subject ? subject.name : subject.of)).join()}`,
      ),
  };
};
/** The machines are charged, so that nothing more is to be said of term interest. */
const around =
  "Season\n| Setting | Value |\n| Season year | 2031 |\nOther costs\n| Item | Kind | Amount | Basis |\n| Combine | machine ownership " +
  "| 30 | per acre |\n";
const loans = (...rows: readonly string[]) =>
  read(`${around}Loans\n| Name | Kind | Balance | Rate | Payment | Payments a year | Next due | First due | For |\n${rows.join("\n")}`);
const insurance = (...rows: readonly string[]) =>
  read(
    "Insurance\n| Crop | Form | Approved yield | Coverage | Projected price | Harvest price | Harvest price option | Price cap |\n" +
      `${rows.join("\n")}`,
  );

describe("the table Loans", () => {
  it("takes a loan for a term loan that is paid once a year by all land unless it says otherwise", () => {
    const { season, faults } = loans(
      "| Land | | 90000 | 6% | 9000 | | 2031-12-01 | | |",
      "| Planter | term | 50000 | 0.065 | 4500 | 2 | 2031-03-15 | 2030-09-15 | alder |",
      "| Bin | term | 9000 | 5 | 700 | 12 | 2031-02-01 | | Corn |",
    );
    expect(faults).toEqual([]);
    expect(
      season.loans!.map(({ kind, balance, rate, payment, paymentsAYear, nextDue, firstDue, bornBy }) => [
        kind,
        ...[balance, rate, payment!, paymentsAYear].map(String),
        nextDue,
        firstDue,
        bornBy,
      ]),
    ).toEqual([
      ["term", "90000", "0.06", "9000", "1", "2031-12-01", null, null],
      ["term", "50000", "0.065", "4500", "2", "2031-03-15", "2030-09-15", { field: "Alder" }],
      ["term", "9000", "0.05", "700", "12", "2031-02-01", null, { crop: "Corn" }],
    ]);
  });

  it("asks a term loan for its payment and its day, and an operating loan for neither", () => {
    expect(loans("| Line | operating | 20000 | 8 | | | | | |")).toMatchObject({
      faults: [],
      season: { loans: [{ kind: "operating", payment: null, nextDue: null }] },
    });
    expect(loans("| Land | term | 90000 | 6 | | | 2031-12-01 | | |").faults).toEqual(["payment-missing  farm"]);
    expect(loans("| Land | term | 90000 | 6 | 9000 | | | | Alder |").faults).toEqual(["payment-missing  Alder"]);
    expect(loans("| Line | operating | 20000 | 8 | 4000 | | | | |").faults).toEqual(["payment-unread Payment farm"]);
    expect(loans("| Line | operating | 20000 | 8 | | | 2031-12-01 | | |").faults).toEqual(["payment-unread Next due farm"]);
    expect(loans("| Line | operating | 20000 | 8 | 0 | | | 2031-12-01 | |").faults).toEqual(["payment-unread First due farm"]);
    expect(loans("| Line | operating | 20000 | 8 | | 12 | | | |").faults).toEqual(["payment-unread Payments a year farm"]);
    expect(loans("| Line | operating | 20000 | 8 | | | | | |").faults).toEqual([]);
  });

  it("knows no day of a loan whose payments leave no whole months between", () => {
    const { season, faults } = loans("| Land | term | 90000 | 6 | 400 | 26 | 2031-12-01 | | |");
    expect(faults).toEqual(["not-in-list Payments a year farm"]);
    // 6 % of 90,000 count until it is put right.
    expect(season.loans).toMatchObject([{ nextDue: null }]);
  });

  it("is borne by all land where what it is for is nowhere, and tells so", () => {
    const { season, faults } = loans(
      "| Land | term | 90000 | 6 | 9000 | 1 | 2031-12-01 | | Birch |",
      "| Land | term | 90000 | 6 | 9000 | 1 | 2031-12-01 | | Barley |",
    );
    expect(faults).toEqual(["unknown-name For farm", "no-fields For Barley"]);
    expect(season.loans!.map(({ bornBy }) => bornBy)).toEqual([null, null]);
  });

  it("tells dates years away from the season and a first payment after the next", () => {
    const far = loans(
      "| A | term | 90000 | 6 | 9000 | 1 | 2034-01-01 | | |",
      "| B | term | 90000 | 6 | 9000 | 1 | 2028-12-31 | | |",
      "| C | term | 90000 | 6 | 9000 | 1 | 2033-12-31 | 2015-01-01 | |",
      "| D | term | 90000 | 6 | 9000 | 1 | 2033-01-01 | 2034-01-01 | |",
    );
    expect(far.faults).toEqual([
      "date-far Next due farm",
      "date-far Next due farm",
      "first-due-late First due farm",
      "date-far First due farm",
    ]);
  });

  it("takes a first payment that is the next one, and a first one before it", () => {
    const { season, faults } = loans(
      "| New | term | 90000 | 6 | 9000 | 1 | 2031-12-01 | 2031-12-01 | |",
      "| Old | term | 90000 | 6 | 9000 | 1 | 2031-12-01 | 2025-12-01 | |",
    );
    expect([faults, season.loans!.map(({ name }) => name)]).toEqual([[], ["New", "Old"]]);
  });

  it("leaves a row out that lacks its name, its balance or its rate, and names what lacks", () => {
    const { season, faults } = loans(
      "| | operating | 20000 | 8 | | | | | |",
      "| Line | operating | | 8 | | | | | |",
      "| Line | operating | 20000 | | | | | | |",
    );
    expect(season.loans).toEqual([]);
    expect(faults.map((fault) => fault.split(" ")[1])).toEqual(["Name", "Balance", "Rate"]);
  });
});

describe("the table Insurance", () => {
  it("takes a policy for one of revenue, its harvest price counted up to twice the projected, unless it says otherwise", () => {
    const { season, faults } = insurance("| Corn | | 180 | 75% | 4.60 | | | |");
    const other = insurance("| corn | yield | 170 | 0.8 | 4.50 | 5.10 | yes | 1.5 |");
    expect([...faults, ...other.faults]).toEqual([]);
    expect(
      [...season.insurance!, ...other.season.insurance!].map(
        ({ crop, form, approvedYield, coverage, projectedPrice, harvestPrice, harvestPriceOption, priceCap }) => [
          crop,
          form,
          ...[approvedYield, coverage, projectedPrice, harvestPrice, priceCap].map(String),
          harvestPriceOption,
        ],
      ),
    ).toEqual([
      ["Corn", "revenue", "180", "0.75", "4.6", "null", "2", false],
      ["Corn", "yield", "170", "0.8", "4.5", "5.1", "1.5", true],
    ]);
    expect(insurance("| Corn | | 180 | 75% | 4.60 | | no | |")).toMatchObject({
      faults: [],
      season: { insurance: [{ harvestPriceOption: false }] },
    });
  });

  it("takes one policy a crop, and tells a second one instead of leaving it aside in silence", () => {
    const { season, faults } = insurance("| Corn | | 180 | 75% | 4.60 | | | |", "| corn | | 180 | 80% | 4.60 | | | |");
    expect([season.insurance!.length, faults]).toEqual([1, ["duplicate-name Crop Corn"]]);
  });

  it("leaves a row out that lacks what a guarantee needs, and says which crop that touches", () => {
    const { season, faults } = insurance(
      "| Corn | | | 75% | 4.60 | | | |",
      "| Corn | | 180 | | 4.60 | | | |",
      "| Corn | | 180 | 75% | | | | |",
      "| Oats | | 180 | 75% | 4.60 | | | |",
    );
    expect(season.insurance).toEqual([]);
    expect(faults.map((fault) => fault.split(" ").slice(1).join(" "))).toEqual([
      "Approved yield Corn",
      "Coverage Corn",
      "Projected price Corn",
      "Crop farm",
    ]);
  });

  it("is not read without its headings", () => {
    expect(read("Insurance\n| Crop | Approved yield | Coverage |\n| Corn | 180 | 75% |").faults).toEqual([
      "column-missing Projected price farm",
    ]);
  });
});
