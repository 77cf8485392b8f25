/** Every field as one line, worst first, and what its own page leads with. */
import { daysBetween } from "../../core/numbers/day";
import { hundred, zero, type Decimal } from "../../core/numbers/decimal";
import type { CropFigures, FieldFigures } from "../../core/figures";
import { layerCosts, layers, type Layer } from "../../core/kinds";
import { ofLayer } from "../../workbook/incompleteMark";
import type { SeasonReport } from "../../workbook/seasonReport";
import { shownYield } from "../../workbook/shown";
import type { Format } from "../format";
import type { FigureRow } from "../season/cropView";
import { isThin } from "../stand/standView";

export type FieldRow = {
  readonly field: string;
  readonly crop: string;
  readonly yield: string;
  readonly goal: string;
  readonly net: string;
  /** As it is shown: what rounds to 0 is none. */
  readonly isLoss: boolean;
  /** "thin stand", "planted 19 days late", "harvest 62 %", "2 to fix"; none where nothing is to be said. */
  readonly marks: readonly string[];
  /** Whether a mark asks for something; a harvest asks for nothing. */
  readonly isMarked: boolean;
  /** Length of the bar of the net return, in hundredths of the longest. */
  readonly bar: string;
};

/** The figures that count of a field now. */
const now = ({ final, outlook }: FieldFigures) => (final ?? outlook).budget;

/** All fields by net return per area after the layer, the lowest first. */
export function fieldRows(report: SeasonReport, layer: Layer, format: Format): readonly FieldRow[] {
  const all = report.figures.crops
    .flatMap((crop) => crop.fields.map((field) => ({ field, net: now(field).netPerArea[layer] })))
    .sort((a, b) => a.net.comparedTo(b.net));
  const longest = all.reduce<Decimal | null>((most, { net }) => (most === null || net.abs().gt(most) ? net.abs() : most), null);
  return all
    .map(({ field, net }) => ({ marks: marksOf(field, report, layer), field, net }))
    .map(({ marks, field, net }) => ({
      field: field.field,
      crop: field.crop,
      net: format.whole(net),
      isLoss: net.isNegative() && format.whole(net) !== format.whole(zero),
      yield: format.yield(now(field).yields.used),
      goal: format.yield(now(field).yields.goal),
      marks,
      isMarked: marks.some((mark) => !mark.startsWith("harvest")),
      bar: longest === null || longest.isZero() ? "0" : net.abs().div(longest).times(hundred).toFixed(1),
    }));
}

function marksOf(field: FieldFigures, report: SeasonReport, layer: Layer): readonly string[] {
  const name = field.field;
  const stand = report.figures.stands.find((each) => each.field.name === name);
  const entered = report.season.fields.find((each) => each.name === name);
  const late = entered === undefined ? null : daysLate(entered.plannedPlanting ?? null, entered.planted ?? null);
  const toFix = ofLayer(report.problemsOf({ of: "field", name }), layer).length;
  const crop = field.outlook.budget.yields.outlook.times(field.area);
  return [
    ...(stand !== undefined && field.final === null && isThin(stand) ? ["thin stand"] : []),
    ...(late !== null && field.final === null && isBelowGoal(field) ? [`planted ${late} ${late === 1 ? "day" : "days"} late`] : []),
    ...(field.final !== null
      ? ["harvested"]
      : field.weighed === null || crop.isZero()
        ? []
        : [`harvest ${field.weighed.quantity.div(crop).times(hundred).toFixed(0)} % so far`]),
    ...(toFix === 0 ? [] : [`${toFix} ${toFix === 1 ? "entry" : "entries"} to fix`]),
  ];
}

/** Whether the projected yield is shown below the goal: a late planting that costs nothing is not worth a mark. */
const isBelowGoal = ({
  outlook: {
    budget: { yields },
  },
}: FieldFigures): boolean => shownYield(yields.outlook).lt(shownYield(yields.goal));

/** Days from the planned to the real planting; `null` where it was not later. */
function daysLate(planned: string | null, planted: string | null): number | null {
  if (planned === null || planted === null || planted <= planned) return null;
  return Number(daysBetween(planned, planted).toFixed());
}

export type FieldView = {
  readonly figure: string;
  readonly unit: string;
  readonly says: string;
  readonly columns: readonly string[];
  readonly rows: readonly FigureRow[];
};

/** Net return of a field after the layer, and its costs and both break-evens layer by layer. */
export function fieldView({ yieldUnit }: CropFigures, field: FieldFigures, layer: Layer, format: Format): FieldView {
  const budget = now(field);
  const { used, goal } = budget.yields;
  const word = field.final === null ? "projected" : "harvested";
  return {
    figure: format.money(budget.netPerArea[layer]),
    unit: `${format.perArea}, net after ${layerCosts[layer]}`,
    says:
      `${format.yield(used)} ${yieldUnit} per ${format.areaName} ${word}, goal ${format.yield(goal)}; ${format.money(budget.price)} ` +
      `per ${yieldUnit} expected.`,
    columns: ["cost", "price needed", "yield needed", "net"],
    rows: layers.map((each) => ({
      name: layerCosts[each],
      cells: [
        format.money(budget.costPerArea.layers[each]),
        format.priceNeeded(budget.breakEvenPrice[each]),
        format.yieldNeeded(budget.breakEvenYield[each]),
        format.money(budget.netPerArea[each]),
      ],
    })),
  };
}
