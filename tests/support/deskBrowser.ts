/** The built desk in Chromium, for a file of tests: one server and browser for all, a context for each test, and no misdeeds. */
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect } from "vitest";
import { serveFiles, startBrowser, watch, type Misdeeds, type StaticServer } from "./browser";

export type DeskBrowser = {
  /** A folder for files of the tests, gone after them. */
  readonly folder: () => string;
  readonly origin: () => string;
  readonly context: () => BrowserContext;
  /** What the last page did that it should not, so far. */
  readonly misdeeds: () => Misdeeds;
  /** A new page on the desk, in the context of the test; what the last one does that it should not fails the test. */
  readonly open: () => Promise<Page>;
};

/**
 * Sets it up for the file that calls it.
 *
 * @param path below the origin where the desk is served, as another site may serve it
 */
export function deskBrowser(options: BrowserContextOptions, path = "/"): DeskBrowser {
  let folder: string;
  let server: StaticServer;
  let browser: Browser;
  let context: BrowserContext | null = null;
  let misdeeds: Misdeeds = { elsewhere: [], errors: [] };
  beforeAll(async () => {
    if (!existsSync("dist/index.html")) throw new Error("There is no build to try. Run: npm run build");
    folder = mkdtempSync(join(tmpdir(), "pennyacre-desk-"));
    server = await serveFiles({ [path]: "dist" });
    browser = await startBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    await server?.close();
    rmSync(folder, { recursive: true, force: true });
  });
  afterEach(async () => {
    expect(misdeeds).toEqual({ elsewhere: [], errors: [] });
    await context?.close();
    context = null;
  });
  return {
    folder: () => folder,
    origin: () => server.origin,
    context: () => context!,
    misdeeds: () => misdeeds,
    open: async () => {
      context ??= await browser.newContext(options);
      const page = await context.newPage();
      misdeeds = watch(page, server.origin);
      await page.goto(server.origin + path);
      return page;
    },
  };
}
