/** What keeps the repair of a planter from being priced, and parts whose size and finding do not go together. */
import { isUnlike, type PlanterPart, type PlanterRepair } from "../core/planter/planterRepair";
import type { Problem, ProblemCode } from "./problem";
import { plain } from "./words";

export const planterProblems = (planters: readonly PlanterRepair[]): readonly Problem[] => [
  ...planters.flatMap(twice),
  ...planters
    .flatMap(({ parts }) => parts)
    .flatMap((part): readonly Problem[] => [
      ...(part.bought === null ? [problem("part-unpriced", part, "Item", part.check.item!)] : []),
      ...(part.labour === null ? [problem("wage-missing", part, "Hours", part.check.hours!.toFixed())] : []),
      ...(part.wear?.isNegative() === true && !part.wear.isZero()
        ? [problem("beyond-new", part, "Measured", part.check.measured!.toFixed())]
        : []),
      ...(isUnlike(part) ? [problem("finding-unlike", part, "Finding", part.check.finding!)] : []),
    ]),
];

/** A part of one row that costs a repair by more than one entry: an older look at it whose repair is not done. */
function twice({ parts }: PlanterRepair): readonly Problem[] {
  const costing = parts.filter(({ state }) => state === "due" || state === "adjust" || state === "soon");
  const first = new Map<string, PlanterPart>();
  return costing.flatMap((part): readonly Problem[] => {
    const key = `${plain(part.check.row ?? "")} ${plain(part.check.part)}`;
    const before = first.get(key);
    if (before === undefined) first.set(key, part);
    return before === undefined ? [] : [{ ...problem("part-twice", part, "Part", part.check.part), like: String(before.check.source.row) }];
  });
}

const problem = (code: ProblemCode, { check: { source } }: PlanterPart, column: string, found: string): Problem => ({
  code,
  at: { ...source, column },
  found,
  touches: [{ of: "planter" }],
});
