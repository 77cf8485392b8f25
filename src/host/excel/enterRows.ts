/** Rows for several tables in one round trip: added to those that are there, the others made with them. */
import type { InputTable } from "../../workbook/inputTable";
import { sameName } from "../sheetNames";
import type { TableRows } from "../workbookHost";
import { addRows, endsWith, type AddedRows } from "./addRows";
import { isReady, type Command, type Found, type Ready } from "./command";
import { makeTables } from "./makeExcelTables";
import type { Supports } from "./supports";

/** What was entered, to be taken back: rows of tables that were there, and tables that were made. */
export type EnteredRows = { readonly added: readonly AddedRows[]; readonly made: readonly InputTable[] };

/** Hidden name of the workbook, worth 1, from before the first of several tables is entered until after the last. */
const unfinishedEntry = "Pennyacre_unfinished_entry";

/**
 * While an entry was begun and not finished, a table that has its rows already is not given them again: so that another try finishes it.
 *
 * @throws HostError before anything is written, as adding rows and making tables do
 */
export const enterRows =
  (entries: readonly TableRows[], supports: Supports): Command<EnteredRows> =>
  async (context) => {
    const { tables, names } = context.workbook;
    const there = tables.load("items/name");
    const mark = names.getItemOrNullObject(unfinishedEntry).load("name");
    await context.sync();
    const isThere = ({ table }: TableRows) => there.items.some(({ name }) => sameName(name, table.name));
    const modelOf = ({ table, rows }: TableRows): InputTable => ({
      ...table,
      rows: rows.map((row) => table.columns.map(({ heading }) => row.get(heading) ?? "")),
    });
    const made = entries.filter((entry) => !isThere(entry)).map(modelOf);
    // Also those that an earlier try began.
    const begun = entries.filter(isThere).map(modelOf);
    const parts: (Ready<unknown> | { readonly done: unknown })[] = [
      await makeTables(mark.isNullObject ? made : [...made, ...begun], supports)(context),
    ];
    const added: AddedRows[] = [];
    for (const { table, rows } of entries.filter(isThere)) {
      if (!mark.isNullObject && (await endsWith(context, table.name, rows))) continue;
      const adding = await addRows(table.name, rows)(context);
      parts.push(adding);
      added.push(isReady(adding) ? adding.value : adding.done);
    }
    const ready = parts.filter(isReady);
    const isLeft = !mark.isNullObject;
    if (ready.length === 0 && !isLeft) return { done: { made: [], added: [] } };
    return {
      value: { made, added: added.filter(({ cells }) => cells.length > 0) },
      write: () => {
        const begin = isLeft ? mark : names.add(unfinishedEntry, "=1");
        begin.visible = false;
        for (const part of ready) part.write();
        begin.delete();
      },
      look: async (looking) => {
        const left = looking.workbook.names.getItemOrNullObject(unfinishedEntry).load("name");
        await looking.sync();
        const found: Found[] = [];
        for (const part of ready) found.push(await part.look(looking));
        return left.isNullObject ? together(found) : "partly";
      },
    };
  };

/** What is there of several parts that were written together. */
export function together(found: readonly Found[]): Found {
  const [first = "there"] = found;
  if (found.every((each) => each === first)) return first;
  return found.includes("unclear") ? "unclear" : "partly";
}
