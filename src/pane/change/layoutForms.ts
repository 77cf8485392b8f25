/** The forms of the ready layouts: their boxes, what they are prefilled with, and the layout that the boxes make. */
import { hundred, zero, type Decimal } from "../../core/numbers/decimal";
import { closingWheels } from "../../core/partialBudget/layouts/closingWheels";
import { anotherHybrid, type HybridFacts } from "../../core/partialBudget/layouts/hybrid";
import { laterHarvest } from "../../core/partialBudget/layouts/laterHarvest";
import { ownOrHireChange } from "../../core/partialBudget/layouts/ownOrHireChange";
import { lossToBadRows, rebuildRowUnits } from "../../core/partialBudget/layouts/rebuildRowUnits";
import { fixedOrFlexible, flexibleRentAt, higherRent, priceOfEqualRents } from "../../core/partialBudget/layouts/rent";
import { anotherSeedingRate } from "../../core/partialBudget/layouts/seedingRate";
import { extraPass, secondSite } from "../../core/partialBudget/layouts/spraying";
import { earlierPass, yieldKept } from "../../core/partialBudget/layouts/weedTiming";
import { centimetresPerInch, centimetresPerMillimetre, weedLosses, type WeedDensity } from "../../core/weeds/weedLoss";
import {
  hours,
  money,
  moneyPerArea,
  moneyPerHour,
  moneyPerUnit,
  moneyPerYear,
  points,
  seedsPerArea,
  share,
  yieldPerArea,
  years,
} from "../../core/numbers/units";
import type { Format } from "../format";
import { may, must, type Box, type Sound } from "./box";
import { defineLayout, type LayoutForm } from "./defineLayout";
import { seedOf, type Ground } from "./ground";
import { dueRows } from "./dueRows";
import { lengthName, openerWear, wearBoxes, wearFaults, wearWords } from "./openerWear";

const above = { needed: true, aboveZero: true } as const;
const gainHint = "blank: the answer is the gain needed";
const gain = (label = "Yield gain, {yield}") => may(label, { hint: gainHint, wanted: { mayBeNegative: true } });

/** A value where one is typed. */
const given = <Unit>(value: Decimal | null, unit: (value: Decimal) => Unit): Unit | null => (value === null ? null : unit(value));
const percent = (value: Decimal) => share(value.div(hundred));
const wage = must("Labour per hour", { begin: ({ report }) => report.season.settings.labourPerHour });

/** The length that heights are typed in, as the labels name it, and how many centimetres it is. */
const heightUnit = ({ report }: Ground): string => lengthName(report.season.settings);
const centimetresPer = (ground: Ground): Decimal => (heightUnit(ground) === "in" ? centimetresPerInch : centimetresPerMillimetre);
/** What is typed of weeds at two passes; thick unless they are said to stand thin. */
type WeedsTyped = { readonly early: Decimal | null; readonly late: Decimal | null; readonly thin: Decimal | null };
function weedsOf({ early, late, thin }: WeedsTyped, ground: Ground) {
  const per = centimetresPer(ground);
  const density: WeedDensity = thin?.isZero() === false ? "thin" : "thick";
  return early === null || late === null
    ? null
    : { density, early: early.times(per), late: late.times(per), yieldNow: ground.budget.yields.used };
}

const cropOf = ({ report, crop }: Ground) => report.season.crops.find(({ name }) => name === crop.crop);
/** Corn wetter than this is not ripe: a larger number is no percentage of moisture. */
const wettest = "60";

type SeedFact = "rate" | "price" | "perUnit" | "wet";
const seedFact = (of: SeedFact, ground: Ground): Decimal | null => {
  const seed = seedOf(ground);
  if (of === "wet") return ground.wetPoints;
  if (of === "rate") return ground.field.seedsDropped ?? seed?.rate ?? null;
  return seed?.[of] ?? null;
};

/** The boxes of one hybrid, with what the season knows of it. */
const hybridBoxes = (words: string, begin: (of: SeedFact, ground: Ground) => Decimal | null) => ({
  seeds: must(`Seeds per {area}, ${words}`, { wanted: above, begin: (ground) => begin("rate", ground) }),
  price: must(`Price per unit of seed, ${words}`, { begin: (ground) => begin("price", ground) }),
  perUnit: must(`Seeds in a unit, ${words}`, { wanted: above, begin: (ground) => begin("perUnit", ground) }),
  trait: may(`Trait fee, {money}, ${words}`),
  wet: may(`Points above standard, ${words}`, { begin: (ground) => begin("wet", ground) }),
  discount: may(`Test-weight discount per {unit}, ${words}`),
});
const nowBoxes = hybridBoxes("present", seedFact);
const otherBoxes = hybridBoxes("other", (of, ground) => (of === "price" ? null : seedFact(of, ground)));
const hybridOf = (typed: Sound<typeof nowBoxes>): HybridFacts => ({
  seedsPerArea: seedsPerArea(typed.seeds),
  pricePerUnit: money(typed.price),
  seedsPerUnit: typed.perUnit,
  traitFee: given(typed.trait, moneyPerArea),
  wetPoints: points(typed.wet ?? zero),
  discount: given(typed.discount, moneyPerUnit),
});

export const layoutForms: readonly LayoutForm[] = [
  defineLayout({
    name: "Other closing wheels",
    boxes: {
      gain: gain(),
      rows: must("Rows", { wanted: above }),
      price: must("Price per row"),
      years: must("Years kept", { wanted: above }),
      salvage: may("Salvage value, in all"),
      hours: may("Hours to fit"),
      wage,
      upkeep: may("More upkeep, {money}"),
    },
    build: (of, values) =>
      closingWheels({
        ...of,
        rows: values.rows,
        pricePerRow: money(values.price),
        yearsKept: years(values.years),
        salvage: given(values.salvage, money),
        fittingHours: given(values.hours, hours),
        wage: moneyPerHour(values.wage),
        upkeep: given(values.upkeep, moneyPerArea),
        yieldGain: given(values.gain, yieldPerArea),
      }),
  }),
  defineLayout({
    name: "Rebuild worn row units",
    boxes: {
      ...wearBoxes,
      rows: must("Rows", { wanted: above }),
      rebuilt: must("Rows rebuilt", { wanted: above, begin: ({ report }) => dueRows(report.figures.planters)?.rows ?? null }),
      parts: must("Parts per row", { begin: ({ report }) => dueRows(report.figures.planters)?.partsPerRow ?? null }),
      hours: may("Shop hours per row", {
        hint: "two days of 8 h on 16 rows would be 1",
        begin: ({ report }) => dueRows(report.figures.planters)?.hoursPerRow ?? null,
      }),
      wage,
      years: must("Years kept", { wanted: above }),
      spared: may("Repairs saved a year, in all"),
      badRows: may("Rows that plant badly", { hint: "blank: the answer is the yield that must be kept" }),
      loss: may("Yield that such a row loses, %", { wanted: { isPercent: true }, hint: "of its own yield" }),
    },
    check: wearFaults,
    says: (values, format, { budget, crop }) => {
      const wear = openerWear(values);
      const [rows, bad, loss] = [values.rows, values.badRows, values.loss];
      const lost = rows === null || bad === null || loss === null ? null : lossToBadRows(budget.yields.used, bad, rows, percent(loss));
      return [
        ...(wear === null ? [] : [wearWords(wear, format)]),
        ...(lost === null
          ? []
          : [
              `Yield kept: ${format.quantity(bad)} of ${format.quantity(rows)} rows lose ${format.quantity(loss)}% of ` +
                `${format.yield(budget.yields.used)} ${crop.yieldUnit} per ${format.areaName}, ${format.quantity(lost)} over all rows.`,
            ]),
      ];
    },
    build: (of, values, { budget }) => {
      const [bad, loss] = [values.badRows, values.loss];
      return rebuildRowUnits({
        ...of,
        rows: values.rows,
        rowsRebuilt: values.rebuilt,
        partsPerRow: money(values.parts),
        shopHoursPerRow: hours(values.hours ?? zero),
        wage: moneyPerHour(values.wage),
        yearsKept: years(values.years),
        repairsSpared: given(values.spared, moneyPerYear),
        wear: openerWear(values),
        badRows: bad === null || loss === null ? null : { rows: bad, yield: budget.yields.used, loss: percent(loss) },
      });
    },
  }),
  defineLayout({
    name: "Another hybrid",
    beforeDrying: true,
    boxes: {
      gain: gain("Yield gain at standard moisture, {yield}"),
      yieldNow: must("Present yield, {yield}", { begin: ({ budget }) => budget.yields.used }),
      drying: may("Drying per {unit} and point", { begin: ({ report }) => report.season.settings.dryingChargePerPoint }),
      nowSeeds: nowBoxes.seeds,
      nowPrice: nowBoxes.price,
      nowPerUnit: nowBoxes.perUnit,
      nowTrait: nowBoxes.trait,
      nowWet: nowBoxes.wet,
      nowDiscount: nowBoxes.discount,
      otherSeeds: otherBoxes.seeds,
      otherPrice: otherBoxes.price,
      otherPerUnit: otherBoxes.perUnit,
      otherTrait: otherBoxes.trait,
      otherWet: otherBoxes.wet,
      otherDiscount: otherBoxes.discount,
    },
    build: (of, values, { crop, report: { season } }) =>
      anotherHybrid({
        ...of,
        now: hybridOf({
          seeds: values.nowSeeds,
          price: values.nowPrice,
          perUnit: values.nowPerUnit,
          trait: values.nowTrait,
          wet: values.nowWet,
          discount: values.nowDiscount,
        }),
        other: hybridOf({
          seeds: values.otherSeeds,
          price: values.otherPrice,
          perUnit: values.otherPerUnit,
          trait: values.otherTrait,
          wet: values.otherWet,
          discount: values.otherDiscount,
        }),
        yieldNow: yieldPerArea(values.yieldNow),
        yieldGain: given(values.gain, yieldPerArea),
        dryingPerPoint: moneyPerUnit(values.drying ?? zero),
        wetStandard:
          season.settings.dryingCountedOn === "wet"
            ? (season.crops.find(({ name }) => name === crop.crop)?.standardMoisture ?? null)
            : null,
      }),
  }),
  defineLayout({
    name: "Another seeding rate",
    boxes: {
      from: must("Seeds per {area} now", { wanted: above, begin: (ground) => seedFact("rate", ground) }),
      to: must("Seeds per {area} then", { wanted: above }),
      price: must("Price per unit of seed", { begin: (ground) => seedFact("price", ground) }),
      perUnit: must("Seeds in a unit", { wanted: above, begin: (ground) => seedFact("perUnit", ground) }),
      gain: may("Yield difference, {yield}", { hint: "gained by more seed, given up with less; blank: the answer is how much" }),
    },
    build: (of, values) =>
      anotherSeedingRate({
        ...of,
        from: seedsPerArea(values.from),
        to: seedsPerArea(values.to),
        pricePerUnit: money(values.price),
        seedsPerUnit: values.perUnit,
        yieldDifference: given(values.gain, yieldPerArea),
      }),
  }),
  defineLayout({
    name: "A second site of action in the tank",
    hasProducts: true,
    boxes: {
      gain: gain("Yield kept from weeds, {yield}"),
      pass: may("A pass of its own, {money}"),
      spared: may("A later pass saved, {money}"),
      later: may("Cost of escapes saved in later years, {money}", { hint: "your own estimate" }),
    },
    build: (of, values, _ground, products) =>
      secondSite({
        ...of,
        items: products,
        extraPass: given(values.pass, moneyPerArea),
        passSpared: given(values.spared, moneyPerArea),
        laterCostSpared: given(values.later, moneyPerArea),
        yieldKept: given(values.gain, yieldPerArea),
      }),
  }),
  defineLayout({
    name: "An earlier weed pass",
    boxes: {
      early: must("Height of weeds at the early pass, {length}", { wanted: above }),
      late: must("Height at the late one, {length}", { wanted: above }),
      thin: may("Thin stand of weeds: 1", { hint: "blank: a thick one, which takes more yield" }),
      extra: may("The early pass costs more, {money}", { hint: "a second pass later, a residual" }),
      spared: may("It saves, {money}"),
    },
    says: (values, format, ground) => {
      const weeds = weedsOf(values, ground);
      const kept = weeds === null ? null : yieldKept(weeds);
      if (weeds === null) return [];
      const printed = weedLosses[weeds.density]
        .map(
          ({ height, loss }) => `${format.quantity(height.div(centimetresPer(ground)))} ${heightUnit(ground)} ${format.quantity(loss)} %`,
        )
        .join(", ");
      return [
        `Yield lost by the table, weeds ${weeds.density}: ${printed}.`,
        ...(kept === null
          ? ["One of the heights is outside the table, so the yield kept stays blank: enter the pass as a change of your own."]
          : []),
      ];
    },
    build: (of, values, ground) =>
      earlierPass({
        ...of,
        ...weedsOf(values, ground)!,
        extra: given(values.extra, moneyPerArea),
        spared: given(values.spared, moneyPerArea),
      }),
  }),
  defineLayout({
    name: "An extra pass",
    hasProducts: true,
    boxes: {
      gain: gain(),
      pass: must("The pass, {money}", { hint: "custom rate, or your own machine" }),
      trampled: may("Wheel-track loss, %", { wanted: { isPercent: true } }),
    },
    build: (of, values, { budget }, products) =>
      extraPass({
        ...of,
        items: products,
        pass: moneyPerArea(values.pass),
        trampled: given(values.trampled, percent),
        yieldNow: budget.yields.used,
        yieldGain: given(values.gain, yieldPerArea),
      }),
  }),
  defineLayout({
    name: "Own or hire",
    boxes: {
      custom: must("Custom rate, {money}"),
      price: must("Price of the machine"),
      salvage: may("Salvage value"),
      years: must("Years kept", { wanted: above }),
      yearly: may("Taxes, insurance, housing a year"),
      running: must("Fuel, labour, repairs, {money}"),
      gain: may("Yield from doing it in time, {yield}", { hint: "blank: none is claimed" }),
    },
    build: (of, values) =>
      ownOrHireChange({
        ...of,
        customRate: moneyPerArea(values.custom),
        purchasePrice: money(values.price),
        salvage: money(values.salvage ?? zero),
        yearsKept: years(values.years),
        taxesInsuranceHousing: moneyPerYear(values.yearly ?? zero),
        running: moneyPerArea(values.running),
        timeliness: given(values.gain, yieldPerArea),
      }),
  }),
  defineLayout({
    name: "A higher rent",
    boxes: {
      from: must("Rent now, {money}", { begin: ({ field }) => field.rentPerArea }),
      to: must("Rent asked, {money}"),
      margin: may("What the ground leaves beyond its costs and rent, {money}", { hint: "and would be lost with it" }),
      gain: gain("Yield that carries the rise, {yield}"),
    },
    build: (of, values) =>
      higherRent({
        ...of,
        from: moneyPerArea(values.from),
        to: moneyPerArea(values.to),
        marginKept: given(values.margin, moneyPerArea),
        yieldGain: given(values.gain, yieldPerArea),
      }),
  }),
  defineLayout({
    name: "A later harvest",
    beforeDrying: true,
    boxes: {
      lost: may("Yield lost by waiting, %", { wanted: { isPercent: true }, hint: "blank: the answer is how much it may be" }),
      yieldNow: must("Present yield, {yield}", { begin: ({ budget }) => budget.yields.used }),
      now: must("Moisture now, %", {
        wanted: { ...above, isPercent: true },
        begin: (ground) => cropOf(ground)?.expectedHarvestMoisture ?? null,
      }),
      later: must("Moisture after waiting, %", {
        wanted: { ...above, isPercent: true },
        begin: (ground) => cropOf(ground)?.standardMoisture ?? null,
      }),
      standard: must("Standard moisture, %", {
        wanted: { ...above, isPercent: true },
        begin: (ground) => cropOf(ground)?.standardMoisture ?? null,
      }),
      charge: must("Drying per {unit} and point", { begin: ({ report }) => report.season.settings.dryingChargePerPoint }),
    },
    check: ({ now, later, standard, lost }) => ({
      ...(now !== null && later?.gt(now) === true ? { later: "Not above the moisture now." } : {}),
      ...(standard?.gte(wettest) === true ? { standard: "Enter a percentage below 60." } : {}),
      ...(now?.gte(wettest) === true ? { now: "Enter a percentage below 60." } : {}),
      ...(lost?.gt(hundred) === true ? { lost: "Enter a percentage from 0 to 100." } : {}),
    }),
    build: (of, values, { report }) =>
      laterHarvest({
        ...of,
        yieldNow: yieldPerArea(values.yieldNow),
        now: points(values.now),
        later: points(values.later),
        standard: points(values.standard),
        chargePerPoint: moneyPerUnit(values.charge),
        countedOn: report.season.settings.dryingCountedOn,
        lost: given(values.lost, percent),
      }),
  }),
  defineLayout({
    name: "Fixed or flexible rent",
    boxes: {
      fixed: must("Fixed rent, {money}", { begin: ({ field }) => (field.tenure === "cash rent" ? field.rentPerArea : null) }),
      base: must("Base rent, {money}", { begin: ({ field }) => (field.tenure === "flexible rent" ? field.rentPerArea : null) }),
      gross: must("Base gross, {money}", { begin: ({ field }) => field.flexibleRent?.baseGross ?? null }),
      above: must("Share above base, %", {
        wanted: { isPercent: true },
        begin: ({ field }) => field.flexibleRent?.shareAbove.times(hundred) ?? null,
      }),
      most: may("Most rent, {money}", { begin: ({ field }) => field.flexibleRent?.most ?? null, hint: "base included; blank: no limit" }),
    },
    check: ({ base, most }) => (base !== null && most?.lt(base) === true ? { most: "The most is below the base." } : {}),
    says: ({ fixed, base, gross, above, most }, format, { prices, budget, crop }) => {
      if (base === null || gross === null || above === null) return [];
      const terms = { base: moneyPerArea(base), terms: flexibleTerms(gross, above, most) };
      const at = budget.yields.used;
      const cases = [prices.low, prices.expected, prices.high].flatMap((price) =>
        price === null ? [] : [`${format.money(flexibleRentAt(terms, price, at))} at ${format.money(price)}`],
      );
      const equal = fixed === null ? null : priceOfEqualRents(terms, moneyPerArea(fixed), at);
      return [
        `With ${format.yield(at)} ${crop.yieldUnit} per ${format.areaName} the flexible rent is ${cases.join(", ")}.`,
        ...(fixed === null
          ? []
          : [
              equal === null
                ? "At no price are the two rents alike."
                : `The two rents are alike at ${format.money(equal)} per ${crop.yieldUnit}; above it the fixed rent is the lower one.`,
            ]),
      ];
    },
    build: (of, values, ground) =>
      fixedOrFlexible({
        ...of,
        isFlexibleNow: ground.field.tenure === "flexible rent",
        fixed: moneyPerArea(values.fixed),
        base: moneyPerArea(values.base),
        terms: flexibleTerms(values.gross, values.above, values.most),
        yieldNow: ground.budget.yields.used,
      }),
  }),
];

const flexibleTerms = (gross: Decimal, above: Decimal, most: Decimal | null) => ({
  baseGross: moneyPerArea(gross),
  shareAbove: percent(above),
  most: given(most, moneyPerArea),
});

/** The label of a box with its units. */
export const boxLabel = ({ label }: Box, { crop }: Ground, format: Format): string =>
  format.words(
    label
      .replace("{area}", format.areaName)
      .replace("{yield}", `${crop.yieldUnit} per ${format.areaName}`)
      .replace("{unit}", crop.yieldUnit)
      .replace("{money}", format.perArea)
      .replace("{length}", lengthName(format)),
  );
