/** The changes of a season side by side, and the outlook with some of them laid over it. */
import type { SeasonFigures } from "../../core/seasonFigures";
import type { ChangeFigures } from "../../core/partialBudget/changeFigures";
import { overlays, type CropOverlay } from "../../core/partialBudget/overlay";
import { breakEven } from "../../core/partialBudget/breakEven";
import type { Change } from "../../core/partialBudget/change";
import type { Entry } from "../../core/partialBudget/entry";
import { noFigure, type Format } from "../format";
import { leadOf } from "./answerView";

export type SideBySide = readonly { readonly name: string; readonly cells: readonly [string, string, string] }[];

/** The yield from which or up to which it pays, net change per area and in all, of each change. */
export const sideBySide = (changes: readonly ChangeFigures[], format: Format): SideBySide => changes.map((figures) => {
  const { change, net: { net } } = figures;
  return { name: change.name, cells: [paysAt(change, leadOf(change, figures), format), format.money(net.perArea), format.money(net.perYear)] };
});

function paysAt(change: Change, lead: Entry, format: Format): string {
  const solved = lead.of === "quantity" ? breakEven(change, lead) : null;
  if (lead.of !== "quantity" || solved?.found !== true) return noFigure;
  if (solved.pays === "above" && solved.value.lte("0")) return "even with none";
  return solved.pays === "above" ? `from ${format.yieldNeeded(solved.value)} ${lead.line.unit}` : solved.value.isNegative() ? noFigure : `up to ${format.yieldAtMost(solved.value)} ${lead.line.unit}`;
}

/** The overlays with the changes that are switched on here, whatever the workbook says of them. */
export const overlaysWith = ({ crops, changes }: SeasonFigures, on: ReadonlySet<string>): readonly CropOverlay[] =>
  overlays(crops, changes.map((each) => ({ ...each, change: { ...each.change, active: on.has(each.change.name) } })));

export type OverlayView = { readonly crop: string; readonly rows: readonly { readonly name: string; readonly cells: readonly string[] }[]; readonly note: string };

export const overlayView = ({ crop, outlook, added, withChanges }: CropOverlay, format: Format): OverlayView => {
  const blank = added.filter(({ inAll }) => inAll === null).map(({ change }) => change);
  return {
    crop,
    rows: [
      { name: "Outlook", cells: [format.money(outlook.perArea), format.money(outlook.inAll)] },
      ...added.map(({ change, perArea, inAll }) => ({ name: change, cells: [format.money(perArea), format.money(inAll)] })),
      { name: "With the changes", cells: [format.money(withChanges?.perArea ?? null), format.money(withChanges?.inAll ?? null)] },
    ],
    note: blank.length === 0 ? "" : `${blank.join(", ")}: an entry is blank, so what it adds is not known.`,
  };
};
