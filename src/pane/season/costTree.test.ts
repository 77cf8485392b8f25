import { describe, expect, it } from "vitest";
import { field, load, otherCost, seasonOf } from "../../../tests/support/season";
import { seasonFigures } from "../../core/seasonFigures";
import { Decimal } from "../../core/numbers/decimal";
import { moneyPerArea, share } from "../../core/numbers/units";
import { paneSeason, reportOf } from "../../../tests/support/paneSeason";
import type { Place } from "../../workbook/problem";
import { formatOf } from "../format";
import { costTree } from "./costTree";
import { entryTeller } from "../parts/entryView";

const format = formatOf(paneSeason.settings, "en-US");
const corn = reportOf().figures.crops[0]!;

describe("the way down from a cost", () => {
  it("goes from kind to field to cost to the entries that made it", () => {
    const seed = costTree(corn, "outlook", "cash", format).kinds.find(({ kind }) => kind === "seed")!;
    expect(seed.fields.map(({ field, area, perArea }) => [field, area, perArea])).toEqual([
      // 34,000 ÷ 80,000 bags at 268; 33,000 ÷ 80,000 bags at 268.
      ["Mill Road", "120 ac", "113.90"],
      ["Long Eighty", "78.5 ac", "110.55"],
    ]);
    expect(seed.fields[0]!.costs).toEqual([
      {
        name: "Corn seed A",
        perArea: "113.90",
        amount: "13,668.00 USD",
        entries: [
          { table: "Applications", row: 1 },
          { table: "Purchases", row: 1 },
        ],
      },
    ]);
  });

  it("shows the plan from the plan's entries alone", () => {
    const seed = costTree(corn, "plan", "cash", format).kinds.find(({ kind }) => kind === "seed")!;
    expect(seed.fields[0]!.costs[0]!.entries).toEqual([{ table: "Applications", row: 6 }]);
  });

  it("says which kinds of a final nobody has billed", () => {
    const line = {
      over: { all: true as const },
      kind: "seed" as const,
      amount: new Decimal("120"),
      basis: "per acre" as const,
      paidOn: null,
      operatorCostShare: share("1"),
      allIn: false,
      source: { table: "Budget", row: 1 },
    };
    const done = seasonFigures(
      seasonOf({ fields: [field("Home", "100", "200", { harvestDone: { on: null } })], harvest: [load("Home", "20000")], budget: [line] }),
    ).crops[0]!;
    expect((["outlook", "final"] as const).map((stage) => costTree(done, stage, "cash", format).kinds.map(({ words }) => words))).toEqual([
      ["seed"],
      ["seed, no bill yet"],
    ]);
  });

  it("charges a cost that moves with yield on the operator's crop", () => {
    const haul = costTree(corn, "outlook", "cash", format).kinds.find(({ kind }) => kind === "haul")!;
    // 0.22 a bushel on 195 bu and on 185 bu.
    expect(haul.fields.map(({ perArea }) => perArea)).toEqual(["42.90", "40.70"]);
    expect(haul.fields[0]!.costs[0]!.entries).toContainEqual({ table: "Crops", row: 1 });
  });

  it("has only the kinds of the layer, which add up to its total", () => {
    const kindsOf = (layer: "cash" | "full") => costTree(corn, "outlook", layer, format).kinds.map(({ kind }) => kind);
    expect(kindsOf("cash")).toEqual(["seed", "fertilizer", "fuel", "custom work", "haul", "cash rent", "overhead"]);
    expect(kindsOf("full")).toEqual([...kindsOf("cash"), "land charge", "unpaid labour"]);
    expect(costTree(corn, "outlook", "cash", format).total).toBe("425.69");
  });
});

describe("an entry at the end of the way", () => {
  const places = { placeOf: ({ table, row = 1 }: Place) => (table === "Season" ? null : { sheet: table, row: row + 2, column: 1 }) };
  const teller = entryTeller({ season: paneSeason, ...places }, format);
  it.each([
    [{ table: "Purchases", row: 1 }, "2031-02-11, Corn seed A, 5,600,000 seeds, 18,620.00 USD"],
    [{ table: "Applications", row: 2 }, "Long Eighty, Corn seed A, 33,000 seeds per acre, plan"],
    [{ table: "Operations", row: 2 }, "2031-05-01, Mill Road, Planting, 26.00 USD per acre, done"],
    [{ table: "Other costs", row: 1 }, "Farm insurance, 4,200.00 USD whole farm"],
    [{ table: "Sales", row: 1 }, "2031-06-01, forward, 12,000 at 4.62 USD"],
  ])("of %j reads as its entry", (ref, says) => {
    expect(teller(ref)).toEqual({ ref, place: `${ref.table}, entry ${ref.row}`, cell: `B${ref.row + 3}`, says });
  });

  it("has its place also where the row says nothing that we know", () => {
    expect(teller({ table: "Season", row: 4 })).toEqual({ ref: { table: "Season", row: 4 }, place: "Season, entry 4", cell: "", says: "" });
  });
});

describe("the full layer of a crop", () => {
  it("opens term interest of the fields for which no capital is charged, and adds up to its total", () => {
    const season = seasonOf({
      fields: [field("Home", "100", "200", { landChargePerArea: moneyPerArea("50") }), field("Low", "100", "200")],
      otherCosts: [otherCost("Note", "20", { basis: "per acre", kind: "term interest" })],
    });
    // 20 on Low alone are 10 an acre of the crop; 50 of land on Home are 25.
    const tree = costTree(seasonFigures(season).crops[0]!, "outlook", "full", format);
    expect(tree.kinds.map(({ kind, perArea, fields }) => [kind, perArea, fields.map((each) => each.field).join()])).toEqual([
      ["term interest", "10.00", "Low"],
      ["land charge", "25.00", "Home"],
    ]);
    expect(tree.total).toBe("35.00");
  });
});
