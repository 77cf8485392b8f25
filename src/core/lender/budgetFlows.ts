/** The money of budget lines that nobody has billed yet. */
import { partsByMoney } from "../budgetLines/fieldLine";
import { sum, zero, type Decimal } from "../numbers/decimal";
import type { CropFigures, LinedKind } from "../figures";
import type { SeasonFigures } from "../seasonFigures";
import { money } from "../numbers/units";
import type { Season } from "../season";
import type { Flow } from "./cashFlow";
import type { When } from "./whenPaid";

const out = (amount: Decimal) => money(amount.neg());

/**
 * What the outlook still expects of each line, in the months of its parts: as entered, else as money of its kind without a date.
 * Where the landlord repays his part, the operator pays the whole and has it back in the same month.
 *
 * @param isInterestByBalance the operating loan's balance bears interest, so that none is paid as it was entered
 */
export function budgetFlows(season: Season, crops: readonly CropFigures[], when: When, isInterestByBalance: boolean): readonly Flow[] {
  const fields = new Map(season.fields.map((field) => [field.name, field]));
  return crops
    .flatMap((crop) => crop.fields)
    .flatMap(({ field, lined }) =>
      lined.flatMap(({ kind, rest: { amount, isMoving, line } }) => {
        if (!line.cash || amount.isZero() || (isInterestByBalance && kind === "operating interest")) return [];
        const group = isMoving ? "drying, haul and selling" : kind;
        return paidParts(season, { amount, line }).flatMap(({ paid, back, paidOn }) => {
          const flow = (of: string, money: Decimal) =>
            when({ group: of, amount: out(money), entries: line.entries }, kind, paidOn, fields.get(field)!);
          return [...flow(group, paid.plus(back)), ...(back.isZero() ? [] : flow("landlord's part", back.neg()))];
        });
      }),
    );
}

/** What of the lines of a kind, or of all that move with yield, the operator pays before landlords pay it back. */
export const linesBack = (season: Season, { crops }: Pick<SeasonFigures, "crops">, wanted: (lined: LinedKind) => boolean): Decimal =>
  sum(
    crops
      .flatMap(({ fields }) => fields)
      .flatMap(({ lined }) => lined.filter((each) => each.rest.line.cash && wanted(each)))
      .flatMap(({ rest }) => paidParts(season, rest))
      .map(({ back }) => back),
  );

/** What of the rest of a line the operator bears of each of its parts, and what the landlord pays back beside it. */
function paidParts({ settings }: Season, { amount, line }: Pick<LinedKind["rest"], "amount" | "line">) {
  const isRepaid = settings.landlordsInputs === "repaid";
  return partsByMoney(line.parts).map(({ ours, whole, paidOn, fraction }) => ({
    paid: amount.times(fraction),
    back: isRepaid && !line.ours.isZero() ? whole.minus(ours).times(amount).div(line.ours) : zero,
    paidOn,
  }));
}
