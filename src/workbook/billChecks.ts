/** Bills that may be for work that is counted as done already. */
import { isOver } from "../core/over";
import type { Season } from "../core/season";
import type { Problem } from "./problem";
import { subjectOver } from "./tables/namedTarget";

/**
 * A bill is set against what is left of its kind, and added to what is done: that may be the same money, so it is told at the
 * first row at a rate that is done where the bill is charged. A Note on the bill settles it.
 *
 * @param noted rows of bills that have one
 */
export function billsBesideDone({ bills, operations, fields }: Season, noted: ReadonlySet<number>): readonly Problem[] {
  return bills.flatMap((bill): readonly Problem[] => {
    if (bill.amount.isZero() || noted.has(bill.source.row)) return [];
    const named = fields.filter((field) => isOver(bill.over, field));
    const done = operations.find(
      ({ kind, status, cost, target }) =>
        kind === bill.kind && status !== "plan" && cost.basis !== "machine" && named.some((field) => isOver(target, field)),
    );
    const { table, row } = bill.source;
    return done === undefined
      ? []
      : [{ code: "bill-beside-done", at: { table, row }, other: done.source, found: bill.kind, touches: [subjectOver(bill.over)] }];
  });
}
