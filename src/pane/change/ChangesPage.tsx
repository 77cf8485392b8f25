import type { ChangeFigures } from "../../core/partialBudget/changeFigures";
import { changeCautions, changeFindings } from "../../workbook/changeWords";
import { changeSheet } from "../../workbook/sheets/changeSheet";
import type { PageProps } from "../page";
import { CellLink } from "../parts/CellLink";
import { Disclosure } from "../parts/Disclosure";
import { Incomplete } from "../parts/Incomplete";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { FigureTable } from "../season/FigureTable";
import { AnswerPart } from "./AnswerPart";
import { comparedLines, overlayView } from "./changesView";
import { CountIn } from "./CountIn";
import { NewChange } from "./NewChange";

/** The changes of the season, what each must bring to pay, and a new one. */
export function ChangesPage({ report }: PageProps) {
  const { format, changeStart } = usePane();
  const { changes, overlays: over } = report.figures;
  const lines = comparedLines(changes, format);
  return (
    <>
      {changes.length === 0 ? (
        <p>
          No change is entered yet. A change is compared by what it adds and what it takes away, nothing else. Replanting is compared on a
          field's own page, from its counts.
        </p>
      ) : (
        <section className="pn-card" aria-label="Changes to compare">
          <header>
            <h3>Changes to compare</h3>
          </header>
          <p className="pn-compare-heads" aria-hidden="true">
            <span>change</span>
            <span>needs</span>
            <span>
              {format.currency}/{format.areaUnit}
            </span>
          </p>
          <ul className="pn-compare">
            {lines.map((line, index) => (
              <li key={line.name}>
                <Disclosure
                  look="line"
                  label={
                    <span className="pn-compare-line">
                      <strong>{line.name}</strong>
                      <span className="pn-number">
                        <span className="pn-for-readers">, needs </span>
                        {line.needs}
                      </span>
                      <span className="pn-note">
                        {line.about}
                        {line.isCounted && <strong>, counted in</strong>}
                      </span>
                    </span>
                  }
                  aside={
                    <>
                      <span className="pn-for-readers">, net change </span>
                      <span className={line.isLoss ? "pn-cost-text" : "pn-gain-text"}>{line.net}</span>
                    </>
                  }
                >
                  <OneChange figures={changes[index]!} report={report} />
                </Disclosure>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section className="pn-card pn-purchase" aria-label="Compare another change">
        <Disclosure key={changeStart?.time} look="section" label="Compare another change" keeps startsOpen={changeStart !== null}>
          <NewChange report={report} />
        </Disclosure>
      </section>
      {over.length > 0 && (
        <section className="pn-card" aria-label="Projected with changes">
          <header>
            <h3>With what is counted in</h3>
          </header>
          {over.map((each) => {
            const { crop, rows, note } = overlayView(each, format);
            return (
              <div key={crop}>
                <FigureTable
                  caption={`${crop}: net after full cost, ${format.currency}`}
                  columns={[`per ${format.areaName}`, "in all"]}
                  rows={rows}
                />
                {note !== "" && <p className="pn-fault">{note}</p>}
              </div>
            );
          })}
          <p className="pn-note">
            At full cost, since a change charges equipment kept more than a year by the year. The figures of the page Season stay as they
            are.
          </p>
        </section>
      )}
    </>
  );
}

function OneChange({ figures, report }: { readonly figures: ChangeFigures; readonly report: PageProps["report"] }) {
  const { change, crop } = figures;
  const entered = report.season.crops.find(({ name }) => name === crop);
  const prices = entered === undefined ? null : { low: entered.lowPrice, expected: entered.price, high: entered.highPrice };
  const source = change.lines[0]?.source ?? null;
  const subject = { of: "change", name: change.name } as const;
  return (
    <>
      <Incomplete of={subject} problems={report.problemsOf(subject).length} />
      <AnswerPart
        change={change}
        answer={figures}
        prices={prices}
        findings={changeFindings(change)}
        cautions={changeCautions(figures, report.season)}
      />
      <CountIn name={change.name} isCounted={change.countedIn} />
      {source !== null && (
        <p>
          <CellLink at={source} words="Show its entries" />
        </p>
      )}
      <WriteButton label={`Write the sheet “${changeSheet(report, figures).name}”`} sheets={() => [changeSheet(report, figures)]} />
    </>
  );
}
