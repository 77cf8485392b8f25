/** The field work of a season: of every item and of every operation in every field, closed where the harvest is done. */
import { one } from "./numbers/decimal";
import { closedWork } from "./closedWork";
import type { FieldFacts } from "./fieldFacts";
import type { Kind } from "./kinds";
import type { Application, Operation, Season } from "./season";
import { workByField, type FieldWork, type WorkByField, type WorkRow } from "./work";

export type SeasonWork = { readonly ofItems: WorkByField<Application>; readonly ofOperations: WorkByField<Operation> };

/** Kinds that are this crop's whenever they are paid for. */
export const afterHarvest: ReadonlySet<Kind> = new Set<Kind>(["drying", "haul"]);

export function seasonWork(
  season: Pick<Season, "applications" | "operations" | "fields" | "items">,
  facts: readonly FieldFacts[],
): SeasonWork {
  const kindOf = new Map(season.items.map(({ name, kind }) => [name, kind]));
  return {
    ofItems: closed(
      workByField(
        season.applications,
        season.fields,
        (row) => row.item,
        () => one,
      ),
      facts,
      ({ item }) => afterHarvest.has(kindOf.get(item)!),
    ),
    // Operations are one where their names are, however they are typed.
    ofOperations: closed(
      workByField(
        season.operations,
        season.fields,
        (row) => row.operation.toLowerCase(),
        (row) => row.passes,
      ),
      facts,
      ({ kind }) => afterHarvest.has(kind),
    ),
  };
}

/** The same work, that of the fields whose harvest is done divided into this crop's and the next one's. */
function closed<Row extends WorkRow>(
  byField: WorkByField<Row>,
  facts: readonly FieldFacts[],
  staysWithCrop: (row: Row) => boolean,
): WorkByField<Row> {
  const done = new Map(
    facts.flatMap(({ field, harvested }) => (harvested === null ? [] : [[field.name, harvested.weighed.last] as const])),
  );
  if (done.size === 0) return byField;
  return new Map(
    [...byField].map(([field, works]) => {
      const last = done.get(field);
      return [
        field,
        last === undefined
          ? works
          : new Map([...works].map(([name, work]): [string, FieldWork<Row>] => [name, closedWork(work, last, staysWithCrop)])),
      ];
    }),
  );
}
