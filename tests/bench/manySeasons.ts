/** Seasons of any size as cells: the demo farm with more fields and ever more purchases, applications and operations. */
import { demoTables } from "../../shared/demo/tables";
import type { Cell, WorkbookContent } from "../../src/workbook/cell";

type Rows = readonly (readonly Cell[])[];
export type Size = { readonly fields: number; readonly purchases: number; readonly applications: number; readonly operations: number };

/** A season with so many rows of purchases, applications and operations together. Fields grow with it, to 500. */
export const seasonOf = (entries: number): WorkbookContent =>
  seasonWith({
    fields: Math.min(500, Math.round(entries / 100)),
    purchases: Math.round(entries * 0.4),
    applications: Math.round(entries * 0.45),
    operations: Math.round(entries * 0.15),
  });

/**
 * The rows are those of the demo, over and over, with quantities and fields that differ, so that no line is there twice. It has no
 * fewer fields than the demo.
 */
export function seasonWith(size: Size): WorkbookContent {
  const demo = new Map(
    demoTables().map(({ template, rows }) => [template.name, { headings: template.columns.map(({ heading }) => heading), rows }]),
  );
  const rowsOf = (name: string): Rows => demo.get(name)!.rows;
  const at = (name: string, heading: string) => demo.get(name)!.headings.indexOf(heading);
  const demoFields = rowsOf("Fields");
  const fieldCount = Math.max(demoFields.length, size.fields);
  const fields = repeat(demoFields, fieldCount, (row, _, round) => (round === 0 ? row : row.with(0, `${row[0]} ${round + 1}`)));
  const fieldNames = fields.map((row) => String(row[0]));
  const purchases = repeat(rowsOf("Purchases"), size.purchases, (row, _, round) => row.with(at("Purchases", "Quantity"), 1 + round / 4));
  // A field whose harvest is done has loads, in each of its copies.
  const loads = fields.flatMap((row, index) => {
    const original = demoFields[index % demoFields.length]![0];
    return rowsOf("Harvest")
      .filter(([field]) => field === original)
      .map((load) => load.with(0, row[0]!).with(at("Harvest", "Ticket"), `${load[at("Harvest", "Ticket")]} ${index}`));
  });
  const inFields = (name: string, count: number) =>
    repeat(rowsOf(name), count, (row, index) => row.with(0, fieldNames[index % fieldCount]!));
  const grown = new Map<string, Rows>([
    ["Fields", fields],
    ["Purchases", purchases],
    ["Harvest", loads],
    ["Applications", inFields("Applications", size.applications)],
    ["Operations", inFields("Operations", size.operations)],
  ]);
  const tables = [...demo].map(([name, { headings, rows }]) => ({
    name,
    headers: headings,
    rows: grown.get(name) ?? rows,
    body: { sheet: name, row: 1, column: 0 },
  }));
  return { dateSystem: "1900", tables, ranges: new Map() };
}

const repeat = (rows: Rows, count: number, vary: (row: readonly Cell[], index: number, round: number) => readonly Cell[]): Rows =>
  Array.from({ length: count }, (_, index) => vary(rows[index % rows.length]!, index, Math.floor(index / rows.length)));
