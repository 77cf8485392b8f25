import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import type { WorkbookContent } from "./cell";
import { problemCodes } from "./problem";
import { readSeason } from "./readSeason";

/** A season without a fault. Tables given replace those of their name, or are added. */
function workbook(tables: Readonly<Record<string, string>> = {}): WorkbookContent {
  const sound: Readonly<Record<string, string>> = {
    Season: `
      | Setting | Value |
      | Season year | 2031 |
      | Area unit | ac |`,
    Crops: `
      | Crop | Yield unit | Weight per bu | Standard moisture | Expected price |
      | Corn | bu | 56 | 15.5 | 4.20 |`,
    Fields: `
      | Field | Crop | Acres | Yield goal |
      | Alder | Corn | 100 | 200 |
      | Birch | Corn | 50 | 180 |`,
    Items: `
      | Item | Kind | Pack name | Pack size | Pack unit | Plan price per pack |
      | Seed | seed | bag | 80000 | seeds | 280 |
      | Urea | fertilizer | | | lb | 0.30 |`,
    Purchases: `
      | Date | Item | Quantity | Unit | Unit price | Amount |
      | 2031-02-01 | Urea | 10 | ton | 600 | 6000 |`,
    Applications: `
      | Field or Crop | Item | Rate | Rate unit | Acres | Status |
      | Corn | Seed | 34000 | seeds/ac | | plan |
      | Alder | Urea | 150 | lb/ac | | plan |`,
  };
  return contentFromText(
    Object.entries({ ...sound, ...tables })
      .map(([name, rows]) => `${name}\n${rows}`)
      .join("\n"),
  );
}

const faults = (tables: Readonly<Record<string, string>>) =>
  readSeason(workbook(tables)).problems.map(({ code, at }) => `${code} ${at.table} ${at.row ?? ""} ${at.column ?? ""}`.trim());

describe("a row", () => {
  it("tells all of its faults at once, each cell but once", () => {
    expect(
      faults({ Purchases: "| Date | Item | Quantity | Unit | Unit price | Freight |\n| x | #N/A | ten | scoop | abc | #REF! |" }),
    ).toEqual([
      "not-a-date Purchases 1 Date",
      "formula-error Purchases 1 Item",
      "not-a-number Purchases 1 Quantity",
      "not-a-number Purchases 1 Unit price",
      "formula-error Purchases 1 Freight",
    ]);
  });

  it("that is blank all through is no row, and one of spaces neither", () => {
    const { season, problems } = readSeason(
      workbook({
        Fields:
          "| Field | Crop | Acres | Yield goal |\n| Alder | Corn | 100 | 200 |\n| | | | |\n| '   | | | |\n| Birch | Corn | 50 | 180 |",
      }),
    );
    expect(problems).toEqual([]);
    expect(season.fields.map(({ name, source }) => `${name} ${source.row}`)).toEqual(["Alder 1", "Birch 4"]);
  });

  it("of totals that somebody typed below is told, and never counted", () => {
    expect(faults({ Fields: "| Field | Crop | Acres | Yield goal |\n| Alder | Corn | 100 | 200 |\n| Total | | 100 | |" })).toEqual([
      "total-row Fields 2",
    ]);
  });

  it("may give a credit without a quantity, next to the purchase that it belongs to", () => {
    expect(
      faults({
        Purchases:
          "| Date | Item | Quantity | Unit | Amount | Rebate |\n| 2031-02-01 | Urea | 10 | ton | 6000 | |\n| 2031-06-01 | Urea | 0 | " +
          "ton | 0 | 300 |",
      }),
    ).toEqual([]);
    expect(faults({ Purchases: "| Date | Item | Quantity | Unit | Amount | Rebate |\n| 2031-06-01 | Urea | 0 | ton | 0 | 300 |" })).toEqual(
      ["nothing-bought Purchases 1 Quantity"],
    );
  });
});

describe("the list of problems", () => {
  it("goes by our tables and their rows, whatever the order in the workbook", () => {
    expect(
      faults({
        Harvest: "| Field | Date | Weight or bushels | Moisture |\n| Alder | x | 900 | 15 |",
        Season: "| Setting | Value |\n| Season year | 2031 |\n| Curency | USD |",
        Purchases: "| Date | Item | Quantity | Unit | Amount |\n| 2013-02-01 | Urea | 10 | ton | 6000 |\n| x | Urea | 10 | ton | 6000 |",
        Items: "| Item | Kind | Pack unit | Plan price per pack |\n| Seed | seed | seeds | 1 |\n| Urea | fertilizer | lb | |",
      }),
    ).toEqual([
      "setting-unknown Season 2 Setting",
      "no-plan-price Items 2 Plan price per pack",
      "date-far Purchases 1 Date",
      "not-a-date Purchases 2 Date",
      "not-a-date Harvest 1 Date",
    ]);
  });

  it("has no code twice", () => expect(new Set(problemCodes).size).toBe(problemCodes.length));
});

describe("what a problem touches", () => {
  const touched = (tables: Readonly<Record<string, string>>) => {
    const { season, problems, problemsOf } = readSeason(workbook(tables));
    expect(problems).toHaveLength(1);
    return season.fields.map(({ name }) => name).filter((name) => problemsOf({ of: "field", name }).length > 0);
  };
  const birch = "| Field | Crop | Acres | Yield goal | Proven yield |\n| Alder | Corn | 100 | 200 | |\n| Birch | Corn | 50 | 180 | poor |";
  const office = (shared: string) => `| Item | Kind | Amount | Basis | Shared over |\n| Office | overhead | 900 | whole farm | ${shared} |`;

  it("is its own field where costs are shared by acres, and all where they are shared by revenue", () => {
    expect(touched({ Fields: birch, "Other costs": office("all") })).toEqual(["Birch"]);
    expect(touched({ Fields: birch, "Other costs": office("all by revenue") })).toEqual(["Alder", "Birch"]);
  });

  it("is all fields where one is left out, because the others bear its part of what is shared", () => {
    expect(
      touched({ Fields: "| Field | Crop | Acres | Yield goal |\n| Alder | Corn | 100 | 200 |\n| Birch | Corn | many | 180 |" }),
    ).toEqual(["Alder"]);
  });

  it("is all fields where one is entered twice, for one of them may be a third", () => {
    expect(
      touched({
        Fields:
          "| Field | Crop | Acres | Yield goal |\n| Alder | Corn | 100 | 200 |\n| ALDER | Corn | 30 | 200 |\n| Birch | Corn | 50 | 180 |",
      }),
    ).toEqual(["Alder", "Birch"]);
  });

  it("is the field of an application and not the others that use the item", () => {
    const rows = (last: string) =>
      `| Field | Item | Rate | Rate unit | Status |\n| Alder | Urea | 100 | lb/ac | plan |\n| Birch | Urea | ${last} | lb/ac | plan |`;
    expect(touched({ Applications: rows("much") })).toEqual(["Birch"]);
  });

  it("is listed once for all subjects that it touches alike, in the order of the problems", () => {
    // A thousand rows of two items in turn, of units that nobody knows: both fields use both items.
    const rows = Array.from(
      { length: 1000 },
      (_, index) => `| 2031-02-01 | ${index % 2 === 0 ? "Urea" : "Seed"} | 10 | furlong | 6000 |`,
    ).join("\n");
    const { problems, problemsOf } = readSeason(
      workbook({
        Fields: "| Field | Crop | Acres | Yield goal |\n| Alder | Corn | 100 | 200 |\n| Birch | Corn | 50 | 180 |",
        Items: "| Item | Kind | Pack unit | Plan price per pack |\n| Seed | seed | seeds | 1 |\n| Urea | fertilizer | lb | 1 |",
        Applications: ["Alder", "Birch"]
          .flatMap((field) => ["Urea | 100 | lb/ac", "Seed | 9 | seeds/ac"].map((use) => `| ${field} | ${use} | plan |`))
          .join("\n")
          .replace(/^/, "| Field | Item | Rate | Rate unit | Status |\n"),
        Purchases: `| Date | Item | Quantity | Unit | Amount |\n${rows}`,
      }),
    );
    const alder = problemsOf({ of: "field", name: "Alder" });
    expect(alder).toEqual(problems.filter(({ code }) => code === "unknown-unit"));
    expect(alder).toHaveLength(1000);
    for (const of of [
      { of: "field", name: "Birch" },
      { of: "crop", name: "Corn" },
    ] as const)
      expect(problemsOf(of)).toBe(alder);
    expect(problemsOf({ of: "item", name: "Seed" })).toHaveLength(500);
  });
});

describe("a column of the grower's own", () => {
  it("is left alone, also where its heading is like one of ours that is there", () => {
    expect(
      faults({
        Fields:
          "| Field | Crop | Acres | Yield goal | Yield goals | Soil | Notes |\n| Alder | Corn | 100 | 200 | 210 | loam | x |\n| Birch " +
          "| Corn | 50 | 180 | | | |",
      }),
    ).toEqual([]);
  });
});

describe("a percentage", () => {
  it("is a part of one up to 1, and percent above it", () => {
    const share = (typed: string) =>
      readSeason(
        workbook({
          Fields:
            "| Field | Crop | Acres | Yield goal | Tenure | Operator share of crop % |\n| Alder | Corn | 100 | 200 | crop share | " +
            `${typed} |`,
        }),
      ).season.fields[0]!.operatorShare.toFixed();
    expect(["50", "50%", "0.5", "1", "1.5", "100", "100%", "0"].map(share)).toEqual(["0.5", "0.5", "0.5", "1", "0.015", "1", "1", "0"]);
  });

  it("is the same however a rate of interest is typed", () => {
    const rate = (typed: string) =>
      readSeason(
        workbook({ Season: `| Setting | Value |\n| Operating interest rate | ${typed} |\n| Interest months | 6 |` }),
      ).season.settings.operatingInterest?.rate.toFixed();
    expect(["8.5", "8.5%", "0.085"].map(rate)).toEqual(["0.085", "0.085", "0.085"]);
  });

  it("of interest is one percent where 1 is typed, and a part of one only up to 0.4", () => {
    const rate = (typed: string) =>
      readSeason(
        workbook({ Season: `| Setting | Value |\n| Operating interest rate | ${typed} |\n| Interest months | 6 |` }),
      ).season.settings.operatingInterest?.rate.toFixed();
    expect(["1", "1%", "1.5", "0.01", "0.4", "40", "100%"].map(rate)).toEqual(["0.01", "0.01", "0.015", "0.01", "0.4", "0.4", "1"]);
  });

  it("of interest between 0.4 and 1 is asked for with its sign, wherever a rate stands", () => {
    const asked = (tables: Parameters<typeof faults>[0]) => faults(tables).filter((fault) => fault.includes("rate-unclear")).length;
    const typed = (rate: string) => [
      asked({ Season: `| Setting | Value |\n| Operating interest rate | ${rate} |\n| Interest months | 6 |` }),
      asked({ Loans: `| Name | Kind | Balance | Rate |\n| Line | operating | 50000 | ${rate} |` }),
      asked({
        Changes: `| Change | Quadrant | Item | Quantity | Price | Interest rate |\n| Wheels | added costs | Pair | 1 | 300 | ${rate} |`,
      }),
      asked({
        Machines:
          "| Machine | List price | Years kept | Width | Speed | Labour per hour | Real interest rate |\n| Planter | 100000 | 10 | 30 " +
          `| 5 | 20 | ${rate} |`,
      }),
    ];
    expect(["0.41", "0.75", "0.99"].map(typed)).toEqual([
      [1, 1, 1, 1],
      [1, 1, 1, 1],
      [1, 1, 1, 1],
    ]);
    expect(["0.4", "0.75%", "75%", "1"].map(typed)).toEqual([
      [0, 0, 0, 0],
      [0, 0, 0, 0],
      [0, 0, 0, 0],
      [0, 0, 0, 0],
    ]);
  });
});

describe("the settings", () => {
  it("are those of the season and nothing else, whatever rows they came in", () => {
    const { settings } = readSeason(
      workbook({ Season: "| Setting | Value |\n| Operating interest rate | 8% |\n| Interest months | 6 |" }),
    ).season;
    expect(Object.keys(settings).sort()).toEqual(
      Object.keys(readSeason(workbook({ Season: "| Setting | Value |" })).season.settings).sort(),
    );
  });
});

describe("a workbook's own words", () => {
  it("may be spelled on either side of the Atlantic", () => {
    const { season, problems } = readSeason(
      workbook({
        Season: "| Setting | Value |\n| Labor per hour | 24 |",
        Items: "| Item | Kind | Pack unit | Plan price per pack |\n| Urea | Fertiliser | lb | 0.3 |\n| Seed | seed | seeds | 1 |",
        Operations: "| Field | Operation | Rate | Status | Kind |\n| Alder | Scouting | 5 | plan | Hired labor |",
      }),
    );
    expect(problems).toEqual([]);
    expect([season.settings.labourPerHour!.toFixed(), season.items[0]!.kind, season.operations[0]!.kind]).toEqual([
      "24",
      "fertilizer",
      "hired labour",
    ]);
  });

  it("give fuel a price per litre where areas are hectares, from the setting per gallon", () => {
    const { season } = readSeason(
      workbook({
        Season: "| Setting | Value |\n| Area unit | ha |\n| Fuel per gallon | 3.785411784 |",
        Machines: "| Machine | List price | Years kept | Width | Speed | Power |\n| Planter | 90000 | 10 | 12 | 8 | 150 |",
      }),
    );
    expect(season.machines![0]!.fuelPrice.toFixed()).toBe("1");
  });

  it("leave a month with its year to the year that is written", () => {
    const { season, problems } = readSeason(
      workbook({
        "Other costs":
          "| Item | Kind | Amount | Basis | Month |\n| A | overhead | 1 | whole farm | Nov 2030 |\n| B | overhead | 1 | whole farm | " +
          "3 |\n| C | overhead | 1 | whole farm | 2031-04-15 |",
      }),
    );
    expect(problems).toEqual([]);
    expect(season.otherCosts.map(({ paidOn }) => paidOn)).toEqual(["2030-11-01", "2031-03-01", "2031-04-15"]);
  });
});
