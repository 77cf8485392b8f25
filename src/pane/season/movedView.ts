/** What moved the net return of a crop since the plan: the largest three and the rest, adding up to the difference as shown. */
import { sum } from "../../core/numbers/decimal";
import type { CropFigures } from "../../core/figures";
import type { Layer } from "../../core/kinds";
import { once } from "../../core/once";
import { reasons, toldAs, type Reason } from "../../core/lender/reasons";
import type { EntryRef } from "../../core/row";
import { moneyPerArea } from "../../core/numbers/units";
import { shownMoney } from "../../workbook/shown";
import type { Format } from "../format";

export type MovedLine = {
  readonly words: string;
  readonly amount: string;
  readonly isLoss: boolean;
  /** Put together when somebody opens the line: a season of thousands of bills has as many in every field. */
  readonly entries: readonly EntryRef[];
};
export type MovedView = {
  /** The whole difference per area, signed, which the lines add up to. */
  readonly total: string;
  readonly lines: readonly MovedLine[];
  /** What the largest leave over; `null` where they are all. */
  readonly rest: { readonly words: string; readonly amount: string; readonly lines: readonly MovedLine[] } | null;
};

/** So many reasons are named before the rest are one line. */
const named = 3;

/** @returns `null` where nothing moved */
export function movedView(crop: CropFigures, layer: Layer, format: Format): MovedView | null {
  const now: CropFigures =
    crop.final === null ? crop : { ...crop, fields: crop.fields.map((field) => ({ ...field, outlook: field.final ?? field.outlook })) };
  const all = reasons(now, layer);
  if (all.length === 0) return null;
  const budget = crop.final ?? crop.outlook;
  const total = shownMoney(budget.netPerArea[layer]).minus(shownMoney(crop.plan.netPerArea[layer]));
  const signed = (amount: typeof total) => format.signed(moneyPerArea(amount));
  const perArea = (reason: Reason) => shownMoney(reason.effect.div(crop.area));
  const line = (reason: Reason): MovedLine => {
    const entries = once(() => entriesOf(reason, now));
    return {
      words: reasonWords(reason, crop, format),
      amount: signed(perArea(reason)),
      isLoss: reason.effect.isNegative(),
      get entries() {
        return entries();
      },
    };
  };
  const [first, others] = all.length > named + 1 ? [all.slice(0, named), all.slice(named)] : [all, []];
  const left = total.minus(sum(first.map(perArea)));
  return {
    total: signed(total),
    lines: first.map(line),
    rest:
      others.length === 0 && left.isZero()
        ? null
        : { words: others.length === 0 ? "rounding" : `${others.length} more`, amount: signed(left), lines: others.map(line) },
  };
}

function reasonWords({ of, effect }: Reason, { fields, yieldUnit }: CropFigures, format: Format): string {
  const isWorse = effect.isNegative();
  if (of === "yield") {
    const moved = fields.filter(({ plan, outlook, final }) => !(final ?? outlook).budget.yields.used.eq(plan.budget.yields.used)).length;
    return `Yield ${isWorse ? "below" : "above"} the goal, ${moved} ${moved === 1 ? "field" : "fields"}`;
  }
  if (of === "dock") return "Test-weight dock";
  if (typeof of === "string") return `Cost per ${yieldUnit} ${isWorse ? "higher" : "lower"}`;
  const name = of.name === of.kind ? format.words(`${of.name.charAt(0).toUpperCase()}${of.name.slice(1)}`) : of.name;
  return of.unplanned ? `${name}, not planned` : `${name} ${isWorse ? "higher" : "lower"}`;
}

/** The entries of every charge that the reason gathers, plan and now, without repeats. */
function entriesOf({ of }: Reason, { fields }: CropFigures): readonly EntryRef[] {
  if (of === "dock") return fields.flatMap(({ weighed }) => (weighed === null || weighed.dock.isZero() ? [] : weighed.entries));
  if (typeof of === "string") return [];
  const charges = fields.flatMap((field) =>
    [...field.plan.charges, ...field.outlook.charges].filter((charge) => {
      const { kind, name, unplanned } = toldAs(field, charge);
      return kind === of.kind && name.toLowerCase() === of.name.toLowerCase() && unplanned === of.unplanned;
    }),
  );
  return [...new Map(charges.flatMap(({ entries }) => entries).map((entry) => [`${entry.table}\n${entry.row}`, entry])).values()];
}
