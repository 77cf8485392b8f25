/** A workbook from a fixture behind the real library in Node, and the host over it, as the contract wants it. */
import { excelHost, type ExcelHostOptions } from "../../../src/host/excel/excelHost";
import type { Fixture } from "../../host/fixture";
import type { OpenedHost } from "../../host/workbookHost.contract";
import { blockAt } from "./addresses";
import type { Bridge } from "./bridge";
import { snapshotOf, workbookFrom } from "./fixtureWorkbook";
import { officeInNode } from "./nodeOffice";
import type { WorkbookModel } from "./workbookModel";

export type OpenedExcel = OpenedHost & { readonly bridge: Bridge; readonly workbook: WorkbookModel };

export function openExcel(fixture: Fixture, options: ExcelHostOptions = { quiet: 100, seconds: 5 }): OpenedExcel {
  const bridge = officeInNode();
  const workbook = workbookFrom(fixture);
  bridge.open(workbook);
  return { bridge, workbook, host: excelHost(options), ...hands(bridge, workbook) };
}

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
