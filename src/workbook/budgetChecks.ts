/** Lines of the Budget that would each cost more than the acre earns: money of the whole land that was read as that of an acre. */
import { zero, type Decimal } from "../core/numbers/decimal";
import { isOver } from "../core/over";
import type { Season } from "../core/season";
import { budgetColumns } from "./columns/budget";
import { isBlank } from "./numbers";
import type { Problem, Subject } from "./problem";
import { shownMoney } from "./shown";
import type { TableReader } from "./tableReader";

const { amount, basis } = budgetColumns.columns;

/**
 * A line that does not say what it is for counts for an acre. One that is above all that an acre of its land is expected to earn
 * is most likely for all of that land; the basis settles it, either of the two.
 *
 * @param table the table Budget as it was read
 */
export function budgetChecks(
  table: TableReader | undefined,
  { budget, fields, crops }: Pick<Season, "budget" | "fields" | "crops">,
): readonly Problem[] {
  if (table === undefined) return [];
  const at = table.indexOf(basis.heading);
  const isUnsaid = (row: number) => isBlank(table.raw.rows[row - 1]?.[at] ?? "");
  const earned = new Map(crops.map(({ name, price, otherIncomePerArea: other }) => [name, { price, other }]));
  return budget
    .filter(({ basis: of, source: { row } }) => of === "per acre" && isUnsaid(row))
    .flatMap((line): readonly Problem[] => {
      const most = fields
        .filter((field) => isOver(line.over, field))
        .reduce((high: Decimal, { crop, yieldGoal }) => {
          const of = earned.get(crop);
          const gross = of === undefined ? zero : of.price.times(yieldGoal).plus(of.other);
          return gross.gt(high) ? gross : high;
        }, zero);
      if (most.isZero() || line.amount.lte(most)) return [];
      const touches: Subject =
        "all" in line.over
          ? { of: "farm" }
          : "field" in line.over
            ? { of: "field", name: line.over.field }
            : { of: "crop", name: line.over.crop };
      return [
        {
          code: "per-acre-high",
          at: { table: line.source.table, row: line.source.row, column: amount.heading },
          found: shownMoney(line.amount).toFixed(2),
          like: shownMoney(most).toFixed(2),
          touches: [touches],
        },
      ];
    });
}
