/**
 * The desk as one HTML file: opened from a disk in Chromium with no connection, it edits, works formulas out and saves. `npm test`
 * builds before it runs this.
 */
import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createHash } from "node:crypto";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { oneFile } from "../../shared/build/oneFile.js";
import { startBrowser } from "../support/browser";
import { chain } from "../support/xlsx/heavyFiles";
import { opened as openedFile } from "../support/xlsx/opened";
import { activeAddress, cell, outlooks, saveWorkbook, showSheet, tableOnSheet, typeRow } from "../browser/deskPage";

const eventually = <Value>(look: () => Promise<Value>) => expect.poll(look, { timeout: 30_000, interval: 100 });

let folder: string;
let address: string;
let browser: Browser;
let page: Page;
/** Whatever was asked of anywhere, or went wrong. */
const misdeeds: string[] = [];

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "our farm "));
  const file = join(folder, "pennyacre-desk.html");
  copyFileSync("dist/pennyacre-desk.html", file);
  address = pathToFileURL(file).href;
  browser = await startBrowser();
});
const deskOpened = async () => {
  misdeeds.length = 0;
  page = await opened(address);
  await page.locator(".sheet [data-active]").waitFor();
  await page.locator("#pane .pn-figure").first().waitFor();
};
afterEach(async () => {
  expect(misdeeds).toEqual([]);
  await Promise.all(browser.contexts().map((context) => context.close()));
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function opened(at: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1500, height: 900 }, acceptDownloads: true });
  await context.setOffline(true);
  context.on("request", (request) => {
    const url = request.url();
    if (!/^(data|blob):/.test(url) && url.split("#")[0] !== address) misdeeds.push(url);
  });
  context.on("weberror", (error) => misdeeds.push(error.error().message));
  context.on("console", (message) => {
    if (message.type() === "error") misdeeds.push(message.text());
  });
  const made = await context.newPage();
  await made.goto(at);
  return made;
}

it("is what index.html sends to where that, too, is opened from a disk, which lets it load nothing", async () => {
  copyFileSync("dist/index.html", join(folder, "index.html"));
  for (const script of readdirSync("dist").filter((name) => /^desk\..*\.js$/.test(name)))
    copyFileSync(join("dist", script), join(folder, script));
  const context = await browser.newContext();
  const beside = await context.newPage();
  await beside.goto(pathToFileURL(join(folder, "index.html")).href);
  await beside.getByText("This page works on a web server only, and was opened from a disk.").waitFor();
  await beside.getByRole("link", { name: "Open pennyacre-desk.html" }).click();
  await beside.locator("#pane .pn-figure").first().waitFor();
  expect(beside.url()).toBe(address);
});

describe("from a disk, without a connection", () => {
  beforeEach(deskOpened);

  it("opens the demo season, moves its figures with a purchase, and saves what was typed", async () => {
    expect(await page.locator(".file").innerText()).toContain("demo-season.xlsx");
    const before = await outlooks(page);
    await showSheet(page, "Purchases");
    const { headings, below } = await tableOnSheet(page);
    await typeRow(page, headings, { Date: "7/20/2026", Item: "Shop supplies", Quantity: "1000", Unit: "each", Amount: "$9,000" });
    await eventually(() => outlooks(page)).not.toEqual(before);
    expect(await cell(page, below).getAttribute("data-part")).toBe("body");

    const saved = join(folder, "saved.xlsx");
    await saveWorkbook(page, saved);
    const { tables } = await openedFile(readFileSync(saved)).read();
    const rows = (name: string) => tables.find((table) => table.name === name)!.rows;
    expect(rows("Purchases").at(-1)).toEqual(expect.arrayContaining(["Shop supplies", 1000, "each", 9000]));
    expect(rows("Fields").length).toBe(14);
  });

  it("works a formula out in its worker, with the engine that it carries", async () => {
    await showSheet(page, "About");
    await page.keyboard.press("Control+End");
    await page.keyboard.press("ArrowDown");
    const at = await activeAddress(page);
    await page.keyboard.type("=SUM(19,23)");
    await page.keyboard.press("Enter");
    await eventually(() => cell(page, at).innerText()).toBe("42");
    await eventually(() => cell(page, at).getAttribute("data-stale")).toBeNull();
    expect(page.workers()).toHaveLength(1);
    expect(page.workers()[0]!.url()).toMatch(/^blob:/);
  });

  it("reads a file that may take long in a worker first, whose program it carries", async () => {
    const slow = join(folder, "slow.xlsx");
    writeFileSync(
      slow,
      chain(60_000, (row) => `A${row - 1}+1`),
    );
    const worker = page.waitForEvent("worker");
    await page.getByLabel("Workbook file").setInputFiles(slow);
    expect((await worker).url()).toMatch(/^blob:/);
    const ask = page.getByRole("button", { name: "Open it" });
    const shown = page.locator(".file", { hasText: "slow.xlsx" });
    await ask.or(shown).first().waitFor();
    if (await ask.isVisible()) await ask.click();
    await shown.waitFor();
  });

  it("opens a file of the grower's own, the other demo, and an empty workbook", async () => {
    await page.getByRole("button", { name: "Demo with entries to fix" }).click();
    await eventually(() => page.locator(".file").innerText()).toContain("demo-season-with-problems.xlsx");
    await page.getByLabel("Workbook file").setInputFiles("shared/demo-season.xlsx");
    await eventually(() => page.locator(".file").innerText()).toMatch(/^demo-season\.xlsx/);
    await page.getByRole("button", { name: "New", exact: true }).click();
    await page.getByRole("heading", { name: "Start: your own cost per acre" }).waitFor();
  });

  it("keeps a draft against a crash and offers it back", async () => {
    await showSheet(page, "About");
    await page.keyboard.press("Control+End");
    await page.keyboard.press("ArrowDown");
    const at = await activeAddress(page);
    await page.keyboard.type("half a season");
    await page.keyboard.press("Enter");
    await page.locator(".kept").waitFor();
    const next = await page.context().newPage();
    await page.close({ runBeforeUnload: false });
    await next.goto(address);
    await next.getByRole("button", { name: "Open the draft of demo-season.xlsx" }).click();
    await showSheet(next, "About");
    await eventually(() => cell(next, at).innerText()).toBe("half a season");
  });

  it("has the help inside, as a page of its own that links to its own parts", async () => {
    const [help] = await Promise.all([page.waitForEvent("popup"), page.locator("a.help").click()]);
    await help.getByRole("heading", { name: "Pennyacre: help", level: 1 }).waitFor();
    expect(await help.title()).toBe("Pennyacre: help");
    await help.getByRole("link", { name: "Cautions" }).first().click();
    await help.reload();
    await help.getByRole("heading", { name: "Cautions" }).waitFor();
    // What others wrote of it stands in it, with the words of its licence.
    const notices = help.locator("#third-party-notices");
    await notices.locator("summary").click();
    await notices.getByText(/Permission is hereby granted, free of charge/).waitFor();
    expect(await notices.locator("pre").innerText()).toBe(readFileSync("dist/third-party-notices.txt", "utf8"));
    expect(await help.locator("a").evaluateAll((all) => all.every((link) => link.getAttribute("href")!.startsWith("#")))).toBe(true);
  });
});

describe("its policy", () => {
  it("allows its one program by its hash, a worker of its own, and no connection", () => {
    const html = readFileSync("dist/pennyacre-desk.html", "utf8");
    const programs = [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(([, text]) => text!);
    expect(programs).toHaveLength(1);
    const hash = createHash("sha256").update(programs[0]!).digest("base64");
    const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1] ?? "";
    const rules = Object.fromEntries(policy.split("; ").map((rule) => [rule.split(" ")[0], rule.slice(rule.indexOf(" ") + 1)]));
    expect(rules).toEqual({
      "default-src": "'none'",
      "script-src": `'sha256-${hash}' 'wasm-unsafe-eval'`,
      "worker-src": "blob:",
      "connect-src": "'none'",
      "style-src": "'unsafe-inline'",
      "img-src": "data:",
      "font-src": "data:",
      "object-src": "'none'",
      "base-uri": "'none'",
      "form-action": "'none'",
    });
    expect(html).not.toMatch(/<(?:link|script|img)[^>]* (?:src|href)="(?!data:)/);
  });

  it("holds in Chromium: another program does not run, and nothing is fetched", async () => {
    await deskOpened();
    const went = await page.evaluate(async () => {
      const script = document.createElement("script");
      script.textContent = "window.ran = true";
      document.body.append(script);
      const fetched = await fetch("data:text/plain,here").then(
        () => "fetched",
        () => "refused",
      );
      return { ran: "ran" in window, fetched };
    });
    expect(went).toEqual({ ran: false, fetched: "refused" });
    expect(misdeeds.splice(0).length).toBeGreaterThan(0);
  });
});

describe("the builder", () => {
  const page = readFileSync("src/desk/index.html", "utf8");
  const parts = { page, style: "", icon: new Uint8Array(), files: {} };

  it("refuses a program that would end its own element, or is none", () => {
    expect(() => oneFile({ ...parts, script: 'a("</script>")' })).toThrow();
    expect(() => oneFile({ ...parts, script: "a(\r\n)" })).toThrow();
    expect(() => oneFile({ ...parts, script: "a < !--b; c <!--d" })).toThrow();
  });

  it("keeps the opening of a comment from hiding the program's end, and refuses a page that it does not know", () => {
    expect(oneFile({ ...parts, script: 'a("<!--")' })).toContain('<script>a("<\\!--")</script>');
    expect(() => oneFile({ ...parts, page: page.replace("Content-Security-Policy", "Policy"), script: "a()" })).toThrow(/no policy/);
    expect(() => oneFile({ ...parts, page: page.replace("</body>", ""), script: "a()" })).toThrow(/0 times: <\/body>/);
  });
});
