import { Field as FluentField, Select } from "@fluentui/react-components";
import { useState } from "react";
import type { FieldFigures } from "../../core/figures";
import { workCautions } from "../../core/partialBudget/layouts/layout";
import { drydownTables } from "../../core/tables/drydownTables";
import type { FieldWeather } from "../../core/weather/fieldWeather";
import type { SeasonReport } from "../../workbook/seasonReport";
import { SaveAsChange } from "../change/SaveAsChange";
import { Entry } from "../parts/Entry";
import { usePane } from "../paneContext";
import { FigureTable } from "../season/FigureTable";
import { useDecimalComma } from "../useDecimalComma";
import {
  drydownFields,
  drydownGround,
  drydownView,
  drydownWidth,
  emptyDrydown,
  ownRate,
  type DrydownAnswer,
  type DrydownBox,
  type DrydownDraft,
  type DrydownPlot,
} from "./drydownView";

type PartProps = { readonly report: SeasonReport; readonly weather: readonly FieldWeather[] };

/** When to harvest a field: let it dry in the field, or dry it. */
export function DrydownPart({ report, weather }: PartProps) {
  const fields = drydownFields(report);
  const [wanted, want] = useState("");
  const figures = fields.find(({ field }) => field === wanted) ?? fields[0];
  if (figures === undefined) return <p>No corn with a standard moisture in Crops is standing.</p>;
  return (
    <div className="pn-form">
      <FluentField label="Field">
        <Select value={figures.field} onChange={(_, { value }) => want(value)}>
          {fields.map(({ field }) => (
            <option key={field}>{field}</option>
          ))}
        </Select>
      </FluentField>
      <Question key={figures.field} report={report} figures={figures} weather={weather.find(({ field }) => field === figures.field)} />
    </div>
  );
}

type QuestionProps = { readonly report: SeasonReport; readonly figures: FieldFigures; readonly weather: FieldWeather | undefined };

function Question({ report, figures, weather }: QuestionProps) {
  const { format } = usePane();
  const decimalComma = useDecimalComma();
  const [typed, setTyped] = useState<Partial<DrydownDraft>>({});
  // What is not typed over follows the season.
  const draft = { ...emptyDrydown(report, figures, weather, decimalComma), ...typed };
  const view = drydownView(draft, report, figures, decimalComma, format);
  const set = (of: Partial<DrydownDraft>) => setTyped((before) => ({ ...before, ...of }));
  const crop = report.figures.crops.find(({ crop: name }) => name === figures.crop)!;
  const box = (of: DrydownBox, label: string, hint?: string) => (
    <Entry
      label={label}
      value={draft[of]}
      fault={view.faults[of]}
      hint={hint}
      {...(of === "from" || of === "lastSafe" ? { type: "date" as const } : { numeric: true })}
      change={(value) => set({ [of]: value })}
    />
  );
  return (
    <>
      <div className="pn-pair">
        {box("from", "On this day", "projected maturity, or a sample")}
        {box("moisture", "Moisture, %", "35 at black layer; a sample is better")}
      </div>
      <FluentField label="How fast it dries">
        <Select value={draft.rate} onChange={(_, { value }) => set({ rate: value })}>
          {drydownTables.map(({ name }) => (
            <option key={name}>{name}</option>
          ))}
          <option value={ownRate}>points a day of my own</option>
        </Select>
      </FluentField>
      {draft.rate === ownRate && box("perDay", "Points a day")}
      <div className="pn-pair">
        {box("charge", `Drying per ${crop.yieldUnit} and point`)}
        {box("lastSafe", "Last safe day", "that you would let it stand")}
      </div>
      <label className="pn-check">
        <input type="checkbox" checked={draft.countsLoss} onChange={() => set({ countsLoss: !draft.countsLoss })} /> Count what waiting
        loses, as published
      </label>
      <div aria-live="polite">
        {view.why !== null && <p className="pn-fault">{view.why}</p>}
        {view.answer !== null && (
          <p>
            <strong>{view.answer.says}</strong>
          </p>
        )}
      </div>
      {view.answer !== null && <Answer answer={view.answer} report={report} figures={figures} />}
    </>
  );
}

type AnswerProps = { readonly answer: DrydownAnswer; readonly report: SeasonReport; readonly figures: FieldFigures };

function Answer({ answer, report, figures }: AnswerProps) {
  const { format } = usePane();
  return (
    <>
      <figure className="pn-drawing">
        <Drawing plot={answer.plot} says={answer.says} />
        <figcaption className="pn-note">
          Line: dryer and what is lost, {format.perArea}; dashed: the dryer alone. Under the days: moisture, %. Mark: the cheapest safe day;
          beyond the upright line it is not safe. All of it an estimate.
        </figcaption>
      </figure>
      <FigureTable caption={`By harvest day, ${format.perArea}`} corner="Day" columns={["%", "dryer", "lost", "both"]} rows={answer.rows} />
      {answer.sources.map((words) => (
        <p key={words} className="pn-note">
          {words}
        </p>
      ))}
      {answer.wait !== null && (
        <>
          {[...workCautions("A later harvest"), ...answer.wait.layout.cautions].map((words) => (
            <p key={words} className="pn-note">
              {words}
            </p>
          ))}
          <SaveWait wait={answer.wait} report={report} figures={figures} />
        </>
      )}
    </>
  );
}

const foot = drydownGround + 44;

function Drawing({ plot, says }: { readonly plot: DrydownPlot; readonly says: string }) {
  const { format } = usePane();
  const { cost, drying, cheapest, unsafe, ticks, most } = plot;
  return (
    <svg viewBox={`0 0 ${drydownWidth} ${foot}`} role="img" aria-label={says}>
      {unsafe !== null && <path className="pn-axis" d={`M${unsafe} 18V${drydownGround}`} />}
      <polyline className="pn-dry-alone" points={drying} />
      <polyline className="pn-dry-cost" points={cost} />
      <path className="pn-axis" d={`M6 ${drydownGround}H${drydownWidth - 6}`} />
      <circle className="pn-dot" cx={cheapest.x} cy={cheapest.y} r={5} />
      <text x={6} y={13}>
        {format.whole(most.cost)}
      </text>
      {ticks.map(({ x, date, moisture }, index) => (
        <g key={date}>
          <path className="pn-axis" d={`M${x} ${drydownGround}v5`} />
          <text x={x} y={drydownGround + 20} textAnchor={index === 0 ? "start" : x > drydownWidth - 30 ? "end" : "middle"}>
            {format.day(date.slice(5))}
          </text>
          <text x={x} y={drydownGround + 38} textAnchor={index === 0 ? "start" : x > drydownWidth - 30 ? "end" : "middle"}>
            {moisture.toFixed(1)}
          </text>
        </g>
      ))}
    </svg>
  );
}

type SaveWaitProps = { readonly wait: NonNullable<DrydownAnswer["wait"]>; readonly report: SeasonReport; readonly figures: FieldFigures };

/** Saves waiting as a change, so that it stands beside the others. */
const SaveWait = ({ wait, report, figures }: SaveWaitProps) => (
  <>
    <p>To compare as a change: {wait.words}.</p>
    <SaveAsChange
      suggested={wait.name}
      layout="A later harvest"
      change={() => wait.layout.change}
      field={figures}
      acres={null}
      report={report}
    />
  </>
);
