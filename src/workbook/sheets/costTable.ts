/** The costs of a crop, or of a field as one, by kind and layer: a column for each stage, and the change from plan to projected. */
import { zero } from "../../core/numbers/decimal";
import type { Budget, CropFigures } from "../../core/figures";
import { cashKinds, cashNeedKinds, fullKinds, operatingKinds, type Kind, type Layer } from "../../core/kinds";
import { notPlanned } from "../../core/notPlanned";
import { kindMarker } from "../uncheckedCoefficients";
import type { SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { changeOf, headings, moneyCell, note, subtotal, text, yieldCell } from "./cells";
import { interestLeaving, layerTitle } from "./sheetWords";

type Row = readonly SheetCell[];
type KindMarker = ReturnType<typeof kindMarker>;

/** Money per area at the yield of its first row. */
export function costTable(report: SeasonReport, crop: CropFigures): readonly Row[] {
  const columns = stageColumns(crop);
  const marked = kindMarker(report.season);
  const line = (name: string, value: (budget: Budget) => SheetCell): Row => [text(name), ...columns.map(({ budget }) => value(budget))];
  return [
    headings("", ...columns.map(({ name }) => name), "Change"),
    line(`Yield that this rests on (${crop.yieldUnit})`, (budget) => yieldCell(budget.yields.used)),
    ...kindRows(crop, operatingKinds, marked),
    layerRow(crop, "operating"),
    ...kindRows(crop, cashKinds, marked),
    layerRow(crop, "cash"),
    ...fullRows(crop, marked),
    layerRow(crop, "full"),
    ...kindRows(crop, cashNeedKinds, marked),
    layerRow(crop, "cashNeed"),
    ...notPlannedRows(crop),
  ];
}

const stageColumns = ({ plan, outlook, final }: CropFigures): readonly { name: string; budget: Budget }[] => [
  { name: "Plan", budget: plan },
  { name: "Projected", budget: outlook },
  ...(final === null ? [] : [{ name: "Final", budget: final }]),
];

const interestWords = {
  all: "Full cost leaves out term interest: it charges interest on all capital instead.",
  some: "Full cost leaves out term interest where it charges interest on all capital instead, and keeps it in the other fields.",
  none: "Full cost keeps term interest: neither machine ownership nor a land charge is entered that would stand for it.",
};

/** Full cost starts again from cash cost and says before it adds what becomes of term interest. */
function fullRows(crop: CropFigures, marked: KindMarker): readonly Row[] {
  const interest = kindRows(crop, ["term interest"], marked).length > 0 ? [note(interestWords[interestLeaving([crop])])] : [];
  return [...interest, ...kindRows(crop, fullKinds, marked)];
}

/** One row for each kind that costs something at any stage. */
function kindRows(crop: CropFigures, kinds: readonly Kind[], marked: KindMarker): readonly Row[] {
  const columns = stageColumns(crop);
  return kinds
    .filter((kind) => columns.some(({ budget }) => budget.costPerArea.byKind.has(kind)))
    .map((kind) => {
      const of = (budget: Budget) => budget.costPerArea.byKind.get(kind) ?? null;
      return [
        text(`   ${marked(kind)}`),
        ...columns.map(({ budget }) => moneyCell(of(budget))),
        moneyCell(changeOf(of(crop.plan) ?? zero, of(crop.outlook) ?? zero)),
      ];
    });
}

function layerRow(crop: CropFigures, layer: Layer): Row {
  const of = (budget: Budget) => budget.costPerArea.layers[layer];
  return [
    text(layerTitle(layer), subtotal),
    ...stageColumns(crop).map(({ budget }) => moneyCell(of(budget), subtotal)),
    moneyCell(changeOf(of(crop.plan), of(crop.outlook)), subtotal),
  ];
}

/** What is in the change although the plan has nothing of it. */
function notPlannedRows(crop: CropFigures): readonly Row[] {
  const all = notPlanned(crop, "cashNeed");
  if (all.length === 0) return [];
  return [
    note("In the change, done or bought without a plan:"),
    ...all.map(({ kind, name, amount }): Row => {
      const [label, perArea] = [name.toLowerCase() === kind ? name : `${name} (${kind})`, amount.div(crop.area)];
      const inStages = stageColumns(crop).map((column) => moneyCell(column.name === "Projected" ? perArea : null));
      return [text(`   ${label}`), ...inStages, moneyCell(changeOf(zero, perArea))];
    }),
  ];
}
