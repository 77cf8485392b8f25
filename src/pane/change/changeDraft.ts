/** A new change as it is being typed: what is wrong with it, its answer, and the rows that it becomes. */
import { hundred, zero, type Decimal } from "../../core/numbers/decimal";
import { changeAnswer, type ChangeAnswer } from "../../core/partialBudget/changeAnswer";
import { isCapital } from "../../core/partialBudget/change";
import { grainOf } from "../../core/partialBudget/grain";
import type { Layout } from "../../core/partialBudget/layouts/layout";
import type { SeasonReport } from "../../workbook/seasonReport";
import { spelled } from "../../workbook/spelling";
import { plain } from "../../workbook/words";
import type { EntryRow } from "../commands/entryRow";
import { Typed, typedAs, type Faults } from "../parts/typed";
import { changeRows } from "./changeRows";
import { circumstances, type Ground } from "./ground";
import type { Values } from "./box";
import type { LayoutForm } from "./defineLayout";
import { productsOf, type Products } from "./products";

/** Boxes by name; besides the layout's own: `name`, `acres`, `rate` (percent). */
export type ChangeDraft = { readonly [box: string]: string };

/** The boxes as a form begins: the layout's name, all acres, the operating interest rate, and what the season knows. */
export function emptyChange(form: LayoutForm, ground: Ground, decimalComma: boolean): ChangeDraft {
  const text = (value: Decimal | null | undefined) => (value === null || value === undefined ? "" : typedAs(value, decimalComma));
  const rate = ground.report.season.settings.operatingInterest?.rate ?? null;
  return {
    name: form.name,
    acres: text(ground.budget.area),
    rate: text(rate?.times(hundred)),
    ...Object.fromEntries(form.boxes.map(({ name, begin }) => [name, text(shortly(begin?.(ground)))])),
  };
}

/** As a person would type it: cents of a price or a yield, and four decimals of what is small, such as drying per point. */
const shortly = (value: Decimal | null | undefined): Decimal | null => value?.toDecimalPlaces(value.abs().gte("10") ? 2 : 4) ?? null;

export type ChangeDraftView = {
  readonly faults: Faults<string>;
  /** What is typed in the layout's boxes, as far as it is sound. */
  readonly values: Values;
  /** What goes into the tank; `null` of a form without. */
  readonly products: Products | null;
  /** The layout that the boxes make and its answer; `null` while there are faults in them. */
  readonly made: { readonly layout: Layout; readonly answer: ChangeAnswer } | null;
  /** The rows to write; `null` where a name is missing or taken too. */
  readonly rows: readonly EntryRow[] | null;
};

/**
 * A layout with the names of its lines as the grower writes them, since they become entries of his; a line that stays is the same
 * one, which the lead may name.
 */
function spelledLayout(layout: Layout, currency: string): Layout {
  const lines = layout.change.lines.map((line) =>
    spelled(line.item, currency) === line.item ? line : { ...line, item: spelled(line.item, currency) },
  );
  return { ...layout, change: { ...layout.change, lines } };
}

export function changeDraftView(
  draft: ChangeDraft,
  form: LayoutForm,
  ground: Ground,
  { decimalComma, countedIn }: { readonly decimalComma: boolean; readonly countedIn: boolean },
): ChangeDraftView {
  const typed = new Typed<string>(draft, decimalComma, ground.report.season.settings.currency);
  const acres = typed.number("acres", { needed: true, aboveZero: true });
  const rate = typed.number("rate", { isPercent: true });
  const numbers = Object.fromEntries(form.boxes.map(({ name, wanted }) => [name, typed.number(name, wanted)]));
  const products = form.hasProducts === true ? productsOf(draft, ground.report, decimalComma) : null;
  const values: Values = { numbers, products: products?.rows.flatMap(({ product }) => product ?? []) ?? [] };
  const notYet = (faults: Faults<string>): ChangeDraftView => ({ faults, values, products, made: null, rows: null });
  const between = { ...form.check(values), ...products?.faults };
  if (!typed.isSound || acres === null || Object.keys(between).length > 0) return notYet({ ...between, ...typed.faults });
  const layout = spelledLayout(
    form.build(circumstances(ground, acres, (rate ?? zero).div(hundred), form.beforeDrying), values, ground),
    ground.report.season.settings.currency,
  );
  if (rate === null && layout.change.lines.some(isCapital))
    return notYet({ rate: "Enter the interest rate: something here is kept more than a year." });
  const name = (draft["name"] ?? "").trim();
  const faults = nameFaults(name, ground.report);
  return {
    faults,
    values,
    products,
    made: { layout, answer: changeAnswer(layout.change, ground.prices) },
    rows:
      Object.keys(faults).length > 0
        ? null
        : changeRows({
            change: layout.change,
            name,
            layout: layout.name,
            target: ground.name,
            acres: acres.eq(ground.budget.area) ? null : acres,
            countedIn,
            areaUnit: ground.report.season.settings.areaUnit,
            grain: grainOf(ground.budget),
          }),
  };
}

/** Lines of one name are one change, so a new change needs a name of its own. */
export function nameFaults(name: string, { season }: SeasonReport): { readonly name?: string } {
  if (name === "") return { name: "Give the change a name." };
  const taken = season.changes.some((change) => plain(change.name) === plain(name));
  return taken ? { name: `There is a change “${name}” already. Give this one a name of its own.` } : {};
}
