/** Where the figures of a chart lie on its drawing, as shares of its height. For the eye alone: the figures stand in the cells. */
import type { SheetChart } from "../host/embedded";

type ChartPoint = { readonly category: number; readonly share: number };
export type ChartDrawing = {
  /** The share of the height at which nothing lies. */
  readonly zero: number;
  readonly ticks: readonly { readonly share: number; readonly words: string }[];
  /** For each series its points, in runs that blank cells part. */
  readonly lines: readonly (readonly (readonly ChartPoint[])[])[];
};

const mostTicks = 6;
const hair = 1e-6;

/** `null` for a chart of another kind, or without a figure. Bars begin at nothing; so do lines, unless all of them lie far from it. */
export function chartDrawing({ kind, series }: SheetChart): ChartDrawing | null {
  const figures = series.flatMap(({ values }) => values.filter((value) => value !== null));
  if (kind === "other" || figures.length === 0) return null;
  const [lowest, highest] = [Math.min(...figures), Math.max(...figures)];
  const isFar = kind === "line" && lowest > 0 && highest - lowest < lowest / 2;
  const [from, to] = isFar ? [lowest, highest] : [Math.min(0, lowest), Math.max(0, highest)];
  const step = stepFor(to - from === 0 ? Math.max(1, Math.abs(to)) : to - from);
  // A hair's breadth aside, in which 4.1 would be 81.99 steps of 0.05.
  const [below, above] = [Math.floor(from / step + hair), Math.ceil(to / step - hair)];
  const [bottom, top] = [below * step, Math.max(above, below + 1) * step];
  const share = (value: number) => (value - bottom) / (top - bottom);
  return {
    zero: Math.min(1, Math.max(0, share(0))),
    ticks: Array.from({ length: Math.round((top - bottom) / step) + 1 }, (_, index) => bottom + index * step).map((value) => ({
      share: share(value),
      words: words(value, step),
    })),
    lines: series.map(({ values }) => runs(values, share)),
  };
}

/** A round step, 1, 2 or 5 times a power of ten, of which the span has at most six. */
function stepFor(span: number): number {
  const power = 10 ** Math.floor(Math.log10(span / mostTicks));
  return power * ([1, 2, 5, 10].find((times) => span / (power * times) <= mostTicks) ?? 10);
}

function words(value: number, step: number): string {
  const places = Math.max(0, -Math.floor(Math.log10(step)));
  return value.toLocaleString("en-US", { maximumFractionDigits: places, minimumFractionDigits: places });
}

function runs(values: readonly (number | null)[], share: (value: number) => number): readonly (readonly ChartPoint[])[] {
  const all: ChartPoint[][] = [[]];
  values.forEach((value, category) => {
    if (value === null) all.push([]);
    else all.at(-1)!.push({ category, share: share(value) });
  });
  return all.filter((run) => run.length > 0);
}
