import { useMemo } from "react";
import { fieldWeather, countingOf } from "../../core/weather/fieldWeather";
import type { SeasonReport } from "../../workbook/seasonReport";
import { freezeWords, gapNotes, heatUnit, heatWords, marginWords, weatherSheet } from "../../workbook/sheets/weather";
import { Disclosure } from "../parts/Disclosure";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { FigureTable } from "../season/FigureTable";

/** Heat and rain of every planted field, and the days between its projected maturity and a freeze. */
export function WeatherPart({ report }: { readonly report: SeasonReport }) {
  const { format } = usePane();
  const { season } = report;
  const all = useMemo(() => fieldWeather(season), [season]);
  if (all.length === 0) return null;
  const heat = heatUnit(countingOf(season));
  const rated = all.filter(({ maturity }) => maturity !== null);
  return (
    <section className="pn-card" aria-label="Weather">
      <Disclosure look="section" label="Weather">
        <p>{heatWords(countingOf(season))} from the day after planting to {all[0]!.to}. All of it an estimate.</p>
        <FigureTable
          caption={`${heat} and rain so far`} corner="Field" columns={[heat, "normal", "rain", "stage"]}
          rows={all.map(({ field, heatUnits, normal, rain, stage }) => ({
            name: field, cells: [format.whole(heatUnits), normal === null ? "–" : format.whole(normal), rain === null ? "–" : format.quantity(rain), stage ?? "–"],
          }))}
        />
        {rated.length > 0 && (
          <FigureTable
            caption={`Projected maturity, and days before or after the ${freezeWords(season)} of past years`} corner="Field" columns={["matures", "earliest", "latest", "median freeze", "first freeze"]}
            rows={rated.map(({ field, maturity, frostMargin }) => ({
              name: field, cells: [maturity!.date.slice(5), maturity!.early.slice(5), maturity!.late?.slice(5) ?? "not each year", ...(frostMargin === null ? ["–", "–"] : [marginWords(frostMargin.median), marginWords(frostMargin.earliest)])],
            }))}
          />
        )}
        {gapNotes(all).map((words) => <p key={words} className="pn-note">{words}</p>)}
        <WriteButton label="Write the sheet “Heat and rain”" sheets={() => [weatherSheet(report)]} />
      </Disclosure>
    </section>
  );
}
