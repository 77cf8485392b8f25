/** The entries of a change that can be tried at other values, and solved for. */
import type { Decimal } from "../numbers/decimal";
import { area, money, moneyPerUnit, years } from "../numbers/units";
import { isGrain, type Change, type ChangeLine } from "./change";

/**
 * One entry: of a line of the change (that very line, not a copy of it), the price of grain in all lines that sell or
 * keep grain, or the area.
 */
export type ChangeEntry =
  | { readonly of: "quantity" | "price" | "years kept" | "salvage"; readonly line: ChangeLine }
  | { readonly of: "grain price" }
  | { readonly of: "area" };

export type Setting = { readonly entry: ChangeEntry; readonly value: Decimal };

/** The change with some of its entries at other values. The lines that are set are new; the others stay what they are. */
export function withEntries(change: Change, settings: readonly Setting[]): Change {
  const set = (line: ChangeLine): ChangeLine =>
    settings.reduce((so, { entry, value }) => {
      if (entry.of === "area") return so;
      if (entry.of === "grain price") return isGrain(so.price) ? { ...so, price: { ...so.price, price: moneyPerUnit(value) } } : so;
      if (entry.line !== line) return so;
      switch (entry.of) {
        case "quantity":
          return { ...so, quantity: value };
        case "price":
          return { ...so, price: money(value) };
        case "years kept":
          return { ...so, yearsKept: years(value) };
        case "salvage":
          return { ...so, salvage: money(value) };
      }
    }, line);
  const land = settings.filter(({ entry }) => entry.of === "area").at(-1)?.value;
  return { ...change, area: land === undefined ? change.area : area(land), lines: change.lines.map(set) };
}
