import { describe, expect, it } from "vitest";
import { corn, field, harvested, load, otherCost, seasonOf, settings } from "../../tests/support/season";
import type { Season } from "./season";
import { seasonFigures } from "./seasonFigures";
import { moneyPerArea, moneyPerUnit, points } from "./numbers/units";

const season = (parts: Partial<Season>): Season =>
  seasonOf({
    crops: [corn, { ...corn, name: "Soybeans", price: moneyPerUnit("10") }],
    fields: [field("Home", "100", "200"), field("Hill", "50", "160"), field("Creek", "50", "50", { crop: "Soybeans" })],
    ...parts,
  });
/** What each field bears of a season's costs at a stage, by its name. */
const borne = (parts: Partial<Season>, stage: "plan" | "outlook" = "plan") =>
  Object.fromEntries(
    seasonFigures(season(parts))
      .crops.flatMap(({ fields }) => fields)
      .map((each) => [
        each.field,
        each[stage].charges.map(({ amount, perUnit }) => (amount.isZero() ? `${perUnit} a unit` : amount.toFixed())).join(),
      ]),
  );

describe("other costs", () => {
  it.each([
    ["the whole farm", { all: true as const }, { Home: "100", Hill: "50", Creek: "50" }],
    ["a crop", { crop: "Corn" }, { Home: "133.33", Hill: "66.67", Creek: "" }],
    ["a field", { field: "Hill" }, { Home: "", Hill: "200", Creek: "" }],
  ])("are spread over %s", (_, over, shares) => {
    expect(borne({ otherCosts: [otherCost("Office", "200", { over })] })).toEqual(shares);
  });

  it("per acre and per unit of yield fall on the fields that they are for alone", () => {
    expect(borne({ otherCosts: [otherCost("Scouting", "3", { basis: "per acre", over: { crop: "Corn" } })] })).toEqual({
      Home: "300",
      Hill: "150",
      Creek: "",
    });
    expect(borne({ otherCosts: [otherCost("Storage", "0.05", { basis: "per unit of yield", over: { field: "Hill" } })] })).toEqual({
      Home: "",
      Hill: "0.05 a unit",
      Creek: "",
    });
  });

  it("by revenue follow the crops of each stage", () => {
    // 80,000, 32,000 and 25,000 of income planned; the Hill then brings 4,400 bushels for 17,600.
    const parts = {
      otherCosts: [otherCost("Advice", "1370", { by: "revenue" })],
      harvest: [load("Hill", "4400")],
      fields: [field("Home", "100", "200"), harvested(field("Hill", "50", "160")), field("Creek", "50", "50", { crop: "Soybeans" })],
    };
    expect(borne(parts)).toEqual({ Home: "800", Hill: "320", Creek: "250" });
    expect(borne({ ...parts, otherCosts: [otherCost("Advice", "1226", { by: "revenue" })] }, "outlook")).toEqual({
      Home: "800",
      Hill: "176",
      Creek: "250",
    });
  });

  it("go by acres where no field has an income, and by income where only one has none", () => {
    const advice = { otherCosts: [otherCost("Advice", "200", { by: "revenue" })] };
    expect(borne({ ...advice, fields: [field("Home", "100", "0"), field("Hill", "50", "0")] })).toEqual({ Home: "133.33", Hill: "66.67" });
    expect(borne({ ...advice, fields: [field("Home", "100", "0"), field("Hill", "50", "160")] })).toEqual({ Home: "", Hill: "200" });
  });
});

describe("land", () => {
  it("is charged where it is entered, and each charge names its field", () => {
    const [home] = seasonFigures(
      season({ fields: [field("Home", "100", "200", { tenure: "cash rent", rentPerArea: moneyPerArea("250") })] }),
    ).crops[0]!.fields;
    expect(home!.plan.charges.map(({ kind, amount, entries }) => `${kind} ${amount} ${entries[0]!.table}`)).toEqual([
      "cash rent 25000 Fields",
    ]);
  });
});

describe("drying", () => {
  const drying = { ...settings, dryingChargePerPoint: moneyPerUnit("0.05") };
  const perUnit = (crop: Partial<typeof corn>, parts: Partial<Season> = {}) =>
    seasonFigures(seasonOf({ settings: drying, crops: [{ ...corn, ...crop }], fields: [field("Home", "100", "200")], ...parts }))
      .crops[0]!.outlook.moving.byKind.get("drying")
      ?.toFixed() ?? null;

  it("is not known without a standard to dry to, and is nothing for grain that is dry", () => {
    expect([
      perUnit({ expectedHarvestMoisture: points("18.5") }),
      perUnit({ expectedHarvestMoisture: points("18.5"), standardMoisture: null }),
      perUnit({ expectedHarvestMoisture: points("15.5") }),
    ]).toEqual(["0.15", null, null]);
  });

  it("is nothing on a crop that was lost", () => {
    const wet = { expectedHarvestMoisture: points("18.5") };
    expect(perUnit(wet, { harvest: [load("Home", "0", "25.5")], fields: [harvested(field("Home", "100", "200"))] })).toBeNull();
    expect(perUnit(wet, { harvest: [load("Home", "0", "25.5")] })).toBe("0.15");
  });
});

describe("one name of one kind", () => {
  it("is one charge, however it is typed, and keeps all its rows", () => {
    const costs = [
      otherCost("Office", "100"),
      otherCost("office", "40", { source: { table: "Other costs", row: 2 } }),
      otherCost("Office", "9", { kind: "supplies" }),
    ];
    const [home] = seasonFigures(season({ fields: [field("Home", "100", "200")], otherCosts: costs })).crops[0]!.fields;
    expect(
      home!.plan.charges.map(({ kind, name, amount, entries }) => `${kind} ${name} ${amount} ${entries.map(({ row }) => row).join("+")}`),
    ).toEqual(["overhead Office 140 1+2", "supplies Office 9 1"]);
    const perUnit = ["0.05", "0.02"].map((amount) => otherCost("Storage", amount, { basis: "per unit of yield" }));
    const [stored] = seasonFigures(season({ fields: [field("Home", "100", "200")], otherCosts: perUnit })).crops[0]!.fields;
    expect(stored!.plan.charges.map(({ perUnit: each }) => each.toFixed())).toEqual(["0.07"]);
  });
});
