/** What a machine is worth after some years, and what its repairs come to. */
import { larger, zero, type Decimal } from "../numbers/decimal";
import { remainingValueFactors, type RemainingValueClass } from "../tables/remainingValue";
import { repairFactors, type RepairClass } from "../tables/repairFactors";
import { money, moneyPerYear, type Hours, type Money, type MoneyPerYear, type Years } from "../numbers/units";
import { remembered } from "../numbers/remembered";
import type { MachinePart } from "./machine";

const power = remembered((base: Decimal, exponent: Decimal) => base.pow(exponent));

/**
 * Part of the list price that is left: (C1 − C2·√age − C3·√hours a year)², and nothing once the bracket is used up.
 *
 * @see ../tables/remainingValue for the coefficients and where they come from
 */
export function remainingValue(of: RemainingValueClass, age: Years, hoursAYear: Hours): Decimal {
  const { c1, c2, c3 } = remainingValueFactors[of];
  const root = c1.minus(c2.times(age.sqrt())).minus(c3.times(hoursAYear.sqrt()));
  return larger(root, zero).pow("2");
}

/** Repairs from new to so many hours, as a fraction of the list price: RF1 × (hours ÷ 1000)^RF2. */
export function accumulatedRepairs(of: RepairClass, atHours: Hours): Decimal {
  const { rf1, rf2 } = repairFactors[of];
  return rf1.times(power(atHours.div("1000"), rf2));
}

/** What a part is worth when it is sold or traded. By class it counts on the list price, even where less was paid. */
export function salvageValue({ salvage, listPrice, age, yearsKept }: MachinePart, hoursAYear: Hours): Money {
  if (salvage === null) return money(zero);
  if ("stated" in salvage) return salvage.stated;
  return money(listPrice.times(remainingValue(salvage.by, age.plus(yearsKept) as Years, hoursAYear)));
}

/** Repairs in a mean year of those for which it is kept; an older machine starts higher on the curve. */
export function repairsPerYear({ repairClass, listPrice, age, yearsKept }: MachinePart, hoursAYear: Hours): MoneyPerYear {
  if (repairClass === null) return moneyPerYear(zero);
  const upTo = (atAge: Decimal) => accumulatedRepairs(repairClass, hoursAYear.times(atAge) as Hours);
  return moneyPerYear(listPrice.times(upTo(age.plus(yearsKept)).minus(upTo(age))).div(yearsKept));
}
