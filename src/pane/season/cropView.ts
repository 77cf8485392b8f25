/** What the card of a crop says, as plain text. */
import type { Budget, CropFigures, PerLayer, Stage } from "../../core/figures";
import { sum, type Decimal } from "../../core/numbers/decimal";
import { layerNames, layers, type Layer } from "../../core/kinds";
import { notPlanned } from "../../core/notPlanned";
import type { Format } from "../format";

/** A row of figures under stage headings. */
export type FigureRow = { readonly name: string; readonly cells: readonly string[] };

export type CropView = {
  readonly crop: string;
  /** What was done or bought without a plan, as a sentence; empty where nothing was. */
  readonly notPlanned: string;
  /** The yield and the price that the figures rest on. */
  readonly restsOn: string;
  /** The stages as they are named on screen. */
  readonly stages: readonly string[];
  readonly rows: readonly FigureRow[];
  readonly byLayer: readonly FigureRow[];
};

/** The stages that a crop has figures for, the newest last. */
export const stagesOf = (crop: Pick<CropFigures, "final">): readonly Stage[] =>
  crop.final === null ? ["plan", "outlook"] : ["plan", "outlook", "final"];

/** The stage between plan and final is told as projected. */
const stageNames: Record<Stage, string> = { plan: "plan", outlook: "projected", final: "final" };

const yieldNames: Record<Stage, string> = { plan: "yield goal", outlook: "projected yield", final: "harvested yield" };

export function cropView(crop: CropFigures, layer: Layer, format: Format): CropView {
  const stages = stagesOf(crop);
  const newest: Stage = crop.final === null ? "outlook" : "final";
  const now = crop.final ?? crop.outlook;
  const { money, priceNeeded, yieldNeeded, areaName, amount } = format;
  const budgets = [crop.plan, crop.outlook, ...(crop.final === null ? [] : [crop.final])];
  const row = (name: string, cell: (budget: Budget) => string): FigureRow => ({ name, cells: budgets.map(cell) });
  const unit = crop.yieldUnit;
  return {
    crop: crop.crop,
    notPlanned: notPlannedWords(crop, layer, format),
    restsOn:
      `at ${yieldNames[harvestedOr(newest, crop)]} ${format.yield(now.yields.used)} ${unit} per ${areaName} and expected price ` +
      `${amount(now.price)} per ${unit}`,
    stages: stages.map((stage) => stageNames[stage]),
    rows: [
      row(`Yield, ${unit} per ${areaName}`, (budget) => format.yield(budget.yields.used)),
      row(`Cost per ${areaName}`, (budget) => money(budget.costPerArea.layers[layer])),
      row(`Cost per ${unit}`, (budget) => money(budget.costPerUnit[layer])),
      row(`Break-even price, per ${unit}`, (budget) => priceNeeded(budget.breakEvenPrice[layer])),
      row(`Expected price, per ${unit}`, (budget) => money(budget.price)),
      row(`Break-even yield, ${unit} per ${areaName}`, (budget) => yieldNeeded(budget.breakEvenYield[layer])),
      row(`Net return per ${areaName}${crop.sales.sold.isZero() ? "" : ", at the price entered"}`, (budget) =>
        money(budget.netPerArea[layer]),
      ),
      ...(crop.sales.sold.isZero()
        ? []
        : [{ name: "with what is sold", cells: stages.map((stage) => money(crop.sales.withSold[stage]?.netPerArea[layer] ?? null)) }]),
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
  const first = all
    .slice(0, named)
    .map(({ name, amount }) => `${name} ${money(amount.div(crop.area))}`)
    .join(", ");
  const more = all.length > named ? ` and ${all.length - named} more, ${money(whole)} in all` : "";
  return `Not in the plan, ${perArea}: ${first}${more}.`;
}

/** The outlook rests on the harvested yield where every field is harvested. */
const harvestedOr = (stage: Stage, crop: CropFigures): Stage => (crop.final === null ? stage : "final");

/** The break-evens at every yield and price that is known: prices needed, yields needed, and what an area brings. */
export type BreakEvenView = {
  readonly columns: readonly string[];
  readonly prices: readonly FigureRow[];
  readonly yields: readonly FigureRow[];
  readonly net: readonly FigureRow[];
};

const yieldOfNames = { goal: "goal", outlook: "projected", proven: "proven", harvested: "harvested" } as const;

export function breakEvenView({ outlook }: CropFigures, format: Format): BreakEvenView {
  const cells = (values: PerLayer<Decimal | null>, write: (value: Decimal | null) => string) => layers.map((layer) => write(values[layer]));
  const all = outlook.breakEvens;
  const firstOf = (of: "yieldOf" | "priceOf") => all.filter((each, index) => all.findIndex((other) => other[of] === each[of]) === index);
  return {
    columns: layers.map((layer) => layerNames[layer]),
    prices: firstOf("yieldOf").map((each) => ({
      name: `${yieldOfNames[each.yieldOf]} ${format.yield(each.yield)}`,
      cells: cells(each.breakEvenPrice, format.priceNeeded),
    })),
    yields: firstOf("priceOf").map((each) => ({
      name: `${each.priceOf} ${format.money(each.price)}`,
      cells: cells(each.breakEvenYield, format.yieldNeeded),
    })),
    net: all.map((each) => ({ name: `${yieldOfNames[each.yieldOf]}, ${each.priceOf}`, cells: cells(each.netPerArea, format.money) })),
  };
}
