/** The sheet *Lender pages*: two pages that answer what an acre costs, where it breaks even, and what a bad year does. */
import type { CropFigures } from "../../../core/figures";
import type { Layer } from "../../../core/kinds";
import type { ChartModel, ResultSheet } from "../../resultSheet";
import type { SeasonReport } from "../../seasonReport";
import { note, text } from "../cells";
import { areaName, caution, incompleteRows, inLines, seasonName } from "../words";
import { breakEvenBand, layerChart } from "./breakEvenBand";
import { costBand } from "./costBand";
import { debtBlock } from "./debt";
import { gridBands } from "./grids";
import { lenderNotes } from "./notes";
import { abreast, blockWidth, Page } from "./page";
import { reasonsBand } from "./reasonsBand";
import { salesBand } from "./salesBand";
import { scenarioBand } from "./scenarioBand";

export type LenderOptions = {
  /** The day the pages are made, `YYYY-MM-DD`. */
  readonly date: string;
  /** Names of the crops to show; left out: all. */
  readonly crops?: readonly string[];
  /** The layer of the yield and price tables and of the reasons; cash need where nothing else is said. */
  readonly layer?: Layer;
};

export function lenderPages(report: SeasonReport, options: LenderOptions): ResultSheet {
  const layer = options.layer ?? "cashNeed";
  const { settings } = report.season;
  const crops = report.figures.crops.filter(({ crop }) => options.crops === undefined || options.crops.includes(crop));
  const page = new Page();
  const charts: ChartModel[] = [];
  let firstPage: number | null = null;
  heading(page, report, options);
  for (const band of bands(crops)) {
    const balances = breakEvenBand(page, report, band);
    page.skip(1);
    costBand(page, report, band);
    page.skip(1);
    salesBand(page, report, band);
    page.skip(1);
    charts.push(...layerChart(page, balances));
    if (crops.length <= abreast) firstPage = page.next;
    page.skip(1);
    gridBands(page, report, balances, layer);
    scenarioBand(page, report, band);
    page.skip(1);
    reasonsBand(page, report, band, layer);
    page.skip(1);
  }
  debtBlock(page, report);
  page.skip(1);
  for (const line of lenderNotes(report, layer, crops).flatMap((words) => inLines(words, lineLength))) page.put({ row: page.next, column: 0 }, ...note(line));
  return {
    name: "Lender pages", columns: [labelWidth, ...Array.from({ length: blockWidth * abreast }, () => figureWidth)], headingRows: 2, rows: page.rows(), merges: page.merges, charts,
    page: { orientation: "portrait", paper: settings.areaUnit === "ac" ? "letter" : "a4", pagesTall: 2, ...(firstPage === null ? {} : { scale: usualScale, breakAfter: [firstPage] }), footer: `${settings.farm ?? seasonName(report)}, ${options.date}. ${caution}` },
  };
}

const labelWidth = 34;
const figureWidth = 9.4;
/** Percent at which the thirteen columns fill the width of a letter or A4 page, and each half of the rows its height. */
const usualScale = 65;
/** Characters of a note that fit across the page. */
const lineLength = 150;

function heading(page: Page, report: SeasonReport, { date }: LenderOptions): void {
  const { currency, areaUnit, farm = null } = report.season.settings;
  page.put({ row: 0, column: 0 }, text(`${farm === null ? "Cost" : `${farm}: cost`} of production and break-evens`, { bold: true, size: 14 }));
  page.put({ row: 1, column: 0 }, ...note(`${seasonName(report)}, as of ${date}. ${currency}, per ${areaName(report)} unless it says otherwise (${areaUnit}). Shaded figures in italics may be changed: try another price, yield or cost.`));
  for (const row of incompleteRows(report, { of: "cash flow" })) page.put({ row: page.next, column: 0 }, ...row);
  page.skip(1);
}

/** Crops in groups that stand side by side. */
function bands(crops: readonly CropFigures[]): readonly (readonly CropFigures[])[] {
  return crops.flatMap((_, index) => (index % abreast === 0 ? [crops.slice(index, index + abreast)] : []));
}
