/** What a printed figure may have been before it was rounded to print, and what follows from that for what is worked out of it. */
import { Decimal } from "../../src/core/numbers/decimal";

export type Range = { readonly from: Decimal; readonly to: Decimal };

const plain = (printed: string): string => printed.replaceAll(",", "");
export const decimalsOf = (printed: string): number => plain(printed).split(".")[1]?.length ?? 0;

/** Half a unit of the last digit that is printed. */
const halfUnit = (printed: string): Decimal => new Decimal(10).pow(-decimalsOf(printed)).div("2");

/** All that rounds to the figure. */
export const rangeOfPrint = (printed: string): Range => ({
  from: new Decimal(plain(printed)).minus(halfUnit(printed)),
  to: new Decimal(plain(printed)).plus(halfUnit(printed)),
});

/**
 * What a formula can come to over all that its printed entries may have been. The formula rises or falls with each entry, all the way,
 * so that its ends are at the corners.
 */
export function rangeOver(entries: readonly string[], formula: (...given: readonly Decimal[]) => Decimal): Range {
  const corners = entries.reduce<readonly (readonly Decimal[])[]>(
    (known, entry) => known.flatMap((corner) => Object.values(rangeOfPrint(entry)).map((end) => [...corner, end])),
    [[]],
  );
  const all = corners.map((corner) => formula(...corner));
  return { from: Decimal.min(...all), to: Decimal.max(...all) };
}
