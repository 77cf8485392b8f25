import { Button } from "../parts/Button";
import { adjusterCaution } from "../../core/cautions";
import type { Decimal } from "../../core/numbers/decimal";
import { replantRuleLimits, replantRuleSource, type mostBushels } from "../../core/reseedInsurance";
import { provenYield } from "../../workbook/spelling";
import { Entry } from "../parts/Entry";
import { usePane } from "../paneContext";
import { useKept } from "../useKept";
import { useDecimalComma } from "../useDecimalComma";
import { estimateView, type EstimateDraft, type EstimateField } from "./insurerEstimate";

export type ReplantEstimateProps = {
  readonly crop: keyof typeof mostBushels;
  /** Puts the payment per acre into the question. */
  readonly take: (payment: Decimal) => void;
};

/** What the insurer might pay for reseeding, before he has spoken. */
export function ReplantEstimate({ crop, take }: ReplantEstimateProps) {
  const { format } = usePane();
  const [draft, setDraft] = useKept<EstimateDraft>(`insurer's estimate, ${crop}`, () => ({}));
  const { faults, says, payment } = estimateView(draft, crop, useDecimalComma(), format);
  const box = (of: EstimateField, label: string, hint?: string) => (
    <Entry
      label={label}
      value={draft[of] ?? ""}
      fault={faults[of]}
      hint={hint}
      numeric
      change={(value) => setDraft((before) => ({ ...before, [of]: value }))}
    />
  );
  return (
    <>
      <p>
        <strong>{adjusterCaution}</strong>
      </p>
      <div className="pn-pair">
        {box("approved", `${provenYield(format.currency)}, bu per acre`, "of your policy")}
        {box("coverage", "Coverage, %")}
      </div>
      <div className="pn-pair">
        {box("appraisal", "Appraised yield, bu per acre", "the adjuster's; not the projected yield")}
        {box("price", "Policy's price per bu")}
      </div>
      <div aria-live="polite">
        {says.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
      <p className="pn-buttons">
        <Button
          disabledFocusable={payment === null}
          onClick={() => {
            if (payment !== null) take(payment);
          }}
        >
          Put it in as the insurance payment
        </Button>
      </p>
      <p className="pn-note">
        {replantRuleLimits} Source: {replantRuleSource.publisher}, {replantRuleSource.title}.
      </p>
    </>
  );
}
