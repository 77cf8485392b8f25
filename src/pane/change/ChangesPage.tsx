import { useState } from "react";
import type { ChangeFigures } from "../../core/partialBudget/changeFigures";
import { blankGainCaution } from "../../core/cautions";
import type { PageProps } from "../page";
import { CellLink } from "../parts/CellLink";
import { Disclosure } from "../parts/Disclosure";
import { Incomplete } from "../parts/Incomplete";
import { changeCautions, changeFindings } from "../../workbook/changeWords";
import { changeSheet } from "../../workbook/sheets/change";
import { KeepButton } from "../parts/KeepButton";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { FigureTable } from "../season/FigureTable";
import { AnswerPart } from "./AnswerPart";
import { overlaysWith, overlayView, sideBySide } from "./changesView";
import { NewChange } from "./NewChange";

/** The changes of the season, weighed side by side, and a new one. */
export function ChangesPage({ report }: PageProps) {
  const { format } = usePane();
  const { changes } = report.figures;
  // Switched here, for as long as the pane is open; what the workbook says stands where nothing was switched.
  const [switched, setSwitched] = useState<ReadonlyMap<string, boolean>>(new Map());
  const isOn = ({ change }: ChangeFigures) => switched.get(change.name) ?? change.active;
  const turn = (name: string, on: boolean | null) => setSwitched((before) => new Map([...[...before].filter(([other]) => other !== name), ...(on === null ? [] : [[name, on] as const])]));
  const over = overlaysWith(report.figures, new Set(changes.filter(isOn).map(({ change }) => change.name)));
  return (
    <>
      <section className="pn-card pn-purchase" aria-label="Weigh a new change">
        <Disclosure look="section" label="Weigh a new change" keeps><NewChange report={report} /></Disclosure>
      </section>
      {changes.length === 0
        ? <p>No change is entered yet. A change is weighed by what it adds and what it takes away, nothing else. Reseeding is weighed on the page Stand, from the counts.</p>
        : (
          <section className="pn-card" aria-label="Changes side by side">
            <header><h3>Side by side</h3></header>
            <FigureTable caption={`Yield that a change must bring, or may cost, to pay; net change, ${format.currency} a year`} columns={["pays", `per ${format.areaName}`, "in all"]} rows={sideBySide(changes, format)} />
            <p className="pn-note">{blankGainCaution}</p>
            {changes.map((each) => (
              <Disclosure key={each.change.name} look="section" label={each.change.name} aside={each.net.net.perArea === null ? format.money(null) : `${format.money(each.net.net.perArea)} ${format.perArea}`}>
                <OneChange figures={each} problems={report.problemsOf({ of: "change", name: each.change.name }).length} isOn={isOn(each)} report={report} turn={(on) => turn(each.change.name, on)} />
              </Disclosure>
            ))}
          </section>
        )}
      {over.length > 0 && (
        <section className="pn-card" aria-label="Outlook with changes">
          <header><h3>Outlook with changes</h3></header>
          <p className="pn-note">Net return at full cost, since a change charges what serves for years by the year. The budgets on the page Season stay as they are.</p>
          {over.map((each) => {
            const { crop, rows, note } = overlayView(each, format);
            return <div key={crop}><FigureTable caption={`${crop}, ${format.currency}`} columns={[`per ${format.areaName}`, "in all"]} rows={rows} />{note !== "" && <p className="pn-fault">{note}</p>}</div>;
          })}
        </section>
      )}
    </>
  );
}

type OneChangeProps = { readonly figures: ChangeFigures; readonly report: PageProps["report"]; readonly problems: number; readonly isOn: boolean; /** `null`: as the workbook says. */ readonly turn: (on: boolean | null) => void };

function OneChange({ figures, report, problems, isOn, turn }: OneChangeProps) {
  const { format } = usePane();
  const { change, crop } = figures;
  const entered = report.season.crops.find(({ name }) => name === crop);
  const prices = entered === undefined ? null : { low: entered.lowPrice, expected: entered.price, high: entered.highPrice };
  const source = change.lines[0]?.source ?? null;
  const about = change.target === null ? "the whole farm" : "field" in change.target ? `${change.target.field}, ${crop}` : crop;
  return (
    <>
      <p className="pn-note">About {about}, {format.quantity(change.area)} {format.areaUnit}.</p>
      <Incomplete of={{ of: "change", name: change.name }} problems={problems} />
      <AnswerPart change={change} answer={figures} prices={prices} findings={changeFindings(change)} cautions={changeCautions(figures, report.season)} />
      <label className="pn-check"><input type="checkbox" checked={isOn} onChange={() => turn(!isOn)} /> Lay it over the outlook</label>
      {isOn !== change.active && <p className="pn-note">Only tried here so far: in the workbook it is {change.active ? "on" : "off"}.</p>}
      <KeepButton
        label={`Keep it ${isOn ? "on" : "off"} in the workbook`}
        entry={isOn === change.active ? null : { table: "Changes", named: "Change", name: change.name, column: "Active", value: isOn ? "yes" : "no" }}
        done={(rows) => `Entered in the column Active of the ${rows === 1 ? "row" : `${rows} rows`} of “${change.name}”.`}
        kept={() => turn(null)}
      />
      <WriteButton label={`Write the sheet “${changeSheet(report, figures).name}”`} sheets={() => [changeSheet(report, figures)]} />
      {source !== null && <p><CellLink at={source} words="Show its rows in the workbook" /></p>}
    </>
  );
}
