/** The desk as a bench: what a person does to a table by keyboard and by mouse, in Chromium over the page that `npm run build` made. */
import { existsSync } from "node:fs";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { serveFiles, startBrowser, watch, type Misdeeds, type StaticServer } from "../support/browser";
import { activeAddress, cell, showSheet } from "./deskPage";

const eventually = <Value>(look: () => Promise<Value>) => expect.poll(look, { timeout: 20_000, interval: 100 });

let server: StaticServer;
let browser: Browser;
let context: BrowserContext;
let page: Page;
let misdeeds: Misdeeds;

beforeAll(async () => {
  if (!existsSync("dist/index.html")) throw new Error("There is no build to try. Run: npm run build");
  server = await serveFiles({ "/": "dist" });
  browser = await startBrowser();
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});
beforeEach(async () => {
  context = await browser.newContext({ viewport: { width: 1280, height: 800 }, permissions: ["clipboard-read", "clipboard-write"] });
  page = await context.newPage();
  misdeeds = watch(page, server.origin);
  await page.goto(`${server.origin}/`);
  await page.locator(".sheet [data-active]").waitFor();
  await page.locator("#pane .pn-figure").first().waitFor();
});
afterEach(async () => {
  expect(misdeeds).toEqual({ elsewhere: [], errors: [] });
  await context.close();
});

describe("where things stay", () => {
  it("leaves the columns where they are when an entry's number is pressed", async () => {
    await page.locator('.sheet .row[data-row="4"] .row-name').click();
    await eventually(() => page.locator('.sheet .row[data-row="4"] .row-name').getAttribute("data-within")).toBe("");
    expect(await page.locator(".sheet").evaluate((sheet) => sheet.scrollLeft)).toBe(0);
    await page.locator('.sheet [data-column-name="1"]').click();
    await eventually(() => page.locator('.sheet .row[data-row="9"] > [data-column="1"]').getAttribute("aria-selected")).toBe("true");
    expect(await page.locator(".sheet").evaluate((sheet) => sheet.scrollTop)).toBe(0);
  });

  it("selects the cell that lies under words that run on from the one before", async () => {
    await showSheet(page, "About");
    await page.keyboard.press("Control+Home");
    await page.keyboard.type("A line of words that runs on over some of the cells beside it");
    await page.keyboard.press("Enter");
    const box = (await cell(page, "B1").boundingBox())!;
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    await eventually(() => activeAddress(page)).toBe("B1");
  });

  it("keeps the top bar whatever scrolls the page", async () => {
    await page.evaluate(() => {
      for (const each of document.querySelectorAll("html, body, #desk, .desk-root, .fui-FluentProvider, .desk, .both, .work")) each.scrollTop = 5000;
      window.scrollTo(0, 5000);
    });
    expect((await page.locator(".top").boundingBox())?.y).toBe(0);
    expect(await page.locator(".pane").evaluate((pane) => pane.scrollHeight > pane.clientHeight)).toBe(true);
  });

  it.each(["Stay here", "Escape", "Open without saving"])("is in reach again after the question about changes (%s)", async (answer) => {
    await showSheet(page, "Purchases");
    await page.keyboard.type("7");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Demo season" }).click();
    await page.getByRole("alertdialog").waitFor();
    if (answer === "Escape") await page.keyboard.press("Escape");
    else await page.getByRole("button", { name: answer }).click();
    await eventually(() => page.locator("dialog[open], [aria-hidden=true] .desk, .desk[aria-hidden], [inert]").count()).toBe(0);
    await eventually(() => page.getByRole("button", { name: "Save", exact: true }).count()).toBe(1);
    await eventually(() => page.locator(".file").innerText()).toMatch(answer === "Open without saving" ? /^demo-season\.xlsx$/ : /changes not saved/);
  });
});

describe("what is not in a file yet", () => {
  it("is also what is typed and not entered", async () => {
    await showSheet(page, "Purchases");
    await page.keyboard.type("12");
    await eventually(() => page.locator(".file").innerText()).toContain("changes not saved");
    const asked = page.waitForEvent("dialog");
    await page.close({ runBeforeUnload: true });
    const question = await asked;
    expect(question.type()).toBe("beforeunload");
    await question.accept();
  });
});
