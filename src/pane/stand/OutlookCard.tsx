import { useId, useMemo } from "react";
import type { FieldOutlook } from "../../core/stand/fieldOutlook";
import type { FieldStand } from "../../core/stand/fieldStand";
import { uniformityFindings } from "../../core/tables/uniformityFindings";
import { estimateCaution } from "../../core/cautions";
import { fieldColumns } from "../../workbook/columns/fields";
import { soFar } from "../../workbook/harvestNotes";
import type { SeasonReport } from "../../workbook/seasonReport";
import { CellLink } from "../parts/CellLink";
import { Disclosure } from "../parts/Disclosure";
import { Entry } from "../parts/Entry";
import { typedAs } from "../parts/typed";
import { KeepButton } from "../parts/KeepButton";
import { FigureTable } from "../season/FigureTable";
import { usePane } from "../paneContext";
import { useKept } from "../useKept";
import { useDecimalComma } from "../useDecimalComma";
import { historyView, netEffect, outlookView, tableView, type HistoryLine } from "./standView";
import { findingWords, tryLoss } from "./triedLoss";

const { columns } = fieldColumns;

export type OutlookCardProps = { readonly of: FieldOutlook; readonly report: SeasonReport };

/** The yield that date and stand let expect, what it rests on, and what it does to the crop's net return. */
export function OutlookCard({ of, report }: OutlookCardProps) {
  const { format } = usePane();
  const heading = useId();
  const { field, table, stand, byDate } = of;
  const crop = report.figures.crops.find((each) => each.crop === field.crop)!;
  const view = outlookView(of, crop, format);
  const net = useMemo(() => (stand === null ? "" : netEffect(report, field, "cash", format)), [report, field, stand, format]);
  const harvest = crop.fields.find((each) => each.field === field.name && each.weighed !== null && each.final === null);
  const history = historyView(report.season, field, format);
  return (
    <section className="pn-card pn-crop" aria-labelledby={heading}>
      <header>
        <h3 id={heading}>Projected yield</h3>
      </header>
      {view.known ? (
        <>
          <p className="pn-crop-line">
            <span className="pn-main pn-crop-main">
              <span className="pn-figure">{view.figure}</span> <span className="pn-unit">{view.unit}</span>
            </span>{" "}
            <span>{view.againstGoal}</span>
          </p>
          <p className="pn-note">
            {view.table} {estimateCaution}
          </p>
        </>
      ) : (
        <p className="pn-fault">{view.why}</p>
      )}
      {net !== "" && <p>{net}</p>}
      {harvest !== undefined && <p>{soFar(harvest, crop.yieldUnit)}</p>}
      {!view.known && <p className="pn-note">{estimateCaution}</p>}
      {(table !== null || history.length > 0) && (
        <Disclosure look="line" label="How it is worked out">
          {view.known && view.how.map((line) => <p key={line}>{line}</p>)}
          {history.length > 0 && (
            <History lines={history} caption={`What moved it, ${crop.yieldUnit} per ${format.areaName}, from the goal on`} />
          )}
          {table !== null && <TableInUse {...tableView(table, stand?.outlook ?? byDate, format)} />}
        </Disclosure>
      )}
      {stand !== null && (
        <Disclosure look="line" label="Uneven stand" keeps>
          <Uneven stand={stand} yieldUnit={crop.yieldUnit} />
        </Disclosure>
      )}
    </section>
  );
}

function History({ lines, caption }: { readonly lines: readonly HistoryLine[]; readonly caption: string }) {
  return (
    <table className="pn-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Date</th>
          <th scope="col">Reason</th>
          <th scope="col" className="pn-number">
            From
          </th>
          <th scope="col" className="pn-number">
            To
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={line.date + line.reason}>
            <td>{line.date}</td>
            <td>{line.reason}</td>
            <td className="pn-number">{line.from}</td>
            <td className="pn-number">{line.to}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function TableInUse({ name, region, source, address, limits, cells }: ReturnType<typeof tableView>) {
  return (
    <>
      <p>
        <strong>{name}</strong>, for {region}.
      </p>
      <p>
        {source}
        {address !== "" && (
          <>
            {" "}
            <span className="pn-note">{address}</span>
          </>
        )}
      </p>
      <ul className="pn-bullets">
        {limits.map((limit) => (
          <li key={limit}>{limit}</li>
        ))}
      </ul>
      {cells.length > 0 && (
        <FigureTable caption="Cells that the answer was read from" columns={["at", "of the best", "part"]} rows={cells} />
      )}
    </>
  );
}

/** A loss to gaps and late plants: tried here, and entered in the table Fields when it is to stay. */
function Uneven({ stand, yieldUnit }: { readonly stand: FieldStand; readonly yieldUnit: string }) {
  const { format } = usePane();
  const { name, source, uniformityLoss } = stand.field;
  const decimalComma = useDecimalComma();
  // What is not typed over follows the workbook.
  const [typed, setTyped] = useKept<string | null>(`uneven stand of ${name}`, () => null);
  const box = typed ?? (uniformityLoss === null ? "" : typedAs(uniformityLoss, decimalComma));
  const { says, fault, toKeep } = tryLoss(box, stand, yieldUnit, decimalComma, format);
  return (
    <>
      <p>A plant count does not show gaps and late plants. If they cost yield, say how much; otherwise nothing is taken off.</p>
      <div className="pn-form">
        <Entry
          label="Loss, % of yield"
          value={box}
          change={setTyped}
          fault={fault}
          hint={uniformityLoss === null ? "none is entered" : `${format.quantity(uniformityLoss)}% is entered`}
          numeric
        />
        <output className="pn-says">{says}</output>
        <KeepButton
          label={toKeep === "" ? "Take the loss out of the workbook" : "Keep it in the workbook"}
          entry={
            toKeep === null
              ? null
              : {
                  table: "Fields",
                  named: columns.field,
                  name,
                  column: columns.uniformityLoss,
                  value: toKeep === "" ? "" : Number(toKeep.toFixed()),
                }
          }
          done={() => `Entered for ${name} in Fields, Uniformity loss %. The projected yield follows it.`}
          kept={() => setTyped(null)}
        />
      </div>
      <p>
        <CellLink at={{ table: "Fields", row: source.row, column: columns.uniformityLoss.heading }} words="Show it in Fields" />
      </p>
      <p>What publications found:</p>
      <ul className="pn-bullets">
        {uniformityFindings.map((finding) => (
          <li key={finding.finding}>{findingWords(finding)}</li>
        ))}
      </ul>
    </>
  );
}
