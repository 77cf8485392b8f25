/**
 * The zip as somebody without Node uses it: unpacked below a path of a plain server, in Chromium, the pane with the whole of
 * Office.js. `npm test` builds before it runs this.
 */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { unzipSync } from "fflate";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import project from "../../package.json";
import { serveFiles, startBrowser, watch } from "../support/browser";
import { beInExcel, serveAt } from "../support/officeInChromium";
import { accessibilityFaults } from "../support/panePages";

const address = "https://farm.invalid/some/where/pennyacre";
let folder: string;
let browser: Browser;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "pennyacre-zip-"));
  for (const [name, bytes] of Object.entries(unzipSync(readFileSync(`dist/pennyacre-${project.version}.zip`)))) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), bytes);
  }
  browser = await startBrowser();
});
afterEach(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()));
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function opened(file: string, { at = address, before = async (_: Page) => {}, headers = {} } = {}) {
  const context = await browser.newContext({ acceptDownloads: true, bypassCSP: file === "install.html" });
  const page = await context.newPage();
  const misdeeds = watch(page, new URL(at).origin);
  await serveAt(page, at, join(folder, "pennyacre"), headers);
  await before(page);
  await page.goto(`${at}/${file}`);
  return { page, misdeeds };
}

describe("what is in the zip", () => {
  it("is one folder with all that the build made but the source maps, and no manifest for another address", () => {
    expect(readdirSync(folder)).toEqual(["pennyacre"]);
    const inside = readdirSync(join(folder, "pennyacre"), { recursive: true, encoding: "utf8" }).sort();
    const built = readdirSync("dist", { recursive: true, encoding: "utf8" })
      .filter((name) => !/\.(map|zip)$/.test(name))
      .sort();
    expect(inside).toEqual(built);
    expect(inside).toEqual(expect.arrayContaining(["index.html", "pane.html", "help.html", "install.html", "demo-season.xlsx"]));
    expect(inside).not.toContain("manifest.xml");
  });
});

describe("install.html", () => {
  it("writes the manifest for the address where it lies, and every file that this names is there", async () => {
    const { page, misdeeds } = await opened("install.html");
    await page.getByText(`Excel will load Pennyacre from ${address}/pane.html.`).waitFor();
    const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save manifest.xml" }).click()]);
    expect(download.suggestedFilename()).toBe("manifest.xml");
    await page.getByText("Go on with step 2").waitFor();
    // The link that an administrator may give, in full.
    await page.locator("#administrator").getByText(`${address}/manifest.xml`).waitFor();
    const saved = join(folder, "saved.xml");
    await download.saveAs(saved);
    execFileSync("xmllint", ["--noout", saved]);
    const manifest = readFileSync(saved, "utf8");
    rmSync(saved);
    const named = [...manifest.matchAll(/DefaultValue="(https:[^"]*)"/g)].map(([, each]) => new URL(each!));
    expect(named.length).toBeGreaterThan(10);
    for (const { href, pathname } of named) {
      expect(href.startsWith(`${address}/`), href).toBe(true);
      expect(readFileSync(join(folder, "pennyacre", pathname.slice("/some/where/pennyacre".length))).length).toBeGreaterThan(100);
    }
    expect(await page.locator("#faults").isVisible()).toBe(false);
    expect(misdeeds).toEqual({ elsewhere: [], errors: [] });
  });

  it("writes none over http, and says what would keep Excel from showing the pane", async () => {
    const plain = await opened("install.html", { at: "http://farm.invalid/pennyacre" });
    await plain.page.getByText("Excel loads add-ins over https only").waitFor();
    expect(await plain.page.getByRole("button").count()).toBe(0);
    const framed = await opened("install.html", { headers: { "x-frame-options": "DENY" } });
    await framed.page.getByText("The server sends X-Frame-Options").waitFor();
  });

  it("shows the four buttons as the ribbon does", async () => {
    const { page } = await opened("install.html");
    await page.locator("#ribbon img").last().waitFor();
    const pictures = await page
      .locator("#ribbon img")
      .evaluateAll((all) => all.map((each) => [(each as HTMLImageElement).naturalWidth, each.getAttribute("src")]));
    expect(pictures).toEqual(["season", "inputs", "lender", "help"].map((name) => [32, `icons/${name}-32.png`]));
  });

  it("links to the desk, to the help and to its own parts, and each is there", async () => {
    const { page } = await opened("install.html");
    const links = await page.locator("a").evaluateAll((all) => all.map((link) => link.getAttribute("href")!));
    const inside = readdirSync(join(folder, "pennyacre"));
    for (const link of links) {
      if (link.startsWith("#")) expect(await page.locator(link).count(), link).toBe(1);
      else expect(inside).toContain(link);
    }
    expect(links).toEqual(expect.arrayContaining(["index.html", "help.html", "#web", "#windows", "#mac", "#administrator", "#without"]));
  });

  it.each([
    ["320 pixels, light", { width: 320, height: 700, colorScheme: "light" }],
    ["1,280 pixels, dark", { width: 1280, height: 800, colorScheme: "dark" }],
  ] as const)("fits and is accessible at %s", async (_, { colorScheme, ...size }) => {
    const { page } = await opened("install.html", {
      before: async (made) => {
        await made.setViewportSize(size);
        await made.emulateMedia({ colorScheme });
      },
    });
    await page.getByRole("button", { name: "Save manifest.xml" }).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  });
});

describe("below a path", () => {
  it("the pane starts with the whole of Office.js and shows the workbook that is open in Excel", async () => {
    const { page, misdeeds } = await opened("pane.html", { before: (made) => beInExcel(made) });
    await page.getByRole("tab", { name: "Season" }).waitFor();
    await page.getByRole("tab", { name: "Lender" }).click();
    await page.getByRole("tabpanel", { name: "Lender" }).waitFor();
    expect(misdeeds.elsewhere.filter((each) => !each.startsWith("https://appsforoffice.microsoft.com/"))).toEqual([]);
    expect(misdeeds.errors).toEqual([]);
  });

  it("the desk opens the demo, with all that it loads, from any server of files", async () => {
    const server = await serveFiles({ "/some/where/": folder });
    try {
      const page = await browser.newPage();
      const misdeeds = watch(page, server.origin);
      await page.goto(`${server.origin}/some/where/pennyacre/`);
      await page.locator("#pane .pn-figure").first().waitFor();
      expect(misdeeds).toEqual({ elsewhere: [], errors: [] });
    } finally {
      await server.close();
    }
  });
});
