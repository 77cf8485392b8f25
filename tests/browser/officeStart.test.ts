/** How the pane starts under the whole of Office.js, in Excel for Windows and outside Excel. Its files come from the installed package. */
import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { buildSync } from "esbuild";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startBrowser } from "../support/browser";
import { becomeDesktop, type DesktopOptions } from "../support/officeBridge/desktopContext";
import type { StartPage } from "./officeStartPage";

const library = dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/dist/office.js"));
const bundle = buildSync({ entryPoints: ["tests/browser/officeStartPage.ts"], bundle: true, format: "iife", write: false }).outputFiles[0]!
  .text;
const html = `<!doctype html><title>Pane</title><script src="pane.js"></script><script src="office/office.js"></script>`;

let browser: Browser;
beforeAll(async () => void (browser = await startBrowser()));
afterAll(() => browser?.close());

/** Opens the page, in Excel for Windows if `desktop` is given, and tells what starting gave. */
async function started(desktop?: DesktopOptions): Promise<Awaited<ReturnType<StartPage["start"]>>> {
  const context = await browser.newContext(); // the library keeps what it knows of its host in the session's storage
  const page = await context.newPage();
  await page.route("**/*", (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname === "/") return route.fulfill({ contentType: "text/html", body: html });
    if (pathname === "/pane.js") return route.fulfill({ contentType: "text/javascript", body: bundle });
    const file = join(library, pathname.split("/office/")[1] ?? basename(pathname));
    return existsSync(file) ? route.fulfill({ path: file }) : route.fulfill({ status: 404 });
  });
  if (desktop) await page.addInitScript(becomeDesktop, desktop);
  await page.goto("https://pane.invalid/");
  try {
    return await page.evaluate(() => (window as unknown as { startPage: StartPage }).startPage.start());
  } finally {
    await context.close();
  }
}

describe("the pane's start under Office.js", () => {
  it("opens the workbook in Excel for Windows and knows a dark Office from a light one", async () => {
    expect(await started({ excelApi: "1.9", background: "262626" })).toEqual({
      look: { dark: true },
      language: "en-US",
      tables: ["Fields", "Purchases"],
    });
    expect(await started({ excelApi: "1.17", background: "f5f5f5" })).toMatchObject({ look: { dark: false } });
  });

  it("says so in an Excel that is too old, and outside Excel", async () => {
    expect(await started({ excelApi: "1.6", background: "ffffff" })).toEqual({ message: expect.stringMatching(/too old/) as string });
    expect(await started()).toEqual({ message: expect.stringMatching(/Open it from the ribbon in Excel/) as string });
  });
});
