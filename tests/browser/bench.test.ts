/** The desk as a bench: what a person does to a table by keyboard and by mouse, in Chromium over the page that `npm run build` made. */
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { beforeEach, describe, expect, it } from "vitest";
import { deskBrowser } from "../support/deskBrowser";
import { activeAddress, cell, showSheet } from "./deskPage";

/** How many purchases the demo has, by the file that is its source. */
const purchases = readFileSync("shared/demo/Purchases.csv", "utf8").trim().split("\n").length - 1;

const eventually = <Value>(look: () => Promise<Value>) => expect.poll(look, { timeout: 20_000, interval: 100 });

const desk = deskBrowser({ viewport: { width: 1280, height: 800 }, permissions: ["clipboard-read", "clipboard-write"] });
let page: Page;
beforeEach(async () => {
  page = await desk.open();
  await page.locator(".sheet [data-active]").waitFor();
  await page.locator("#pane .pn-figure").first().waitFor();
});

describe("where things stay", () => {
  it("leaves the columns where they are when an entry's number is pressed", async () => {
    await page.locator('.sheet .row[data-row="4"] .row-name').click();
    await eventually(() => page.locator('.sheet .row[data-row="4"] .row-name').getAttribute("data-within")).toBe("");
    expect(await page.locator(".sheet").evaluate((sheet) => sheet.scrollLeft)).toBe(0);
    await page.locator('.sheet [data-column-name="1"]').click();
    await eventually(() => page.locator('.sheet .row[data-row="9"] > [data-column="1"]').getAttribute("aria-selected")).toBe("true");
    expect(await page.locator(".sheet").evaluate((sheet) => sheet.scrollTop)).toBe(0);
  });

  it("selects the cell that lies under words that run on from the one before", async () => {
    await showSheet(page, "About");
    await page.keyboard.press("Control+Home");
    await page.keyboard.type("A line of words that runs on over some of the cells beside it");
    await page.keyboard.press("Enter");
    const box = (await cell(page, "B1").boundingBox())!;
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    await eventually(() => activeAddress(page)).toBe("B1");
  });

  it("keeps the top bar whatever scrolls the page", async () => {
    await page.evaluate(() => {
      for (const each of document.querySelectorAll("html, body, #desk, .desk-root, .fui-FluentProvider, .desk, .both, .work"))
        each.scrollTop = 5000;
      window.scrollTo(0, 5000);
    });
    expect((await page.locator(".top").boundingBox())?.y).toBe(0);
    expect(await page.locator(".pane").evaluate((pane) => pane.scrollHeight > pane.clientHeight)).toBe(true);
  });

  it.each(["Stay here", "Escape", "Open without saving"])("is in reach again after the question about changes (%s)", async (answer) => {
    await showSheet(page, "Purchases");
    await page.keyboard.type("7");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Demo season" }).click();
    await page.getByRole("alertdialog").waitFor();
    if (answer === "Escape") await page.keyboard.press("Escape");
    else await page.getByRole("button", { name: answer }).click();
    await eventually(() => page.locator("dialog[open], [aria-hidden=true] .desk, .desk[aria-hidden], [inert]").count()).toBe(0);
    await eventually(() => page.getByRole("button", { name: "Save", exact: true }).count()).toBe(1);
    await eventually(() => page.locator(".file").innerText()).toMatch(
      answer === "Open without saving" ? /^demo-season\.xlsx$/ : /changes not saved/,
    );
  });
});

describe("what is not in a file yet", () => {
  it("is also what is typed and not entered", async () => {
    await showSheet(page, "Purchases");
    await page.keyboard.type("12");
    await eventually(() => page.locator(".file").innerText()).toContain("changes not saved");
    const asked = page.waitForEvent("dialog");
    await page.close({ runBeforeUnload: true });
    const question = await asked;
    expect(question.type()).toBe("beforeunload");
    await question.accept();
  });
});

const rows = (first: number, count: number, column: number) =>
  Promise.all(
    Array.from({ length: count }, (_, index) =>
      page.locator(`.sheet .row[data-row="${first - 1 + index}"] > [data-column="${column}"]`).evaluate((each) =>
        [...each.childNodes]
          .filter((node) => node.nodeType === 3)
          .map((node) => node.textContent)
          .join(""),
      ),
    ),
  );
const status = () => page.locator(".status").innerText();
const tool = (name: string) => page.getByRole("toolbar", { name: "What to do with the table" }).getByRole("button", { name, exact: true });
const click = (address: string) => cell(page, address).click();
const press = (keys: string) => page.keyboard.press(keys);

describe.each(["keyboard", "mouse"] as const)("by %s", (by) => {
  const use = async (name: string, keys: string) => (by === "mouse" ? tool(name).click() : press(keys));
  const undo = async () => (by === "mouse" ? page.getByRole("button", { name: "Undo" }).click() : press("Control+z"));
  beforeEach(() => showSheet(page, "Purchases"));

  it("inserts entries above those that are selected, one undo each, which says what it undid and goes there", async () => {
    const before = await rows(2, 6, 1);
    await click("B4");
    await press("Shift+ArrowDown");
    await use("Insert", "Insert");
    await eventually(() => rows(2, 6, 1)).toEqual([...before.slice(0, 2), "", "", ...before.slice(2, 4)]);
    expect(await status()).toContain("2 entries were inserted in Purchases above row 6.");
    expect(await page.locator(".rail button[aria-current=true] .count").innerText()).toBe(`${purchases + 2}\nentries`);
    await showSheet(page, "Fields");
    await undo();
    await eventually(status).toBe("Undone: 2 entries inserted in Purchases, row 4.");
    expect(await page.locator(".sheet").getAttribute("aria-label")).toBe("Table Purchases");
    expect(await activeAddress(page)).toBe("A4");
    expect(await rows(2, 6, 1)).toEqual(before);
  });

  it("deletes the selected entries, and brings them back", async () => {
    const before = await rows(2, 6, 1);
    if (by === "mouse") await page.locator('.sheet .row[data-row="3"] .row-name').click();
    else {
      await click("B4");
      await press("Shift+ ");
    }
    await use("Delete", "Control+Delete");
    await eventually(() => rows(2, 5, 1)).toEqual([...before.slice(0, 2), ...before.slice(3)]);
    expect(await status()).toContain("One entry was deleted from Purchases.");
    await undo();
    await eventually(() => rows(2, 6, 1)).toEqual(before);
  });

  it("sorts whole entries by a column up and down without moving a figure", async () => {
    const figures = () => page.locator("#pane .pn-figure").allInnerTexts();
    const [before, figuresBefore] = [await rows(2, 8, 1), await figures()];
    await click("B4");
    await use("Sort up", "Alt+Shift+ArrowUp");
    await eventually(() => rows(2, 1, 1)).not.toEqual(before.slice(0, 1));
    const sorted = await rows(2, 8, 1);
    expect(sorted).toEqual([...sorted].sort((one, other) => one.localeCompare(other, "en", { numeric: true, sensitivity: "base" })));
    expect(await status()).toContain("Purchases sorted by Item");
    await eventually(figures).toEqual(figuresBefore);
    await click("B4");
    await use("Sort down", "Alt+Shift+ArrowDown");
    await eventually(() => rows(2, 1, 1)).not.toEqual(sorted.slice(0, 1));
    await undo();
    await undo();
    await eventually(() => rows(2, 8, 1)).toEqual(before);
  });

  it("hides entries by a filter from sight alone, says how many, and leaves hidden ones as they are", async () => {
    const figures = () => page.locator("#pane .pn-figure").allInnerTexts();
    const before = await figures();
    await click("B4");
    await use("Filter", "Control+Shift+f");
    await page.keyboard.type("potash");
    await press("Enter");
    await eventually(() => page.locator(".filtered").innerText()).toMatch(
      new RegExp(`^\\d+ of ${purchases} entries are shown, those with “potash”; \\d+ are hidden\\. Figures count all of them\\.`),
    );
    const shown = await page.locator('.sheet .row > [data-column="1"]').allInnerTexts();
    expect(shown.filter((words) => words !== "").every((words) => /potash/i.test(words))).toBe(true);
    expect(await figures()).toEqual(before);
    // Over all that is selected and in sight: what is hidden keeps what it says.
    await press("Control+a");
    await press("Delete");
    if (by === "mouse") await page.getByRole("button", { name: "Show all" }).click();
    else {
      await press("Control+Shift+f");
      await press("Enter");
      await press("Escape");
    }
    await eventually(() => page.locator(".filtered").count()).toBe(0);
    await page.locator(".sheet [data-active]").focus();
    await press("Control+Home");
    await click("B2");
    expect(await page.locator(".entry-line input").inputValue()).not.toBe("");
    await undo();
    await eventually(figures).toEqual(before);
  });

  it("fills the first cell down, formulas moved along", async () => {
    await click("B4");
    await press("Shift+ArrowDown");
    await press("Shift+ArrowDown");
    const [first = ""] = await rows(4, 1, 1);
    await use("Fill down", "Control+d");
    await eventually(() => rows(4, 3, 1)).toEqual([first, first, first]);
    expect(await status()).toMatch(/^2 cells were filled from row 4; \d said something else before\.$/);
    await undo();
    await eventually(() => rows(4, 3, 1)).not.toEqual([first, first, first]);
  });

  it("finds a text in all tables, next and previous", async () => {
    await click("A2");
    await use("Find", "Control+f");
    await page.keyboard.type("old orchard");
    const next = () => (by === "mouse" ? page.getByRole("button", { name: "Next" }).click() : press("Enter"));
    await next();
    await eventually(status).toMatch(/^\d+ of \d+: /);
    const [first, table] = [await status(), await page.locator(".sheet").getAttribute("aria-label")];
    expect(table).not.toBe("Table Purchases");
    expect(await page.locator(".sheet [data-active]").innerText()).toMatch(/old orchard/i);
    await next();
    await eventually(status).not.toBe(first);
    if (by === "mouse") await page.getByRole("button", { name: "Previous" }).click();
    else await press("Shift+Enter");
    await eventually(status).toBe(first);
    await press("Escape");
    await eventually(() => page.evaluate(() => document.activeElement?.matches(".sheet [data-active]"))).toBe(true);
  });

  it("makes a column wider, and undoes that", async () => {
    const width = () => page.locator('.sheet [data-column-name="1"]').evaluate((each) => each.getBoundingClientRect().width);
    const before = await width();
    await click("B4");
    await use("Wider", "Alt+Shift+ArrowRight");
    await eventually(width).toBe(before + 21);
    if (by === "mouse") {
      const box = (await page.locator('.sheet [data-column-name="1"] .edge').boundingBox())!;
      await page.mouse.move(box.x + 4, box.y + 8);
      await page.mouse.down();
      await page.mouse.move(box.x + 64, box.y + 8, { steps: 3 });
      await page.mouse.up();
      await eventually(width).toBe(before + 81);
      await undo();
    } else {
      await use("Narrower", "Alt+Shift+ArrowLeft");
      await eventually(width).toBe(before);
      await undo();
    }
    await eventually(width).toBe(before + 21);
    await undo();
    await eventually(width).toBe(before);
  });

  it("prints all of what is shown, and nothing else", async () => {
    await page.evaluate(() => {
      window.print = () => {
        Object.assign(window, { printed: document.querySelector(".printed")?.querySelectorAll("tbody tr").length });
      };
    });
    await use("Print", "Control+p");
    await eventually(() => page.evaluate(() => (window as unknown as { printed?: number }).printed)).toBe(purchases);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".printed").isVisible()).toBe(true);
    expect(
      await page.locator(".top, .work, .pane").evaluateAll((parts) => parts.every((part) => getComputedStyle(part).display === "none")),
    ).toBe(true);
    await page.emulateMedia({ media: "screen" });
    await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
    await eventually(() => page.locator(".printed").count()).toBe(0);
  });
});

it("draws the charts of a sheet of results below its cells, and prints them with it", async () => {
  await page.getByRole("tab", { name: "More" }).click();
  await page.getByRole("button", { name: "Sheets to print" }).click();
  await page.getByRole("button", { name: "Write “Cost per acre” and “Break-even”" }).click();
  await page.locator(".rail button", { hasText: "Break-even" }).click();
  const charts = page.locator(".work .charts figure");
  await eventually(() => charts.count()).toBeGreaterThan(1);
  expect(await charts.first().locator("figcaption").innerText()).toBe("Corn: break-even price against expected price");
  // Four layers, each with the price that it needs beside the one expected.
  expect(await charts.first().locator("rect").count()).toBe(8);
  await page.evaluate(() => {
    window.print = () => {
      (window as unknown as { drawn?: number }).drawn = document.querySelectorAll(".printed .charts svg").length;
    };
  });
  await page.getByRole("button", { name: "Print", exact: true }).click();
  await eventually(() => page.evaluate(() => (window as unknown as { drawn?: number }).drawn)).toBe(await charts.count());
});

it("reaches the tools by keys, and goes from one to the next by arrows", async () => {
  await tool("Insert").focus();
  await press("ArrowRight");
  expect(await tool("Delete").evaluate((each) => each === document.activeElement)).toBe(true);
});

it("takes a block of 5,000 entries that is pasted, as one step", async () => {
  await showSheet(page, "Purchases");
  await press("Control+Home");
  await press("Control+ArrowDown");
  await press("ArrowDown");
  const lines = Array.from(
    { length: 5000 },
    (_, day) => `2026-05-${String(1 + (day % 28)).padStart(2, "0")}\tShop supplies\t${day + 1}\teach\t1.25`,
  );
  await page.evaluate((text) => navigator.clipboard.writeText(text), lines.join("\n"));
  const count = () => page.locator(".rail button[aria-current=true] .count").evaluate((each) => Number(each.firstChild?.textContent));
  const before = await count();
  await press("Control+v");
  await expect.poll(count, { timeout: 60_000 }).toBe(before + 5000);
  await press("Control+z");
  await expect.poll(count, { timeout: 60_000 }).toBe(before);
});

it.each([320, 800, 1280])("fits at a width of %d: no button is cut off or too small", async (width) => {
  await page.setViewportSize({ width, height: 700 });
  if (width < 640) await page.getByRole("button", { name: "Tools" }).click();
  const cut = await page.locator(".top button, .tools button").evaluateAll(
    (buttons, right) =>
      buttons
        .filter((each) => (each as HTMLElement).offsetParent !== null)
        .map((each) => ({ name: each.textContent, box: each.getBoundingClientRect() }))
        .filter(({ box }) => box.right > right || box.left < 0 || box.height < 24)
        .map(({ name }) => name),
    width,
  );
  expect(cut).toEqual([]);
});

it("keeps to two lines of buttons at a width of 320, and what is seldom done with files behind one of them", async () => {
  await page.setViewportSize({ width: 320, height: 700 });
  const shown = () =>
    page
      .locator(".top button, .top a")
      .evaluateAll((all) =>
        all
          .filter((each) => (each as HTMLElement).offsetParent !== null)
          .map((each) => ({ name: (each as HTMLElement).innerText.trim(), top: Math.round(each.getBoundingClientRect().top) })),
      );
  const before = await shown();
  expect(before.map(({ name }) => name)).toEqual(["Sheets", "Figures", "Undo", "Redo", "Add an entry", "File", "Save"]);
  expect(new Set(before.map(({ top }) => top)).size).toBe(2);
  // Two lines, with the name of the file beside the first of them.
  expect(await page.locator(".top").evaluate((each) => each.clientHeight)).toBeLessThan(85);
  const file = page.getByRole("button", { name: "File", exact: true });
  await file.click();
  expect(await file.getAttribute("aria-expanded")).toBe("true");
  expect((await shown()).map(({ name }) => name)).toEqual(
    expect.arrayContaining(["Open…", "New", "Demo season", "Demo with entries to fix", "Help"]),
  );
  await file.click();
  expect(await shown()).toEqual(before);
});
