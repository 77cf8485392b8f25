import { useEffect, useId, useMemo, useRef } from "react";
import { fieldStories } from "../../workbook/story/fieldStory";
import { ofLayer } from "../../workbook/incompleteMark";
import { rentNotes } from "../../workbook/rentNotes";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Folds } from "../parts/Folds";
import { Incomplete } from "../parts/Incomplete";
import { usePane } from "../paneContext";
import { CostTreePart } from "../season/CostTreePart";
import { entryTeller } from "../parts/entryView";
import { FigureTable } from "../season/FigureTable";
import { MovedPart } from "../season/MovedPart";
import { StandPage } from "../stand/StandPage";
import { fieldChoices } from "../stand/standView";
import { asCrop } from "../../workbook/asCrop";
import { fieldView } from "./fieldsView";
import { goalAndHarvestView } from "./harvestView";

/** What was planned, and what happened, subject by subject. */
function StoryPart({ parts }: { readonly parts: ReturnType<ReturnType<typeof fieldStories>> }) {
  return (
    <>
      {parts.map(({ name, lines }) => (
        <section key={name} aria-label={name}>
          <p>
            <strong>{name}</strong>
          </p>
          {lines.map((words) => (
            <p key={words}>{words}</p>
          ))}
        </section>
      ))}
    </>
  );
}

/** One field: what it costs and needs, what moved it, its counts and its outlook, and whether to replant. */
export function FieldPage({ name, report }: { readonly name: string; readonly report: SeasonReport }) {
  const { format, layer, showField } = usePane();
  const heading = useId();
  const back = useRef<HTMLButtonElement>(null);
  // The line that was pressed is gone with the list; the focus goes to the way back to it.
  useEffect(() => back.current?.focus(), []);
  const choices = useMemo(() => fieldChoices(report), [report]);
  const stories = useMemo(() => fieldStories(report, format.day), [report, format]);
  const teller = useMemo(() => entryTeller(report, format), [report, format]);
  const crop = report.figures.crops.find(({ fields }) => fields.some(({ field }) => field === name))!;
  const field = crop.fields.find((each) => each.field === name)!;
  const view = fieldView(crop, field, layer, format);
  const harvest = goalAndHarvestView(crop, field, layer, format);
  const alone = asCrop(crop, field);
  const subject = { of: "field", name } as const;
  return (
    <>
      <p className="pn-way">
        <button ref={back} type="button" className="pn-link pn-back" onClick={() => showField(null)}>
          ‹ All fields
        </button>
        <select className="pn-select" aria-label="Field" value={name} onChange={({ target }) => showField(target.value)}>
          {choices.map((choice) => (
            <option key={choice.field} value={choice.field}>
              {choice.words}
            </option>
          ))}
        </select>
      </p>
      <section className="pn-card" aria-labelledby={heading}>
        <header>
          <h3 id={heading}>{name}</h3>
          <span className="pn-note">
            {crop.crop}, {format.quantity(field.area)} {format.areaUnit}
          </span>
        </header>
        <p className="pn-main pn-crop-main">
          <span className="pn-figure">{view.figure}</span> <span className="pn-unit">{view.unit}</span>
        </p>
        <Incomplete of={subject} problems={ofLayer(report.problemsOf(subject), layer).length} />
        <p>{view.says}</p>
        {rentNotes(report, alone).map((words) => (
          <p key={words} className="pn-note">
            {words}
          </p>
        ))}
        <Folds
          folds={[
            {
              name: "Costs and break-evens",
              content: () => (
                <FigureTable
                  caption={`${name}, ${format.currency}, per ${format.areaName} and per ${crop.yieldUnit}`}
                  columns={view.columns}
                  rows={view.rows}
                />
              ),
            },
            { name: "Where its cost goes", content: () => <CostTreePart crop={alone} layer={layer} report={report} teller={teller} /> },
            ...(harvest === null
              ? []
              : [
                  {
                    name: "Goal against harvest",
                    content: () => <FigureTable caption={harvest.caption} columns={harvest.columns} rows={harvest.rows} />,
                  },
                ]),
            { name: "Plan and season", content: () => <StoryPart parts={stories(field, crop)} /> },
            { name: "What moved it", content: () => <MovedPart crop={alone} layer={layer} teller={teller} /> },
          ]}
        />
      </section>
      <StandPage report={report} field={name} />
    </>
  );
}
