import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { past } from "../../../tests/support/past";
import { application, field, item, purchase, seasonOf, settings } from "../../../tests/support/season";
import { Decimal, sum } from "../numbers/decimal";
import type { Season } from "../season";
import { seasonFigures } from "../seasonFigures";
import { area } from "../numbers/units";
import { programmes } from "./programme";
import { sitesIn } from "./sites";
import { loadsOf, mixes } from "./tankMix";
import type { WeedEntry } from "./weedEntry";

const home = field("Home", "100", "200");
const hill = field("Hill", "60", "180");
const spray = (name: string, sites: string | null, controls?: readonly string[]) =>
  item(name, "2", { kind: "crop protection", sitesOfAction: sites, ...(controls === undefined ? {} : { controls }) });
const weed = (where: string, name: string, ...resistantTo: readonly string[]): WeedEntry => ({
  target: { field: where },
  weed: name,
  resistantTo,
  seenOn: null,
  note: null,
  source: { table: "Weeds", row: 1 },
});
const of = (more: Partial<Season>) => {
  const season = seasonOf({ fields: [home, hill], ...more });
  return programmes(season, seasonFigures(season).items);
};
const tank = (carrier: string | null, size: string | null) => ({
  tank: { carrierPerArea: carrier === null ? null : new Decimal(carrier), size: size === null ? null : new Decimal(size) },
});
const day = (date: string) => ({ date });

describe("sites of action", () => {
  it("are told apart however they are typed, once each and by number", () => {
    expect(["15, 27", "Group 9 + 4", "G27; 5 and 27", "9/14", "K3", "none", null].map(sitesIn)).toEqual([
      ["15", "27"],
      ["4", "9"],
      ["5", "27"],
      ["9", "14"],
      ["K3"],
      [],
      [],
    ]);
  });
});

describe("a programme against weeds", () => {
  const items = [
    spray("A", "15, 27", ["Waterhemp", "Foxtail"]),
    spray("B", "9", ["water-hemp"]),
    spray("C", "2", ["Velvetleaf"]),
    spray("F", "3", []),
    item("Urea", "1"),
  ];
  const applications = [
    application("A", "Home", "2", "plan", day("2031-05-01")),
    application("A", "Home", "2", "done", day("2031-05-02")),
    application("B", "Home", "1", "plan", day("2031-06-05")),
    application("C", "Corn", "1", "plan", { target: { crop: "Corn" }, ...day("2031-06-05") }),
    application("F", "Home", "3", "plan", day("2031-07-10")),
    application("Urea", "Home", "9", "plan", day("2031-06-05")),
  ];

  it("counts a site where the label controls the weed and the weed does not resist it, pass by pass", () => {
    const [first] = of({ items, applications, weeds: [weed("Home", "Waterhemp", "9", "27"), weed("Home", "Thistle")] });
    expect(first!.passes.map(({ date, status, sites }) => [date, status, sites])).toEqual([
      ["2031-05-01", "plan", ["15", "27"]],
      ["2031-05-02", "done", ["15", "27"]],
      ["2031-06-05", "plan", ["2", "9"]],
      ["2031-07-10", "plan", []],
    ]);
    expect(first!.weeds.map(({ weed: name, sitesLeft }) => [name, sitesLeft])).toEqual([
      ["Waterhemp", [["15"], ["15"], [], []]],
      ["Thistle", [[], [], [], []]],
    ]);
  });

  it("knows which planned passes are still to be done, by how much of the field their products went over", () => {
    const open = (...rows: Parameters<typeof application>[]) =>
      of({ items, applications: rows.map((row) => application(...row)) })[0]!.passes.map(
        ({ status, isOpen }) => `${status}${isOpen ? " open" : ""}`,
      );
    const [first, second, third] = [day("2031-05-01"), day("2031-05-20"), day("2031-06-05")];
    const done = (acres: string) => ["A", "Home", "2", "done", { ...second, area: area(acres) }] as const;
    expect(open(["A", "Home", "2", "plan", first], [...done("100")], ["A", "Home", "2", "plan", third])).toEqual([
      "plan",
      "done",
      "plan open",
    ]);
    expect(open(["A", "Home", "2", "plan", first], [...done("60")])).toEqual(["plan open", "done"]);
    expect(open(["A", "Home", "2", "plan", first], ["B", "Home", "1", "plan", first], [...done("100")])).toEqual(["plan open", "done"]);
    const harvested = { ...home, harvestDone: { on: null } };
    const [gone] = of({ fields: [harvested, hill], items, applications: [application("A", "Home", "2", "plan", first)], harvest: [] });
    expect(gone!.passes[0]!.isOpen).toBe(false);
  });

  it("tells passes by their day, however they are typed, and those without a day last", () => {
    const late = application("A", "Home", "2", "plan", day("2031-06-20"));
    const early = application("A", "Home", "2", "plan", day("2031-05-01"));
    const undated = application("B", "Home", "1", "plan", { date: null });
    const [home] = of({ items, applications: [undated, late, early] });
    expect(home!.passes.map(({ date }) => date)).toEqual(["2031-05-01", "2031-06-20", null]);
  });

  it("takes a weed that field and crop list as one, resisting what either says", () => {
    const [first] = of({
      items,
      applications,
      weeds: [weed("Home", "Waterhemp", "9"), { ...weed("", "water hemp", "15"), target: { crop: "Corn" } }],
    });
    expect(first!.weeds.map(({ resistantTo }) => resistantTo)).toEqual([["9", "15"]]);
  });

  it("costs a pass over the whole field at plan prices, and done at what was paid; parts of a field in their measure", () => {
    const [first, second] = of({
      items,
      purchases: [purchase("A", "100", "300")],
      applications: [
        ...applications.slice(0, 2),
        application("B", "Home", "1", "plan", { ...day("2031-06-05"), area: area("40") }),
        application("C", "", "1", "plan", { target: { crop: "Corn" }, ...day("2031-06-05"), area: area("80") }),
      ],
    });
    // 2 × 2 planned, 2 × 3 done; 40 of 100 ac at 2 and half of all acres at 2.
    expect(first!.passes.map(({ costPerArea }) => costPerArea!.toFixed())).toEqual(["4", "6", "1.8"]);
    expect([first!.cost.plan!.toFixed(), first!.cost.done!.toFixed(), second!.cost.plan!.toFixed(), second!.cost.done!.toFixed()]).toEqual([
      "5.8",
      "6",
      "1",
      "0",
    ]);
  });

  it("names the sites that every pass of at least two has", () => {
    const twice = [application("A", "Home", "2", "plan", day("2031-05-01")), application("D", "Home", "1", "plan", day("2031-06-01"))];
    const every = (sites: string) => of({ items: [items[0]!, spray("D", sites)], applications: twice })[0]!.inEveryPass;
    expect([every("27, 4"), every("4"), of({ items, applications: twice.slice(0, 1) })[0]!.inEveryPass]).toEqual([["27"], [], []]);
  });

  it("names the sites that the field had the year before too, and of no other year or field", () => {
    const year = (season: string, name: string, ...sitesUsed: readonly string[]) => ({ ...past(season, name, null), sitesUsed });
    const years = [year("2030", "Home", "27", "9"), year("2029", "Home", "15"), year("2030", "Hill", "15")];
    const repeated = (seasonYear: string | null) =>
      of({ items, applications, pastSeasons: years, settings: { ...settings, seasonYear } })[0]!.sinceLastYear;
    expect([repeated("2031"), repeated("2030"), repeated(null)]).toEqual([["9", "27"], ["15"], []]);
  });

  it("shows nothing where nothing is sprayed and no weed listed, and a listed weed where nothing is sprayed", () => {
    expect(of({ items, applications: [] })).toEqual([]);
    expect(
      of({ items, applications: [], weeds: [weed("Hill", "Foxtail")] }).map(({ field: name, weeds }) => [name, weeds[0]!.sitesLeft]),
    ).toEqual([["Hill", []]]);
  });

  it("has no cost where a price is not known", () => {
    expect(
      of({ items: [item("A", null, { kind: "crop protection" })], applications: [application("A", "Home", "2", "plan")] })[0]!.passes[0]!
        .costPerArea,
    ).toBeNull();
  });
});

describe("a tank mix", () => {
  const products = [spray("A", "15"), spray("B", "9"), item("Seed", "1", { kind: "seed" })];
  const rows = [
    application("A", "Home", "32", "plan", {
      ...day("2031-06-05"),
      ...tank("15", "600"),
      asTyped: { unit: "fl oz", perArea: new Decimal("32") },
    }),
    application("B", "Home", "1", "plan", { ...day("2031-06-05"), asTyped: { unit: "pt", perArea: new Decimal("1") } }),
    application("Seed", "Home", "30000", "plan", day("2031-06-05")),
  ];
  const told = (more: Partial<Season>) => mixes(seasonOf({ fields: [home, hill], items: products, ...more }));

  it("takes the tank of the only machine that has one where the mix tells none, and never one of two", () => {
    const sprayer = (tankSize: string | null) =>
      ({ tankSize: tankSize === null ? null : new Decimal(tankSize) }) as Season["machines"][number];
    const sizes = (size: string | null, ...machines: Season["machines"]) =>
      told({ machines, applications: [application("A", "Home", "1", "plan", { ...day("2031-05-01"), ...tank("15", size) })] }).map((mix) =>
        mix.tank?.toFixed(),
      );
    expect(sizes(null, sprayer(null), sprayer("800"))).toEqual(["800"]);
    expect(sizes("500", sprayer("800"))).toEqual(["500"]);
    expect(sizes(null, sprayer("800"), sprayer("1200"))).toEqual([undefined]);
  });

  it("is of one field or crop and day, with the crop protection beside it and without the seed", () => {
    const [mix] = told({ applications: rows });
    // 100 ac at 15 gal are 1,500 gal: two tanks of 600 and 300 gal; 40 ac a tank, 20 ac in the last.
    expect([mix!.area, mix!.loads!.full, mix!.loads!.last].map(String)).toEqual(["100", "2", "300"]);
    expect(
      mix!.items.map(({ item: name, unit, perLoad, inLastLoad, total }) => `${name} ${unit} ${perLoad} ${inLastLoad} ${total}`),
    ).toEqual(["A fl oz 1280 640 3200", "B pt 40 20 100"]);
  });

  it("has no last load where it comes out even, and no loads without a tank", () => {
    const even = told({ applications: [{ ...rows[0]!, ...tank("15", "500") }] })[0]!;
    expect([even.loads!.full, even.loads!.last, even.items[0]!.inLastLoad!].map(String)).toEqual(["3", "0", "0"]);
    const without = told({ applications: [{ ...rows[0]!, ...tank("15", null) }] })[0]!;
    expect([without.loads, without.items[0]!.perLoad, String(without.items[0]!.total)]).toEqual([null, null, "3200"]);
    expect(told({ applications: [{ ...rows[0]!, ...tank(null, "500") }] })).toEqual([]);
  });

  it("covers all fields of a crop, or the acres that it tells", () => {
    expect(
      told({
        applications: [
          { ...rows[0]!, target: { crop: "Corn" } },
          { ...rows[0]!, area: area("44") },
        ],
      }).map((mix) => mix.area.toFixed()),
    ).toEqual(["160", "44"]);
  });

  it("is in its loads all that it is in all, whatever the sizes; the last load is less than a tank", () => {
    const size = fc.integer({ min: 1, max: 99_999 }).map((value) => new Decimal(String(value)).div("10"));
    fc.assert(
      fc.property(size, size, size, size, (acres, carrier, volume, rate) => {
        const { full, last } = loadsOf(acres, carrier, volume);
        expect(last.gte("0") && last.lt(volume) && full.isInteger()).toBe(true);
        const [
          {
            items: [mixed],
          },
        ] = told({
          fields: [field("Home", acres.toFixed(), "1")],
          applications: [{ ...rows[0]!, ...tank(carrier.toFixed(), volume.toFixed()), asTyped: { unit: "pt", perArea: rate } }],
        }) as [ReturnType<typeof told>[number]];
        expect(
          sum([mixed!.perLoad!.times(full), mixed!.inLastLoad!])
            .minus(mixed!.total)
            .abs()
            .div(mixed!.total)
            .lt("1e-25"),
        ).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});
