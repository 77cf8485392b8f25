/** Opens the pane of `tests/browser/panePage.tsx` in Chromium, at a width and in a look. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { buildSync } from "esbuild";
import type { Browser, Page } from "playwright-core";
import { startBrowser } from "./browser";
import { opened } from "./demoReport";

export type PaneLook = {
  /**
   * What the page's address asks for, e.g. `workbook=problems&theme=dark`; `workbook=demo-season` is that of `shared`, on a day
   * of its June.
   */
  readonly ask?: string;
  readonly width?: number;
  readonly height?: number;
  readonly forcedColors?: boolean;
  readonly reducedMotion?: boolean;
  readonly colorScheme?: "light" | "dark";
};

export type PanePages = {
  /** A fresh page; `complaints` gathers what it logs as errors or throws. */
  readonly open: (look?: PaneLook) => Promise<{ readonly page: Page; readonly complaints: readonly string[] }>;
  /** Closes the pages that are open. */
  readonly closeAll: () => Promise<void>;
  readonly close: () => Promise<void>;
};

const address = "https://pane.invalid/";
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

export async function panePages(): Promise<PanePages> {
  const files = buildSync({
    entryPoints: ["tests/browser/panePage.tsx"],
    bundle: true,
    format: "iife",
    jsx: "automatic",
    write: false,
    outdir: "pane",
    define: { "process.env.NODE_ENV": '"production"' },
  }).outputFiles;
  const part = (ending: string) => files.find(({ path }) => path.endsWith(ending))?.text ?? "";
  const script = part(".js");
  const body = `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>Pane</title>
    <link rel="icon" href="data:,"><style>html, body, #pane { height: 100%; margin: 0; } ${part(".css")}</style><main id="pane"></main><script src="pane.js"></script></html>`;
  const browser: Browser = await startBrowser();
  return {
    open: async ({ ask = "", width = 320, height = 800, forcedColors = false, reducedMotion = false, colorScheme = "light" } = {}) => {
      const page = await browser.newPage({
        viewport: { width, height },
        colorScheme,
        forcedColors: forcedColors ? "active" : "none",
        reducedMotion: reducedMotion ? "reduce" : "no-preference",
      });
      const complaints: string[] = [];
      page.on("pageerror", (error) => complaints.push(error.message));
      page.on("console", (message) => {
        if (message.type() === "error") complaints.push(message.text());
      });
      await page.route("**/*", (route) =>
        route.fulfill(
          route.request().url().endsWith("pane.js")
            ? { contentType: "text/javascript; charset=utf-8", body: script }
            : { contentType: "text/html; charset=utf-8", body },
        ),
      );
      const shared = /workbook=(demo[a-z-]*)/.exec(ask)?.[1];
      if (shared !== undefined) {
        const { ranges, ...content } = await opened(readFileSync(`shared/${shared}.xlsx`)).read();
        await page.addInitScript(
          (given) => {
            Object.assign(window, { sharedContent: given });
          },
          { ...content, ranges: [...ranges] },
        );
        await page.clock.setFixedTime(new Date("2026-06-15T12:00:00"));
      }
      await page.goto(`${address}?${ask}`);
      return { page, complaints };
    },
    closeAll: async () => {
      await Promise.all(browser.contexts().map((context) => context.close()));
    },
    close: () => browser.close(),
  };
}

/** What axe finds wrong with the page as it is: one line for each rule and element, none where it finds nothing. */
export async function accessibilityFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    type Found = { violations: { id: string; nodes: { html: string; failureSummary?: string }[] }[] };
    const found = await (window as unknown as { axe: { run: () => Promise<Found> } }).axe.run();
    return found.violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 120)} ${failureSummary ?? ""}`),
    );
  });
}
