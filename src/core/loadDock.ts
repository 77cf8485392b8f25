/** What buyers take off the price of grain that is light: by a table of the grower's own, load by load. */
import { type Decimal } from "./numbers/decimal";
import { yieldAt, type FieldFacts } from "./fieldFacts";
import type { Stage } from "./figures";
import { moneyPerUnit, type MoneyPerUnit } from "./numbers/units";

/** One line of a dock table: from this test weight up to the next line, so much off each unit. */
export type DockLine = { readonly from: Decimal; readonly off: MoneyPerUnit };

/**
 * What is taken off a unit of grain of a test weight: the line with the highest test weight that it reaches. Between
 * lines nothing is reckoned, because buyers dock in steps.
 *
 * @param lines in any order
 * @returns `null` below the lowest line, where the table says nothing
 */
export function dockOf(lines: readonly DockLine[], testWeight: Decimal): MoneyPerUnit | null {
  const reached = lines.filter(({ from }) => from.lte(testWeight));
  return reached.reduce<DockLine | null>((best, line) => (best === null || line.from.gt(best.from) ? line : best), null)?.off ?? null;
}

/**
 * The dock of a field's loads for each unit of its crop at a stage: nothing in the plan, which knows no load. While the
 * harvest is under way nothing is expected to be taken off what still stands.
 */
export function dockPerUnit(facts: FieldFacts, stage: Stage): MoneyPerUnit {
  const whole = yieldAt(facts, stage).times(facts.field.area);
  return stage === "plan" || facts.weighed === null || whole.isZero() ? moneyPerUnit("0") : moneyPerUnit(facts.weighed.dock.div(whole));
}
