/** What the planted date does to a yield, by the table that stands for corn, read again from its printed digits. */
import printed from "../../shared/published/stand-tables.json";
import type { IsoDate } from "../../src/core/row";
import type { Field, Season } from "../../src/core/season";
import { compare, divided, fraction, minus, one, plus, read, times, type Fraction } from "./fraction";

const table = printed.tables.find(({ name }) => name === "Corn, central Corn Belt (Purdue 2012)")!;
const dates = table.dates as readonly string[];
const stands = table.stands as readonly string[];
const percent = table.percent as readonly (readonly string[])[];

/** Days from the first of April, which is all that the table needs. */
const aprilDay = (date: string): Fraction => {
  const [month, day] = date.split("-").slice(-2).map(Number) as [number, number];
  return fraction(BigInt({ 4: 0, 5: 30, 6: 61 }[month]! + day));
};

/** Yield at the real date against the planned one, the stand at its target in both; one where the table is not asked, or says nothing. */
export function byPlanting({ crops, settings }: Season, { crop, planted, plannedPlanting, targetStand }: Field): Fraction {
  const isCorn = crops.some(({ name }) => name === crop && name === "Corn");
  if (!isCorn || planted === null || targetStand === null) return one;
  // The table counts plants by the acre, of 0.40468564224 ha.
  const stand = times(read(targetStand), settings.areaUnit === "ac" ? one : read("0.40468564224"));
  const [real, planned] = [planted, plannedPlanting ?? planted].map((date) => percentAt(date, stand));
  return real === null || planned === null ? one : divided(real!, planned!);
}

/** Straight lines between four cells; `null` outside. */
export function percentAt(date: IsoDate, stand: Fraction): Fraction | null {
  const month = date.slice(5, 7);
  if (month < "04" || month > "06") return null;
  const [across, down] = [
    between(dates.map(aprilDay), aprilDay(date)),
    between(
      stands.map((each) => read(each)),
      stand,
    ),
  ];
  if (across === null || down === null) return null;
  const row = (index: number) =>
    plus(times(minus(one, down.part), read(percent[index]![down.from]!)), times(down.part, read(percent[index]![down.from + 1]!)));
  return plus(times(minus(one, across.part), row(across.from)), times(across.part, row(across.from + 1)));
}

/** The step of an axis that a value lies in, and how far along. */
function between(axis: readonly Fraction[], value: Fraction): { readonly from: number; readonly part: Fraction } | null {
  const from = axis.findIndex(
    (start, index) => index < axis.length - 1 && compare(value, start) >= 0n && compare(value, axis[index + 1]!) <= 0n,
  );
  return from < 0 ? null : { from, part: divided(minus(value, axis[from]!), minus(axis[from + 1]!, axis[from]!)) };
}
