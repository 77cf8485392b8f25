import { useState } from "react";
import type { SeasonReport } from "../../workbook/seasonReport";
import { weatherFileUnits, type WeatherFileUnit } from "../../workbook/weatherFile";
import { Entry } from "../parts/Entry";
import { FileForm, UnitOfFile } from "../parts/FileForm";
import { fileDaysView, usualPlace, type FileDaysDraft } from "./fileDays";

const unitWords: Readonly<Record<WeatherFileUnit, string>> = {
  "F and in": "°F and inches",
  "C and mm": "°C and millimeters",
  "tenths of C and mm": "tenths of °C and of a millimeter",
};
/** Years before the season's that a normal is well taken from. */
const yearsOfNormal = 10;

/** Daily weather from a file of a station, chosen or pasted: its days become entries of the table Weather in one step. */
export function FileDaysForm({ report: { season } }: { readonly report: SeasonReport }) {
  const year = season.settings.seasonYear;
  const [draft, setDraft] = useState<FileDaysDraft>({
    text: "",
    unit: null,
    place: "",
    fromYear: year === null ? "" : String(Number(year) - yearsOfNormal),
  });
  const view = fileDaysView(draft, season);
  const set = (of: Partial<FileDaysDraft>) => setDraft((before) => ({ ...before, ...of }));
  return (
    <FileForm
      name="Days from a file"
      files="A file of daily weather (comma-separated)"
      accept=".csv,.txt,text/csv"
      text={draft.text}
      take={(text) => set(text === "" ? { text } : { text, place: usualPlace(season, text) })}
      view={view}
      table="Weather"
      things={["1 day", "days"]}
    >
      {view.asksUnit && (
        <UnitOfFile
          label="Its degrees and rain are in"
          units={weatherFileUnits}
          words={unitWords}
          chosen={draft.unit}
          choose={(unit) => set({ unit })}
        />
      )}
      <div className="pn-pair">
        <Entry label="Place" value={draft.place} hint="as Weather place in Fields" change={(place) => set({ place })} />
        <Entry label="From year" numeric value={draft.fromYear} change={(fromYear) => set({ fromYear })} />
      </div>
    </FileForm>
  );
}
