import { Fragment } from "react";
import type { Change } from "../../core/partialBudget/change";
import type { ChangeAnswer, PriceRange } from "../../core/partialBudget/changeAnswer";
import type { ChangeEntry } from "../../core/partialBudget/changeEntry";
import type { TrialFinding } from "../../core/tables/trialFindings";
import { findingsMark, grainNotes, trialWords } from "../../workbook/changeWords";
import { CellLink } from "../parts/CellLink";
import { Disclosure } from "../parts/Disclosure";
import { Lines } from "../parts/Lines";
import { usePane } from "../paneContext";
import { FigureTable } from "../season/FigureTable";
import { answerView, leadOf } from "./answerView";
import { ChangeDrawing } from "./ChangeDrawing";

export type AnswerPartProps = {
  readonly change: Change;
  readonly answer: ChangeAnswer;
  readonly prices: PriceRange | null;
  /** The entry whose break-even comes first; left out: the change's own. */
  readonly lead?: ChangeEntry;
  readonly findings: readonly TrialFinding[];
  readonly cautions: readonly string[];
};

/** The answer to a change: what it must bring, what it comes to, and what others found. */
export function AnswerPart({ change, answer, prices, lead = leadOf(change, answer), findings, cautions }: AnswerPartProps) {
  const { format } = usePane();
  const view = answerView(change, answer, prices, lead, format);
  const gain = lead.of === "quantity" ? lead.line : null;
  return (
    <>
      <div aria-live="polite">
        {view.main === null ? (
          <p className="pn-lead">{view.lead}</p>
        ) : (
          <p className="pn-main">
            <span className="pn-figure">{view.main.figure}</span> <span className="pn-unit">{view.main.unit}</span>
          </p>
        )}
        {view.open === "" ? (
          <p className="pn-net">
            Net change <strong>{view.net}</strong> {view.netUnit}
          </p>
        ) : (
          <p className="pn-net">{view.open}</p>
        )}
        {findingsMark(findings) !== "" && <p className="pn-note">{findingsMark(findings)}</p>}
      </div>
      {gain !== null && <ChangeDrawing change={change} gain={gain} />}
      <ul className="pn-known" aria-label={`What it does, ${format.perArea} a year`}>
        {view.known.map(({ words, amount, isLoss }, index) => (
          <li key={index}>
            <span>{words}</span>
            <span className={`pn-number ${isLoss ? "pn-cost-text" : "pn-gain-text"}`}>{amount}</span>
          </li>
        ))}
      </ul>
      {(view.facts.length > 0 || view.grid !== null || view.strip.length > 0) && (
        <Disclosure look="section" label="At other prices, acres and years">
          <Lines lines={view.facts} />
          {view.grid !== null && (
            <>
              <FigureTable
                caption={`Net change, ${format.perArea} a year, by the crop's price and ${view.grid.item.toLowerCase()}`}
                corner="price"
                columns={view.grid.columns}
                rows={view.grid.rows}
              />
              <p className="pn-note">{view.grid.item}: none, as entered, and half as much again.</p>
            </>
          )}
          {view.grid === null &&
            view.strip.length > 0 &&
            (view.stripOf === "needed" ? (
              <FigureTable
                caption={`${gain?.item ?? "Gain"} at which it pays, at the crop's prices`}
                columns={[gain?.unit ?? ""]}
                rows={view.strip}
              />
            ) : (
              <FigureTable
                caption={`Net change at the crop's prices, ${format.currency} a year`}
                columns={[`per ${format.areaName}`, "in all"]}
                rows={view.strip}
              />
            ))}
        </Disclosure>
      )}
      <Disclosure look="section" label="The four quadrants">
        <table className="pn-table">
          <caption>{format.currency} a year</caption>
          <thead>
            <tr>
              <td />
              <th scope="col" className="pn-number">
                per {format.areaName}
              </th>
              <th scope="col" className="pn-number">
                in all
              </th>
            </tr>
          </thead>
          <tbody>
            {view.quadrants.map(({ name, lines, cells }) => (
              <Fragment key={name}>
                <tr className="pn-subtotal">
                  <th scope="row">{name}</th>
                  {cells.map((cell, index) => (
                    <td key={index} className="pn-number">
                      {cell}
                    </td>
                  ))}
                </tr>
                {lines.map((line, index) => (
                  <tr key={index}>
                    <th scope="row">
                      {line.source === null ? line.name : <CellLink at={line.source} words={line.name} />}
                      <span className="pn-detail">{line.detail}</span>
                    </th>
                    {line.cells.map((cell, column) => (
                      <td key={column} className="pn-number">
                        {cell}
                      </td>
                    ))}
                  </tr>
                ))}
              </Fragment>
            ))}
          </tbody>
        </table>
        {grainNotes(change, format.currency).map((words) => (
          <p key={words} className="pn-note">
            {words}
          </p>
        ))}
      </Disclosure>
      {findings.length > 0 && (
        <Disclosure look="section" label={`What trials found (${findings.length})`}>
          <p className="pn-note">None of this is filled in for you. Those that found no difference come first.</p>
          <ul className="pn-bullets">
            {findings.map((each) => (
              <li key={each.finding}>
                {each.noDifference && <strong>No difference. </strong>}
                {trialWords(each)}
              </li>
            ))}
          </ul>
        </Disclosure>
      )}
      {cautions.length > 0 && (
        <ul className="pn-notice-list">
          {cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      )}
    </>
  );
}
