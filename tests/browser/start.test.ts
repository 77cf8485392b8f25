/** The first evening: from an empty workbook on the desk to one's own figures, by keys alone, in Chromium. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { beforeEach, expect, it } from "vitest";
import { openWorkbook } from "../../src/host/embedded";
import { seasonReport } from "../../src/workbook/report";
import { deskBrowser } from "../support/deskBrowser";
import { saveWorkbook } from "./deskPage";

const desk = deskBrowser({ viewport: { width: 1280, height: 800 }, acceptDownloads: true });
let page: Page;
beforeEach(async () => {
  page = await desk.open();
  await page.locator("#pane .pn-figure").first().waitFor();
});

const eventually = <Value>(look: () => Promise<Value>) => expect.poll(look, { timeout: 30_000, interval: 100 });
const rail = () => page.locator(".rail button > span:first-child").allInnerTexts();

/**
 * A farm of our own. Corn on 200 acres and soybeans on 100, rent 240 an acre, and a note of 60,000 at 5 % of which 8,000 fall due
 * in March: 3,000 of interest and 5,000 of principal, 10.00 and 16.67 an acre of the 300.
 */
const needs = {
  seed: [115, 62],
  fertilizer: [150, 45],
  "crop protection": [62, 58],
  "custom work": [20, 18],
  fuel: [18, 14],
  repairs: [22, 20],
  "hired labor": [12, 10],
  "crop insurance": [18, 12],
  "machine ownership": [95, 85],
  management: [30, 25],
} as const;
/**
 * By hand, an acre of corn: operating 115 + 150 + 62 + 20 + 18 + 22 + 12 + 18 = 417; cash 417 + 240 + 10 = 667; full 667 − 10 +
 * 95 + 30 = 782;
 * cash need 667 + 16.67 = 683.67. At 200 bu: 2.085, 3.335, 3.91, 3.418 a bushel; at 4.50: 92.67, 148.22, 173.78, 151.93 bu.
 * Soybeans: 239; 239 + 240 + 10 = 489; 489 − 10 + 85 + 25 = 589; 505.67. At 60 bu: 3.983, 8.15, 9.817, 8.428; at 11: 21.73,
 * 44.45, 53.55, 45.97.
 * Left over after cash cost: 200 × (900 − 667) + 100 × (660 − 489) = 63,700.
 */
const byHand = {
  Corn: { cost: "417.00 667.00 782.00 683.67", price: "2.09 3.34 3.91 3.42", yield: "92.7 148.3 173.8 152.0" },
  Soybeans: { cost: "239.00 489.00 589.00 505.67", price: "3.99 8.15 9.82 8.43", yield: "21.8 44.5 53.6 46.0" },
};

it("is through in 200 keys and 25 clicks, says what was worked out by hand, and is one step to undo", async () => {
  const used = { keys: 0, clicks: 0 };
  const press = async (key: string) => {
    used.keys += 1;
    await page.keyboard.press(key);
  };
  const type = async (text: string) => {
    used.keys += text.length;
    await page.keyboard.type(text);
  };
  const active = () =>
    page.evaluate(
      () => document.activeElement?.getAttribute("aria-label") ?? document.activeElement?.closest("label")?.textContent?.trim() ?? "",
    );
  /** Tab to a box, and the text. */
  const fill = async (label: string, text: string) => {
    for (let tabs = 0; (await active()) !== label; tabs += 1) {
      if (tabs > 40) throw new Error(`no box ${label}; the focus is at ${await active()}`);
      await press("Tab");
    }
    await type(text);
  };

  await page.getByRole("button", { name: "New", exact: true }).click();
  used.clicks += 1;
  const first = page.getByRole("textbox", { name: "Crop 1, name" });
  await first.waitFor();
  const empty = await rail();
  await first.click();
  used.clicks += 1;
  for (const [line, crop] of [
    ["Corn", "200", "200", "4.5"],
    ["Soybeans", "100", "60", "11"],
  ].entries()) {
    const [name = "", acres = "", goal = "", price = ""] = crop;
    await fill(`Crop ${line + 1}, name`, name);
    await fill(`${name}, acres`, acres);
    await fill(`${name}, yield goal`, goal);
    await fill(`${name}, expected price`, price);
  }
  await press("Enter");
  await eventually(active).toBe("Corn, seed");
  for (const [kind, [corn, soybeans]] of Object.entries(needs)) {
    await fill(`Corn, ${kind}`, String(corn));
    await fill(`Soybeans, ${kind}`, String(soybeans));
  }
  await press("Enter");
  await eventually(active).toBe("Corn, rent");
  await fill("Corn, rent", "240");
  await fill("Soybeans, rent", "240");
  await fill("Loan 1, name", "Note");
  await fill("Loan 1, balance", "60000");
  await fill("Loan 1, rate", "5");
  await fill("Loan 1, payment", "8000");
  await fill("Loan 1, next due", "3/1");
  // The answer is there before anything is written.
  await eventually(() => page.locator(".pn-start-answer").innerText()).toContain("667.00");
  expect(await rail()).toEqual(empty);
  await press("Enter");
  await eventually(() => page.locator("#pane .pn-figure").allInnerTexts()).toEqual(["63,700", "667.00", "489.00"]);
  console.log(`From an empty workbook to the break-evens of all layers: ${used.keys} keys, ${used.clicks} clicks.`);
  expect(used.keys).toBeLessThanOrEqual(200);
  expect(used.clicks).toBeLessThanOrEqual(25);

  const file = join(desk.folder(), "start.xlsx");
  await saveWorkbook(page, file);
  const opened = openWorkbook(readFileSync(file));
  if (!opened.ok) throw new Error("the saved file cannot be opened");
  const report = seasonReport(await opened.value.read());
  expect(report.problems).toEqual([]);
  const layers = ["operating", "cash", "full", "cashNeed"] as const;
  const up = (value: { toDecimalPlaces(places: number, rounding: 0): { toFixed(places: number): string } } | null, places: number) =>
    value!.toDecimalPlaces(places, 0).toFixed(places);
  expect(
    Object.fromEntries(
      report.figures.crops.map(({ crop, outlook }) => [
        crop,
        {
          cost: layers.map((layer) => outlook.costPerArea.layers[layer].toFixed(2)).join(" "),
          price: layers.map((layer) => up(outlook.breakEvenPrice[layer], 2)).join(" "),
          yield: layers.map((layer) => up(outlook.breakEvenYield[layer], 1)).join(" "),
        },
      ]),
    ),
  ).toEqual(byHand);

  await page.getByRole("button", { name: /^Undo/ }).click();
  await eventually(rail).toEqual(empty);
  await page.getByRole("textbox", { name: "Crop 1, name" }).waitFor();
});

it("keeps what is typed and says what is wrong at its box, and writes nothing", async () => {
  await page.getByRole("button", { name: "New", exact: true }).click();
  await page.getByRole("textbox", { name: "Crop 1, name" }).fill("Corn");
  await page.keyboard.press("Enter");
  await page.getByText("Corn, acres: Enter a number above zero.").waitFor();
  await eventually(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe("Corn, acres");
  expect(await page.getByRole("textbox", { name: "Corn, name" }).inputValue()).toBe("Corn");
  expect(await rail()).not.toContain("Crops");
});

it("begins in the pane on a narrow page too, and takes the first bill where nothing stands in Items", async () => {
  await page.setViewportSize({ width: 320, height: 700 });
  await page.getByRole("button", { name: "File", exact: true }).click();
  await page.getByRole("button", { name: "New", exact: true }).click();
  await page.getByRole("textbox", { name: "Crop 1, name" }).fill("Corn");
  for (const [label, text] of [
    ["acres", "340"],
    ["yield goal", "190"],
    ["expected price", "4.2"],
  ] as const)
    await page.getByRole("textbox", { name: `Corn, ${label}` }).fill(text);
  await page.keyboard.press("Enter");
  await page.getByRole("textbox", { name: "Corn, seed" }).fill("108");
  await page.keyboard.press("Enter");
  await page.getByRole("textbox", { name: "Corn, rent" }).fill("215");
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "What did you buy?" }).click();
  await page.getByRole("combobox", { name: "Item" }).fill("Seed corn");
  await page.getByRole("combobox", { name: "For" }).selectOption("Corn");
  await page.getByRole("combobox", { name: "Kind" }).selectOption("seed");
  await page.getByRole("textbox", { name: "Amount in all" }).fill("39000");
  await page.getByRole("button", { name: "Add the purchase" }).click();
  // 39,000 on 340 ac are 114.71 where 108.00 are budgeted: 323.00 becomes 329.71.
  await page.getByText("The purchase was added. Cost per acre of Corn: 323.00 → 329.71").waitFor();
  await page.getByRole("button", { name: "Sheets", exact: true }).click();
  await eventually(() => page.locator("select option").allInnerTexts()).toContain("Purchases");
});
