/** The demo season at the desk: stand counts typed in the pane move the outlook, and a change goes from blank to its break-even. */
import type { Page } from "playwright-core";
import { beforeEach, describe, expect, it } from "vitest";
import { deskBrowser } from "../support/deskBrowser";
import { showSheet } from "./deskPage";

const desk = deskBrowser({ viewport: { width: 1280, height: 900 }, locale: "en-US" });
let page: Page;
beforeEach(async () => {
  page = await desk.open();
  await page.locator("#pane .pn-figure").first().waitFor();
});

const pane = () => page.locator("#pane");
const tab = (name: string) => pane().getByRole("tab", { name }).click();
const button = (name: string | RegExp) => pane().getByRole("button", { name }).first();
const region = (name: string) => pane().getByRole("region", { name, exact: true });
const main = (name: string) => region(name).locator(".pn-main").first().innerText();

describe("stand counts typed into the demo", () => {
  it("change the projected yield, the net return and the answer on replanting", async () => {
    await tab("Fields");
    await button(/^Old Orchard North/).click();
    // 20 plants at the knoll's 2 spots of 30 in × 17.42 ft and 21.58 at the other 6, a weak one as half: 20,005 an acre on 26 acres and
    // 21,588 on 92.4, so 21,241.
    expect(await main("Stand")).toBe("21,200 plants per acre");
    // Purdue 2012, 18 May: 84.6 % at 20,000 and 87.2 at 22,000, so 84.61 and 86.66 %; 210 × 0.8621.
    expect(await main("Projected yield")).toBe("181.0 bu per acre");
    const net = await region("Projected yield")
      .getByText(/^Corn nets/)
      .innerText();
    await button("Compare keeping with replanting").click();
    await pane().getByLabel("Part of the field", { exact: true }).selectOption("the whole field");
    const answer = await main("Keep or replant");

    await button("Add a count").click();
    for (const plants of ["12", "12"]) {
      await pane().getByLabel("Date").first().fill("2026-06-06");
      await pane().locator("[data-plants] input").first().fill(plants);
      await page.keyboard.press("Enter");
      await expect.poll(() => pane().locator("[data-plants] input").first().inputValue()).toBe("");
    }
    // Outside the knoll 153.5 plants at 8 spots: 19,192; 83.23 % there, 83.53 on all acres.
    await expect.poll(() => main("Stand")).toBe("19,400 plants per acre");
    expect(await main("Projected yield")).toBe("175.4 bu per acre");
    expect(
      await region("Projected yield")
        .getByText(/^Corn nets/)
        .innerText(),
    ).not.toBe(net);
    await expect.poll(() => main("Keep or replant")).not.toBe(answer);
    expect(await region("Keep or replant").innerText()).toContain("Ask your insurer's adjuster before you destroy a stand.");

    // Spots of a file, under the page's own rules for programs.
    await button("Spots from a file").click();
    const features = [
      { type: "Feature", geometry: { type: "Point", coordinates: [-87.005, 43.503] }, properties: { plants: 20, date: "2026-06-06" } },
    ];
    const file = JSON.stringify({ type: "FeatureCollection", features });
    await pane()
      .getByLabel("A file of points")
      .setInputFiles({ name: "spots.geojson", mimeType: "text/plain", buffer: Buffer.from(file) });
    await pane().getByText("One spot to add in Old Orchard North, 2026-06-06.").waitFor();
    await button("Add the spots").click();
    await pane().getByText("One spot was added.").waitFor();

    await button("The counts, their map, parts, spread and emergence").click();
    await button("Show the counts in the workbook").click();
    await page.waitForFunction(() => document.querySelector(".sheet")?.getAttribute("aria-label") === "Table Stand counts");
    expect(await page.locator('.sheet [data-part="body"]', { hasText: "Old Orchard North" }).count()).toBe(11);
  });
});

describe("a change built in the demo", () => {
  it("goes from blank to its break-even, is saved as rows, and is taken back by undo", async () => {
    await tab("Changes");
    await pane().getByRole("region", { name: "Changes to compare" }).waitFor();
    const before = await pane().getByRole("region", { name: "Changes to compare" }).getByRole("listitem").count();
    await button("Compare another change").click();
    await pane().getByLabel("Where").selectOption({ label: "Larkspur Bottom, Corn" });
    for (const [label, value] of [
      ["Rows", "12"],
      ["Price per row", "310"],
      ["Years kept", "6"],
      ["Name of the change", "Spiked wheels"],
    ] as const) {
      await pane().getByLabel(label).first().fill(value);
    }
    const form = pane().getByRole("form", { name: "New change" });
    // 3,720 over six years at the 8.25 % of the operating line: × 0.2179586 = 810.81, on 164.2 acres 4.9379 an acre.
    // A bushel nets 4.35 − 0.15 selling − 4 points × 0.045 drying = 4.02: 1.2283 bushels.
    await expect.poll(() => form.innerText()).toContain("1.3 bu/ac yield gain needed to pay");
    expect(await form.innerText()).toContain("The rest costs 4.94 USD per acre a year, 810.81 USD on 164.2 ac.");
    await button("Save the change").click();
    await form.getByText("“Spiked wheels” was saved as 2 entries of the table Changes.").waitFor();
    await expect.poll(() => pane().getByRole("region", { name: "Changes to compare" }).getByRole("listitem").count()).toBe(before + 1);
    expect(
      await pane()
        .getByRole("region", { name: "Changes to compare" })
        .getByRole("listitem")
        .filter({ hasText: "Spiked wheels" })
        .innerText(),
    ).toContain("1.3 bu/ac");

    await button(/^Spiked wheels/).click();
    await pane().getByLabel("Count this change in").first().check();
    await pane().getByText("Counted in: entered in its 2 entries of the table Changes.").waitFor();
    // The gain is blank, so what it adds is open, and the outlook with it.
    await region("Projected with changes").getByText("Spiked wheels: an entry is blank, so what it adds is not known.").waitFor();

    await showSheet(page, "Changes");
    const rows = page.locator('.sheet [data-part="body"]', { hasText: "Spiked wheels" });
    expect(await rows.count()).toBe(2);
    await page.keyboard.press("Control+z");
    await expect
      .poll(() =>
        region("Projected with changes")
          .getByText(/^Spiked wheels/)
          .count(),
      )
      .toBe(0);
    expect(await rows.count()).toBe(2);
    await page.keyboard.press("Control+z");
    await expect.poll(() => pane().getByRole("region", { name: "Changes to compare" }).getByRole("listitem").count()).toBe(before);
  });
});

describe("the lease of a field set against a fixed rent", () => {
  it("begins from the lease that is entered, says at which price the two are alike, and what the fixed one costs now", async () => {
    await tab("Changes");
    await button("Compare another change").click();
    await pane().getByLabel("What is compared").selectOption({ label: "Fixed or flexible rent" });
    await pane().getByLabel("Where").selectOption({ label: "Gander Slough, Soybeans" });
    const form = pane().getByRole("form", { name: "New change" });
    const typedIn = (label: string) => form.getByLabel(label).first().inputValue();
    expect(await Promise.all(["Base rent", "Base gross", "Share above base", "Most rent"].map(typedIn))).toEqual([
      "232",
      "640",
      "35",
      "290",
    ]);
    await form.getByLabel("Fixed rent").first().fill("250");
    // 58 × 10.40 is 603.20, below the base of 640; 58 × 11.90 is 690.20, of whose 50.20 beyond it 35 % are 17.57. At 250 the rent is 18
    // beyond its base: 640 + 18 / 0.35 = 691.43 of gross, 11.92 a bushel.
    await form.getByText("With 58.0 bu per acre the flexible rent is 232.00 at 9.40, 232.00 at 10.40, 249.57 at 11.90.").waitFor();
    await form.getByText("The two rents are alike at 11.92 per bu; above it the fixed rent is the lower one.").waitFor();
    await expect.poll(() => form.innerText()).toContain("Net change −18.00 USD per acre a year, −2,192.40 USD on 121.8 ac");
    expect(await form.innerText()).toContain("It pays with Fixed rent at less than 232.00.");
  });
});

describe("lender pages of the demo", () => {
  it("are written beside the entries and shown on their own sheets", async () => {
    await tab("Lender");
    await button("Write the lender pages").click();
    await pane()
      .getByText(/^The sheets “Lender pages” and “Cash flow” were written as of /)
      .waitFor();
    await page.locator(".rail button", { hasText: "Cash flow" }).waitFor();
    await showSheet(page, "Lender pages");
    expect(await page.locator(".sheet").innerText()).toContain("cost of production and break-evens");
  });
});
