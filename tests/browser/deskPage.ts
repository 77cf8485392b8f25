/** The desk as a person at the keyboard meets it, for tests. */
import type { Locator, Page } from "playwright-core";

/** A cell by its address, e.g. `B7`, as far as it is in sight. */
export function cell(page: Page, address: string): Locator {
  const { row, column } = placeOf(address);
  return page.locator(`.sheet .row[data-row="${row}"] > [data-column="${column}"]`);
}

/** Row and column, from 0, of an address. */
export function placeOf(address: string): { readonly row: number; readonly column: number } {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return { row: Number(digits) - 1, column };
}

/** The address of the active cell, as the entry line shows it. */
export const activeAddress = (page: Page): Promise<string> => page.locator(".entry-line .address").innerText();

/** Shows a table, a sheet or a result by its name in the rail. The grid then has the focus. */
export async function showSheet(page: Page, name: string): Promise<void> {
  await page
    .locator(".rail button")
    .filter({ has: page.locator("> span:first-child", { hasText: new RegExp(`^${name}$`) }) })
    .click();
  await page.waitForFunction(
    (wanted) => [`Sheet ${wanted}`, `Table ${wanted}`].includes(document.querySelector(".sheet")?.getAttribute("aria-label") ?? ""),
    name,
  );
  await page.waitForFunction(() => document.activeElement?.matches(".sheet [data-active]"));
}

/** Goes to a cell by keys alone, however far it is out of sight. */
export async function goTo(page: Page, address: string): Promise<void> {
  const { row, column } = placeOf(address);
  await page.keyboard.press("Control+Home");
  const start = placeOf(await activeAddress(page));
  for (let step = start.row; step < row; step += 1) await page.keyboard.press("ArrowDown");
  for (let step = start.column; step < column; step += 1) await page.keyboard.press("ArrowRight");
}

/** The headings of the table that is shown, with the address of the first cell under its last row, which is selected. */
export async function tableOnSheet(page: Page): Promise<{ readonly headings: readonly string[]; readonly below: string }> {
  const headings = page.locator(".sheet .column-name");
  await headings.first().waitFor();
  await page.keyboard.press("Control+Home");
  const texts = (await headings.allInnerTexts()).map((text) => text.split("\n")[0]!.trim());
  await page.keyboard.press("Control+ArrowDown");
  const last = Number((await activeAddress(page)).replace(/\D/g, ""));
  await page.keyboard.press("ArrowDown");
  return { headings: texts, below: `A${last + 1}` };
}

/** The figures at the head of the pane's cards, one a crop. */
export const outlooks = (page: Page): Promise<string[]> => page.locator("#pane .pn-figure").allInnerTexts();

/** Types a row from its first cell on, Tab from one column to the next; the last entry ends with Enter. */
export async function typeRow(page: Page, headings: readonly string[], entries: Readonly<Record<string, string>>): Promise<void> {
  const last = headings.findLastIndex((heading) => entries[heading] !== undefined);
  for (const heading of headings.slice(0, last + 1)) {
    const text = entries[heading];
    if (text !== undefined) await page.keyboard.type(text);
    await page.keyboard.press(heading === headings[last] ? "Enter" : "Tab");
  }
}

/** Presses Save and keeps the file that the browser is handed. */
export async function saveWorkbook(page: Page, file: string): Promise<void> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save", exact: true }).click()]);
  await download.saveAs(file);
}
