import { excelHost, type ExcelHostOptions } from "../../../src/host/excel/excelHost";
import type { Fixture } from "../../host/fixture";
import type { OpenedHost } from "../../host/workbookHost.contract";
import type { Bridge } from "./bridge";
import { workbookFrom } from "./fixtureWorkbook";
import { hands } from "./hands";
import { officeInNode } from "./nodeOffice";
import type { WorkbookModel } from "./workbookModel";

export type OpenedExcel = OpenedHost & { readonly bridge: Bridge; readonly workbook: WorkbookModel };

/** A workbook from a fixture behind the real library in Node, and the host over it, as the contract wants it. */
export function openExcel(fixture: Fixture, options: ExcelHostOptions = { quiet: 100, seconds: 5 }): OpenedExcel {
  const bridge = officeInNode();
  const workbook = workbookFrom(fixture);
  bridge.open(workbook);
  return { bridge, workbook, host: excelHost(options), ...hands(bridge, workbook) };
}
