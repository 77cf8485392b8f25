/** Proven yields that are not entered, from what past seasons came to. */
import { fieldHistory } from "../core/history/provenYield";
import type { Season } from "../core/season";
import { pastSeasonColumns } from "./columns/pastSeasons";
import type { Problem } from "./problem";
import { nearest } from "./words";

/** A field without a proven yield of its own has that of its past seasons, where there are enough of them. */
export function provenSettled(season: Season): Season {
  const { pastSeasons, settings } = season;
  if (pastSeasons.length === 0) return season;
  return {
    ...season,
    fields: season.fields.map((field) => {
      if (field.provenYield !== null) return field;
      const { proven, years } = fieldHistory(pastSeasons, field.name, field.crop, settings.seasonYear);
      return proven === null ? field : { ...field, provenYield: proven, provenYears: years.map((year) => year.season) };
    }),
  };
}

/** Fields of past seasons that are called nearly like one of today, once for each name. */
export function pastNames({ pastSeasons, fields }: Season): readonly Problem[] {
  const names = fields.map(({ name }) => name);
  const told = new Set(names);
  return pastSeasons.flatMap(({ field, source }): readonly Problem[] => {
    if (told.has(field)) return [];
    told.add(field);
    const like = nearest(field, names);
    // A field of today that has years of its own is no other spelling.
    if (like === null || pastSeasons.some((row) => row.field === like)) return [];
    return [
      {
        code: "past-unlike",
        at: { ...source, column: pastSeasonColumns.columns.field.heading },
        found: field,
        like,
        touches: [{ of: "years" }],
      },
    ];
  });
}
