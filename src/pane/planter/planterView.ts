/** What the pane says of a planter that was looked at: what is due first, what it costs, and what is not known. */
import type { EntryRef } from "../../core/row";
import type { PartState, PlanterPart, PlanterRepair } from "../../core/planter/planterRepair";
import type { Format } from "../format";

type PartLine = { readonly name: string; readonly state: string; readonly cost: string; readonly entry: EntryRef };

export type PlanterView = {
  readonly machine: string;
  /** "3 parts due or to adjust" and what they cost. */
  readonly due: string;
  readonly cost: string;
  /** What it comes to an acre of this planter, or why nothing is said of that. */
  readonly restsOn: string;
  /** Parts that are due, to adjust or soon due, the worst first. */
  readonly lines: readonly PartLine[];
  /** The others in one sentence; empty where there are none. */
  readonly others: string;
  /** What counts as nothing because it is not known. */
  readonly unknown: readonly string[];
};

const worstFirst: readonly PartState[] = ["due", "adjust", "soon"];
const counted = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;

export function planterView(
  { machine, parts, cost, soonCost, unpriced, needsWage, area, costPerArea }: PlanterRepair,
  format: Format,
): PlanterView {
  const inState = (...states: readonly PartState[]) => parts.filter(({ state }) => states.includes(state));
  const now = inState("due", "adjust");
  const soon = inState("soon");
  const rest = (["good", "done", "not judged"] as const).flatMap((state) => {
    const { length } = inState(state);
    return length === 0 ? [] : [`${counted(length, "part", "parts")} ${state}`];
  });
  return {
    machine,
    due: now.length === 0 ? "Nothing is due" : `${counted(now.length, "part", "parts")} due or to adjust`,
    cost: format.amount(cost),
    restsOn: [
      costPerArea === null
        ? `No entry of Operations names ${machine}, so nothing is said per ${format.areaName}.`
        : `${format.money(costPerArea)} ${format.perArea}, over the ${format.whole(area!)} ${format.areaName}s that it goes over.`,
      ...(soonCost.isZero() && soon.length === 0
        ? []
        : [`${counted(soon.length, "part", "parts")} soon due: ${format.amount(soonCost)} more.`]),
    ].join(" "),
    lines: worstFirst.flatMap((state) => inState(state)).map((part) => lineOf(part, format)),
    others: rest.length === 0 ? "" : `${rest.join(", ")}.`,
    unknown: [
      ...unpriced.map((item) => `${item} has no price and counts as nothing.`),
      ...(needsWage ? ["Labour per hour is not set, so hours in the shop count as nothing."] : []),
    ],
  };
}

function lineOf({ check, state, wear, cost }: PlanterPart, format: Format): PartLine {
  const where = check.row === null ? "" : `, row ${check.row}`;
  const worn = wear === null ? "" : `, ${format.percent(wear)} worn`;
  return {
    name: `${check.part}${where}`,
    state: `${state === "adjust" ? "to adjust" : state}${worn}`,
    cost: cost === null ? "no price" : format.money(cost),
    entry: check.source,
  };
}
