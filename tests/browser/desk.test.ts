/** The desk as `npm run build` made it, served from a path below an origin, in Chromium. */
import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { beforeEach, describe, expect, it } from "vitest";
import { deskBrowser } from "../support/deskBrowser";
import { activeAddress, cell, goTo, outlooks, placeOf, saveWorkbook, showSheet, tableOnSheet, typeRow } from "./deskPage";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** A page below the origin, as a farm's or an extension office's own site might serve it. */
const path = "/some/where/";

/** The page may be slow on a busy machine. */
const eventually = <Value>(look: () => Promise<Value>) => expect.poll(look, { timeout: 20_000, interval: 100 });

/**
 * What the pane shows once it has followed the grid, a moment after the last key: other figures than `before`, and the same ones
 * for a second.
 */
async function settledOutlooks(page: Page, before: readonly string[]): Promise<string[]> {
  await eventually(() => outlooks(page)).not.toEqual(before);
  for (let figures = await outlooks(page); ;) {
    await page.waitForTimeout(1000);
    const later = await outlooks(page);
    if (JSON.stringify(later) === JSON.stringify(figures)) return later;
    figures = later;
  }
}

const desk = deskBrowser(
  { viewport: { width: 1900, height: 900 }, permissions: ["clipboard-read", "clipboard-write"], acceptDownloads: true },
  path,
);
let page: Page;
beforeEach(async () => {
  page = await desk.open();
  await page.locator(".sheet [data-active]").waitFor();
  await page.locator("#pane .pn-figure").first().waitFor();
});

describe("entries", () => {
  it("moves the outlook when a purchase is typed under the last row, and back when that is undone", async () => {
    const before = await outlooks(page);
    await showSheet(page, "Purchases");
    const { headings, below } = await tableOnSheet(page);
    await typeRow(page, headings, { Date: "7/20/2026", Item: "Shop supplies", Quantity: "1000", Unit: "each", Amount: "$9,000" });
    await eventually(() => outlooks(page)).not.toEqual(before);
    expect(await cell(page, below).getAttribute("data-part")).toBe("body");

    for (let step = 0; step < 5; step += 1) await page.keyboard.press("Control+z");
    await eventually(() => outlooks(page)).toEqual(before);
    expect(await cell(page, below).getAttribute("data-part")).toBeNull();
    await page.keyboard.press("Control+y");
    await eventually(() => cell(page, below).innerText()).toContain("2026");
  });

  it("pastes a block of lines as one step", async () => {
    const before = await outlooks(page);
    await showSheet(page, "Purchases");
    const { headings, below } = await tableOnSheet(page);
    const line = (entries: Readonly<Record<string, string>>) => headings.map((heading) => entries[heading] ?? "").join("\t");
    const lines = [
      line({ Date: "2026-07-21", Item: "Shop supplies", Quantity: "500", Unit: "each", Amount: "2,100.50", Note: '"two\nlines"' }),
      line({ Date: "2026-07-22", Item: "Shop supplies", Quantity: "400", Unit: "each", Amount: "1,700" }),
    ];
    await page.evaluate((text) => navigator.clipboard.writeText(text), `${lines.join("\r\n")}\r\n`);
    await page.keyboard.press("Control+v");
    await eventually(() => outlooks(page)).not.toEqual(before);
    const { row } = placeOf(below);
    const amount = headings.indexOf("Amount");
    await goTo(page, `A${row + 2}`);
    expect(await page.locator(`.sheet .row[data-row="${row}"] > [data-column="${amount}"]`).innerText()).toMatch(/2,?100\.50/);
    expect(await cell(page, `A${row + 2}`).getAttribute("data-part")).toBe("body");

    await page.keyboard.press("Control+z");
    await eventually(() => outlooks(page)).toEqual(before);
    await goTo(page, below);
    expect(await cell(page, below).innerText()).toBe("");
  });

  it("offers a cell's list while something is typed, and takes a word that is not in it with a remark", async () => {
    await showSheet(page, "Applications");
    const { headings } = await tableOnSheet(page);
    for (let step = 0; step < headings.indexOf("Status"); step += 1) await page.keyboard.press("ArrowRight");
    await page.keyboard.type("d");
    await eventually(() => page.getByRole("listbox", { name: "Choices" }).getByRole("option").allInnerTexts()).toEqual([
      "done",
      "done as planned",
    ]);
    await page.keyboard.press("Enter");
    await page.keyboard.press("ArrowUp");
    expect(await page.locator(".sheet [data-active]").innerText()).toBe("done");
    await page.keyboard.type("maybe");
    await page.keyboard.press("Enter");
    expect(await page.locator(".status").innerText()).toContain("“maybe” is not in this cell's list");
  });

  it("completes the name of an item that the workbook has, and gives new rows the look of those above", async () => {
    await showSheet(page, "Purchases");
    const { below } = await tableOnSheet(page);
    await page.keyboard.type("7/20/2026");
    await page.keyboard.press("Tab");
    await page.keyboard.type("shop");
    await eventually(() => page.getByRole("listbox", { name: "Choices" }).getByRole("option", { selected: true }).allInnerTexts()).toEqual([
      "Shop supplies",
    ]);
    await page.keyboard.press("Enter");
    expect(await cell(page, below.replace("A", "B")).innerText()).toBe("Shop supplies");
    expect(await cell(page, below).innerText()).toContain("2026-07-20");
  });

  it("adds a row to the table by the button", async () => {
    await showSheet(page, "Purchases");
    const { below } = await tableOnSheet(page);
    await page.getByRole("button", { name: "Add an entry to Purchases" }).click();
    await eventually(() => activeAddress(page)).toBe(below);
    expect(await cell(page, below).getAttribute("data-part")).toBe("body");
  });
});

describe("what is shown", () => {
  it("is a table by its own headings, the entry in words, and no address but a small one", async () => {
    await showSheet(page, "Loans");
    expect((await tableOnSheet(page)).headings.slice(0, 3)).toEqual(["Name", "Kind", "Balance"]);
    await page.keyboard.press("Control+Home");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    expect(await page.locator(".entry-line .place").innerText()).toMatch(/^Loans, row 2, Balance\s+C2$/);
    expect(await page.locator(".sheet .row").first().getAttribute("data-row")).toBe("1");
  });

  it("marks a fault in its cell, with its words in the entry line", async () => {
    await showSheet(page, "Purchases");
    const { below } = await tableOnSheet(page);
    await page.keyboard.type("sometime");
    await page.keyboard.press("Enter");
    await eventually(() => cell(page, below).getAttribute("data-fault")).toBe("fix");
    await page.keyboard.press("ArrowUp");
    expect(await page.locator(".entry-line .hint").innerText()).toContain("To fix:");
    await page.keyboard.press("Control+z");
    await eventually(() => cell(page, below).getAttribute("data-fault")).toBeNull();
  });

  it("adds up the numbers that are selected, to the last digit", async () => {
    await showSheet(page, "About");
    await page.keyboard.press("Control+End");
    for (const amount of ["0.1", "0.2", "1234.5"]) {
      await page.keyboard.press("ArrowDown");
      await page.keyboard.type(amount);
      await page.keyboard.press("Enter");
      await page.keyboard.press("ArrowUp");
    }
    await page.keyboard.press("Shift+ArrowUp");
    await page.keyboard.press("Shift+ArrowUp");
    expect(await page.locator(".status").innerText()).toMatch(/: 3 numbers, sum 1,234\.8\.$/);
  });
});

describe("formulas", () => {
  const typeFormulas = async (): Promise<void> => {
    await showSheet(page, "About");
    await page.keyboard.press("Control+End");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.type("12.5");
    await page.keyboard.press("Tab");
    const address = await activeAddress(page);
    const { row, column } = placeOf(address);
    const left = `${String.fromCharCode(64 + column)}${row + 1}`;
    await page.keyboard.type(`=${left}*2`);
    await page.keyboard.press("Enter");
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("ArrowRight");
  };
  const formulaCell = () => page.locator(".sheet [data-active]");

  it("works them out in a worker, and shows the formula in the entry line", async () => {
    await typeFormulas();
    await eventually(() => formulaCell().innerText()).toBe("25");
    expect(await page.locator(".entry-line input").inputValue()).toMatch(/^=[A-Z]+\d+\*2$/);
    expect(await formulaCell().getAttribute("data-stale")).toBeNull();
  });

  it("marks them as old, in words, where the engine is not to be had", async () => {
    await page.route("**/*.wasm", (route) => route.abort());
    await typeFormulas();
    await eventually(() => page.locator(".status").innerText()).toContain("Formulas cannot be worked out here");
    await eventually(() => formulaCell().getAttribute("data-stale")).toBe("");
    expect(await page.locator(".entry-line .hint").innerText()).toContain("Old value");
    desk.misdeeds().errors.length = 0; // the browser itself reports the request that was refused
  });
});

describe("a start that goes wrong", () => {
  it("goes on with a new workbook where the demo did not arrive, and says so", async () => {
    await page.route("**/demo-season.xlsx", (route) => route.fulfill({ status: 404 }));
    await page.reload();
    await eventually(() => page.locator(".file").innerText()).toContain("New season.xlsx");
    expect(await page.locator(".notice-region").innerText()).toContain("demo-season.xlsx is not where this page came from");
    desk.misdeeds().errors.length = 0;
  });

  it("shows words instead of a blank page where the program did not arrive", async () => {
    await page.route("**/part.*.js", (route) => route.abort());
    await page.reload();
    await page.getByRole("alert").waitFor();
    expect(await page.getByRole("alert").innerText()).toContain("Pennyacre could not start");
    desk.misdeeds().errors.length = 0;
  });
});

describe("files", () => {
  it("saves what was typed, and opens it again when it is dragged in", async () => {
    const before = await outlooks(page);
    // Wide enough for all columns: those out of sight are not drawn.
    await page.setViewportSize({ width: 2400, height: 900 });
    await showSheet(page, "Purchases");
    const { headings } = await tableOnSheet(page);
    await typeRow(page, headings, {
      Date: "7/20/2026",
      Item: "Shop supplies",
      Quantity: "1000",
      Unit: "each",
      Amount: "9000",
      Note: "Kept in the file",
    });
    await eventually(() => page.locator(".file").innerText()).toContain("changes not saved");
    const changed = await settledOutlooks(page, before);
    const file = join(desk.folder(), "saved.xlsx");
    await saveWorkbook(page, file);
    expect(await page.locator(".file").innerText()).not.toContain("changes not saved");

    await page.getByRole("button", { name: "New", exact: true }).click();
    await eventually(() => page.locator(".file").innerText()).toContain("New season.xlsx");
    await drag(file);
    await eventually(() => page.locator(".file").innerText()).toContain("saved.xlsx");
    await eventually(() => outlooks(page)).toEqual(changed);
    await showSheet(page, "Purchases");
    await tableOnSheet(page);
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("End");
    expect(await page.locator(".entry-line input").inputValue()).toBe("Kept in the file");
  });

  it("keeps the workbook at hand when a file is none, and says so", async () => {
    const file = join(desk.folder(), "letter.xlsx");
    writeFileSync(file, "Dear Sirs");
    await drag(file);
    await eventually(() => page.locator(".notice-region").innerText()).toContain("letter.xlsx could not be opened");
    expect(await page.locator(".notice-region").innerText()).toMatch(
      /This is plain text, as in a \.csv.*save it there as an Excel workbook \(\.xlsx\)\..*copy its rows/,
    );
    expect(await page.locator(".notice-region").innerText()).toContain("demo-season.xlsx is still open");
    expect(await page.locator(".file").innerText()).toContain("demo-season.xlsx");
  });

  it("asks before changes are lost", async () => {
    await page.keyboard.press("F6");
    await showSheet(page, "Season");
    await page.keyboard.press("Control+End");
    await page.keyboard.type("a remark");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Demo with entries to fix" }).click();
    const question = page.getByRole("alertdialog");
    await question.waitFor();
    await question.getByRole("button", { name: "Stay here" }).click();
    expect(await page.locator(".file").innerText()).toContain("changes not saved");

    const left = new Promise<string>((asked) =>
      page.once("dialog", (dialog) => {
        asked(dialog.type());
        void dialog.accept();
      }),
    );
    await page.close({ runBeforeUnload: true });
    expect(await left).toBe("beforeunload");
  });

  it("shows the way to begin in a new workbook, and the problems of the copy that has some", async () => {
    await page.getByRole("button", { name: "New", exact: true }).click();
    await eventually(() => page.locator("#pane .pn-figure").count()).toBe(0);
    await page.getByRole("button", { name: "Demo with entries to fix" }).click();
    await eventually(() => page.locator("#pane .pn-entries-line").innerText()).toMatch(/^[1-9]\d* entries to fix/);
  });
});

describe("without a mouse", () => {
  it("reaches rail, grid and pane by keys, and leaves the grid by Escape and Tab", async () => {
    await page.keyboard.press("Tab");
    expect(await focused()).toContain("Skip to the sheet");
    await page.keyboard.press("Enter");
    await eventually(focused).toContain("data-active");
    // The first entry of Purchases, where the desk begins: its row on the sheet is the second.
    expect(await activeAddress(page)).toBe("A2");
    await page.keyboard.press("ArrowUp");
    expect(await activeAddress(page)).toBe("A2");
    await page.keyboard.press("ArrowDown");
    expect(await activeAddress(page)).toBe("A3");
    await page.keyboard.press("Tab");
    expect(await activeAddress(page)).toBe("B3");
    await page.keyboard.press("Escape");
    await page.keyboard.press("Tab");
    expect(await focused()).toContain("Entry in Purchases, row 3, Item");
    await page.keyboard.press("F6");
    expect(await focused()).toContain('id="pane"');
    await page.keyboard.press("Shift+F6");
    expect(await focused()).toContain("data-active");
    await page.keyboard.press("Shift+F6");
    expect(await focused()).toContain('aria-current="true"');
    await page.keyboard.press("ArrowDown");
    await eventually(focused).toContain("Applications");
    await page.keyboard.press("F6");
    await eventually(focused).toContain("data-active");
    expect(await page.locator(".sheet").getAttribute("aria-label")).toBe("Table Applications");
  });

  it("brings the table that is shown in sight in the rail without moving where Tab begins", async () => {
    await page.setViewportSize({ width: 1000, height: 400 });
    const rail = page.getByRole("navigation", { name: "Tables and sheets" });
    const inSight = () =>
      rail.evaluate((box) => {
        const [whole, shown] = [box.getBoundingClientRect(), box.querySelector("[aria-current=true]")!.getBoundingClientRect()];
        return box.scrollHeight > box.clientHeight && shown.top >= whole.top - 1 && shown.bottom <= whole.bottom + 1;
      });
    await rail.locator("[aria-current=true]").focus();
    for (const key of ["End", "Home", "End", "ArrowUp"]) {
      await page.keyboard.press(key);
      await eventually(inSight).toBe(true);
    }
    // Whatever the browser makes of scrollIntoView, the page never asks for it while it starts.
    await page.addInitScript(() => {
      const asked: string[] = ((window as unknown as { asked: string[] }).asked = []);
      Element.prototype.scrollIntoView = function record() {
        asked.push(this.outerHTML.slice(0, 80));
      };
    });
    await page.reload();
    await page.locator("#pane .pn-figure").first().waitFor();
    expect(await page.evaluate(() => (window as unknown as { asked: string[] }).asked)).toEqual([]);
  });

  it.each([
    ["light", 1280],
    ["light", 450],
    ["dark", 1280],
    ["dark", 450],
    ["forced", 1280],
    ["forced", 320],
  ] as const)("has nothing for axe to find in %s colours at a width of %d", async (colours, width) => {
    await page.emulateMedia(colours === "forced" ? { forcedColors: "active" } : { colorScheme: colours });
    await page.setViewportSize({ width, height: 800 });
    const views = width < 900 ? ["Sheets", "Figures"] : [null];
    for (const view of views) {
      if (view !== null) await page.getByRole("button", { name: view }).click();
      // Colours change gradually; axe would see them half way.
      await page.waitForTimeout(500);
      await page.evaluate(axe);
      const violations = await page.evaluate(async () => {
        const found = await (
          window as unknown as { axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> } }
        ).axe.run();
        return found.violations.map(({ id, nodes }) => ({ id, html: nodes.map(({ html }) => html) }));
      });
      expect(violations).toEqual([]);
    }
  });
});

const focused = (): Promise<string> => page.evaluate(() => document.activeElement?.outerHTML.slice(0, 600) ?? "");

async function drag(file: string): Promise<void> {
  const bytes = [...readFileSync(file)];
  const data = await page.evaluateHandle(
    ({ content, name }) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([new Uint8Array(content)], name));
      return transfer;
    },
    { content: bytes, name: file.split("/").at(-1) ?? "" },
  );
  await page.dispatchEvent("body", "dragover", { dataTransfer: data });
  await page.dispatchEvent("body", "drop", { dataTransfer: data });
}
