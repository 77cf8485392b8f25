/** When money is paid of which nobody has entered a date: one rule for operating interest and for the cash flow. */
import { dayBefore } from "./numbers/day";
import { Decimal, one } from "./numbers/decimal";
import { fullKinds, type Kind } from "./kinds";
import { monthOf, monthsLater } from "./lender/month";
import type { IsoDate } from "./row";
import type { Settings } from "./season";

/** What the days of money without a date rest on. */
export type PaymentYear = {
  /** The season's year, e.g. "2031". */
  readonly year: string;
  /** The day on which the operating loan is repaid. */
  readonly repaid: IsoDate;
};

/** The day on which operating money is repaid, whether interest is charged to it or not; `null` where nothing says it. */
export const repaidOn = ({ operatingInterest, repaymentDate }: Pick<Settings, "operatingInterest" | "repaymentDate">): IsoDate | null =>
  operatingInterest?.method === "by date" ? operatingInterest.repaymentDate : repaymentDate;

/** Kinds of what is put into a field and of the work in it: paid around planting. */
export const fieldKinds: ReadonlySet<Kind> = new Set<Kind>([
  "seed",
  "fertilizer",
  "crop protection",
  "fuel",
  "repairs",
  "custom work",
  "hired labour",
  "irrigation",
]);
/** Kinds that come with the harvest, out of which the loan is repaid. */
const harvestKinds: ReadonlySet<Kind> = new Set<Kind>(["drying", "haul"]);
/** Kinds that are no cash: what the grower's own machines, land and work are worth. */
const neverPaid: ReadonlySet<Kind> = new Set<Kind>(fullKinds);

const monthsInYear = ["01", "02", "03", "04", "05", "06", "07", "08", "09", "10", "11", "12"] as const;
const rentMonths = ["03", "11"] as const;

/**
 * The days on which money is paid, in equal parts: the day entered, where one is; else by its kind
 *
 *     field kinds       the day of planned planting; without one six months before the loan is repaid
 *     drying, haul      the day on which the loan is repaid
 *     cash rent         half on the first of March, half on the first of November
 *     other cash kinds  a twelfth on the first day of each month of the season's year
 *     no cash           never: no days at all
 *
 * @param entered the day of the row itself; the first day of a month where only a month is entered
 * @param plannedPlanting of the field that bears the money
 */
export function paymentDates(
  kind: Kind,
  entered: IsoDate | null,
  plannedPlanting: IsoDate | null,
  { year, repaid }: PaymentYear,
): readonly IsoDate[] {
  if (neverPaid.has(kind)) return [];
  if (entered !== null) return [entered];
  if (fieldKinds.has(kind)) return [plannedPlanting ?? sixMonthsBefore(repaid)];
  if (harvestKinds.has(kind)) return [repaid];
  return (kind === "cash rent" ? rentMonths : monthsInYear).map((month) => `${year}-${month}-01`);
}

const sixMonths = new Decimal("6");

/** The same day of the month six months earlier, or that month's last day where it is shorter. */
export function sixMonthsBefore(date: IsoDate): IsoDate {
  const month = monthsLater(monthOf(date), sixMonths.neg());
  const last = dayBefore(`${monthsLater(month, one)}-01`);
  const same = `${month}-${date.slice(8)}`;
  return same < last ? same : last;
}
