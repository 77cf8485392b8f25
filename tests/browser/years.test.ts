/** A season kept and the next one started at the desk, in Chromium, at the width of a phone for the pane and a desk's for the rest. */
import type { Page } from "playwright-core";
import { beforeEach, describe, expect, it } from "vitest";
import { deskBrowser } from "../support/deskBrowser";
import { outlooks, showSheet } from "./deskPage";

const desk = deskBrowser({ viewport: { width: 1900, height: 900 }, acceptDownloads: true }, "/some/where/");
let page: Page;
beforeEach(async () => {
  page = await desk.open();
  await page.locator("#pane .pn-figure").first().waitFor();
  await page.locator("#pane").getByRole("tab", { name: "More" }).click();
  await page.locator("#pane").getByRole("button", { name: "Past seasons and the next one" }).click();
});
const inPane = () => page.locator("#pane").getByRole("region", { name: "Past seasons" });

describe("past seasons at the desk", () => {
  it("keep what is harvested, and replace it when it is kept again", async () => {
    const keep = inPane().getByRole("button", { name: "Keep season 2026: 1 field" });
    await keep.click();
    await inPane().getByText("1 field of 2026 added to Past seasons.").waitFor();
    await inPane()
      .getByRole("row", { name: /^2026 / })
      .waitFor();
    await keep.click();
    await inPane().getByText("1 field of 2026 there already, and given the figures of today.").waitFor();
    await showSheet(page, "Past seasons");
    await page.keyboard.press("Control+Home");
    await page.keyboard.press("Control+ArrowDown");
    // 42 rows of the demo, one kept, and the headings.
    expect(await page.locator(".entry-line .address").innerText()).toBe("A44");
  });

  it("begin the next one, whose first figures are seen, and which is in no file yet", async () => {
    const before = await outlooks(page);
    await inPane().getByRole("button", { name: "Start the next season" }).click();
    await inPane().getByRole("button", { name: "Start season 2027" }).click();
    await page.getByText("Season 2027.xlsx").first().waitFor();
    await page.locator("#pane .pn-figure").first().waitFor();
    expect(await outlooks(page)).not.toEqual(before);
    await page.locator("#pane").getByText("2027").first().waitFor();
    // It would be lost if the page were left: the desk asks first.
    await page.getByRole("button", { name: "New", exact: true }).click();
    await page.getByRole("alertdialog").waitFor();
  });
});
