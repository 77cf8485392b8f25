/** Loads and the word that the harvest is done, where one of the two is missing or they do not agree. */
import { fieldColumns } from "./columns/fields";
import { accounts } from "../core/accounts";
import type { FieldFacts } from "../core/fieldFacts";
import type { Season } from "../core/season";
import type { Place, Problem } from "./problem";

const { heading: column } = fieldColumns.columns.harvestDone;

/** @param isAsked whether the table Fields has the column: a workbook from before it is asked once, for all its fields */
export function harvestProblems(season: Season, isAsked: boolean): readonly Problem[] {
  const { facts } = accounts(season);
  const weighed = facts.filter((each) => each.weighed !== null);
  if (!isAsked) {
    if (weighed.length === 0) return [];
    const touches = weighed.map(({ field }) => ({ of: "field", name: field.name }) as const);
    return [{ code: "harvest-open", at: { table: "Fields", column }, found: weighed.map(({ field }) => field.name).join(", "), touches }];
  }
  return facts.flatMap(ofField);
}

function ofField({ field, weighed, outlookYield }: FieldFacts): readonly Problem[] {
  const at: Place = { table: field.source.table, row: field.source.row, column };
  const problem = (code: Problem["code"], like?: string): readonly Problem[] => [
    { code, at, found: field.name, ...(like === undefined ? {} : { like }), touches: [{ of: "field", name: field.name }] },
  ];
  if (field.harvestDone === null) {
    // All that was looked for is weighed: the last load is likely in.
    return weighed !== null && weighed.quantity.div(field.area).gte(outlookYield) ? problem("harvest-open") : [];
  }
  if (weighed === null) return problem("harvest-without-load");
  const { on } = field.harvestDone;
  return on !== null && on < weighed.last ? problem("load-after-done", weighed.last) : [];
}
