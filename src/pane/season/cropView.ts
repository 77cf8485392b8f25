/** What the card of a crop says, as plain text. */
import type { Budget, CropFigures, PerLayer, Stage } from "../../core/figures";
import { sum, type Decimal } from "../../core/decimal";
import { kindsIn, layerCosts, layerNames, layers, type Kind, type Layer } from "../../core/kinds";
import { notPlanned } from "../../core/notPlanned";
import { shownPriceNeeded, shownMoney } from "../../workbook/shown";
import type { Format } from "../format";

/** A row of figures under stage headings. */
export type FigureRow = { readonly name: string; readonly cells: readonly string[] };

export type CropView = {
  readonly crop: string;
  readonly area: string;
  /** The figure of the card, its unit, and which cost it is. */
  readonly figure: string;
  readonly unit: string;
  readonly layer: string;
  /** How far it is from the plan: "plan 812.10, +3.22". */
  readonly againstPlan: string;
  /** What was done or bought without a plan, as a sentence; empty where nothing was. */
  readonly notPlanned: string;
  /** The yield and the price that the figures rest on. */
  readonly restsOn: string;
  /** Whether the expected price pays. */
  readonly verdict: string;
  readonly stages: readonly Stage[];
  readonly rows: readonly FigureRow[];
  readonly byLayer: readonly FigureRow[];
};

/** The stages that a crop has figures for, the newest last. */
export const stagesOf = (crop: Pick<CropFigures, "final">): readonly Stage[] =>
  crop.final === null ? ["plan", "outlook"] : ["plan", "outlook", "final"];

const yieldNames: Record<Stage, string> = { plan: "yield goal", outlook: "yield outlook", final: "harvested yield" };

export function cropView(crop: CropFigures, layer: Layer, format: Format): CropView {
  const stages = stagesOf(crop);
  const newest: Stage = crop.final === null ? "outlook" : "final";
  const now = crop.final ?? crop.outlook;
  const { money, priceNeeded, yieldNeeded, areaName, areaUnit, amount } = format;
  const budgets = [crop.plan, crop.outlook, ...(crop.final === null ? [] : [crop.final])];
  const row = (name: string, cell: (budget: Budget) => string): FigureRow => ({ name, cells: budgets.map(cell) });
  const unit = crop.yieldUnit;
  const cost = now.costPerArea.layers[layer];
  return {
    crop: crop.crop,
    area: `${format.quantity(crop.area)} ${areaUnit}`,
    figure: money(cost),
    unit: format.perArea,
    layer: `${layerCosts[layer]}, ${newest}`,
    againstPlan: `plan ${money(crop.plan.costPerArea.layers[layer])}, ${format.change(crop.plan.costPerArea.layers[layer], cost)}`,
    notPlanned: notPlannedWords(crop, layer, format),
    restsOn: `at ${yieldNames[harvestedOr(newest, crop)]} ${format.yield(now.yields.used)} ${unit} per ${areaName} and expected price ${amount(now.price)} per ${unit}`,
    verdict: verdict(now, layer, unit, format),
    stages,
    rows: [
      row(`Yield, ${unit} per ${areaName}`, (budget) => format.yield(budget.yields.used)),
      row(`Cost per ${areaName}`, (budget) => money(budget.costPerArea.layers[layer])),
      row(`Cost per ${unit}`, (budget) => money(budget.costPerUnit[layer])),
      row(`Break-even price, per ${unit}`, (budget) => priceNeeded(budget.breakEvenPrice[layer])),
      row(`Expected price, per ${unit}`, (budget) => money(budget.price)),
      row(`Break-even yield, ${unit} per ${areaName}`, (budget) => yieldNeeded(budget.breakEvenYield[layer])),
      row(`Net return per ${areaName}${crop.sales.sold.isZero() ? "" : ", at the price entered"}`, (budget) => money(budget.netPerArea[layer])),
      ...(crop.sales.sold.isZero() ? [] : [{ name: "with what is sold", cells: stages.map((stage) => money(crop.sales.withSold[stage]?.netPerArea[layer] ?? null)) }]),
    ],
    byLayer: layers.map((each) => row(layerNames[each], (budget) => money(budget.costPerArea.layers[each]))),
  };
}

/** So many of what was not planned are named; the rest are counted. */
const named = 3;

function notPlannedWords(crop: CropFigures, layer: Layer, { money, perArea }: Format): string {
  const all = notPlanned(crop, layer);
  if (all.length === 0) return "";
  const whole = sum(all.map(({ amount }) => amount)).div(crop.area);
  const first = all.slice(0, named).map(({ name, amount }) => `${name} ${money(amount.div(crop.area))}`).join(", ");
  const more = all.length > named ? ` and ${all.length - named} more, ${money(whole)} in all` : "";
  return `Not in the plan, ${perArea}: ${first}${more}.`;
}

/** The outlook rests on the harvested yield where every field is harvested. */
const harvestedOr = (stage: Stage, crop: CropFigures): Stage => (crop.final === null ? stage : "final");

/** What an acre costs before anything is done on it. */
const landKinds: ReadonlySet<Kind> = new Set<Kind>(["cash rent", "land tax", "land charge"]);

function verdict(budget: Budget, layer: Layer, unit: string, format: Format): string {
  const needed = budget.breakEvenPrice[layer];
  const cost = layerCosts[layer];
  if (needed === null) return `No price pays the ${cost}: there is no crop of your own to sell.`;
  const gap = shownMoney(budget.price).minus(shownPriceNeeded(needed));
  if (gap.isNegative()) return `The expected price is ${format.amount(gap.neg())} per ${unit} too low to pay the ${cost}.`;
  if (gap.isZero()) return `The expected price just pays the ${cost}.`;
  const kinds = kindsIn(layer).filter((kind) => budget.costPerArea.byKind.has(kind));
  if (kinds.every((kind) => landKinds.has(kind))) {
    return `${kinds.length === 0 ? "No cost is entered yet" : "Only land is entered yet"}: seed, fertilizer, crop protection, fuel and work are missing, so it cannot be said whether the expected price pays.`;
  }
  return `The expected price pays the ${cost}, with ${format.amount(gap)} per ${unit} to spare.`;
}

/** The break-evens at every yield and price that is known: prices needed, yields needed, and what an area brings. */
export type BreakEvenView = {
  readonly columns: readonly string[];
  readonly prices: readonly FigureRow[];
  readonly yields: readonly FigureRow[];
  readonly net: readonly FigureRow[];
};

export function breakEvenView({ outlook }: CropFigures, format: Format): BreakEvenView {
  const cells = (values: PerLayer<Decimal | null>, write: (value: Decimal | null) => string) => layers.map((layer) => write(values[layer]));
  const all = outlook.breakEvens;
  const firstOf = (of: "yieldOf" | "priceOf") => all.filter((each, index) => all.findIndex((other) => other[of] === each[of]) === index);
  return {
    columns: layers.map((layer) => layerNames[layer]),
    prices: firstOf("yieldOf").map((each) => ({
      name: `${each.yieldOf} ${format.yield(each.yield)}`, cells: cells(each.breakEvenPrice, format.priceNeeded),
    })),
    yields: firstOf("priceOf").map((each) => ({
      name: `${each.priceOf} ${format.money(each.price)}`, cells: cells(each.breakEvenYield, format.yieldNeeded),
    })),
    net: all.map((each) => ({ name: `${each.yieldOf}, ${each.priceOf}`, cells: cells(each.netPerArea, format.money) })),
  };
}
