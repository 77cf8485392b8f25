/** What the page says where the pane itself cannot: in an Excel that is too old, and where nothing comes. `npm test` builds first. */
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { startBrowser } from "../support/browser";
import { beInExcel, serveAt } from "../support/officeInChromium";

const address = "https://farm.invalid/pennyacre";
const office = "https://appsforoffice.microsoft.com/**";
let browser: Browser;
beforeAll(async () => void (browser = await startBrowser()));
afterEach(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()));
});
afterAll(() => browser?.close());

/** Opens the pane's page after `before`, as far as it comes. */
async function opened(before: (page: Page) => Promise<unknown>): Promise<Page> {
  const page = await (await browser.newContext()).newPage();
  await serveAt(page, address, "dist");
  await beInExcel(page);
  await before(page);
  await page.goto(`${address}/pane.html`, { waitUntil: "commit" });
  return page;
}
const said = (page: Page, words: string) => page.getByRole("alert").getByText(words).waitFor();

describe("an Excel that is too old", () => {
  it.each(["Object.hasOwn", "Array.prototype.findLast", "window.structuredClone"])(
    "by its browser part, which lacks %s, is told which Excel it takes, and nothing takes the place of that",
    async (lacks) => {
      const page = await opened((made) => made.addInitScript({ content: `delete ${lacks};` }));
      await said(page, "Pennyacre needs Excel 2021 or later, Microsoft 365, or Excel on the web.");
      await page.waitForLoadState("load");
      expect(await page.getByRole("tab").count()).toBe(0);
      expect(await page.locator("#pane").innerText()).not.toContain("Starting");
    },
  );

  it("by a program that it cannot read", async () => {
    const page = await opened((made) =>
      made.route(/\/pane\.[0-9a-f]+\.js$/, (route) => route.fulfill({ contentType: "text/javascript", body: "const a = /(/;" })),
    );
    await said(page, "Pennyacre could not start in this Excel.");
    await said(page, "Pennyacre needs Excel 2021 or later, Microsoft 365, or Excel on the web.");
  });
});

describe("nothing that comes", () => {
  it("from Microsoft's server is told after ten seconds, and the pane starts all the same when it does", async () => {
    let answer = (): void => {
      throw new Error("Office.js was not asked for");
    };
    const arrives = new Promise<void>((resolve) => {
      answer = resolve;
    });
    const page = await opened(async (made) => {
      await made.clock.install();
      await made.route(`${office}/office.js`, async (route) => {
        await arrives;
        await route.fallback();
      });
    });
    await page.getByText("Starting …").waitFor();
    await page.clock.runFor(9_000);
    await page.getByText("Starting …").waitFor();
    await page.clock.runFor(1_100);
    await said(page, "Nothing has come from Microsoft's server or from Excel for ten seconds.");
    answer();
    await page.clock.resume();
    await page.getByRole("tab", { name: "Season" }).waitFor();
  });

  it("because the library is refused, or the pane's own program, is told at once", async () => {
    const without = await opened((made) => made.route(office, (route) => route.abort()));
    await said(without, "Office.js could not be loaded.");
    const lost = await opened((made) => made.route(/\/pane\.[0-9a-f]+\.js$/, (route) => route.abort()));
    await said(lost, "A part of Pennyacre did not arrive.");
  });
});
