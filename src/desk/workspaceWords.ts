/** What is said of an entry that was taken all the same. */
import { columnName, type Block } from "../host/address";
import type { GridBook } from "./gridBook";
import type { View } from "./views";

/** What of a pasted block lies beside the table that is shown, in words: no column of it holds an entry. */
export function besideTable({ table }: View, { left, right }: Block): string {
  if (table === null || right <= table.block.right) return "";
  const from = Math.max(left, table.block.right + 1);
  const columns = from === right ? `Column ${columnName(from)} lies` : `Columns ${columnName(from)} to ${columnName(right)} lie`;
  return ` ${columns} beside the table ${table.name.replaceAll("_", " ")} and ${from === right ? "is" : "are"} no part of its entries.`;
}

/** An entry that the list does not offer is taken all the same, and said to be so. */
export function warnOfChoice(
  book: GridBook,
  sheet: string,
  at: { row: number; column: number },
  text: string,
  say: (words: string) => void,
): void {
  const choices = book.choices(sheet, at);
  const typed = text.trim().toLowerCase();
  if (typed === "" || choices.length === 0 || choices.some((choice) => choice.toLowerCase() === typed)) return;
  say(`“${text.trim()}” is not in this cell's list. It was entered all the same.`);
}
