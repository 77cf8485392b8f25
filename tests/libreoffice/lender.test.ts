/** The live formulas of the lender pages, worked out by a spreadsheet that is not ours. */
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { newWorkbook } from "../../src/host/embedded";
import { breakEvenPrice, breakEvenYield, costPerArea, costPerUnit, netPerArea } from "../../src/core/breakEven";
import { Decimal } from "../../src/core/numbers/decimal";
import type { CropFigures } from "../../src/core/figures";
import { layers, type Layer } from "../../src/core/kinds";
import { priceYieldGrid } from "../../src/core/lender/priceYieldGrid";
import { costsOf } from "../../src/core/lender/scenarios";
import { moneyPerUnit, yieldPerArea } from "../../src/core/numbers/units";
import type { ResultSheet } from "../../src/workbook/resultSheet";
import type { SeasonReport } from "../../src/workbook/seasonReport";
import { cashFlowSheet } from "../../src/workbook/sheets/lender/cashFlowSheet";
import { lenderPages } from "../../src/workbook/sheets/lender/lenderPages";
import { shownMoney, shownPriceNeeded, shownYieldNeeded } from "../../src/workbook/shown";
import { growingSeason, harvestedSeason, underFlexibleRent } from "../exact/randomSeason";
import { demo } from "../support/demoReport";
import { pageTexts, printed, recalculated, type CellTexts } from "../support/libreOffice";
import { reportOf } from "../support/reportOf";

const date = "2031-06-15";
/** What no season comes to; every formula is written with it, so that only a calculation can put it right. */
const wrong = 98_765_432.1;
/** The formulas with wrong values, and the numbers that they may stand on, in their places. */
const withWrongValues = (sheet: ResultSheet): ResultSheet => ({
  ...sheet,
  charts: [],
  merges: [],
  rows: sheet.rows.map((row) =>
    row.map(({ value, formula }) =>
      formula !== undefined ? { value: wrong, formula } : { value: typeof value === "number" ? value : "" },
    ),
  ),
});

const seasons = [
  ...fc.sample(growingSeason, { numRuns: 150, seed: 2031 }),
  ...fc.sample(harvestedSeason, { numRuns: 50, seed: 2031 }),
  ...fc.sample(underFlexibleRent(growingSeason), { numRuns: 100, seed: 2031 }),
];
const reports = seasons.map(reportOf);
const sheets = reports.map((report) => lenderPages(report, { date }));

/** Another price and yield for each crop of the demo. */
const tried = [
  ["5.17", "183.4"],
  ["9.05", "0"],
  ["0.1", "77.7"],
] as const;

let demoReport: SeasonReport;
let found: ReadonlyMap<string, ReadonlyMap<string, CellTexts>>;
let pages: readonly string[];

beforeAll(async () => {
  const { workbook, report } = await demo();
  demoReport = report;
  await workbook.write([lenderPages(report, { date }), cashFlowSheet(report)]);
  const asMade = workbook.save();
  const page = lenderPages(report, { date });
  const rowOf = (label: string) => page.rows.findIndex(([first]) => first?.value === label);
  workbook.setCells(
    "Lender pages",
    tried.flatMap(([price, yieldHere], index) => [
      { row: rowOf("Price per bu (yours to change)"), column: 1 + 4 * index, value: Number(price) },
      { row: rowOf("Yield per acre (yours to change)"), column: 1 + 4 * index, value: Number(yieldHere) },
    ]),
  );
  const changed = workbook.save();
  const many = newWorkbook();
  await many.write(sheets.map(withWrongValues));
  found = recalculated({ demo: asMade, changed, many: many.save() }, false);
  pages = printed(asMade, pageTexts);
}, 600_000);

/** Where LibreOffice's value of a formula is not the one that the sheet was made with. */
const differences = ({ rows }: ResultSheet, cells: CellTexts): readonly string[] =>
  rows.flatMap((row, index) =>
    row.flatMap(({ value, formula }, column) => {
      const text = cells[index]?.[column] ?? "";
      const same = typeof value === "number" ? text !== "" && Number(text) === value : text === value;
      return formula === undefined || same ? [] : [`row ${index + 1}, column ${column + 1}, ${formula}: ${text}, not ${String(value)}`];
    }),
  );

const shownOr = (how: (value: Decimal) => Decimal) => (value: Decimal | null) => (value === null ? "–" : how(value).toFixed());
const money = shownOr(shownMoney);

/** The four cells of a line for one crop of the first band. */
const line = (cells: CellTexts, label: string, crop: number) => cells.find(([first]) => first === label)!.slice(1 + 4 * crop, 5 + 4 * crop);

/** Break-even lines of a crop as the core has them at a price and a yield. */
function expectLines(cells: CellTexts, figures: CropFigures, index: number, price: Decimal, yieldHere: Decimal): void {
  const costs = layers.map((layer) => costsOf(figures.outlook, layer));
  const at = yieldPerArea(yieldHere);
  const perUnit = moneyPerUnit(price);
  expect(line(cells, "Cost per acre", index)).toEqual(costs.map((each) => money(costPerArea(each, at, perUnit))));
  expect(line(cells, "Cost per bu", index)).toEqual(costs.map((each) => money(costPerUnit(each, at, perUnit))));
  expect(line(cells, "Break-even price", index)).toEqual(costs.map((each) => shownOr(shownPriceNeeded)(breakEvenPrice(each, at))));
  expect(line(cells, "Break-even yield", index)).toEqual(costs.map((each) => shownOr(shownYieldNeeded)(breakEvenYield(each, perUnit))));
  expect(line(cells, "Net return per acre", index)).toEqual(costs.map((each) => money(netPerArea(each, at, perUnit))));
}

/** The table of net return of a crop: yields down the left, prices across the top. */
function gridOf(cells: CellTexts, crop: string): CellTexts {
  const top = cells.findIndex((row) => row.some((text) => text.startsWith(`${crop}: net per acre`)));
  const left = cells[top]!.findIndex((text) => text.startsWith(`${crop}: net per acre`));
  return cells.slice(top + 1, top + 7).map((row) => row.slice(left, left + 6));
}
function expectGrid(cells: CellTexts, figures: CropFigures, layer: Layer, price: Decimal, yieldHere: Decimal): void {
  const parts = ["0.8", "0.9", "1", "1.1", "1.2"];
  const partOf = (whole: Decimal, part: string, places: number) =>
    part === "1" ? whole : whole.times(part).toDecimalPlaces(places, Decimal.ROUND_HALF_UP);
  const prices = parts.map((part) => moneyPerUnit(partOf(price, part, 2)));
  const yields = parts.map((part) => yieldPerArea(partOf(yieldHere, part, 1)));
  const { rows } = priceYieldGrid(costsOf(figures.outlook, layer), yields, prices);
  const [heading, ...body] = gridOf(cells, figures.crop);
  const inCell = (value: Decimal) => new Decimal(value.toPrecision(15)).toFixed();
  expect(heading!.slice(1)).toEqual(prices.map(inCell));
  expect(body).toEqual(rows.map(({ yield: at, net }) => [inCell(at), ...net.map(money)]));
  // The middle is the net return beside the table.
  expect(body[2]![3]).toBe(money(netPerArea(costsOf(figures.outlook, layer), yieldPerArea(yieldHere), moneyPerUnit(price))));
}

describe("the lender pages in LibreOffice", () => {
  it("come to the core's figures on the demo", () => {
    const cells = found.get("demo")!.get("Lender pages")!;
    expect(differences(lenderPages(demoReport, { date }), cells)).toEqual([]);
    demoReport.figures.crops.forEach((crop, index) => {
      expectLines(cells, crop, index, crop.outlook.price, crop.outlook.yields.used);
      expectGrid(cells, crop, "cashNeed", crop.outlook.price, crop.outlook.yields.used);
    });
  });

  it("come to the core's figures at another price and another yield", () => {
    const cells = found.get("changed")!.get("Lender pages")!;
    expect(demoReport.figures.crops).toHaveLength(tried.length);
    demoReport.figures.crops.forEach((crop, index) => {
      const [price, yieldHere] = tried[index]!.map((text) => new Decimal(text));
      expectLines(cells, crop, index, price!, yieldHere!);
      expectGrid(cells, crop, "cashNeed", price!, yieldHere!);
    });
  });

  it("put wrong values right, to the cent, on three hundred random seasons", () => {
    const written = [...found.get("many")!].filter(([name]) => name.startsWith("Lender pages"));
    expect(written).toHaveLength(sheets.length);
    const formulas = sheets.flatMap(({ rows }) => rows.flat()).filter(({ formula }) => formula !== undefined);
    // Dozens on each page: how many depends on which kinds and yields a random season happens to have.
    expect(formulas.length).toBeGreaterThan(50 * sheets.length);
    expect(formulas.some(({ value }) => value === wrong)).toBe(false);
    const wrongs = sheets.flatMap((sheet, index) => {
      const cells = found.get("many")!.get(index === 0 ? "Lender pages" : `Lender pages (${index + 1})`)!;
      return differences(sheet, cells).map((words) => `season ${index}, ${words}`);
    });
    expect(wrongs).toEqual([]);
  });

  it("print on two pages, the answer on the first, and the cash flow on one", () => {
    const ours = pages.filter((page) => page.includes(`${demoReport.season.settings.farm!}, ${date}, cash need. Figures are for planning`));
    expect(ours).toHaveLength(2);
    expect(ours[0]).toContain("Try your own price and yield");
    expect(ours[0]).toContain("Price needed on unsold bushels");
    expect(ours[1]).toContain("Low, expected, high of your own figures");
    expect(ours[1]).toContain("Repayment capacity");
    expect(pages.filter((page) => page.includes("Cash flow, Season 2026"))).toHaveLength(1);
  });
});
