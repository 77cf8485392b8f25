/** The wear of openers in the form of worn row units: its boxes, what is wrong with them, and what they say. */
import { commonOpener, openerWear as wornBy, type OpenerWear } from "../../core/partialBudget/layouts/rebuildRowUnits";
import type { Format } from "../format";
import type { Faults } from "../parts/typed";
import { may, type SoFar } from "./box";

const aboveZero = { aboveZero: true } as const;

/** The boxes may stay blank: a rebuild can be weighed without a calliper. */
export const wearBoxes = {
  wearNew: may("Opener when new, {length}", { wanted: aboveZero, hint: "all three or none" }),
  wearNow: may("Opener measured, {length}", { wanted: aboveZero }),
  wearLast: may("Opener replaced at, {length}", {
    wanted: aboveZero,
    hint:
      `Common practice for ${commonOpener.whenNew.toFixed()} in new is ${commonOpener.replaceAt.toFixed()} in. ` +
      "Your operator's manual rules.",
  }),
};
type WearTyped = SoFar<typeof wearBoxes>;

/** What cannot be. */
export function wearFaults({ wearNew: whenNew, wearNow: measured, wearLast: replaceAt }: WearTyped): Faults<keyof WearTyped> {
  return {
    ...(whenNew !== null && measured?.gt(whenNew) === true ? { wearNow: "It is larger than when new." } : {}),
    ...(whenNew !== null && replaceAt?.gte(whenNew) === true ? { wearLast: "Enter less than when new." } : {}),
  };
}

/** The wear that is told of; `null` while a box is blank or cannot be. */
export function openerWear(values: WearTyped): OpenerWear | null {
  const { wearNew: whenNew, wearNow: measured, wearLast: replaceAt } = values;
  if (whenNew === null || measured === null || replaceAt === null || Object.keys(wearFaults(values)).length > 0) return null;
  return { whenNew, measured, replaceAt };
}

/** How much of the wear is used and what that alone says. */
export function wearWords(wear: OpenerWear, format: Format): string {
  const { used, due } = wornBy(wear);
  const unit = lengthName(format);
  const left = wear.measured.minus(wear.replaceAt);
  const sizes =
    `${format.quantity(wear.whenNew)} ${unit} new, ${format.quantity(wear.measured)} now, replaced at ` +
    `${format.quantity(wear.replaceAt)}`;
  return due
    ? `The openers have used ${format.percent(used)} of their wear: ${sizes}. By wear they are due.`
    : `The openers have used ${format.percent(used)} of their wear: ${sizes}; ${format.quantity(left)} ${unit} are left. By wear ` +
        "alone they are not due.";
}

/** What openers are measured in. */
export const lengthName = ({ areaUnit }: Pick<Format, "areaUnit">): string => (areaUnit === "ac" ? "in" : "mm");
