/** A bad, an average and a good year of a crop: its yields and prices pulled apart, its costs as the outlook has them. */
import { sum, type Decimal } from "../decimal";
import { incomePerArea, netPerArea, type Costs } from "../breakEven";
import { perLayer } from "../budget";
import type { Budget, CropFigures, FieldFigures, PerLayer } from "../figures";
import type { Layer } from "../kinds";
import type { Crop } from "../season";
import { moneyPerArea, yieldPerArea, type MoneyPerArea, type MoneyPerUnit, type Yield } from "../units";
import { indemnity, type Policy } from "./guarantee";

export type Scenario = {
  readonly name: "worst" | "average" | "best";
  readonly yield: Yield;
  readonly price: MoneyPerUnit;
  readonly incomePerArea: MoneyPerArea;
  readonly netPerArea: PerLayer<MoneyPerArea>;
  /** What the policy pays the operator per area; `null` where the crop has none. It is not in the net. */
  readonly insurancePerArea: MoneyPerArea | null;
};

/** F, v, s and o of a layer. */
export const costsOf = ({ fixed, moving, operatorShare, otherIncomePerArea }: Budget, layer: Layer): Costs =>
  ({ fixed: fixed.layers[layer], moving: moving.layers[layer], operatorShare, otherIncome: otherIncomePerArea });

/**
 * Worst: each field at the lowest of its goal, outlook and proven yield, at the low price. Average: the outlook at the
 * expected price. Best: each field at the highest of the three, at the high price. A price that is not entered is the
 * expected one, a proven yield that is not entered is left out.
 */
export function scenarios(figures: CropFigures, { price, lowPrice, highPrice }: Crop, policy: Policy | null): readonly Scenario[] {
  const { outlook, fields } = figures;
  const at = (name: Scenario["name"], yieldHere: Yield, priceHere: MoneyPerUnit): Scenario => ({
    name, yield: yieldHere, price: priceHere,
    incomePerArea: incomePerArea(costsOf(outlook, "full"), yieldHere, priceHere),
    netPerArea: perLayer((layer) => netPerArea(costsOf(outlook, layer), yieldHere, priceHere)),
    insurancePerArea: policy === null ? null : moneyPerArea(indemnity(policy, yieldHere, priceHere).times(outlook.operatorShare)),
  });
  return [
    at("worst", fieldByField(fields, (a, b) => a.lt(b)), lowPrice ?? price),
    at("average", outlook.yields.used, price),
    at("best", fieldByField(fields, (a, b) => a.gt(b)), highPrice ?? price),
  ];
}

/** Area-weighted mean of the one yield of each field that beats the others. */
function fieldByField(fields: readonly FieldFigures[], beats: (a: Decimal, b: Decimal) => boolean): Yield {
  const crop = fields.map(({ outlook: { budget: { yields } }, area }) => {
    const known = [yields.goal, yields.outlook, ...(yields.proven === null ? [] : [yields.proven])];
    return known.reduce((best, each) => (beats(each, best) ? each : best)).times(area);
  });
  return yieldPerArea(sum(crop).div(sum(fields.map(({ area }) => area))));
}
