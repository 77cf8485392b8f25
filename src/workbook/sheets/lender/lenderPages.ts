/** The sheet *Lender pages*: two pages that answer what an acre costs, where it breaks even, and what a bad year does. */
import type { CropFigures } from "../../../core/figures";
import type { Layer } from "../../../core/kinds";
import type { AreaUnit } from "../../../core/numbers/units";
import type { ChartModel, ResultSheet } from "../../resultSheet";
import type { SeasonReport } from "../../seasonReport";
import { note, text } from "../cells";
import { areaName, caution, incompleteRows, inLines, layerTitle, seasonName } from "../sheetWords";
import { breakEvenBand, layerChart } from "./breakEvenBand";
import { costBand } from "./costBand";
import { debtBlock } from "./debt";
import { gridBands } from "./grids";
import { lenderNotes } from "./notes";
import { abreast, blockWidth, LenderPage } from "./printedPage";
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
  const page = new LenderPage();
  const charts: ChartModel[] = [];
  let firstPage: number | null = null;
  heading(page, report, options, layer);
  for (const band of bands(crops)) {
    const balances = breakEvenBand(page, report, band);
    for (const { crop } of balances.filter(({ isFixed }) => isFixed))
      page.put(
        { row: page.next, column: 0 },
        ...note(
          `${crop.crop}: its leases are too many for a formula in a cell, so break-evens here stay as they are whatever is changed in a box.`,
        ),
      );
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
  for (const line of lenderNotes(report, layer, crops).flatMap((words) => inLines(words, lineLength)))
    page.put({ row: page.next, column: 0 }, ...note(line));
  return {
    name: "Lender pages",
    columns: [labelWidth, ...Array.from({ length: blockWidth * abreast }, () => figureWidth)],
    headingRows: 2,
    rows: page.rows(),
    merges: page.merges,
    charts,
    page: {
      orientation: "portrait",
      paper: settings.areaUnit === "ac" ? "letter" : "a4",
      pagesTall: 2,
      ...(firstPage === null ? {} : { scale: usualScale, breakAfter: [firstPage] }),
      footer:
        `${(settings.farm ?? seasonName(report)).slice(0, longestFarm)}, ${options.date}, ${layerTitle(layer).toLowerCase()}. ` +
        `${caution}`,
      pages: pagesOf(page.next, firstPage, settings.areaUnit),
    },
  };
}

const labelWidth = 34;
const figureWidth = 9.4;
/** Excel takes 255 characters in a footer. */
const longestFarm = 60;
/** Rows of the usual height that a page holds at the usual scale: 9.9 in of a letter page, 10.6 in of A4, at 15 points. */
const rowsOnPage = { ac: 73, ha: 78 } as const;

/** How many pages the sheet takes: more than two only where many kinds or notes fill them; where it is fitted, two at most. */
function pagesOf(rows: number, firstPage: number | null, areaUnit: AreaUnit): number {
  if (firstPage === null) return rows > rowsOnPage[areaUnit] ? 2 : 1;
  // From the second page on the two heading rows are printed again.
  const pagesOfPart = (part: number, isFirst: boolean) =>
    isFirst && part <= rowsOnPage[areaUnit] ? 1 : Math.ceil(part / (rowsOnPage[areaUnit] - 2));
  return pagesOfPart(firstPage, true) + pagesOfPart(rows - firstPage, false);
}

/** Percent at which the thirteen columns fill the width of a letter or A4 page, and each half of the rows its height. */
const usualScale = 65;
/** Characters of a note that fit across the page. */
const lineLength = 160;

function heading(page: LenderPage, report: SeasonReport, { date }: LenderOptions, layer: Layer): void {
  const { currency, areaUnit, farm } = report.season.settings;
  page.put(
    { row: 0, column: 0 },
    text(`${farm === null ? "Cost" : `${farm}: cost`} of production and break-evens`, { bold: true, size: 14 }),
  );
  page.put(
    { row: 1, column: 0 },
    ...note(
      `${seasonName(report)}, as of ${date}; tables on the layer ${layerTitle(layer).toLowerCase()}. ${currency}, per ` +
        `${areaName(report)} unless it says otherwise (${areaUnit}). Figures in a box may be changed: try another price, yield or ` +
        "cost.",
    ),
  );
  for (const row of incompleteRows(report, { of: "cash flow" })) page.put({ row: page.next, column: 0 }, ...row);
  page.skip(1);
}

/** Crops in groups that stand side by side. */
function bands(crops: readonly CropFigures[]): readonly (readonly CropFigures[])[] {
  return crops.flatMap((_, index) => (index % abreast === 0 ? [crops.slice(index, index + abreast)] : []));
}
