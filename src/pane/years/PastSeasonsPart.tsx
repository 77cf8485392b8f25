import { useMemo } from "react";
import { planningCaution } from "../../core/cautions";
import { grouped } from "../../core/grouped";
import { cropYears, type CropYear } from "../../core/history/cropYears";
import { fieldHistory } from "../../core/history/provenYield";
import { historyWords } from "../../workbook/historyWords";
import { keptSeason } from "../../workbook/next/keptSeason";
import type { SeasonReport } from "../../workbook/seasonReport";
import { pastSeasonsSheet } from "../../workbook/sheets/pastSeasonsSheet";
import { Disclosure } from "../parts/Disclosure";
import { Incomplete } from "../parts/Incomplete";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { FigureTable } from "../season/FigureTable";
import { KeepSeasonButton } from "./KeepSeasonButton";
import { NextSeasonPart } from "./NextSeasonPart";
import { yearRows } from "./yearRows";
import { YearsDrawing } from "./YearsDrawing";
import { pricePlot, yieldPlot } from "./yearsPlot";

type CropPicturesProps = { readonly crop: string; readonly years: readonly CropYear[]; readonly unit: string };

function CropPictures({ crop, years, unit }: CropPicturesProps) {
  const { format } = usePane();
  const [yields, prices] = [yieldPlot(crop, years, unit, format), pricePlot(crop, years, unit, format)];
  return (
    <>
      {yields !== null && (
        <YearsDrawing
          plot={yields}
          caption={`${crop}, ${unit} per ${format.areaName}: goal left, yield right`}
          looks={["pn-year-plan", "pn-bar-income"]}
        />
      )}
      {prices !== null && (
        <YearsDrawing
          plot={prices}
          caption={`${crop}, ${format.currency} per ${unit}: price needed for full cost left, price got right`}
          looks={["pn-bar-cost", "pn-bar-income"]}
        />
      )}
    </>
  );
}

/** What past years came to, the proven yield of each field beside its goal, and the way into the next season. */
export function PastSeasonsPart({ report }: { readonly report: SeasonReport }) {
  const { format } = usePane();
  const { pastSeasons, fields, settings } = report.season;
  const byCrop = useMemo(() => [...grouped(cropYears(pastSeasons), ({ crop }) => crop)], [pastSeasons]);
  const units = new Map(report.season.crops.map(({ name, yieldUnit }) => [name, yieldUnit]));
  const kept = useMemo(() => keptSeason(report), [report]);
  return (
    <section className="pn-card" aria-label="Past seasons">
      <Disclosure look="section" label="Past seasons and the next one">
        <Incomplete of={{ of: "years" }} problems={report.problemsOf({ of: "years" }).length} />
        {byCrop.length === 0 && (
          <p>No past season is kept yet. Keep this one once it is harvested, or type earlier years into the table Past seasons.</p>
        )}
        {byCrop.map(([crop, years]) => (
          <div key={crop} className="pn-form">
            <CropPictures crop={crop} years={years} unit={units.get(crop) ?? "unit"} />
            <FigureTable
              caption={`${crop}, per ${format.areaName}; price needed for full cost and price got, ${format.currency} per ${units.get(crop) ?? "unit"}`}
              corner="Season"
              columns={["goal", "yield", "needed", "got", "net"]}
              rows={yearRows(years, format)}
            />
          </div>
        ))}
        {pastSeasons.length > 0 && (
          <Disclosure look="line" label="Goal beside proven yield, field by field">
            <ul>
              {fields.map((field) => {
                const history = fieldHistory(pastSeasons, field.name, field.crop, settings.seasonYear);
                if (history.years.length === 0 && history.endsBefore === null) return null;
                return (
                  <li key={field.name}>
                    {field.name}: goal {format.yield(field.yieldGoal)}, proven{" "}
                    {field.provenYield === null ? "not known" : format.yield(field.provenYield)}. {historyWords(history, field)}
                  </li>
                );
              })}
            </ul>
          </Disclosure>
        )}
        {pastSeasons.length > 0 && <WriteButton label="Write the sheet “Past seasons by crop”" sheets={() => [pastSeasonsSheet(report)]} />}
        {kept !== null && <KeepSeasonButton kept={kept} year={settings.seasonYear!} />}
        <NextSeasonPart report={report} />
        <p className="pn-note">{planningCaution}</p>
      </Disclosure>
    </section>
  );
}
