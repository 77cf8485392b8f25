/** What keeps the repair of a planter from being priced, and parts whose size and finding do not go together. */
import { isUnlike, type PlanterPart, type PlanterRepair } from "../core/planter/planterRepair";
import type { Problem, ProblemCode } from "./problem";

export const planterProblems = (planters: readonly PlanterRepair[]): readonly Problem[] =>
  planters
    .flatMap(({ parts }) => parts)
    .flatMap((part): readonly Problem[] => [
      ...(part.bought === null ? [problem("part-unpriced", part, "Item", part.check.item!)] : []),
      ...(part.labour === null ? [problem("wage-missing", part, "Hours", part.check.hours!.toFixed())] : []),
      ...(part.wear?.isNegative() === true && !part.wear.isZero()
        ? [problem("beyond-new", part, "Measured", part.check.measured!.toFixed())]
        : []),
      ...(isUnlike(part) ? [problem("finding-unlike", part, "Finding", part.check.finding!)] : []),
    ]);

const problem = (code: ProblemCode, { check: { source } }: PlanterPart, column: string, found: string): Problem => ({
  code,
  at: { ...source, column },
  found,
  touches: [{ of: "planter" }],
});
