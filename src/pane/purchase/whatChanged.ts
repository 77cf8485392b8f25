/** What an entry changed, in words for the line that is read out. */
import { layerCosts, type Layer } from "../../core/kinds";
import type { Item } from "../../core/season";
import type { SeasonReport } from "../../workbook/seasonReport";
import type { Format } from "../format";

export type ChangeOf = {
  readonly layer: Layer;
  readonly format: Format;
  /** What was bought, which says why no cost moved; `null`: something else was entered. */
  readonly item: Item | null;
};

/** The cost per area of every crop that changed, before and after, at the outlook. */
export function whatChanged(before: SeasonReport, after: SeasonReport, { layer, format, item }: ChangeOf): string {
  const old = new Map(before.figures.crops.map((crop) => [crop.crop, crop.outlook.costPerArea.layers[layer]]));
  const changes = after.figures.crops.flatMap(({ crop, outlook }) => {
    const [from, to] = [old.get(crop), outlook.costPerArea.layers[layer]];
    if (from === undefined || format.money(from) === format.money(to)) return [];
    return [`${crop}: ${format.money(from)} → ${format.money(to)}`];
  });
  const found = after.problems.length - before.problems.length;
  const problems = found > 0 ? ` ${found} new ${found === 1 ? "entry" : "entries"} to fix or to check: see the line at the top.` : "";
  return changes.length === 0
    ? `No cost per ${format.areaName} changed by a ` +
        `cent${item?.charged === "as used" ? `: ${item.name} is charged as it is used, and what is left over is stock` : ""}.${problems}`
    : `Cost per ${format.areaName} of ${changes.join("; ")} (${format.currency}, ${layerCosts[layer]}, projected).${problems}`;
}
