/** The contract of a workbook host once more, in Chromium: Excel's panes are web pages, and the library differs from Node there. */
import { createRequire } from "node:module";
import { buildSync } from "esbuild";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { HostError, type WorkbookHost } from "../../src/host/workbookHost";
import { farm } from "../host/contractWorkbooks";
import type { Snapshot } from "../host/fixture";
import { describeWorkbookHost, type OpenedHost } from "../host/workbookHost.contract";
import { startBrowser } from "../support/browser";
import { fromJson, toJson } from "../support/mapsAsJson";
import type { Answer, ExcelPage } from "./excelHostPage";

type InPage = { readonly excelPage: ExcelPage };

let browser: Browser;
let page: Page;
let changed: () => void = () => undefined;
const complaints: string[] = [];

beforeAll(async () => {
  browser = await startBrowser();
  page = await browser.newPage();
  page.on("pageerror", (error) => complaints.push(error.message));
  // A page that is served by no one: an address in the reserved domain, answered here.
  await page.route("**/*", (route) => route.fulfill({ contentType: "text/html", body: "<!doctype html><title>Pane</title>" }));
  await page.goto("https://pane.invalid/");
  await page.exposeFunction("changed", () => changed());
  const [bundle] = buildSync({ entryPoints: ["tests/browser/excelHostPage.ts"], bundle: true, format: "iife", write: false }).outputFiles;
  await page.addScriptTag({ content: bundle!.text });
  await page.addScriptTag({ path: createRequire(import.meta.url).resolve("@microsoft/office-js/dist/excel-web-16.00.js") });
  await page.evaluate(() => (window as unknown as InPage).excelPage.libraryLoaded());
});
afterAll(() => browser?.close());

const call = async (name: Exclude<keyof WorkbookHost, "onChanged">, ...args: unknown[]): Promise<never> => {
  const answer = await page.evaluate(([method, given]) => (window as unknown as InPage).excelPage.host(method, given), [
    name,
    toJson(args),
  ] as const);
  return valueOf(answer) as never;
};

function valueOf(answer: Answer): unknown {
  if ("reason" in answer) throw new HostError(answer.reason, answer.message);
  return fromJson(answer.value);
}

const hand = (name: "snapshot" | "type" | "pick", ...args: unknown[]): Promise<unknown> =>
  page.evaluate(([method, given]) => (window as unknown as InPage).excelPage.hand(method, given), [name, args] as const);

const host: WorkbookHost = {
  read: () => call("read"),
  write: (sheets) => call("write", sheets),
  makeTables: (tables) => call("makeTables", tables),
  enterRows: (entries) => call("enterRows", entries),
  addRows: (table, rows) => call("addRows", table, rows),
  growTable: (table, rows) => call("growTable", table, rows),
  changeCells: (changes) => call("changeCells", changes),
  addColumn: (column) => call("addColumn", column),
  select: (place) => call("select", place),
  selection: () => call("selection"),
  alike: (address) => call("alike", address),
  onChanged: async (tell) => {
    changed = tell;
    await page.evaluate(() => (window as unknown as InPage).excelPage.watch());
    return () => page.evaluate(() => (window as unknown as InPage).excelPage.unwatch());
  },
};

const hands: Omit<OpenedHost, "host"> = {
  snapshot: () => hand("snapshot") as Promise<Snapshot>,
  type: async (...args) => void (await hand("type", ...args)),
  pick: async (...args) => void (await hand("pick", ...args)),
  close: async () => undefined,
};

describeWorkbookHost("Excel in a browser", async (fixture) => {
  await page.evaluate((given) => (window as unknown as InPage).excelPage.open(given), fixture);
  return { host, ...hands };
});

describe("Excel's pane in a browser", () => {
  it("reads in two round trips, and nothing on the page has complained", async () => {
    await page.evaluate((given) => (window as unknown as InPage).excelPage.open(given), farm);
    await host.read();
    expect(await page.evaluate(() => (window as unknown as InPage).excelPage.trips())).toBe(2);
    expect(complaints).toEqual([]);
  });
});
