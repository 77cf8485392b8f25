/** Runs in a page of the build before its own programs: the bridge that Office.js talks to, and behind it a workbook. */
import { farm } from "../host/contractWorkbooks";
import type { Fixture } from "../host/fixture";
import { Bridge } from "../support/officeBridge/bridge";
import { workbookFrom } from "../support/officeBridge/fixtureWorkbook";

/** What a test asks of the Excel around the page. */
export type ExcelAround = {
  /** The files, in base 64, that were opened as workbooks of their own. */
  readonly opened: readonly string[];
  /** Lets every request that writes go unanswered from now on. */
  readonly silence: () => void;
};

const bridge = new Bridge();
const workbook = workbookFrom((window as { readonly ourWorkbook?: Fixture }).ourWorkbook ?? farm);
bridge.open(workbook);
const excelAround: ExcelAround = {
  opened: workbook.opened,
  silence: () => {
    bridge.silentWhenWriting = true;
  },
};
Object.assign(window, { _richApiNativeBridge: bridge, excelAround });
