/** Lines of the Budget that add up the others of their land and kind, such as a column Total chem beside herbicide and fungicide. */
import { zero } from "../core/numbers/decimal";
import type { BudgetLine } from "../core/season";
import { budgetColumns } from "./columns/budget";
import type { Problem } from "./problem";
import { shownMoney } from "./shown";

const { amount } = budgetColumns.columns;
const fewest = 2;

/** The last line of a land and kind, or the first, where it is the sum of the others, of which there are two at least. */
export function budgetSums(budget: readonly BudgetLine[]): readonly Problem[] {
  const alike = new Map<string, BudgetLine[]>();
  for (const line of budget) {
    const key = `${JSON.stringify(line.over)} ${line.kind} ${line.basis}`;
    alike.set(key, [...(alike.get(key) ?? []), line]);
  }
  return [...alike.values()].flatMap((all): readonly Problem[] => {
    const lines = all.filter((line) => !line.amount.isZero());
    const sum = [lines.at(-1), lines[0]].find(
      (line) =>
        line !== undefined &&
        lines.length > fewest &&
        lines.reduce((total, each) => (each === line ? total : total.plus(each.amount)), zero).eq(line.amount),
    );
    if (sum === undefined) return [];
    const {
      source: { table, row },
      over,
    } = sum;
    return [
      {
        code: "kind-sum",
        at: { table, row, column: amount.heading },
        found: shownMoney(sum.amount).toFixed(2),
        like: `${lines.length - 1} other entries of ${sum.kind}`,
        touches: ["all" in over ? { of: "farm" } : "field" in over ? { of: "field", name: over.field } : { of: "crop", name: over.crop }],
      },
    ];
  });
}
