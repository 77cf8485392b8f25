/** The year of a season whose setting Season year is not entered: the one year of its field work, where all of it agrees. */
import { applicationColumns } from "./columns/applications";
import type { Named } from "./columns/column";
import { harvestColumns } from "./columns/harvest";
import { operationColumns } from "./columns/operations";
import { purchaseColumns } from "./columns/purchases";
import { standCountColumns } from "./columns/standCounts";
import type { RawTable } from "./cell";
import { fieldColumns } from "./columns/fields";
import { readDate, type DateStyle } from "./dates";
import type { TableName } from "./tableNames";
import { isBlank } from "./numbers";
import { plainHeading } from "./words";

/** Days on which something is done in a field: these fall in the season itself. */
type Days = readonly (readonly [{ readonly table: TableName }, ...Named[]])[];
const fieldDays: Days = [
  [fieldColumns, fieldColumns.columns.plannedPlanting, fieldColumns.columns.planted],
  [applicationColumns, applicationColumns.columns.date],
  [operationColumns, operationColumns.columns.date],
  [standCountColumns, standCountColumns.columns.date],
  [harvestColumns, harvestColumns.columns.date],
];
/** Days of bills, which may be paid the autumn before; they are asked only where no field work has a date. */
const billDays: Days = [[purchaseColumns, purchaseColumns.columns.date]];

/** The years that the dated entries are of, in order: the season's year where it is one alone; none where none has a date. */
export function yearsOfEntries(tables: ReadonlyMap<TableName, RawTable>, style: DateStyle): readonly string[] {
  const ofWork = yearsIn(tables, style, fieldDays);
  return ofWork.length > 0 ? ofWork : yearsIn(tables, style, billDays);
}

function yearsIn(tables: ReadonlyMap<TableName, RawTable>, style: DateStyle, days: Days): readonly string[] {
  const years = new Set<string>();
  for (const [{ table }, ...asked] of days) {
    const raw = tables.get(table);
    if (raw === undefined) continue;
    const wanted = new Set(asked.map(({ heading }) => plainHeading(heading)));
    const columns = raw.headers.flatMap((heading, index) => (wanted.has(plainHeading(heading)) ? [index] : []));
    for (const row of raw.rows) {
      for (const column of columns) {
        const cell = row[column] ?? "";
        const year = isBlank(cell) ? undefined : readDate(cell, style)?.slice(0, 4);
        if (year !== undefined) years.add(year);
      }
    }
  }
  return [...years].sort();
}
