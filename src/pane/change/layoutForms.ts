/** The forms of the ready layouts: their boxes, what they are prefilled with, and the layout that the boxes make. */
import { hundred, zero, type Decimal } from "../../core/numbers/decimal";
import { closingWheels } from "../../core/partialBudget/layouts/closingWheels";
import { anotherHybrid, type HybridFacts } from "../../core/partialBudget/layouts/hybrid";
import type { Circumstances, Layout, LayoutName } from "../../core/partialBudget/layouts/layout";
import { ownOrHireChange } from "../../core/partialBudget/layouts/ownOrHire";
import { lossToBadRows, rebuildRowUnits } from "../../core/partialBudget/layouts/rebuildRowUnits";
import { higherRent } from "../../core/partialBudget/layouts/rent";
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
import type { Faults } from "../parts/typed";
import type { Format } from "../format";
import type { Box, Values } from "./box";
import { seedOf, type Ground } from "./ground";
import { lengthName, openerWear, wearBoxes, wearFaults, wearWords } from "./openerWear";

export type LayoutForm = {
  readonly name: Exclude<LayoutName, "Reseed">;
  readonly boxes: readonly Box[];
  /** Whether products go into it, a row each. */
  readonly hasProducts?: boolean;
  /** Whether the grain of the layout is without drying. */
  readonly beforeDrying?: boolean;
  /** What is wrong between boxes that are sound each for itself. */
  readonly check?: (values: Values) => Faults<string>;
  /** What the boxes say by themselves, whatever the answer. */
  readonly says?: (values: Values, format: Format, ground: Ground) => readonly string[];
  /** Called with sound values only. */
  readonly build: (of: Circumstances, values: Values, ground: Ground) => Layout;
};

const must = (name: string, label: string, more: Partial<Box> = {}): Box => ({ name, label, wanted: { needed: true }, ...more });
const may = (name: string, label: string, more: Partial<Box> = {}): Box => ({ name, label, ...more });
const above = { needed: true, aboveZero: true } as const;
const gainHint = "blank: the answer is the gain needed";
const gain = (label = "Yield gain, {yield}"): Box => may("gain", label, { hint: gainHint, wanted: { mayBeNegative: true } });

/** A value where one is typed. */
const given = <Unit>(value: Decimal | null, unit: (value: Decimal) => Unit): Unit | null => (value === null ? null : unit(value));
const percent = (value: Decimal) => share(value.div(hundred));
const wage = must("wage", "Labour per hour", { begin: ({ report }) => report.season.settings.labourPerHour });

/** Whether weeds stand thick or thin. */
const densityOf = ({ number }: Values): WeedDensity => (number("thin")?.isZero() === false ? "thin" : "thick");
/** The length that heights are typed in, as the labels name it, and how many centimetres it is. */
const heightUnit = ({ report }: Ground): string => lengthName(report.season.settings);
const centimetresPer = (ground: Ground): Decimal => (heightUnit(ground) === "in" ? centimetresPerInch : centimetresPerMillimetre);
const weedsOf = (values: Values, ground: Ground) => {
  const [early, late] = [values.number("early"), values.number("late")];
  const per = centimetresPer(ground);
  return early === null || late === null
    ? null
    : { density: densityOf(values), early: early.times(per), late: late.times(per), yieldNow: ground.budget.yields.used };
};

const hybridBoxes = (
  of: "now" | "other",
  words: string,
  begin: (of: "rate" | "price" | "perUnit" | "wet", ground: Ground) => Decimal | null,
): readonly Box[] => [
  must(`${of}Seeds`, `Seeds per {area}, ${words}`, { wanted: above, begin: (ground) => begin("rate", ground) }),
  must(`${of}Price`, `Price per unit of seed, ${words}`, { begin: (ground) => begin("price", ground) }),
  must(`${of}PerUnit`, `Seeds in a unit, ${words}`, { wanted: above, begin: (ground) => begin("perUnit", ground) }),
  may(`${of}Trait`, `Trait fee, {money}, ${words}`),
  may(`${of}Wet`, `Points above standard, ${words}`, { begin: (ground) => begin("wet", ground) }),
  may(`${of}Discount`, `Test-weight discount per {unit}, ${words}`),
];
const hybridOf = (of: "now" | "other", { number }: Values): HybridFacts => ({
  seedsPerArea: seedsPerArea(number(`${of}Seeds`)!),
  pricePerUnit: money(number(`${of}Price`)!),
  seedsPerUnit: number(`${of}PerUnit`)!,
  traitFee: given(number(`${of}Trait`), moneyPerArea),
  wetPoints: points(number(`${of}Wet`) ?? zero),
  discount: given(number(`${of}Discount`), moneyPerUnit),
});
const seedFact = (of: "rate" | "price" | "perUnit" | "wet", ground: Ground): Decimal | null => {
  const seed = seedOf(ground);
  if (of === "wet") return ground.wetPoints;
  if (of === "rate") return ground.field.seedsDropped ?? seed?.rate ?? null;
  return seed?.[of] ?? null;
};

export const layoutForms: readonly LayoutForm[] = [
  {
    name: "Other closing wheels",
    boxes: [
      gain(),
      must("rows", "Rows", { wanted: above }),
      must("price", "Price per row"),
      must("years", "Years kept", { wanted: above }),
      may("salvage", "Salvage value, in all"),
      may("hours", "Hours to fit"),
      wage,
      may("upkeep", "More upkeep, {money}"),
    ],
    build: (of, { number }) =>
      closingWheels({
        ...of,
        rows: number("rows")!,
        pricePerRow: money(number("price")!),
        yearsKept: years(number("years")!),
        salvage: given(number("salvage"), money),
        fittingHours: given(number("hours"), hours),
        wage: moneyPerHour(number("wage")!),
        upkeep: given(number("upkeep"), moneyPerArea),
        yieldGain: given(number("gain"), yieldPerArea),
      }),
  },
  {
    name: "Rebuild worn row units",
    boxes: [
      ...wearBoxes,
      must("rows", "Rows", { wanted: above }),
      must("rebuilt", "Rows rebuilt", { wanted: above }),
      must("parts", "Parts per row"),
      may("hours", "Shop hours per row", { hint: "two days of 8 h on 16 rows would be 1" }),
      wage,
      must("years", "Years kept", { wanted: above }),
      may("spared", "Repairs saved a year, in all"),
      may("badRows", "Rows that plant badly", { hint: "blank: the answer is the yield that must be kept" }),
      may("loss", "Yield that such a row loses, %", { hint: "of its own yield" }),
    ],
    check: wearFaults,
    says: (values, format, { budget, crop }) => {
      const wear = openerWear(values);
      const [rows, bad, loss] = [values.number("rows"), values.number("badRows"), values.number("loss")];
      const lost = rows === null || bad === null || loss === null ? null : lossToBadRows(budget.yields.used, bad, rows, percent(loss));
      return [
        ...(wear === null ? [] : [wearWords(wear, format)]),
        ...(lost === null
          ? []
          : [
              `Yield kept: ${format.quantity(bad)} of ` +
                `${format.quantity(rows)} rows ` +
                `lose ${format.quantity(loss)}% of ` +
                `${format.yield(budget.yields.used)} ${crop.yieldUnit} per ${format.areaName}, ${format.quantity(lost)} over all rows.`,
            ]),
      ];
    },
    build: (of, values, { budget }) => {
      const { number } = values;
      const [bad, loss] = [number("badRows"), number("loss")];
      return rebuildRowUnits({
        ...of,
        rows: number("rows")!,
        rowsRebuilt: number("rebuilt")!,
        partsPerRow: money(number("parts")!),
        shopHoursPerRow: hours(number("hours") ?? zero),
        wage: moneyPerHour(number("wage")!),
        yearsKept: years(number("years")!),
        repairsSpared: given(number("spared"), moneyPerYear),
        wear: openerWear(values),
        badRows: bad === null || loss === null ? null : { rows: bad, yield: budget.yields.used, loss: percent(loss) },
      });
    },
  },
  {
    name: "Another hybrid",
    beforeDrying: true,
    boxes: [
      gain("Yield gain at standard moisture, {yield}"),
      must("yieldNow", "Present yield, {yield}", { begin: ({ budget }) => budget.yields.used }),
      may("drying", "Drying per {unit} and point", { begin: ({ report }) => report.season.settings.dryingChargePerPoint }),
      ...hybridBoxes("now", "present", seedFact),
      ...hybridBoxes("other", "other", (of, ground) => (of === "price" ? null : seedFact(of, ground))),
    ],
    build: (of, values) =>
      anotherHybrid({
        ...of,
        now: hybridOf("now", values),
        other: hybridOf("other", values),
        yieldNow: yieldPerArea(values.number("yieldNow")!),
        yieldGain: given(values.number("gain"), yieldPerArea),
        dryingPerPoint: moneyPerUnit(values.number("drying") ?? zero),
      }),
  },
  {
    name: "Another seeding rate",
    boxes: [
      must("from", "Seeds per {area} now", { wanted: above, begin: (ground) => seedFact("rate", ground) }),
      must("to", "Seeds per {area} then", { wanted: above }),
      must("price", "Price per unit of seed", { begin: (ground) => seedFact("price", ground) }),
      must("perUnit", "Seeds in a unit", { wanted: above, begin: (ground) => seedFact("perUnit", ground) }),
      may("gain", "Yield difference, {yield}", { hint: "gained by more seed, given up with less; blank: the answer is how much" }),
    ],
    build: (of, { number }) =>
      anotherSeedingRate({
        ...of,
        from: seedsPerArea(number("from")!),
        to: seedsPerArea(number("to")!),
        pricePerUnit: money(number("price")!),
        seedsPerUnit: number("perUnit")!,
        yieldDifference: given(number("gain"), yieldPerArea),
      }),
  },
  {
    name: "A second site of action in the tank",
    hasProducts: true,
    boxes: [
      gain("Yield kept from weeds, {yield}"),
      may("pass", "A pass of its own, {money}"),
      may("spared", "A later pass saved, {money}"),
      may("later", "Cost of escapes saved in later years, {money}", { hint: "your own estimate" }),
    ],
    build: (of, values) =>
      secondSite({
        ...of,
        items: values.products,
        extraPass: given(values.number("pass"), moneyPerArea),
        passSpared: given(values.number("spared"), moneyPerArea),
        laterCostSpared: given(values.number("later"), moneyPerArea),
        yieldKept: given(values.number("gain"), yieldPerArea),
      }),
  },
  {
    name: "An earlier weed pass",
    boxes: [
      must("early", "Height of weeds at the early pass, {length}", { wanted: above }),
      must("late", "Height at the late one, {length}", { wanted: above }),
      may("thin", "Thin stand of weeds: 1", { hint: "blank: a thick one, which takes more yield" }),
      may("extra", "The early pass costs more, {money}", { hint: "a second pass later, a residual" }),
      may("spared", "It saves, {money}"),
    ],
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
        extra: given(values.number("extra"), moneyPerArea),
        spared: given(values.number("spared"), moneyPerArea),
      }),
  },
  {
    name: "An extra pass",
    hasProducts: true,
    boxes: [
      gain(),
      must("pass", "The pass, {money}", { hint: "custom rate, or your own machine" }),
      may("trampled", "Wheel-track loss, %"),
    ],
    build: (of, values, { budget }) =>
      extraPass({
        ...of,
        items: values.products,
        pass: moneyPerArea(values.number("pass")!),
        trampled: given(values.number("trampled"), percent),
        yieldNow: budget.yields.used,
        yieldGain: given(values.number("gain"), yieldPerArea),
      }),
  },
  {
    name: "Own or hire",
    boxes: [
      must("custom", "Custom rate, {money}"),
      must("price", "Price of the machine"),
      may("salvage", "Salvage value"),
      must("years", "Years kept", { wanted: above }),
      may("yearly", "Taxes, insurance, housing a year"),
      must("running", "Fuel, labour, repairs, {money}"),
      may("gain", "Yield from doing it in time, {yield}", { hint: "blank: none is claimed" }),
    ],
    build: (of, { number }) =>
      ownOrHireChange({
        ...of,
        customRate: moneyPerArea(number("custom")!),
        purchasePrice: money(number("price")!),
        salvage: money(number("salvage") ?? zero),
        yearsKept: years(number("years")!),
        taxesInsuranceHousing: moneyPerYear(number("yearly") ?? zero),
        running: moneyPerArea(number("running")!),
        timeliness: given(number("gain"), yieldPerArea),
      }),
  },
  {
    name: "A higher rent",
    boxes: [
      must("from", "Rent now, {money}", { begin: ({ field }) => field.rentPerArea }),
      must("to", "Rent asked, {money}"),
      may("margin", "What the ground leaves beyond its costs and rent, {money}", { hint: "and would be lost with it" }),
      gain("Yield that carries the rise, {yield}"),
    ],
    build: (of, { number }) =>
      higherRent({
        ...of,
        from: moneyPerArea(number("from")!),
        to: moneyPerArea(number("to")!),
        marginKept: given(number("margin"), moneyPerArea),
        yieldGain: given(number("gain"), yieldPerArea),
      }),
  },
];

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
