/** What leaves the pages, workers included, and what their policy forbids: asked of the network itself, and of the page. */
import { type Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { deskBrowser } from "../support/deskBrowser";

const desk = deskBrowser({ viewport: { width: 1200, height: 800 } });

/** Every request of the whole context: of the page, of its frames and of its workers. */
async function loggedDesk(): Promise<{ readonly page: Page; readonly asked: string[] }> {
  const page = await desk.open();
  const asked: string[] = [];
  desk.context().on("request", (request) => asked.push(request.url()));
  return { page, asked };
}
const isOwn = (url: string) => url.startsWith(`${desk.origin()}/`) || /^(blob|data):/.test(url);

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
    const refused = await page.evaluate(async () => {
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
    desk.misdeeds().errors.length = 0; // the browser tells each refusal
    desk.misdeeds().elsewhere.length = 0; // what was tried; a policy refuses it before it leaves
    expect(refused).toMatchObject({ fetch: "refused", script: "refused", image: "refused", text: "refused" });
    // A refusal is told a moment after it.
    const told = () => page.evaluate(() => [...new Set((globalThis as unknown as { told: string[] }).told)].sort());
    await expect
      .poll(told, { timeout: 30_000 })
      .toEqual(["connect-src", "frame-src", "img-src", "object-src", "script-src", "script-src-elem", "worker-src"]);
  });
});
