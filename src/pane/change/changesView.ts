/** The changes of a season, a line each, and what is projected with those that are counted in. */
import type { ChangeFigures } from "../../core/partialBudget/changeFigures";
import type { CropOverlay } from "../../core/partialBudget/overlay";
import { breakEven } from "../../core/partialBudget/breakEvenOfChange";
import type { Change } from "../../core/partialBudget/change";
import type { ChangeEntry } from "../../core/partialBudget/changeEntry";
import { noFigure, type Format } from "../format";
import { leadOf } from "./answerView";

/** A change as one line of the list. */
export type ComparedLine = {
  readonly name: string;
  /** "corn, 860.7 ac" */
  readonly about: string;
  readonly isCounted: boolean;
  /** The yield from which or up to which it pays: "0.3 bu/ac", "up to 0.9 bu/ac". */
  readonly needs: string;
  /** Net change per area, signed; "open" while an entry is blank. */
  readonly net: string;
  readonly isLoss: boolean;
};

export const comparedLines = (changes: readonly ChangeFigures[], format: Format): readonly ComparedLine[] =>
  changes.map((figures) => {
    const {
      change,
      crop,
      net: { net },
    } = figures;
    const about = change.target === null ? "the whole farm" : "field" in change.target ? `${change.target.field}, ${crop}` : (crop ?? "");
    return {
      name: change.name,
      about: `${about}, ${format.quantity(change.area)} ${format.areaUnit}`,
      isCounted: change.countedIn,
      needs: paysAt(change, leadOf(change, figures), format),
      net: net.perArea === null ? "open" : format.signed(net.perArea),
      isLoss: net.perArea?.isNegative() === true,
    };
  });

function paysAt(change: Change, lead: ChangeEntry, format: Format): string {
  const solved = lead.of === "quantity" ? breakEven(change, lead) : null;
  if (lead.of !== "quantity" || solved?.found !== true) return noFigure;
  if (solved.pays === "above" && solved.value.lte("0")) return "none";
  return solved.pays === "above"
    ? `${format.yieldNeeded(solved.value)} ${lead.line.unit}`
    : solved.value.isNegative()
      ? noFigure
      : `up to ${format.yieldAtMost(solved.value)} ${lead.line.unit}`;
}

export type OverlayView = {
  readonly crop: string;
  readonly rows: readonly { readonly name: string; readonly cells: readonly string[] }[];
  readonly note: string;
};

export const overlayView = ({ crop, outlook, added, withChanges }: CropOverlay, format: Format): OverlayView => {
  const blank = added.filter(({ inAll }) => inAll === null).map(({ change }) => change);
  return {
    crop,
    rows: [
      { name: "Projected", cells: [format.money(outlook.perArea), format.money(outlook.inAll)] },
      ...added.map(({ change, perArea, inAll }) => ({ name: change, cells: [format.money(perArea), format.money(inAll)] })),
      {
        name: "With the changes counted in",
        cells: [format.money(withChanges?.perArea ?? null), format.money(withChanges?.inAll ?? null)],
      },
    ],
    note: blank.length === 0 ? "" : `${blank.join(", ")}: an entry is blank, so what it adds is not known.`,
  };
};
