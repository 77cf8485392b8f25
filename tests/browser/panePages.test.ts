/**
 * The pages Fields, Changes, Lender and More in Chromium over a workbook in memory: by keyboard, in every look, with a host that
 * refuses.
 */
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { accessibilityFaults, panePages, type PaneLook, type PanePages } from "../support/panePages";
import { spelledPairs } from "../../src/workbook/spelling";
import type { PanePage } from "./panePage";

let pages: PanePages;
beforeAll(async () => {
  pages = await panePages();
});
afterEach(() => pages.closeAll());
afterAll(() => pages?.close());

async function opened(tab: string, look: PaneLook = {}): Promise<Page> {
  const { page, complaints } = await pages.open({
    ...look,
    ask: `${look.ask ?? ""}${look.ask?.includes("workbook=") === true ? "" : "&workbook=counted"}`,
  });
  await page.getByRole("tab", { name: tab }).click();
  if (tab === "Fields" && look.ask?.includes("demo") !== true) await page.getByRole("button", { name: /^Mill Road/ }).click();
  expect(complaints).toEqual([]);
  return page;
}
const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).first();
const inPage = <Value>(page: Page, look: (pane: PanePage) => Value) =>
  page.evaluate(`(${look.toString()})(window.panePage)`) as Promise<Value>;
const rowsAdded = (page: Page) =>
  inPage(page, (pane) => pane.host.added.flatMap(({ table, rows }) => rows.map((row) => [table, Object.fromEntries(row)] as const)));

describe("the page Fields", () => {
  it("says the likely stand, draws it with words for those who cannot see it, and shows the outlook", async () => {
    const page = await opened("Fields");
    const stand = page.getByRole("region", { name: "Stand", exact: true });
    expect(await stand.locator(".pn-main").innerText()).toBe("21,600 plants per acre");
    expect(await stand.innerText()).toContain("likely between 18,200 and 25,000 (19 times in 20)");
    expect(await page.getByRole("img", { name: /^4 spots from 20,000 to 24,500 plants per acre/ }).count()).toBe(1);
    expect(await page.getByRole("region", { name: "Projected yield" }).locator(".pn-main").innerText()).toBe("176.1 bu per acre");
    await page.getByLabel("Field", { exact: true }).selectOption("Long Eighty");
    expect(await page.getByRole("region", { name: "Projected yield" }).innerText()).toContain("The table goes no further.");
  });

  it("takes counts by keyboard one after the other, and reads out what each changed", async () => {
    const page = await opened("Fields");
    await button(page, "Add a count").click();
    await page.getByLabel("Date").fill("2031-06-03");
    await page.locator("[data-plants] input").first().fill("31");
    expect(await page.locator("form .pn-says").innerText()).toBe("31 on 17.42 ft of row, 30 in wide: 31,000 plants per acre.");
    await page.keyboard.press("Enter");
    const told = page.locator("form [aria-live]").last();
    await expect
      .poll(() => told.innerText())
      .toMatch(/^The count was added\. Stand: 21,600 → 23,500 plants per acre\. Projected yield: 176\.1 → \d+\.\d\. Net return of Corn: /);
    expect(await page.evaluate(() => document.activeElement?.closest("[data-plants]") !== null)).toBe(true);
    expect(await rowsAdded(page)).toEqual([
      ["Stand_counts", { Field: "Mill Road", Date: 48002, "Row width": 30, Length: 17.42, Plants: 31 }],
    ]);
    expect(await page.getByLabel("Length of row, ft").inputValue()).toBe("17.42");
  });

  it("takes a count with its part and coordinates, and shows it on the map and among the parts", async () => {
    const page = await opened("Fields", { ask: "workbook=demo-season" });
    await button(page, /^Old Orchard North/).click();
    const stand = page.getByRole("region", { name: "Stand", exact: true });
    await button(page, "The counts, their map, parts, spread and emergence").click();
    expect(await page.getByRole("img", { name: /^Map of 8 spots counted in Old Orchard North, north up, 1,/ }).count()).toBe(1);
    const knoll = stand.getByRole("row", { name: /^Knoll/ });
    expect(await knoll.innerText()).toContain("2 of 6");
    await button(page, "Add a count").click();
    await button(page, "Part of the field, latitude and longitude").click();
    const form = page.getByRole("form", { name: "Add a count" });
    await form.getByLabel("Date").fill("2026-06-05");
    await form.locator("[data-plants] input").first().fill("12");
    await form.getByLabel("Part", { exact: true }).fill("knoll");
    await form.getByLabel("Latitude").fill("43.50450");
    await form.getByRole("button", { name: "Add the count" }).click();
    await form.getByText("Enter both, or neither.").waitFor();
    await form.getByLabel("Longitude").fill("-87.00600");
    await form.getByRole("button", { name: "Add the count" }).click();
    await form.getByText(/^The count was added\./).waitFor();
    await expect.poll(() => knoll.innerText()).toContain("3 of 6");
    expect(await page.getByRole("img", { name: /^Map of 9 spots .* Thinnest 12,000 in the northwest \(Knoll\)/ }).count()).toBe(1);
    // The question about replanting begins with the part.
    await button(page, "Compare keeping with replanting").click();
    expect(await page.getByLabel("Acres to replant").inputValue()).toBe("26");
    await page.getByLabel("Part of the field", { exact: true }).selectOption("the whole field");
    expect(await page.getByLabel("Acres to replant").inputValue()).toBe("118.4");
  });

  it("takes spots from a GeoJSON file, and says what of it is not read", async () => {
    const page = await opened("Fields");
    await button(page, "Add a count").click();
    await button(page, "Spots from a file").click();
    const at = (coordinates: readonly number[], properties: unknown, type = "Point") => ({
      type: "Feature",
      geometry: { type, coordinates },
      properties,
    });
    const features = [
      at([-93.62, 42], { plants: 27, time: "2031-06-02T09:00:00Z" }),
      at([-93.621, 42.001], {}),
      at([42, -93.62], { plants: 3 }),
    ];
    const text = JSON.stringify({ type: "FeatureCollection", features });
    const file = { name: "spots.geojson", mimeType: "application/geo+json", buffer: Buffer.from(text) };
    await page.getByLabel("A file of points").setInputFiles(file);
    const form = page.getByRole("form", { name: "Spots from a file" });
    await form.getByText("One spot to add in Mill Road, 2031-06-02.").waitFor();
    await form.getByText(/^Not read: point 2, “” is no date; point 3, its latitude and longitude are the wrong way round\.$/).waitFor();
    await form.getByRole("button", { name: "Add the spots" }).click();
    await form.getByText(/^One spot was added\./).waitFor();
    await expect.poll(() => page.getByLabel("Field", { exact: true }).innerText()).toContain("Mill Road, Corn: 5 spots counted");
  });

  it("keeps what was typed where the sheet is protected", async () => {
    const page = await opened("Fields");
    await button(page, "Add a count").click();
    await page.locator("[data-plants] input").first().fill("30");
    await inPage(page, (pane) => pane.refuse("addRows", "protected", "The sheet Stand counts is protected."));
    await button(page, "Add the count").click();
    await expect
      .poll(() => page.locator("form [aria-live]").last().innerText())
      .toMatch(/^The count was not added\. The sheet Stand counts is protected\./);
    expect(await page.locator("[data-plants] input").first().inputValue()).toBe("30");
  });

  it("says to ask the adjuster before anything is opened, and answers as the question is typed", async () => {
    const page = await opened("Fields");
    const reseed = page.getByRole("region", { name: "Keep or replant" });
    expect(await reseed.innerText()).toContain("Ask your insurer's adjuster before you destroy a stand.");
    await button(page, "Compare keeping with replanting").click();
    expect(await reseed.innerText()).toContain("Keeping the stand is better by these figures.");
    await page.getByLabel("Present stand").fill("12000");
    await page.getByLabel("Replanting date").fill("2031-05-20");
    await page.getByLabel("Seed", { exact: true }).fill("60");
    await expect.poll(() => reseed.innerText()).toContain("Replanting pays by these figures.");
    expect(await reseed.innerText()).toContain("17,400 plants per acre");
    const gain = await reseed.locator(".pn-main").innerText();
    await button(page, "Estimate the insurance payment").click();
    for (const [label, value] of [
      ["Proven yield (APH)", "180"],
      ["Coverage", "75"],
      ["Appraised yield", "90"],
      ["Policy's price", "4.60"],
    ] as const)
      await reseed.getByLabel(label).fill(value);
    await reseed.getByText("at most 8 bu of corn: 8.0 bu at 4.60 = 36.80 USD per acre.").waitFor();
    expect(await reseed.innerText()).toContain("Source: Iowa State University Extension");
    expect(await reseed.locator(".pn-main").innerText()).toBe(gain);
    await button(page, "Put it in as the insurance payment").click();
    expect(await reseed.getByLabel("Insurance payment", { exact: true }).inputValue()).toBe("36.8");
    await expect.poll(() => reseed.locator(".pn-main").innerText()).not.toBe(gain);
    await button(page, "Save it as a change").click();
    await expect.poll(() => reseed.innerText()).toContain("“Replant Mill Road” was saved as 4 entries");
    await page.getByRole("tab", { name: "Changes" }).click();
    await expect.poll(() => button(page, /^Replant Mill Road/).count()).toBe(1);
  });

  it("enters a loss to unevenness in the table Fields, or says why it cannot", async () => {
    const page = await opened("Fields");
    await button(page, "Uneven stand").click();
    await page.getByLabel("Loss, % of yield").fill("5");
    await inPage(page, (pane) => pane.refuse("changeCells", "formula", "Fields, entry 1 holds a formula, which is not written over."));
    await button(page, "Keep it in the workbook").click();
    await page.getByText("Nothing was entered. Fields, entry 1 holds a formula, which is not written over.").waitFor();
    await button(page, "Keep it in the workbook").click();
    await page.getByText("Entered for Mill Road in Fields, Uniformity loss %.").waitFor();
    expect(await page.getByRole("region", { name: "Projected yield" }).locator(".pn-main").innerText()).toBe("167.3 bu per acre");
  });

  it("keeps the words of a name whole beside a long figure", async () => {
    const page = await opened("Fields", { width: 450, ask: "workbook=counted" });
    await button(page, "The counts, their spread and emergence").click();
    const name = page.getByText("Emergence", { exact: true });
    await name.evaluate((dt) => {
      dt.nextElementSibling!.textContent = "177.3% of 34,000 seeds dropped: more than were dropped; look at the counts and the rate";
    });
    const lines = await name.evaluate((dt) => {
      const words = document.createRange();
      words.selectNodeContents(dt);
      return words.getClientRects().length;
    });
    expect(lines).toBe(1);
  });

  it("keeps the list of fields within the pane, however long their names are", async () => {
    const page = await opened("Fields");
    const list = page.getByLabel("Field", { exact: true });
    await list.evaluate((select: HTMLSelectElement) => {
      select.options[0]!.text = "The long field north of the old orchard by the river, Corn: 8 spots counted";
    });
    expect(
      await list.evaluate(
        (select) =>
          select.getBoundingClientRect().right <= select.closest(".pn-body")!.querySelector(".pn-card")!.getBoundingClientRect().right,
      ),
    ).toBe(true);
  });

  it("writes its sheet", async () => {
    const page = await opened("Fields");
    await button(page, "The counts, their spread and emergence").click();
    await button(page, "Write the sheet “Stand”").click();
    await page.getByText("The sheet “Stand” was written.").waitFor();
    expect(await inPage(page, (pane) => pane.host.written.map((sheets) => sheets.map(({ name }) => name)))).toEqual([["Stand"]]);
  });
});

describe("the page Changes", () => {
  it("builds a change from blank to its break-even, and lays it over the outlook once it is saved", async () => {
    const page = await opened("Changes");
    await button(page, "Compare another change").click();
    for (const [label, value] of [
      ["Rows", "12"],
      ["Price per row", "300"],
      ["Years kept", "5"],
      ["Labor per hour", "24"],
      ["Interest a year, %", "6"],
      ["Name of the change", "Wheels 2031"],
    ] as const) {
      await page.getByLabel(label).first().fill(value);
    }
    const form = page.getByRole("form", { name: "New change" });
    // 3,600 × 0.2373964004 ÷ 198.5 = 4.3054 an acre, over 4.35 − 0.22: 1.0425 bushels.
    expect(await form.innerText()).toContain("1.1 bu/ac yield gain needed to pay, at full cost");
    expect(await form.innerText()).toContain("Yield gain is blank. The rest costs 4.31 USD per acre a year, 854.63 USD on 198.5 ac.");
    expect(await form.getByRole("img", { name: /pays from 1\.1/ }).count()).toBe(1);
    await page.getByLabel("Yield gain, bu per acre").fill("2");
    // 2 × 4.13 − 4.3054
    await expect.poll(() => form.locator(".pn-net").innerText()).toBe("Net change +3.95 USD per acre a year, 784.98 USD on 198.5 ac");
    await form.getByLabel("Count this change in").check();
    await button(page, "Save the change").click();
    await page.getByRole("region", { name: "Projected with changes" }).getByText("Wheels 2031").waitFor();
    expect(await form.innerText()).toContain("“Wheels 2031” was saved as 2 entries of the table Changes.");
    expect((await rowsAdded(page))[0]).toEqual([
      "Changes",
      {
        Change: "Wheels 2031",
        Quadrant: "added returns",
        Item: "Yield gain",
        Quantity: 2,
        Unit: "bu/ac",
        Basis: "per acre",
        "Field or Crop": "Corn",
        "Interest rate": 0.06,
        "Counted in": "yes",
      },
    ]);
  });

  it("shows what must be read before the work as soon as the layout is chosen, above the boxes, and once", async () => {
    const page = await opened("Changes");
    await button(page, "Compare another change").click();
    const form = page.getByRole("form", { name: "New change" });
    const planter = form.getByText(/^Under a planter: lower it/);
    const label = form.getByText(/^The label is the law/);
    for (const [layout, caution] of [
      ["Rebuild worn row units", planter],
      ["Other closing wheels", planter],
      ["An extra pass", label],
      ["A second site of action in the tank", label],
    ] as const) {
      await page.getByLabel("What is compared").selectOption(layout);
      await caution.waitFor();
      expect(
        await caution.evaluate(
          (said) => (said.compareDocumentPosition(said.closest("form")!.querySelector("input")!) & Node.DOCUMENT_POSITION_FOLLOWING) > 0,
        ),
      ).toBe(true);
    }
    await form.locator(".pn-lead, .pn-main").first().waitFor();
    expect(await label.count()).toBe(1);
    await page.getByLabel("What is compared").selectOption("A higher rent");
    expect(await form.locator(".pn-notice-list").count()).toBe(0);
  });

  it("goes to the first box that is wrong when it is saved too early", async () => {
    const page = await opened("Changes");
    await button(page, "Compare another change").click();
    await button(page, "Save the change").click();
    await expect.poll(() => page.evaluate(() => document.activeElement?.closest(".fui-Field")?.textContent)).toMatch(/^Rows/);
    expect(await inPage(page, (pane) => pane.host.added.length)).toBe(0);
  });

  it("counts a change in by one switch, in all of its rows, and keeps the focus on it", async () => {
    const page = await opened("Changes");
    await button(page, /^Fewer soybean seeds/).click();
    const countedIn = () => inPage(page, (pane) => pane.host.table("Changes").map((row) => [row[0], row[12]]));
    const before = await countedIn();
    await page.getByLabel("Count this change in").focus();
    await page.keyboard.press("Space");
    await page.getByText("No longer counted in: entered in its 2 entries of the table Changes.").waitFor();
    expect(await countedIn()).toEqual(before.map(([name, was]) => [name, name === "Fewer soybean seeds" ? "no" : was]));
    expect(await page.getByRole("region", { name: "Projected with changes" }).count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.closest("label")?.textContent)).toBe(" Count this change in");
    expect(await page.getByLabel("Count this change in").isChecked()).toBe(false);
    await page.keyboard.press("Space");
    await page.getByText("Counted in: entered in its 2 entries of the table Changes.").waitFor();
    expect(await page.getByRole("region", { name: "Projected with changes" }).count()).toBe(1);
  });

  it("leaves the switch as the workbook says where nothing could be entered", async () => {
    const page = await opened("Changes");
    await button(page, /^Fewer soybean seeds/).click();
    await inPage(page, (pane) => pane.refuse("changeCells", "protected", "The sheet is protected."));
    await page.getByLabel("Count this change in").click();
    await page.getByText(/^Nothing was entered. The sheet is protected./).waitFor();
    expect(await page.getByLabel("Count this change in").isChecked()).toBe(true);
  });

  it("adds the column Counted in to a table without one, when asked", async () => {
    const page = await opened("Changes", { ask: "workbook=without-counted-in" });
    await button(page, /^Fewer soybean seeds/).click();
    await page.getByLabel("Count this change in").click();
    await page
      .getByText(
        "Nothing was entered. The table Changes has no column Counted in. Add it yourself, or let it be added at the table's right end.",
      )
      .waitFor();
    await button(page, "Add the column Counted in to Changes").focus();
    await page.keyboard.press("Enter");
    await page.getByText("Counted in: entered in its 2 entries of the table Changes.").waitFor();
    const kept = await inPage(page, (pane) =>
      pane.host
        .table("Changes")
        .filter((row) => row[0] === "Fewer soybean seeds")
        .map((row) => row.at(-1)),
    );
    expect(kept).toEqual(["yes", "yes"]);
    expect(await button(page, "Add the column Counted in to Changes").count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.closest("label")?.textContent)).toBe(" Count this change in");
  });

  it("is walked by keys alone: products are picked by their first letters, prices come from Items, no list pushes the page", async () => {
    const page = await opened("Changes");
    await button(page, "Compare another change").focus();
    await page.keyboard.press("Enter");
    await page.getByLabel("What is compared").selectOption("A second site of action in the tank");
    await page.getByLabel("Product 1").focus();
    const height = () => page.evaluate(() => document.querySelector(".pn-pane")!.scrollHeight);
    await page.keyboard.type("ur");
    await page.getByRole("listbox", { name: "Product 1" }).waitFor();
    const withList = await height();
    await page.keyboard.press("Escape");
    expect([await page.getByRole("listbox").count(), await page.getByLabel("Product 1").inputValue()]).toEqual([0, "ur"]);
    expect(await height()).toBe(withList);
    await page.keyboard.type("e");
    await page.keyboard.press("Tab");
    expect(await page.getByLabel("Product 1").inputValue()).toBe("Urea");
    expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe("Rate 1");
    await page.keyboard.type("12");
    await page.keyboard.press("Tab");
    await page.keyboard.type("lb");
    // 30,000 lb were bought for 8,550.
    await page.getByText("0.29 USD a lb, from Items: 3.42 USD an acre").waitFor();
    const form = page.getByRole("form", { name: "New change" });
    expect(await form.innerText()).toContain("Yield kept is blank. The rest costs 3.42 USD per acre a year");
    await page.getByLabel("Name of the change").focus();
    await page.keyboard.press("Enter");
    await form.getByText("“A second site of action in the tank” was saved as 2 entries of the table Changes.").waitFor();
    expect((await rowsAdded(page))[1]![1]).toMatchObject({ Item: "Urea", Quantity: 12, Unit: "lb/ac", Price: 0.285 });
  });

  it("makes the table Changes where the workbook has none", async () => {
    const page = await opened("Changes", { ask: "workbook=season" });
    await button(page, "Compare another change").click();
    await page.getByLabel("What is compared").selectOption("A higher rent");
    await page.getByLabel("Where").selectOption({ label: "Mill Road, Corn" });
    await page.getByLabel("Rent asked").fill("255");
    await button(page, "Save the change").click();
    await page.getByRole("region", { name: "Changes to compare" }).waitFor();
    expect(await inPage(page, (pane) => pane.host.table("Changes").map((row) => row.slice(0, 3).join("|")))).toEqual([
      "A higher rent|added returns|Yield that carries the rise",
      "A higher rent|added costs|Rise in rent",
    ]);
    // 20 more an acre over 4.13.
    expect(await page.getByRole("region", { name: "Changes to compare" }).innerText()).toContain("4.9 bu/ac");
  });
});

describe("after an entry", () => {
  const effect = (page: Page) => page.locator(".pn-entry-effect");
  it("says in a line what it did, wherever it was made, and is silent where more than one row changed", async () => {
    const page = await opened("Changes");
    expect(await effect(page).innerText()).toBe("");
    const put = (rows: readonly (readonly (string | number)[])[]) =>
      page.evaluate(async (all) => {
        const { host } = (window as unknown as { panePage: PanePage }).panePage;
        const headings = ["Date", "Item", "Quantity", "Unit", "Unit price"];
        await host.addRows(
          "Purchases",
          all.map((cells) => new Map(cells.map((cell, index) => [headings[index]!, cell]))),
        );
      }, rows);
    const again = () => button(page, "Read the workbook again").click();
    await put([["2031-05-20", "Urea", 1000, "lb", 0.9]]);
    await again();
    await expect.poll(() => effect(page).innerText()).toMatch(/^Urea 0\.30 a lb against plan 0\.26: Corn \+3\.\d\d an acre/);
    await again();
    expect(await effect(page).innerText()).toMatch(/^Urea/);
    await put([
      ["2031-05-21", "Urea", 10, "lb", 0.9],
      ["2031-05-22", "Urea", 20, "lb", 0.9],
    ]);
    await again();
    await expect.poll(() => effect(page).innerText()).toBe("");
  });
});

describe("the page Lender", () => {
  it("says what would embarrass, previews, and writes the pages with the cash flow in one step", async () => {
    const page = await opened("Lender");
    expect(await page.getByRole("region", { name: "What a lender asks first" }).innerText()).toContain(
      "No family living is entered, so cash need is too low.",
    );
    await button(page, "Choose crops, layer and sheets").click();
    await page.getByRole("checkbox", { name: "Soybeans" }).uncheck();
    await page.getByRole("radio", { name: "full" }).check();
    await button(page, "Write the lender pages").click();
    await page.getByText(/^The sheets “Lender pages” and “Cash flow” were written as of /).waitFor();
    expect(await inPage(page, (pane) => pane.host.written.map((sheets) => sheets.map(({ name }) => name)))).toEqual([
      ["Lender pages", "Cash flow"],
    ]);
    expect(await inPage(page, (pane) => JSON.stringify(pane.host.written[0]![0]!.rows).includes("Soybeans:"))).toBe(false);
    await button(page, "Open “Lender pages”").click();
    await expect.poll(() => inPage(page, (pane) => pane.host.selected.at(-1)?.sheet)).toBe("Lender pages");
  });

  it("is reached, set and written by keys alone", async () => {
    const page = await opened("Season");
    const press = (key: string) => page.keyboard.press(key);
    const focused = () => page.evaluate(() => (document.activeElement as HTMLElement | null)?.innerText.trim() ?? "");
    for (let at = 0; (await focused()) !== "Lender"; at += 1) {
      expect(at).toBeLessThan(6);
      await press("ArrowRight");
    }
    await button(page, "Choose crops, layer and sheets").waitFor();
    for (let at = 0; (await focused()) !== "Choose crops, layer and sheets"; at += 1) {
      expect(at).toBeLessThan(12);
      await press("Tab");
    }
    await press("Enter");
    // The first box is a crop: with it off, the rest of the farm is written.
    await press("Tab");
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).type)).toBe("checkbox");
    const crop = await page.evaluate(() => (document.activeElement as HTMLInputElement).closest("label")!.innerText.trim());
    await press("Space");
    for (let at = 0; (await focused()) !== "Write the lender pages"; at += 1) {
      expect(at).toBeLessThan(12);
      await press("Shift+Tab");
    }
    await press("Enter");
    await expect.poll(() => inPage(page, (pane) => pane.host.written.length)).toBeGreaterThan(0);
    const names = await inPage(page, (pane) => pane.host.written.at(-1)!.map(({ name }) => name));
    expect(names.slice(0, 2)).toEqual(["Lender pages", "Cash flow"]);
    const cells = await inPage(page, (pane) => pane.host.written.at(-1)![0]!.rows.flatMap((row) => row.map(({ value }) => String(value))));
    const heads = (of: string) => cells.filter((cell) => cell === of || cell.startsWith(`${of} – `)).length;
    expect([crop, heads("Corn"), heads("Soybeans") > 0]).toEqual(["Corn", 0, true]);
  });

  it("says in words why nothing was written, and writes when it is tried again", async () => {
    const page = await opened("Lender");
    await inPage(page, (pane) => pane.refuse("write", "busy", "A cell is being edited."));
    await button(page, "Write the lender pages").click();
    await page.getByText("Nothing was written. A cell is being edited. Try again in a moment.").waitFor();
    await button(page, "Write the lender pages").click();
    await page.getByText(/^The sheets “Lender pages”/).waitFor();
  });

  it("waits for a crop to be chosen", async () => {
    const page = await opened("Lender");
    await button(page, "Choose crops, layer and sheets").click();
    for (const crop of ["Corn", "Soybeans"]) await page.getByRole("checkbox", { name: crop }).uncheck();
    await button(page, "Write the lender pages").click();
    await page.getByText("Nothing was written. Choose a crop first.").waitFor();
    expect(await inPage(page, (pane) => pane.host.written.length)).toBe(0);
  });
});

it("writes cost per acre and break-evens from the page More", async () => {
  const page = await opened("More");
  await button(page, "Sheets to print").click();
  await button(page, "Write “Cost per acre” and “Break-even”").click();
  await page.getByText("The sheets “Cost per acre” and “Break-even” were written.").waitFor();
});

/**
 * Opens every fold of the page once, one after the other since some close their neighbours, and gathers all that is said
 * meanwhile, but not what is typed in a box.
 */
const allSaid = (page: Page) =>
  page.evaluate(async () => {
    const said = new Set<string>();
    const opened = new Set<Element>();
    const listen = (root: Element) => {
      for (const each of root.querySelectorAll("*")) {
        for (const name of ["aria-label", "placeholder", "title"]) said.add(each.getAttribute(name) ?? "");
        for (const node of each.childNodes) if (node.nodeType === Node.TEXT_NODE) said.add(node.textContent ?? "");
      }
    };
    for (;;) {
      listen(document.querySelector(".pn-pane")!);
      const next = [...document.querySelectorAll<HTMLElement>(".pn-body:not([hidden]) button[aria-expanded=false]")].find(
        (each) => !opened.has(each),
      );
      if (next === undefined) return [...said].join("\n");
      opened.add(next);
      next.click();
      await new Promise((drawn) => {
        requestAnimationFrame(() => {
          requestAnimationFrame(drawn);
        });
      });
    }
  });

describe("the words of every page, with everything opened", () => {
  const ends = (which: 0 | 1) => new RegExp(`[a-z]*(${spelledPairs.map((pair) => pair[which]).join("|")})[a-z]*`, "gi");
  it.each([
    ["USD", ends(0), "hired labor", ""],
    ["CAD", ends(1), "hired labour", "&currency=CAD"],
  ] as const)("are spelled as where money is %s", async (_, wrong, right, currency) => {
    const { page, complaints } = await pages.open({ ask: `workbook=demo-season${currency}`, width: 450 });
    const said: string[] = [];
    for (const tab of ["Season", "Fields", "Inputs", "Changes", "Lender", "More"]) {
      await page.getByRole("tab", { name: tab }).click();
      await page.locator(".pn-body:not([hidden]) section").first().waitFor();
      if (tab === "Changes") {
        await button(page, "Compare another change").click();
        await page.getByLabel("What is compared").selectOption("Own or hire");
      }
      said.push(await allSaid(page));
    }
    await button(page, "Start a rough budget").click();
    await page.getByRole("form", { name: "Start a season" }).waitFor();
    const words = said.join("\n");
    // A check of a stand or an entry is none on a bank, nobody spells diameter otherwise, and a part of the planter is called Meter.
    expect([...words.matchAll(wrong)].map(([word]) => word).filter((word) => !/check|diameter|^meters?$/i.test(word))).toEqual([]);
    expect(words).toContain(right);
    expect(words).toContain("trucking");
    expect(complaints).toEqual([]);
  });
});

/** Presses what is folded until nothing is, so that every part is drawn once. */
async function unfoldAll(page: Page, most = 40): Promise<void> {
  const folded = page.locator(".pn-body:not([hidden]) button[aria-expanded=false]");
  for (let left = most; left > 0 && (await folded.count()) > 0; left--) await folded.first().click();
  expect(await folded.count()).toBe(0);
}

const looks: readonly (readonly [string, PaneLook])[] = [
  ["light", { ask: "theme=light" }],
  ["light at 450 pixels", { width: 450, ask: "theme=light" }],
  ["light at 1,280 pixels", { width: 1280, ask: "theme=light" }],
  ["dark", { ask: "theme=dark" }],
  ["high contrast", { ask: "theme=highContrast" }],
  ["the system's forced colours at 450 pixels", { width: 450, forcedColors: true }],
];

describe.each(looks)("in %s", (_, look) => {
  const isSound = async (page: Page) => {
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
  };
  it("Fields is accessible and no wider than the pane with everything opened", async () => {
    const page = await opened("Fields", look);
    for (const name of [
      "Add a count",
      "Part of the field, latitude and longitude",
      "Spots from a file",
      "The counts, their spread and emergence",
      "How it is worked out",
      "Uneven stand",
      "Compare keeping with replanting",
      /^Treatment, other costs/,
    ])
      await button(page, name).click();
    await button(page, "Add the count").click();
    await page.getByLabel("Loss, % of yield").fill("4");
    await isSound(page);
  });
  it("a field in parts is on the demo, with its map opened", async () => {
    const page = await opened("Fields", { ...look, ask: `${look.ask ?? ""}&workbook=demo-season` });
    await button(page, /^Old Orchard North/).click();
    await button(page, "The counts, their map, parts, spread and emergence").click();
    await button(page, "Compare keeping with replanting").click();
    await isSound(page);
  });
  it("More is on the demo, with planter, hybrids, weeds, weather, sheets and tables opened", async () => {
    const page = await opened("More", { ...look, ask: `${look.ask ?? ""}&workbook=demo-season` });
    for (const name of [
      "Planter",
      "A sheet to take to the shed",
      "Type a filled sheet",
      "Hybrids",
      /^1\. Corn hybrid K-114/,
      "Corn: own fields side by side, no trial",
      "Weeds and tank",
      /^Larkspur Bottom: Waterhemp, no site left in 1 of 3 passes$/,
      "Weather",
      "When to harvest: field or dryer",
      "Days from a file",
      "Sheets to print",
      "Tables",
    ])
      await button(page, name).click();
    await page.getByText(/^Projected maturity\./).waitFor();
    await page.getByLabel("Moisture, %").fill("30");
    await page.getByLabel("On this day").fill("2026-09-20");
    await page
      .getByText(/^Cheapest safe day: /)
      .first()
      .waitFor();
    await isSound(page);
  });
  it("Help is, with every part opened", async () => {
    const page = await opened("More", look);
    await button(page, "Help").click();
    await page.getByRole("region", { name: "Help by subject" }).waitFor();
    await unfoldAll(page, 80);
    await isSound(page);
  });
  it("Changes is, with a layout begun wrongly and a change opened", async () => {
    const page = await opened("Changes", look);
    await button(page, "Compare another change").click();
    await page.getByLabel("What is compared").selectOption("Another hybrid");
    await button(page, "Save the change").click();
    await unfoldAll(page);
    await isSound(page);
  });
  it("Lender is, after writing", async () => {
    const page = await opened("Lender", look);
    await button(page, "Write the lender pages").click();
    await page.getByText(/^The sheets “Lender pages”/).waitFor();
    await unfoldAll(page);
    await isSound(page);
  });
});

describe("the pages of the demo at 320 × 600", () => {
  it.each(["Season", "Fields", "Inputs", "Changes", "Lender", "More"])("%s opens no higher than 1,200 pixels", async (tab) => {
    const page = await opened(tab, { ask: "workbook=demo-season", height: 600 });
    await page.locator(".pn-body:not([hidden]) section").first().waitFor();
    expect(await page.evaluate(() => document.querySelector(".pn-pane")!.scrollHeight)).toBeLessThanOrEqual(1200);
  });

  it("a field opens no higher, thin or not, counted or not", async () => {
    const page = await opened("Fields", { ask: "workbook=demo-season", height: 600 });
    await button(page, /^Old Orchard North/).click();
    const list = page.getByLabel("Field", { exact: true });
    for (const name of await list
      .locator("option")
      .evaluateAll((options) => options.map((option) => (option as HTMLOptionElement).value))) {
      await list.selectOption(name);
      await page.getByRole("heading", { name, level: 3 }).waitFor();
      await page.getByRole("region", { name: "Projected yield" }).waitFor();
      expect(await page.evaluate(() => document.querySelector(".pn-pane")!.scrollHeight), name).toBeLessThanOrEqual(1200);
    }
  });
  it("Help opens no higher, from the page More and back, and says what is looked for", async () => {
    const page = await opened("More", { ask: "workbook=demo-season", height: 600 });
    await button(page, "Help").focus();
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Help" }).waitFor();
    expect(await page.evaluate(() => document.querySelector(".pn-pane")!.scrollHeight)).toBeLessThanOrEqual(1200);
    await button(page, "The tables and their columns").click();
    await button(page, "Purchases").click();
    await page.getByText("One entry is one line of an invoice.").waitFor();
    await button(page, "‹ More").click();
    await expect.poll(() => page.getByRole("tab", { name: "More" }).getAttribute("aria-selected")).toBe("true");
  });
});
