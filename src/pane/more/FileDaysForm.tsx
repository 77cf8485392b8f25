import { Field, Select, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import type { SeasonReport } from "../../workbook/seasonReport";
import { weatherFileUnits, type WeatherFileUnit } from "../../workbook/weatherFile";
import { addEntries, lostWords } from "../commands/addEntries";
import { failureWords } from "../failure";
import { Button } from "../parts/Button";
import { Entry } from "../parts/Entry";
import { ToldLine, type Told } from "../parts/Told";
import { usePane } from "../paneContext";
import { fileDaysView, usualPlace, type FileDaysDraft } from "./fileDays";

const unitWords: Readonly<Record<WeatherFileUnit, string>> = {
  "F and in": "°F and inches",
  "C and mm": "°C and millimeters",
  "tenths of C and mm": "tenths of °C and of a millimeter",
};
/** Years before the season's that a normal is well taken from. */
const yearsOfNormal = 10;

/** Daily weather from a file of a station, chosen or pasted: its days become entries of the table Weather in one step. */
export function FileDaysForm({ report }: { readonly report: SeasonReport }) {
  const { host, watch, format, fault } = usePane();
  const { season } = report;
  const year = season.settings.seasonYear;
  const [draft, setDraft] = useState<FileDaysDraft>({
    text: "",
    unit: null,
    place: "",
    fromYear: year === null ? "" : String(Number(year) - yearsOfNormal),
  });
  const [isAdding, setAdding] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const view = fileDaysView(draft, season);
  const set = (of: Partial<FileDaysDraft>) => {
    setTold(null);
    setDraft((before) => ({ ...before, ...of }));
  };
  const take = (text: string) => set({ text, place: usualPlace(season, text) });
  const open = async (file: File | undefined) => {
    if (file !== undefined) take(await file.text());
  };
  const add = async () => {
    const content = watch.state().reading?.content;
    if (view.rows === null || content === undefined) return;
    setAdding(true);
    const added = await addEntries(host, content, "Weather", view.rows);
    if (added.ok) await watch.refresh();
    setAdding(false);
    if (!added.ok) return setTold({ tone: "failed", text: failureWords(added.failure, "The days were not added.") });
    const lost = lostWords(added.value);
    set({ text: "" });
    setTold({ tone: "done", text: `${view.rows.length} ${view.rows.length === 1 ? "day was" : "days were"} added.${lost}` });
  };
  return (
    <form
      className="pn-form"
      aria-label="Days from a file"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (!isAdding) add().catch(fault);
      }}
    >
      <label className="pn-file">
        A file of daily weather (comma-separated)
        <input type="file" accept=".csv,.txt,text/csv" onChange={({ target }) => void open(target.files?.[0]).catch(fault)} />
      </label>
      <Field label="Or its lines, headings and all">
        <Textarea rows={4} value={draft.text} onChange={(_, { value }) => take(value)} />
      </Field>
      {view.asksUnit && (
        <Field label="Its degrees and rain are in">
          <Select
            value={draft.unit ?? ""}
            onChange={(_, { value }) => set({ unit: weatherFileUnits.find((each) => each === value) ?? null })}
          >
            <option value="">choose</option>
            {weatherFileUnits.map((unit) => (
              <option key={unit} value={unit}>
                {format.words(unitWords[unit])}
              </option>
            ))}
          </Select>
        </Field>
      )}
      <div className="pn-pair">
        <Entry label="Place" value={draft.place} hint="as Weather place in Fields" change={(place) => set({ place })} />
        <Entry label="From year" numeric value={draft.fromYear} change={(fromYear) => set({ fromYear })} />
      </div>
      <output className="pn-says">
        {view.says.map((words) => (
          <span key={words} className="pn-line">
            {words}
          </span>
        ))}
      </output>
      {view.fault !== null && <p className="pn-fault">{view.fault}</p>}
      <Button type="submit" appearance="primary" disabledFocusable={isAdding || view.rows === null}>
        {isAdding ? "Adding …" : "Add the days"}
      </Button>
      <ToldLine told={told} />
    </form>
  );
}
