/** Cost by kind and layer, plan against outlook. */
import { noBillYet, unbilledKinds } from "../../../core/budgetLines/unbilled";
import { zero } from "../../../core/numbers/decimal";
import type { CropFigures } from "../../../core/figures";
import { cashKinds, cashNeedKinds, fullKinds, operatingKinds, type Kind, type Layer } from "../../../core/kinds";
import type { CellStyle } from "../../resultSheet";
import { kindMarker } from "../../uncheckedCoefficients";
import type { SeasonReport } from "../../seasonReport";
import { changeOf, moneyCell, moneyOrDash, subtotal, text } from "../cells";
import { areaName, interestLeaving, layerTitle } from "../sheetWords";
import { blockWidth, type LenderPage } from "./printedPage";

export function costBand(page: LenderPage, report: SeasonReport, crops: readonly CropFigures[]): void {
  const top = page.next;
  const [marked, unbilled] = [kindMarker(report.season), unbilledKinds(crops.flatMap(({ fields }) => fields))];
  page.put({ row: top, column: 0 }, text(`Cost per ${areaName(report)} by kind`, { bold: true, fill: "heading" }));
  crops.forEach(({ yieldUnit }, index) => {
    page.put(
      { row: top, column: 1 + index * blockWidth },
      ...["Plan", "Projected", "Change", `Per ${yieldUnit}`].map((words) => text(words, { bold: true, fill: "heading", align: "right" })),
    );
  });
  const groups: readonly (readonly [readonly Kind[], Layer])[] = [
    [operatingKinds, "operating"],
    [cashKinds, "cash"],
    [fullKinds, "full"],
    [cashNeedKinds, "cashNeed"],
  ];
  for (const [kinds, layer] of groups) {
    for (const kind of kinds.filter((each) => crops.some((crop) => costs(crop, each)))) {
      line(
        page,
        crops,
        `   ${marked(kind)}${unbilled.has(kind) ? noBillYet : ""}`,
        {},
        (budget) => budget.costPerArea.byKind.get(kind) ?? zero,
      );
    }
    line(page, crops, layerWords(layer, crops), subtotal, (budget) => budget.costPerArea.layers[layer]);
  }
}

const costs = ({ plan, outlook }: CropFigures, kind: Kind): boolean =>
  plan.costPerArea.byKind.has(kind) || outlook.costPerArea.byKind.has(kind);

/** What the layer adds to which other, because the full layer is not a sum of the lines above it. */
function layerWords(layer: Layer, crops: readonly CropFigures[]): string {
  const ofFull = { all: "cash − term interest + these", some: "cash − part of the interest + these", none: "cash + these" }[
    interestLeaving(crops)
  ];
  const from: Record<Layer, string> = { operating: "", cash: "", full: ` (${ofFull})`, cashNeed: " (cash + these)" };
  return `${layerTitle(layer)}${from[layer]}`;
}

function line(
  page: LenderPage,
  crops: readonly CropFigures[],
  label: string,
  style: CellStyle,
  of: (budget: CropFigures["plan"]) => typeof zero,
): void {
  const row = page.next;
  page.put({ row, column: 0 }, text(label, style));
  crops.forEach(({ plan, outlook }, index) => {
    const units = outlook.operatorShare.times(outlook.yields.used);
    const now = of(outlook);
    page.put(
      { row, column: 1 + index * blockWidth },
      moneyOrDash(of(plan), style),
      moneyOrDash(now, style),
      moneyOrDash(changeOf(of(plan), now), style),
      units.isZero() ? moneyCell(null, style) : moneyOrDash(now.div(units), style),
    );
  });
}
