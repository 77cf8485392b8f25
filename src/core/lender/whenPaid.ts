/** When money is paid whose day may not be entered. */
import type { Kind } from "../kinds";
import { paymentDates, repaidOn } from "../paymentDates";
import type { IsoDate } from "../row";
import type { Field, Season } from "../season";
import { money } from "../numbers/units";
import type { Flow } from "./cashFlow";
import { monthOf, type Month } from "./month";

/** A flow in the months in which it is paid: on the day entered, else as money of its kind without a date is. */
export type When = (
  flow: Omit<Flow, "month">,
  kind: Kind,
  entered: IsoDate | null,
  field: Pick<Field, "plannedPlanting"> | null,
) => readonly Flow[];

/** @param grainSold the month that stands for the repayment where no day of it is entered */
export function whenPaid({ settings }: Season, grainSold: Month): When {
  const year = { year: settings.seasonYear ?? grainSold.slice(0, 4), repaid: repaidOn(settings) ?? `${grainSold}-01` };
  return (flow, kind, entered, field) => {
    const days = entered === null ? paymentDates(kind, null, field?.plannedPlanting ?? null, year) : [entered];
    // Everybody knows when rent is due.
    const isUndated = entered === null && kind !== "cash rent";
    return days.map((day) => ({
      ...flow,
      ...(isUndated ? { isUndated } : {}),
      month: monthOf(day),
      amount: days.length === 1 ? flow.amount : money(flow.amount.div(String(days.length))),
    }));
  };
}
