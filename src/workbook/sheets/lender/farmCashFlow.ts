/** The farm's cash flow of a report, without the sheet that prints it: Season opens with its loan peak. */
import { sum, zero } from "../../../core/numbers/decimal";
import { cashFlow, type CashFlow } from "../../../core/lender/cashFlow";
import { monthOf, monthsBetween, monthsOfSeason, type Month } from "../../../core/lender/month";
import { operatingRate } from "../../../core/lender/operatingRate";
import { seasonFlows } from "../../../core/lender/seasonFlows";
import { repaidOn } from "../../../core/paymentDates";
import { money } from "../../../core/numbers/units";
import type { SeasonReport } from "../../seasonReport";

/**
 * The month in which grain that is not sold yet is counted: that of the repayment date, else November of the season; `null`: of
 * no known year.
 */
export function grainMonth({ season: { settings } }: SeasonReport): Month | null {
  const { seasonYear } = settings;
  const repaid = repaidOn(settings);
  if (repaid !== null) return monthOf(repaid);
  return seasonYear === null ? null : `${seasonYear}-11`;
}

/**
 * The whole farm's cash flow over all months in which anything moves, January to December of the season at least.
 * What is dated in no month that can be of the season, which is an entry to fix, stands in the nearest that can.
 *
 * @returns `null` as long as nothing tells the year of the season: the setting is asked for
 */
export function farmCashFlow(report: SeasonReport): CashFlow | null {
  const { season, figures } = report;
  const { seasonYear } = season.settings;
  const sold = grainMonth(report);
  if (seasonYear === null || sold === null) return null;
  const loans = season.loans;
  const { first, last } = monthsOfSeason(seasonYear);
  const within = (month: Month | null): Month | null => (month === null ? null : month < first ? first : month > last ? last : month);
  const flows = seasonFlows(season, figures, loans, sold).map((flow) => ({ ...flow, month: within(flow.month) }));
  // Payments of term loans run on for years; the page ends with the season, or with the last grain.
  const known = flows.filter((flow) => flow.group !== "term loans").flatMap((flow) => (flow.month === null ? [] : [flow.month]));
  const sorted = [`${seasonYear}-01`, `${seasonYear}-12`, ...known].sort();
  const opening = sum(loans.filter(({ kind }) => kind === "operating").map(({ balance }) => balance));
  const rate = operatingRate(season.settings, loans);
  return cashFlow(flows, monthsBetween(sorted[0]!, sorted.at(-1)!), { opening: money(opening), rate }, money(zero));
}

/** What stands where a cash flow would, as long as there is none. */
export const noCashFlow = "No cash flow yet: enter Season year in the table Season.";
