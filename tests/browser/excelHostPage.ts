/** What runs in the page of the browser test: the host, the bridge and the workbook, behind functions that take plain data. */
import { excelHost } from "../../src/host/excel/excelHost";
import { HostError, type WorkbookHost } from "../../src/host/workbookHost";
import type { Fixture } from "../host/fixture";
import type { OpenedHost } from "../host/workbookHost.contract";
import { Bridge } from "../support/officeBridge/bridge";
import { workbookFrom } from "../support/officeBridge/fixtureWorkbook";
import { setOfficeContext } from "../support/officeBridge/officeContext";
import { hands } from "../support/officeBridge/hands";
import { fromJson, toJson } from "../support/mapsAsJson";

/** What a method gave, as JSON; a refusal comes back as data. */
export type Answer = { readonly value: string } | { readonly reason: HostError["reason"]; readonly message: string };

const bridge = new Bridge();
let opened: OpenedHost | undefined;
let stop: (() => Promise<void>) | undefined;

const page = {
  /** Called once the library has been loaded. */
  libraryLoaded: () => setOfficeContext(bridge),
  open(fixture: Fixture): void {
    const workbook = workbookFrom(fixture);
    bridge.open(workbook);
    opened = { host: excelHost({ quiet: 100, seconds: 5 }), ...hands(bridge, workbook) };
  },
  trips: () => bridge.trips.length,
  /** Calls a method of the host with arguments as JSON. */
  async host(name: Exclude<keyof WorkbookHost, "onChanged">, args: string): Promise<Answer> {
    try {
      const method = opened!.host[name] as (...given: readonly unknown[]) => Promise<unknown>;
      return { value: toJson(await method(...(fromJson(args) as unknown[]))) };
    } catch (error) {
      if (!(error instanceof HostError)) throw error;
      return { reason: error.reason, message: error.message };
    }
  },
  hand: (name: "snapshot" | "type" | "pick", args: readonly unknown[]): Promise<unknown> =>
    (opened![name] as (...given: readonly unknown[]) => Promise<unknown>)(...args),
  async watch(): Promise<void> {
    stop = await opened!.host.onChanged(() => void (window as unknown as { changed(): Promise<void> }).changed());
  },
  unwatch: (): Promise<void> => stop!(),
};

export type ExcelPage = typeof page;
Object.assign(window, { _richApiNativeBridge: bridge, excelPage: page });
