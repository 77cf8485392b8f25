/** From the costs of a field, or of all fields of a crop, to its figures. */
import { sum, zero, type Decimal } from "./decimal";
import { breakEvenPrice, breakEvenYield, costPerArea, costPerUnit, incomePerArea, netPerArea, type Costs } from "./breakEven";
import type { BreakEvens, Budget, ByKindAndLayer, Charge, PerLayer } from "./figures";
import { cashKinds, cashNeedKinds, fullKinds, kinds, layers, operatingKinds, type Kind, type Layer } from "./kinds";
import type { Crop } from "./season";
import { area, moneyPerArea, moneyPerUnit, share, yieldPerArea, type Area, type MoneyPerArea, type MoneyPerUnit, type Share } from "./units";

/** What a budget rests on. Costs by kind: per area, and per unit of the operator's crop. */
export type BudgetBasis = {
  readonly area: Area;
  readonly yields: Budget["yields"];
  readonly harvested: boolean;
  readonly crop: Pick<Crop, "price" | "lowPrice">;
  readonly operatorShare: Share;
  readonly fixed: ReadonlyMap<Kind, MoneyPerArea>;
  readonly moving: ReadonlyMap<Kind, MoneyPerUnit>;
  readonly otherIncome: MoneyPerArea;
};

/** One value for each layer. */
export const perLayer = <Value>(value: (layer: Layer) => Value): PerLayer<Value> =>
  ({ operating: value("operating"), cash: value("cash"), full: value("full"), cashNeed: value("cashNeed") });

/** The sum of each layer, from what each kind costs: each kind is added once, to the first layer that it counts in. */
export function layerSums(byKind: ReadonlyMap<Kind, Decimal>): PerLayer<Decimal> {
  const of = (kinds: readonly Kind[]) => sum(kinds.flatMap((kind) => byKind.get(kind) ?? []));
  const operating = of(operatingKinds);
  const cash = operating.plus(of(cashKinds));
  return { operating, cash, full: cash.minus(byKind.get("term interest") ?? zero).plus(of(fullKinds)), cashNeed: cash.plus(of(cashNeedKinds)) };
}

const withLayers = <Value extends Decimal>(byKind: ReadonlyMap<Kind, Value>): ByKindAndLayer<Value> =>
  ({ byKind, layers: layerSums(byKind) as PerLayer<Value> });

/** Every figure of a budget from what it rests on. */
export function budget(basis: BudgetBasis): Budget {
  const { yields, crop, operatorShare, otherIncome } = basis;
  const fixed = withLayers(basis.fixed);
  const moving = withLayers(basis.moving);
  const costs = perLayer((layer): Costs => ({ fixed: fixed.layers[layer], moving: moving.layers[layer], operatorShare, otherIncome }));
  const used = yields.used;
  const costOfKind = (kind: Kind): MoneyPerArea => costPerArea({
    operatorShare, otherIncome, fixed: basis.fixed.get(kind) ?? moneyPerArea(zero), moving: basis.moving.get(kind) ?? moneyPerUnit(zero),
  }, used);
  let known: readonly BreakEvens[] | null = null;
  const present = kinds.filter((kind) => basis.fixed.has(kind) || basis.moving.has(kind));
  return {
    area: basis.area, yields, price: crop.price, operatorShare, fixed, moving, otherIncomePerArea: otherIncome,
    costPerArea: {
      byKind: new Map(present.map((kind) => [kind, costOfKind(kind)])),
      layers: perLayer((layer) => costPerArea(costs[layer], used)),
    },
    costPerUnit: perLayer((layer) => costPerUnit(costs[layer], used)),
    breakEvenPrice: perLayer((layer) => breakEvenPrice(costs[layer], used)),
    breakEvenYield: perLayer((layer) => breakEvenYield(costs[layer], crop.price)),
    // Two dozen figures for each layer, which few pages show: worked out when one does.
    get breakEvens() { return (known ??= breakEvens(basis, costs)); },
    incomePerArea: incomePerArea(costs[layers[0]], used, crop.price),
    netPerArea: perLayer((layer) => netPerArea(costs[layer], used, crop.price)),
  };
}

function breakEvens({ yields, harvested, crop }: BudgetBasis, costs: PerLayer<Costs>): readonly BreakEvens[] {
  const of: readonly (readonly [BreakEvens["yieldOf"], Budget["yields"]["proven"]])[] = [
    ["goal", yields.goal], [harvested ? "harvested" : "outlook", yields.outlook], ["proven", yields.proven],
  ];
  const at: readonly (readonly [BreakEvens["priceOf"], MoneyPerUnit | null])[] = [["expected", crop.price], ["low", crop.lowPrice]];
  return of.flatMap(([yieldOf, yieldHere]) => yieldHere === null ? [] : at.flatMap(([priceOf, price]) => price === null ? [] : [{
    yieldOf, yield: yieldHere, priceOf, price,
    breakEvenPrice: perLayer((layer) => breakEvenPrice(costs[layer], yieldHere)),
    breakEvenYield: perLayer((layer) => breakEvenYield(costs[layer], price)),
    netPerArea: perLayer((layer) => netPerArea(costs[layer], yieldHere, price)),
  }]));
}

/** What each kind costs per area and per unit, from the charges on a field. */
export function chargesByKind(charges: readonly Charge[], fieldArea: Area): Pick<BudgetBasis, "fixed" | "moving"> {
  const fixed = new Map<Kind, MoneyPerArea>();
  const moving = new Map<Kind, MoneyPerUnit>();
  for (const { kind, amount, perUnit } of charges) {
    if (!amount.isZero()) fixed.set(kind, moneyPerArea((fixed.get(kind) ?? zero).plus(amount)));
    if (!perUnit.isZero()) moving.set(kind, moneyPerUnit((moving.get(kind) ?? zero).plus(perUnit)));
  }
  for (const [kind, amount] of fixed) fixed.set(kind, moneyPerArea(amount.div(fieldArea)));
  return { fixed, moving };
}

/**
 * The budget of a crop from those of its fields at one stage.
 *
 * Costs per area and yields are weighted by area; costs per unit by the operator's units of each field; the operator's
 * share by the crop of each field. The proven yield is known only where every field's is.
 *
 * @throws RangeError on a crop without fields
 */
export function cropBudget(fields: readonly Budget[], crop: BudgetBasis["crop"], harvested: boolean): Budget {
  if (fields.length === 0) throw new RangeError("a crop without fields has no budget");
  const areas = fields.map((field) => field.area);
  const whole = sum(areas);
  const mean = (values: readonly Decimal[], weights: readonly Decimal[]): Decimal => {
    const weight = sum(weights);
    return weight.isZero() ? mean(values, areas) : sum(values.map((value, index) => value.times(weights[index]!))).div(weight);
  };
  const yields = (of: "goal" | "outlook" | "used") => yieldPerArea(mean(fields.map((field) => field.yields[of]), areas));
  const proven = fields.map((field) => field.yields.proven);
  const crops = fields.map((field) => field.yields.used.times(field.area));
  const operatorCrops = crops.map((quantity, index) => quantity.times(fields[index]!.operatorShare));
  const kindsOf = (of: "fixed" | "moving") => kinds.filter((kind) => fields.some((field) => field[of].byKind.has(kind)));
  const meanOfKind = (of: "fixed" | "moving", kind: Kind, weights: readonly Decimal[]) =>
    mean(fields.map((field) => field[of].byKind.get(kind) ?? zero), weights);
  return budget({
    area: area(whole), crop, harvested,
    yields: {
      goal: yields("goal"), outlook: yields("outlook"), used: yields("used"),
      proven: proven.every((each) => each !== null) ? yieldPerArea(mean(proven, areas)) : null,
    },
    operatorShare: share(mean(fields.map((field) => field.operatorShare), crops)),
    otherIncome: moneyPerArea(mean(fields.map((field) => field.otherIncomePerArea), areas)),
    fixed: new Map(kindsOf("fixed").map((kind) => [kind, moneyPerArea(meanOfKind("fixed", kind, areas))])),
    moving: new Map(kindsOf("moving").map((kind) => [kind, moneyPerUnit(meanOfKind("moving", kind, operatorCrops))])),
  });
}
