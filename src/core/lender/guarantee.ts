/** What a crop insurance policy guarantees an acre. Policies differ: the policy itself rules. */
import { larger, zero, type Decimal } from "../numbers/decimal";
import { moneyPerArea, moneyPerUnit, yieldPerArea, type MoneyPerArea, type MoneyPerUnit, type Share, type Yield } from "../numbers/units";

export type Policy = {
  readonly form: "revenue" | "yield";
  /** Yield that the insurer has approved. */
  readonly approvedYield: Yield;
  readonly coverage: Share;
  /** Price set before planting. */
  readonly projectedPrice: MoneyPerUnit;
  /** Price at harvest; `null` while it is not known. */
  readonly harvestPrice: MoneyPerUnit | null;
  /** Whether a higher harvest price raises a revenue guarantee. */
  readonly harvestPriceOption: boolean;
  /** The harvest price counts up to so many times the projected one. */
  readonly priceCap: Decimal;
};

export type Guarantee = {
  readonly yield: Yield;
  /** The price that the guarantee is worth. */
  readonly price: MoneyPerUnit;
  readonly perArea: MoneyPerArea;
};

/**
 * Guaranteed yield = approved yield × coverage; its worth at the projected price, or with the harvest price option at
 * the higher of projected and harvest price, the latter capped.
 */
export function guarantee(policy: Policy): Guarantee {
  const guaranteed = policy.approvedYield.times(policy.coverage);
  const price = guaranteePrice(policy);
  return { yield: yieldPerArea(guaranteed), price, perArea: moneyPerArea(guaranteed.times(price)) };
}

/**
 * Insurance payment per area at a harvested yield: of a yield policy the missing yield at the projected price, of a
 * revenue policy what the crop falls short of the guarantee at the harvest price.
 *
 * @param harvestPrice the price that the crop is valued at under a revenue policy
 */
export function indemnity(policy: Policy, harvested: Yield, harvestPrice: MoneyPerUnit): MoneyPerArea {
  const counted = cappedPrice(policy, harvestPrice);
  const { yield: guaranteed, perArea } = guarantee({ ...policy, harvestPrice });
  const short =
    policy.form === "yield" ? guaranteed.minus(harvested).times(policy.projectedPrice) : perArea.minus(harvested.times(counted));
  return moneyPerArea(larger(short, zero));
}

/** What the policy pays and the price that the crop is valued at for it, which is the policy's own and never the farm's. */
export type InsurancePayment = {
  readonly perArea: MoneyPerArea;
  readonly price: MoneyPerUnit;
  readonly priceOf: "harvest price" | "projected price";
};

/** The payment at a harvested yield, at the policy's harvest price; at its projected price while no harvest price is entered. */
export function insurancePayment(policy: Policy, harvested: Yield): InsurancePayment {
  const { harvestPrice, projectedPrice } = policy;
  const price = harvestPrice ?? projectedPrice;
  return { perArea: indemnity(policy, harvested, price), price, priceOf: harvestPrice === null ? "projected price" : "harvest price" };
}

/** Yield below which a revenue policy pays at a harvest price; `null` for a price of nothing. */
export function triggerYield(policy: Policy, harvestPrice: MoneyPerUnit): Yield | null {
  if (policy.form === "yield") return guarantee(policy).yield;
  const counted = cappedPrice(policy, harvestPrice);
  return counted.isZero() ? null : yieldPerArea(guarantee({ ...policy, harvestPrice }).perArea.div(counted));
}

function guaranteePrice(policy: Policy): MoneyPerUnit {
  const { form, harvestPrice, harvestPriceOption, projectedPrice } = policy;
  if (form === "yield" || harvestPrice === null || !harvestPriceOption) return projectedPrice;
  return moneyPerUnit(larger(projectedPrice, cappedPrice(policy, harvestPrice)));
}

function cappedPrice({ projectedPrice, priceCap }: Policy, harvestPrice: MoneyPerUnit): MoneyPerUnit {
  const cap = projectedPrice.times(priceCap);
  return harvestPrice.gt(cap) ? moneyPerUnit(cap) : harvestPrice;
}
