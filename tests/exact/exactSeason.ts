/**
 * All figures of a season in exact fractions, worked out again from the definition of the product and not from its code,
 * for seasons without machines and stand counts, whose formulas have no exact fractions.
 */
import type { Stage } from "../../src/core/figures";
import type { Crop, Season } from "../../src/core/season";
import { addBudget, costBeforeRent, costOf, layerNames, rentsIn, type Basis, type Exact } from "./exactBudget";
import { chargedAt, costsAt } from "./exactCosts";
import { areaOf, isHarvested, outlookYield, shareOf, yieldAt } from "./exactFields";
import { hasCapitalCharge } from "./exactLoans";
import { itemAccount, itemFigures, type ItemAccount } from "./exactItems";
import { leastToPay, rentsOf, rentsOfCrop } from "./exactRent";
import { compare, divided, isZero, minus, plus, read, times, total, zero, type Fraction } from "./fraction";

const stages = ["plan", "outlook", "final"] as const;

export function exactSeason(season: Season): Exact {
  const exact: Exact = new Map();
  const accounts = season.items.map((item) => itemAccount(season, item));
  for (const stage of stages) {
    const bases = fieldBases(season, accounts, stage);
    for (const [name, basis] of bases) {
      if (stage !== "final" || basis.harvested) addBudget(exact, `field ${name}/${stage}`, basis);
    }
    for (const crop of season.crops) {
      const fields = season.fields.filter((field) => field.crop === crop.name).map((field) => bases.get(field.name)!);
      if (fields.length === 0) continue;
      const basis = cropBasis(fields, crop);
      if (stage !== "final" || basis.harvested) addBudget(exact, `crop ${crop.name}/${stage}`, basis);
      if (stage === "outlook") addSales(exact, season, crop, basis);
      if (stage !== "final" || basis.harvested) addWithSold(exact, season, crop, basis, stage);
    }
  }
  const { unused } = chargedAt(season, accounts, "outlook");
  for (const account of accounts) {
    for (const [name, figure] of Object.entries(itemFigures(account, unused.get(account.item.name)?.quantity ?? zero)))
      exact.set(`item ${account.item.name}/${name}`, figure);
  }
  return exact;
}

function fieldBases(season: Season, accounts: readonly ItemAccount[], stage: Stage): ReadonlyMap<string, Basis> {
  const costs = costsAt(season, accounts, stage);
  return new Map(
    season.fields.map((field) => {
      const crop = season.crops.find(({ name }) => name === field.crop)!;
      const fixed = new Map<string, Fraction>();
      const moving = new Map<string, Fraction>();
      for (const { kind, amount, perUnit } of costs.filter((cost) => cost.field === field.name)) {
        fixed.set(kind, plus(fixed.get(kind) ?? zero, divided(amount, areaOf(field))));
        moving.set(kind, plus(moving.get(kind) ?? zero, perUnit));
      }
      return [
        field.name,
        {
          area: areaOf(field),
          goal: read(field.yieldGoal),
          outlook: outlookYield(season, field),
          used: yieldAt(season, field, stage),
          proven: field.provenYield === null ? null : read(field.provenYield),
          harvested: isHarvested(season, field),
          ...pricesOf(crop),
          share: shareOf(field),
          otherIncome: read(crop.otherIncomePerArea),
          fixed,
          moving,
          kept: hasCapitalCharge(season, field)
            ? { fixed: zero, moving: zero }
            : { fixed: fixed.get("term interest") ?? zero, moving: moving.get("term interest") ?? zero },
          rents: rentsOf(field),
        },
      ];
    }),
  );
}

const pricesOf = (crop: Crop) => ({ price: read(crop.price), lowPrice: crop.lowPrice === null ? null : read(crop.lowPrice) });

/** Per-area figures weighted by area, the share by each field's crop, costs per unit by the operator's units. */
function cropBasis(fields: readonly Basis[], crop: Crop): Basis {
  const areas = fields.map(({ area }) => area);
  const mean = (values: readonly Fraction[], weights: readonly Fraction[]): Fraction => {
    const whole = total(weights);
    return isZero(whole) ? mean(values, areas) : divided(total(values.map((value, index) => times(value, weights[index]!))), whole);
  };
  const overAreas = (value: (field: Basis) => Fraction): Fraction => mean(fields.map(value), areas);
  const crops = fields.map(({ used, area }) => times(used, area));
  const units = fields.map(({ used, area, share }) => times(share, used, area));
  const kinds = new Set(fields.flatMap(({ fixed, moving }) => [...fixed.keys(), ...moving.keys()]));
  return {
    area: total(areas),
    goal: overAreas(({ goal }) => goal),
    outlook: overAreas(({ outlook }) => outlook),
    used: overAreas(({ used }) => used),
    proven: fields.every(({ proven }) => proven !== null) ? overAreas(({ proven }) => proven!) : null,
    harvested: fields.every(({ harvested }) => harvested),
    ...pricesOf(crop),
    share: mean(
      fields.map(({ share }) => share),
      crops,
    ),
    otherIncome: overAreas(({ otherIncome }) => otherIncome),
    fixed: new Map([...kinds].map((kind) => [kind, overAreas(({ fixed }) => fixed.get(kind) ?? zero)])),
    moving: new Map(
      [...kinds].map((kind) => [
        kind,
        mean(
          fields.map(({ moving }) => moving.get(kind) ?? zero),
          units,
        ),
      ]),
    ),
    kept: {
      fixed: overAreas(({ kept }) => kept.fixed),
      moving: mean(
        fields.map(({ kept }) => kept.moving),
        units,
      ),
    },
    rents: rentsOfCrop(fields),
  };
}

/** Sales of the grain of this season. */
const salesOf = (season: Season, crop: Crop) =>
  season.sales.filter(
    (sale) => sale.crop === crop.name && [null, sale.cropYear ?? season.settings.seasonYear].includes(season.settings.seasonYear),
  );

/** What is sold at its own price, the rest at the price entered, less the cost. */
function addWithSold(exact: Exact, season: Season, crop: Crop, basis: Basis, stage: Stage): void {
  const at = `crop ${crop.name}/sales/${stage}`;
  const sales = salesOf(season, crop);
  const left = minus(times(basis.share, basis.used, basis.area), total(sales.map(({ quantity }) => read(quantity))));
  const sold = total(sales.map(({ quantity, price }) => times(read(quantity), read(price))));
  // Nothing but the price entered speaks where nothing is sold; a crop that is sold twice over leaves nothing at that price.
  const rest = compare(left, zero) > 0n ? times(left, basis.price) : zero;
  const income = plus(divided(plus(sold, rest), basis.area), basis.otherIncome);
  exact.set(`${at}/income`, income);
  for (const layer of layerNames) exact.set(`${at}/netPerArea/${layer}`, minus(income, costOf(basis, layer)));
}

/** What is sold of a crop and the price that the rest must bring. */
function addSales(exact: Exact, season: Season, crop: Crop, outlook: Basis): void {
  const sales = salesOf(season, crop);
  const sold = total(sales.map(({ quantity }) => read(quantity)));
  const received = total(sales.map(({ quantity, price }) => times(read(quantity), read(price))));
  const rest = minus(times(outlook.share, outlook.used, outlook.area), sold);
  const at = `crop ${crop.name}/sales`;
  exact.set(`${at}/sold`, sold);
  exact.set(`${at}/averagePrice`, isZero(sold) ? null : divided(received, sold));
  exact.set(`${at}/unsold`, rest);
  for (const layer of layerNames) {
    // Per area; the rent goes by the price that is looked for, on all that grows.
    const toPay = minus(minus(costBeforeRent(outlook, layer), outlook.otherIncome), divided(received, outlook.area));
    const needed = compare(rest, zero) > 0n ? leastToPay(divided(rest, outlook.area), outlook.used, rentsIn(outlook, layer), toPay) : null;
    exact.set(`${at}/priceNeeded/${layer}`, needed);
  }
}
