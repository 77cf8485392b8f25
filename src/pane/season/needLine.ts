/** Prices or yields on one axis: what each layer needs, what is expected, and between which bounds; as positions, labels and words. */
import type { Decimal } from "../../core/numbers/decimal";
import { Decimal as Dec } from "../../core/numbers/decimal";

export type Mark = { readonly name: string; readonly value: Decimal; readonly words: string };
export type Need = Mark & { /** Whether it lies beyond what is expected. */ readonly isShort: boolean };

export type Label = {
  readonly words: string;
  readonly x: number;
  /** Row of labels, 0 next to the axis. */ readonly row: number;
  readonly isStrong: boolean;
};
export type NeedLine = {
  readonly needs: readonly { readonly x: number; readonly isShort: boolean }[];
  readonly marks: readonly { readonly x: number; readonly isMain: boolean }[];
  readonly band: { readonly from: number; readonly to: number } | null;
  readonly above: readonly Label[];
  readonly below: readonly Label[];
  readonly rowsAbove: number;
  readonly rowsBelow: number;
  /** Everything drawn, for those who cannot see it. */
  readonly says: string;
};

/** Width of the drawing and of a letter of 13 px, in its own units; a little too wide rather than labels that touch. */
export const lineWidth = 276;
const [letter, margin] = [6.5, 6];

/**
 * @param marks what is expected or known, the main one first, which alone has a label: the caption tells the others
 * @returns `null` where there is nothing to compare
 */
export function needLine(
  title: string,
  needs: readonly Need[],
  marks: readonly Mark[],
  bounds: { readonly low: Decimal; readonly high: Decimal } | null,
): NeedLine | null {
  const values = [...needs, ...marks].map(({ value }) => value).concat(bounds === null ? [] : [bounds.low, bounds.high]);
  if (needs.length === 0 || marks.length === 0) return null;
  const [least, most] = [Dec.min(...values), Dec.max(...values)];
  const span = most.minus(least);
  const x = (value: Decimal): number =>
    span.isZero()
      ? lineWidth / 2
      : margin +
        value
          .minus(least)
          .div(span)
          .times(lineWidth - 2 * margin)
          .toDecimalPlaces(1)
          .toNumber();
  const [above, below] = [
    placed(marks.slice(0, 1).map((mark) => ({ words: mark.words, x: x(mark.value), isStrong: true }))),
    placed(needs.map((need) => ({ words: need.words, x: x(need.value), isStrong: need.isShort }))),
  ];
  const rows = (labels: readonly Label[]) => Math.max(...labels.map(({ row }) => row)) + 1;
  return {
    needs: needs.map(({ value, isShort }) => ({ x: x(value), isShort })),
    marks: marks.map(({ value }, index) => ({ x: x(value), isMain: index === 0 })),
    band: bounds === null ? null : { from: x(bounds.low), to: x(bounds.high) },
    above,
    below,
    rowsAbove: rows(above),
    rowsBelow: rows(below),
    says:
      `${title}: ${marks.map(({ words }) => words).join(", ")}; needed: ` +
      `${needs.map(({ words, isShort }) => `${words}${isShort ? ", not covered" : ""}`).join(", ")}.`,
  };
}

/** Labels side by side where they fit, else a row further from the axis; the first ones given keep the nearest row. */
function placed(labels: readonly Omit<Label, "row">[]): readonly Label[] {
  const taken: { readonly from: number; readonly to: number }[][] = [];
  return labels.map((label) => {
    const half = (label.words.length * letter) / 2;
    const middle = Math.min(Math.max(label.x, half), lineWidth - half);
    const place = { from: middle - half - 3, to: middle + half + 3 };
    const free = taken.findIndex((row) => row.every(({ from, to }) => place.to <= from || place.from >= to));
    const row = free === -1 ? taken.push([]) - 1 : free;
    taken[row]!.push(place);
    return { ...label, x: middle, row };
  });
}
