/** A table of the grower's own, in the place of a published one. */
import { failed, ok, type Result } from "../../result";
import { Decimal } from "../numbers/decimal";
import type { Source } from "../tables/source";
import { dayOfYear, type MonthDay } from "./monthDay";
import type { StandTable } from "./standTable";
import type { StandUnit } from "./standUnit";

export type OwnStandTable = {
  readonly name: string;
  readonly crop: string;
  readonly standUnit: StandUnit;
  readonly dates: readonly MonthDay[] | null;
  readonly stands: readonly Decimal[] | null;
  readonly percent: readonly (readonly (Decimal | null)[])[];
};

/** What is wrong with such a table; `where` counts rows or columns of the table's body from 1. */
export type OwnStandTableFault = {
  readonly fault: "no axis" | "dates not ascending" | "stands not ascending" | "row of another length" | "percent outside 0 to 120";
  // eslint-disable-next-line no-restricted-syntax -- a place in a table is not a quantity
  readonly where: number;
};

const most = new Decimal("120");

/** The table, or everything that keeps it from being one. */
export function ownStandTable(own: OwnStandTable, source: Source): Result<StandTable, OwnStandTableFault> {
  const { dates, stands, percent } = own;
  const faults: OwnStandTableFault[] = [];
  if (dates === null && stands === null) faults.push({ fault: "no axis", where: 1 });
  descents(dates?.map(dayOfYear) ?? []).forEach((where) => faults.push({ fault: "dates not ascending", where }));
  descents(stands ?? []).forEach((where) => faults.push({ fault: "stands not ascending", where }));
  const columns = stands?.length ?? 1;
  if (percent.length !== (dates?.length ?? 1)) faults.push({ fault: "row of another length", where: percent.length });
  percent.forEach((row, index) => {
    if (row.length !== columns) faults.push({ fault: "row of another length", where: index + 1 });
    if (row.some((cell) => cell !== null && (cell.lt("0") || cell.gt(most))))
      faults.push({ fault: "percent outside 0 to 120", where: index + 1 });
  });
  if (faults.length > 0) return failed(...faults);
  return ok({
    name: own.name,
    crop: own.crop,
    region: "as entered in this workbook",
    source,
    limits: ["Entered in this workbook."],
    standUnit: own.standUnit,
    dates: dates?.map((day) => ({ from: day, to: day })) ?? null,
    stands: stands?.map((stand) => ({ from: stand, to: stand })) ?? null,
    percent,
  });
}

/** Where a value does not exceed the one before it, counted from 1. */
// eslint-disable-next-line no-restricted-syntax -- places in a list are not quantities
const descents = (values: readonly Decimal[]): readonly number[] =>
  values.flatMap((value, index) => (index > 0 && value.lte(values[index - 1]!) ? [index + 1] : []));
