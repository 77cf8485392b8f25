/** What a workbook holds beside its tables, and what headings and totals say of it: told, and never counted in silence. */
import { describe, expect, it } from "vitest";
import { readSeason } from "../../src/workbook/readSeason";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { entries, opened } from "../support/xlsx/opened";
import { newWorkbook } from "../../src/host/embedded";
import { inputTables } from "../../src/workbook/templates";
import { contentFromText } from "../support/tableFromText";

const farm = `
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
`;
const codes = (text: string) => seasonReport(contentFromText(text)).problems.map(({ code }) => code);
const costs = "Other costs\n| Item | Kind | Amount | Basis |\n";

describe("rows right under a table", () => {
  it("are told in a workbook as it is filed, as many as there are up to the first blank row", async () => {
    const workbook = newWorkbook();
    await workbook.makeTables(inputTables.filter(({ name }) => name === "Crops" || name === "Fields" || name === "Other_costs"));
    await workbook.addRows("Crops", [
      new Map<string, string | number>([
        ["Crop", "Corn"],
        ["Expected price", 4],
      ]),
    ]);
    await workbook.addRows("Fields", [
      new Map<string, string | number>([
        ["Field", "Alder"],
        ["Crop", "Corn"],
        ["Acres", 100],
        ["Yield goal", 200],
      ]),
    ]);
    await workbook.addRows("Other_costs", [
      new Map<string, string | number>([
        ["Item", "Office"],
        ["Kind", "overhead"],
        ["Amount", 4820],
        ["Basis", "whole farm"],
      ]),
    ]);
    // A row is left free and filled last: the table grows over it and stops before what stands there already.
    workbook.setCells(
      "Other costs",
      entries({
        A4: "Wages",
        B4: "overhead",
        C4: 3280,
        D4: "whole farm",
        A5: "Tax",
        B5: "overhead",
        C5: 4820,
        D5: "whole farm",
        A7: "apart",
        B7: "overhead",
      }),
    );
    workbook.setCells("Other costs", entries({ A3: "Fees", B3: "overhead", C3: 20, D3: "whole farm" }));
    const report = seasonReport(await opened(workbook.save()).read());
    // 4,840 of 12,940 is counted.
    expect(report.season.otherCosts.map(({ item }) => item)).toEqual(["Office", "Fees"]);
    expect(report.problems.filter(({ code }) => code === "rows-below")).toMatchObject([{ at: { table: "Other costs" }, found: "2" }]);
    expect(reportJson(report).complete).toBe(false);
  });

  it("are told after a blank row too, where they have all that an entry needs", () => {
    const report = seasonReport(
      contentFromText(`${farm}> | | | | |\n> | | | | |\n> | Birch | Corn | 42 | 190 |\n> | Cedar | Corn | '76 | 190 |`),
    );
    // 100 of 218 acres are counted.
    expect(report.problems.filter(({ code }) => code === "rows-below")).toMatchObject([
      { at: { table: "Fields", row: 4 }, found: "2", like: "3 rows below" },
    ]);
    expect(report.placeOf(report.problems.find(({ code }) => code === "rows-below")!.at)).toEqual({ sheet: "Fields", row: 4, column: 0 });
    expect(reportJson(report).complete).toBe(false);
  });

  it("are to check after a blank row where they may be something else, and nothing where they are words", () => {
    const below = (...rows: readonly string[]) =>
      codes(`${farm}${rows.map((row) => `> ${row}\n`).join("")}`).filter((code) => code.startsWith("rows-"));
    expect(below("| | | | |", "| acres of the neighbour | | 42 | |")).toEqual(["rows-near"]);
    expect(below("| | | | |", "| Field | Crop | Acres | Goal |")).toEqual([]);
    // 100 acres and 42 under them are 142.
    expect(codes(`${farm}| Birch | Corn | 42 | 190 |\n> | | | 142 | |`).filter((code) => code.startsWith("rows-"))).toEqual([]);
    expect(codes(`${farm}| Birch | Corn | 42 | 190 |\n> | | | 143 | |`).filter((code) => code.startsWith("rows-"))).toEqual(["rows-near"]);
    expect(codes(`${farm}| Birch | Corn | 42 | 190 |\n> | all of it | | 142 | |`).filter((code) => code.startsWith("rows-"))).toEqual([
      "rows-near",
    ]);
  });

  it("are no fault where they are a total or a remark", () => {
    expect(codes(`${farm}${costs}| Office | overhead | 900 | whole farm |\n> | Total | | 900 | |\n> | as of March | | | |`)).not.toContain(
      "rows-below",
    );
  });
});

describe("a row of totals", () => {
  it.each(["Total", "TOTALS:", "Grand total", "Subtotal", "Corn subtotal", "Corn total", "Feb. total", "Sub-total for corn"])(
    "that says %s is told and adds no acres",
    (words) => {
      const report = seasonReport(contentFromText(`${farm}| ${words} | Corn | 142 | 190 |\n| Birch | Corn | 42 | 190 |`));
      expect(report.problems.map(({ code }) => code)).toContain("total-row");
      expect(report.figures.crops[0]!.area.toFixed()).toBe("142");
    },
  );

  it.each(["Totally new", "Total weed control", "Totals Farm"])("is not a field called %s", (name) => {
    expect(codes(`${farm}| ${name} | Corn | 42 | 190 |`)).not.toContain("total-row");
  });
});

describe("a row that adds up others without saying so", () => {
  const sums = (...fields: readonly string[]) =>
    codes(
      `Crops\n| Crop | Expected price |\n| Corn | 4 |\n` +
        `Fields\n| Field | Crop | Acres | Yield goal |\n` +
        `${fields.map((each) => `| ${each} | 190 |\n`).join("")}`,
    ).filter((code) => code.startsWith("sum-"));

  it("leaves no figure complete: 284 acres for 142", () => {
    const report = seasonReport(
      contentFromText(`${farm}| Birch | Corn | 42 | 190 |\n| All corn | Corn | 142 | |\n${costs}| Office | overhead | 900 | whole farm |`),
    );
    expect(report.problems.map(({ code, at }) => [code, at.row])).toContainEqual(["sum-row", 3]);
    expect(reportJson(report).complete).toBe(false);
  });

  it("is found after each group, over all groups, above the rows, and typed as text", () => {
    expect(
      sums(
        "A | Corn | 60",
        "B | Corn | 44",
        "Corn of both | Corn | 104",
        "C | Soy | 30",
        "D | Soy | 21",
        "Soy | Soy | 51",
        "Home | Corn | 155",
      ),
    ).toEqual(["sum-row", "sum-row", "sum-row"]);
    expect(sums("Corn | Corn | 104", "A | Corn | 60", "B | Corn | 44")).toEqual(["sum-row"]);
    expect(sums("A | Corn | 60.5", "B | Corn | 44", "C | Corn | 104.5 ac")).toEqual(["sum-row"]);
    expect(sums("A | Corn | '60.5", "B | Corn | 44", "C | Corn | '104.5")).toEqual(["sum-row"]);
  });

  it("is none where the field is named by other entries, or stands between the others", () => {
    const quarters =
      "Fields\n| Field | Crop | Acres | Yield goal |\n| A | Corn | 40 | 190 |\n| B | Corn | 40 | 190 |\n| C | Corn | 80 | 190 |\n";
    expect(codes(`Crops\n| Crop | Expected price |\n| Corn | 4 |\n${quarters}`)).toContain("sum-row");
    expect(
      codes(
        `Crops\n| Crop | Expected price |\n| Corn | 4 |\n${quarters}Operations\n| Field or Crop | Operation | Rate | Basis | Status ` +
          "|\n| C | Disking | 9 | per acre | plan |",
      ),
    ).not.toContain("sum-row");
    expect(sums("A | Corn | 40", "C | Corn | 80", "B | Corn | 40")).toEqual([]);
  });

  it("is to check where it is round money, and none where it is an item that is bought", () => {
    const other = (name: string, amount: number) =>
      codes(
        `${farm}${costs}| Office | overhead | 500 | whole farm |\n| Phone | overhead | 210 | whole farm |\n| Post | overhead | 100 ` +
          `| whole farm |\n| ${name} | overhead | ${amount} | whole farm |`,
      ).filter((code) => code.startsWith("sum-"));
    expect([other("Books", 810), other("All office", 810), other("Books", 811)]).toEqual([["sum-maybe"], ["sum-row"], []]);
    // Two parts and a round sum are chance in many a budget.
    expect(
      codes(
        `${farm}${costs}| Office | overhead | 600 | whole farm |\n| Phone | overhead | 600 | whole farm |\n| Books | overhead | ` +
          "1200 | whole farm |",
      ).filter((code) => code.startsWith("sum-")),
    ).toEqual([]);
    const bought = (item: string) =>
      codes(
        `${farm}Items\n| Item | Kind | Pack unit | Plan price per pack |\n| Oil | supplies | gal | 12 |\nPurchases\n| Date | Item | ` +
          "Quantity | Unit | Amount |\n| 2031-04-01 | Oil | 1 | gal | 12.34 |\n| 2031-04-02 | Oil | 1 | gal | 12.34 |\n| 2031-04-03 | " +
          `${item} | 2 | gal | 24.68 |`,
      ).filter((code) => code.startsWith("sum-"));
    expect([bought("Oil"), bought("Bills of spring")]).toEqual([[], ["sum-row"]]);
  });
});

describe("a table that is almost named as ours", () => {
  it.each([
    ["tblOperations", "table-almost"],
    ["Operation", "table-almost"],
    ["Operations2", "table-almost"],
    ["OtherCost", "table-almost"],
    ["Fields2", "table-beside"],
    ["Fields (2)", "table-beside"],
  ])("%s is told (%s)", (name, code) => {
    expect(codes(`${farm}${name}\n| Item | Amount |\n| Office | 900 |`)).toContain(code);
  });

  it.each(["Invoices", "Notes", "Land", "Operators' hours"])("%s is left alone", (name) => {
    expect(codes(`${farm}${name}\n| Item | Amount |\n| Office | 900 |`).filter((code) => code.startsWith("table-"))).toEqual([]);
  });
});

describe("a unit in a heading", () => {
  const acres = (heading: string, unit = "ac") =>
    codes(
      `Season\n| Setting | Value |\n| Area unit | ${unit} |\nCrops\n| Crop | Expected price |\n| Corn | 4 |\nFields\n| Field | Crop ` +
        `| ${heading} | Yield goal |\n| Alder | Corn | 100 | 200 |`,
    );

  it("is told where the season counts in another", () => {
    for (const heading of ["Hectares", "Area (ha)", "Acres (hectares)"]) expect(acres(heading)).toContain("heading-unit");
    expect(acres("Acres (ac)", "ha")).toContain("heading-unit");
    expect(
      codes(
        "Crops\n| Crop | Expected price (cents) |\n| Corn | 400 |\nFields\n| Field | Crop | Acres | Yield goal |\n| Alder | Corn | " +
          "100 | 200 |",
      ),
    ).toContain("heading-unit");
  });

  it("is told of yields, prices, stands, widths and money of any table", () => {
    const of = (table: string, heading: string, { unit = "ac", crop = "bu" } = {}) =>
      seasonReport(
        contentFromText(`Season
| Setting | Value |
| Area unit | ${unit} |
Crops
| Crop | Yield unit | Expected price |
| Corn | ${crop} | 4 |
Fields
| Field | Crop | Acres | Yield goal | ${table === "Fields" ? heading : "Remark"} |
| Alder | Corn | 100 | 200 | |
${table === "Fields" ? "" : `${table}\n| Item | ${heading} |\n`}`),
      )
        .problems.filter(({ code }) => code === "heading-unit")
        .map(({ like }) => like);
    expect(of("Fields", "Proven yield (t/ha)")).toEqual(["hectares, and the season counts in acres"]);
    expect(of("Fields", "Proven yield (t/ha)", { unit: "ha", crop: "t" })).toEqual([]);
    expect(of("Fields", "Proven yield (t/ha)", { unit: "ha", crop: "bu" })).toEqual(["t, and a crop is counted in bu"]);
    expect(of("Fields", "Proven yield (bushels per acre)")).toEqual([]);
    expect(of("Fields", "Row width (cm)")).toEqual(["centimetres, and it is read in inches"]);
    expect(of("Fields", "Row width (in)")).toEqual([]);
    expect(of("Machines", "Fuel per acre (litres)")).toEqual(["litres, and it is read in gallons"]);
    expect(of("Machines", "Fuel per acre (liters)")).toEqual(["litres, and it is read in gallons"]);
    expect(of("Machines", "Fuel per acre (gallons)")).toEqual([]);
    expect(of("Fields", "Target stand (1000/ac)")).toEqual(["thousands, and plants and seeds are read one by one"]);
    expect(of("Fields", "Rent per acre ($/ac)")).toEqual([]);
    expect(of("Fields", "Rent per acre ($/ha)")).toEqual(["hectares, and the season counts in acres"]);
    expect(of("Applications", "Rate (kg/ha)")).toEqual(["hectares, and the season counts in acres"]);
    expect(of("Purchases", "Amount ($000)")).toEqual(["thousands, and money is read in whole units of the currency"]);
    expect(of("Loans", "Balance (k$)")).toEqual(["thousands, and money is read in whole units of the currency"]);
    expect(of("Insurance", "Projected price (¢/bu)")).toEqual(["cents, and money is read in whole units of the currency"]);
    expect(of("Insurance", "Projected price ($/t)")).toEqual(["t, and a crop is counted in bu"]);
    expect(of("Machines", "Speed (km/h)")).toEqual(["kilometres an hour, and it is read in miles an hour"]);
  });

  it("keeps no column from being read in silence where it has no brackets", () => {
    const of = (heading: string) =>
      codes(
        `Crops\n| Crop | Expected price |\n| Corn | 4 |\nFields\n| Field | Crop | Acres | Yield goal | ${heading} |\n| Alder | Corn ` +
          "| 100 | 200 | 190 |",
      ).filter((code) => code.startsWith("column-"));
    expect([
      of("Proven yield bu/ac"),
      of("Proven yield (bu/ac)"),
      of("Rent per acre $/ac"),
      of("Rent per acre remark"),
      of("Row width remarks"),
    ]).toEqual([["column-unread"], [], ["column-unread"], [], []]);
  });

  it("is told of the grower's own headings where a range is matched: 100 ha are not 100 acres", () => {
    const matched = (heading: string, ours: string) =>
      readSeason({
        ...contentFromText(`Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Matches
| Table | Range | Column | Heading |
| Fields | Land!A1:D9 | Field | Name |
| Fields | Land!A1:D9 | Crop | Grows |
| Fields | Land!A1:D9 | ${ours} | ${heading} |`),
        ranges: new Map([
          [
            "Land!A1:D9",
            { name: "", headers: ["Name", "Grows", heading], rows: [["Alder", "Corn", 100]], body: { sheet: "Land", row: 1, column: 0 } },
          ],
        ]),
      })
        .problems.filter(({ code }) => code === "heading-unit")
        .map(({ at, found }) => [at.column, found]);
    expect(matched("Hectares", "Acres")).toEqual([["Acres", "Hectares"]]);
    expect(matched("Size in ha", "Acres")).toEqual([["Acres", "Size in ha"]]);
    expect(matched("Land rent cents/ac", "Rent per acre")).toEqual([["Rent per acre", "Land rent cents/ac"]]);
    expect(matched("Goal t/ac", "Yield goal")).toEqual([["Yield goal", "Goal t/ac"]]);
    for (const [heading, ours] of [
      ["My acres", "Acres"],
      ["Goal bu per acre", "Yield goal"],
      ["Farm C rent", "Rent per acre"],
      ["Row width in inches", "Row width"],
    ] as const)
      expect(matched(heading, ours)).toEqual([]);
  });

  it("is no fault where it says the same", () => {
    for (const [heading, unit] of [
      ["Acres", "ac"],
      ["Acres (ac)", "ac"],
      ["Hectares", "ha"],
      ["Area (ha)", "ha"],
      ["Acres", "ha"],
    ] as const)
      expect(acres(heading, unit)).not.toContain("heading-unit");
  });
});
