/** What the block of a crop says at a glance: cost and its change, what pays and what does not, and the two lines. */
import type { Decimal } from "../../core/numbers/decimal";
import type { Budget, CropFigures } from "../../core/figures";
import type { Season } from "../../core/season";
import { kindsIn, layerCosts, layerNames, layers, type Kind, type Layer } from "../../core/kinds";
import { shownMoney, shownPriceNeeded, shownYield, shownYieldNeeded } from "../../workbook/shown";
import type { Format } from "../format";
import { needLine, type NeedLine } from "./needLine";

export type CropBlock = {
  readonly crop: string;
  readonly area: string;
  readonly figure: string;
  readonly unit: string;
  /** "+25.86 since plan"; "as planned". */
  readonly since: string;
  readonly isHigher: boolean;
  /** What the price covers. */
  readonly covers: string;
  /** What it does not cover and what that needs; empty where it covers all. */
  readonly lacks: string;
  readonly price: NeedLine | null;
  readonly yield: NeedLine | null;
  /** What the axes are, with what is drawn on them without a label. */
  readonly priceCaption: string;
  readonly yieldCaption: string;
};

/** "projected" for the stage between plan and final, as everywhere on screen. */
const stageWord = ({ final }: Pick<CropFigures, "final">): string => (final === null ? "projected" : "final");

export function cropBlock(crop: CropFigures, layer: Layer, season: Pick<Season, "crops">, format: Format): CropBlock {
  const now = crop.final ?? crop.outlook;
  const [cost, planned] = [now.costPerArea.layers[layer], crop.plan.costPerArea.layers[layer]];
  const change = format.change(planned, cost);
  const entry = season.crops.find(({ name }) => name === crop.crop);
  const { goal, proven } = now.yields;
  const named = (...marks: readonly (readonly [string, string | null])[]) =>
    marks.flatMap(([name, says]) => (says === null ? [] : [`${name} ${says}`])).join(", ");
  const known = (value: Decimal | null | undefined, write: (value: Decimal | null) => string) =>
    value === null || value === undefined ? null : write(value);
  const bounds = named(["low", known(entry?.lowPrice, format.money)], ["high", known(entry?.highPrice, format.money)]);
  return {
    crop: crop.crop,
    area: `${format.quantity(crop.area)} ${format.areaUnit}`,
    figure: format.money(cost),
    unit: `${format.perArea}, ${layerCosts[layer]}, ${stageWord(crop)}`,
    since: change === "no change" ? "as planned" : `${change} since plan`,
    isHigher: cost.gt(planned),
    ...paysWords(now, crop.yieldUnit, format),
    price: priceLine(crop, now, entry, format),
    yield: yieldLine(crop, now, format),
    priceCaption: `Price, ${format.currency} per ${crop.yieldUnit}${bounds === "" ? "" : `: ${bounds}`}`,
    yieldCaption:
      `Yield, ${crop.yieldUnit} per ${format.areaName}: ` +
      `${named(["goal", format.yield(goal)], ["proven", known(proven, format.yield)])}`,
  };
}

/** What an acre costs before anything is done on it. */
const landKinds: ReadonlySet<Kind> = new Set<Kind>(["cash rent", "land tax", "land charge"]);

function paysWords(budget: Budget, unit: string, format: Format): Pick<CropBlock, "covers" | "lacks"> {
  const price = shownMoney(budget.price);
  const needs = layers.map((layer) => ({ layer, needed: budget.breakEvenPrice[layer] }));
  if (needs.every(({ needed }) => needed === null))
    return { covers: "", lacks: "No price covers the cost: there is no crop of your own to sell." };
  const short = needs.filter(({ needed }) => needed === null || shownPriceNeeded(needed).gt(price));
  const says = `${format.money(price)} a ${unit === "bu" ? "bushel" : unit}`;
  if (short.length === 0) {
    const kinds = kindsIn("cashNeed").filter((kind) => budget.costPerArea.byKind.has(kind));
    if (kinds.every((kind) => landKinds.has(kind))) {
      return {
        covers:
          `${kinds.length === 0 ? "No cost is entered yet" : "Only land is entered yet"}: seed, fertilizer, crop protection, fuel and ` +
          "work are missing.",
        lacks: "",
      };
    }
    return { covers: `${says} covers every layer.`, lacks: "" };
  }
  const lacks = short.map(({ layer, needed }) => `${layerCosts[layer]} ${format.priceNeeded(needed)}`).join(", ");
  return {
    covers: `${says} covers ${short.length === layers.length ? "no layer" : covered(short.map(({ layer }) => layer))}.`,
    lacks: `Needed for ${lacks}.`,
  };
}

/** "all but full cost", "operating and cash cost". */
function covered(short: readonly Layer[]): string {
  if (short.length === 1) return `all but ${layerCosts[short[0]!]}`;
  const left = layers.filter((layer) => !short.includes(layer));
  return left.map((layer, index) => (index === left.length - 1 ? layerCosts[layer] : layerNames[layer])).join(" and ");
}

function priceLine(
  { crop, yieldUnit }: CropFigures,
  now: Budget,
  entry: Season["crops"][number] | undefined,
  format: Format,
): NeedLine | null {
  const needs = layers.flatMap((layer) => {
    const value = now.breakEvenPrice[layer];
    return value === null
      ? []
      : [
          {
            name: layer,
            value: shownPriceNeeded(value),
            words: `${layerNames[layer]} ${format.priceNeeded(value)}`,
            isShort: shownPriceNeeded(value).gt(shownMoney(now.price)),
          },
        ];
  });
  const [low, high] = [entry?.lowPrice ?? null, entry?.highPrice ?? null];
  const marks = [
    { name: "expected", value: now.price, words: `expected ${format.money(now.price)}` },
    ...(low === null ? [] : [{ name: "low", value: low, words: `low ${format.money(low)}` }]),
    ...(high === null ? [] : [{ name: "high", value: high, words: `high ${format.money(high)}` }]),
  ];
  return needLine(
    `Price of ${crop}, ${format.currency} per ${yieldUnit}`,
    needs,
    marks,
    low === null && high === null ? null : { low: low ?? now.price, high: high ?? now.price },
  );
}

function yieldLine({ crop, yieldUnit, final }: CropFigures, now: Budget, format: Format): NeedLine | null {
  const { goal, used, proven } = now.yields;
  const needs = layers.flatMap((layer) => {
    const value = now.breakEvenYield[layer];
    return value === null
      ? []
      : [
          {
            name: layer,
            value: shownYieldNeeded(value),
            words: `${layerNames[layer]} ${format.yieldNeeded(value)}`,
            isShort: shownYieldNeeded(value).gt(shownYield(used)),
          },
        ];
  });
  const word = final === null ? "projected" : "harvested";
  const marks = [
    { name: word, value: used, words: `${word} ${format.yield(used)}` },
    { name: "goal", value: goal, words: `goal ${format.yield(goal)}` },
    ...(proven === null ? [] : [{ name: "proven", value: proven, words: `proven ${format.yield(proven)}` }]),
  ];
  return needLine(`Yield of ${crop}, ${yieldUnit} per ${format.areaName}`, needs, marks, null);
}
