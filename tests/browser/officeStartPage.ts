/** What runs in the page of the start test: the pane's start, and behind it a bridge with a workbook. */
import { startInExcel } from "../../src/host/excel/start";
import { farm } from "../host/contractWorkbooks";
import { Bridge } from "../support/officeBridge/bridge";
import { workbookFrom } from "../support/officeBridge/fixtureWorkbook";

const bridge = new Bridge();
bridge.open(workbookFrom(farm));

const page = {
  /** Starts the pane and, where that goes well, reads the workbook. */
  async start() {
    const started = await startInExcel((message) => {
      throw new Error(message);
    });
    if (!started.ok) return { message: started.message };
    const { tables } = await started.host.read();
    return { look: started.look, language: started.language, tables: tables.map(({ name }) => name) };
  },
};

export type StartPage = typeof page;
Object.assign(window, { _richApiNativeBridge: bridge, startPage: page });
