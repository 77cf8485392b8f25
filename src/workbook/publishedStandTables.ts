/** The published tables of yield by date and stand, in decimals, from the data that the product and its tests share. */
import printed from "../../shared/published/stand-tables.json";
import { Decimal } from "../core/numbers/decimal";
import type { Span } from "../core/stand/bracket";
import { shiftedTable, type PublishedStandTables, type StandTable } from "../core/stand/standTable";
import { standUnits } from "../core/stand/standUnit";

/** A table as it is written down: text for every digit, one value for a point of an axis, two for a window. */
type Printed = Omit<StandTable, "standUnit" | "dates" | "stands" | "percent"> & {
  readonly standUnit: string;
  readonly dates: readonly (string | Span<string>)[] | null;
  readonly stands: readonly (string | Span<string>)[] | null;
  readonly percent: readonly (readonly (string | null)[])[];
};

const spans = (axis: readonly (string | Span<string>)[] | null): readonly Span<string>[] | null =>
  axis?.map((each) => (typeof each === "string" ? { from: each, to: each } : each)) ?? null;

/** One that must be there: data that names what it does not hold is a fault of ours. */
function among<Of>(all: readonly Of[], is: (each: Of) => boolean, what: string): Of {
  const found = all.find(is);
  if (found === undefined) throw new RangeError(`shared/published/stand-tables.json: ${what} is none of ours`);
  return found;
}

const inDecimals = ({ name, crop, region, source, limits, standUnit, dates, stands, percent }: Printed): StandTable => ({
  name,
  crop,
  region,
  source,
  limits,
  dates: spans(dates),
  standUnit: among(standUnits, (unit) => unit === standUnit, standUnit),
  stands: spans(stands)?.map(({ from, to }) => ({ from: new Decimal(from), to: new Decimal(to) })) ?? null,
  percent: percent.map((row) => row.map((cell) => (cell === null ? null : new Decimal(cell)))),
});

const asPrinted = printed.tables.map(inDecimals);
const called = (name: string): StandTable => among(asPrinted, (table) => table.name === name, name);

/** All of them, those that are another one moved to a later season last, and which stands for its crop unless the grower chooses. */
export const publishedStandTables: PublishedStandTables = {
  tables: [...asPrinted, ...printed.shifted.tables.map(({ shiftOf, days, ...as }) => shiftedTable(called(shiftOf), new Decimal(days), as))],
  usual: printed.usual.map(called),
};

/** The published table of that name, case and outer spaces aside; `null` where there is none. */
export const publishedStandTable = (name: string): StandTable | null =>
  publishedStandTables.tables.find((table) => table.name.toLowerCase() === name.trim().toLowerCase()) ?? null;
