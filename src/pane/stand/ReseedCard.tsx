import { Field as FluentField, Select } from "@fluentui/react-components";
import { useId, useState } from "react";
import type { FieldStand, PartStand } from "../../core/stand/fieldStand";
import { adjusterCaution } from "../../core/cautions";
import { reseedNotices } from "../../core/reseed";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Disclosure } from "../parts/Disclosure";
import { Entry } from "../parts/Entry";
import { typedAs } from "../parts/typed";
import { Lines } from "../parts/Lines";
import { FigureTable } from "../season/FigureTable";
import { usePane } from "../paneContext";
import { useKept } from "../useKept";
import { useDecimalComma } from "../useDecimalComma";
import { countsOf, emptyReseed, reseedQuestion, type ReseedDraft, type ReseedField, type ReseedSubject } from "./reseedDraft";
import { ReplantEstimate } from "./ReplantEstimate";
import { cropOfRule } from "./insurerEstimate";
import { reseedView } from "./reseedView";
import { SaveReseed } from "./SaveReseed";
import { isThin, thinnestPart } from "./standView";
import { today } from "../today";

export type ReseedCardProps = { readonly stand: FieldStand; readonly report: SeasonReport };

/** Keep the stand or seed again: what must be said first, then the question and its answer. */
export function ReseedCard({ stand, report }: ReseedCardProps) {
  const heading = useId();
  return (
    <section className="pn-card pn-crop" aria-labelledby={heading}>
      <header>
        <h3 id={heading}>Keep or replant</h3>
      </header>
      <p className="pn-notice-line">
        <strong>{adjusterCaution}</strong>
      </p>
      {stand.table === null ? (
        <p>No table of yield by date and stand is chosen for {stand.field.crop}, so keeping cannot be compared with replanting.</p>
      ) : (
        <Disclosure
          look="section"
          label={isThin(stand) ? "Compare keeping with replanting" : "The stand is not thin; compare keeping with replanting all the same"}
          keeps
        >
          <ul className="pn-notice-list">
            {reseedNotices
              .filter((words) => words !== adjusterCaution)
              .map((words) => (
                <li key={words}>{words}</li>
              ))}
          </ul>
          <Reseed stand={stand} report={report} />
        </Disclosure>
      )}
    </section>
  );
}

const wholeField = "";

/** The question about one part of the field, the thinnest first, or about all of it. */
function Reseed({ stand, report }: ReseedCardProps) {
  const [chosen, setChosen] = useState(() => thinnestPart(stand)?.name ?? wholeField);
  const part = stand.parts.length === 1 ? null : (stand.parts.find(({ name }) => name === chosen) ?? null);
  const named = stand.parts.flatMap(({ name, summary }) => (name === null || summary === null ? [] : [name]));
  return (
    <>
      {named.length > 0 && (
        <FluentField label="Part of the field">
          <Select value={part?.name ?? wholeField} onChange={(_, { value }) => setChosen(value)}>
            {named.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
            <option value={wholeField}>the whole field</option>
          </Select>
        </FluentField>
      )}
      <Question key={part?.name ?? wholeField} subject={{ stand, part }} report={report} />
    </>
  );
}

type QuestionProps = { readonly subject: ReseedSubject; readonly report: SeasonReport };

function Question({ subject, report }: QuestionProps) {
  const { stand, part } = subject;
  const { format } = usePane();
  const decimalComma = useDecimalComma();
  const [changed, setChanged] = useKept<Partial<ReseedDraft>>(`replant ${stand.field.name}, ${part?.name ?? wholeField}`, () => ({}));
  // What is not typed over follows the counts and the season.
  const draft: ReseedDraft = { ...emptyReseed(report, subject, decimalComma), ...changed };
  const { faults, question } = reseedQuestion(draft, report, subject, decimalComma);
  const mine = report.figures.crops.find(({ crop }) => crop === stand.field.crop)!;
  const ruled = cropOfRule(mine.crop, mine.yieldUnit, format.areaUnit);
  const field = mine.fields.find((each) => each.field === stand.field.name)!;
  const { outlook } = field.outlook.budget.yields;
  const landOf = (of: PartStand) => ({ area: of.area, yield: of.outlook ?? outlook });
  const ground = {
    summary: countsOf(subject),
    concerned: part === null ? { area: stand.field.area, yield: outlook } : landOf(part),
    others: part === null ? [] : stand.parts.filter((other) => other !== part).map(landOf),
    yieldUnit: mine.yieldUnit,
    today: today(),
  };
  const view = question === null ? null : reseedView(question, ground, format);
  const box = (of: ReseedField, label: string, hint?: string) => (
    <Entry
      label={label}
      value={draft[of]}
      fault={faults[of]}
      hint={hint}
      {...(of === "date" ? { type: "date" as const } : { numeric: true })}
      change={(value) => setChanged((before) => ({ ...before, [of]: value }))}
    />
  );
  const per = format.perArea;
  return (
    <>
      <div className="pn-form" role="group" aria-label="The question">
        <div className="pn-pair">
          {box("area", format.areaUnit === "ac" ? "Acres to replant" : "Hectares to replant", "less than the field for a part")}
          {box("stand", "Present stand", `plants per ${format.areaName}, as counted`)}
        </div>
        <div className="pn-pair">
          {box("date", "Replanting date")}
          {box("newStand", "Stand after replanting", `plants per ${format.areaName}; the target again`)}
        </div>
        <p className="pn-note">Costs of replanting, {per}:</p>
        <div className="pn-pair">
          {box("seed", "Seed", "as the first seeding cost")}
          {box("seedCredit", "Seller's credit on it")}
        </div>
        <div className="pn-pair">
          {box("endOldStand", "Ending the old stand")}
          {box("pass", "Planting pass")}
        </div>
        <div className="pn-pair">
          {box("herbicide", "Herbicide")}
          {box("insurance", "Insurance payment", "as your insurer said")}
        </div>
        {ruled !== null && (
          <Disclosure look="line" label="Estimate the insurance payment" keeps>
            <ReplantEstimate
              crop={ruled}
              take={(payment) => setChanged((before) => ({ ...before, insurance: typedAs(payment, decimalComma) }))}
            />
          </Disclosure>
        )}
        <Disclosure look="line" label="Treatment, other costs, price, moisture, allowance" keeps>
          <div className="pn-pair">
            {box("treatment", `Treatment, ${per}`)}
            {box("other", `Other, ${per}`)}
          </div>
          <div className="pn-pair">
            {box("price", `Price per ${mine.yieldUnit}`)}
            {box("drying", `Drying per ${mine.yieldUnit} and point`)}
          </div>
          <div className="pn-pair">
            {box("keptPoints", "Points above standard, kept")}
            {box("newPoints", "Points above standard, replanted", "late seed comes in wetter")}
          </div>
          {box("allowance", "Off the replanted yield, %", "for the troubles of replanting; blank: nothing")}
        </Disclosure>
      </div>
      <div aria-live="polite">
        {view === null && <p className="pn-fault">Fix the boxes marked, and the answer follows.</p>}
        {view?.known === false && <p className="pn-fault">{view.why}</p>}
        {view?.known === true && (
          <>
            <p>
              <strong>{view.decision}</strong>
            </p>
            {view.notEntered !== "" && <p>{view.notEntered}</p>}
            <p className="pn-main">
              <span className="pn-figure">{view.figure}</span> <span className="pn-unit">{view.inAll}</span>
            </p>
          </>
        )}
      </div>
      {view?.known === true && (
        <>
          <Lines lines={view.lines} />
          {view.home.map((words) => (
            <p key={words} className="pn-note">
              {words}
            </p>
          ))}
          <FigureTable
            caption={`Gain from replanting by stand kept and replanting date, ${per}`}
            corner="stand"
            columns={view.grid.columns}
            rows={view.grid.rows}
          />
          <SaveReseed question={question!} answer={view.answer} field={field} part={part?.name ?? null} report={report} />
        </>
      )}
    </>
  );
}
