/** Runs in a page of the build before its own programs: the bridge that Office.js talks to, and behind it a workbook. */
import { farm } from "../host/contractWorkbooks";
import { Bridge } from "../support/officeBridge/bridge";
import { workbookFrom } from "../support/officeBridge/fixtureWorkbook";

const bridge = new Bridge();
bridge.open(workbookFrom(farm));
Object.assign(window, { _richApiNativeBridge: bridge });
