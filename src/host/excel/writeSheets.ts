import type { ResultSheet } from "../../workbook/resultSheet";
import { resultSheetMark, sheetNameChoices } from "../sheetNames";
import { HostError } from "../workbookHost";
import type { Supports } from "./supports";
import { putCharts } from "./putCharts";
import { putBlock } from "./putBlock";
import { putPage } from "./putPage";

/**
 * Writes result sheets in one round trip after the reading ones, so that one Undo takes them all back; answers
 * their names in the workbook. A sheet of ours is cleared and filled, not deleted and added: deleting a sheet would take the user's undo steps with it.
 */
export async function writeSheets(
  context: Excel.RequestContext, models: readonly ResultSheet[], supports: Supports, goOn: () => void,
): Promise<readonly string[]> {
  const places = await findPlaces(context, models);
  goOn();
  for (const { model, name, old } of places) {
    const sheet = old === null ? addMarked(context, name) : emptied(old);
    putBlock(sheet, model);
    putCharts(sheet, model.charts);
    putPage(sheet, model, supports);
  }
  await context.sync();
  return places.map(({ name }) => name);
}

/** Where a result sheet goes: a sheet of ours to be made again, or a free name for a new one (`old` is null). */
type Place = { readonly model: ResultSheet; readonly name: string; readonly old: OldSheet | null };
type OldSheet = { readonly sheet: Excel.Worksheet; readonly charts: Excel.ChartCollection };

/** Tries the names of each sheet, best first; one round trip for all sheets together, another where a name is somebody else's. */
async function findPlaces(context: Excel.RequestContext, models: readonly ResultSheet[]): Promise<Place[]> {
  const found = new Map<ResultSheet, Place>();
  const claimed = new Set<string>();
  const protection = context.workbook.protection.load("protected");
  let open = models.map((model) => ({ model, names: sheetNameChoices(model.name) }));
  while (open.length > 0) {
    const asked = open.map((each) => ({ each, ...askSheet(context, nextFree(each.names, claimed)) }));
    await context.sync();
    open = asked.flatMap(({ each, name, sheet, mark, charts }) => {
      const free = sheet.isNullObject;
      if (claimed.has(name.toLowerCase()) || (!free && mark.isNullObject)) return [each];
      claimed.add(name.toLowerCase());
      if (!free) refuseIfProtected(sheet.protection.protected, `The sheet ${name}`);
      else refuseIfProtected(protection.protected, "The structure of this workbook");
      found.set(each.model, { model: each.model, name: free ? name : sheet.name, old: free ? null : { sheet, charts } });
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
  const sheet = context.workbook.worksheets.getItemOrNullObject(name).load("name,protection/protected");
  const mark = sheet.names.getItemOrNullObject(resultSheetMark).load("name");
  return { name, sheet, mark, charts: sheet.charts.load("items/name") };
}

function refuseIfProtected(isProtected: boolean, what: string): void {
  if (isProtected) throw new HostError("protected", `${what} is protected. Unprotect it, then try again.`);
}

function addMarked(context: Excel.RequestContext, name: string): Excel.Worksheet {
  const sheet = context.workbook.worksheets.add(name);
  sheet.names.add(resultSheetMark, "=TRUE").visible = false;
  return sheet;
}

function emptied({ sheet, charts }: OldSheet): Excel.Worksheet {
  for (const chart of charts.items) chart.delete();
  const everything = sheet.getRange().untrack();
  everything.unmerge();
  everything.clear();
  sheet.freezePanes.unfreeze();
  return sheet;
}
