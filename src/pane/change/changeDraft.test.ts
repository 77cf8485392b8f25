import { describe, expect, it } from "vitest";
import { countedContent } from "../../../tests/support/paneWorkbook";
import { Decimal } from "../../core/numbers/decimal";
import type { Cell, WorkbookContent } from "../../workbook/cell";
import { seasonReport } from "../../workbook/report";
import { inputTables } from "../../workbook/templates";
import { formatOf } from "../format";
import type { EntryRow } from "../commands/entryRow";
import { answerView } from "./answerView";
import { changeDraftView, emptyChange, type ChangeDraft } from "./changeDraft";
import { groundOf, targetChoices } from "./ground";
import { boxLabel, layoutForms } from "./layoutForms";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const report = seasonReport(countedContent);
const typed: Record<string, ChangeDraft> = {
  "Other closing wheels": { rows: "8", price: "300", years: "5", salvage: "200", hours: "6", wage: "25", upkeep: "0.10", rate: "6" },
  "Rebuild worn row units": {
    rows: "8",
    rebuilt: "8",
    parts: "250",
    hours: "1.5",
    wage: "25",
    years: "4",
    spared: "300",
    badRows: "2",
    loss: "6%",
    rate: "6",
    wearNew: "15",
    wearNow: "14.6",
    wearLast: "14.5",
  },
  "Another hybrid": { gain: "4", drying: "0.05", nowWet: "4", otherPrice: "290", otherTrait: "3", otherWet: "5", otherDiscount: "0.02" },
  "Another seeding rate": { to: "31000", gain: "2" },
  "A second site of action in the tank": {
    item1: "Second partner",
    rate1: "3",
    unit1: "fl oz",
    price1: "2.5",
    pass: "9",
    spared: "12",
    later: "4",
    gain: "1",
  },
  "An extra pass": { item1: "=odd", rate1: "8", unit1: "fl oz", price1: "1.9", pass: "11", trampled: "1", gain: "5" },
  "An earlier weed pass": { early: "3", late: "4", extra: "9", spared: "2" },
  "Own or hire": { custom: "24", price: "60000", salvage: "20000", years: "8", yearly: "500", running: "9", gain: "1", rate: "5.5" },
  "A higher rent": { to: "260", gain: "3" },
  "A later harvest": { now: "22", charge: "0.05", lost: "1" },
  "Fixed or flexible rent": { fixed: "250", base: "200", gross: "720", above: "40", most: "400" },
};
const form = (name: string) => layoutForms.find((each) => each.name === name)!;
function made(name: string, target = "field Mill Road", more: ChangeDraft = {}) {
  const ground = groundOf(report, target)!;
  const draft = { ...emptyChange(form(name), ground, false), ...typed[name], name: `My ${name}`, ...more };
  return changeDraftView(draft, form(name), ground, { decimalComma: false, countedIn: true });
}

/** The workbook with the rows under those of its table Changes, as a host would have put them. */
function withRows(rows: readonly EntryRow[]): WorkbookContent {
  const headings = inputTables.find(({ name }) => name === "Changes")!.columns.map(({ heading }) => heading);
  const cell = (value: string | Decimal | { readonly day: string } | undefined): Cell =>
    value instanceof Decimal ? value.toNumber() : String(value ?? "");
  return {
    ...countedContent,
    tables: [
      ...countedContent.tables.filter(({ name }) => name !== "Changes"),
      {
        name: "Changes",
        headers: headings,
        rows: rows.map((row) => headings.map((heading) => cell(row.get(heading)))),
        body: { sheet: "Changes", row: 1, column: 0 },
      },
    ],
  };
}

describe("a new change", () => {
  it.each(layoutForms.map(({ name }) => name))("comes back from its rows as it was weighed: %s", (name) => {
    const { faults, made: weighed, rows } = made(name);
    expect(faults).toEqual({});
    const again = seasonReport(withRows(rows!));
    expect(again.problems.filter(({ at }) => at.table === "Changes")).toEqual([]);
    const change = again.figures.changes[0]!;
    expect([change.change.name, change.change.countedIn, change.change.target]).toEqual([`My ${name}`, true, { field: "Mill Road" }]);
    const net = weighed!.answer.net;
    expect(net.netOfKnown.perArea.isZero()).toBe(false);
    // A cell keeps 15 digits of a price, so that the two agree to eleven decimals.
    expect(change.net.netOfKnown.perArea.toFixed(11)).toBe(net.netOfKnown.perArea.toFixed(11));
    expect(change.net.blank.map(({ item }) => item)).toEqual(net.blank.map(({ item }) => item));
    expect(Object.values(change.net.quadrants).map(({ lines }) => lines.length)).toEqual(
      Object.values(weighed!.answer.net.quadrants).map(({ lines }) => lines.length),
    );
  });

  it("starts with figures of the season as a person would type them", () => {
    const ground = groundOf(report, "crop Corn")!;
    // (120 × 176.109375 + 78.5 × 184.26, by its planted date alone, because its count is beyond the table) ÷ 198.5
    expect(ground.budget.yields.used.toFixed(4)).toBe("179.3327");
    expect(emptyChange(form("Another hybrid"), ground, false)["yieldNow"]).toBe("179.33");
  });

  it("starts with the yield gain blank and leads with the gain needed", () => {
    const { made: weighed, rows } = made("Other closing wheels");
    const { layout, answer } = weighed!;
    // (2,400 − 200 ÷ 1.06⁵ + 150) × 0.2373964004 ÷ 120 + 0.10 = 4.8490 an acre, over 4.13 a bushel: 1.1741.
    expect(answerView(layout.change, answer, groundOf(report, "field Mill Road")!.prices, layout.lead, format).lead).toBe(
      "Yield gain needed to pay: 1.2 bu/ac.",
    );
    expect(rows![0]!.has("Quantity")).toBe(false);
    expect(rows![0]!.has("Price")).toBe(false);
    expect(layout.findings[0]!.noDifference).toBe(true);
  });

  it("is prefilled from the season and fills nothing else", () => {
    const ground = groundOf(report, "field Mill Road")!;
    expect(emptyChange(form("Another seeding rate"), ground, false)).toEqual({
      name: "Another seeding rate",
      acres: "120",
      rate: "",
      from: "34000",
      to: "",
      price: "268",
      perUnit: "80000",
      gain: "",
    });
    expect(emptyChange(form("A higher rent"), ground, false)).toMatchObject({ from: "235", to: "", margin: "", gain: "" });
    expect(layoutForms.every(({ boxes }) => boxes.filter(({ name }) => name === "gain").every(({ begin }) => begin === undefined))).toBe(
      true,
    );
  });

  it("is prefilled with a decimal comma where numbers are typed so, and reads the same", () => {
    const ground = groundOf(report, "crop Corn")!;
    const comma = emptyChange(form("Another seeding rate"), ground, true);
    expect(comma.acres).toBe("198,5");
    const read = changeDraftView({ ...comma, to: "31.000", name: "Fewer" }, form("Another seeding rate"), ground, {
      decimalComma: true,
      countedIn: false,
    });
    expect([read.faults, String(read.made!.layout.change.area)]).toEqual([{}, "198.5"]);
  });

  it("names what is wrong at its box: a number, an interest rate where something serves for years, a name that is taken", () => {
    expect(made("Other closing wheels", "crop Corn", { rows: "0", years: "", price: "dear" }).faults).toEqual({
      rows: "Enter a number above zero.",
      years: "Enter a number above zero.",
      price: "Enter a number.",
    });
    expect(made("Other closing wheels", "crop Corn", { rate: "" }).faults).toEqual({
      rate: "Enter the interest rate: something here is kept more than a year.",
    });
    const taken = made("A higher rent", "field Mill Road", { name: "fewer  soybean SEEDS" });
    expect([taken.rows, taken.faults["name"]]).toEqual([
      null,
      "There is a change “fewer  soybean SEEDS” already. Give this one a name of its own.",
    ]);
    expect(taken.made).not.toBeNull();
  });

  it("says how much of the wear of openers is used, on the page and beside the parts", () => {
    const wear = (more: ChangeDraft) => {
      const view = made("Rebuild worn row units", "crop Corn", more);
      return { ...view, says: form("Rebuild worn row units").says!(view.values, format, groundOf(report, "crop Corn")!) };
    };
    const worn = wear({ rows: "" });
    // 0.4 of 0.5 in; it is said before the other boxes are filled.
    expect([worn.made, worn.says]).toEqual([
      null,
      ["The openers have used 80% of their wear: 15 in new, 14.6 now, replaced at 14.5; 0.1 in are left. By wear alone they are not due."],
    ]);
    expect(wear({ wearNow: "14.5" }).says[0]).toBe(
      "The openers have used 100% of their wear: 15 in new, 14.5 now, replaced at 14.5. By wear they are due.",
    );
    expect(wear({}).rows!.map((row) => row.get("Item"))).toContain("Parts (openers 80% worn)");
    const without = wear({ wearNow: "" });
    // 179.3 × 6 % × 2 ÷ 8
    expect([without.says, wear({ wearNow: "", loss: "" }).says, without.rows!.map((row) => row.get("Item")).includes("Parts")]).toEqual([
      ["Yield kept: 2 of 8 rows lose 6% of 179.3 bu per acre, 2.69 over all rows."],
      [],
      true,
    ]);
    expect(wear({ wearNow: "15.2", wearLast: "15" })).toMatchObject({
      made: null,
      faults: { wearNow: "It is larger than when new.", wearLast: "Enter less than when new." },
    });
  });

  it("can be about a crop or a field, and about fewer acres", () => {
    expect(targetChoices(report).map(({ words }) => words)).toEqual([
      "Corn, all fields",
      "Soybeans, all fields",
      "Mill Road, Corn",
      "Long Eighty, Corn",
      "Creek Bottom, Soybeans",
    ]);
    const first = made("A higher rent", "crop Corn", { from: "200", acres: "50" }).rows![0]!;
    expect([first.get("Field or Crop"), String(first.get("Acres")), first.get("Counted in")]).toEqual(["Corn", "50", "yes"]);
    expect(groundOf(report, "field Nowhere")).toBeNull();
  });

  it("names its units in the labels", () => {
    const boxes = form("Another hybrid").boxes;
    expect(boxLabel(boxes[0]!, groundOf(report, "crop Corn")!, format)).toBe("Yield gain at standard moisture, bu per acre");
    expect(
      boxLabel(
        boxes.find(({ name }) => name === "drying")!,
        groundOf(report, "crop Corn")!,
        format,
      ),
    ).toBe("Drying per bu and point");
    expect(boxes.map((box) => boxLabel(box, groundOf(report, "crop Corn")!, format)).join()).not.toMatch(/[{}]/);
  });
});
