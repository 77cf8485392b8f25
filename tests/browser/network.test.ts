/** What leaves the pages, workers included, and what their policy forbids: asked of the network itself, and of the page. */
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import type { Fixture } from "../host/fixture";
import { deskBrowser } from "../support/deskBrowser";
import { beInExcel, serveAt } from "../support/officeInChromium";

const desk = deskBrowser({ viewport: { width: 1200, height: 800 } });

/** Every request of the whole context: of the page, of its frames and of its workers. */
async function loggedDesk(): Promise<{ readonly page: Page; readonly asked: string[] }> {
  const page = await desk.open();
  const asked: string[] = [];
  desk.context().on("request", (request) => asked.push(request.url()));
  return { page, asked };
}
const isOwn = (url: string) => url.startsWith(`${desk.origin()}/`) || /^(blob|data):/.test(url);

/** Tries on a page what its policy is to refuse: to ask somebody else, to load a program from elsewhere and to make one of text. */
const triedElsewhere = (page: Page) =>
  page.evaluate(async () => {
    const told: string[] = [];
    (globalThis as unknown as { told: string[] }).told = told;
    document.addEventListener("securitypolicyviolation", ({ effectiveDirective }) => told.push(effectiveDirective));
    const elsewhere = "https://elsewhere.invalid/";
    const failed = (trying: Promise<unknown>) =>
      trying.then(
        () => "went",
        () => "refused",
      );
    const tag = (name: "script" | "img" | "iframe" | "object", attribute: string) =>
      new Promise<string>((ended) => {
        const element = document.createElement(name);
        element.addEventListener("error", () => ended("refused"));
        element.addEventListener("load", () => ended("loaded"));
        element.setAttribute(attribute, elsewhere);
        document.body.append(element);
        setTimeout(() => ended("nothing"), 2000);
      });
    const results = {
      fetch: await failed(fetch(elsewhere)),
      script: await tag("script", "src"),
      image: await tag("img", "src"),
      beacon: navigator.sendBeacon(elsewhere, "x"),
      text: (() => {
        try {
          return String(new Function("return 1")());
        } catch {
          return "refused";
        }
      })(),
      worker: (() => {
        try {
          new Worker(URL.createObjectURL(new Blob(["postMessage(1)"])));
          return "made";
        } catch {
          return "refused";
        }
      })(),
    };
    await tag("iframe", "src");
    await tag("object", "data");
    return results;
  });

/** The parts of the policy that the page was told of, once each. A refusal is told a moment after it. */
const toldOf = (page: Page) =>
  expect.poll(() => page.evaluate(() => [...new Set((globalThis as unknown as { told: string[] }).told)].sort()), { timeout: 30_000 });
const refusals = { fetch: "refused", script: "refused", image: "refused", text: "refused" };
const directives = ["connect-src", "frame-src", "img-src", "object-src", "script-src", "script-src-elem", "worker-src"];

describe("the desk", () => {
  it("asks nobody else for anything while a workbook with formulas is opened, worked out and changed", async () => {
    const { page, asked } = await loggedDesk();
    await page.reload();
    const worker = page.waitForEvent("worker");
    await page.locator('input[type="file"]').first().setInputFiles("tests/fixtures/seasonFormulas.xlsx");
    // The engine is a worker of its own, and its program comes from where the page lies.
    await (await worker).evaluate(() => 1);
    await expect.poll(() => asked.some((url) => url.endsWith(".wasm")), { timeout: 60_000 }).toBe(true);
    expect(asked.filter((url) => !isOwn(url))).toEqual([]);
  });

  it("cannot ask anybody else, load a program from elsewhere or make one of text: its policy forbids it", async () => {
    const { page } = await loggedDesk();
    const refused = await triedElsewhere(page);
    desk.misdeeds().errors.length = 0; // the browser tells each refusal
    desk.misdeeds().elsewhere.length = 0; // what was tried; a policy refuses it before it leaves
    expect(refused).toMatchObject(refusals);
    await toldOf(page).toEqual(directives);
  });
});

describe("the pane in Excel", () => {
  const address = "https://farm.invalid/tools";
  const library = "https://appsforoffice.microsoft.com/";
  const workbook: Fixture = {
    sheets: [
      {
        name: "Crops",
        cells: [
          ["Crop", "Expected price"],
          ["Corn", 4.5],
        ],
        tables: [{ name: "Crops", range: "A1:B2" }],
      },
    ],
  };
  /** The pane of the build beside a workbook, and every request of its context that went to neither its host nor Office's library. */
  async function paneInExcel(): Promise<{ readonly page: Page; readonly elsewhere: string[] }> {
    await (await desk.open()).close();
    const page = await desk.context().newPage();
    const elsewhere: string[] = [];
    desk.context().on("request", (request) => {
      if (![`${address}/`, library, "blob:", "data:"].some((own) => request.url().startsWith(own))) elsewhere.push(request.url());
    });
    await serveAt(page, address, "dist");
    await beInExcel(page, {}, workbook);
    await page.goto(`${address}/pane.html`);
    await page.getByRole("tab", { name: "Season", selected: true }).waitFor();
    return { page, elsewhere };
  }

  it("asks nobody but its own host and Office's library while its pages are gone through", async () => {
    const { page, elsewhere } = await paneInExcel();
    for (const name of ["Fields", "Inputs", "Changes", "Lender", "More"]) {
      await page.getByRole("tab", { name }).click();
      await page.getByRole("tabpanel", { name }).waitFor();
    }
    expect(elsewhere).toEqual([]);
  });

  it("cannot ask anybody else, load a program from elsewhere or make one of text: its policy forbids it", async () => {
    const { page } = await paneInExcel();
    expect(await triedElsewhere(page)).toMatchObject(refusals);
    await toldOf(page).toEqual(directives);
  });

  it("may ask those that its policy names, and no other address of the same endings", () => {
    const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(readFileSync("dist/pane.html", "utf8"))![1]!;
    const rules = new Map(policy.split("; ").map((rule) => [rule.split(" ")[0]!, rule.split(" ").slice(1)]));
    const outside = [...new Set([...rules.values()].flat().filter((each) => each.startsWith("http")))].sort();
    expect(outside).toEqual([
      "https://*.aspnetcdn.com",
      "https://*.microsoft.com",
      "https://*.oaspapps.com",
      "https://*.office.com",
      "https://*.office.net",
      "https://appsforoffice.microsoft.com",
    ]);
    expect([rules.get("default-src"), rules.get("object-src"), rules.get("base-uri"), rules.get("form-action")]).toEqual([
      ["'self'"],
      ["'none'"],
      ["'none'"],
      ["'none'"],
    ]);
    expect([...rules.values()].flat()).not.toContain("'unsafe-eval'");
  });
});
