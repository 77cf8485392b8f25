/** The demo season as its tables: read from the comma-separated files beside this one, which are its source. */
import { readFileSync } from "node:fs";
import type { Cell } from "../../src/workbook/cell";
import { tableNames } from "../../src/workbook/findTables";

export type DemoTable = { readonly name: string; readonly headings: readonly string[]; readonly rows: readonly (readonly Cell[])[] };

/** Every table, in the order in which they are made. */
export const demoTables = (): readonly DemoTable[] => tableNames.map((name) => {
  const [headings = [], ...rows] = parse(readFileSync(new URL(`${name}.csv`, import.meta.url), "utf8"));
  return { name, headings, rows: rows.map((row) => row.map(cellOf)) };
});

/** Lines of fields; a field in double quotes may hold commas. */
const parse = (text: string): readonly (readonly string[])[] =>
  text.trimEnd().split("\n").map((line) => [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^",]*))/g)].map(([, quoted, plain]) => quoted ?? plain ?? ""));

const firstDay = Date.UTC(1899, 11, 30);
const millisecondsInDay = 86_400_000;

/** A number, a percentage as the fraction that it is, a date as its serial number; anything else stays text. */
function cellOf(text: string): Cell {
  if (/^-?\d+(\.\d+)?$/.test(text)) return Number(text);
  if (/^\d+(\.\d+)?%$/.test(text)) return Number(`${text.slice(0, -1)}e-2`);
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return (Date.parse(text) - firstDay) / millisecondsInDay;
  return text;
}
