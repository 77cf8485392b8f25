/** Bills that may be for work that is counted as done already. */
import { isOver } from "../core/capital";
import type { Bill, Season } from "../core/season";
import type { Problem } from "./problem";

/**
 * A bill is set against what is left of its kind, and added to what is done: that may be the same money, so it is told at the
 * first row at a rate that is done where the bill is charged. A Note on the bill settles it.
 */
export function billsBesideDone({ bills = [], operations, fields }: Season, isSettled: (bill: Bill) => boolean): readonly Problem[] {
  return bills.flatMap((bill): readonly Problem[] => {
    if (bill.amount.isZero() || isSettled(bill)) return [];
    const named = fields.filter((field) => isOver(bill.over, field));
    const done = operations.find(({ kind, status, cost, target }) => kind === bill.kind && status !== "plan" && cost.basis !== "machine" && named.some((field) => isOver(target, field)));
    const { table, row } = bill.source;
    return done === undefined ? [] : [{ code: "bill-beside-done", at: { table, row }, other: done.source, found: bill.kind, touches: "all" in bill.over ? [{ of: "farm" }] : ["field" in bill.over ? { of: "field", name: bill.over.field } : { of: "crop", name: bill.over.crop }] }];
  });
}
