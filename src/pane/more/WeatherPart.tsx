import { useMemo } from "react";
import { accounts } from "../../core/accounts";
import { countingOf, type FieldWeather } from "../../core/weather/fieldWeather";
import type { SeasonReport } from "../../workbook/seasonReport";
import { freezeWords, gapNotes, heatUnit, heatWords, weatherSheet } from "../../workbook/sheets/weatherSheet";
import { Disclosure } from "../parts/Disclosure";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { FigureTable } from "../season/FigureTable";
import { DrydownPart } from "./DrydownPart";
import { FileDaysForm } from "./FileDaysForm";
import { maturityLines, type MaturityLine } from "./maturityView";

/** Heat and rain of every planted field, and the days between its projected maturity and a freeze. */
export function WeatherPart({ report }: { readonly report: SeasonReport }) {
  const { season } = report;
  const all = useMemo(() => accounts(season).weather, [season]);
  if (report.figures.crops.length === 0) return null;
  return (
    <section className="pn-card" aria-label="Weather">
      <Disclosure look="section" label="Weather">
        {all.length > 0 && <Recorded report={report} all={all} />}
        <Disclosure look="line" label="When to harvest: field or dryer" keeps>
          <DrydownPart report={report} weather={all} />
        </Disclosure>
        <Disclosure look="line" label="Days from a file">
          <FileDaysForm report={report} />
        </Disclosure>
      </Disclosure>
    </section>
  );
}

/** What is recorded of every planted field, and what follows from it. */
function Recorded({ report, all }: { readonly report: SeasonReport; readonly all: readonly FieldWeather[] }) {
  const { format } = usePane();
  const { season } = report;
  const heat = heatUnit(countingOf(season));
  const rated = maturityLines(all, format);
  return (
    <>
      <p>
        {heatWords(countingOf(season))} from the day after planting to {all[0]!.to}. All of it an estimate.
      </p>
      <FigureTable
        caption={`${heat} and rain so far`}
        corner="Field"
        columns={[heat, "normal", "rain", "stage"]}
        rows={all.map(({ field, heatUnits, normal, rain, stage }) => ({
          name: field,
          cells: [
            format.whole(heatUnits),
            normal === null ? "–" : format.whole(normal),
            rain === null ? "–" : format.quantity(rain),
            stage ?? "–",
          ],
        }))}
      />
      {rated.length > 0 && <MaturityStrips lines={rated} freeze={freezeWords(season)} />}
      {gapNotes(all).map((words) => (
        <p key={words} className="pn-note">
          {words}
        </p>
      ))}
      <WriteButton label="Write the sheet “Heat and rain”" sheets={() => [weatherSheet(report)]} />
    </>
  );
}

/** A line and a strip of dates a field; what the strip shows stands beside it in words. */
function MaturityStrips({ lines, freeze }: { readonly lines: readonly MaturityLine[]; readonly freeze: string }) {
  return (
    <>
      <p className="pn-note">
        Projected maturity. Bar: earliest to latest, as past years went on; thick mark: on their mean. Thin marks: the {freeze} of past
        years, dashed the earliest, solid the median. Strips run to the end of the year.
      </p>
      <ul className="pn-items">
        {lines.map(({ field, matures, says, strip: { early, width, date, freezes } }) => (
          <li key={field} className="pn-item">
            <div className="pn-total">
              <span>{field}</span>
              <span>{matures}</span>
            </div>
            <svg className="pn-strip" aria-hidden="true">
              <line x1="0%" x2="100%" y1="8" y2="8" />
              <rect className="pn-bounds" x={`${early}%`} width={`${width}%`} y="3" height="10" />
              {freezes !== null && (
                <line className="pn-freeze pn-freeze-earliest" x1={`${freezes.earliest}%`} x2={`${freezes.earliest}%`} y1="0" y2="16" />
              )}
              {freezes !== null && <line className="pn-freeze" x1={`${freezes.median}%`} x2={`${freezes.median}%`} y1="0" y2="16" />}
              <line className="pn-matures" x1={`${date}%`} x2={`${date}%`} y1="1" y2="15" />
            </svg>
            <p className="pn-note">{says}</p>
          </li>
        ))}
      </ul>
    </>
  );
}
