/** Work that two rows say is done: one marked done as planned, and a done row of the same day beside it. */
import type { Target } from "../core/row";
import type { Application, Operation, Season } from "../core/season";
import { applicationColumns } from "./columns/applications";
import type { Problem, Subject } from "./problem";

const { heading: status } = applicationColumns.columns.status;

/**
 * Done rows of an item or operation beside a row that is marked *done as planned*, in a field of both and on one day (or
 * both without one). Both are counted, because they may be two passes.
 */
export const doneTwice = ({ applications, operations, fields }: Season): readonly Problem[] => {
  const cropOf = new Map(fields.map(({ name, crop }) => [name, crop]));
  return [...beside(applications, ({ item }) => item, cropOf), ...beside(operations, ({ operation }) => operation, cropOf)];
};

function beside<Row extends Application | Operation>(
  rows: readonly Row[],
  subject: (row: Row) => string,
  cropOf: ReadonlyMap<string, string>,
): readonly Problem[] {
  const keyOf = (row: Row) => `${subject(row).toLowerCase()}\n${row.date ?? ""}`;
  const asPlanned = new Map<string, Row[]>();
  for (const row of rows) {
    if (row.status !== "done as planned") continue;
    const same = asPlanned.get(keyOf(row));
    if (same === undefined) asPlanned.set(keyOf(row), [row]);
    else same.push(row);
  }
  if (asPlanned.size === 0) return [];
  return rows.flatMap((row): readonly Problem[] => {
    if (row.status !== "done") return [];
    const other = asPlanned.get(keyOf(row))?.find(({ target }) => meet(target, row.target, cropOf));
    if (other === undefined) return [];
    return [
      {
        code: "done-twice",
        at: { ...row.source, column: status },
        other: { ...other.source, column: status },
        found: subject(row),
        touches: [subjectOf(row.target)],
      },
    ];
  });
}

/** Whether two targets have a field in common. */
function meet(a: Target, b: Target, cropOf: ReadonlyMap<string, string>): boolean {
  if ("field" in a && "field" in b) return a.field === b.field;
  const cropOfTarget = (target: Target) => ("crop" in target ? target.crop : cropOf.get(target.field));
  return cropOfTarget(a) === cropOfTarget(b);
}

const subjectOf = (target: Target): Subject =>
  "field" in target ? { of: "field", name: target.field } : { of: "crop", name: target.crop };
