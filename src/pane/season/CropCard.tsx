import { useId } from "react";
import type { CropFigures } from "../../core/figures";
import { layerCosts, type Layer } from "../../core/kinds";
import { harvestNotes, tableNotes } from "../../workbook/harvestNotes";
import { rentNotes } from "../../workbook/rentNotes";
import { ofLayer } from "../../workbook/incompleteMark";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Disclosure } from "../parts/Disclosure";
import { EntryLinks } from "../parts/EntryLinks";
import { Folds } from "../parts/Folds";
import { Incomplete } from "../parts/Incomplete";
import { usePane } from "../paneContext";
import { CostTreePart } from "./CostTreePart";
import { cropBlock } from "./cropBlock";
import { breakEvenView, cropView } from "./cropView";
import type { EntryTeller } from "../parts/entryView";
import { FigureTable } from "./FigureTable";
import { MovedPart } from "./MovedPart";
import { NeedLineDrawing } from "./NeedLineDrawing";
import { salesView } from "./salesView";

export type CropCardProps = {
  readonly crop: CropFigures;
  readonly layer: Layer;
  readonly report: SeasonReport;
  readonly teller: EntryTeller;
  /** Whether its lines and what moved it are shown at once; else they are folded. */
  readonly isOpen: boolean;
};

/** One crop: what an acre costs now, whether that pays, what moved it, and the way down to the entries. */
export function CropCard({ crop, layer, report, teller, isOpen }: CropCardProps) {
  const { format } = usePane();
  const heading = useId();
  const block = cropBlock(crop, layer, report.season, format);
  const subject = { of: "crop", name: crop.crop } as const;
  const closer = (
    <>
      {block.price !== null && <NeedLineDrawing line={block.price} caption={block.priceCaption} />}
      {block.yield !== null && <NeedLineDrawing line={block.yield} caption={block.yieldCaption} />}
      <MovedPart crop={crop} layer={layer} teller={teller} />
      <Folds
        folds={[
          { name: "Where an acre's cost goes", content: () => <CostTreePart crop={crop} layer={layer} report={report} teller={teller} /> },
          { name: "All layers", content: () => <AllLayers crop={crop} layer={layer} report={report} /> },
          { name: "Sold and to sell", content: () => <Sales crop={crop} layer={layer} teller={teller} /> },
        ]}
      />
    </>
  );
  return (
    <section className="pn-card pn-crop" aria-labelledby={heading}>
      <header>
        <h3 id={heading}>{block.crop}</h3>
        <span className="pn-note">{block.area}</span>
        <strong className={block.isHigher ? "pn-since pn-cost-text" : "pn-since"}>{block.since}</strong>
      </header>
      <p className="pn-main pn-crop-main">
        <span className="pn-figure">{block.figure}</span> <span className="pn-unit">{block.unit}</span>
      </p>
      <Incomplete of={subject} problems={ofLayer(report.problemsOf(subject), layer).length} />
      <p>
        {block.covers} {block.lacks !== "" && <strong className="pn-loss">{block.lacks}</strong>}
      </p>
      {isOpen ? (
        closer
      ) : (
        <Disclosure look="line" label={`More on ${block.crop}`}>
          {closer}
        </Disclosure>
      )}
    </section>
  );
}

function AllLayers({ crop, layer, report }: Pick<CropCardProps, "crop" | "layer" | "report">) {
  const { format } = usePane();
  const view = cropView(crop, layer, format);
  const { columns, prices, yields, net } = breakEvenView(crop, format);
  return (
    <>
      <p className="pn-note">{view.restsOn}</p>
      {view.notPlanned !== "" && <p className="pn-note">{view.notPlanned}</p>}
      {[...tableNotes(report, crop.crop), ...harvestNotes(report, crop), ...rentNotes(report, crop)].map((words) => (
        <p key={words} className="pn-note">
          {words}
        </p>
      ))}
      <FigureTable caption={`${view.crop}, ${layerCosts[layer]}, ${format.currency}`} columns={view.stages} rows={view.rows} />
      <FigureTable caption={`Cost, ${format.perArea}`} corner="layer" columns={view.stages} rows={view.byLayer} />
      <FigureTable
        caption={`Break-even price, ${format.currency} per ${crop.yieldUnit}, projected`}
        corner="at yield"
        columns={columns}
        rows={prices}
      />
      <FigureTable
        caption={`Break-even yield, ${crop.yieldUnit} per ${format.areaName}, projected`}
        corner="at price"
        columns={columns}
        rows={yields}
      />
      <FigureTable caption={`Net return, ${format.perArea}, projected`} corner="yield, price" columns={columns} rows={net} />
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
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <span className="pn-number">{figure}</span> {unit}
            </dd>
          </div>
        ))}
      </dl>
      {note !== "" && <p>{note}</p>}
      {entries.length > 0 && <EntryLinks entries={entries} teller={teller} />}
    </>
  );
}
