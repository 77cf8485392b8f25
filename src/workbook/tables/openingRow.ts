/** Rows of Purchases that were left over from last season or paid then. */
import { purchaseColumns } from "../columns/purchases";
import type { Row } from "../tableRow";

const { columns } = purchaseColumns;

/** Whether a row is opening stock. A day on which it is to be paid says otherwise, and is told. */
export function isOpeningRow(row: Row): boolean {
  if (row.of(columns.opening) !== "yes") return false;
  if (row.of(columns.paidOn) !== null) besideAnother(row, columns.paidOn, columns.opening);
  return true;
}

/** Of two cells that say two things the second counts. */
export const besideAnother = (row: Row, ignored: { readonly heading: string }, counts: { readonly heading: string }): null =>
  row.fault("entry-beside", ignored, { other: { ...row.source, column: counts.heading } });
