/** The figures of a budget, worked out again from the definition of the product, as a flat list of names and fractions. */
import type { BreakEvens } from "../../src/core/figures";
import { above, leastToPay, type Rent } from "./exactRent";
import { compare, divided, isZero, minus, plus, times, total, zero, type Fraction } from "./fraction";

/** A figure by its place, such as `plan/netPerArea/cash`; `null` where there is no answer. */
export type Exact = Map<string, Fraction | null>;

const operating = [
  "seed",
  "fertilizer",
  "crop protection",
  "fuel",
  "repairs",
  "custom work",
  "hired labour",
  "drying",
  "haul",
  "crop insurance",
  "supplies",
  "irrigation",
  "other operating",
  "operating interest",
];
const rentAndTax = ["cash rent", "land tax", "overhead"];

/**
 * What each layer adds up: the operating costs, what else is paid, every cost once with all capital at a charge (and the
 * term interest where no capital is), what the household needs.
 */
const layerKinds: Readonly<Record<string, readonly string[]>> = {
  operating,
  cash: [...operating, ...rentAndTax, "term interest"],
  full: [...operating, ...rentAndTax, "machine ownership", "land charge", "unpaid labour", "management"],
  cashNeed: [...operating, ...rentAndTax, "term interest", "term principal", "family living", "income tax"],
};

/** What a budget rests on. `fixed` is money per area (F) and `moving` money per unit of the operator's crop (v), by kind. */
export type Basis = {
  readonly area: Fraction;
  readonly goal: Fraction;
  readonly outlook: Fraction;
  readonly proven: Fraction | null;
  readonly used: Fraction;
  readonly harvested: boolean;
  readonly price: Fraction;
  readonly lowPrice: Fraction | null;
  readonly share: Fraction;
  readonly otherIncome: Fraction;
  readonly fixed: ReadonlyMap<string, Fraction>;
  readonly moving: ReadonlyMap<string, Fraction>;
  /** Term interest of fields without a charge for capital, per area and per unit: it stays in the full layer. */
  readonly kept: { readonly fixed: Fraction; readonly moving: Fraction };
  /** The rents that go by price and yield. */
  readonly rents: readonly Rent[];
};

/** The rents of a layer: all but the operating one pay them. */
export const rentsIn = ({ rents }: Pick<Basis, "rents">, layer: string): readonly Rent[] =>
  layerKinds[layer]!.includes("cash rent") ? rents : [];

const sumOf = (layer: string, of: "fixed" | "moving", basis: Basis): Fraction =>
  plus(total(layerKinds[layer]!.flatMap((kind) => basis[of].get(kind) ?? [])), layer === "full" ? basis.kept[of] : zero);

/** Cost per area of a layer at the yield that the budget rests on, and the price entered. */
export const costOf = (basis: Basis, layer: string): Fraction =>
  plus(costBeforeRent(basis, layer), above(rentsIn(basis, layer), times(basis.price, basis.used)));
/** The same without what is paid above a base rent. */
export const costBeforeRent = (basis: Basis, layer: string): Fraction =>
  plus(sumOf(layer, "fixed", basis), times(sumOf(layer, "moving", basis), basis.share, basis.used));

export const layerNames: readonly string[] = Object.keys(layerKinds);

/** Adds the figures of a budget under `at`. */
export function addBudget(exact: Exact, at: string, basis: Basis): void {
  const { share, otherIncome, used, price } = basis;
  for (const name of ["area", "price", "goal", "outlook", "proven", "used", "share", "otherIncome"] as const)
    exact.set(`${at}/${name}`, basis[name]);
  const rentAbove = above(basis.rents, times(price, used));
  for (const kind of new Set([...basis.fixed.keys(), ...basis.moving.keys()])) {
    const [fixed, moving] = [basis.fixed.get(kind) ?? zero, basis.moving.get(kind) ?? zero];
    exact.set(`${at}/fixed/${kind}`, fixed);
    exact.set(`${at}/moving/${kind}`, moving);
    exact.set(`${at}/costPerArea/${kind}`, plus(fixed, plus(times(moving, share, used), kind === "cash rent" ? rentAbove : zero)));
  }
  exact.set(`${at}/rentAboveBase`, rentAbove);
  exact.set(`${at}/income`, plus(times(price, share, used), otherIncome));
  for (const layer of layerNames) {
    const [fixed, moving] = [sumOf(layer, "fixed", basis), sumOf(layer, "moving", basis)];
    exact.set(`${at}/fixed/${layer}`, fixed);
    exact.set(`${at}/moving/${layer}`, moving);
    const units = times(share, used);
    const rents = rentsIn(basis, layer);
    const cost = plus(fixed, plus(times(moving, units), above(rents, times(price, used))));
    exact.set(`${at}/costPerArea/${layer}`, cost);
    exact.set(`${at}/costPerUnit/${layer}`, isZero(units) ? null : divided(cost, units));
    addBreakEvens(exact, at, layer, used, price, { fixed, moving, share, otherIncome, rents });
    for (const [yieldOf, here] of yieldsOf(basis)) {
      if (here === null) continue;
      for (const [priceOf, there] of [
        ["expected", price],
        ["low", basis.lowPrice],
      ] as const) {
        if (there !== null)
          addBreakEvens(exact, `${at}/${yieldOf}/${priceOf}`, layer, here, there, { fixed, moving, share, otherIncome, rents });
      }
    }
  }
}

const yieldsOf = (basis: Basis): readonly (readonly [BreakEvens["yieldOf"], Fraction | null])[] => [
  ["goal", basis.goal],
  [basis.harvested ? "harvested" : "outlook", basis.outlook],
  ["proven", basis.proven],
];

type Line = {
  readonly fixed: Fraction;
  readonly moving: Fraction;
  readonly share: Fraction;
  readonly otherIncome: Fraction;
  readonly rents: readonly Rent[];
};

function addBreakEvens(
  exact: Exact,
  at: string,
  layer: string,
  yieldHere: Fraction,
  price: Fraction,
  { fixed, moving, share, otherIncome, rents }: Line,
): void {
  const units = times(share, yieldHere);
  const toPay = minus(fixed, otherIncome);
  const perUnit = times(minus(price, moving), share);
  const priceNeeded = isZero(units) ? null : leastToPay(units, yieldHere, rents, plus(toPay, times(moving, units)));
  exact.set(`${at}/breakEvenPrice/${layer}`, priceNeeded);
  exact.set(`${at}/breakEvenYield/${layer}`, compare(perUnit, zero) > 0n ? leastToPay(perUnit, price, rents, toPay) : null);
  const rent = above(rents, times(price, yieldHere));
  exact.set(`${at}/netPerArea/${layer}`, minus(minus(times(minus(price, moving), units), toPay), rent));
}
