/** The figures of the core as the same flat list of names that `exactSeason` gives. */
import type { Decimal } from "../../src/core/numbers/decimal";
import type { Budget, ByKindAndLayer, PerLayer } from "../../src/core/figures";
import type { SeasonFigures } from "../../src/core/seasonFigures";

export type Flat = ReadonlyMap<string, Decimal | null>;

export function flatFigures({ crops, items }: SeasonFigures): Flat {
  const flat = new Map<string, Decimal | null>();
  const all = (at: string, values: Readonly<Record<string, Decimal | null>>) => {
    for (const [name, value] of Object.entries(values)) flat.set(`${at}/${name}`, value);
  };
  const layers = (at: string, values: PerLayer<Decimal | null>) => {
    all(at, values);
  };
  const kindsAndLayers = (at: string, { byKind, layers: values }: ByKindAndLayer<Decimal>) => {
    layers(at, values);
    for (const [kind, value] of byKind) flat.set(`${at}/${kind}`, value);
  };
  const budget = (at: string, of: Budget) => {
    all(at, {
      area: of.area,
      price: of.price,
      ...of.yields,
      share: of.operatorShare,
      otherIncome: of.otherIncomePerArea,
      income: of.incomePerArea,
      rentAboveBase: of.rentAboveBase,
    });
    kindsAndLayers(`${at}/fixed`, of.fixed);
    kindsAndLayers(`${at}/moving`, of.moving);
    kindsAndLayers(`${at}/costPerArea`, of.costPerArea);
    for (const name of ["costPerUnit", "breakEvenPrice", "breakEvenYield", "netPerArea"] as const) layers(`${at}/${name}`, of[name]);
    for (const each of of.breakEvens) {
      for (const name of ["breakEvenPrice", "breakEvenYield", "netPerArea"] as const)
        layers(`${at}/${each.yieldOf}/${each.priceOf}/${name}`, each[name]);
    }
  };
  for (const crop of crops) {
    const at = `crop ${crop.crop}`;
    for (const stage of ["plan", "outlook", "final"] as const) {
      const of = crop[stage];
      if (of !== null) budget(`${at}/${stage}`, of);
      for (const field of crop.fields) {
        const figures = field[stage];
        if (figures !== null) budget(`field ${field.field}/${stage}`, figures.budget);
      }
    }
    const { sold, averagePrice, unsold, priceNeeded, withSold } = crop.sales;
    all(`${at}/sales`, { sold, averagePrice, unsold });
    layers(`${at}/sales/priceNeeded`, priceNeeded);
    for (const [stage, of] of Object.entries(withSold)) {
      if (of === null) continue;
      flat.set(`${at}/sales/${stage}/income`, of.incomePerArea);
      layers(`${at}/sales/${stage}/netPerArea`, of.netPerArea);
    }
  }
  for (const { item, averagePrice, bought, used, needed, short, shortCost, left } of items) {
    all(`item ${item}`, { averagePrice, bought, used, needed, short, shortCost, left });
  }
  return flat;
}
