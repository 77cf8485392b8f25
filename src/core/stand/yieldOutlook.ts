/** From a stand and a planting date to the yield that may be looked for. */
import { failed, ok, type Result } from "../../result";
import { hundred, one, zero, type Decimal } from "../numbers/decimal";
import type { IsoDate } from "../row";
import { yieldPerArea, type Yield } from "../numbers/units";
import { relativeYieldAt, type DateAndStand, type RelativeYieldAt, type StandRefusal, type StandTable } from "./standTable";

export type OutlookQuestion = {
  readonly table: StandTable;
  /** Yield goal, set for the planned date and the target stand. */
  readonly goal: Yield;
  readonly planned: DateAndStand;
  readonly real: DateAndStand;
  /** Percent lost to gaps and late plants beyond what the number of plants says; `null`: nothing entered. */
  readonly uniformityLoss: Decimal | null;
};

export type YieldOutlook = {
  readonly planned: RelativeYieldAt;
  readonly real: RelativeYieldAt;
  /** R(real) ÷ R(planned); above 1 where the actual date and stand are the better ones. */
  readonly ratio: Decimal;
  /** Goal × ratio. */
  readonly byDateAndStand: Yield;
  /** What is left of that after the uniformity loss. */
  readonly outlook: Yield;
};

/** Which of the two the table would not answer for. */
export type OutlookRefusal = StandRefusal & { readonly of: "planned" | "real" };

/**
 * Yield outlook = goal × R(real date, real stand) ÷ R(planned date, target stand), less the uniformity loss that the
 * grower enters.
 */
export function yieldOutlook({ table, goal, planned, real, uniformityLoss }: OutlookQuestion): Result<YieldOutlook, OutlookRefusal> {
  const asPlanned = relativeYieldAt(table, planned);
  const asIs = relativeYieldAt(table, real);
  if (!asPlanned.ok || !asIs.ok) {
    const refusals = (of: OutlookRefusal["of"], result: typeof asIs) =>
      result.ok ? [] : result.problems.map((problem) => ({ ...problem, of }));
    return failed(...refusals("planned", asPlanned), ...refusals("real", asIs));
  }
  const ratio = asIs.value.relativeYield.div(asPlanned.value.relativeYield);
  const byDateAndStand = yieldPerArea(goal.times(ratio));
  return ok({
    planned: asPlanned.value,
    real: asIs.value,
    ratio,
    byDateAndStand,
    outlook: yieldPerArea(byDateAndStand.times(one.minus((uniformityLoss ?? zero).div(hundred)))),
  });
}

/** One step in the life of a yield outlook, so that a lender can see what moved it and when. */
export type OutlookChange<Reason = string> = { readonly date: IsoDate; readonly reason: Reason; readonly from: Yield; readonly to: Yield };

/** The history of an outlook from the goal on, oldest first; steps that change nothing are kept, since they too were looked at. */
export function outlookHistory<Reason = string>(
  goal: Yield,
  steps: readonly { readonly date: IsoDate; readonly reason: Reason; readonly outlook: Yield }[],
): readonly OutlookChange<Reason>[] {
  const inOrder = [...steps].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  return inOrder.map(({ date, reason, outlook }, index) => ({ date, reason, from: inOrder[index - 1]?.outlook ?? goal, to: outlook }));
}
