/**
 * What the ribbon's buttons do in an Excel for Windows with the whole of Office.js: one pane, opened at a page, and nothing typed is lost
 * by it. `npm test` builds before it runs this.
 */
import { readFileSync } from "node:fs";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { ExcelAround } from "../browser/officeBridgePage";
import type { Fixture } from "../host/fixture";
import { startBrowser } from "../support/browser";
import type { DesktopOptions } from "../support/officeBridge/desktopContext";
import { beInExcel, serveAt } from "../support/officeInChromium";

const address = "https://farm.invalid/pennyacre";
const season: Fixture = {
  sheets: [
    {
      name: "Crops",
      cells: [
        ["Crop", "Yield unit", "Expected price"],
        ["Corn", "bu", 4.5],
      ],
      tables: [{ name: "Crops", range: "A1:C2" }],
    },
    {
      name: "Fields",
      cells: [
        ["Field", "Crop", "Acres", "Yield goal"],
        ["North forty", "Corn", 40, 200],
      ],
      tables: [{ name: "Fields", range: "A1:D2" }],
    },
    {
      name: "Budget",
      cells: [
        ["For", "Kind", "Amount", "Basis"],
        ["all", "seed", 110, "per acre"],
      ],
      tables: [{ name: "Budget", range: "A1:D2" }],
    },
  ],
};
const empty: Fixture = { sheets: [{ name: "Sheet1", cells: [] }] };

let browser: Browser;
let context: BrowserContext;
let page: Page;
beforeAll(async () => void (browser = await startBrowser()));
beforeEach(async () => {
  context = await browser.newContext({ viewport: { width: 350, height: 900 } });
  page = await context.newPage();
});
afterEach(() => context.close());
afterAll(() => browser?.close());

async function around(workbook: Fixture, desktop: Partial<DesktopOptions> = {}, on = page): Promise<void> {
  await serveAt(on, address, "dist");
  await beInExcel(on, { workbook: "C:\\farm\\season.xlsx", ...desktop }, workbook);
}
/** What Excel does as a button of the ribbon is pressed: it loads the button's page in the one pane. */
const press = (search: string, on = page) => on.goto(`${address}/pane.html${search}`);
const excel = <Value>(look: (around: ExcelAround) => Value) => page.evaluate(`(${look.toString()})(window.excelAround)`) as Promise<Value>;
const purchase = (on = page) => on.getByRole("form", { name: "What did you buy?" });

describe("a button of the ribbon", () => {
  it.each([
    ["?page=season", "Season"],
    ["?page=inputs", "Inputs"],
    ["?page=lender", "Lender"],
    ["?page=nowhere", "Season"],
    ["", "Season"],
  ])("opens the pane with %s at %s", async (search, tab) => {
    await around(season);
    await press(search);
    await page.getByRole("tab", { name: tab, selected: true }).waitFor();
    await page.getByRole("tabpanel", { name: tab }).waitFor();
  });

  it("opens the help, in a workbook with nothing in it too, and leads back to the start from there", async () => {
    await around(season);
    await press("?page=help");
    await page.getByRole("heading", { name: "Help", level: 2 }).waitFor();
    const other = await context.newPage();
    await around(empty, {}, other);
    await press("?page=help", other);
    await other.getByRole("heading", { name: "Help", level: 1 }).waitFor();
    await other.getByRole("button", { name: "‹ Start" }).click();
    await other.getByRole("heading", { name: "Start: your own cost per acre" }).waitFor();
    await press("?page=lender", other);
    await other.getByText("There is nothing yet to show a lender, so begin here.").waitFor();
  });

  it("loses nothing that is half typed, and shows it in no other workbook", async () => {
    await around(season);
    await press("?page=inputs");
    await purchase().getByLabel(/^Item/).fill("Twine");
    await purchase()
      .getByLabel(/^Amount in all/)
      .fill("412.50");
    await press("?page=lender");
    await page.getByRole("tabpanel", { name: "Lender" }).waitFor();
    await press("?page=inputs");
    await expect
      .poll(() =>
        purchase()
          .getByLabel(/^Amount in all/)
          .inputValue(),
      )
      .toBe("412.50");
    expect(await purchase().getByLabel(/^Item/).inputValue()).toBe("Twine");
    expect(await page.getByText("The pane was opened anew").count()).toBe(0);

    // The same window of a browser, with a neighbour's workbook in it now.
    const neighbour = await context.newPage();
    await around(season, { workbook: "C:\\farm\\neighbour.xlsx" }, neighbour);
    const kept = await page.evaluate(() => JSON.stringify(sessionStorage));
    expect(kept).toContain("Twine");
    await neighbour.addInitScript((all) => {
      for (const [key, text] of Object.entries(JSON.parse(all) as Record<string, string>)) sessionStorage.setItem(key, text);
    }, kept);
    await press("?page=inputs", neighbour);
    await purchase(neighbour).waitFor();
    expect(
      await purchase(neighbour)
        .getByLabel(/^Amount in all/)
        .inputValue(),
    ).toBe("");
  });

  it("keeps the steps of the start in an empty workbook", async () => {
    await around(empty);
    await press("?page=season");
    await page.getByRole("textbox").nth(1).fill("Corn");
    await press("?page=help");
    await page.getByRole("heading", { name: "Help", level: 1 }).waitFor();
    await press("?page=season");
    await expect.poll(() => page.getByRole("textbox").nth(1).inputValue()).toBe("Corn");
  });

  it("pressed while a purchase is on its way says so, that it may not be entered and counted twice", async () => {
    await around(season);
    await press("?page=inputs");
    await purchase().getByLabel(/^Item/).fill("Twine");
    await page.keyboard.press("Escape");
    await purchase().getByLabel(/^For/).selectOption("all");
    await purchase().getByLabel(/^Kind/).selectOption("supplies");
    await purchase()
      .getByLabel(/^Amount in all/)
      .fill("412.50");
    await excel((each) => each.silence());
    await purchase().getByRole("button", { name: "Add the purchase" }).click();
    await purchase().getByRole("button", { name: "Adding …" }).waitFor();
    await press("?page=inputs");
    await page.getByText(/The pane was opened anew while this was being entered\. Look in Purchases/).waitFor();
    expect(
      await purchase()
        .getByLabel(/^Amount in all/)
        .inputValue(),
    ).toBe("412.50");
    // Once it is there, nothing of it is kept.
    await purchase().getByRole("button", { name: "Add the purchase" }).click();
    await page.getByText(/^The purchase was added\./).waitFor();
    await press("?page=inputs");
    await purchase().waitFor();
    expect(
      await purchase()
        .getByLabel(/^Amount in all/)
        .inputValue(),
    ).toBe("");
    expect(await page.getByText("The pane was opened anew").count()).toBe(0);
  });
});

describe("the demo season", () => {
  it("opens from an empty pane as a workbook of its own, byte for byte", async () => {
    await around(empty);
    await press("?page=season");
    await page.getByRole("button", { name: "Look around a demo season first" }).click();
    await page.getByRole("button", { name: "Open the demo season" }).click();
    await page.getByText(/The demo season opens as a workbook of its own, and this one stays as it is/).waitFor();
    const opened = await excel((each) => [...each.opened]);
    expect(opened).toHaveLength(1);
    expect(Buffer.from(opened[0]!, "base64").equals(readFileSync("shared/demo-season.xlsx"))).toBe(true);
  });

  it("that did not arrive is told, with the answer of the server, and can be tried again", async () => {
    await around(empty);
    await page.route(`${address}/demo-season.xlsx`, (route) => route.fulfill({ status: 404 }));
    await press("?page=season");
    await page.getByRole("button", { name: "Look around a demo season first" }).click();
    await page.getByRole("button", { name: "Open the demo season" }).click();
    await page.getByText(/The demo season did not arrive from where the pane came from \(answer 404\)/).waitFor();
    expect(await excel((each) => each.opened.length)).toBe(0);
  });

  it("is not offered by an Excel that cannot open it", async () => {
    await around(empty, { excelApi: "1.7" });
    await press("?page=season");
    await page.getByRole("button", { name: "Start with empty tables" }).waitFor();
    expect(await page.getByRole("button", { name: "Look around a demo season first" }).count()).toBe(0);
  });
});

describe("opening with the workbook", () => {
  const box = () => page.getByRole("checkbox", { name: "Open this pane by itself with this workbook" });
  const more = async () => {
    await press("?page=season");
    await page.getByRole("tab", { name: "More" }).click();
    await box().waitFor();
  };
  const settings = () => page.evaluate(() => localStorage.getItem("settings of C:\\farm\\season.xlsx"));

  it("is off until somebody chooses it, is kept in the workbook by Excel's own name, and can be given up", async () => {
    await around(season);
    await more();
    expect(await box().isChecked()).toBe(false);
    expect(await settings()).toBeNull();
    await box().click();
    await page.getByText("It opens with this workbook from now on. Save the workbook.").waitFor();
    expect(JSON.parse((await settings()) ?? "{}")).toEqual({ "Office.AutoShowTaskpaneWithDocument": "true" });
    await more();
    expect(await box().isChecked()).toBe(true);
    await box().click();
    await page.getByText("It no longer opens by itself.").waitFor();
    expect(JSON.parse((await settings()) ?? "{}")).toEqual({});
  });

  it("that the workbook does not take is told, and not shown as chosen", async () => {
    await around(season, { isReadOnly: true });
    await more();
    await box().click();
    await page.getByText(/Excel did not take that into the workbook/).waitFor();
    expect(await box().isChecked()).toBe(false);
  });
});
