/** Hybrids held against a check as JSON. */
import { hybridComparisons } from "../core/hybrids/comparison";
import { sharesOfAcres } from "../core/hybrids/shareOfAcres";
import { hybridKey } from "../core/hybrids/trials";
import type { Decimal } from "../core/numbers/decimal";
import { accounts } from "../core/accounts";
import type { SeasonReport } from "./seasonReport";

type Digits = (value: Decimal | null) => string | null;

/**
 * Every hybrid of the tables Hybrids and Hybrid trials. `trials` are those in which it and the check stood (of the check, and of one
 * that never stood beside it, all of its own); yields are dry.
 */
export function hybridsJson({ season, figures }: SeasonReport, digits: Digits) {
  const shares = new Map(
    sharesOfAcres(season, accounts(season).maturing).map((each) => [`${each.crop}\n${hybridKey(each.hybrid ?? "")}`, each]),
  );
  return hybridComparisons(season, figures.items).map((each) => {
    const grown = shares.get(`${each.crop}\n${hybridKey(each.hybrid)}`);
    return {
      hybrid: each.hybrid,
      crop: each.crop,
      check: each.check?.name ?? null,
      checkChosen: each.check?.isChosen ?? null,
      trials: digits(each.trials),
      withoutCheck: each.withoutCheck,
      yield: digits(each.yield),
      moisture: digits(each.moisture),
      testWeight: digits(each.testWeight),
      yieldDifference: digits(each.yieldDifference?.mean ?? null),
      low: digits(each.yieldDifference?.low ?? null),
      high: digits(each.yieldDifference?.high ?? null),
      showsNoDifference: each.showsNone,
      netTrials: digits(each.netTrials),
      netPerAcre: digits(each.netPerArea),
      netDifference: digits(each.netDifference?.mean ?? null),
      netLow: digits(each.netDifference?.low ?? null),
      netHigh: digits(each.netDifference?.high ?? null),
      acres: digits(grown?.area ?? null),
      shareOfAcres: digits(grown?.share ?? null),
      matures: grown?.matures ?? null,
      maturesByPlan: grown?.byPlan ?? [],
    };
  });
}
