import { useId } from "react";
import type { CropFigures } from "../../core/figures";
import { layerCosts, type Layer } from "../../core/kinds";
import { harvestNotes, tableNotes } from "../../workbook/harvestNotes";
import { ofLayer } from "../../workbook/incompleteMark";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Disclosure } from "../parts/Disclosure";
import { EntryLinks } from "../parts/EntryLinks";
import { Incomplete } from "../parts/Incomplete";
import { usePane } from "../paneContext";
import { CostTreePart } from "./CostTreePart";
import { breakEvenView, cropView } from "./cropView";
import type { EntryTeller } from "./entryView";
import { FigureTable } from "./FigureTable";
import { salesView } from "./salesView";

export type CropCardProps = { readonly crop: CropFigures; readonly layer: Layer; readonly report: SeasonReport; readonly teller: EntryTeller };

/** One crop: what an acre costs now, what that rests on, and the way down to the entries. */
export function CropCard({ crop, layer, report, teller }: CropCardProps) {
  const { format } = usePane();
  const heading = useId();
  const view = cropView(crop, layer, format);
  const subject = { of: "crop", name: crop.crop } as const;
  return (
    <section className="pn-card" aria-labelledby={heading}>
      <header>
        <h3 id={heading}>{view.crop}</h3>
        <span className="pn-note">{view.area}</span>
      </header>
      <Incomplete of={subject} problems={ofLayer(report.problemsOf(subject), layer).length} />
      <p className="pn-main">
        <span className="pn-figure">{view.figure}</span> <span className="pn-unit">{view.unit}</span>
      </p>
      <p className="pn-main-layer"><strong>{view.layer}</strong> ({view.againstPlan})</p>
      {view.notPlanned !== "" && <p className="pn-note">{view.notPlanned}</p>}
      <p className="pn-note">{view.restsOn}</p>
      {[...tableNotes(report, crop.crop), ...harvestNotes(report, crop)].map((words) => <p key={words} className="pn-note">{words}</p>)}
      <p>{view.verdict}</p>
      <FigureTable caption={`${view.crop}, ${layerCosts[layer]}, ${format.currency}`} columns={view.stages} rows={view.rows} />
      <Disclosure look="section" label="Where the cost comes from">
        <CostTreePart crop={crop} layer={layer} report={report} teller={teller} />
      </Disclosure>
      <Disclosure look="section" label="All layers, other yields and prices">
        <AllLayers crop={crop} stages={view.stages} byLayer={view.byLayer} />
      </Disclosure>
      <Disclosure look="section" label="Grain sold and to sell">
        <Sales crop={crop} layer={layer} teller={teller} />
      </Disclosure>
    </section>
  );
}

function AllLayers({ crop, stages, byLayer }: { readonly crop: CropFigures } & Pick<ReturnType<typeof cropView>, "stages" | "byLayer">) {
  const { format } = usePane();
  const { columns, prices, yields, net } = breakEvenView(crop, format);
  return (
    <>
      <FigureTable caption={`Cost, ${format.perArea}`} corner="layer" columns={stages} rows={byLayer} />
      <FigureTable caption={`Break-even price, ${format.currency} per ${crop.yieldUnit}, outlook`} corner="at yield" columns={columns} rows={prices} />
      <FigureTable caption={`Break-even yield, ${crop.yieldUnit} per ${format.areaName}, outlook`} corner="at price" columns={columns} rows={yields} />
      <FigureTable caption={`Net return, ${format.perArea}, outlook`} corner="yield, price" columns={columns} rows={net} />
    </>
  );
}

function Sales({ crop, layer, teller }: Pick<CropCardProps, "crop" | "layer" | "teller">) {
  const { format } = usePane();
  const { lines, note, entries } = salesView(crop, layer, format);
  return (
    <>
      <dl className="pn-lines">
        {lines.map(({ name, figure, unit }) => (
          <div key={name}><dt>{name}</dt><dd><span className="pn-number">{figure}</span> {unit}</dd></div>
        ))}
      </dl>
      {note !== "" && <p>{note}</p>}
      {entries.length > 0 && <EntryLinks entries={entries} teller={teller} />}
    </>
  );
}
