/** Counts whose part of the field, or its acres, nobody can tell, and counts of a stand that is gone. */
import { sum } from "../core/numbers/decimal";
import type { Field, Season } from "../core/season";
import { byPart, fieldParts, newest } from "../core/stand/fieldParts";
import type { StandCount } from "../core/stand/standCount";
import { lastRound } from "../core/stand/standSummary";
import type { Named } from "./columns/column";
import { standCountColumns } from "./columns/standCounts";
import type { Problem } from "./problem";

const { columns } = standCountColumns;

export function standProblems({ fields, standCounts }: Season): readonly Problem[] {
  if (standCounts.length === 0) return [];
  const counts = new Map<string, StandCount[]>();
  for (const count of standCounts) {
    const there = counts.get(count.field);
    if (there === undefined) counts.set(count.field, [count]);
    else there.push(count);
  }
  return fields.flatMap((field) => {
    const ofField = counts.get(field.name);
    return ofField === undefined ? [] : [...ofParts(field, ofField), ...ofHistory(field, ofField)];
  });
}

const at = ({ source: { table, row } }: StandCount, { heading: column }: Named) => ({ table, row, column });

function ofParts(field: Field, counts: readonly StandCount[]): readonly Problem[] {
  if (counts.every(({ part }) => part === null)) return [];
  const touches = [{ of: "field", name: field.name }] as const;
  const { parts, history, homeless } = fieldParts(field, counts);
  const standing = counts.filter((count) => !history.includes(count));
  const named = parts.filter(({ name }) => name !== null);
  const problems: Problem[] = [];
  for (const name of new Set(standing.flatMap(({ part }) => part?.name ?? []))) {
    const of = standing.filter(({ part }) => part?.name === name);
    const all = counts.filter(({ part }) => part?.name === name);
    if (!byPart(counts).has(name)) problems.push({ code: "part-acres-missing", at: at(of[0]!, columns.partAcres), found: name, touches });
    problems.push(
      ...disagreeing(of, all, columns.partAcres, ({ part }) => part?.area?.toFixed() ?? null, touches),
      ...disagreeing(of, all, columns.partPlanted, ({ part }) => part?.planted ?? null, touches),
    );
  }
  const said = sum(
    named.map(
      ({ counts: of, name }) =>
        newest(
          counts.filter(({ part }) => part?.name === name),
          ({ part }) => part?.area ?? null,
        ) ?? of[0]!.part!.area!,
    ),
  );
  if (said.gt(field.area)) {
    const last = named.at(-1)!.counts[0]!;
    problems.push({ code: "parts-exceed", at: at(last, columns.partAcres), found: said.toFixed(), like: field.area.toFixed(), touches });
  }
  for (const count of homeless) problems.push({ code: "part-needed", at: at(count, columns.part), found: field.name, touches });
  const rest = parts.find(({ name }) => name === null);
  const lastNamed = named.flatMap((part) => part.counts).reduce((last, { date }) => (date > last ? date : last), "");
  const later = lastRound(rest?.counts ?? []).filter(({ date, part }) => part === null && date > lastNamed);
  if (named.length > 0 && later.length > 0)
    problems.push({
      code: "part-unsaid",
      at: at(later[0]!, columns.part),
      found: later[0]!.date,
      like: named.map(({ name }) => name).join(", "),
      touches,
    });
  return problems;
}

/** What spots of one part say otherwise than its newest entry does. */
function disagreeing(
  standing: readonly StandCount[],
  all: readonly StandCount[],
  column: Named,
  said: (count: StandCount) => string | null,
  touches: Problem["touches"],
): readonly Problem[] {
  const counting = newest(all, (count) => (said(count) === null ? null : count));
  if (counting === null) return [];
  const like = said(counting)!;
  return standing.flatMap((count): readonly Problem[] => {
    const found = said(count);
    return found === null || found === like
      ? []
      : [{ code: "part-disagrees", at: at(count, column), other: at(counting, column), found, like, touches }];
  });
}

/** Told once a field, at the first of them. */
function ofHistory(field: Field, counts: readonly StandCount[]): readonly Problem[] {
  const [first] = fieldParts(field, counts).history;
  if (first === undefined) return [];
  const planted = newest(
    counts.filter(({ part }) => (part?.name ?? null) === (first.part?.name ?? null)),
    ({ part }) => part?.planted ?? null,
  );
  return [
    {
      code: "counted-before-planting",
      at: at(first, columns.date),
      found: first.date,
      like: planted ?? field.planted ?? "",
      touches: [{ of: "field", name: field.name }],
    },
  ];
}
