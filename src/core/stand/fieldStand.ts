/** What the stand counts of a season say of each field, and of its yield. */
import type { Result } from "../../result";
import type { Crop, Field, Season } from "../season";
import { fieldParts, type FieldPart } from "./fieldParts";
import type { StandCount } from "./standCount";
import { emergence, standOfParts, standSummary, type StandSummary } from "./standSummary";
import type { StandTable } from "./standTable";
import { outlookOfParts, type OutlookOfParts, type OutlookRefusal, type YieldOutlook } from "./yieldOutlook";
import type { Decimal } from "../numbers/decimal";
import type { Yield } from "../numbers/units";

/** A part of a field with its stand and its yield; without a name: the field, or what of it lies in no part that has one. */
export type PartStand = FieldPart & {
  /** `null`: nobody counted there, and it stands at the target. */
  readonly summary: StandSummary | null;
  /** Less what unevenness takes; `null` where the table gives no answer, or there is none. */
  readonly outlook: Yield | null;
};

export type FieldStand = {
  readonly field: Field;
  /** Of all acres that were counted. */
  readonly summary: StandSummary;
  /** At least one; their acres add up to the field's. */
  readonly parts: readonly PartStand[];
  /** Counts from before the planting, which say nothing of what stands now. */
  readonly history: readonly StandCount[];
  /** Plants standing for a seed dropped; `null` where the seeds dropped are not entered. */
  readonly emergence: Decimal | null;
  /** The table in use; `null` where there is none for the crop. */
  readonly table: StandTable | null;
  /** Whether the setting Stand response names it; the usual table of a crop stands in where it names none. */
  readonly chosen: boolean;
  /** Why the table gives no answer, or the yield that it gives; `null` without a table. */
  readonly outlook: Result<YieldOutlook, OutlookRefusal> | null;
};

type StandSeason = Pick<Season, "settings" | "crops" | "fields" | "standCounts" | "standTables" | "published">;

/** The fields that have counts, by name. */
export function fieldStands(season: StandSeason): ReadonlyMap<string, FieldStand> {
  const stands = new Map<string, FieldStand>();
  const counts = new Map<string, StandCount[]>();
  for (const count of season.standCounts) {
    const there = counts.get(count.field);
    if (there === undefined) counts.set(count.field, [count]);
    else there.push(count);
  }
  for (const field of season.fields) {
    const stand = standOf(season, field, counts.get(field.name) ?? []);
    if (stand !== null) stands.set(field.name, stand);
  }
  return stands;
}

/** What some counts of a field say of it; `null` where none of them does. */
export function standOf(season: StandSeason, field: Field, counts: readonly StandCount[]): FieldStand | null {
  const { areaUnit } = season.settings;
  const { parts, history } = fieldParts(field, counts);
  const stands = parts.map((part) => ({ ...part, summary: standSummary(part.counts, part.area, areaUnit) }));
  const counted = stands.flatMap(({ area, summary }) => (summary === null ? [] : [{ area, summary }]));
  if (counted.length === 0) return null;
  const summary = standOfParts(counted, areaUnit);
  const table = tableFor(season, { name: field.crop });
  const outlook = table === null ? null : outlookOf(field, stands, table, areaUnit);
  const yields = outlook?.ok === true ? outlook.value.parts : [];
  return {
    field,
    summary,
    parts: stands.map((part, index) => ({ ...part, outlook: yields[index] ?? null })),
    history,
    table,
    chosen: isChosen(season, table),
    emergence: field.seedsDropped === null ? null : emergence(summary.mean, field.seedsDropped),
    outlook,
  };
}

/** In the setting Stand response: a crop of which it names no table has none, and its goal stays whatever date and stand say. */
export const noTable = "none";

const namesIn = ({ standResponse }: Pick<Season["settings"], "standResponse">): readonly string[] =>
  (standResponse ?? "").split(";").map((name) => name.trim().toLowerCase());

/** Whether the grower named this table. */
export const isChosen = ({ settings }: Pick<Season, "settings">, table: StandTable | null): boolean =>
  table !== null && namesIn(settings).includes(table.name.toLowerCase());

/**
 * The table that answers for a crop: of the tables that the setting names, separated by semicolons, the one of this
 * crop; else the usual one of the crop, unless the setting says "none" as well. The grower's own tables come before
 * published ones of the same name.
 */
export function tableFor(
  { settings, standTables: own = [], published }: Pick<Season, "settings" | "standTables" | "published">,
  crop: Pick<Crop, "name">,
): StandTable | null {
  const names = namesIn(settings);
  const grown = cropWord(crop.name);
  const ofCrop = (table: StandTable) => cropWord(table.crop) === grown;
  const named = [...own, ...published.tables].find((table) => names.includes(table.name.toLowerCase()) && ofCrop(table));
  return named ?? (names.includes(noTable) ? null : (published.usual.find(ofCrop) ?? null));
}

/** What is grown, from the name of a crop: the word that comes first, so that "Soybeans after corn" are soybeans. */
export function cropWord(name: string): string {
  const found = /corn|maize|soybean|wheat/.exec(name.toLowerCase())?.[0];
  return found === undefined ? name.trim().toLowerCase() : found === "maize" ? "corn" : found;
}

function outlookOf(
  field: Field,
  parts: readonly Omit<PartStand, "outlook">[],
  table: StandTable,
  areaUnit: Season["settings"]["areaUnit"],
): Result<OutlookOfParts, OutlookRefusal> {
  const { rowWidth } = field;
  const target = field.targetStand as StandSummary["mean"] | null;
  const question = {
    table,
    goal: field.yieldGoal,
    uniformityLoss: field.uniformityLoss,
    planned: { date: field.plannedPlanting ?? field.planted, stand: target, rowWidth, areaUnit },
  };
  return outlookOfParts(
    question,
    parts.map(({ area, planted, summary }) => ({
      area,
      real: { date: planted ?? field.planted ?? field.plannedPlanting, stand: summary?.mean ?? target, rowWidth, areaUnit },
    })),
  );
}
