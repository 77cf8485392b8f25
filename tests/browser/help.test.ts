/** The help as a page of the build: it reads without a program, in every look, at any width, and it prints. */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveFiles, startBrowser, watch } from "../support/browser";
import { accessibilityFaults } from "../support/panePages";

let browser: Browser;
let server: Awaited<ReturnType<typeof serveFiles>>;
beforeAll(async () => {
  [browser, server] = [await startBrowser(), await serveFiles({ "/": "dist" })];
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

async function opened(look: Parameters<Browser["newPage"]>[0]) {
  // The page's own policy forbids programs, the accessibility check's among them.
  const page = await browser.newPage({ ...look, bypassCSP: true });
  const misdeeds = watch(page, server.origin);
  await page.goto(`${server.origin}/help.html`);
  return { page, misdeeds };
}

describe.each([
  ["320 pixels, light", { viewport: { width: 320, height: 600 }, colorScheme: "light" }],
  ["1,280 pixels, dark", { viewport: { width: 1280, height: 800 }, colorScheme: "dark" }],
  ["450 pixels, forced colours", { viewport: { width: 450, height: 800 }, forcedColors: "active" }],
] as const)("help.html at %s", (_, look) => {
  it("is accessible, fits, and asks for nothing from elsewhere", async () => {
    const { page, misdeeds } = await opened(look);
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
    expect(misdeeds).toEqual({ elsewhere: [], errors: [] });
    await page.close();
  });
});

it("reads without any program, goes where its contents say, and prints without them", async () => {
  const page = await browser.newPage({ javaScriptEnabled: false, viewport: { width: 800, height: 600 } });
  await page.goto(`${server.origin}/help.html`);
  await page.getByRole("navigation").getByRole("link", { name: "Undo and Take back" }).click();
  expect(page.url()).toMatch(/#undo$/);
  expect(await page.getByRole("heading", { name: "Undo and Take back" }).isVisible()).toBe(true);
  await page.emulateMedia({ media: "print" });
  expect(await page.getByRole("navigation").isVisible()).toBe(false);
  expect(await page.getByText("not financial, tax or legal advice", { exact: false }).first().isVisible()).toBe(true);
  await page.close();
});
