/** The pane as built beside a workbook, as Excel for Windows would show it: how soon its figure stands there, and what it loads for it. */
import { gzipSync } from "node:zlib";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { areaName } from "../../src/host/address";
import { demoTables } from "../../shared/demo/tables";
import type { Fixture } from "../host/fixture";
import { beInExcel, serveAt } from "../support/officeInChromium";

export type PaneMeasured = {
  /** Milliseconds from asking for the page until the farm's figure stands there, and on a processor slowed four times. */
  readonly start: number;
  readonly startSlowed: number;
  /** Our own files that were loaded until then, and their bytes as a server packs them. */
  readonly requests: number;
  readonly packedBytes: number;
};

const address = "https://pane.invalid";
const figure = ".pn-farm-main";

/** The demo as tables in the workbook around the pane. */
const demo = (): Fixture => ({
  sheets: demoTables().map(({ template: { name, sheet, columns }, rows }) => ({
    name: sheet,
    cells: [columns.map(({ heading }) => heading), ...rows],
    tables: [{ name, range: areaName({ top: 0, left: 0, bottom: rows.length, right: columns.length - 1 }) }],
  })),
});

export async function paneStart(browser: Browser): Promise<PaneMeasured> {
  const workbook = demo();
  const started = async (slowed: number) => {
    const context = await browser.newContext({ viewport: { width: 350, height: 800 } });
    const page = await context.newPage();
    const loaded: string[] = [];
    page.on("request", (request) => {
      if (request.url().startsWith(`${address}/`)) loaded.push(new URL(request.url()).pathname);
    });
    // Where sources run untranslated, functions are given their names by a function that the page has not.
    await page.addInitScript({ content: "globalThis.__name = (of) => of;" });
    await serveAt(page, address, "dist");
    await beInExcel(page, {}, workbook);
    const session = await context.newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: slowed });
    await page.goto(`${address}/pane.html`, { waitUntil: "commit" });
    await page.locator(figure).waitFor({ timeout: 60_000 });
    const time = await page.evaluate(() => performance.now());
    await context.close();
    return { time, loaded };
  };
  const [first, second, slowed] = [await started(1), await started(1), await started(4)];
  return {
    start: Math.min(first.time, second.time),
    startSlowed: slowed.time,
    requests: first.loaded.length,
    packedBytes: first.loaded.reduce((sum, path) => sum + gzipSync(readFileSync(join("dist", path))).length, 0),
  };
}
