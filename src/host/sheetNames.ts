/** How both hosts name and recognise the sheets we make, so that a workbook may go from one host to the other. */

/**
 * Name scoped to a sheet (a hidden defined name, worth 1, which reads the same in every language) that marks the sheet as one of
 * our result sheets. A sheet
 * without it belongs to the grower and is never written over. A name, because Excel has those since ExcelApi 1.4,
 * files keep them, and a renamed sheet keeps its mark.
 */
export const resultSheetMark = "Pennyacre_result_sheet";

const longestName = 31;

/** The nearest name that Excel takes for a sheet: at most 31 characters, none of `: \ / ? * [ ]`, no apostrophe at an end. */
export function allowedSheetName(wanted: string): string {
  const clean = wanted.replace(/[:\\/?*[\]\u0000-\u001f]+/g, " ").trim();
  return trimmed(clean.slice(0, longestName)) || "Sheet";
}

/**
 * The names to try for a sheet, best first: `Break-even`, `Break-even (2)`, `Break-even (3)` … without end.
 * Excel compares sheet names without regard to case.
 */
export function* sheetNameChoices(wanted: string): Generator<string, never> {
  const first = allowedSheetName(wanted);
  yield first;
  for (let count = 2; ; count += 1) {
    const ending = ` (${count})`;
    yield trimmed(first.slice(0, longestName - ending.length)) + ending;
  }
}

const trimmed = (name: string) => name.replace(/^['\s]+|['\s]+$/g, "");

/** Whether two names are the same table or column to the reader: case, spaces and underscores do not count. */
export const sameName = (one: string, other: string): boolean => loosely(one) === loosely(other);

const loosely = (name: string) => name.toLowerCase().replace(/[\s_]+/g, "");
