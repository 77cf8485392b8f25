/** Money that would be nothing, or go astray, without a word: fields without a cost, quantities of 0, prices and years that are slips. */
import { describe, expect, it } from "vitest";
import { placed } from "../../src/workbook/explain";
import { seasonReport } from "../../src/workbook/report";
import { contentFromText } from "../support/tableFromText";

const fields = (...rows: readonly string[]) => `Crops
| Crop | Expected price |
| Corn | 4 |
| Oats | 3 |
Fields
| Field | Crop | Acres | Yield goal | Rent per acre |
${rows.map((row) => `| ${row} |`).join("\n")}
Items
| Item | Kind | Pack name | Pack size | Pack unit | Plan price per pack |
| Urea | fertilizer | | | lb | 0.3 |
| Seed | seed | bag | 80000 | seeds | 280 |
| Grease | supplies | | | each | |
`;
const alder = "Alder | Corn | 100 | 200 | ";
const birch = "Birch | Oats | 50 | 80 | ";
const told = (workbook: string) => {
  const report = seasonReport(contentFromText(workbook));
  return { report, codes: report.problems.map(({ code, at }) => `${code} ${at.table} ${at.row ?? ""} ${at.column ?? ""}`.trim()) };
};
const office = (over: string) =>
  `Other costs\n| Item | Kind | Amount | Basis | Shared over |\n| Office | overhead | 0 | whole farm | ${over} |\n`;

describe("a field without any cost", () => {
  it("is incomplete on its row, and its crop and the farm with it, while another field is complete", () => {
    const { report, codes } = told(
      `${fields(alder, birch)}Operations\n| Field or Crop | Operation | Rate | Status |\n| Alder | Planting | 20 | plan |\n`,
    );
    expect(codes).toEqual(["cost-none Fields 2"]);
    const counts = (...subjects: readonly Parameters<typeof report.problemsOf>[0][]) =>
      subjects.map((subject) => report.problemsOf(subject).length);
    expect(counts({ of: "field", name: "Alder" }, { of: "field", name: "Birch" }, { of: "crop", name: "Oats" }, { of: "farm" })).toEqual([
      0, 1, 1, 1,
    ]);
    expect(placed(report.problems[0]!, report)).toBe(
      "Fields, entry 2 (A3): no cost at all is entered for Birch, so it would cost nothing.",
    );
  });

  it("is one thing to do where nothing is entered yet, and touches all but the changes, which add and take away", () => {
    const { report, codes } = told(
      `${fields(alder, birch)}Changes\n| Change | Quadrant | Item | Quantity | Price | Acres |\n| Pass | added costs | Scouting | 1 ` +
        "| 5 | 10 |\n",
    );
    expect(codes).toEqual(["cost-none Fields 1"]);
    expect(report.problems[0]!.found).toBe("Alder, Birch");
    expect([report.problemsOf({ of: "field", name: "Birch" }).length, report.problemsOf({ of: "change", name: "Pass" }).length]).toEqual([
      1, 0,
    ]);
  });

  it.each([
    ["a cost over all, even of 0", fields(alder, birch) + office("all")],
    ["a cost over each crop", `${fields(alder, birch)}${office("Corn")}| Office | overhead | 0 | whole farm | Birch |\n`],
    ["land alone", fields(`${alder}200`, `${birch}0`)],
    [
      "what is bought and charged by acres",
      `${fields(alder, birch)}Purchases\n| Date | Item | Quantity | Unit | Amount |\n| 2031-04-01 | Grease | 1 | each | 40 |\n`,
    ],
    ["a loan on all land", `${fields(alder, birch)}Loans\n| Name | Kind | Balance | Rate |\n| Line | operating | 100 | 8% |\n`],
  ])("is none with %s", (_, workbook) => {
    expect(told(workbook).codes.filter((code) => code.startsWith("cost-none"))).toEqual([]);
  });

  it("is one with as much as is bought of what is charged as it is used", () => {
    expect(
      told(`${fields(alder)}Purchases\n| Date | Item | Quantity | Unit | Amount |\n| 2031-04-01 | Urea | 100 | lb | 40 |\n`).codes,
    ).toEqual(["cost-none Fields 1"]);
  });
});

describe("a quantity of 0", () => {
  const bought = (...rows: readonly string[]) =>
    told(
      `${fields(alder)}${office("all")}Purchases\n| Date | Item | Quantity | Unit | Unit price | Amount | Freight | Rebate | Note ` +
        `|\n| 2031-04-01 | Urea | 100 | lb | | 30 | | | |\n${rows.map((row) => `| 2031-04-02 | ${row} |`).join("\n")}\n`,
    ).codes;

  it("with a unit price comes to nothing and is to fix", () => {
    expect(bought("Urea | 0 | lb | 0.3 | | | | ")).toEqual(["quantity-zero Purchases 2 Quantity"]);
  });
  it("with an amount alone goes on the rest of the item: told, unless a Note says what it is", () => {
    expect(bought("Urea | 0 | lb | | 12 | | | ")).toEqual(["money-alone Purchases 2 Quantity"]);
    expect(bought("Urea | 0 | lb | | 12 | | | Finance charge")).toEqual([]);
    expect(bought("Urea | 0 | lb | | 0 | | 5 | ")).toEqual([]);
  });
  it("of hours or of grain sold is to fix", () => {
    expect(
      told(
        `${fields(alder)}Operations\n| Field or Crop | Operation | Rate | Basis | Hours | Status |\n| Alder | Scouting | 30 | per ` +
          "hour | 0 | plan |\n",
      ).codes,
    ).toEqual(["quantity-zero Operations 1 Hours"]);
    expect(
      told(`${fields(alder)}${office("all")}Sales\n| Crop | Date | Quantity | Price |\n| Corn | 2031-09-01 | 0 | 4.5 |\n`).codes,
    ).toEqual(["quantity-zero Sales 1 Quantity"]);
  });
});

describe("a unit price", () => {
  const bought = (...rows: readonly string[]) =>
    told(
      `${fields(alder)}${office("all")}Purchases\n| Date | Item | Quantity | Unit | Unit price | Note |\n` +
        `${rows.map((row, index) => `| 2031-04-0${index + 1} | ${row} |`).join("\n")}\n`,
    );

  it("of twice the other lines' is told, in any unit, with both prices of a pack; just below twice is not", () => {
    const { report, codes } = bought("Seed | 10 | bags | 280 | ", "Seed | 4000000 | seeds | 0.007 | ");
    expect(codes).toEqual(["price-unlike Purchases 2 Unit price"]);
    expect(placed(report.problems[0]!, report)).toBe(
      "Purchases, entry 2, Unit price (E3): the line costs 560 per bag, and Purchases, entry 1 (A2) costs 280 per bag. Both are counted.",
    );
    expect(report.problemsOf({ of: "item", name: "Seed" })).toEqual([]);
    expect(bought("Seed | 10 | bags | 280 | ", "Seed | 10 | bags | 559.99 | ").codes).toEqual([]);
  });
  it("of half is told where the others agree, and of two lines the dearer", () => {
    expect(bought("Seed | 10 | bags | 140 | ", "Seed | 10 | bags | 280 | ", "Seed | 10 | bags | 281 | ").codes).toEqual([
      "price-unlike Purchases 1 Unit price",
    ]);
    expect(bought("Seed | 10 | bags | 280 | ", "Seed | 10 | bags | 140 | ").codes).toEqual(["price-unlike Purchases 1 Unit price"]);
  });
  it("is settled by a Note on its line, and is no matter of returns or of what is free beside what is free", () => {
    expect(bought("Seed | 10 | bags | 280 | ", "Seed | 10 | bags | 600 | Treated").codes).toEqual([]);
    expect(bought("Seed | 10 | bags | 280 | ", "Seed | -1 | bags | 100 | ").codes).toEqual([]);
    expect(bought("Seed | 10 | bags | 0 | ", "Seed | 11 | bags | 0 | ").codes).toEqual([]);
  });
});

describe("a year", () => {
  const bought = (year: string, ...dates: readonly string[]) =>
    told(
      `Season\n| Setting | Value |\n| Season year | ${year} |\n${fields(alder)}${office("all")}Purchases\n| Date | Item | Quantity ` +
        `| Unit | Amount |\n${dates.map((date, index) => `| ${date} | Urea | ${index + 10} | lb | ${index + 10} |`).join("\n")}\n`,
    ).codes;

  it("other than its neighbours' is told: in between, first and last", () => {
    expect(bought("2031", "2031-04-01", "2030-05-03", "2031-05-04")).toEqual(["year-unlike Purchases 2 Date"]);
    expect(bought("2031", "2032-05-03", "2031-05-03", "2031-05-04")).toEqual(["year-unlike Purchases 1 Date"]);
    expect(bought("2031", "2031-05-03", "2031-05-04", "2032-05-05")).toEqual(["year-unlike Purchases 3 Date"]);
  });
  it("is not told where the day is nearer to its neighbours as it stands: seed paid in November, grain of January", () => {
    expect(bought("2031", "2030-11-20", "2031-04-01", "2031-04-15")).toEqual([]);
    expect(bought("2031", "2031-02-01", "2030-11-20", "2031-03-15")).toEqual([]);
    expect(bought("2031", "2031-10-20", "2031-11-20", "2032-01-15")).toEqual([]);
  });
  it("is told once where it is far from the season", () => {
    expect(bought("2031", "2031-04-01", "2013-05-03", "2031-05-04")).toEqual(["date-far Purchases 2 Date"]);
  });
});

describe("a place that is counted by hoop", () => {
  const counted = (length: string, hoop: string) => {
    const row = `| Alder | 2031-06-01 | 30 | ${length} | ${hoop} | 20 |`;
    return told(
      `Season\n| Setting | Value |\n| Stand response | none |\n${fields(alder)}${office("all")}Stand counts\n| Field | Date | Row ` +
        `width | Length | Hoop diameter | Plants |\n${row}\n`,
    );
  };

  it("leaves a length beside its hoop aside, and says so on its row", () => {
    const { report, codes } = counted("17.42", "3");
    expect(codes).toEqual(["entry-beside Stand counts 1 Length"]);
    expect(report.problems[0]!.other).toEqual({ table: "Stand counts", row: 1, column: "Hoop diameter" });
    expect([counted("", "3").codes, counted("17.42", "").codes]).toEqual([[], []]);
  });
});

describe("a machine that works none of the time", () => {
  it("is to fix, and counts at the usual field efficiency instead of stopping the whole report", () => {
    const { report, codes } = told(`${fields(alder)}Machines
| Machine | List price | Years kept | Width | Speed | Field efficiency | Labour per hour | Real interest rate |
| Planter | 100000 | 10 | 30 | 5 | 0 | 20 | 4% |
Operations
| Field or Crop | Operation | Machine | Status |
| Alder | Planting | Planter | plan |
`);
    expect(codes).toEqual(["not-above-zero Machines 1 Field efficiency"]);
    // 5 mph × 30 ft × 0.7 ÷ 8.25
    expect(report.figures.machines[0]!.capacity.toFixed(4)).toBe("12.7273");
  });
});
