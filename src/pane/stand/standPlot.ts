/** Where the marks of the drawing of a round of counts stand: fractions of its width, as text for the drawing. */
import { Decimal, zero } from "../../core/numbers/decimal";
import { standAt } from "../../core/stand/standCount";
import type { StandSummary } from "../../core/stand/standSummary";
import type { AreaUnit } from "../../core/numbers/units";

export type StandPlot = {
  /** Places counted; dots that would hide each other are stacked, `level` counts from 0. */
  readonly dots: readonly { readonly x: string; readonly level: number }[];
  readonly mean: string;
  readonly interval: { readonly low: string; readonly high: string } | null;
  readonly target: string | null;
  readonly ticks: readonly { readonly x: string; readonly stand: Decimal }[];
  /** The highest stack. */
  readonly levels: number;
};

/** Dots nearer than this to each other, in hundredths of the width, are stacked. */
const dotWidth = new Decimal("3");
const steps = ["1000", "2000", "5000", "10000", "20000", "50000", "100000", "200000", "500000"].map((step) => new Decimal(step));
const mostTicks = 5;

/** The places of a round on a line of stands, with their interval and the target; positions in hundredths of the width. */
export function standPlot({ counts, mean, interval }: StandSummary, target: Decimal | null, unit: AreaUnit): StandPlot {
  const stands = counts.map((count) => standAt(count, unit));
  const shown: readonly Decimal[] = [
    ...stands,
    mean,
    ...(interval === null ? [] : [interval.low, interval.high]),
    ...(target === null ? [] : [target]),
  ];
  const step =
    steps.find((each) =>
      Decimal.max(...shown)
        .minus(Decimal.min(...shown))
        .div(each)
        .lte(mostTicks - 1),
    ) ?? steps[steps.length - 1]!;
  const first = Decimal.min(...shown)
    .div(step)
    .floor()
    .times(step);
  const last = Decimal.max(
    first.plus(step),
    Decimal.max(...shown)
      .div(step)
      .ceil()
      .times(step),
  );
  const at = (stand: Decimal) => stand.minus(first).div(last.minus(first)).times("100");
  const dots: { readonly at: Decimal; readonly level: number }[] = [];
  for (const stand of [...stands].sort((a, b) => a.comparedTo(b))) {
    const x = at(stand);
    const taken = new Set(dots.filter((dot) => x.minus(dot.at).lt(dotWidth)).map(({ level }) => level));
    let level = 0;
    while (taken.has(level)) level += 1;
    dots.push({ at: x, level });
  }
  const ticks: Decimal[] = [];
  for (let tick: Decimal = first; tick.lte(last); tick = tick.plus(step)) ticks.push(tick);
  return {
    dots: dots.map((dot) => ({ x: position(dot.at), level: dot.level })),
    mean: position(at(mean)),
    interval: interval === null ? null : { low: position(at(interval.low)), high: position(at(interval.high)) },
    target: target === null ? null : position(at(target)),
    ticks: ticks.map((stand) => ({ x: position(at(stand)), stand })),
    levels: Math.max(1, ...dots.map(({ level }) => level + 1)),
  };
}

const position = (value: Decimal): string => (value.isZero() ? zero : value).toFixed(2);
