import { useMemo, useState } from "react";
import type { CropFigures, Stage } from "../../core/figures";
import { layerCosts, type Layer } from "../../core/kinds";
import { ofLayer } from "../../workbook/incompleteMark";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Disclosure } from "../parts/Disclosure";
import { EntryLinks } from "../parts/EntryLinks";
import { Incomplete, WarningMark } from "../parts/Incomplete";
import { Segments } from "../parts/Segments";
import { kindMarker } from "../../workbook/uncheckedCoefficients";
import { usePane } from "../paneContext";
import { costTree, type FieldCostLine } from "./costTree";
import { stagesOf } from "./cropView";
import type { EntryTeller } from "../parts/entryView";

export type CostTreePartProps = {
  readonly crop: CropFigures;
  readonly layer: Layer;
  readonly report: SeasonReport;
  readonly teller: EntryTeller;
};

/** Kind, field, cost, entry: each line opens the next. */
export function CostTreePart({ crop, layer, report, teller }: CostTreePartProps) {
  const { format } = usePane();
  const stages = stagesOf(crop);
  const [chosen, setChosen] = useState<Stage | null>(null);
  const stage = chosen ?? stages[stages.length - 1]!;
  const { kinds, total } = costTree(
    crop,
    stage,
    layer,
    format,
    useMemo(() => kindMarker(report.season), [report.season]),
  );
  return (
    <>
      <Segments
        legend="Costs of the"
        choices={stages.map((value) => ({ value, name: value === "outlook" ? "projected" : value }))}
        chosen={stage}
        choose={setChosen}
      />
      <p className="pn-note pn-number">
        {format.perArea}
        {stage === "plan" ? "" : "; since the plan"}
      </p>
      <ul className="pn-tree">
        {kinds.map(({ kind, words, perArea, change, fields }) => (
          <li key={kind}>
            <Disclosure look="line" label={words} aside={<Figures perArea={perArea} change={change} />}>
              <ul className="pn-tree">
                {fields.map((field) => (
                  <FieldOfKind key={field.field} field={field} layer={layer} report={report} teller={teller} />
                ))}
              </ul>
            </Disclosure>
          </li>
        ))}
      </ul>
      <p className="pn-total">
        <span>
          {layerCosts[layer]}, {stage === "outlook" ? "projected" : stage}
        </span>
        <span className="pn-number">{total}</span>
      </p>
    </>
  );
}

/** A cost and what it moved by since the plan. */
const Figures = ({ perArea, change }: { readonly perArea: string; readonly change: string }) => (
  <>
    {perArea} <span className="pn-moved-by">{change}</span>
  </>
);

type FieldOfKindProps = {
  readonly field: FieldCostLine;
  readonly layer: Layer;
  readonly report: SeasonReport;
  readonly teller: EntryTeller;
};

function FieldOfKind({ field, layer, report, teller }: FieldOfKindProps) {
  const subject = { of: "field", name: field.field } as const;
  const problems = ofLayer(report.problemsOf(subject), layer).length;
  const label = (
    <>
      {field.field}, {field.area}
      {problems > 0 && (
        <span className="pn-is-incomplete">
          {" "}
          <WarningMark /> incomplete
        </span>
      )}
    </>
  );
  return (
    <li>
      <Disclosure look="line" label={label} aside={<Figures {...field} />}>
        <Incomplete of={subject} problems={problems} />
        <ul className="pn-costs">
          {field.costs.map((cost) => (
            <li key={cost.name}>
              <p className="pn-cost">
                <span>
                  {cost.name}, {cost.amount} in all
                </span>
                <span className="pn-number">{cost.perArea}</span>
              </p>
              <EntryLinks entries={cost.entries} teller={teller} />
            </li>
          ))}
        </ul>
      </Disclosure>
    </li>
  );
}
