/** What a field was planned to be and what happened to it, in sentences for the pane and for paper alike. */
import { fieldHistory } from "../../core/history/provenYield";
import type { CropFigures, FieldFigures } from "../../core/figures";
import { accounts } from "../../core/accounts";
import { leftOutNotes, soFar } from "../harvestNotes";
import { historyWords } from "../historyWords";
import type { SeasonReport } from "../seasonReport";
import { shownQuantity } from "../shown";
import { grouped } from "../sheets/amounts";
import { programmesOf } from "../sheets/weedsSheet";
import { type Teller, yieldWords, money, areaWord } from "./teller";
import { plannedLines, plantedLines } from "./plantedLines";
import { weatherLines, weedLines } from "./seasonLines";

/** A subject with what is known of it; a subject of which nothing is entered says so, or is left out. */
export type StoryPart = { readonly name: string; readonly lines: readonly string[] };
type FieldParts = (field: FieldFigures, crop: CropFigures) => readonly StoryPart[];

/** @param day how a day is written; left out: as the year, month and day of its entry */
export function fieldStories(report: SeasonReport, day: (date: string) => string = (date) => date): FieldParts {
  const { season, figures } = report;
  const weather = new Map(accounts(season).weather.map((each) => [each.field, each]));
  const sprayed = new Map(programmesOf(report).map((each) => [each.field, each]));
  const outlooks = new Map(figures.outlooks.map((each) => [each.field.name, each]));
  const entries = new Map(season.fields.map((each) => [each.name, each]));
  return (field, crop) => {
    const entry = entries.get(field.field)!;
    const teller: Teller = { report, field, crop, entry, day };
    const parts: readonly StoryPart[] = [
      { name: "Planned", lines: plannedLines(teller) },
      { name: "Planted and counted", lines: plantedLines(teller, outlooks.get(field.field)) },
      { name: "Heat and rain", lines: weatherLines(teller, weather.get(field.field)) },
      { name: "Passes against weeds", lines: weedLines(teller, sprayed.get(field.field)) },
      { name: "Harvest", lines: harvestLines(teller) },
      { name: "Past seasons", lines: pastLines(teller) },
    ];
    return parts.filter(({ lines }) => lines.length > 0);
  };
}

function harvestLines(of: Teller): readonly string[] {
  const { field, crop, report } = of;
  const { weighed, final } = field;
  const done = (): string => {
    const { used, goal } = final!.budget.yields;
    const { quantity: units, loads, moisture } = weighed!;
    return (
      `Done: ${grouped(shownQuantity(units))} ${crop.yieldUnit} in ${loads.toFixed()} ${loads.eq("1") ? "load" : "loads"}, ` +
      `${yieldWords(used)} per ${areaWord(of)} for a goal of ${yieldWords(goal)}${moisture === null ? "" : `, ${moisture.toFixed(1)} % moisture`}.`
    );
  };
  return [
    ...(weighed === null ? [] : [final === null ? soFar(field, crop.yieldUnit).slice(field.field.length + 2) : done()]),
    ...leftOutNotes(report, { fields: [field] }),
  ].map((words) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`);
}

function pastLines({ entry, report: { season } }: Teller): readonly string[] {
  const history = fieldHistory(season.pastSeasons, entry.name, entry.crop, season.settings.seasonYear);
  const years = season.pastSeasons
    .filter(({ field, season: year }) => field === entry.name && (season.settings.seasonYear === null || year < season.settings.seasonYear))
    .sort((a, b) => b.season.localeCompare(a.season))
    .map(
      ({ season: year, crop, yield: harvested, net }) =>
        `${year} ${crop}${harvested === null ? "" : ` ${yieldWords(harvested)}`}${net === null ? "" : `, net ${money(net)}`}`,
    );
  return [
    ...(years.length === 0 ? [] : [`${years.join("; ")}.`]),
    ...(history.years.length === 0 && history.endsBefore === null ? [] : [`Proven yield: ${historyWords(history, entry)}`]),
  ];
}
