/** What a change comes to, line by line, quadrant by quadrant, in all and per area. */
import { capitalRecovery } from "../capitalRecovery";
import { one, sum, zero, type Decimal } from "../numbers/decimal";
import { money, moneyPerArea, type Money, type MoneyPerArea } from "../numbers/units";
import { isCapital, priceOf, quadrants, speaksFor, type Change, type ChangeLine, type Quadrant } from "./change";

/** An amount in a year and per area; `null` where an entry that it needs is blank. */
type Amount = { readonly perYear: Money | null; readonly perArea: MoneyPerArea | null };
export type LineAmount = Amount & { readonly line: ChangeLine };
type QuadrantAmount = Amount & { readonly lines: readonly LineAmount[] };

export type NetChange = {
  readonly change: Change;
  readonly quadrants: Readonly<Record<Quadrant, QuadrantAmount>>;
  /** Added returns + reduced costs − added costs − reduced returns; `null` while a line is blank. */
  readonly net: Amount;
  /** The net change of the lines that are known: what a blank yield gain must make up for where this is below zero. */
  readonly netOfKnown: { readonly perYear: Money; readonly perArea: MoneyPerArea };
  readonly blank: readonly ChangeLine[];
};

/**
 * What a line comes to in a year: quantity × price, by area on the basis "per acre". An outlay that serves for years
 * costs its capital recovery.
 *
 * @returns `null` where its quantity or its price is not known
 */
export function amountPerYear(line: ChangeLine, change: Pick<Change, "area" | "rate">): Decimal | null {
  const price = priceOf(line);
  if (line.quantity === null || price === null) return null;
  const times = line.basis === "per acre" ? change.area : one;
  const whole = money(line.quantity.times(price).times(times));
  if (!isCapital(line)) return whole;
  return capitalRecovery(whole, money((line.salvage ?? zero).times(times)), change.rate, line.yearsKept!);
}

/** +1 for a line that speaks for the change, −1 for one against it. */
export const signOf = ({ quadrant }: ChangeLine): Decimal => (speaksFor(quadrant) ? one : one.neg());

/**
 * The net change of a change.
 *
 * @throws RangeError on an area of zero or less: the reader turns it away
 */
export function netChange(change: Change): NetChange {
  if (change.area.lte("0")) throw new RangeError("a change needs an area above zero");
  const amounts = change.lines.map((line) => ({ line, ...amount(amountPerYear(line, change), change) }));
  const known = sum(amounts.map(({ line, perYear }) => (perYear === null ? zero : perYear.times(signOf(line)))));
  const blank = amounts.filter(({ perYear }) => perYear === null).map(({ line }) => line);
  return {
    change,
    blank,
    quadrants: Object.fromEntries(
      quadrants.map((quadrant) => [
        quadrant,
        ofQuadrant(
          amounts.filter(({ line }) => line.quadrant === quadrant),
          change,
        ),
      ]),
    ) as Record<Quadrant, QuadrantAmount>,
    net: amount(blank.length === 0 ? known : null, change),
    netOfKnown: { perYear: money(known), perArea: moneyPerArea(known.div(change.area)) },
  };
}

const amount = (perYear: Decimal | null, { area }: Change): Amount => ({
  perYear: perYear === null ? null : money(perYear),
  perArea: perYear === null ? null : moneyPerArea(perYear.div(area)),
});

function ofQuadrant(lines: readonly LineAmount[], change: Change): QuadrantAmount {
  const values = lines.map(({ perYear }) => perYear);
  return { lines, ...amount(values.every((value) => value !== null) ? sum(values) : null, change) };
}
