/** What is typed into a cell and not entered yet, whatever takes the cell away: it is entered there, or somebody is told. */
import type { Page } from "playwright-core";
import { beforeEach, expect, it } from "vitest";
import { deskBrowser } from "../support/deskBrowser";
import { cell, showSheet } from "./deskPage";

const desk = deskBrowser({ viewport: { width: 1600, height: 900 }, acceptDownloads: true });
let page: Page;
beforeEach(async () => {
  page = await desk.open();
  await page.locator("#pane .pn-figure").first().waitFor();
  await showSheet(page, "Purchases");
});
const quantities = () => page.locator('.sheet .row > [data-column="2"]').allInnerTexts();
const tool = (name: string) => page.getByRole("toolbar").getByRole("button", { name, exact: true });

const turnAndEnter = async () => {
  await page.locator(".sheet").hover();
  await page.mouse.wheel(0, 4000);
  await page.keyboard.press("Enter");
};

const takers: readonly (readonly [string, () => Promise<unknown>])[] = [
  ["a press on another cell", () => cell(page, "C6").click()],
  ["a double press on another cell", () => cell(page, "D6").dblclick()],
  ["a press on an entry's number", () => page.locator('.sheet .row[data-row="4"] .row-name').click()],
  ["a press on a heading", () => page.locator(".sheet .column-name").nth(4).click()],
  ["a press in the entry line", () => page.locator(".entry-line input").click()],
  ["another table", () => showSheet(page, "Fields")],
  ["the pane", () => page.getByRole("tab", { name: "Inputs" }).click()],
  ["adding an entry", () => page.getByRole("button", { name: /^Add an entry/ }).click()],
  ["Insert", () => tool("Insert").click()],
  ["Sort up", () => tool("Sort up").click()],
  ["Sort down", () => tool("Sort down").click()],
  ["Wider", () => tool("Wider").click()],
  ["Filter", () => tool("Filter").click()],
  ["Find", () => tool("Find").click()],
  ["turning the wheel, then Enter", turnAndEnter],
];

it.each(takers)("is entered in its cell by %s", async (_, take) => {
  await cell(page, "C3").click();
  await page.keyboard.type("777");
  await take();
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  await showSheet(page, "Fields");
  await showSheet(page, "Purchases");
  await page.keyboard.press("Control+Home");
  // Sorted with the largest last, it stands out of sight: found by the whole column's name.
  await page.keyboard.press("Control+f");
  await page.getByRole("textbox", { name: "Find in all tables" }).fill("777");
  await page.keyboard.press("Enter");
  await page.getByText("1 of 1: Purchases, row").waitFor();
  expect(await quantities()).toContain("777");
});

it("goes with its entry where the entry is deleted, and undo brings both back", async () => {
  await cell(page, "C3").click();
  await page.keyboard.type("777");
  await tool("Delete").click();
  await page.getByText("One entry was deleted from Purchases.").waitFor();
  expect(await quantities()).not.toContain("777");
  await page.keyboard.press("Control+z");
  await expect.poll(quantities).toContain("777");
});

it("is not entered in the cell that is pressed", async () => {
  const before = await cell(page, "C6").innerText();
  await cell(page, "C3").click();
  await page.keyboard.type("777");
  await cell(page, "C6").click();
  expect(await cell(page, "C6").innerText()).toBe(before);
  expect(await cell(page, "C3").innerText()).toBe("777");
});
