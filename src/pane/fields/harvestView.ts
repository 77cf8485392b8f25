/** The money between goal and harvest of one field, in words of the pane. */
import type { CropFigures, FieldFigures } from "../../core/figures";
import { goalAndHarvest } from "../../core/harvestMoney";
import { layerCosts, type Layer } from "../../core/kinds";
import { wholeAmounts } from "../../workbook/sheets/amounts";
import type { Format } from "../format";
import type { FigureRow } from "../season/cropView";

export type GoalAndHarvestView = { readonly caption: string; readonly columns: readonly string[]; readonly rows: readonly FigureRow[] };

/** Whole amounts that add up as they are shown; `null` until the harvest is done. */
export function goalAndHarvestView(crop: CropFigures, field: FieldFigures, layer: Layer, format: Format): GoalAndHarvestView | null {
  const told = goalAndHarvest(crop, field, layer);
  if (told === null) return null;
  const { goal, used } = field.final!.budget.yields;
  const lines = ["plan", `yield, ${format.yield(used)} for ${format.yield(goal)}`, "price, docks off", "cost"];
  const parts = wholeAmounts([told.plan, told.byYield, told.byPrice, told.byCost]);
  return {
    caption: `${field.field}, ${format.currency} in all, net after ${layerCosts[layer]}; sold grain at its own price`,
    columns: ["in all"],
    rows: [
      ...lines.map((name, index) => ({ name, cells: [format.whole(parts[index]!)] })),
      { name: "harvest", cells: [format.whole(told.harvest)] },
    ],
  };
}
