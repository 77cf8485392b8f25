/** The months of the cash flow against exact fractions, to 25 digits. */
import { describe, it } from "vitest";
import { zero as none } from "../../src/core/numbers/decimal";
import type { Season } from "../../src/core/season";
import { farmCashFlow } from "../../src/workbook/sheets/lender/farmCashFlow";
import { reportOf } from "../support/reportOf";
import { exactCashFlow } from "./exactCashFlow";
import { agree, zero } from "./fraction";
import { judge, runs } from "./judge";
import { growingSeason, harvestedSeason, underFlexibleRent, withOpening } from "./randomSeason";

function faults(season: Season): readonly string[] {
  if (season.settings.seasonYear === null) return [];
  const flow = farmCashFlow(reportOf(season))!;
  const exact = exactCashFlow(season);
  const [is, wanted] = [flow.months.map(({ month }) => month), exact.map(({ month }) => month)].map((months) => months.join());
  if (is !== wanted) return [`months ${is} instead of ${wanted}`];
  return exact.flatMap(({ month, flows, interest, loan, cash }, index) => {
    const of = flow.months[index]!;
    const groups = [...new Set([...flows.keys(), ...of.flows.keys()])]
      .filter((group) => !agree(of.flows.get(group) ?? none, flows.get(group) ?? zero))
      .map((group) => `${month} ${group}: ${of.flows.get(group)}`);
    return [
      ...groups,
      ...(
        [
          ["interest", of.interest, interest],
          ["loan", of.loan, loan],
          ["cash", of.cash, cash],
        ] as const
      )
        .filter(([, actual, of]) => !agree(actual, of))
        .map(([name, actual]) => `${month} ${name}: ${actual}`),
    ];
  });
}

describe("the cash flow", () => {
  it("has the months of exact fractions to 25 digits", { timeout: 900_000 }, () => {
    judge("growing seasons, cash flow against exact fractions", growingSeason, faults);
    judge("growing seasons with opening stock, cash flow against exact fractions", growingSeason.map(withOpening), faults);
    judge("growing seasons, cash flow against exact fractions, under flexible rent", underFlexibleRent(growingSeason), faults, runs / 2);
    judge("harvested seasons, cash flow against exact fractions", harvestedSeason, faults);
    judge(
      "harvested seasons, cash flow against exact fractions, under flexible rent",
      underFlexibleRent(harvestedSeason),
      faults,
      runs / 2,
    );
  });
});
