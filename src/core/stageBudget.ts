/** From the costs of a field, or of all fields of a crop, to its figures. */
import { sum, zero, type Decimal } from "./numbers/decimal";
import {
  breakEvenPrice,
  breakEvenYield,
  costPerArea,
  costPerUnit,
  incomePerArea,
  netPerArea,
  rentAboveBase,
  type Costs,
} from "./breakEven";
import type { Cost, MovingCost } from "./cost";
import type { BreakEvens, Budget, ByKindAndLayer, PerLayer, StageFigures } from "./figures";
import { cashKinds, cashNeedKinds, countsIn, fullKinds, kinds, layers, operatingKinds, type Kind, type Layer } from "./kinds";
import { stepsOfCrop, type RentStep } from "./flexibleRent";
import { once } from "./once";
import type { Crop } from "./season";
import { tallied, weightedMean } from "./numbers/tally";
import {
  area,
  money,
  moneyPerArea,
  moneyPerUnit,
  share,
  yieldPerArea,
  type Area,
  type Money,
  type MoneyPerArea,
  type MoneyPerUnit,
  type Share,
} from "./numbers/units";

/** What a budget rests on. Costs by kind: per area, when somebody asks for them, and per unit of the operator's crop. */
export type BudgetBasis = {
  readonly area: Area;
  readonly yields: Budget["yields"];
  readonly harvested: boolean;
  readonly crop: Pick<Crop, "price" | "lowPrice">;
  readonly operatorShare: Share;
  readonly fixed: () => ReadonlyMap<Kind, MoneyPerArea>;
  readonly moving: ReadonlyMap<Kind, MoneyPerUnit>;
  /** What the buyer takes off the price of a unit; left out: nothing. */
  readonly dock?: MoneyPerUnit;
  /** Term interest that stays in the full layer, per area and per unit of the operator's crop. */
  readonly interestInFull: { readonly fixed: () => Decimal; readonly moving: Decimal };
  readonly otherIncome: MoneyPerArea;
  /** What of the rent goes by price × yield; left out: none of it. */
  readonly rent?: readonly RentStep[];
};

/** One value for each layer. */
export const perLayer = <Value>(value: (layer: Layer) => Value): PerLayer<Value> => ({
  operating: value("operating"),
  cash: value("cash"),
  full: value("full"),
  cashNeed: value("cashNeed"),
});

/**
 * The sum of each layer, from what each kind costs: each kind is added once, to the first layer that it counts in.
 *
 * @param interestInFull the term interest that does not leave the full layer
 */
function layerSums(byKind: ReadonlyMap<Kind, Decimal>, interestInFull: Decimal): PerLayer<Decimal> {
  const of = (kinds: readonly Kind[]) => sum(kinds.flatMap((kind) => byKind.get(kind) ?? []));
  const operating = of(operatingKinds);
  const cash = operating.plus(of(cashKinds));
  return {
    operating,
    cash,
    full: cash
      .minus(byKind.get("term interest") ?? zero)
      .plus(interestInFull)
      .plus(of(fullKinds)),
    cashNeed: cash.plus(of(cashNeedKinds)),
  };
}

function withLayers<Value extends Decimal>(byKind: () => ReadonlyMap<Kind, Value>, interestInFull: () => Decimal): ByKindAndLayer<Value> {
  const kinds = once(byKind);
  const sums = once(() => layerSums(kinds(), interestInFull()) as PerLayer<Value>);
  return {
    get byKind() {
      return kinds();
    },
    get layers() {
      return sums();
    },
  };
}

/**
 * Every figure of a budget from what it rests on. A season has a budget for each field and stage, of which a page shows
 * few: a figure is worked out when it is first asked for.
 */
export function budget(basis: BudgetBasis): Budget {
  const { yields, crop, operatorShare, otherIncome, dock = moneyPerUnit(zero), rent = [] } = basis;
  const used = yields.used;
  const fixed = withLayers(basis.fixed, basis.interestInFull.fixed);
  const moving = withLayers(
    () => basis.moving,
    () => basis.interestInFull.moving,
  );
  const costs = once(() =>
    perLayer((layer): Costs => ({
      fixed: fixed.layers[layer],
      moving: moving.layers[layer],
      dock,
      operatorShare,
      otherIncome,
      ...(rent.length > 0 && countsIn("cash rent", layer) && { rent }),
    })),
  );
  const costOfKind = (kind: Kind): MoneyPerArea =>
    costPerArea(
      {
        operatorShare,
        otherIncome,
        fixed: fixed.byKind.get(kind) ?? moneyPerArea(zero),
        moving: basis.moving.get(kind) ?? moneyPerUnit(zero),
        ...(kind === "cash rent" && { rent }),
      },
      used,
      crop.price,
    );
  const above = once(() => rentAboveBase({ rent }, used, crop.price));
  const isCharged = (kind: Kind): boolean =>
    fixed.byKind.has(kind) || basis.moving.has(kind) || (kind === "cash rent" && !above().isZero());
  const known = {
    costPerArea: once(() => ({
      byKind: new Map(kinds.filter(isCharged).map((kind) => [kind, costOfKind(kind)])),
      layers: perLayer((layer) => costPerArea(costs()[layer], used, crop.price)),
    })),
    interestInFull: once(() =>
      moneyPerArea(basis.interestInFull.fixed().plus(basis.interestInFull.moving.times(operatorShare).times(used))),
    ),
    costPerUnit: once(() => perLayer((layer) => costPerUnit(costs()[layer], used, crop.price))),
    breakEvenPrice: once(() => perLayer((layer) => breakEvenPrice(costs()[layer], used))),
    breakEvenYield: once(() => perLayer((layer) => breakEvenYield(costs()[layer], crop.price))),
    breakEvens: once(() => breakEvens(basis, costs())),
    incomePerArea: once(() => incomePerArea(costs()[layers[0]], used, crop.price)),
    netPerArea: once(() => perLayer((layer) => netPerArea(costs()[layer], used, crop.price))),
  };
  return {
    area: basis.area,
    yields,
    price: crop.price,
    operatorShare,
    fixed,
    moving,
    dock,
    otherIncomePerArea: otherIncome,
    rent,
    get rentAboveBase() {
      return above();
    },
    get costPerArea() {
      return known.costPerArea();
    },
    get interestInFull() {
      return known.interestInFull();
    },
    get costPerUnit() {
      return known.costPerUnit();
    },
    get breakEvenPrice() {
      return known.breakEvenPrice();
    },
    get breakEvenYield() {
      return known.breakEvenYield();
    },
    get breakEvens() {
      return known.breakEvens();
    },
    get incomePerArea() {
      return known.incomePerArea();
    },
    get netPerArea() {
      return known.netPerArea();
    },
  };
}

function breakEvens({ yields, harvested, crop }: BudgetBasis, costs: PerLayer<Costs>): readonly BreakEvens[] {
  const of: readonly (readonly [BreakEvens["yieldOf"], Budget["yields"]["proven"]])[] = [
    ["goal", yields.goal],
    [harvested ? "harvested" : "outlook", yields.outlook],
    ["proven", yields.proven],
  ];
  const at: readonly (readonly [BreakEvens["priceOf"], MoneyPerUnit | null])[] = [
    ["expected", crop.price],
    ["low", crop.lowPrice],
  ];
  return of.flatMap(([yieldOf, yieldHere]) =>
    yieldHere === null
      ? []
      : at.flatMap(([priceOf, price]) =>
          price === null
            ? []
            : [
                {
                  yieldOf,
                  yield: yieldHere,
                  priceOf,
                  price,
                  breakEvenPrice: perLayer((layer) => breakEvenPrice(costs[layer], yieldHere)),
                  breakEvenYield: perLayer((layer) => breakEvenYield(costs[layer], price)),
                  netPerArea: perLayer((layer) => netPerArea(costs[layer], yieldHere, price)),
                },
              ],
        ),
  );
}

/** What each kind costs a field in all, apart from what moves with yield. */
export function amountByKind(costs: readonly Cost[]): ReadonlyMap<Kind, Money> {
  const amounts = new Map<Kind, Money>();
  for (const { kind, amount } of costs) {
    if (!amount.isZero()) amounts.set(kind, money(amounts.get(kind)?.plus(amount) ?? amount));
  }
  return amounts;
}

/** The same per area. */
export const perArea = (amounts: ReadonlyMap<Kind, Money>, of: Area): ReadonlyMap<Kind, MoneyPerArea> =>
  new Map([...amounts].map(([kind, amount]) => [kind, moneyPerArea(amount.div(of))]));

/** What each kind that moves with yield costs per unit of the operator's crop. */
export function perUnitByKind(costs: readonly MovingCost[]): ReadonlyMap<Kind, MoneyPerUnit> {
  const byKind = new Map<Kind, MoneyPerUnit>();
  for (const { kind, perUnit } of costs) {
    if (!perUnit.isZero()) byKind.set(kind, moneyPerUnit(byKind.get(kind)?.plus(perUnit) ?? perUnit));
  }
  return byKind;
}

/**
 * The budget of a crop from those of its fields at one stage.
 *
 * Costs per area are what all fields cost over their area; yields are weighted by area; costs per unit by the operator's units of
 * each field; the operator's
 * share by the crop of each field. The proven yield is known only where every field's is.
 *
 * @throws RangeError on a crop without fields
 */
export function cropBudget(stages: readonly StageFigures[], crop: BudgetBasis["crop"], harvested: boolean): Budget {
  if (stages.length === 0) throw new RangeError("a crop without fields has no budget");
  const fields = stages.map((stage) => stage.budget);
  const areas = fields.map((field) => field.area);
  const whole = sum(areas);
  const mean = (values: readonly Decimal[], weights: readonly Decimal[]): Decimal =>
    weightedMean(values, weights.every((weight) => weight.isZero()) ? areas : weights);
  const yields = (of: "goal" | "outlook" | "used") =>
    yieldPerArea(
      mean(
        fields.map((field) => field.yields[of]),
        areas,
      ),
    );
  const proven = fields.map((field) => field.yields.proven);
  const crops = fields.map((field) => field.yields.used.times(field.area));
  const operatorCrops = crops.map((quantity, index) => quantity.times(fields[index]!.operatorShare));
  const fixedKinds = kinds.filter((kind) => stages.some((stage) => stage.amountByKind.has(kind)));
  const amounts = new Map(fixedKinds.map((kind) => [kind, money(tallied(stages.flatMap((stage) => stage.amountByKind.get(kind) ?? [])))]));
  const movingKinds = kinds.filter((kind) => fields.some((field) => field.moving.byKind.has(kind)));
  const perUnit = (kind: Kind, of: readonly StageFigures[] = stages) =>
    mean(
      stages.map((stage) => (of.includes(stage) ? stage.budget.moving.byKind.get(kind) : null) ?? zero),
      operatorCrops,
    );
  const keeping = stages.filter((stage) => !stage.chargesCapital);
  return budget({
    area: area(whole),
    crop,
    harvested,
    yields: {
      goal: yields("goal"),
      outlook: yields("outlook"),
      used: yields("used"),
      proven: proven.every((each) => each !== null) ? yieldPerArea(mean(proven, areas)) : null,
    },
    operatorShare: share(
      mean(
        fields.map((field) => field.operatorShare),
        crops,
      ),
    ),
    otherIncome: moneyPerArea(
      mean(
        fields.map((field) => field.otherIncomePerArea),
        areas,
      ),
    ),
    dock: moneyPerUnit(
      mean(
        fields.map((field) => field.dock),
        operatorCrops,
      ),
    ),
    rent: stepsOfCrop(fields.map((field) => ({ steps: field.rent, area: field.area, yield: field.yields.used }))),
    fixed: () => perArea(amounts, area(whole)),
    moving: new Map(movingKinds.map((kind) => [kind, moneyPerUnit(perUnit(kind))])),
    interestInFull: {
      fixed: () => tallied(keeping.flatMap((stage) => stage.amountByKind.get("term interest") ?? [])).div(whole),
      moving: perUnit("term interest", keeping),
    },
  });
}
