/** Pictures of every page of the pane as it opens on the demo season, at the widths that Excel gives it: `npm run pictures`. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { pageOnItsWay } from "../../src/pane/OnItsWay";
import { panePages } from "../support/panePages";

const folder = join("docs", "pictures", "pages");
mkdirSync(folder, { recursive: true });

const press = (name: string | RegExp) => (page: Page) => page.getByRole("button", { name }).first().click();
const tab = (name: string) => (page: Page) => page.getByRole("tab", { name }).click();

/** What is pressed one after the other until the page is there, and the workbook that it opens on. */
const shown: readonly (readonly [name: string, steps: readonly ((page: Page) => Promise<void>)[], workbook?: string])[] = [
  ["season", []],
  ["fields", [tab("Fields")]],
  ["field", [tab("Fields"), press(/^Old Orchard North/)]],
  ["field-season", [tab("Fields"), press(/^Larkspur Bottom/), press("Plan and season")]],
  ["inputs", [tab("Inputs")]],
  ["changes", [tab("Changes")]],
  ["change-form", [tab("Changes"), press("Compare another change")]],
  ["lender", [tab("Lender")]],
  ["more", [tab("More")]],
  ["planter", [tab("More"), press("Planter"), press("Type a filled sheet")]],
  ["weeds", [tab("More"), press("Weeds and tank")]],
  ["hybrids", [tab("More"), press("Hybrids")]],
  ["weather", [tab("More"), press("Weather")]],
  ["drydown", [tab("More"), press("Weather"), press("When to harvest: field or dryer")]],
  ["past-seasons", [tab("More"), press("Past seasons and the next one")]],
  ["tables", [tab("More"), press("Tables")]],
  ["help", [tab("More"), press("Help")]],
  ["start", [tab("More"), press("Tables"), press("Start a rough budget")]],
  ["entries", [press(/to fix/)], "demo-season-with-problems"],
  ["empty", [], "empty"],
];

const pages = await panePages();
for (const [name, steps, workbook = "demo-season"] of shown) {
  for (const width of [320, 450]) {
    const { page } = await pages.open({
      ask: `theme=light&workbook=${workbook}${workbook === "empty" ? "&demo" : ""}`,
      width,
      height: 600,
    });
    await page.getByRole("heading", { level: 1 }).waitFor();
    for (const step of steps) await step(page);
    // The lazy part of a page may still be on its way.
    await page.getByText(pageOnItsWay).waitFor({ state: "detached" });
    await page.evaluate(() => document.fonts.ready);
    await page.mouse.move(0, 0);
    await page.screenshot({ path: join(folder, `${name}-${width}.png`), fullPage: true, animations: "disabled" });
    await pages.closeAll();
  }
}
await pages.close();
