import type { InputTable } from "../../workbook/inputTable";
import { sameName } from "../sheetNames";
import { HostError } from "../workbookHost";
import type { Command, Found } from "./command";
import { placesForTables, unfinishedMark, type TablePlace } from "./placesForTables";
import { putTable } from "./putTable";
import type { Supports } from "./supports";

/**
 * Makes the tables that the workbook lacks, each on a new sheet, in one round trip after those that read. A sheet bears a mark from
 * right after it is made until its table is complete, so that one that was begun and not finished is finished at the next try.
 *
 * @throws HostError before anything is written: `protected`, `taken` where a name of the workbook stands in the way
 */
export const makeTables =
  (tables: readonly InputTable[], supports: Supports): Command<readonly string[]> =>
  async (context) => {
    const { workbook } = context;
    const there = workbook.tables.load("items/name");
    const names = workbook.names.load("items/name");
    const protection = workbook.protection.load("protected");
    await context.sync();
    const isThere = (model: InputTable) => there.items.some((table) => sameName(table.name, model.name));
    const places = await placesForTables(context, tables, isThere);
    if (places.length === 0) return { done: [] };
    if (protection.protected && places.some(({ old }) => old === null)) {
      throw new HostError(
        "protected",
        "The structure of this workbook is protected, so no sheet can be added. Unprotect it, then try again.",
      );
    }
    const taken = places
      .filter(({ model }) => !isThere(model))
      .flatMap(({ model }) => names.items.find(({ name }) => name.toLowerCase() === model.name.toLowerCase())?.name ?? []);
    if (taken.length > 0) throw new HostError("taken", takenWords(taken));
    return {
      value: places.map(({ model }) => model.name),
      write: () => {
        for (const place of places) putTable(workbook, place, supports);
      },
      look: (looking) => lookForTables(looking, places),
    };
  };

const takenWords = (names: readonly string[]): string => {
  const [one] = names;
  return names.length === 1
    ? `The name ${one} already stands for something else in this workbook, and a table cannot bear it too.`
    : `The names ${names.join(", ")} already stand for something else in this workbook, and tables cannot bear them too.`;
};

/** Whether the tables are there, and no sheet of theirs bears the mark of an unfinished one any more. */
async function lookForTables(context: Excel.RequestContext, places: readonly TablePlace[]): Promise<Found> {
  const { tables, worksheets } = context.workbook;
  const asked = places.map(({ model, name, old }) => {
    const sheet = worksheets.getItemOrNullObject(name).load("name");
    return {
      old,
      sheet,
      table: tables.getItemOrNullObject(model.name).load("name"),
      mark: sheet.names.getItemOrNullObject(unfinishedMark).load("name"),
    };
  });
  await context.sync();
  if (asked.every(({ table, mark }) => !table.isNullObject && mark.isNullObject)) return "there";
  return asked.every(({ old, sheet, table }) => table.isNullObject && (old !== null || sheet.isNullObject)) ? "not there" : "partly";
}
