/**
 * A thin or late stand: keep it, or end it and seed again, on the area concerned. With
 *
 *     Yk, Yr  yield kept, yield after reseeding     dk, dr  drying per unit of each
 *     p  price     v  what else moves with yield    s  operator's share
 *     C  cost of reseeding per area                 I  insurance payment per area
 *
 *     gain of reseeding = s·[Yr·(p − v − dr) − Yk·(p − v − dk)] − C + I
 *
 * Both yields are goal × R(date, stand) ÷ R(planned date, target stand), so the late date counts against reseeding.
 */
import { failed, ok, type Result } from "../result";
import { cautionsOf, estimateCaution, labelCaution } from "./cautions";
import { hundred, one, sum, zero, type Decimal } from "./numbers/decimal";
import { netOfGrain, type Grain } from "./partialBudget/change";
import { relativeYieldAt, type DateAndStand, type RelativeYieldAt, type StandRefusal, type StandTable } from "./stand/standTable";
import {
  money,
  moneyPerArea,
  moneyPerUnit,
  yieldPerArea,
  type Area,
  type Money,
  type MoneyPerArea,
  type MoneyPerUnit,
  type Points,
  type Share,
  type Yield,
} from "./numbers/units";

/** The costs of reseeding, per area; `null`: none. Seed is before the seller's credit. */
export type ReseedCosts = {
  readonly endOldStand: MoneyPerArea | null;
  readonly seed: MoneyPerArea | null;
  readonly seedCredit: MoneyPerArea | null;
  readonly pass: MoneyPerArea | null;
  readonly treatment: MoneyPerArea | null;
  readonly herbicide: MoneyPerArea | null;
  readonly other: MoneyPerArea | null;
};

export type ReseedQuestion = {
  readonly table: StandTable;
  /** The whole field, or the part that is thin. */
  readonly area: Area;
  /** Yield goal at the planned date and the target stand. */
  readonly goal: Yield;
  readonly planned: DateAndStand;
  readonly kept: DateAndStand;
  readonly reseeded: DateAndStand;
  /** Percent of the kept yield lost to gaps and late plants, on top of its stand; `null`: nothing entered. */
  readonly keptUniformityLoss: Decimal | null;
  /** Percent off the reseeded yield for the troubles of replanting (Nebraska advises about 10); `null`: nothing entered. */
  readonly reseedAllowance: Decimal | null;
  readonly price: MoneyPerUnit;
  /** Haul, checkoff and storage per unit, drying not among them. */
  readonly moving: MoneyPerUnit;
  readonly share: Share;
  /** What of one more unit's price a flexible rent takes; left out: nothing. */
  readonly rentShare?: Share;
  readonly dryingPerPoint: MoneyPerUnit;
  /** Points above standard at harvest. */
  readonly keptPoints: Points;
  readonly reseededPoints: Points;
  readonly costs: ReseedCosts;
  /** What the insurer has said that he pays for reseeding, per area; `null`: nothing. */
  readonly insurance: MoneyPerArea | null;
};

export type ReseedRefusal = StandRefusal & { readonly of: "planned" | "kept" | "reseeded" };

export type ReseedAnswer = {
  readonly keptYield: Yield;
  readonly reseededYield: Yield;
  readonly read: { readonly planned: RelativeYieldAt; readonly kept: RelativeYieldAt; readonly reseeded: RelativeYieldAt };
  /** C, before the insurance payment. */
  readonly cost: MoneyPerArea;
  /** Gain of reseeding; below zero: keeping the stand is better. */
  readonly net: MoneyPerArea;
  readonly netInAll: Money;
  readonly decision: "keep" | "reseed";
  /** Yield that reseeding must add to pay; `null` where a unit more brings nothing home. */
  readonly gapNeeded: Yield | null;
  /** Reseeded yield − kept yield: to set beside the gap needed. */
  readonly gap: Yield;
  /** Price per unit above which replanting pays (below which, where it lowers the yield); `null` where the price makes no difference. */
  readonly breakEvenPrice: MoneyPerUnit | null;
};

/** What must be said before anyone acts on the answer, always all of it. */
export const reseedNotices: readonly string[] = [...cautionsOf.replant, labelCaution, estimateCaution];

/** The cost of reseeding per area: everything entered, less the seller's credit. */
export const reseedCost = ({ seedCredit, ...paid }: ReseedCosts): MoneyPerArea =>
  moneyPerArea(sum(Object.values(paid).map((each) => each ?? zero)).minus(seedCredit ?? zero));

/** Keep against reseed; or why the table says nothing of a date or a stand. */
export function reseed(question: ReseedQuestion): Result<ReseedAnswer, ReseedRefusal> {
  const planned = relativeYieldAt(question.table, question.planned);
  const kept = relativeYieldAt(question.table, question.kept);
  const reseeded = relativeYieldAt(question.table, question.reseeded);
  if (!planned.ok || !kept.ok || !reseeded.ok) {
    const refusals = (of: ReseedRefusal["of"], result: typeof kept) =>
      result.ok ? [] : result.problems.map((problem) => ({ ...problem, of }));
    return failed(...refusals("planned", planned), ...refusals("kept", kept), ...refusals("reseeded", reseeded));
  }
  const keptYield = keptYieldAt(question, kept.value, planned.value);
  const reseededYield = reseededYieldAt(question, reseeded.value, planned.value);
  const cost = reseedCost(question.costs);
  const net = netOfReseeding(question, keptYield, reseededYield);
  return ok({
    keptYield,
    reseededYield,
    read: { planned: planned.value, kept: kept.value, reseeded: reseeded.value },
    cost,
    net,
    netInAll: money(net.times(question.area)),
    decision: net.gt("0") ? "reseed" : "keep",
    gapNeeded: gapNeeded(question, keptYield),
    gap: yieldPerArea(reseededYield.minus(keptYield)),
    breakEvenPrice: breakEvenPrice(question, keptYield, reseededYield),
  });
}

const left = (percentLost: Decimal | null): Decimal => one.minus((percentLost ?? zero).div(hundred));

/** Kept yield, less the uniformity loss. */
const keptYieldAt = ({ goal, keptUniformityLoss }: ReseedQuestion, at: RelativeYieldAt, planned: RelativeYieldAt): Yield =>
  yieldPerArea(goal.times(at.relativeYield).div(planned.relativeYield).times(left(keptUniformityLoss)));

/** Reseeded yield, less the allowance. */
const reseededYieldAt = ({ goal, reseedAllowance }: ReseedQuestion, at: RelativeYieldAt, planned: RelativeYieldAt): Yield =>
  yieldPerArea(goal.times(at.relativeYield).div(planned.relativeYield).times(left(reseedAllowance)));

/** The gain of reseeding per area, from the two yields. */
function netOfReseeding(question: ReseedQuestion, keptYield: Decimal, reseededYield: Decimal): MoneyPerArea {
  const { kept, reseeded } = perUnit(question);
  return moneyPerArea(reseededYield.times(reseeded).minus(keptYield.times(kept)).minus(netCost(question)));
}

/** Cost less insurance payment. */
const netCost = ({ costs, insurance }: ReseedQuestion): Decimal => reseedCost(costs).minus(insurance ?? zero);

/** What a unit of each crop nets, and how that comes about: each bears its own drying. */
export function grainsOf({ price, moving, share, rentShare, dryingPerPoint, keptPoints, reseededPoints }: ReseedQuestion): {
  readonly kept: Grain;
  readonly reseeded: Grain;
} {
  const grain = (points: Points): Grain => ({
    price,
    share,
    moving: moneyPerUnit(moving.plus(points.times(dryingPerPoint))),
    ...(rentShare !== undefined && { rentShare }),
  });
  return { kept: grain(keptPoints), reseeded: grain(reseededPoints) };
}

function perUnit(question: ReseedQuestion): { readonly kept: Decimal; readonly reseeded: Decimal } {
  const { kept, reseeded } = grainsOf(question);
  return { kept: netOfGrain(kept), reseeded: netOfGrain(reseeded) };
}

function gapNeeded(question: ReseedQuestion, keptYield: Yield): Yield | null {
  const { kept, reseeded } = perUnit(question);
  return reseeded.lte("0") ? null : yieldPerArea(keptYield.times(kept).plus(netCost(question)).div(reseeded).minus(keptYield));
}

function breakEvenPrice(question: ReseedQuestion, keptYield: Yield, reseededYield: Yield): MoneyPerUnit | null {
  const slope = reseededYield.minus(keptYield).times(question.share.minus(question.rentShare ?? zero));
  if (slope.isZero()) return null;
  const atNoPrice = netOfReseeding({ ...question, price: moneyPerUnit(zero) }, keptYield, reseededYield);
  return moneyPerUnit(atNoPrice.neg().div(slope));
}

/** The yield of a field of which parts were kept, reseeded or never thin: the mean by area; `null` of no area. */
export function fieldOutlook(parts: readonly { readonly area: Area; readonly yield: Yield }[]): Yield | null {
  const whole = sum(parts.map(({ area }) => area));
  return whole.isZero() ? null : yieldPerArea(sum(parts.map((part) => part.yield.times(part.area))).div(whole));
}
