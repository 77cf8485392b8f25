/** What a count changed, in words for the line that is read out. */
import type { SeasonReport } from "../../workbook/seasonReport";
import type { Format } from "../format";

/** Stand, yield outlook and net return of the crop (cash cost), before and after. */
export function standChanged(before: SeasonReport, after: SeasonReport, field: string, format: Format): string {
  const standOf = ({ figures }: SeasonReport) => figures.stands.find((each) => each.field.name === field);
  const [old, now] = [standOf(before), standOf(after)];
  const found = after.problems.length - before.problems.length;
  const problems = found > 0 ? ` ${found} new ${found === 1 ? "entry" : "entries"} to fix or to check: see the line at the top.` : "";
  if (now === undefined) return `The stand of ${field} is not known yet.${problems}`;
  const stand =
    `Stand: ${old === undefined ? "" : `${format.plants(old.summary.mean)} → `}${format.plants(now.summary.mean)} ` +
    `plants per ${format.areaName}.`;
  const outlookOf = ({ figures }: SeasonReport) =>
    figures.crops.flatMap(({ fields }) => fields).find((each) => each.field === field)?.outlook.budget.yields.outlook ?? null;
  const netOf = ({ figures }: SeasonReport) => figures.crops.find(({ crop }) => crop === now.field.crop)?.outlook.netPerArea.cash ?? null;
  return (
    `${stand} Projected yield: ${format.yield(outlookOf(before))} → ${format.yield(outlookOf(after))}. Net return of ` +
    `${now.field.crop}: ${format.money(netOf(before))} → ${format.money(netOf(after))} (${format.perArea}, cash cost).${problems}`
  );
}
