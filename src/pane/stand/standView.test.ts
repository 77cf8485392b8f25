import { describe, expect, it } from "vitest";
import { countedContent } from "../../../tests/support/paneWorkbook";
import { seasonReport } from "../../workbook/report";
import { Decimal } from "../../core/numbers/decimal";
import { formatOf } from "../format";
import { emptyReseed, reseedQuestion } from "./reseedDraft";
import { standChanged } from "./standChanged";
import { standPlot } from "./standPlot";
import { fieldChoices, historyView, isThin, netEffect, outlookView, plotWords, standView, tableView, thinnestPart } from "./standView";
import { findingWords, tryLoss } from "./triedLoss";
import { uniformityFindings } from "../../core/tables/uniformityFindings";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const report = seasonReport(countedContent);
const standOf = (name: string) => report.figures.stands.find(({ field }) => field.name === name)!;
const outlookOf = (name: string, of = report) => of.figures.outlooks.find(({ field }) => field.name === name)!;
const cropOf = (name: string) => report.figures.crops.find(({ crop }) => crop === name)!;
const mill = standOf("Mill Road");
const long = standOf("Long Eighty");

describe("the page Stand", () => {
  it("offers the fields with counts first", () => {
    expect(fieldChoices(report).map(({ words }) => words)).toEqual([
      "Mill Road, Corn: 4 spots counted",
      "Long Eighty, Corn: 1 spot counted",
      "Creek Bottom, Soybeans",
    ]);
  });

  it("says the stand with its interval in plain words, and how many places are missing", () => {
    // 20, 22, 24.5 and 20 thousand: mean 21,625, s = 2,136.00, t(3) = 3.18245, half-width 3,398.8.
    const view = standView(mill, format);
    expect([view.figure, view.unit, view.likely]).toEqual([
      "21,600",
      "plants per acre",
      "likely between 18,200 and 25,000 (19 times in 20)",
    ]);
    expect(view.advice).toBe("24 spots are advised for 120 ac: count 20 more.");
    expect(Object.fromEntries(view.lines.map(({ name, says }) => [name, says]))).toEqual({
      Counted: "4 spots, Jun 2, 2031",
      "Counts range": "20,000 to 24,500",
      "Coefficient of variation": "9.9%",
      "Target stand": "32,000",
      Emergence: "63.6% of 34,000 seeds dropped",
    });
  });

  it("makes no interval of one place", () => {
    expect(standView(long, format).likely).toBe("One spot says nothing of the spread. Count more.");
  });

  it("shows the road from the goal to the outlook, with the cells of the table that were used", () => {
    // Between the printed 92 and 94 % of 10 May and 89 and 92 % of 15 May: 0.6 and 0.4 in date, 0.1875 and 0.8125 in stand.
    const view = outlookView(outlookOf("Mill Road"), cropOf("Corn"), format);
    expect(view).toMatchObject({ known: true, figure: "176.1", unit: "bu per acre", againstGoal: "goal 195.0, −18.9" });
    expect(view.known && view.table).toBe(
      'Yield by planting date and stand from the table "Corn, central Corn Belt (Purdue 2012)", for Indiana, Illinois, Ohio, ' +
        "southern Iowa, Missouri, Pennsylvania; not chosen by you: name one, or none, under Stand response in the table Season.",
    );
    expect(view.known && view.how).toEqual([
      "Actual: 90.3% of the best date and stand. Planned: 100% of the best date and stand.",
      "195.0 × 90.3% ÷ 100% = 176.1.",
    ]);
    const table = tableView(mill.table!, mill.outlook, format);
    expect(table.name).toBe("Corn, central Corn Belt (Purdue 2012)");
    expect(table.cells.slice(0, 2)).toEqual([
      { name: "actual", cells: ["May 10, 20,000", "89%", "11.3%"] },
      { name: "actual", cells: ["May 10, 22,000", "92%", "48.8%"] },
    ]);
    expect(table.limits).toContain("It rests on one study of 1994.");
  });

  it("refuses in words outside the table, and where there is none", () => {
    expect(outlookView(outlookOf("Long Eighty"), cropOf("Corn"), format)).toEqual({
      known: false,
      why:
        'The actual stand 7000 is outside the table "Corn, central Corn Belt (Purdue 2012)" (10000 to 36000). The table goes no ' +
        "further. The projected yield stays at 184.3.",
    });
    const noTable = outlookView({ ...outlookOf("Mill Road"), table: null, byDate: null, stand: null }, cropOf("Corn"), format);
    expect(noTable.known || noTable.why).toContain("No table of yield by date and stand is chosen for Corn.");
  });

  it("shows what the planted date alone does before anything is counted", () => {
    const uncounted = seasonReport({ ...countedContent, tables: countedContent.tables.filter(({ name }) => name !== "Stand_counts") });
    const view = outlookView(outlookOf("Mill Road", uncounted), cropOf("Corn"), format);
    expect(view).toMatchObject({ known: true, figure: "187.6", againstGoal: "goal 195.0, −7.4" });
    expect(view.known && view.how[0]).toBe("By the planted date alone: nothing is counted yet, and the stand is taken as its target.");
  });

  it("tells what moved the outlook and when", () => {
    expect(historyView(report.season, mill.field, format)).toEqual([
      { date: "May 12, 2031", reason: "planted, planned for Apr 28, 2031", from: "195.0", to: "187.6" },
      { date: "Jun 2, 2031", reason: "counted 21,600 at 4 spots", from: "187.6", to: "176.1" },
    ]);
  });

  it("says what the counts do to the crop's net return, naming the layer", () => {
    // From 187.6 by the date alone to 176.1: 11.480625 bu less on 120 of 198.5 acres at 4.35 − 0.22: 28.66 less.
    expect(netEffect(report, mill.field, "cash", format)).toMatch(
      /^Corn nets [\d.]+ USD per acre after cash cost, [\d.]+ without these counts \(−28\.6[67]\)\.$/,
    );
  });

  it("thinks of reseeding where the stand is under its target and costs yield", () => {
    expect([
      isThin(mill),
      isThin(long),
      isThin({ ...mill, summary: { ...mill.summary, mean: mill.field.targetStand as typeof mill.summary.mean } }),
    ]).toEqual([true, true, false]);
  });

  it("reads out what a count changed", () => {
    const before = seasonReport({
      ...countedContent,
      tables: countedContent.tables.map((each) => (each.name === "Stand_counts" ? { ...each, rows: each.rows.slice(0, 3) } : each)),
    });
    expect(standChanged(before, report, "Mill Road", format)).toMatch(
      /^Stand: 22,200 → 21,600 plants per acre\. Projected yield: 177\.\d → 176\.1\. Net return of Corn: [\d.]+ → [\d.]+ \(USD per acre, cash cost\)\. 1 new entry to fix or to check: see the line at the top\.$/,
    );
  });
});

describe("a field that is counted in parts", () => {
  const parted = seasonReport({
    ...countedContent,
    tables: countedContent.tables.map((each) =>
      each.name !== "Stand_counts"
        ? each
        : {
            ...each,
            headers: [...each.headers, "Part", "Part acres"],
            rows: each.rows.map((row, index) => [...row, ...(index === 0 ? ["Knoll", 24] : index === 1 ? ["knoll", ""] : ["", ""])]),
          },
    ),
  });
  const stand = parted.figures.stands.find(({ field }) => field.name === "Mill Road")!;

  it("has a line a part: acres, spots of those advised, plants and yield", () => {
    // 20,000 and 22,000 on 24 acres; 24,500 and 20,000 on 96: (24 × 21,000 + 96 × 22,250) ÷ 120 = 22,000.
    // 12 May lies 0.6 at 10 May's 90.5 and 92.25 %, and 0.4 at 15 May's 88 and 89.375 %: 89.5 and 91.1 % of 195.
    const view = standView(stand, format);
    expect(view.figure).toBe("22,000");
    expect(view.parts).toEqual([
      { name: "Knoll", cells: ["24", "2 of 5", "21,000", "174.5"] },
      { name: "rest of the field", cells: ["96", "2 of 20", "22,300", "177.6"] },
    ]);
    expect(view.advice).toBe("Count more spots: 3 in Knoll, 18 in the rest.");
    expect(standView(mill, format).parts).toEqual([]);
  });

  it("asks first about its thinnest part, on that part's acres and stand", () => {
    const part = thinnestPart(stand)!;
    expect([part.name, thinnestPart(mill)]).toEqual(["Knoll", null]);
    const subject = { stand, part };
    const begun = emptyReseed(parted, subject, false);
    expect(begun).toMatchObject({ area: "24", stand: "21000", date: "2031-06-05", newStand: "32000" });
    const { question } = reseedQuestion({ ...begun, seed: "50" }, parted, subject, false);
    expect(question!.area.toString()).toBe("24");
    expect(reseedQuestion({ ...begun, area: "25" }, parted, subject, false).faults.area).toBe("The part has 24.");
  });

  it("is thin where a part is, though the field as a whole is not", () => {
    const full = { ...stand.summary, mean: mill.field.targetStand as typeof mill.summary.mean };
    expect(isThin({ ...stand, summary: full })).toBe(true);
    expect(isThin({ ...stand, summary: full, parts: stand.parts.map((each) => ({ ...each, summary: full })) })).toBe(false);
  });

  it("says what nobody counted, and what was counted before the planting", () => {
    const [knoll, rest] = stand.parts as readonly [(typeof stand.parts)[number], (typeof stand.parts)[number]];
    expect(standView({ ...stand, parts: [knoll, { ...rest, counts: [], summary: null }], history: knoll.counts }, format)).toMatchObject({
      advice: "Count more spots: 3 in Knoll. Nobody counted the other 96 ac: taken at the target stand.",
      parts: [{}, { name: "rest of the field", cells: ["96", "none", "target 32,000", "177.6"] }],
      lines: expect.arrayContaining([{ name: "Left out", says: "2 spots counted before the planting" }]) as unknown,
    });
  });
});

describe("the drawing of the places", () => {
  it("has each place, the likely range and the target on one line from tick to tick", () => {
    const plot = standPlot(mill.summary, mill.field.targetStand, "ac");
    expect(plot.ticks.map(({ stand }) => stand.toString())).toEqual(["15000", "20000", "25000", "30000", "35000"]);
    expect([plot.mean, plot.target]).toEqual(["33.13", "85.00"]);
    expect(plot.dots).toEqual([
      { x: "25.00", level: 0 },
      { x: "25.00", level: 1 },
      { x: "35.00", level: 0 },
      { x: "47.50", level: 0 },
    ]);
    expect(plot.levels).toBe(2);
  });
  it("has a line also where one place stands alone", () => {
    expect(standPlot(long.summary, null, "ac").ticks).toHaveLength(2);
  });
  it("says the same in words", () => {
    expect(plotWords(mill.summary, mill.field.targetStand, format)).toBe(
      "4 spots from 20,000 to 24,500 plants per acre, mean 21,600, likely between 18,200 and 25,000, target 32,000.",
    );
  });
});

describe("an uneven stand", () => {
  it("tries a loss on the yield by date and stand", () => {
    expect(tryLoss("5 %", mill, "bu", false, format)).toMatchObject({ says: "176.1 less 5% is 167.3 bu per acre." });
    expect(tryLoss("much", mill, "bu", false, format).fault).toBe("Enter a percentage from 0 to 100.");
    expect(tryLoss("5", long, "bu", false, format).says).toBe("There is no yield by date and stand to take it from.");
  });
  it("is kept as a share of the yield, and only where it differs from what is entered", () => {
    const uneven = { ...mill, field: { ...mill.field, uniformityLoss: new Decimal("5") } };
    const kept = (typed: string, stand = mill) => tryLoss(typed, stand, "bu", false, format).toKeep;
    expect([kept("5 %")?.toString(), kept("0.5")?.toString(), kept("5", uneven), kept("", uneven), kept(""), kept("much")]).toEqual([
      "0.05",
      "0.005",
      null,
      "",
      null,
      null,
    ]);
  });
  it("names figure and source of each finding", () => {
    expect(findingWords(uniformityFindings[1]!)).toBe("many gaps of 4 to 6 ft: 4 to 6% of yield (Iowa State University Extension, 2004).");
  });
});
