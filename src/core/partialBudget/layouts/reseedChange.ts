import type { Decimal } from "../../numbers/decimal";
import { grainsOf, reseedNotices, type ReseedAnswer, type ReseedQuestion } from "../../reseed";
import type { AreaUnit, MoneyPerArea, YearlyRate, YieldUnit } from "../../numbers/units";
import { amountPerAcre, perAcre, type ChangeLine, type Grain, type Quadrant } from "../change";
import { layout, lines, given, type Layout } from "./layout";

/**
 * A reseeding as a partial budget, its four quadrants filled from the answer: the reseeded crop against the kept one.
 * It leads with the price of grain, because the yields come from the table in use and are not asked again.
 */
export function reseedChange(
  question: ReseedQuestion,
  answer: ReseedAnswer,
  units: { readonly areaUnit: AreaUnit; readonly yieldUnit: YieldUnit; readonly rate: YearlyRate },
): Layout {
  const { costs } = question;
  const { kept, reseeded } = grainsOf(question);
  const crop = (quadrant: Quadrant, item: string, quantity: Decimal, price: Grain): ChangeLine =>
    perAcre(quadrant, { item, unit: `${units.yieldUnit}/${units.areaUnit}`, quantity, price });
  const cost = (item: string, amount: MoneyPerArea | null) =>
    given(amount, (value) => amountPerAcre("added costs", item, value, units.areaUnit));
  const saved = (quadrant: Quadrant, item: string, amount: MoneyPerArea | null) =>
    given(amount, (value) => amountPerAcre(quadrant, item, value, units.areaUnit));
  return layout(
    "Reseed",
    { area: question.area, grain: reseeded, ...units },
    lines(
      crop("added returns", "Crop after replanting", answer.reseededYield, reseeded),
      saved("added returns", "Insurance payment", question.insurance),
      saved("reduced costs", "Seller's credit on seed", costs.seedCredit),
      cost("Ending the old stand", costs.endOldStand),
      cost("Seed", costs.seed),
      cost("Pass", costs.pass),
      cost("Treatment", costs.treatment),
      cost("Herbicide", costs.herbicide),
      cost("Other", costs.other),
      crop("reduced returns", "Crop kept", answer.keptYield, kept),
    ),
    { lead: { of: "grain price" }, findings: [], cautions: reseedNotices },
  );
}
