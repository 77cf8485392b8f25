/** Takes pictures of the pane in every look, for people to look at: `npx tsx tests/browser/panePictures.ts FOLDER [part of a name]`. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { panePages, type PaneLook } from "../support/panePages";

const [folder, part = ""] = process.argv.slice(2);
if (folder === undefined) throw new Error("Say which folder the pictures go to.");
mkdirSync(folder, { recursive: true });

const click = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).first().click();
const asItIs = () => Promise.resolve();
const everythingOpened = async (page: Page) => {
  for (const name of ["Where the cost comes from", "All layers, other yields and prices", "Grain sold and to sell", /^seed/, /^Mill Road/, /^Urea/, "Tables"]) await click(page, name);
};
const purchaseTyped = async (page: Page) => {
  await click(page, "Add a purchase");
  await page.getByRole("combobox", { name: "Item" }).fill("Urea");
  await page.keyboard.press("Escape");
  await page.getByLabel("Quantity").fill("1,000");
  await page.getByLabel("Price per lb").fill("0.9");
  await page.getByLabel("or amount in all").fill("901");
};
const problemsShown = (page: Page) => page.getByRole("tab", { name: /Problems/ }).click();
const rangeMatched = async (page: Page) => {
  await click(page, "Match a range of your own");
  await page.getByLabel("Read this table").selectOption({ label: "Fields" });
  await click(page, "Use the selected range");
};

const pictures: readonly (readonly [string, string, (page: Page) => Promise<void>])[] = [
  ["season", "workbook=problems", asItIs], ["opened", "workbook=problems", everythingOpened], ["purchase", "workbook=season", purchaseTyped],
  ["problems", "workbook=problems", problemsShown], ["empty", "workbook=empty&demo", asItIs], ["match", "workbook=empty", rangeMatched],
  ["busy", "busy", asItIs], ["slow", "slow", asItIs], ["fault", "fault", asItIs],
];
const looks: readonly (readonly [string, PaneLook])[] = [
  ["light-320", {}], ["light-450", { width: 450 }], ["dark-320", { ask: "theme=dark" }], ["dark-450", { width: 450, ask: "theme=dark" }],
  ["high-contrast-320", { ask: "theme=highContrast" }], ["forced-450", { width: 450, forcedColors: true }],
];

const pages = await panePages();
for (const [name, ask, show] of pictures) {
  for (const [lookName, look] of looks) {
    const file = `${name}-${lookName}.png`;
    if (!file.includes(part)) continue;
    const { page } = await pages.open({ ...look, ask: `${look.ask ?? ""}&${ask}` });
    await page.getByRole("heading", { level: 1 }).waitFor();
    await show(page);
    await page.waitForTimeout(400);
    await page.screenshot({ path: join(folder, file), fullPage: true });
    await pages.closeAll();
  }
}
await pages.close();
