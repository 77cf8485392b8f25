/** The way down from a crop's cost per area to the entries that made it: kind, field, cost, entry. */
import { noBillYet, unbilledKinds } from "../../core/budgetLines/unbilled";
import { costPerArea } from "../../core/breakEven";
import type { Budget, Charge, CropFigures, FieldFigures, Stage, StageFigures } from "../../core/figures";
import { zero, type Decimal } from "../../core/numbers/decimal";
import { countsIn, kinds, type Kind, type Layer } from "../../core/kinds";
import type { EntryRef } from "../../core/row";
import { moneyPerArea } from "../../core/numbers/units";
import type { Format } from "../format";

/** What one cost comes to in one field. `entries` are told without repeats. */
type CostLine = { readonly name: string; readonly perArea: string; readonly amount: string; readonly entries: readonly EntryRef[] };
export type FieldCostLine = {
  readonly field: string;
  readonly area: string;
  readonly perArea: string;
  /** Against the plan, signed; empty where nothing moved. */ readonly change: string;
  readonly costs: readonly CostLine[];
};
type KindLine = {
  readonly kind: Kind;
  /** With its mark where some of it rests on an unchecked coefficient. */ readonly words: string;
  readonly perArea: string;
  /** Against the plan, signed; empty where nothing moved. */ readonly change: string;
  readonly fields: readonly FieldCostLine[];
};

export type CostTree = {
  readonly kinds: readonly KindLine[];
  /** The layer's cost per area, which the kinds add up to. */
  readonly total: string;
};

/** The figures of a field or crop at a stage; those of the outlook where nothing is final yet. */
const atStage = <Figures>(of: { plan: Figures; outlook: Figures; final: Figures | null }, stage: Stage): Figures =>
  (stage === "final" ? of.final : of[stage]) ?? of.outlook;

export function costTree(
  crop: CropFigures,
  stage: Stage,
  layer: Layer,
  format: Format,
  words: (kind: Kind) => string = (kind) => kind,
): CostTree {
  const { costPerArea: costs, interestInFull } = atStage<Budget>(crop, stage);
  // Term interest stays in the full layer of fields for which no capital is charged.
  const staying = layer === "full" && !interestInFull.isZero() ? "term interest" : null;
  const unbilled = unbilledKinds(stage === "final" ? crop.fields : []);
  const kindsHere = kinds.filter((kind) => countsIn(kind, layer) || kind === staying);
  return {
    total: format.money(costs.layers[layer]),
    kinds: kindsHere
      .filter((kind) => costs.byKind.has(kind))
      .map((kind) => ({
        kind,
        words: `${format.words(words(kind))}${unbilled.has(kind) ? noBillYet : ""}`,
        perArea: format.money(kind === staying ? interestInFull : costs.byKind.get(kind)!),
        change: changeWords(
          kind === staying ? crop.plan.interestInFull : (crop.plan.costPerArea.byKind.get(kind) ?? zero),
          kind === staying ? interestInFull : costs.byKind.get(kind)!,
          format,
        ),
        fields: crop.fields.flatMap((field) => {
          const figures = atStage<StageFigures>(field, stage);
          return kind === staying && figures.chargesCapital ? [] : fieldLine(field, figures, kind, format);
        }),
      })),
  };
}

function fieldLine(field: FieldFigures, { budget, charges }: StageFigures, kind: Kind, format: Format): readonly FieldCostLine[] {
  const cost = budget.costPerArea.byKind.get(kind);
  if (cost === undefined) return [];
  return [
    {
      field: field.field,
      area: `${format.quantity(field.area)} ${format.areaUnit}`,
      perArea: format.money(cost),
      change: changeWords(field.plan.budget.costPerArea.byKind.get(kind) ?? zero, cost, format),
      costs: charges.filter((charge) => charge.kind === kind).map((charge) => costLine(charge, budget, format)),
    },
  ];
}

const changeWords = (planned: Decimal, now: Decimal, format: Format): string => {
  const words = format.change(planned, now);
  return words === "no change" ? "" : words;
};

function costLine({ name, amount, perUnit, entries }: Charge, budget: Budget, format: Format): CostLine {
  const perArea = costPerArea(
    {
      fixed: moneyPerArea(amount.div(budget.area)),
      moving: perUnit,
      operatorShare: budget.operatorShare,
      otherIncome: budget.otherIncomePerArea,
    },
    budget.yields.used,
    budget.price,
  );
  const places = new Map(entries.map((entry) => [`${entry.table}\n${entry.row}`, entry]));
  return { name, perArea: format.money(perArea), amount: format.amount(perArea.times(budget.area)), entries: [...places.values()] };
}
