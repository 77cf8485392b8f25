/** What the planter checks say of rows to rebuild, for the form that weighs rebuilding against running on. */
import { Decimal, sum } from "../../core/numbers/decimal";
import type { PlanterRepair } from "../../core/planter/planterRepair";

type DueRows = {
  /** Rows with something due or to adjust. */
  readonly rows: Decimal;
  /** Parts and shop hours in the mean of these rows; `null` where one of them is not known. */
  readonly partsPerRow: Decimal | null;
  readonly hoursPerRow: Decimal | null;
};

/**
 * @returns `null` where nothing of a row is due, where more than one planter has something due, or where something of the whole
 * planter is: its money would be of no row, and the form would leave it out without a word
 */
export function dueRows(planters: readonly PlanterRepair[]): DueRows | null {
  const due = planters
    .map(({ parts }) => parts.filter(({ state }) => state === "due" || state === "adjust"))
    .filter((parts) => parts.length > 0);
  const [parts] = due;
  if (parts === undefined || due.length > 1 || parts.some(({ check }) => check.row === null)) return null;
  const rows = new Decimal(String(new Set(parts.map(({ check }) => check.row!.trim().toLowerCase())).size));
  const mean = (all: readonly (Decimal | null)[]): Decimal | null =>
    all.some((each) => each === null) ? null : sum(all.map((each) => each!)).div(rows);
  return { rows, partsPerRow: mean(parts.map(({ bought }) => bought)), hoursPerRow: mean(parts.map(({ check }) => check.hours)) };
}
