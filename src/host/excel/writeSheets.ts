import type { Cell } from "../../workbook/cell";
import type { ResultSheet, SheetCell } from "../../workbook/resultSheet";
import { resultSheetMark, sheetNameChoices } from "../sheetNames";
import { HostError } from "../workbookHost";
import { sameCell } from "../rowSays";
import type { Command, Found } from "./command";
import type { Supports } from "./supports";
import { putCharts } from "./putCharts";
import { putBlock } from "./putBlock";
import { putPage } from "./putPage";

/** What our mark says of a sheet that is being written, and of one that is complete. */
const [underWay, complete] = ["=0", "=1"];

/**
 * Writes result sheets in one round trip after the reading ones, so that one Undo takes them all back; answers
 * their names in the workbook. A sheet of ours is cleared and filled, not deleted and added: deleting a sheet would take the
 * user's undo steps with it.
 */
export const writeSheets =
  (models: readonly ResultSheet[], supports: Supports): Command<readonly string[]> =>
  async (context) => {
    if (models.length === 0) return { done: [] };
    const places = await findPlaces(context, models);
    return {
      value: places.map(({ name }) => name),
      write: () => {
        for (const { model, name, old } of places) {
          const sheet = old?.sheet ?? context.workbook.worksheets.add(name);
          const mark = old?.isMarked ? sheet.names.getItem(resultSheetMark) : sheet.names.add(resultSheetMark, underWay);
          mark.visible = false;
          if (old?.isMarked) {
            mark.formula = underWay;
            empty(old);
          }
          putBlock(sheet, model);
          putCharts(sheet, model.charts);
          putPage(sheet, model, supports);
          mark.formula = complete;
        }
      },
      look: (looking) => lookForSheets(looking, places),
    };
  };

/** Where a result sheet goes: a sheet of ours to be made again, or a free name for a new one (`old` is null). */
type Place = { readonly model: ResultSheet; readonly name: string; readonly old: OldSheet | null };
type OldSheet = { readonly sheet: Excel.Worksheet; readonly charts: Excel.ChartCollection; readonly isMarked: boolean };

/** Tries the names of each sheet, best first; one round trip for all sheets together, another where a name is somebody else's. */
async function findPlaces(context: Excel.RequestContext, models: readonly ResultSheet[]): Promise<Place[]> {
  const found = new Map<ResultSheet, Place>();
  const claimed = new Set<string>();
  const protection = context.workbook.protection.load("protected");
  let open = models.map((model) => ({ model, names: sheetNameChoices(model.name) }));
  while (open.length > 0) {
    const asked = open.map((each) => ({ each, ...askSheet(context, nextFree(each.names, claimed)) }));
    await context.sync();
    open = asked.flatMap(({ each, name, sheet, mark, charts, used, tables, names }) => {
      const free = sheet.isNullObject;
      const isMarked = !free && !mark.isNullObject;
      // A sheet of that name with nothing at all on it is what an earlier try left that got no further than making it.
      const holdsNothing =
        !free &&
        used.isNullObject &&
        tables.items.length === 0 &&
        charts.items.length === 0 &&
        names.items.length === 0 &&
        sheet.visibility === "Visible";
      if (claimed.has(name.toLowerCase()) || !(free || isMarked || holdsNothing)) return [each];
      claimed.add(name.toLowerCase());
      if (!free) refuseIfProtected(sheet.protection.protected, `The sheet ${name}`);
      else refuseIfProtected(protection.protected, "The structure of this workbook");
      found.set(each.model, { model: each.model, name: free ? name : sheet.name, old: free ? null : { sheet, charts, isMarked } });
      return [];
    });
  }
  return models.flatMap((model) => found.get(model) ?? []);
}

function nextFree(names: Generator<string, never>, claimed: ReadonlySet<string>): string {
  for (;;) {
    const { value } = names.next();
    if (!claimed.has(value.toLowerCase())) return value;
  }
}

function askSheet(context: Excel.RequestContext, name: string) {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name).load("name,visibility,protection/protected");
  const names = sheet.names.load("items/name");
  const mark = sheet.names.getItemOrNullObject(resultSheetMark).load("name");
  const used = sheet.getUsedRangeOrNullObject().untrack().load("rowIndex");
  return { name, sheet, names, mark, used, tables: sheet.tables.load("items/name"), charts: sheet.charts.load("items/name") };
}

function refuseIfProtected(isProtected: boolean, what: string): void {
  if (isProtected) throw new HostError("protected", `${what} is protected. Unprotect it, then try again.`);
}

function empty({ sheet, charts }: OldSheet): void {
  for (const chart of charts.items) chart.delete();
  const everything = sheet.getRange().untrack();
  everything.unmerge();
  everything.clear();
  sheet.freezePanes.unfreeze();
}

/** Whether all sheets are marked as complete and say what they are to say, formulas aside, which Excel writes in its own way. */
async function lookForSheets(context: Excel.RequestContext, places: readonly Place[]): Promise<Found> {
  const asked = places.map(({ model, name }) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(name).load("name");
    const { rows, columns } = { rows: model.rows.length, columns: Math.max(0, ...model.rows.map((row) => row.length)) };
    const block = rows * columns === 0 ? null : sheet.getRangeByIndexes(0, 0, rows, columns).untrack().load("values");
    return { model, sheet, mark: sheet.names.getItemOrNullObject(resultSheetMark).load("formula"), block };
  });
  await context.sync();
  const states = asked.map(({ model, sheet, mark, block }): Found => {
    if (sheet.isNullObject) return "not there";
    if (mark.isNullObject || mark.formula === underWay) return "partly";
    const says = ({ value, formula }: SheetCell, row: number, column: number) =>
      formula !== undefined || sameCell((block?.values[row]?.[column] ?? "") as Cell, value);
    return model.rows.every((cells, row) => cells.every((cell, column) => says(cell, row, column))) ? "there" : "not there";
  });
  if (states.every((state) => state === "there")) return "there";
  // They are written one after the other, so that nothing was begun where the first was not.
  return states[0] === "not there" ? "not there" : "partly";
}
