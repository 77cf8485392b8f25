/** Which budget lines of a kind count in a field. */
import { isOver } from "../over";
import type { BudgetLine, Field } from "../season";

type Named = Pick<BudgetLine, "over">;
const scopes = ["field", "crop", "all"] as const;

/** Of lines of one kind those of the field itself, else those of its crop, else those of all fields; none where no line names it. */
export function nearestLines<Line extends Named>(ofKind: readonly Line[], field: Pick<Field, "name" | "crop">): readonly Line[] {
  const naming = ofKind.filter(({ over }) => isOver(over, field));
  const nearest = scopes.find((scope) => naming.some(({ over }) => scope in over));
  return nearest === undefined ? [] : naming.filter(({ over }) => nearest in over);
}
