/** Budget lines beside rows and bills, and the whole farm in money, as JSON. */
import { sum, type Decimal } from "../core/numbers/decimal";
import { farmFigures, newestStage } from "../core/farm";
import type { FieldFigures, LinedKind } from "../core/figures";
import { kinds, layers } from "../core/kinds";
import { farmCashFlow } from "./sheets/lender/farmCashFlow";
import type { SeasonReport } from "./seasonReport";

type Digits = (value: Decimal | null) => string | null;

/** Of each kind that has a budget line: per area of the field, or of the crop over all its fields, those without a line among them. */
export const budgetLinesJson = (fields: readonly FieldFigures[], digits: Digits) => {
  const area = sum(fields.map((field) => field.area));
  const all = fields.flatMap(({ lined }) => lined);
  return kinds
    .filter((kind) => all.some((line) => line.kind === kind))
    .map((kind) => {
      const perArea = (of: (line: LinedKind) => Decimal) => digits(sum(all.filter((line) => line.kind === kind).map(of)).div(area));
      return {
        kind,
        budgeted: perArea((line) => line.budgeted),
        rows: perArea((line) => line.rows),
        soFar: perArea((line) => line.soFar),
        left: perArea((line) => line.left),
        outlook: perArea((line) => line.outlook),
      };
    });
};

/** Every crop at its newest stage. */
export const farmJson = (report: SeasonReport, digits: Digits) => {
  const { income, costs, leftOver } = farmFigures(report.figures, newestStage);
  const perLayer = (values: typeof costs) => Object.fromEntries(layers.map((layer) => [layer, digits(values[layer])]));
  const peak = farmCashFlow(report)?.peak ?? null;
  return {
    income: digits(income),
    costs: perLayer(costs),
    leftOver: perLayer(leftOver),
    loanPeak: peak === null ? null : { amount: digits(peak.balance), month: peak.month },
  };
};
