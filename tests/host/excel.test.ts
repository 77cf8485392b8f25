import { officeInNode } from "../support/officeBridge/nodeOffice";
import { snapshotOf, workbookFrom } from "../support/officeBridge/fixtureWorkbook";
import { blockAt } from "../support/officeBridge/addresses";
import { excelHost } from "../../src/host/excel/excelHost";
import { describeWorkbookHost, type OpenedHost } from "./workbookHost.contract";
import type { Fixture } from "./fixture";

async function open(fixture: Fixture): Promise<OpenedHost> {
  const bridge = officeInNode();
  const workbook = workbookFrom(fixture);
  bridge.open(workbook);
  const sheetAt = (name: string) => workbook.sheet(name)!;
  return {
    host: excelHost({ quiet: 100, seconds: 5 }),
    snapshot: async () => structuredClone(snapshotOf(workbook)),
    type: async (name, cell, value) => {
      const { sheet, row, column } = blockAt(sheetAt(name), cell);
      workbook.put({ sheet }, row, column, value);
      bridge.tellChanges("Unknown");
    },
    pick: async (name, range) => {
      workbook.selected = blockAt(sheetAt(name), range);
    },
    close: async () => undefined,
  };
}

describeWorkbookHost("Excel", open);
