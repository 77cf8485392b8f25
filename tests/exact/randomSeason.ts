/** Small seasons of every sort that the reader lets through, without machines and stand counts. Names are invented. */
import fc, { type Arbitrary } from "fast-check";
import { Decimal } from "../../src/core/numbers/decimal";
import { kinds, operatingKinds } from "../../src/core/kinds";
import { measureNamed } from "../../src/core/numbers/measure";
import type { EntryRef, Target } from "../../src/core/row";
import {
  landlordsInputs,
  type Application,
  type Bill,
  type BudgetLine,
  type Crop,
  type Field,
  type HarvestLoad,
  type Item,
  type Loan,
  type Operation,
  type OtherCost,
  type Purchase,
  type Sale,
  type Season,
  type Settings,
} from "../../src/core/season";
import {
  area,
  cropQuantity,
  itemQuantity,
  itemRate,
  money,
  moneyPerArea,
  moneyPerUnit,
  points,
  share,
  yieldPerArea,
} from "../../src/core/numbers/units";
import { billKinds } from "../../src/workbook/columns/purchases";
import { noMore } from "../support/season";
import { publishedStandTables } from "../../src/workbook/publishedStandTables";

/** A decimal between two whole numbers with a few places. */
const decimal = (least: number, most: number, places: number): Arbitrary<Decimal> =>
  fc.integer({ min: least * 10 ** places, max: most * 10 ** places }).map((whole) => new Decimal(`${whole}e-${places}`));
const perhaps = <Value>(value: Arbitrary<Value>): Arbitrary<Value | null> => fc.option(value, { freq: 2 });
const cents = (most: number) => decimal(0, most, 2);
const date = fc.integer({ min: 0, max: 400 }).map((days) => new Date(Date.UTC(2031, 0, 1) + days * 86_400_000).toISOString().slice(0, 10));

const cropNames = ["Corn", "Soybeans"] as const;
const fieldNames = ["Creek", "Hill", "Home"] as const;
const source =
  (table: string) =>
  (row: number): EntryRef => ({ table, row });
/** Up to so many rows of a table, each knowing its row. */
const rows = <Row>(table: string, most: number, row: Arbitrary<Omit<Row, "source">>): Arbitrary<readonly Row[]> =>
  fc.array(row, { maxLength: most }).map((all) => all.map((each, index) => ({ ...each, source: source(table)(index + 1) }) as Row));

const settings: Arbitrary<Settings> = fc
  .record({
    seasonYear: fc.constantFrom("2031", "2031", null),
    currency: fc.constant("USD"),
    areaUnit: fc.constantFrom("ac", "ha"),
    operatingInterest: fc.oneof(
      fc.constant(null),
      fc.record({ method: fc.constant("by date" as const), rate: decimal(0, 1, 4), repaymentDate: date }),
      fc.record({ method: fc.constant("months" as const), rate: decimal(0, 1, 4), months: decimal(0, 12, 1) }),
    ),
    repaymentDate: perhaps(date),
    labourPerHour: fc.constant(null),
    fuelPerGallon: fc.constant(null),
    standResponse: fc.constant(null),
    dryingChargePerPoint: perhaps(decimal(0, 1, 3).map(moneyPerUnit)),
    dryingCountedOn: fc.constantFrom("wet", "dry"),
    landlordsInputs: fc.constantFrom(...landlordsInputs),
  })
  .map((entered) => ({ farm: null, testWeightDock: null, temperatureUnit: null, heatUnits: null, firstFrosts: null, ...entered }));

const crop = (name: string): Arbitrary<Omit<Crop, "source">> =>
  fc.record({
    name: fc.constant(name),
    yieldUnit: fc.constant("bu"),
    weightPerBushel: fc.constant(new Decimal("56")),
    standardMoisture: perhaps(fc.constantFrom("13", "15.5").map(points)),
    expectedHarvestMoisture: perhaps(decimal(10, 30, 1).map(points)),
    price: cents(15).map(moneyPerUnit),
    lowPrice: perhaps(cents(10).map(moneyPerUnit)),
    highPrice: fc.constant(null),
    sellingCostPerUnit: decimal(0, 1, 3).map(moneyPerUnit),
    otherIncomePerArea: cents(120).map(moneyPerArea),
  });

/** Any area, and round ones, between which a cent may be equally due to two fields. */
const areas = fc
  .oneof(
    decimal(0, 300, 2).map((acres) => acres.plus("0.25")),
    fc.constantFrom("10", "20", "80", "100", "160").map((acres) => new Decimal(acres)),
  )
  .map(area);

/** From before the published tables of planting dates begin until after they end. */
const plantingDay = fc
  .integer({ min: 0, max: 90 })
  .map((days) => new Date(Date.UTC(2031, 2, 25) + days * 86_400_000).toISOString().slice(0, 10));

/** Rent, land charge and shares go with the tenure, as the reader leaves them. */
const field = (name: string): Arbitrary<Omit<Field, "source">> =>
  fc
    .record({
      name: fc.constant(name),
      crop: fc.constantFrom(...cropNames),
      area: areas,
      variety: fc.constant(null),
      yieldGoal: fc
        .oneof({ weight: 9, arbitrary: decimal(0, 300, 1) }, { weight: 1, arbitrary: fc.constant(new Decimal("0")) })
        .map(yieldPerArea),
      provenYield: perhaps(decimal(0, 250, 1).map(yieldPerArea)),
      plannedPlanting: perhaps(plantingDay),
      planted: perhaps(plantingDay),
      seedsDropped: fc.constant(null),
      rowWidth: fc.constant(null),
      targetStand: perhaps(fc.constantFrom("28000", "31250", "9000", "78000").map((plants) => new Decimal(plants))),
      harvestDone: perhaps(fc.constantFrom(null, "2031-10-20").map((on) => ({ on }))),
      sameLandAs: name === fieldNames[0] ? fc.constant(null) : fc.constantFrom(null, null, fieldNames[0]),
      tenure: fc.constantFrom("owned", "cash rent", "crop share"),
      rentPerArea: cents(300).map(moneyPerArea),
      landChargePerArea: perhaps(cents(200).map(moneyPerArea)),
      operatorShare: decimal(0, 1, 3).map(share),
    })
    .map((each) => ({
      ...each,
      uniformityLoss: null,
      provenYears: [],
      weatherPlace: null,
      rentPerArea: each.tenure === "cash rent" ? each.rentPerArea : null,
      landChargePerArea: each.tenure === "owned" ? each.landChargePerArea : null,
      operatorShare: each.tenure === "crop share" ? each.operatorShare : share("1"),
    }));

const item = (name: string): Arbitrary<Omit<Item, "source">> =>
  fc
    .record({
      name: fc.constant(name),
      kind: fc.oneof(
        fc.constantFrom(...operatingKinds.filter((kind) => kind !== "operating interest")),
        fc.constantFrom("seed", "fertilizer"),
      ),
      packName: fc.constant("pack"),
      packSize: fc.constantFrom("1", "2.5", "7", "80000").map(itemQuantity),
      unit: fc.constant(measureNamed("lb")!),
      planPricePerPack: perhaps(cents(400).map(money)),
      charged: fc.constantFrom("as used", "as used", "by acres", "by revenue"),
      operatorCostShare: fc.oneof(fc.constant(share("1")), decimal(0, 1, 2).map(share)),
      sitesOfAction: fc.constant(null),
      uncharged: fc.oneof({ weight: 4, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: fc.subarray([...fieldNames]) }),
    })
    .map(({ uncharged, ...rest }) => (uncharged.length === 0 ? rest : { ...rest, unchargedIn: new Set<string>(uncharged) }));

/** One purchase in four is a return. */
const purchase = (items: readonly string[]): Arbitrary<Omit<Purchase, "source">> =>
  fc
    .record({
      item: fc.constantFrom(...items),
      date,
      paidOn: date,
      quantity: decimal(0, 2000, 2).map(itemQuantity),
      amount: cents(9000).map(money),
      freight: fc.oneof(fc.constant(money("0")), cents(200).map(money)),
      rebate: fc.oneof(fc.constant(money("0")), cents(200).map(money)),
      back: fc.constantFrom(false, false, false, true),
    })
    .map(({ back, quantity, amount, ...rest }) => ({
      ...rest,
      isOpening: false,
      quantity: itemQuantity(back ? quantity.neg() : quantity),
      amount: money(back ? amount.neg() : amount),
    }));

const target = (fields: readonly string[]): Arbitrary<Target> =>
  fc.oneof(
    fc.constantFrom(...fields).map((name) => ({ field: name })),
    fc.constantFrom(...cropNames).map((name) => ({ crop: name })),
  );
const work = (fields: readonly string[]) => ({
  target: target(fields),
  area: perhaps(decimal(1, 200, 1).map(area)),
  date: perhaps(date),
  status: fc.constantFrom("plan", "plan", "plan", "done", "done", "done", "done as planned"),
});
const application = (fields: readonly string[], items: readonly string[]): Arbitrary<Omit<Application, "source">> =>
  fc.record({
    ...work(fields),
    item: fc.constantFrom(...items),
    rate: fc
      .oneof(
        decimal(0, 30, 3),
        fc.constantFrom("60", "120").map((text) => new Decimal(text)),
      )
      .map(itemRate),
  });
/** Few names, typed with and without capitals, so that plans and what is done meet. */
const operation = (fields: readonly string[]): Arbitrary<Omit<Operation, "source">> =>
  fc.record({
    ...work(fields),
    operation: fc.constantFrom("Planting", "planting", "Spraying"),
    passes: fc.constantFrom("1", "1", "2", "0.5").map((text) => new Decimal(text)),
    kind: fc.constantFrom(...operatingKinds.filter((kind) => kind !== "operating interest")),
    cost: fc.oneof(
      fc.record({
        basis: fc.constant("per acre" as const),
        rate: fc
          .oneof(
            cents(60),
            fc.constantFrom("9", "14").map((text) => new Decimal(text)),
          )
          .map(moneyPerArea),
      }),
      fc.record({ basis: fc.constant("per hour" as const), rate: cents(90).map(money), hours: decimal(0, 40, 1) }),
      fc.record({ basis: fc.constant("lump sum" as const), rate: cents(5000).map(money) }),
    ),
  });
const otherCost = (fields: readonly string[]): Arbitrary<Omit<OtherCost, "source" | "item">> =>
  fc
    .record({
      kind: fc.constantFrom(...kinds),
      cash: fc.boolean(),
      paidOn: perhaps(date),
      by: fc.constantFrom("acres", "revenue"),
      over: fc.oneof(
        fc.constant({ all: true as const }),
        fc.constantFrom(...cropNames).map((name) => ({ crop: name })),
        fc.constantFrom(...fields).map((name) => ({ field: name })),
      ),
      worth: fc.oneof(
        fc.record({ basis: fc.constant("per acre" as const), amount: cents(150) }),
        fc.record({ basis: fc.constant("per unit of yield" as const), amount: decimal(0, 1, 3) }),
        fc.record({
          basis: fc.constant("whole farm" as const),
          amount: fc.oneof(
            cents(20_000),
            fc.constantFrom("100", "1000").map((text) => new Decimal(text)),
            decimal(0, 1, 2),
            decimal(-50, 50, 3),
          ),
        }),
      ),
    })
    .map(({ worth, ...rest }) => ({ ...rest, ...worth }));
const sale: Arbitrary<Omit<Sale, "source">> = fc
  .record({
    crop: fc.constantFrom(...cropNames),
    date,
    quantity: decimal(0, 20_000, 1).map(cropQuantity),
    price: cents(12).map(moneyPerUnit),
    kind: fc.constant(null),
    cropYear: fc.constantFrom(null, null, "2031", "2030"),
  })
  .map((each) => ({ delivered: null, ...each }));
const load = (fields: readonly string[]): Arbitrary<Omit<HarvestLoad, "source">> =>
  fc
    .record({
      field: fc.constantFrom(...fields),
      date,
      quantity: decimal(0, 9000, 1).map(cropQuantity),
      moisture: perhaps(decimal(9, 30, 1).map(points)),
      water: decimal(0, 1, 2),
      testWeight: fc.constant(null),
    })
    .map(({ water, ...rest }) => ({
      ...rest,
      dock: null,
      ticket: null,
      buyer: null,
      wet: cropQuantity(rest.quantity.times(water.plus("1"))),
    }));

/** Any day of the years around the season, since a statement may be from before it or after. */
const dayAround = fc
  .integer({ min: -730, max: 1090 })
  .map((days) => new Date(Date.UTC(2031, 0, 1) + days * 86_400_000).toISOString().slice(0, 10));
/** Payments that pay a loan off, keep it or do not cover its interest; without a payment or a day at times. */
const loan = (fields: readonly string[]): Arbitrary<Omit<Loan, "source" | "name">> =>
  fc.record({
    kind: fc.constantFrom("term", "term", "term", "operating"),
    balance: fc.oneof(decimal(0, 90_000, 2), decimal(0, 900, 2)).map(money),
    rate: fc.oneof(
      decimal(0, 1, 2).map((rate) => rate.div("5")),
      fc.constantFrom("0", "0.065").map((text) => new Decimal(text)),
    ),
    payment: fc.option(cents(9000).map(money), { freq: 6 }),
    paymentsAYear: fc.constantFrom("1", "1", "2", "3", "4", "6", "12").map((text) => new Decimal(text)),
    nextDue: fc.option(dayAround, { freq: 6 }),
    firstDue: perhaps(dayAround),
    bornBy: perhaps(target(fields)),
  });

/** Few kinds, those of the rows and bills, so that lines, rows and bills of one kind meet. */
const roughKinds = ["seed", "seed", "fertilizer", "custom work", "drying", "haul"] as const;
const scope = (fields: readonly string[]): Arbitrary<BudgetLine["over"]> => fc.oneof(target(fields), fc.constant({ all: true as const }));
const budgetLine = (fields: readonly string[]): Arbitrary<Omit<BudgetLine, "source">> =>
  fc
    .record({
      over: scope(fields),
      kind: fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...roughKinds) }, { weight: 1, arbitrary: fc.constantFrom(...kinds) }),
      worth: fc.oneof(
        fc.record({
          basis: fc.constant("per acre" as const),
          amount: fc.oneof(
            cents(200),
            fc.constantFrom("0", "40", "120").map((text) => new Decimal(text)),
          ),
        }),
        fc.record({
          basis: fc.constant("whole" as const),
          amount: fc.oneof(
            cents(20_000),
            fc.constantFrom("100", "1000").map((text) => new Decimal(text)),
            decimal(0, 1, 3),
          ),
        }),
      ),
      paidOn: perhaps(date),
      operatorCostShare: fc.oneof(fc.constant(share("1")), decimal(0, 1, 2).map(share)),
      allIn: fc.constantFrom(false, false, false, true),
    })
    .map(({ worth, ...rest }) => ({ ...rest, ...worth }));

/** Lines of one target and kind add, and need not agree on the rest. */
const budget = (fields: readonly string[]): Arbitrary<readonly BudgetLine[]> =>
  fc
    .tuple(rows<BudgetLine>("Budget", 3, budgetLine(fields)), budgetLine(fields), fc.boolean())
    .map(([lines, { over: _over, kind: _kind, ...like }, hasTwin]) =>
      lines.length === 0 || !hasTwin ? lines : [...lines, { ...lines[0]!, ...like, source: source("Budget")(lines.length + 1) }],
    );

/** One bill in six is a return. */
const bill = (fields: readonly string[]): Arbitrary<Omit<Bill, "source" | "name">> =>
  fc
    .record({
      over: scope(fields),
      kind: fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...roughKinds) }, { weight: 1, arbitrary: fc.constantFrom(...billKinds) }),
      amount: fc.oneof(
        cents(9000),
        fc.constantFrom("100", "1000").map((text) => new Decimal(text)),
      ),
      back: fc.constantFrom(false, false, false, false, false, true),
      paidOn: date,
      operatorCostShare: perhaps(fc.oneof(fc.constant(share("1")), decimal(0, 1, 2).map(share))),
      uncharged: fc.oneof({ weight: 9, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: fc.subarray([...fieldNames]) }),
    })
    .map(({ amount, back, uncharged, ...rest }) => ({
      ...rest,
      isOpening: false,
      amount: money(back ? amount.neg() : amount),
      ...(uncharged.length === 0 ? {} : { unchargedIn: new Set<string>(uncharged) }),
    }));

/** Called after their row, as other costs are. */
const bills = (fields: readonly string[]): Arbitrary<readonly Bill[]> =>
  fc
    .array(bill(fields), { maxLength: 3 })
    .map((all) => all.map((each, index) => ({ ...each, name: `Bill ${index + 1}`, source: source("Purchases")(index + 101) })));

/** Costs that are called after their row, so that each can be told from the others. */
const otherCosts = (fields: readonly string[]): Arbitrary<readonly OtherCost[]> =>
  fc
    .array(otherCost(fields), { maxLength: 4 })
    .map((all) => all.map((each, index) => ({ ...each, item: `Cost ${index + 1}`, source: source("Other costs")(index + 1) })));

const loans = (fields: readonly string[]): Arbitrary<readonly Loan[]> =>
  fc
    .array(loan(fields), { maxLength: 2 })
    .map((all) => all.map((each, index) => ({ ...each, name: `Loan ${index + 1}`, source: source("Loans")(index + 1) })));

/** A random season that is printed without the published tables, which are the same in all of them. */
type Shown = Season & { [fc.toStringMethod]?: () => string };
const shown = (season: Season): Season => {
  const { published: _published, ...entries } = season;
  const printed: Shown = { ...season, [fc.toStringMethod]: () => JSON.stringify(entries, null, 1) };
  return printed;
};

/** A season before or in its harvest, or one whose fields are all harvested. */
const seasons = (harvest: (fields: readonly string[]) => Arbitrary<readonly HarvestLoad[]>): Arbitrary<Season> =>
  fc.record({ fields: fc.constantFrom(1, 2, 2, 3), items: fc.integer({ min: 1, max: 3 }) }).chain((count) => {
    const fields = fieldNames.slice(0, count.fields);
    const items = ["Item A", "Item B", "Item C"].slice(0, count.items);
    const each = <Row>(
      table: string,
      names: readonly string[],
      row: (name: string) => Arbitrary<Omit<Row, "source">>,
    ): Arbitrary<readonly Row[]> =>
      fc.tuple(...names.map(row)).map((all) => all.map((one, index) => ({ ...one, source: source(table)(index + 1) }) as Row));
    return fc
      .record({
        settings,
        crops: each<Crop>("Crops", cropNames, crop),
        fields: each<Field>("Fields", fields, field),
        items: each<Item>("Items", items, item),
        purchases: rows<Purchase>("Purchases", 4, purchase(items)),
        applications: rows<Application>("Applications", 6, application(fields, items)),
        operations: rows<Operation>("Operations", 5, operation(fields)),
        otherCosts: otherCosts(fields),
        sales: rows<Sale>("Sales", 3, sale),
        loans: loans(fields),
        harvest: harvest(fields),
        budget: fc.oneof(fc.constant([]), budget(fields)),
        bills: fc.oneof(fc.constant([]), bills(fields)),
        published: fc.constant(publishedStandTables),
        planterChecks: fc.constant([]),
      })
      .map((entered) => shown({ ...noMore, ...entered }));
  });

export const growingSeason = seasons((fields) => rows<HarvestLoad>("Harvest", 2, load(fields)));
export const harvestedSeason = seasons((fields) =>
  fc
    .tuple(fc.tuple(...fields.map((name) => load([name]))), fc.array(load(fields), { maxLength: 2 }))
    .map(([first, more]) => [...first, ...more].map((one, index) => ({ ...one, source: source("Harvest")(index + 1) }))),
).map((season) => shown({ ...season, fields: season.fields.map((each) => ({ ...each, harvestDone: each.harvestDone ?? { on: null } })) }));

/** The same season in its second year: every third bill was paid last season, and one is for the next. */
export const withOpening = (season: Season): Season => ({
  ...season,
  purchases: season.purchases.map((row, index) => ({ ...row, isOpening: index % 3 === 0 })),
  bills: season.bills.map((row, index) => ({ ...row, isOpening: index % 3 === 0 })),
  otherSeasons: [
    { season: "2032", kind: "seed", name: "Seed", amount: money("1234.56"), paidOn: "2031-11-03", source: source("Purchases")(999) },
  ],
});
/**
 * The same seasons with flexible rent on some fields, rents that are paid in cash among them. They are drawn beside the others, which
 * stay what they were.
 */
export const underFlexibleRent = (seasons: Arbitrary<Season>): Arbitrary<Season> =>
  fc
    .tuple(
      seasons,
      fc.array(
        perhaps(
          fc.record({
            baseGross: fc.oneof(fc.constant(moneyPerArea("0")), cents(900).map(moneyPerArea)),
            shareAbove: fc.integer({ min: 0, max: 95 }).map((percent) => share(`${percent}e-2`)),
            room: perhaps(cents(200)),
          }),
        ),
        { minLength: fieldNames.length, maxLength: fieldNames.length },
      ),
    )
    .map(([season, terms]) => ({
      ...season,
      fields: season.fields.map((each, index): Field => {
        const of = terms[index] ?? null;
        if (of === null || each.tenure === "crop share" || each.sameLandAs !== null) return each;
        const base = each.rentPerArea ?? moneyPerArea("120");
        const most = of.room === null ? null : moneyPerArea(base.plus(of.room));
        const { baseGross, shareAbove } = of;
        return {
          ...each,
          tenure: "flexible rent",
          rentPerArea: base,
          landChargePerArea: null,
          flexibleRent: { baseGross, shareAbove, most },
        };
      }),
    }));
