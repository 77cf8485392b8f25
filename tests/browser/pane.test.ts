/** The pane in Chromium over a workbook in memory: what it shows, by keyboard alone, in every look, checked by axe. */
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import type { WorkbookHost } from "../../src/host/workbookHost";
import { inputTables } from "../../src/workbook/templates";
import { accessibilityFaults, panePages, type PaneLook, type PanePages } from "../support/panePages";
import type { PanePage } from "./panePage";

let pages: PanePages;
beforeAll(async () => {
  pages = await panePages();
});
afterEach(() => pages.closeAll());
afterAll(() => pages?.close());

async function opened(look: PaneLook = {}): Promise<Page> {
  const { page, complaints } = await pages.open(look);
  await page.getByRole("heading", { level: 1 }).waitFor();
  expect(complaints).toEqual([]);
  return page;
}
const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).first();
const inPage = <Value>(page: Page, look: (pane: PanePage) => Value) =>
  page.evaluate(`(${look.toString()})(window.panePage)`) as Promise<Value>;
/** Where the focus is, by the words of the element. */
const focused = (page: Page) => page.evaluate(() => (document.activeElement as HTMLElement | null)?.innerText ?? "");

describe("the page Season", () => {
  it("says of each crop what an acre costs, naming unit, layer, stage, yield and price", async () => {
    const page = await opened();
    const corn = page.getByRole("region", { name: "Corn" });
    await corn.waitFor();
    // Worked by hand in the unit test of the card, here through the tables of a workbook.
    expect(await corn.locator(".pn-main").innerText()).toBe("425.69 USD per acre, cash cost, projected");
    expect(await corn.innerText()).toContain("+16.94 since plan");
    expect(await corn.innerText()).toContain("4.35 a bushel covers every layer.");
    await page.getByLabel("After which cost").selectOption({ label: "after full cost" });
    expect(await corn.locator(".pn-main").innerText()).toBe("538.74 USD per acre, full cost, projected");
    expect(await page.getByRole("region", { name: "Whole farm" }).innerText()).toContain("No crop falls short of any layer.");
  });

  it("leads from a figure down to an entry, whose cell it selects, by keyboard alone", async () => {
    const page = await opened();
    await page.getByRole("tab", { name: "Season" }).focus();
    const down = async (name: RegExp) => {
      for (let step = 0; step < 30; step += 1) {
        await page.keyboard.press("Tab");
        if (name.test(await focused(page))) return page.keyboard.press("Enter");
      }
      throw new Error(`the Tab key does not reach ${name}`);
    };
    await down(/^More on Corn/);
    await down(/^Where an acre's cost goes/);
    await down(/^seed/);
    await down(/^Mill Road/);
    await down(/^Purchases, entry 1/);
    await expect.poll(() => inPage(page, (pane) => pane.host.selected)).toEqual([{ sheet: "Purchases", row: 1, column: 0 }]);
  });

  it("marks a figure that problems touch with a word and a sign, and leads to them", async () => {
    const page = await opened({ ask: "workbook=problems" });
    const mark = page
      .getByRole("region", { name: "Corn" })
      .getByRole("button", { name: /^Incomplete: \d entr(y|ies) to fix\s?, touching Corn/ });
    expect(await mark.locator("svg").count()).toBe(1);
    await mark.click();
    await page.getByRole("region", { name: "Entries to fix", exact: true }).waitFor();
    expect(await focused(page)).toBe("Entries to fix");
    await page.getByRole("button", { name: "Purchases, entry 5, Quantity" }).click();
    await expect.poll(() => inPage(page, (pane) => pane.host.selected)).toEqual([{ sheet: "Purchases", row: 5, column: 2 }]);
  });

  it("has a tab for each page and goes between them by the arrow keys", async () => {
    const page = await opened({ ask: "workbook=problems" });
    expect(await page.getByRole("tab").allInnerTexts()).toEqual(["Season", "Fields", "Inputs", "Changes", "Lender", "More"]);
    await page.getByRole("tab", { name: "Season" }).press("ArrowLeft");
    expect(await focused(page)).toBe("More");
    await page.getByRole("button", { name: "Tables" }).waitFor();
  });

  it("leads from a line at the top to the entries to fix, and back by the tabs; without any there is no line", async () => {
    const page = await opened({ ask: "workbook=problems" });
    await button(page, /^2 entries to fix/).click();
    await expect
      .poll(() => page.getByRole("region", { name: "Entries to fix", exact: true }).innerText(), { timeout: 30_000 })
      .toContain("two loads");
    expect(await page.getByRole("tab", { selected: true }).count()).toBe(0);
    await page.getByRole("tab", { name: "Season" }).press("ArrowRight");
    expect(await page.getByRole("tab", { selected: true }).innerText()).toBe("Fields");
    const sound = await opened();
    expect(await sound.getByRole("button", { name: /entr(y|ies) to/ }).count()).toBe(0);
  });

  it("has its tabs in one line at 320 pixels", async () => {
    const page = await opened({ width: 320 });
    const tops = await page.getByRole("tab").evaluateAll((tabs) => tabs.map((tab) => tab.getBoundingClientRect().top));
    expect(new Set(tops).size).toBe(1);
    expect(
      await page
        .getByRole("tab")
        .last()
        .evaluate((tab) => tab.getBoundingClientRect().right <= 320),
    ).toBe(true);
  });
});

describe("typing a filled sheet of the planter", () => {
  it("goes down all rows by Enter, adds them at once, and shows what is due", async () => {
    const page = await opened({ width: 320, ask: "workbook=demo-season" });
    await page.getByRole("tab", { name: "More" }).click();
    await button(page, "Planter").click();
    await button(page, "Type a filled sheet").click();
    const form = page.getByRole("form", { name: "Type one part of all rows" });
    const before = await inPage(
      page,
      async (pane) => (await pane.host.read()).tables.find(({ name }) => /^planter.?checks$/i.test(name))!.rows.length,
    );
    await form.getByLabel("Rows of the planter").fill("3");
    await form.getByRole("combobox", { name: "Part" }).fill("Meter seal");
    await form.getByLabel("Size when new").fill("4");
    await form.getByLabel("Replace at").fill("3");
    await form.getByLabel("Row 1", { exact: true }).focus();
    for (const size of ["2.9", "", "3.9"]) {
      await page.keyboard.type(size);
      await page.keyboard.press("Enter");
    }
    await form.getByText("Meter seal: 2 rows added.").waitFor();
    expect(
      await inPage(page, async (pane) => (await pane.host.read()).tables.find(({ name }) => /^planter.?checks$/i.test(name))!.rows.length),
    ).toBe(before + 2);
    await page.getByRole("button", { name: "Meter seal, row 1" }).waitFor();
    expect(await page.getByRole("button", { name: "Meter seal, row 3" }).count()).toBe(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
});

describe("what is due on the planter", () => {
  it("is not offered for the plan where the machine's own repairs have it in them", async () => {
    const page = await opened({ width: 320, ask: "workbook=demo-season" });
    await page.getByRole("tab", { name: "More" }).click();
    await button(page, "Planter").click();
    await page.getByText(/^Machines computes repairs for this planter already/).waitFor();
    expect(await button(page, /^Into the plan/).count()).toBe(0);
  });
});

describe("a field's page", () => {
  it("tells its plan and its season, subject by subject", async () => {
    const page = await opened({ width: 320, ask: "workbook=demo-season" });
    await page.getByRole("tab", { name: "Fields" }).click();
    await button(page, /^Larkspur Bottom/).click();
    await button(page, "Plan and season").click();
    for (const subject of ["Planned", "Planted and counted", "Heat and rain", "Passes against weeds", "Past seasons"])
      await page.getByRole("region", { name: subject, exact: true }).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
});

describe("a later harvest", () => {
  it("is saved as a change to compare, from its usual question", async () => {
    const page = await opened({ width: 320, ask: "workbook=demo-season" });
    await page.getByRole("tab", { name: "More" }).click();
    await button(page, "Weather").click();
    await button(page, "When to harvest: field or dryer").click();
    const weather = page.getByRole("region", { name: "Weather", exact: true });
    await weather.getByText(/^Cheapest safe day: /).waitFor();
    expect(await weather.getByLabel("Name of the change").inputValue()).toBe("Later harvest, Larkspur Bottom");
    await weather.getByRole("button", { name: /^Save/ }).click();
    await weather.getByText(/^“Later harvest, Larkspur Bottom” was saved as \d+ entries of the table Changes/).waitFor();
    await page.getByRole("tab", { name: "Changes" }).click();
    await page.getByText("Later harvest, Larkspur Bottom").first().waitFor();
  });
});

describe("picking a hybrid", () => {
  it("shows what its trials say, and begins the change to it with their seed and moisture, and no gain that they do not show", async () => {
    const page = await opened({ width: 320, ask: "workbook=demo-season" });
    await page.getByRole("tab", { name: "More" }).click();
    await button(page, "Hybrids").click();
    const hybrids = page.getByRole("region", { name: "Hybrids", exact: true });
    await hybrids.getByText("Corn, held against Corn hybrid L-112.").waitFor();
    await hybrids.getByRole("img", { name: /^Yield and moisture beside Corn hybrid L-112: Corn hybrid K-114 6\.9 bu\/ac more/ }).waitFor();
    // Trials of the demo: 232.3 − 223.6, 190.7 − 191.1, 240.0 − 227.1 and 205.9 − 199.4: 6.925 in the mean, ± t(3) × 5.559 ÷ 2.
    await hybrids.getByText("6.9 bu/ac more (−1.9 to 15.8) in 4 trials, 1.1 points wetter: no difference shown by these trials").waitFor();
    await button(page, /^1\. Corn hybrid K-114/).click();
    expect(await page.getByRole("table", { name: /^Trial by trial/ }).innerText()).toMatch(
      /River road plots 2024\s+232\.3\s+223\.6\s+\+8\.7/,
    );
    await button(page, "Compare Corn hybrid K-114 as a change").click();
    const form = page.getByRole("form", { name: "New change" });
    const box = (label: string | RegExp) => form.getByLabel(label).inputValue();
    expect(await page.getByLabel("What is compared").inputValue()).toBe("Another hybrid");
    expect([await box(/^Yield gain/), await box(/^Price per unit of seed, other/), await box(/^Trait fee, .*, other/)]).toEqual([
      "",
      "298",
      "3.5",
    ]);
    expect([await box("Name of the change"), await box("Acres a year")]).toEqual([
      "Corn hybrid K-114 instead of Corn hybrid L-112",
      "567.4",
    ]);
    expect(await form.innerText()).toMatch(/[\d.]+ bu\/ac yield gain needed to pay/);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await form.getByRole("button", { name: "Save the change" }).click();
    await form.getByText(/was saved as \d+ entries of the table Changes/).waitFor();
    // Another hybrid begins the form anew, though the page was open before.
    await page.getByRole("tab", { name: "More" }).click();
    await button(page, /Corn hybrid M-108/).click();
    await button(page, "Compare Corn hybrid M-108 as a change").click();
    await expect.poll(() => box("Name of the change")).toBe("Corn hybrid M-108 instead of Corn hybrid L-112");
    // Its six trials show 8.3 bushels less.
    expect(await box(/^Yield gain/)).toBe("-8.2833");
  });

  it("leads from a trial to its entry", async () => {
    const page = await opened({ ask: "workbook=demo-season" });
    await page.getByRole("tab", { name: "More" }).click();
    await button(page, "Hybrids").click();
    await button(page, /Corn hybrid M-108/).click();
    await button(page, "Hill school plots 2025").click();
    await expect.poll(() => inPage(page, (pane) => JSON.stringify(pane.host.selected))).toContain("Hybrid trials");
  });
});

describe("opening a file of daily weather", () => {
  it("adds its days at once, tells what is there already, and moves the heat of the fields", async () => {
    const page = await opened({ ask: "workbook=demo-season" });
    await page.getByRole("tab", { name: "More" }).click();
    await button(page, "Weather").click();
    await button(page, "Days from a file").click();
    const rows = () =>
      inPage(page, async (pane) =>
        (await pane.host.read()).tables.find(({ name }) => /^weather$/i.test(name))!.rows.map((row) => row.join("|")),
      );
    const [before, heat] = [await rows(), await page.getByRole("table", { name: /and rain so far/ }).innerText()];
    const dates = await page.getByText(/from the day after planting to \d{4}-\d\d-\d\d/).innerText();
    const last = /to (\d{4}-\d\d-\d\d)/.exec(dates)![1]!;
    const next = new Date(Date.parse(last) + 86_400_000).toISOString().slice(0, 10);
    const text = `"Date/Time","Max Temp (°C)","Min Temp (°C)","Total Precip (mm)"\n"${next}","30.0","20.0","25.4"\n"no day","1","1","1"\n`;
    await page.getByLabel("A file of daily weather").setInputFiles({ name: "days.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
    const form = page.getByRole("form", { name: "Days from a file" });
    await form.getByText(`1 day to add, ${next} to ${next}.`).waitFor();
    await form.getByText("Not read: line 3, “no day” is no date.").waitFor();
    await form.getByRole("button", { name: "Add the days" }).click();
    await form.getByText("1 day was added.").waitFor();
    const after = await rows();
    expect(after).toHaveLength(before.length + 1);
    // 30 and 20 °C are 86 and 68 °F; 25.4 mm are an inch.
    expect(after.at(-1)).toMatch(/\|86\|68\|1\|/);
    await expect.poll(() => page.getByRole("table", { name: /and rain so far/ }).innerText()).not.toBe(heat);
  });
});

describe("adding a purchase", () => {
  const fill = async (page: Page) => {
    await page.getByRole("tab", { name: "Inputs" }).click();
    await page.getByRole("combobox", { name: "Item" }).pressSequentially("ur");
    await page.keyboard.press("Enter");
    await page.getByLabel("Date").fill("2031-05-20");
    await page.getByLabel("Quantity").fill("1,000");
    await page.getByLabel("Price per lb").fill("0.9");
  };

  it("shows what the row will say, adds it at Enter, and reads out what changed", async () => {
    const page = await opened();
    await fill(page);
    await expect
      .poll(() => page.locator(".pn-says").innerText())
      .toBe(
        "1,000 lb of Urea for 900.00 USD: 0.90 USD per lb. Plan price 0.26 a lb: 0.64 higher. Corn 425.69 → 428.79 an acre, price " +
          "needed 2.23 → 2.25 (cash cost). One entry to fix or to check would come with it.",
      );
    await page.keyboard.press("Enter");
    const told = page.locator("form [aria-live]");
    // 0.90 is three times the 0.285 paid before, which is told as to check.
    await expect
      .poll(() => told.innerText())
      .toBe(
        "The purchase was added. Cost per acre of Corn: 425.69 → 428.79 (USD, cash cost, projected). 1 new entry to fix or to " +
          "check: see the line at the top.",
      );
    expect(
      await inPage(page, (pane) => pane.host.added.map(({ table, rows }) => [table, ...rows.map((row) => Object.fromEntries(row))])),
    ).toEqual([["Purchases", { Date: 47988, Item: "Urea", Quantity: 1000, Unit: "lb", "Unit price": 0.9 }]]);
    expect(await page.getByLabel("Quantity").inputValue()).toBe("");
  });

  it("is entered by keys alone, with item and last price taken from the workbook and no list that pushes the page", async () => {
    const page = await opened();
    await page.getByRole("tab", { name: "Season" }).focus();
    for (const key of ["ArrowRight", "ArrowRight"]) await page.keyboard.press(key);
    await page.getByRole("form", { name: "What did you buy?" }).waitFor();
    const focused = () =>
      page.evaluate(
        () => document.activeElement?.closest("label, .pn-pickbox, .fui-Field")?.textContent ?? document.activeElement?.textContent ?? "",
      );
    for (let left = 12; left > 0 && !(await focused()).startsWith("Item"); left--) await page.keyboard.press("Tab");
    const top = () => page.getByLabel("Quantity").evaluate((box) => box.getBoundingClientRect().top);
    const before = await top();
    await page.keyboard.type("ur");
    await page.getByRole("listbox", { name: "Item" }).waitFor();
    expect(await top()).toBe(before);
    await page.keyboard.press("Tab");
    expect(await page.getByRole("combobox", { name: "Item" }).inputValue()).toBe("Urea");
    expect(await focused()).toMatch(/^Quantity/);
    await page.keyboard.type("1000");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    expect(await focused()).toMatch(/^Price per lb/);
    // What is typed is never completed to another number.
    await page.keyboard.type("0.2");
    await page.keyboard.press("Tab");
    expect(await page.getByRole("combobox", { name: "Price per lb" }).inputValue()).toBe("0.2");
    await page.keyboard.press("Shift+Tab");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    expect(await page.getByRole("combobox", { name: "Price per lb" }).inputValue()).toBe("0.285");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("form [aria-live]").innerText()).toMatch(/^The purchase was added/);
    expect(await focused()).toMatch(/^Item/);
    expect(await inPage(page, (pane) => pane.host.added.map(({ rows }) => rows.map((row) => row.get("Unit price"))))).toEqual([[0.285]]);
  });

  it("keeps what was typed where the host cannot write it, and says what to do", async () => {
    const page = await opened();
    await fill(page);
    await inPage(page, (pane) => pane.refuse("addRows", "protected", "The sheet Purchases is protected."));
    await page.keyboard.press("Enter");
    await expect
      .poll(() => page.locator("form [aria-live]").innerText())
      .toMatch(/^The purchase was not added\. The sheet Purchases is protected\. Take the protection off/);
    expect(await page.getByLabel("Quantity").inputValue()).toBe("1,000");
    await button(page, "Add the purchase").click();
    await expect.poll(() => page.locator("form [aria-live]").innerText()).toMatch(/^The purchase was added/);
  });

  it("keeps what is typed while an entry is on its way, and lets the cursor be", async () => {
    const page = await opened();
    await fill(page);
    await inPage(page, (pane) => {
      const add = pane.host.addRows;
      const held: WorkbookHost["addRows"] = (table, rows) =>
        new Promise<void>((letGo) => Object.assign(window, { letGo })).then(() => add(table, rows));
      Object.assign(pane.host, { addRows: held });
    });
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => "letGo" in window);
    await page.getByLabel("Quantity").fill("250");
    await page.evaluate(() => (window as unknown as { letGo: () => void }).letGo());
    await expect.poll(() => page.locator("form [aria-live]").innerText()).toMatch(/^The purchase was added/);
    expect(await page.getByLabel("Quantity").inputValue()).toBe("250");
    expect(await page.getByRole("combobox", { name: "Item" }).inputValue()).toBe("");
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).value)).toBe("250");
    expect(await inPage(page, (pane) => pane.host.added.map(({ rows }) => rows.map((row) => row.get("Quantity"))))).toEqual([[1000]]);
  });

  it("says what is missing at the field itself and goes there", async () => {
    const page = await opened();
    await page.getByRole("tab", { name: "Inputs" }).click();
    await button(page, "Add the purchase").click();
    await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute("role"))).toBe("combobox");
    const item = page.getByRole("combobox", { name: "Item" });
    expect(await item.getAttribute("aria-invalid")).toBe("true");
    const says = await page.evaluate(() =>
      document.activeElement
        ?.getAttribute("aria-describedby")
        ?.split(" ")
        .map((id) => document.getElementById(id)?.innerText)
        .join(" "),
    );
    expect(says).toContain("Choose what was bought.");
  });
});

describe("a workbook without our tables", () => {
  it("offers to make them, without a row that nobody typed", async () => {
    const page = await opened({ ask: "workbook=empty" });
    expect(await page.getByRole("button", { name: "Look around a demo season first" }).count()).toBe(0);
    await button(page, "Start with empty tables").click();
    await button(page, "Make the input tables").click();
    await page.getByRole("tab", { name: "Season" }).waitFor();
    expect(await page.getByRole("button", { name: "Make the input tables" }).count()).toBe(0);
    await expect.poll(() => inPage(page, (pane) => pane.host.selected.at(-1)?.sheet)).toBe("Crops");
    // All but Matches, which is made with the first match.
    await page
      .getByText(
        `${inputTables.length - 1} tables were made, each on a sheet of its own. Begin with Crops and Fields: each cell says what ` +
          "it is for as you select it.",
      )
      .waitFor();
  });

  it("opens the demo where the host has one", async () => {
    const page = await opened({ ask: "workbook=empty&demo" });
    await button(page, "Look around a demo season first").click();
    await button(page, "Open the demo season").click();
    expect(await inPage(page, (pane) => pane.demoOpened)).toBe(1);
  });

  it("matches a range of the grower's own and writes the match as rows", async () => {
    const page = await opened({ ask: "workbook=empty" });
    await button(page, "Use sheets of your own").click();
    await page.getByLabel("Read this table").selectOption({ label: "Fields" });
    await button(page, "Use the selected range").click();
    await page.getByText("My fields!A2:D30").first().waitFor();
    expect(await page.getByRole("combobox", { name: "Crop", exact: true }).inputValue()).toBe("Crop");
    await page.getByText("These may mean the same: “Name” for Field, “Goal” for Yield goal.").waitFor();
    expect(await page.getByRole("combobox", { name: "Yield goal", exact: true }).inputValue()).toBe("");
    await button(page, "Use these").click();
    expect(await page.getByRole("combobox", { name: "Yield goal", exact: true }).inputValue()).toBe("Goal");
    await page.getByRole("combobox", { name: "Acres", exact: true }).selectOption("Size");
    await button(page, "Keep this match").click();
    await expect
      .poll(() => inPage(page, (pane) => pane.host.table("Matches").map((row) => row.join("|"))))
      .toEqual([
        "Fields|My fields!A2:D30|Field|Name",
        "Fields|My fields!A2:D30|Crop|Crop",
        "Fields|My fields!A2:D30|Acres|Size",
        "Fields|My fields!A2:D30|Yield goal|Goal",
      ]);
  });
});

it("offers Crops and Fields to a workbook that has bills alone", async () => {
  const page = await opened({ ask: "workbook=bills" });
  expect(await page.getByRole("button", { name: "Go to Crops" }).count()).toBe(0);
  await button(page, "Make Crops and Fields").click();
  await page
    .getByText(
      "2 tables were made, each on a sheet of its own. Begin with Crops and Fields: each cell says what it is for as you select it.",
    )
    .waitFor();
  await button(page, "Go to Crops").waitFor();
});

describe("a host that does not answer", () => {
  it("offers to try again, and goes on when it answers", async () => {
    const page = await opened({ ask: "busy" });
    const alert = page.getByRole("alert");
    expect(await alert.innerText()).toContain("The workbook has not answered for 20 seconds.");
    await button(page, "Try again").click();
    await page.getByRole("region", { name: "Corn" }).waitFor();
    expect(await alert.count()).toBe(0);
  });

  it("shows an outline of the page while the first reading takes long", async () => {
    const page = await opened({ ask: "slow" });
    const outline = page.locator(".pn-skeleton");
    await expect.poll(() => outline.evaluate((element) => getComputedStyle(element).visibility)).toBe("visible");
    expect(await page.getByRole("status").first().innerText()).toContain("Reading the workbook");
  });

  it("keeps a fault of ours apart from faults of the entries, with the details to copy", async () => {
    const { page } = await pages.open({ ask: "fault" });
    await page.getByRole("heading", { name: "Something went wrong in Pennyacre itself" }).waitFor();
    expect(await page.getByLabel("Details").innerText()).toMatch(/^Pennyacre \d+\.\d+\.\d+\nTypeError/);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  it("says what could not be shown when a cell cannot be selected", async () => {
    const page = await opened({ ask: "workbook=problems" });
    await button(page, /entries to fix/).click();
    await inPage(page, (pane) => pane.refuse("select", "busy", "The workbook is being edited."));
    await page.getByRole("button", { name: "Purchases, entry 5, Quantity" }).click();
    await page.locator(".pn-notices").getByText("The workbook is being edited.").waitFor();
    await page.locator(".pn-notices").getByRole("button", { name: "Try again" }).click();
    await expect.poll(() => inPage(page, (pane) => pane.host.selected.length)).toBe(1);
  });
});

const looks: readonly (readonly [string, PaneLook])[] = [
  ["light", { ask: "theme=light" }],
  ["light at 450 pixels", { width: 450, ask: "theme=light" }],
  ["dark", { ask: "theme=dark" }],
  ["high contrast", { ask: "theme=highContrast" }],
  ["the system's forced colours", { forcedColors: true }],
  ["the system's dark with reduced motion", { width: 450, colorScheme: "dark", reducedMotion: true }],
];

describe.each(looks)("in %s", (_, look) => {
  const ask = (more: string) => ({ ...look, ask: `${look.ask ?? ""}&${more}` });
  const isSound = async (page: Page) => {
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
  };

  it("is accessible and no wider than the pane with everything opened", async () => {
    const page = await opened(ask("workbook=problems"));
    await isSound(page);
    await button(page, "More on Corn").click();
    for (const name of ["All layers", "Sold and to sell"]) {
      await button(page, name).click();
      await isSound(page);
    }
    await button(page, "Where an acre's cost goes").click();
    await button(page, /^seed/).click();
    await button(page, /^Mill Road/).click();
    await isSound(page);
    await page.getByRole("tab", { name: "Inputs" }).click();
    for (const fold of await page.getByRole("button", { name: /bought in full$/ }).all()) await fold.click();
    await button(page, /^Urea/).click();
    await isSound(page);
    await page.getByRole("tab", { name: "More" }).click();
    for (const name of ["Tables", "Sheets to print"]) await button(page, name).click();
    await isSound(page);
    await button(page, /entries to fix/).click();
    await isSound(page);
  });

  it("is accessible while a purchase is typed wrongly, and where there are no tables yet", async () => {
    const page = await opened(ask("workbook=season"));
    await page.getByRole("tab", { name: "Inputs" }).click();
    await button(page, "Add the purchase").click();
    await page.getByText("Choose what was bought.").first().waitFor();
    await page.getByRole("combobox", { name: "Item" }).press("ArrowDown");
    await isSound(page);
    const start = await opened(ask("workbook=empty&demo"));
    const typed = (label: string, text: string) => start.getByRole("textbox", { name: label }).fill(text);
    await start.getByRole("button", { name: "Next" }).click();
    await start.getByText("Name the first crop.").waitFor();
    await isSound(start);
    for (const [label, text] of [
      ["Crop 1, name", "Corn"],
      ["Corn, acres", "200"],
      ["Corn, yield goal", "190"],
      ["Corn, expected price", "4.4"],
      ["Crop 2, name", "Winter wheat"],
      ["Winter wheat, acres", "80"],
      ["Winter wheat, yield goal", "75"],
      ["Winter wheat, expected price", "6"],
    ] as const)
      await typed(label, text);
    expect(await start.locator("html").evaluate((html) => html.scrollHeight)).toBeLessThanOrEqual(1200);
    await start.keyboard.press("Enter");
    await typed("Corn, seed", "1o5");
    await start.keyboard.press("Enter");
    await start.getByText("Corn, seed: Enter a number.").waitFor();
    await isSound(start);
    await typed("Corn, seed", "105");
    await start.keyboard.press("Enter");
    await typed("Loan 1, balance", "1000");
    await isSound(start);
    const empty = await opened(ask("workbook=empty&demo"));
    await button(empty, "Use sheets of your own").click();
    await button(empty, "Use the selected range").click();
    await empty.getByText("My fields!A2:D30").first().waitFor();
    await isSound(empty);
  });
});
