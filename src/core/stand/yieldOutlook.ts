/** From a stand and a planting date to the yield that may be looked for. */
import { failed, ok, type Result } from "../../result";
import { hundred, one, sum, zero, type Decimal } from "../numbers/decimal";
import type { IsoDate } from "../row";
import { relativeYield, yieldPerArea, type Area, type Yield } from "../numbers/units";
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
  return outlookAt({ goal, uniformityLoss }, relativeYieldAt(table, planned), relativeYieldAt(table, real));
}

/** A part of a field by its acres, its planting and its stand. */
export type PartAsIs = { readonly area: Area; readonly real: DateAndStand };

/** The outlook of a field, and of each of its parts in their order. */
export type OutlookOfParts = YieldOutlook & { readonly parts: readonly Yield[] };

/** The same of a field in parts: R(real) is the mean of the parts by their acres. */
export function outlookOfParts(
  { table, goal, planned, uniformityLoss }: Omit<OutlookQuestion, "real">,
  parts: readonly PartAsIs[],
): Result<OutlookOfParts, OutlookRefusal> {
  const asPlanned = relativeYieldAt(table, planned);
  const each = parts.map(({ area, real }) => ({ area, at: relativeYieldAt(table, real) }));
  const refused = each.flatMap(({ at }) => (at.ok ? [] : at.problems));
  const asIs =
    refused.length > 0 ? failed(...refused) : ok(meanOf(each.flatMap(({ area, at }) => (at.ok ? [{ area, at: at.value }] : []))));
  const whole = outlookAt({ goal, uniformityLoss }, asPlanned, asIs);
  if (!whole.ok) return whole;
  const yields = each.map(({ at }) => outlookAt({ goal, uniformityLoss }, asPlanned, at));
  return ok({ ...whole.value, parts: yields.flatMap((of) => (of.ok ? [of.value.outlook] : [])) });
}

/** Mean by acres: what the cells of each part say, by its part of the acres. */
function meanOf(parts: readonly { readonly area: Area; readonly at: RelativeYieldAt }[]): RelativeYieldAt {
  const [{ at: first }] = parts as readonly [(typeof parts)[number]];
  if (parts.length === 1) return first;
  const land = sum(parts.map(({ area }) => area));
  return {
    table: first.table,
    relativeYield: relativeYield(sum(parts.map(({ area, at }) => area.times(at.relativeYield))).div(land)),
    cells: parts.flatMap(({ area, at }) => at.cells.map((cell) => ({ ...cell, part: cell.part.times(area).div(land) }))),
  };
}

type Read = Result<RelativeYieldAt, StandRefusal>;

function outlookAt(
  { goal, uniformityLoss }: Pick<OutlookQuestion, "goal" | "uniformityLoss">,
  asPlanned: Read,
  asIs: Read,
): Result<YieldOutlook, OutlookRefusal> {
  if (!asPlanned.ok || !asIs.ok) {
    const refusals = (of: OutlookRefusal["of"], result: Read) => (result.ok ? [] : result.problems.map((problem) => ({ ...problem, of })));
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
