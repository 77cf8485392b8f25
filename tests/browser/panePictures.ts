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
  for (const name of ["More on Corn", "Where an acre's cost goes", /^seed/, /^Mill Road/]) await click(page, name);
};
const purchaseTyped = async (page: Page) => {
  await page.getByRole("tab", { name: "Inputs" }).click();
  await page.getByRole("combobox", { name: "Item" }).fill("Urea");
  await page.keyboard.press("Escape");
  await page.getByLabel("Quantity").fill("1,000");
  await page.getByLabel("Price per lb").fill("0.9");
  await page.getByLabel("or amount in all").fill("901");
};
const problemsShown = (page: Page) => click(page, /to fix/);
const rangeMatched = async (page: Page) => {
  await click(page, "Match a range of your own");
  await page.getByLabel("Read this table").selectOption({ label: "Fields" });
  await click(page, "Use the selected range");
};
const standShown = async (page: Page) => {
  await page.getByRole("tab", { name: "Fields" }).click();
  await click(page, /^Mill Road/);
  for (const name of ["Uneven stand", "Compare keeping with replanting", "Estimate the insurance payment"]) await click(page, name);
  for (const [label, value] of [
    ["Loss, % of yield", "4"],
    ["Proven yield (APH)", "180"],
    ["Coverage", "75"],
    ["Appraised yield", "90"],
    ["Policy's price", "4.60"],
  ] as const)
    await page.getByLabel(label).fill(value);
};
const changeShown = async (page: Page) => {
  await page.getByRole("tab", { name: "Changes" }).click();
  await click(page, /^Fewer soybean seeds/);
  await click(page, "The four quadrants");
};
const wornShown = async (page: Page) => {
  await page.getByRole("tab", { name: "Changes" }).click();
  await click(page, "Compare another change");
  await page.getByLabel("What is compared").selectOption("Rebuild worn row units");
  for (const [label, value] of [
    ["Opener when new, in", "15"],
    ["Opener measured, in", "14.6"],
    ["Opener replaced at, in", "14.5"],
    ["Rows", "8"],
    ["Rows rebuilt", "8"],
    ["Parts per row", "250"],
    ["Shop hours per row", "2"],
    ["Labor per hour", "25"],
    ["Years kept", "4"],
    ["Rows that plant badly", "2"],
    ["Yield that such a row loses, %", "6"],
    ["Interest a year, %", "6"],
  ] as const)
    await page.getByRole("textbox", { name: label, exact: true }).fill(value);
};

const pictures: readonly (readonly [string, string, (page: Page) => Promise<void>])[] = [
  ["season", "workbook=problems", asItIs],
  ["opened", "workbook=problems", everythingOpened],
  ["purchase", "workbook=season", purchaseTyped],
  ["problems", "workbook=problems", problemsShown],
  ["empty", "workbook=empty&demo", asItIs],
  ["match", "workbook=empty", rangeMatched],
  ["busy", "busy", asItIs],
  ["slow", "slow", asItIs],
  ["fault", "fault", asItIs],
  ["stand", "workbook=counted", standShown],
  ["change", "workbook=counted", changeShown],
  ["worn", "workbook=counted", wornShown],
];
const looks: readonly (readonly [string, PaneLook])[] = [
  ["light-320", {}],
  ["light-450", { width: 450 }],
  ["dark-320", { ask: "theme=dark" }],
  ["dark-450", { width: 450, ask: "theme=dark" }],
  ["high-contrast-320", { ask: "theme=highContrast" }],
  ["forced-450", { width: 450, forcedColors: true }],
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
