/** Whether a row still says what it said when it was read, for both hosts. */
import type { Cell } from "../workbook/cell";
import { sameName } from "./sheetNames";
import { HostError, type CellChange } from "./workbookHost";

/** Whether a cell is given back as it was given: numbers to the fifteen digits that Excel keeps. */
export const sameCell = (one: Cell, other: Cell): boolean =>
  one === other || (typeof one === "number" && typeof other === "number" && one.toPrecision(15) === other.toPrecision(15));

/**
 * Refuses a row that says something else by now than the change expects; a cell that has its new value already is no other row.
 *
 * @throws HostError `moved`
 */
export function refuseOtherRow({ table, row, column, value, says }: CellChange, headings: readonly string[], cells: readonly Cell[]): void {
  for (const [heading, expected] of says ?? []) {
    const found = cells[headings.findIndex((each) => sameName(each, heading))];
    if (found === undefined || sameCell(found, expected) || (sameName(heading, column) && sameCell(found, value))) continue;
    throw new HostError("moved", `${table}, entry ${row} says something else by now: ${heading} was “${expected}” and is “${found}”.`);
  }
}
