/** Sheets of the grower's own on the desk: a wide one and a sheet a field become lines of the budget, in Chromium. */
import { join } from "node:path";
import { readFileSync, writeFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { reportJson } from "../../src/workbook/reportJson";
import { seasonReport } from "../../src/workbook/report";
import type { Fixture } from "../host/fixture";
import { deskBrowser } from "../support/deskBrowser";
import { opened as openedFile } from "../support/xlsx/opened";
import { fileOf } from "../support/xlsx/fixtureFile";
import { saveWorkbook } from "./deskPage";

const desk = deskBrowser({ viewport: { width: 1280, height: 800 }, acceptDownloads: true });
const eventually = <Value>(look: () => Promise<Value>) => expect.poll(look, { timeout: 30_000, interval: 100 });

const tables = [
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
      ["Creek", "Corn", 60, 200],
    ],
    tables: [{ name: "Fields", range: "A1:D3" }],
  },
];

/**
 * Opens a workbook, selects a cell of it, and shows where ranges are matched, with costs a column for each kind chosen where that
 * is so.
 */
async function opened(fixture: Fixture, sheet: string, what: string): Promise<Page> {
  const page = await openedFixture(fixture);
  await eventually(() => page.locator(".rail button").allInnerTexts()).toContain(sheet);
  await page.locator(".rail button", { hasText: sheet }).first().click();
  return await chooseTable(page, what);
}

async function openedFixture(fixture: Fixture): Promise<Page> {
  const page = await desk.open();
  await page.locator("#pane .pn-figure").first().waitFor();
  const file = join(desk.folder(), "own.xlsx");
  writeFileSync(file, fileOf(fixture));
  await page.locator('input[type="file"]').first().setInputFiles(file);
  return page;
}

async function chooseTable(page: Page, what: string): Promise<Page> {
  await page.getByRole("tab", { name: "More" }).click();
  await page.getByRole("button", { name: "Tables" }).click();
  await page.getByRole("button", { name: "Match a range of your own" }).click();
  await page.getByLabel("Read this table").selectOption({ label: what });
  return page;
}

async function figures(page: Page) {
  const file = join(desk.folder(), "saved.xlsx");
  await saveWorkbook(page, file);
  const report = seasonReport(await openedFile(readFileSync(file)).read());
  return {
    complete: reportJson(report).complete,
    operating: report.figures.crops[0]!.outlook.costPerArea.layers.operating.toFixed(),
    lines: report.season.budget!.length,
  };
}

it("reads a wide sheet under a title, each column as its kind, from one selected cell", async () => {
  const page = await opened(
    {
      sheets: [
        {
          name: "My plan",
          cells: [
            ["Budget of the year"],
            ["Field", "Acres", "Seed $/ac", "Herbicide", "Total fuel"],
            ["North forty", 40, 110, 45, 800],
            ["Creek", 60, 115, 40, 900],
          ],
        },
        ...tables,
      ],
    },
    "My plan",
    "Costs, a column for each kind",
  );
  await page.locator('.sheet .row > [data-column="2"]').nth(3).click();
  await page.getByRole("button", { name: "Use the selected range" }).click();
  await page.getByText("'My plan'!A2:E4").first().waitFor();
  await page.getByText("Left out: Acres.").waitFor();
  expect(await page.getByRole("combobox", { name: "Herbicide", exact: true }).inputValue()).toBe("crop protection");
  await page.getByRole("button", { name: "Keep this match" }).click();
  await page.getByText("Budget is now read from 'My plan'!A2:E4.").waitFor();
  // (40 × (110 + 45) + 800 + 60 × (115 + 40) + 900) ÷ 100 acres.
  expect(await figures(page)).toEqual({ complete: true, operating: "172", lines: 6 });
});

it("reads a sheet a field at once, the field's name the sheet's", async () => {
  const costs = (seed: number) => [
    ["Cost of", "$/ac"],
    ["Seed", seed],
    ["Spray", 40],
  ];
  const page = await opened(
    { sheets: [{ name: "North forty", cells: costs(110) }, { name: "Creek", cells: costs(115) }, ...tables] },
    "North forty",
    "Budget",
  );
  await page.locator('.sheet .row > [data-column="0"]').nth(1).click();
  await page.getByRole("button", { name: "Use the selected range" }).click();
  await page.getByRole("checkbox", { name: "Creek" }).waitFor();
  await page.getByRole("combobox", { name: "For" }).selectOption({ label: "the sheet’s name" });
  await page.getByRole("combobox", { name: "Kind" }).selectOption("Cost of");
  await page.getByRole("combobox", { name: "Amount" }).selectOption("$/ac");
  await page.getByRole("button", { name: "Keep this match" }).click();
  await page.getByText("Budget is now read from 2 sheets.").waitFor();
  // 40 × 150 + 60 × 155 over 100 acres.
  expect(await figures(page)).toEqual({ complete: true, operating: "153", lines: 4 });
});

it("shows a workbook of 25 sheets, and edits a table of the grower's own in place, by its addresses", async () => {
  const bins = {
    name: "Bins",
    cells: [
      ["Bin", "Bushels"],
      ["North", 4200],
      ["South", 3100],
    ],
    tables: [{ name: "Bins", range: "A1:B3" }],
  };
  const more = Array.from({ length: 22 }, (_, index) => ({ name: `Sheet of ${index + 1}`, cells: [[`words ${index + 1}`]] }));
  const page = await openedFixture({ sheets: [...tables, ...more, bins] });
  await eventually(
    async () => (await page.locator(".rail button").allInnerTexts()).filter((words) => /^(Crops|Fields|Bins|Sheet of)/.test(words)).length,
  ).toBe(25);
  await page.locator(".rail button", { hasText: "Bins" }).click();
  await page.locator('.sheet .row > [data-column="1"]', { hasText: "3100" }).click();
  expect(await page.locator(".entry-line .address").innerText()).toBe("B3");
  await page.keyboard.type("2900");
  await page.keyboard.press("Enter");
  const file = join(desk.folder(), "bins.xlsx");
  await saveWorkbook(page, file);
  const workbook = openedFile(readFileSync(file));
  expect(workbook.cellAt("Bins", { row: 2, column: 1 }).value).toBe(2900);
  expect((await workbook.read()).tables.map(({ name }) => name)).toEqual(["Crops", "Fields", "Bins"]);
});
