/** A page of the build in Chromium as Excel for Windows would show it: with the whole of Office.js, and a workbook of ours behind it. */
import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { buildSync } from "esbuild";
import type { Page } from "playwright-core";
import type { Fixture } from "../host/fixture";
import { becomeDesktop, type DesktopOptions } from "./officeBridge/desktopContext";

const library = dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/dist/office.js"));
const address = "https://appsforoffice.microsoft.com/lib/1/hosted/";

/** Answers for Microsoft's server with the files of the installed package, which are the same. */
export async function serveOfficeLibrary(page: Page): Promise<void> {
  await page.route(`${address}**`, (route) => {
    const file = join(library, route.request().url().slice(address.length).split("?")[0]!);
    const found = [file, join(library, basename(file))].find(existsSync);
    return found === undefined ? route.fulfill({ status: 404 }) : route.fulfill({ path: found, contentType: "text/javascript" });
  });
}

/** The same, in an Excel in which a workbook is open (that of `tests/browser/officeBridgePage.ts`). To be called before the page is. */
export async function beInExcel(page: Page, desktop: Partial<DesktopOptions> = {}, workbook: Fixture | null = null): Promise<void> {
  await serveOfficeLibrary(page);
  const [bridge] = buildSync({
    entryPoints: ["tests/browser/officeBridgePage.ts"],
    bundle: true,
    format: "iife",
    write: false,
  }).outputFiles;
  await page.addInitScript(becomeDesktop, { excelApi: "1.17", background: "f5f5f5", ...desktop });
  if (workbook !== null) await page.addInitScript((given) => void Object.assign(window, { ourWorkbook: given }), workbook);
  await page.addInitScript({ content: bridge!.text });
}

/** Serves a folder at an address that nobody serves, as a host of static files would: over https, below a path. */
export async function serveAt(page: Page, at: string, folder: string, headers: Readonly<Record<string, string>> = {}): Promise<void> {
  await page.route(`${at}/**`, (route) => {
    const file = join(folder, new URL(route.request().url()).pathname.slice(new URL(at).pathname.length));
    return existsSync(file) ? route.fulfill({ path: file, headers }) : route.fulfill({ status: 404 });
  });
}
