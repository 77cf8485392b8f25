/** Workbooks for tests, written as text: a line with the table's name, then its rows between bars, the first one the headings. */
import type { Cell, DateSystem, RawTable, WorkbookContent } from "../../src/workbook/cell";

/**
 * ```
 * Crops
 * | Crop | Expected price |
 * | Corn | 4.20           |
 * ```
 * Cells that look like plain numbers are numbers, as in Excel; everything else is text, `'4.20` and `"4.20"` too. Each
 * table is taken to stand on a sheet of its name, its headings in the first row. Rows after `>` stand
 * below the table, one right under the other; a blank one is a gap.
 */
export function contentFromText(text: string, dateSystem: DateSystem = "1900"): WorkbookContent {
  const tables: RawTable[] = [];
  let name: string | null = null;
  let rows: Cell[][] = [];
  let below: Cell[][] = [];
  const finish = () => {
    if (name !== null)
      tables.push({
        ...tableOf(name, rows),
        ...(below.length > 0
          ? { below: below.flatMap((cells, index) => (cells.every((cell) => cell === "") ? [] : [{ by: index + 1, cells }])) }
          : {}),
      });
    [rows, below] = [[], []];
  };
  for (const line of text
    .split("\n")
    .map((each) => each.trim())
    .filter((each) => each !== "" && !/^\|[-|\s]*-[-|\s]*\|$/.test(each))) {
    if (line.startsWith("> |")) below.push(cellsOf(line.slice(2)));
    else if (line.startsWith("|")) rows.push(cellsOf(line));
    else {
      finish();
      name = line;
    }
  }
  finish();
  return { dateSystem, tables, ranges: new Map() };
}

const cellsOf = (line: string): Cell[] =>
  line
    .split("|")
    .slice(1, -1)
    .map((cell) => cellOf(cell.trim()));

function tableOf(name: string, [headings = [], ...rows]: readonly Cell[][]): RawTable {
  return {
    name,
    headers: headings.map(String),
    rows: rows.map((row) => headings.map((_, index) => row[index] ?? "")),
    body: { sheet: name, row: 1, column: 0 },
  };
}

function cellOf(text: string): Cell {
  if (/^-?\d+(\.\d+)?$/.test(text)) return Number(text);
  if (text === "TRUE" || text === "FALSE") return text === "TRUE";
  return /^'|^".*"$/.test(text) ? text.replace(/^'/, "").replace(/^"(.*)"$/, "$1") : text;
}
