/** Low, expected and high of a crop, of the grower's own figures: its yields and prices pulled apart, its costs as the outlook has them. */
import { sum, type Decimal } from "../numbers/decimal";
import { incomePerArea, netPerArea, type Costs } from "../breakEven";
import { perLayer } from "../stageBudget";
import type { Budget, CropFigures, FieldFigures, PerLayer } from "../figures";
import type { Layer } from "../kinds";
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

/** F, v, d, s and o of a layer. */
export const costsOf = ({ fixed, moving, dock, operatorShare, otherIncomePerArea }: Budget, layer: Layer): Costs => ({
  fixed: fixed.layers[layer],
  moving: moving.layers[layer],
  dock,
  operatorShare,
  otherIncome: otherIncomePerArea,
});

/**
 * Low: each field at the lowest of its goal, projected and proven yield, at the low price. Expected: the outlook at the
 * expected price. High: each field at the highest of the three, at the high price. A price that is not entered is the
 * expected one, a proven yield that is not entered is left out.
 */
export function scenarios(figures: CropFigures, { price, lowPrice, highPrice }: Crop, policy: Policy | null): readonly Scenario[] {
  const { outlook, fields } = figures;
  const at = (name: Scenario["name"], yieldHere: Yield, priceHere: MoneyPerUnit): Scenario => ({
    name,
    yield: yieldHere,
    price: priceHere,
    incomePerArea: incomePerArea(costsOf(outlook, "full"), yieldHere, priceHere),
    netPerArea: perLayer((layer) => netPerArea(costsOf(outlook, layer), yieldHere, priceHere)),
    insurance: policy === null ? null : operatorsPart(insurancePayment(policy, yieldHere), outlook.operatorShare),
  });
  return [
    at(
      "low",
      fieldByField(fields, (a, b) => a.lt(b)),
      lowPrice ?? price,
    ),
    at("expected", outlook.yields.used, price),
    at(
      "high",
      fieldByField(fields, (a, b) => a.gt(b)),
      highPrice ?? price,
    ),
  ];
}

const operatorsPart = (payment: InsurancePayment, share: Share): InsurancePayment => ({
  ...payment,
  perArea: moneyPerArea(payment.perArea.times(share)),
});

/** Area-weighted mean of the one yield of each field that beats the others. */
function fieldByField(fields: readonly FieldFigures[], beats: (a: Decimal, b: Decimal) => boolean): Yield {
  const crop = fields.map(
    ({
      outlook: {
        budget: { yields },
      },
      area,
    }) => {
      const known = [yields.goal, yields.outlook, ...(yields.proven === null ? [] : [yields.proven])];
      return known.reduce((best, each) => (beats(each, best) ? each : best)).times(area);
    },
  );
  return yieldPerArea(sum(crop).div(sum(fields.map(({ area }) => area))));
}
