/** An estimate of the insurer's payment for reseeding, as it is being typed; never put into the answer unasked. */
import { hundred, type Decimal } from "../../core/numbers/decimal";
import { mostBushels, replantPayment } from "../../core/reseedInsurance";
import { moneyPerUnit, share, yieldPerArea, type AreaUnit, type YieldUnit } from "../../core/numbers/units";
import type { Format } from "../format";
import { Typed, type Faults } from "../parts/typed";

const estimateFields = ["approved", "coverage", "appraisal", "price"] as const;
export type EstimateField = (typeof estimateFields)[number];
export type EstimateDraft = { readonly [F in EstimateField]?: string };

/** The crop of the rule that a crop of the workbook is, by its name; `null` where the rule does not reach: it is in bushels an acre. */
export function cropOfRule(crop: string, yieldUnit: YieldUnit, areaUnit: AreaUnit): keyof typeof mostBushels | null {
  if (yieldUnit !== "bu" || areaUnit !== "ac" || /sweet|pop|silage/i.test(crop)) return null;
  return /soy/i.test(crop) ? "soybeans" : /corn|maize/i.test(crop) ? "corn" : null;
}

export type EstimateView = {
  readonly faults: Faults<EstimateField>;
  /** The road from the approved yield to the payment; empty while a box is blank or wrong. */
  readonly says: readonly string[];
  /** Money per acre, to be put into the question; `null` while it is not known. */
  readonly payment: Decimal | null;
};

export function estimateView(draft: EstimateDraft, crop: keyof typeof mostBushels, decimalComma: boolean, format: Format): EstimateView {
  const typed = new Typed<EstimateField>(draft, decimalComma);
  const [approved, coverage, appraisal, price] = [
    typed.number("approved", { aboveZero: true }),
    typed.number("coverage", { aboveZero: true, isPercent: true }),
    typed.number("appraisal"),
    typed.number("price"),
  ];
  if (coverage?.gt(hundred) === true) typed.faults.coverage = "Enter a percentage up to 100.";
  if (!typed.isSound || approved === null || coverage === null || appraisal === null || price === null)
    return { faults: typed.faults, says: [], payment: null };
  const result = replantPayment({
    crop,
    approvedYield: yieldPerArea(approved),
    coverage: share(coverage.div(hundred)),
    appraisal: yieldPerArea(appraisal),
    price: moneyPerUnit(price),
  });
  const bushels = (value: Decimal) => `${format.yield(yieldPerArea(value))} bu`;
  return {
    faults: {},
    payment: result.payment,
    says: [
      `Guaranteed: ${bushels(approved)} × ${format.quantity(coverage)}% = ${bushels(result.guaranteedYield)} per acre. Due where ` +
        `the appraisal is under 90% of it, ${bushels(result.appraisalMustBeBelow)}.`,
      result.due
        ? `Paid: a fifth of the guarantee, at most ${mostBushels[crop].toFixed()} bu of ${crop}: ${bushels(result.units)} at ` +
          `${format.money(price)} = ${format.money(result.payment)} ${format.perArea}.`
        : `Appraised at ${bushels(appraisal)}: by this rule nothing is due.`,
    ],
  };
}
