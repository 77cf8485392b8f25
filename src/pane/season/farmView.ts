/** What the strip of the whole farm says: what is left over after a layer, against the plan, who falls short, and the loan at its peak. */
import { farmFigures, newestStage } from "../../core/farm";
import { layerCosts, layers, type Layer } from "../../core/kinds";
import { farmCashFlow } from "../../workbook/sheets/lender/farmCashFlow";
import type { SeasonReport } from "../../workbook/seasonReport";
import { shownMoney } from "../../workbook/shown";
import type { Format } from "../format";

export type FarmView = {
  readonly leftOver: string;
  readonly isLoss: boolean;
  /** "34,100 lower than the plan"; "as planned". */
  readonly sincePlan: string;
  readonly cost: string;
  readonly income: string;
  /** Widths in hundredths of the longer of the two. */
  readonly bar: { readonly cost: string; readonly income: string };
  /** Which crops fall short of the layer, or of which layer they first do. */
  readonly short: string;
  /** The operating loan at its peak; empty where no cash flow is known or nothing is owed. */
  readonly loan: string;
};

export function farmView(report: SeasonReport, layer: Layer, format: Format): FarmView {
  const [now, plan] = [farmFigures(report.figures, newestStage), farmFigures(report.figures, () => "plan")];
  const [left, income, cost] = [now.leftOver[layer], now.income, now.costs[layer]];
  const moved = shownMoney(left).toDecimalPlaces(0).minus(shownMoney(plan.leftOver[layer]).toDecimalPlaces(0));
  const longer = income.gt(cost) ? income : cost;
  const part = (of: typeof income) => (longer.lte("0") ? "0" : of.div(longer).times("100").toFixed(1));
  return {
    leftOver: format.whole(left),
    isLoss: left.isNegative(),
    sincePlan: moved.isZero() ? "as planned" : `${format.whole(moved.abs())} ${moved.isNegative() ? "less" : "more"} than planned`,
    cost: `${layerCosts[layer]} ${format.whole(cost)}`,
    income: `income ${format.whole(income)}`,
    bar: { cost: part(cost), income: part(income) },
    short: shortWords(now, layer, format),
    loan: loanWords(report, format),
  };
}

/** Crops short of the chosen layer with what they lack; where none is, those that are short of another. */
function shortWords({ crops }: ReturnType<typeof farmFigures>, layer: Layer, format: Format): string {
  const shortOf = (of: Layer) => crops.filter(({ leftOver }) => leftOver[of].isNegative());
  const here = shortOf(layer);
  if (here.length > 0)
    return (
      `Short of ${layerCosts[layer]}: ` +
      `${here.map(({ crop, leftOver }) => `${crop} by ${format.whole(leftOver[layer].neg())}`).join(", ")}.`
    );
  const other = layers.find((each) => each !== layer && shortOf(each).length > 0);
  if (other === undefined) return "No crop falls short of any layer.";
  return `Every crop covers its ${layerCosts[layer]}. Short of ${layerCosts[other]}: ${shortOf(other)
    .map(({ crop }) => crop)
    .join(", ")}.`;
}

function loanWords(report: SeasonReport, format: Format): string {
  const peak = farmCashFlow(report)?.peak ?? null;
  return peak === null ? "" : `The operating loan peaks in ${format.month(peak.month)} at ${format.whole(peak.balance)}.`;
}
