/**
 * Relative yield by planting date and stand, as published. Inside a table it is read by straight lines between its
 * entries, in date and in stand; outside, nothing is said, and the reason comes back as a value.
 */
import { hundred, one, sum, type Decimal } from "../numbers/decimal";
import { failed, ok, type Result } from "../../result";
import type { IsoDate } from "../row";
import type { Source } from "../tables/source";
import { relativeYield, type AreaUnit, type PlantsPerArea, type RelativeYield } from "../numbers/units";
import { bracket, type Bracket, type Span } from "./bracket";
import { dayOfYear, monthDayOf, type MonthDay } from "./monthDay";
import { standIn, type StandUnit } from "./standUnit";

/**
 * A published table. An entry of an axis is a point (`from` = `to`) or a window that has one value all through, such as
 * "28,000 to 32,000 plants". An axis that the source does not have is `null`: such a table says nothing of it.
 */
export type StandTable = {
  readonly name: string;
  readonly crop: string;
  readonly region: string;
  readonly source: Source;
  /** What a reader of its figures must know, in whole sentences. */
  readonly limits: readonly string[];
  readonly standUnit: StandUnit;
  /** Ascending. */
  readonly dates: readonly Span<MonthDay>[] | null;
  /** Ascending. */
  readonly stands: readonly Span<Decimal>[] | null;
  /** Percent of the best yield, a row for each date and a column for each stand; `null` where the source prints nothing. */
  readonly percent: readonly (readonly (Decimal | null)[])[];
};

/** The tables that were published, and those of them that stand for their crop, one a crop, where the grower names none. */
export type PublishedStandTables = { readonly tables: readonly StandTable[]; readonly usual: readonly StandTable[] };

/** Why a table gives no answer. `from` and `to` are its limits, as text, in the units of the table. */
export type StandRefusal = {
  readonly reason: "date outside" | "stand outside" | "date missing" | "stand missing" | "row width missing" | "not printed";
  readonly table: string;
  readonly asked: string;
  readonly from: string;
  readonly to: string;
};

/** A cell of the table and its part in the answer; the parts add up to one. */
export type CellUsed = {
  readonly date: Span<MonthDay> | null;
  readonly stand: Span<Decimal> | null;
  readonly percent: Decimal;
  readonly part: Decimal;
};

export type RelativeYieldAt = { readonly table: StandTable; readonly relativeYield: RelativeYield; readonly cells: readonly CellUsed[] };

/** A planting date and a stand. `rowWidth` (inches, or centimetres with hectares) matters only to tables per length of row. */
export type DateAndStand = {
  readonly date: IsoDate | MonthDay | null;
  readonly stand: PlantsPerArea | null;
  readonly rowWidth: Decimal | null;
  readonly areaUnit: AreaUnit;
};

const whole: Bracket = [{ index: 0, part: one }];

/** Yield relative to the best of the table, by straight lines between the cells around the date and the stand. */
export function relativeYieldAt(
  table: StandTable,
  { date, stand, rowWidth, areaUnit }: DateAndStand,
): Result<RelativeYieldAt, StandRefusal> {
  const refuse = (reason: StandRefusal["reason"], asked: string, from = "", to = "") =>
    failed({ reason, table: table.name, asked, from, to });
  let dates = whole;
  if (table.dates !== null) {
    if (date === null) return refuse("date missing", "");
    const found = bracket(
      table.dates.map(({ from, to }) => ({ from: dayOfYear(from), to: dayOfYear(to) })),
      dayOfYear(date),
    );
    if (found === null) return refuse("date outside", date, table.dates[0]!.from, table.dates[table.dates.length - 1]!.to);
    dates = found;
  }
  let stands = whole;
  if (table.stands !== null) {
    if (stand === null) return refuse("stand missing", "");
    const asked = standIn(table.standUnit, stand, areaUnit, rowWidth);
    if (asked === null) return refuse("row width missing", stand.toFixed(0));
    const found = bracket(table.stands, asked);
    if (found === null)
      return refuse(
        "stand outside",
        shownStand(asked),
        table.stands[0]!.from.toString(),
        table.stands[table.stands.length - 1]!.to.toString(),
      );
    stands = found;
  }
  const cells: CellUsed[] = [];
  for (const onDate of dates) {
    for (const onStand of stands) {
      const span = { date: table.dates?.[onDate.index] ?? null, stand: table.stands?.[onStand.index] ?? null };
      const percent = table.percent[onDate.index]?.[onStand.index] ?? null;
      if (percent === null) return refuse("not printed", `${span.date?.from ?? ""} ${span.stand?.from.toString() ?? ""}`.trim());
      cells.push({ ...span, percent, part: onDate.part.times(onStand.part) });
    }
  }
  return ok({ table, relativeYield: relativeYield(sum(cells.map(({ percent, part }) => percent.times(part))).div(hundred)), cells });
}

const shownStand = (stand: Decimal): string => stand.toSignificantDigits(6).toString();

/** The same table for a place whose season runs so many days later; `name`, `region` and the new limit say that it is a shift. */
export function shiftedTable(
  table: StandTable,
  days: Decimal,
  as: { readonly name: string; readonly region: string; readonly limit: string },
): StandTable {
  const later = (day: MonthDay) => monthDayOf(dayOfYear(day).plus(days));
  return {
    ...table,
    name: as.name,
    region: as.region,
    limits: [as.limit, ...table.limits],
    dates: table.dates?.map(({ from, to }) => ({ from: later(from), to: later(to) })) ?? null,
  };
}
