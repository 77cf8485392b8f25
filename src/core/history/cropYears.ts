/** What each crop came to in each past year, all fields together, by area. */
import { grouped } from "../grouped";
import { layers, type Layer } from "../kinds";
import { type Decimal, one, sum } from "../numbers/decimal";
import {
  area,
  moneyPerArea,
  moneyPerUnit,
  yieldPerArea,
  type Area,
  type MoneyPerArea,
  type MoneyPerUnit,
  type Yield,
} from "../numbers/units";
import type { PerLayer } from "../figures";
import type { PastField } from "./pastField";

/** A figure is `null` where one of the fields does not have it entered: a mean of the others would pass for all of them. */
export type CropYear = {
  readonly season: string;
  readonly crop: string;
  readonly area: Area;
  readonly goal: Yield | null;
  readonly yield: Yield | null;
  readonly costs: PerLayer<MoneyPerArea | null>;
  /** Mean price by what was harvested. */
  readonly price: MoneyPerUnit | null;
  /** Left of an area after full cost. */
  readonly net: MoneyPerArea | null;
  /** The price at which nothing would have been left after the costs of a layer; `null` of a lost crop too. */
  readonly priceNeeded: PerLayer<MoneyPerUnit | null>;
  /** Full cost as it was planned. */
  readonly planned: MoneyPerArea | null;
  readonly rows: readonly PastField[];
};

/** Every crop of every year, the newest year first and the crops of a year by name. */
export function cropYears(past: readonly PastField[]): readonly CropYear[] {
  const groups = grouped(past, ({ season, crop }) => `${season}\n${crop}`);
  return [...groups.values()].map(cropYear).sort((a, b) => b.season.localeCompare(a.season) || a.crop.localeCompare(b.crop));
}

function cropYear(rows: readonly PastField[]): CropYear {
  const { season, crop } = rows[0]!;
  const all = sum(rows.map((row) => row.area));
  const byArea = (of: (row: PastField) => Decimal | null): Decimal | null => mean(rows, of, (row) => row.area);
  const harvested = byArea((row) => row.yield);
  const perLayer = <Value>(of: (layer: Layer) => Value) => Object.fromEntries(layers.map((layer) => [layer, of(layer)])) as PerLayer<Value>;
  const costs = perLayer((layer) =>
    branded(
      moneyPerArea,
      byArea((row) => row.costs[layer]),
    ),
  );
  const net = branded(
    moneyPerArea,
    byArea((row) => row.net),
  );
  const price =
    harvested === null || harvested.isZero()
      ? null
      : branded(
          moneyPerUnit,
          mean(
            rows,
            (row) => row.price,
            (row) => row.area.times(row.yield!).times(row.operatorShare),
          ),
        );
  /** Of the operator's crop, per area. */
  const ours = byArea((row) => row.yield?.times(row.operatorShare) ?? null);
  return {
    season,
    crop,
    area: area(all),
    goal: branded(
      yieldPerArea,
      byArea((row) => row.goal),
    ),
    yield: branded(yieldPerArea, harvested),
    costs,
    price,
    net,
    // What is left after a layer is what is left after full cost and the difference of the two costs.
    priceNeeded: perLayer((layer) =>
      price === null || net === null || ours === null || ours.isZero() || costs.full === null || costs[layer] === null
        ? null
        : moneyPerUnit(price.minus(net.plus(costs.full).minus(costs[layer]).div(ours))),
    ),
    planned: branded(
      moneyPerArea,
      byArea((row) => row.planned),
    ),
    rows,
  };
}

/** A weighted mean; `null` where a row that weighs anything lacks the figure, and where none weighs anything. */
function mean(rows: readonly PastField[], of: (row: PastField) => Decimal | null, weight: (row: PastField) => Decimal): Decimal | null {
  const weighed = rows.map((row) => ({ value: of(row), weight: weight(row) })).filter((each) => !each.weight.isZero());
  const products = weighed.flatMap(({ value, weight: by }) => (value === null ? [] : [value.times(by)]));
  if (products.length < weighed.length || weighed.length === 0) return null;
  return weighed.length === 1 ? weighed[0]!.value!.times(one) : sum(products).div(sum(weighed.map((each) => each.weight)));
}

const branded = <Value extends Decimal>(unit: (value: Decimal) => Value, value: Decimal | null): Value | null =>
  value === null ? null : unit(value);
