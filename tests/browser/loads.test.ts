/** The loads of a day typed on the desk under those that are there, and the harvest that they make once it is done. */
import type { Page } from "playwright-core";
import { beforeEach, expect, it } from "vitest";
import { deskBrowser } from "../support/deskBrowser";
import { goTo, showSheet, tableOnSheet, typeRow } from "./deskPage";

const desk = deskBrowser({ viewport: { width: 1280, height: 900 }, locale: "en-US" });
let page: Page;
beforeEach(async () => {
  page = await desk.open();
  await page.locator("#pane .pn-figure").first().waitFor();
});

it("typed under the others count as the harvest so far, and as the final yield once the field is done", async () => {
  const pane = page.locator("#pane");
  await pane.getByRole("tab", { name: "Fields" }).click();
  await pane
    .getByRole("button", { name: /^Thistle Draw/ })
    .first()
    .click();
  await pane
    .getByText(/harvest so far 4,380\.6 bu in 2 loads/i)
    .first()
    .waitFor();

  await showSheet(page, "Harvest");
  const { headings } = await tableOnSheet(page);
  // At 13.5 %, the standard of the wheat, nothing shrinks: 500 bushels, and 60,000 lb over the scale at 60 lb a bushel.
  await typeRow(page, headings, {
    Field: "Thistle Draw",
    Date: "6/21/2026",
    "Weight or bushels": "500",
    Unit: "bu",
    Moisture: "13.5%",
    "Test weight": "60",
  });
  await typeRow(page, headings, {
    Field: "Thistle Draw",
    Date: "6/21/2026",
    Gross: "132540",
    Tare: "72540",
    Moisture: "13.5%",
    "Test weight": "60",
  });
  await pane
    .getByText(/harvest so far 5,880\.6 bu in 4 loads/i)
    .first()
    .waitFor();

  await showSheet(page, "Fields");
  const row = Number((await tableOnSheet(page)).below.slice(1)) - 1;
  await goTo(page, `A${row}`);
  const entryLine = () => page.locator(".entry-line").innerText();
  for (let left = 30; left > 0 && !(await entryLine()).includes("Harvest done"); left -= 1) await page.keyboard.press("ArrowRight");
  await page.keyboard.type("6/21/2026");
  await page.keyboard.press("Enter");
  // 5,880.6 on 146.3 acres.
  await pane
    .getByText(/40\.2 bu/)
    .first()
    .waitFor();
  expect(await pane.getByText(/harvest so far/i).count()).toBe(0);
});
