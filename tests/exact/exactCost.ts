import type { Kind } from "../../src/core/kinds";
import type { IsoDate } from "../../src/core/row";
import type { Field, Season } from "../../src/core/season";
import { divided, fraction, total, zero, type Fraction } from "./fraction";

/** A cost of one field: money on the whole of it, or money per unit of the operator's crop, which then moves with yield. */
export type Cost = {
  readonly field: string;
  readonly kind: Kind;
  readonly amount: Fraction;
  readonly perUnit: Fraction;
  /** Money that an operating loan may carry, and that money times the days until it is repaid. */
  readonly loan: { readonly amount: Fraction; readonly amountDays: Fraction };
  /** Whether money is paid for it. */
  readonly cash: boolean;
  /** Done; billed; still to come; still to come and bought already. */
  readonly progress: "done" | "bill" | "left" | "bought";
  /** The operator's fraction of what is paid, where the landlord repays the rest; all of it where nothing is said. */
  readonly ours?: Fraction;
  /** When its parts are paid; one part without a day in its own field where nothing is said. */
  readonly due?: readonly { readonly on: IsoDate | null; readonly field: string; readonly weight: Fraction }[];
};

/** Nothing that an operating loan carries. */
export const noLoan: Cost["loan"] = { amount: zero, amountDays: zero };

const kindsOfTheField: readonly string[] = [
  "seed",
  "fertilizer",
  "crop protection",
  "fuel",
  "repairs",
  "custom work",
  "hired labour",
  "irrigation",
];

/** Days from a payment to the repayment of the operating loan; none after it. */
export function daysOut({ settings: { operatingInterest } }: Season, paid: IsoDate): Fraction {
  if (operatingInterest?.method !== "by date") return zero;
  const days = (Date.parse(operatingInterest.repaymentDate) - Date.parse(paid)) / 86_400_000;
  return fraction(BigInt(Math.max(days, 0)));
}

/**
 * The same for a row that may have no day. What goes into a field is then paid at its planned planting, or six months
 * before the loan is repaid; drying and haul are paid with it; the rest a twelfth on the first of each month.
 */
export function daysOutOf(season: Season, kind: Kind, day: IsoDate | null, { plannedPlanting }: Pick<Field, "plannedPlanting">): Fraction {
  const { operatingInterest, seasonYear } = season.settings;
  if (operatingInterest?.method !== "by date") return zero;
  const repaid = operatingInterest.repaymentDate;
  if (day !== null) return daysOut(season, day);
  if (kindsOfTheField.includes(kind)) return daysOut(season, plannedPlanting ?? sixMonthsEarlier(repaid));
  if (kind === "drying" || kind === "haul") return zero;
  const months = Array.from({ length: 12 }, (_, month) =>
    new Date(Date.UTC(Number(seasonYear ?? repaid.slice(0, 4)), month, 1)).toISOString().slice(0, 10),
  );
  return divided(total(months.map((first) => daysOut(season, first))), fraction(12n));
}

function sixMonthsEarlier(day: IsoDate): IsoDate {
  const [year, month, inMonth] = day.split("-").map(Number) as [number, number, number];
  const daysInMonth = new Date(Date.UTC(year, month - 6, 0)).getUTCDate();
  return new Date(Date.UTC(year, month - 7, Math.min(inMonth, daysInMonth))).toISOString().slice(0, 10);
}
