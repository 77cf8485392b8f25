/** Writes a published table down as it is printed: text for every digit, one value for a point, two for a window. */
import { Decimal } from "../decimal";
import type { Span } from "../stand/bracket";
import type { StandTable } from "../stand/standTable";
import type { StandUnit } from "../stand/standUnit";

/** An entry of an axis that has one value from its first to its last. */
export const window = (from: string, to: string): Span<string> => ({ from, to });

type Printed = Omit<StandTable, "standUnit" | "dates" | "stands" | "percent"> & {
  /** Plants per acre where nothing is said. */
  readonly standUnit?: StandUnit;
  readonly dates: readonly (string | Span<string>)[] | null;
  readonly stands: readonly (string | Span<string>)[] | null;
  readonly percent: readonly (readonly (string | null)[])[];
};

const spans = (axis: readonly (string | Span<string>)[]): readonly Span<string>[] =>
  axis.map((each) => (typeof each === "string" ? { from: each, to: each } : each));

/** A table in decimals from one in text. */
export const standTable = ({ standUnit = "plants per acre", dates, stands, percent, ...about }: Printed): StandTable => ({
  ...about, standUnit,
  dates: dates === null ? null : spans(dates),
  stands: stands === null ? null : spans(stands).map(({ from, to }) => ({ from: new Decimal(from), to: new Decimal(to) })),
  percent: percent.map((row) => row.map((cell) => (cell === null ? null : new Decimal(cell)))),
});
