/** How result sheets look in both hosts, where Excel wants more than the plain data of a `ResultSheet` says. */
import type { CellStyle } from "../workbook/resultSheet";

/** Greys that print in black and white. */
export const fillColours: Readonly<Record<NonNullable<CellStyle["fill"]>, string>> = { heading: "#D9D9D9", soft: "#F2F2F2" };

/** Fills of chart series in order, from dark to light, so that they can be told apart on paper. */
export const seriesColours: readonly string[] = ["#404040", "#A6A6A6", "#D9D9D9", "#737373"];

/** Points for a width in characters: 7 pixels a character and 5 of margin in the usual font (Calibri 11), 0.75 points a pixel. */
export const widthInPoints = (characters: number): number => (characters * 7 + 5) * 0.75;

/** Between margins of half an inch on a letter page across; A4 has a little more. */
const pageInPoints = 720;
/** Smaller print than that is hard to read: the usual 11 points become about six and a half. */
const smallestScale = 0.6;

/** How many pages wide a table of such columns, in characters, must print to be readable, its first column on each of them. */
export function pagesWide(widths: readonly number[]): number {
  const [first = 0, ...others] = widths.map(widthInPoints);
  const room = pageInPoints / smallestScale - first;
  return Math.max(1, Math.ceil(others.reduce((sum, width) => sum + width, 0) / room));
}

/** A line of plain words as Excel wants it in headers and footers, where `&` begins a code. */
export const asFooter = (words: string): string => words.replaceAll("&", "&&");

/** Page number and number of pages, in Excel's codes; of the sheet's own pages where their number is known. */
export const pageNumber = "&P / &N";
export const pageOf = (pages: number | undefined): string => (pages === undefined ? pageNumber : `Page &P of ${pages}`);

/** The sheet's name, in Excel's codes. */
export const sheetTitle = "&A";
