/** The other sheets of one layout: which of them are read with the one that was selected. */
import { splitSheet } from "../../host/address";
import { yearOfSheet } from "../../workbook/budgetSheets";

export const sheetOf = (address: string): string => splitSheet(address).sheet ?? address;

/** Those that are read unless the grower says otherwise: not the sheets of other years, whose costs are no costs of this season. */
export function readToo(address: string, alike: readonly string[]): ReadonlySet<string> {
  const year = yearOfSheet(sheetOf(address));
  return new Set(alike.filter((other) => yearOfSheet(sheetOf(other)) === year));
}

/** The same with one more or one less. */
export const withSheet = (read: ReadonlySet<string>, address: string, isRead: boolean): ReadonlySet<string> =>
  new Set(isRead ? [...read, address] : [...read].filter((each) => each !== address));
