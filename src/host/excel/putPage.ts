import type { ResultSheet } from "../../workbook/resultSheet";
import { asFooter, pageNumber, pageOf, pagesWide, sheetTitle } from "../sheetLook";
import { cellName, columnName } from "../address";
import type { Supports } from "./supports";

/** Headings that stay in view and, where Excel has page setup (ExcelApi 1.9), how the sheet prints. */
export function putPage(sheet: Excel.Worksheet, { rows, headingRows, page }: ResultSheet, supports: Supports): void {
  if (headingRows > 0) sheet.freezePanes.freezeRows(headingRows);
  if (!supports("1.9")) return;
  const layout = sheet.pageLayout;
  layout.orientation = page.orientation === "landscape" ? "Landscape" : "Portrait";
  layout.paperSize = page.paper === "a4" ? "A4" : "Letter";
  layout.zoom = { horizontalFitToPages: 1, ...(page.pagesTall > 0 && { verticalFitToPages: page.pagesTall }) };
  const width = Math.max(0, ...rows.map((row) => row.length));
  if (width > 0) layout.setPrintArea(`A1:${cellName({ row: rows.length - 1, column: width - 1 })}`);
  if (headingRows > 0) layout.setPrintTitleRows(`$1:$${headingRows}`);
  layout.headersFooters.defaultForAllPages.leftFooter = asFooter(page.footer);
  layout.headersFooters.defaultForAllPages.rightFooter = pageOf(page.pages);
  if (page.pages !== undefined) layout.firstPageNumber = 1;
}

/**
 * How an input table with columns of such widths, in characters, prints: across, on as many pages as it needs to be read, with
 * its headings on each page and its first column beside the others, and without the lists of choices beside it.
 */
export function putInputPage(sheet: Excel.Worksheet, widths: readonly number[], supports: Supports): void {
  sheet.freezePanes.freezeRows(1);
  if (!supports("1.9")) return;
  const layout = sheet.pageLayout;
  layout.orientation = "Landscape";
  const pages = pagesWide(widths);
  layout.zoom = { horizontalFitToPages: pages };
  layout.setPrintArea(`A:${columnName(widths.length - 1)}`);
  if (pages > 1) layout.setPrintTitleColumns("$A:$A");
  layout.setPrintTitleRows("$1:$1");
  layout.headersFooters.defaultForAllPages.leftFooter = sheetTitle;
  layout.headersFooters.defaultForAllPages.rightFooter = pageNumber;
}
