import { useState } from "react";
import { cautionsOf } from "../../core/cautions";
import type { SeasonReport } from "../../workbook/seasonReport";
import { planterCheckSheet } from "../../workbook/sheets/planterCheckSheet";
import { mostRows, planterToFill } from "../../workbook/sheets/planterToFill";
import { dueRows } from "../change/dueRows";
import { Disclosure } from "../parts/Disclosure";
import { Entry } from "../parts/Entry";
import { Incomplete } from "../parts/Incomplete";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { PlanRepairButton } from "./PlanRepairButton";
import { planterView } from "./planterView";
import { RowsForm } from "./RowsForm";

/** What is due on the planter and what it costs, a sheet for the shed, and the form in which a filled one is typed back in. */
export function PlanterPart({ report }: { readonly report: SeasonReport }) {
  const { format, jump, open } = usePane();
  const { planters } = report.figures;
  const [rows, setRows] = useState("");
  const isCount = /^\d{1,2}$/.test(rows.trim()) && Number(rows) >= 1 && Number(rows) <= mostRows;
  const machine = planters[0]?.machine ?? "Planter";
  return (
    <section className="pn-card" aria-label="Planter">
      <Disclosure look="section" label="Planter">
        <ul className="pn-notice-list">
          {cautionsOf.planter.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
        {planters
          .map((planter) => ({ planter, ...planterView(planter, format) }))
          .map(({ planter, machine: name, due, cost, restsOn, lines, others, unknown }) => (
            <div key={name}>
              <p className="pn-total">
                <span>
                  {name}: {due}
                </span>
                <strong>{cost}</strong>
              </p>
              <Incomplete of={{ of: "planter" }} problems={report.problemsOf({ of: "planter" }).length} />
              <p className="pn-note">{restsOn} No cost of the season until it is planned, bought or done.</p>
              {lines.length > 0 && (
                <table className="pn-table">
                  <caption>What is due, the worst first, {format.currency}</caption>
                  <thead>
                    <tr>
                      <th scope="col">Part</th>
                      <th scope="col">State</th>
                      <th scope="col" className="pn-number">
                        Cost
                      </th>
                    </tr>
                  </thead>
                  <tbody>
                    {lines.map((line) => (
                      <tr key={line.entry.row}>
                        <th scope="row">
                          <button type="button" className="pn-link" onClick={() => jump(line.entry)}>
                            {line.name}
                          </button>
                        </th>
                        <td>{line.state}</td>
                        <td className="pn-number">{line.cost}</td>
                      </tr>
                    ))}
                  </tbody>
                </table>
              )}
              {others !== "" && <p className="pn-note">{others}</p>}
              {unknown.map((words) => (
                <p key={words} className="pn-note">
                  {words}
                </p>
              ))}
              <PlanRepairButton report={report} planter={planter} />
            </div>
          ))}
        {dueRows(planters) !== null && (
          <p>
            <button type="button" className="pn-link" onClick={() => open("changes")}>
              Compare rebuilding with running on
            </button>
            : the form “Rebuild worn row units” begins with these rows.
          </p>
        )}
        {planters.length > 0 && <WriteButton label="Write the sheet “Planter check”" sheets={() => [planterCheckSheet(report)]} />}
        <Disclosure look="line" label="A sheet to take to the shed">
          <Entry
            label="Rows of the planter"
            numeric
            value={rows}
            fault={rows.trim() === "" || isCount ? undefined : `Enter a whole number from 1 to ${mostRows}.`}
            change={setRows}
          />
          <WriteButton
            label="Write the sheet to fill"
            sheets={() => [planterToFill(report, machine, Number(rows))]}
            {...(!isCount && { hold: "Enter how many rows the planter has." })}
          />
        </Disclosure>
        <Disclosure look="line" label="Type a filled sheet">
          <RowsForm report={report} machine={planters.length === 0 ? "" : machine} />
        </Disclosure>
      </Disclosure>
    </section>
  );
}
