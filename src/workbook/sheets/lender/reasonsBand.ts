/** What changed since spring: outlook against plan, the reasons largest first, adding up to the difference. */
import { Decimal, sum } from "../../../core/numbers/decimal";
import type { CropFigures } from "../../../core/figures";
import type { Layer } from "../../../core/kinds";
import { reasons, type Reason } from "../../../core/lender/reasons";
import type { SeasonReport } from "../../seasonReport";
import { subtotal, text, wholeMoneyCell } from "../cells";
import { layerTitle } from "../sheetWords";
import { blockWidth, type LenderPage } from "./printedPage";

/** So many reasons are named; the rest are one line. */
const named = 5;

export function reasonsBand(page: LenderPage, report: SeasonReport, crops: readonly CropFigures[], layer: Layer): void {
  const top = page.next;
  page.put(
    { row: top, column: 0 },
    text(`What changed since the plan (${report.season.settings.currency})`, { bold: true, fill: "heading" }),
  );
  page.put({ row: top + 1, column: 0 }, text(`Net return, ${layerTitle(layer).toLowerCase()}: plan to projected`, { italic: true }));
  crops.forEach((crop, index) => {
    const column = 1 + index * blockWidth;
    page.across({ row: top, column }, blockWidth, text(crop.crop, { bold: true, fill: "heading", align: "center" }));
    reasonLines(crop, layer).forEach(({ words, amount, bold }, row) => {
      const style = bold ? subtotal : {};
      page.across({ row: top + 1 + row, column }, blockWidth - 1, text(`  ${words}`, style));
      page.put({ row: top + 1 + row, column: column + blockWidth - 1 }, wholeMoneyCell(amount, style));
    });
  });
}

type Line = { readonly words: string; readonly amount: Reason["effect"] | ReturnType<typeof sum>; readonly bold: boolean };

const whole = (value: Decimal): Decimal => value.toDecimalPlaces(0, Decimal.ROUND_HALF_UP);

/** The lines of one crop. Each is shown to the whole; the last reason takes what rounding leaves, so that the print adds up. */
export function reasonLines({ plan, outlook, ...crop }: CropFigures, layer: Layer): readonly Line[] {
  const all = reasons({ plan, outlook, ...crop }, layer);
  const first = all
    .slice(0, named)
    .map((reason) => ({ words: reasonWords(reason, crop.yieldUnit), amount: whole(reason.effect), bold: false }));
  const from = whole(plan.netPerArea[layer].times(plan.area));
  const to = whole(outlook.netPerArea[layer].times(outlook.area));
  const rest = to.minus(from).minus(sum(first.map(({ amount }) => amount)));
  const others = all.length - first.length;
  const last =
    others > 0
      ? [{ words: `${others} other ${others === 1 ? "reason" : "reasons"}`, amount: rest, bold: false }]
      : rest.isZero()
        ? []
        : [{ words: "rounding", amount: rest, bold: false }];
  return [{ words: "Plan", amount: from, bold: true }, ...first, ...last, { words: "Projected", amount: to, bold: true }];
}

/** Characters that fit beside the amount. */
const longest = 29;
const notPlanned = ", not planned";

function reasonWords({ of, effect }: Reason, yieldUnit: string): string {
  if (of === "yield") return `yield ${effect.isNegative() ? "below" : "above"} the goal`;
  if (of === "dock") return "test-weight dock";
  if (typeof of === "string") return `cost per ${yieldUnit}`;
  if (of.unplanned) return `${of.name.slice(0, longest - notPlanned.length)}${notPlanned}`;
  const withKind = `${of.name} (${of.kind})`;
  return of.name.toLowerCase() === of.kind || withKind.length > longest ? of.name.slice(0, longest) : withKind;
}
