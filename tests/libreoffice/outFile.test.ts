/** `report --out` on the demo, opened by a spreadsheet that is not ours. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import type { Decimal } from "../../src/core/numbers/decimal";
import type { Budget, CropFigures, PerLayer } from "../../src/core/figures";
import { kinds, layers } from "../../src/core/kinds";
import type { SeasonReport } from "../../src/workbook/seasonReport";
import { resultSheets } from "../../src/workbook/sheets/resultSheets";
import { spelled, spelledSheet } from "../../src/workbook/spelling";
import { shownMoney, shownPriceNeeded, shownYield, shownYieldNeeded } from "../../src/workbook/shown";
import { layerTitle } from "../../src/workbook/sheets/sheetWords";
import { demo } from "../support/demoReport";
import { pageTexts, printed, recalculated, type CellTexts } from "../support/libreOffice";

const input = "shared/demo-season.xlsx";
let report: SeasonReport;
let sheets: ReadonlyMap<string, CellTexts>;
let sheetsBefore: ReadonlyMap<string, CellTexts>;
let pages: readonly string[];

beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), "pennyacre-"));
  try {
    const out = join(folder, "out.xlsx");
    execFileSync(process.execPath, ["--import", "tsx", "src/cli/reportCommand.ts", input, "--out", out]);
    const written = readFileSync(out);
    const found = recalculated({ before: readFileSync(input), after: written }, true);
    [sheetsBefore, sheets] = [found.get("before")!, found.get("after")!];
    pages = printed(written, pageTexts);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  report = (await demo()).report;
});

/** As people write it: commas between thousands, a fixed number of decimals; a dash where there is no answer. */
function asWritten(value: Decimal | null | undefined, how: (value: Decimal) => Decimal, places: 1 | 2): string {
  if (value === null || value === undefined) return "–";
  const [whole, part] = how(value).toFixed(places).split(".");
  return `${whole!.replace(/\B(?=(\d{3})+$)/g, ",")}.${part!}`;
}
const money = (value: Decimal | null | undefined) => asWritten(value, shownMoney, 2);
const priceNeeded = (value: Decimal | null) => asWritten(value, shownPriceNeeded, 2);
const yieldNeeded = (value: Decimal | null) => asWritten(value, shownYieldNeeded, 1);

/** The rows of a crop: from the line that begins with its name to the next crop's. */
function cropRows(sheet: string, crop: CropFigures): CellTexts {
  const rows = sheets.get(sheet)!;
  const starts = report.figures.crops.map(({ crop: name }) => rows.findIndex(([first]) => first!.startsWith(`${name}, `)));
  const index = report.figures.crops.indexOf(crop);
  return rows.slice(starts[index], starts[index + 1]);
}
/** The cells beside a label; the place in the row of labels matters where several are alike. */
const beside = (rows: CellTexts, label: string, count: number) =>
  rows.find(([first]) => first!.replace(/ \*$/, "").trim() === label)?.slice(1, count + 1);
const under = (rows: CellTexts, heading: string, label: string, count: number) =>
  beside(rows.slice(rows.findIndex(([first]) => first === heading)), label, count);

describe("the result sheets in LibreOffice", () => {
  it("hold on Cost per acre what the core says, by kind, layer and field", () => {
    for (const crop of report.figures.crops) {
      const rows = cropRows("Cost per acre", crop);
      const both = (of: (budget: Budget) => Decimal | undefined) => [money(of(crop.plan)), money(of(crop.outlook))];
      for (const kind of kinds.filter((each) => crop.outlook.costPerArea.byKind.has(each))) {
        expect(beside(rows, spelled(kind, "USD"), 2), `${crop.crop} ${kind}`).toEqual(
          both(({ costPerArea }) => costPerArea.byKind.get(kind)),
        );
      }
      for (const layer of layers)
        expect(beside(rows, layerTitle(layer), 2), `${crop.crop} ${layer}`).toEqual(both(({ costPerArea }) => costPerArea.layers[layer]));
      for (const {
        field,
        outlook: { budget },
      } of crop.fields) {
        const { operating, cash, full, cashNeed } = budget.costPerArea.layers;
        expect(beside(rows, field, 7), field).toEqual([
          asWritten(budget.area, shownYield, 1),
          asWritten(budget.yields.used, shownYield, 1),
          ...[operating, cash, full, cashNeed, budget.netPerArea.full].map(money),
        ]);
      }
    }
  });

  it("show a change that a reader finds by subtracting what is shown", () => {
    const lines = report.figures.crops
      .flatMap((crop) => cropRows("Cost per acre", crop))
      .filter((row) => row.length > 3 && /^-?\d+\.\d\d$/.test(row[3]!) && row[4] === "");
    expect(lines.length).toBeGreaterThan(50);
    const cents = (text: string) => (text === "–" ? 0n : BigInt(text.replaceAll(/[,.]/g, "")));
    for (const [label, plan, outlook, change] of lines) expect(cents(outlook!) - cents(plan!), label).toBe(cents(change!));
  });

  it("hold on Break-even what the core says, at every yield and price", () => {
    const perLayer = (values: PerLayer<Decimal | null>, how: (value: Decimal | null) => string) =>
      layers.map((layer) => how(values[layer]));
    for (const crop of report.figures.crops) {
      const rows = cropRows("Break-even", crop);
      for (const { yieldOf, yield: at, priceOf, price, breakEvenPrice, breakEvenYield, netPerArea } of crop.outlook.breakEvens) {
        const yieldName = { goal: "yield goal", outlook: "projected yield", proven: "proven yield (APH)", harvested: "harvested yield" }[
          yieldOf
        ];
        expect(beside(rows, `at ${yieldName} ${at.toFixed(1)} ${crop.yieldUnit}`, 4)).toEqual(perLayer(breakEvenPrice, priceNeeded));
        expect(beside(rows, `at ${priceOf} price ${price.toFixed(2)}`, 4)).toEqual(perLayer(breakEvenYield, yieldNeeded));
        expect(beside(rows, `at ${yieldName}, ${priceOf} price`, 4)).toEqual(perLayer(netPerArea, money));
      }
      expect(under(rows, "Price needed on unsold bushels", `per ${crop.yieldUnit} unsold`, 4)).toEqual(
        perLayer(crop.sales.priceNeeded, priceNeeded),
      );
    }
  });

  it("hold every other figure as it was written", () => {
    for (const { name, rows } of resultSheets(report).map((sheet) => spelledSheet(sheet, report))) {
      const found = sheets.get(name.slice(0, 31).trim())!;
      const wrong = rows.flatMap((row, index) =>
        row.flatMap(({ value }, column) => {
          const text = found[index]?.[column] ?? "";
          const same = typeof value === "number" ? numberIn(text) === value : text === String(value);
          return same ? [] : [`${name}, row ${index + 1}, column ${column + 1}: ${text}, not ${String(value)}`];
        }),
      );
      expect(wrong).toEqual([]);
    }
  });

  it("stand beside the grower's own sheets, whose cells are all as they were", () => {
    expect(sheetsBefore.size).toBeGreaterThan(10);
    for (const [name, cells] of sheetsBefore) expect(sheets.get(name), name).toEqual(cells);
  });

  it("print a page or so for each crop, stand and change, each page named at its foot", () => {
    const printedPages = (footer: string) => pages.filter((page) => page.includes(`${footer}, Season 2026`)).length;
    expect(printedPages("Cost per acre")).toBe(report.figures.crops.length);
    // Each field has its break-evens below those of its crop.
    expect(printedPages("Break-even")).toBeLessThanOrEqual(2 * report.figures.crops.length);
    expect(printedPages("Stand")).toBeLessThanOrEqual(report.figures.stands.length);
    for (const { change } of report.figures.changes) expect(printedPages(`Change – ${change.name}`)).toBeLessThanOrEqual(2);
  });
});

/** A number as it is shown, percentages as their fraction. */
const numberIn = (text: string): number => (text.endsWith("%") ? Number(`${text.slice(0, -1)}e-2`) : Number(text.replaceAll(",", "")));
