/**
 * Insurance payment for replanting in the United States as a bulletin of 1998 and a lesson on crop insurance state it:
 * due where the appraisal is under 90 % of the guaranteed yield; price × 20 % of the guaranteed yield, at most 8 bushels
 * of corn or 3 of soybeans. What binds today, and what counts as replanting, only the insurer can say.
 */
import { Decimal } from "./numbers/decimal";
import type { Source } from "./tables/source";
import { moneyPerArea, type MoneyPerArea, type MoneyPerUnit, type Share, type Yield } from "./numbers/units";

const appraisalBelow = new Decimal("0.9");
const shareOfGuarantee = new Decimal("0.2");
/** Bushels per acre at most (Iowa State University Extension, ICM 27 July 1998). */
export const mostBushels = { corn: new Decimal("8"), soybeans: new Decimal("3") } as const;

/** Where the rule was read. */
export const replantRuleSource: Source = {
  title: "Integrated Crop Management, 27 July 1998",
  publisher: "Iowa State University Extension",
  year: "1998",
  address: "not kept",
  where: "text on replant payments",
};
/** What the rule leaves out, word for word the same everywhere. */
export const replantRuleLimits =
  "An estimate by a rule of 1998, for the United States: at least 20 acres or a fifth of the unit, whichever is less; not on area " +
  "plans or the least coverage. Your policy and your insurer's adjuster decide.";

export type ReplantPayment = {
  readonly guaranteedYield: Decimal;
  readonly appraisalMustBeBelow: Decimal;
  readonly due: boolean;
  /** Units per area that are paid; none where it is not due. */
  readonly units: Decimal;
  readonly payment: MoneyPerArea;
};

/** The payment by that rule, for an estimate before the insurer has spoken. */
export function replantPayment(of: {
  readonly approvedYield: Yield;
  readonly coverage: Share;
  readonly appraisal: Yield;
  readonly price: MoneyPerUnit;
  readonly crop: keyof typeof mostBushels;
}): ReplantPayment {
  const guaranteedYield = of.approvedYield.times(of.coverage);
  const appraisalMustBeBelow = guaranteedYield.times(appraisalBelow);
  const due = of.appraisal.lt(appraisalMustBeBelow);
  const units = due ? Decimal.min(guaranteedYield.times(shareOfGuarantee), mostBushels[of.crop]) : new Decimal("0");
  return { guaranteedYield, appraisalMustBeBelow, due, units, payment: moneyPerArea(units.times(of.price)) };
}
