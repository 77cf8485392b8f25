import type { OpenedHost } from "../../host/workbookHost.contract";
import { blockAt } from "./addresses";
import type { Bridge } from "./bridge";
import { snapshotOf } from "./fixtureWorkbook";
import type { WorkbookModel } from "./workbookModel";

/** What somebody at the workbook does, and what can be seen of it. */
export function hands(bridge: Bridge, workbook: WorkbookModel): Omit<OpenedHost, "host"> {
  const blockOn = (sheet: string, address: string) => {
    const found = workbook.sheet(sheet);
    if (!found) throw new Error(`No sheet ${sheet}`);
    return blockAt(found, address);
  };
  return {
    snapshot: async () => structuredClone(snapshotOf(workbook)),
    type: async (sheet, cell, value) => {
      const at = blockOn(sheet, cell);
      workbook.put(at, at.row, at.column, value);
      bridge.tellChanges("Unknown");
    },
    pick: async (sheet, range) => {
      workbook.selected = blockOn(sheet, range);
    },
    close: async () => undefined,
  };
}
