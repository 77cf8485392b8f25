/** What the stand counts of a season say of each field, and of its yield. */
import type { Result } from "../../result";
import type { Crop, Field, Season } from "../season";
import { emergence, standSummary, type StandSummary } from "./standSummary";
import type { StandTable } from "./standTable";
import { yieldOutlook, type OutlookRefusal, type YieldOutlook } from "./yieldOutlook";
import type { Decimal } from "../numbers/decimal";

export type FieldStand = {
  readonly field: Field;
  readonly summary: StandSummary;
  /** Plants standing for a seed dropped; `null` where the seeds dropped are not entered. */
  readonly emergence: Decimal | null;
  /** The table in use; `null` where there is none for the crop. */
  readonly table: StandTable | null;
  /** Whether the setting Stand response names it; the usual table of a crop stands in where it names none. */
  readonly chosen: boolean;
  /** Why the table gives no answer, or the yield that it gives; `null` without a table. */
  readonly outlook: Result<YieldOutlook, OutlookRefusal> | null;
};

/** The fields that have counts, by name. */
export function fieldStands(
  season: Pick<Season, "settings" | "crops" | "fields" | "standCounts" | "standTables" | "published">,
): ReadonlyMap<string, FieldStand> {
  const stands = new Map<string, FieldStand>();
  const counts = season.standCounts;
  if (counts.length === 0) return stands;
  const crops = new Map(season.crops.map((crop) => [crop.name, crop]));
  for (const field of season.fields) {
    const summary = standSummary(
      counts.filter((count) => count.field === field.name),
      field.area,
      season.settings.areaUnit,
    );
    if (summary === null) continue;
    const table = tableFor(season, crops.get(field.crop)!);
    stands.set(field.name, {
      field,
      summary,
      table,
      chosen: isChosen(season, table),
      emergence: field.seedsDropped === null ? null : emergence(summary.mean, field.seedsDropped),
      outlook: table === null ? null : outlookOf(field, summary, table, season.settings.areaUnit),
    });
  }
  return stands;
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
  summary: StandSummary,
  table: StandTable,
  areaUnit: Season["settings"]["areaUnit"],
): FieldStand["outlook"] {
  const { rowWidth } = field;
  return yieldOutlook({
    table,
    goal: field.yieldGoal,
    uniformityLoss: field.uniformityLoss,
    planned: { date: field.plannedPlanting ?? field.planted, stand: field.targetStand as typeof summary.mean | null, rowWidth, areaUnit },
    real: { date: field.planted ?? field.plannedPlanting, stand: summary.mean, rowWidth, areaUnit },
  });
}
