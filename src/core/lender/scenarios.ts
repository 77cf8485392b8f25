/** Low, expected and high of a crop, of the grower's own figures: its yields and prices pulled apart, its costs as the outlook has them. */
import { sum, type Decimal } from "../numbers/decimal";
import { incomePerArea, netPerArea, type Costs } from "../breakEven";
import { stepsOfCrop } from "../flexibleRent";
import { perLayer } from "../stageBudget";
import type { Budget, CropFigures, FieldFigures, PerLayer } from "../figures";
import { countsIn, type Layer } from "../kinds";
import type { Crop } from "../season";
import { moneyPerArea, yieldPerArea, type MoneyPerArea, type MoneyPerUnit, type Share, type Yield } from "../numbers/units";
import { insurancePayment, type InsurancePayment, type Policy } from "./guarantee";

export type Scenario = {
  readonly name: "low" | "expected" | "high";
  readonly yield: Yield;
  readonly price: MoneyPerUnit;
  readonly incomePerArea: MoneyPerArea;
  readonly netPerArea: PerLayer<MoneyPerArea>;
  /**
   * What the policy pays the operator, whose share of the crop it insures, per area; `null` where the crop has none. It is not in
   * the net.
   */
  readonly insurance: InsurancePayment | null;
};

/** F, v, d, s, o and R of a layer. */
export const costsOf = (
  { fixed, moving, dock, operatorShare, otherIncomePerArea, rent: ofBudget }: Budget,
  layer: Layer,
  rent = ofBudget,
): Costs => ({
  fixed: fixed.layers[layer],
  moving: moving.layers[layer],
  dock,
  operatorShare,
  otherIncome: otherIncomePerArea,
  ...(rent.length > 0 && countsIn("cash rent", layer) && { rent }),
});

/**
 * Low: each field at the lowest of its goal, projected and proven yield, at the low price. Expected: the outlook at the
 * expected price. High: each field at the highest of the three, at the high price. A flexible rent goes by the yield of its own field in
 * each. A price that is not entered is the
 * expected one, a proven yield that is not entered is left out.
 */
export function scenarios(figures: CropFigures, { price, lowPrice, highPrice }: Crop, policy: Policy | null): readonly Scenario[] {
  const { outlook, fields } = figures;
  const at = (name: Scenario["name"], yieldHere: Yield, priceHere: MoneyPerUnit, rent = outlook.rent): Scenario => {
    const costs = (layer: Layer): Costs => costsOf(outlook, layer, rent);
    return {
      name,
      yield: yieldHere,
      price: priceHere,
      incomePerArea: incomePerArea(costs("full"), yieldHere, priceHere),
      netPerArea: perLayer((layer) => netPerArea(costs(layer), yieldHere, priceHere)),
      insurance: policy === null ? null : operatorsPart(insurancePayment(policy, yieldHere), outlook.operatorShare),
    };
  };
  const pulled = (name: "low" | "high", priceHere: MoneyPerUnit | null, beats: (a: Decimal, b: Decimal) => boolean): Scenario => {
    const yields = fieldByField(fields, beats);
    const rented = fields.map(({ outlook: { budget }, area }, index) => ({ steps: budget.rent, area, yield: yields[index]! }));
    return at(name, meanYield(fields, yields), priceHere ?? price, stepsOfCrop(rented));
  };
  return [
    pulled("low", lowPrice, (a, b) => a.lt(b)),
    at("expected", outlook.yields.used, price),
    pulled("high", highPrice, (a, b) => a.gt(b)),
  ];
}

const operatorsPart = (payment: InsurancePayment, share: Share): InsurancePayment => ({
  ...payment,
  perArea: moneyPerArea(payment.perArea.times(share)),
});

/** The one yield of each field that beats the others. */
const fieldByField = (fields: readonly FieldFigures[], beats: (a: Decimal, b: Decimal) => boolean): readonly Yield[] =>
  fields.map(({ outlook: { budget } }) => {
    const { goal, outlook, proven } = budget.yields;
    const known = [goal, outlook, ...(proven === null ? [] : [proven])];
    return known.reduce((best, each) => (beats(each, best) ? each : best));
  });

/** The mean of the yields by area. */
const meanYield = (fields: readonly FieldFigures[], yields: readonly Yield[]): Yield =>
  yieldPerArea(sum(yields.map((each, index) => each.times(fields[index]!.area))).div(sum(fields.map(({ area }) => area))));
