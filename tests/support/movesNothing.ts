/** Columns of numbers and dates that move no figure in some rows, each with its reason: what is not listed moves one, or is told. */
import { declaredTables } from "../../src/workbook/columns/all";
import type { Still } from "../../src/workbook/columns/column";
import type { RawTable } from "../../src/workbook/cell";
import { showsPercent } from "../../src/workbook/percentCells";
import { plainHeading } from "../../src/workbook/words";

export type MovesNothing = Still & { readonly table: string; readonly column: string };

export const movesNothing: readonly MovesNothing[] = declaredTables.flatMap(({ table, columns }) =>
  Object.values(columns).flatMap(({ heading, movesNothing: still = [] }) => still.map((each) => ({ table, column: heading, ...each }))),
);

/** Whether a cell is among them. */
export function isListed(table: RawTable, row: number, column: number): boolean {
  const said = (heading: string) =>
    String(table.rows[row]![table.headers.findIndex((each) => plainHeading(each) === plainHeading(heading))] ?? "").trim();
  return movesNothing.some((each) => {
    if (plainHeading(each.table) !== plainHeading(table.name) || plainHeading(each.column) !== plainHeading(table.headers[column]!))
      return false;
    const { where } = each;
    return where === undefined || (where.says === "filled" ? said(where.column) !== "" : said(where.column) === where.says);
  });
}

/** Columns in which a part of one and its percent are the same: a slip of two places moves nothing where it ends below one. */
const percentColumns = declaredTables.flatMap(({ table, columns }) =>
  Object.values(columns)
    .filter(({ numberFormat = "" }) => showsPercent(numberFormat))
    .map(({ heading }) => ({ table, heading })),
);

/** Whether a column is among them. */
export const isPercent = (table: RawTable, column: number): boolean =>
  percentColumns.some(
    (each) => plainHeading(each.table) === plainHeading(table.name) && plainHeading(each.heading) === plainHeading(table.headers[column]!),
  );
