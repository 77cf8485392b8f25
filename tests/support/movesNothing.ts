/** Columns of numbers and dates that move no figure in some rows, each with its reason: what is not listed moves one, or is told. */
import { declaredTables } from "../../src/workbook/columns/all";
import type { Still } from "../../src/workbook/columns/column";
import type { RawTable } from "../../src/workbook/cell";
import { plainHeading } from "../../src/workbook/words";

export type MovesNothing = Still & { readonly table: string; readonly column: string };

const ofDeclared: readonly MovesNothing[] = declaredTables.flatMap(({ table, columns }) =>
  Object.values(columns).flatMap(({ heading, movesNothing: still = [] }) => still.map((each) => ({ table, column: heading, ...each }))));

export const movesNothing: readonly MovesNothing[] = [
  ...ofDeclared,
  { table: "Planter checks", column: "Row", why: "It says which row of the planter; every row costs the same." },
  { table: "Harvest", column: "Date", why: "The last load of a field ends its work of the season; any other day counts the same bushels." },
];

/** Whether a cell is among them. */
export function isListed(table: RawTable, row: number, column: number): boolean {
  const said = (heading: string) => String(table.rows[row]![table.headers.findIndex((each) => plainHeading(each) === plainHeading(heading))] ?? "").trim();
  return movesNothing.some((each) => {
    if (plainHeading(each.table) !== plainHeading(table.name) || plainHeading(each.column) !== plainHeading(table.headers[column]!)) return false;
    const { where } = each;
    return where === undefined || (where.says === "filled" ? said(where.column) !== "" : said(where.column) === where.says);
  });
}

/** Columns in which a part of one and its percent are the same: a slip of two places moves nothing where it ends below one. */
export const percentColumns: readonly { readonly table: string; readonly columns: readonly string[] }[] = [
  { table: "Crops", columns: ["Standard moisture", "Expected harvest moisture"] }, { table: "Fields", columns: ["Operator share of crop %", "Uniformity loss %"] },
  { table: "Items", columns: ["Operator share of cost %"] }, { table: "Budget", columns: ["Operator share of cost %"] }, { table: "Machines", columns: ["Field efficiency", "Real interest rate", "Taxes, insurance, housing"] },
  { table: "Loans", columns: ["Rate"] }, { table: "Insurance", columns: ["Coverage"] }, { table: "Harvest", columns: ["Moisture"] }, { table: "Changes", columns: ["Interest rate"] },
];

/** Whether a column is among them. */
export const isPercent = (table: RawTable, column: number): boolean => percentColumns.some((each) =>
  plainHeading(each.table) === plainHeading(table.name) && each.columns.some((heading) => plainHeading(heading) === plainHeading(table.headers[column]!)));
