/**
 * The cash flow's year, group by group, is what the fields are charged with and the reasons for the difference, each worked out
 * on its own.
 */
import { describe, it } from "vitest";
import { sum, zero } from "../../src/core/numbers/decimal";
import { paidAndCharged } from "../../src/core/lender/paidAndCharged";
import { farmCashFlow } from "../../src/workbook/sheets/lender/farmCashFlow";
import type { Season } from "../../src/core/season";
import { reportOf } from "../support/reportOf";
import { judge, runs } from "./judge";
import { growingSeason, harvestedSeason, underFlexibleRent, withOpening } from "./randomSeason";

function faults(season: Season): readonly string[] {
  const report = reportOf(season);
  const flow = farmCashFlow(report);
  if (flow === null) return [];
  const groups = paidAndCharged(report.season, report.figures, flow);
  const unlike = groups.flatMap(({ group, charged, differences, paid }) => {
    const is = sum([charged, ...Object.values(differences).map((amount) => amount ?? zero)]);
    return is.minus(paid).abs().lt("1e-15") ? [] : [`${group}: charged ${charged}, ${JSON.stringify(differences)}, paid ${paid}`];
  });
  const named = new Set(groups.map(({ group }) => group));
  // Bills and returns may come to nothing in the year.
  const paid = (group: string) => sum(flow.months.map(({ flows }) => flows.get(group) ?? zero));
  const unnamed = flow.groups.filter(
    (group) => !named.has(group) && paid(group).abs().gt("1e-15") && !["grain sales", "older grain", "other income"].includes(group),
  );
  return [...unlike, ...unnamed.map((group) => `${group} is paid and nothing says why`)];
}

describe("what is paid in the year", () => {
  it("is what is charged and the differences that are printed, kind by kind", { timeout: 900_000 }, () => {
    judge("growing seasons, paid and charged", growingSeason, faults);
    judge("growing seasons with opening stock, paid and charged", growingSeason.map(withOpening), faults);
    judge("growing seasons, paid and charged, under flexible rent", underFlexibleRent(growingSeason), faults, runs / 2);
    judge("harvested seasons, paid and charged", harvestedSeason, faults);
    judge("harvested seasons, paid and charged, under flexible rent", underFlexibleRent(harvestedSeason), faults, runs / 2);
  });
});
