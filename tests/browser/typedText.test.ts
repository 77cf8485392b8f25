/**
 * What is typed and not entered yet. In a cell, it is entered there whatever takes the cell away; in a form of the pane, nothing takes
 * it away unasked.
 */
import type { Page } from "playwright-core";
import { beforeEach, describe, expect, it } from "vitest";
import { deskBrowser } from "../support/deskBrowser";
import { cell, showSheet } from "./deskPage";

const desk = deskBrowser({
  viewport: { width: 2200, height: 900 },
  permissions: ["clipboard-read", "clipboard-write"],
  acceptDownloads: true,
});
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

describe("in a form of the pane", () => {
  const box = (name: RegExp) => page.locator("#pane").getByRole("textbox", { name });
  const question = () => page.getByRole("alertdialog");
  /** A purchase but for its price, in the form. */
  const begin = async () => {
    await page.getByRole("tab", { name: "Inputs" }).click();
    await page.locator("#pane").getByRole("combobox", { name: /^Item/ }).fill("Diesel");
    await page.keyboard.press("Tab");
    await box(/^Quantity/).fill("100");
  };
  const demo = () => page.getByRole("button", { name: "Demo season", exact: true }).click();

  /** The pane of a workbook that was just opened stands at Season. */
  const opensUnasked = async () => {
    await demo();
    await page.getByRole("tab", { name: "Season", selected: true }).waitFor();
  };

  it("is asked for before another workbook is opened, though the workbook has no change", async () => {
    await begin();
    await demo();
    await question().getByText("What is typed in the pane and not added yet is in no table: opening another workbook loses it.").waitFor();
    expect(await question().getByRole("button").allInnerTexts()).toEqual(["Open all the same", "Stay here"]);
    await question().getByRole("button", { name: "Stay here" }).click();
    expect(await box(/^Quantity/).inputValue()).toBe("100");
    await demo();
    await question().getByRole("button", { name: "Open all the same" }).click();
    await page.getByRole("tab", { name: "Season", selected: true }).waitFor();
    await page.getByRole("tab", { name: "Inputs" }).click();
    expect(await box(/^Quantity/).inputValue()).toBe("");
    await opensUnasked();
  });

  it("keeps the browser from leaving the page unasked", async () => {
    await begin();
    const asked = page.waitForEvent("dialog");
    await page.evaluate(() => void setTimeout(() => location.reload()));
    expect((await asked).type()).toBe("beforeunload");
    await (await asked).dismiss();
    expect(await box(/^Quantity/).inputValue()).toBe("100");
  });

  it("is told of as missing in the file that is saved, and is nothing any more once it is added", async () => {
    await begin();
    await page.keyboard.press("Control+s");
    await page.getByText("What is typed in the pane and not added yet is in no table, and so not in the file.").waitFor();
    await page.locator("#pane input:visible").nth(2).fill("3.5");
    await page.getByRole("button", { name: "Add the purchase" }).click();
    await page.getByText("The purchase was added.").waitFor();
    await demo();
    await question().getByText("has changes that are only in this page").waitFor();
    expect(await question().innerText()).not.toContain("What is typed");
    await question().getByRole("button", { name: "Stay here" }).click();
    await page.keyboard.press("Control+s");
    await page.getByText("was handed to the browser's downloads.").waitFor();
    await opensUnasked();
  });

  it("is nothing where it was taken out again", async () => {
    await page.getByRole("tab", { name: "Inputs" }).click();
    await box(/^Quantity/).fill("100");
    await box(/^Quantity/).fill("");
    await opensUnasked();
  });
});

it("asks again where the workbook is changed while another one is still being read", async () => {
  await page.evaluate(() => {
    const read = File.prototype.arrayBuffer;
    const waiting = new Promise<void>((resolve) => Object.assign(window, { letRead: resolve }));
    File.prototype.arrayBuffer = async function (this: File) {
      await waiting;
      return read.call(this);
    };
  });
  await page.locator('input[type="file"]').setInputFiles("shared/demo-season-with-problems.xlsx");
  await cell(page, "C3").click();
  await page.keyboard.type("777");
  await page.keyboard.press("Enter");
  await page.evaluate(() => (window as unknown as { letRead: () => void }).letRead());
  await page.getByRole("alertdialog").getByText("demo-season.xlsx has changes that are only in this page.").waitFor();
  await page.getByRole("button", { name: "Stay here" }).click();
  expect(await cell(page, "C3").innerText()).toBe("777");
});

describe("with the focus nowhere, as after a press on the bar or on a message that is gone", () => {
  const change = async () => {
    await cell(page, "C3").click();
    await page.keyboard.type("777");
    await page.keyboard.press("Enter");
  };
  const focusIsNowhere = () => page.evaluate(() => document.activeElement === document.body);

  it("Control+S saves the workbook, and not the page", async () => {
    await change();
    await page.locator(".top .file").click();
    expect(await focusIsNowhere()).toBe(true);
    const download = page.waitForEvent("download");
    await page.keyboard.press("Control+s");
    expect((await download).suggestedFilename()).toBe("demo-season.xlsx");
    await page.getByRole("button", { name: "Dismiss" }).click();
    // Whoever goes by keys goes on where the work is.
    await page.waitForFunction(() => document.activeElement?.matches(".sheet [data-active]"));
  });

  it("Control+Z undoes", async () => {
    await change();
    await page.locator(".top .file").click();
    await page.keyboard.press("Control+z");
    await page.getByText(/^Undone: /).waitFor();
  });

  it("the grid has it again once a filter is gone", async () => {
    await tool("Filter").click();
    await page.getByRole("textbox", { name: "Show entries with" }).fill("Diesel");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Show all" }).click();
    await page.waitForFunction(() => document.activeElement?.matches(".sheet [data-active]"));
  });
});

it("is told of where a pasted block is wider than its table, because nothing beside a table is read as an entry", async () => {
  await cell(page, "M3").click();
  await page.evaluate(() => navigator.clipboard.writeText("a note\tmore\tand more\n"));
  await page.keyboard.press("Control+v");
  await page.getByText("Pasted into M3:O3. Column O lies beside the table Purchases and is no part of its entries.").waitFor();
});

it("keeps its draft where it was given up for a file that could not be opened", async () => {
  await cell(page, "C3").click();
  await page.keyboard.type("777");
  await page.keyboard.press("Enter");
  await page.getByText("draft kept").waitFor();
  await page.locator('input[type="file"]').setInputFiles({ name: "bad.xlsx", mimeType: "", buffer: Buffer.from("no workbook") });
  await page.getByRole("button", { name: "Open without saving" }).click();
  await page.getByText("bad.xlsx could not be opened.").waitFor();
  await page.getByText("draft kept").waitFor();
  await page.close({ runBeforeUnload: false });
  page = await desk.open();
  await page.getByRole("button", { name: /^Open the draft/ }).click();
  await showSheet(page, "Purchases");
  expect(await cell(page, "C3").innerText()).toBe("777");
});

it("is the whole of a next season that lies in no file yet: its draft is kept from the start", async () => {
  await cell(page, "C3").click();
  await page.keyboard.type("777");
  await page.keyboard.press("Enter");
  await page.getByRole("tab", { name: "More" }).click();
  await page.getByRole("button", { name: "Past seasons and the next one" }).click();
  await page.getByRole("button", { name: "Start the next season" }).click();
  await page.getByRole("button", { name: /^Start season \d{4}$/ }).click();
  await page.getByRole("button", { name: "Save, then open" }).click();
  await page.locator(".top .file").getByText("Season 2027.xlsx").waitFor();
  await page.getByText("draft kept").waitFor();
  await page.close({ runBeforeUnload: false });
  page = await desk.open();
  await page.getByRole("button", { name: /^Open the draft\s+of Season 2027\.xlsx/ }).click();
  await page.locator(".top .file").getByText("Season 2027.xlsx").waitFor();
});
