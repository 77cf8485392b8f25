/** Plantings and stands that the table of yields does not answer for, so that the yield outlook rests on less than is entered. */
import { accounts } from "../core/accounts";
import type { Season } from "../core/season";
import type { FieldOutlook } from "../core/stand/fieldOutlook";
import type { OutlookRefusal } from "../core/stand/yieldOutlook";
import type { Named } from "./columns/column";
import { fieldColumns } from "./columns/fields";
import type { Problem } from "./problem";
import { refusalWords } from "./standRefusal";

const { columns } = fieldColumns;

/**
 * Only fields whose crop has a table in use: without one the goal is the outlook, and dates and stands move nothing. Nor do
 * they once the field's harvest is done.
 */
export function plantingProblems(season: Season): readonly Problem[] {
  const harvested = new Set(accounts(season).facts.flatMap((each) => (each.harvested === null ? [] : [each.field.name])));
  return [...accounts(season).outlooks.values()].filter(({ field }) => !harvested.has(field.name)).flatMap(ofField);
}

/** One for each field: what stops the planting stops the counts as well. */
function ofField({ field, table, byDate, stand }: FieldOutlook): readonly Problem[] {
  const touches = [{ of: "field", name: field.name }] as const;
  const inFields = ({ heading: column }: Named) => ({ table: field.source.table, row: field.source.row, column });
  if (hasDates(table) && field.planted !== null && field.plannedPlanting === null) {
    return [{ code: "planned-date-missing", at: inFields(columns.plannedPlanting), found: field.name, like: field.planted, touches }];
  }
  const refused = (refusals: readonly OutlookRefusal[], at: Problem["at"]): readonly Problem[] => [
    { code: "stand-outside-table", at, found: field.name, like: refusalWords(refusals[0]!), touches },
  ];
  if (byDate?.ok === false) return refused(byDate.problems, inFields(columnOf(byDate.problems[0]!)));
  if (stand?.outlook?.ok === false) {
    const { table: of, row } = stand.summary.counts[0]!.source;
    return refused(stand.outlook.problems, { table: of, row });
  }
  return [];
}

const hasDates = (table: FieldOutlook["table"]): boolean => table !== null && table.dates !== null;

/** The cell that the date alone is refused for: the stand is the target both times. */
function columnOf({ of, reason }: OutlookRefusal): Named {
  if (reason === "date outside" || reason === "date missing") return of === "planned" ? columns.plannedPlanting : columns.planted;
  return reason === "row width missing" ? columns.rowWidth : columns.targetStand;
}
