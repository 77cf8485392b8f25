import { useMemo, useState } from "react";
import { planningCaution } from "../../core/cautions";
import { layerNames, layers, type Layer } from "../../core/kinds";
import type { PageProps } from "../page";
import { PurchasePart } from "../purchase/PurchasePart";
import { Incomplete } from "../parts/Incomplete";
import { Segments } from "../parts/Segments";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { costCautions } from "../../workbook/costCautions";
import { uncheckedNotes } from "../../workbook/uncheckedCoefficients";
import { breakEvenSheet } from "../../workbook/sheets/breakEven";
import { costPerAcreSheet } from "../../workbook/sheets/costPerAcre";
import { sameName } from "../commands/tableNamed";
import type { InputTable } from "../../workbook/inputTable";
import { inputTables } from "../../workbook/templates";
import { MakeTables } from "../setup/MakeTables";
import { TablesPart } from "../setup/TablesPart";
import { CropCard } from "./CropCard";
import { entryTeller } from "./entryView";
import { ItemsCard } from "./ItemsCard";

const layerWords: Record<Layer, string> = {
  operating: "What growing this crop costs this season.",
  cash: "Operating, and cash rent, land tax, overhead and term interest.",
  full: "Cash without term interest (with it where neither ownership nor a land charge is entered), and machine ownership, land charge, unpaid labour and management.",
  cashNeed: "Cash, and term principal, family living and income tax.",
};

/** The season: a card for each crop, then the items. */
export function SeasonPage({ report }: PageProps) {
  const { format } = usePane();
  const [layer, setLayer] = useState<Layer>("cash");
  const teller = useMemo(() => entryTeller(report, format), [report, format]);
  const { crops } = report.figures;
  return (
    <>
      <PurchasePart report={report} layer={layer} />
      {crops.length === 0 ? <NoCrops report={report} /> : (
        <>
          <Segments legend="Cost layer" choices={layers.map((value) => ({ value, name: layerNames[value] }))} chosen={layer} choose={setLayer} />
          <p className="pn-note">{layerWords[layer]}</p>
          {crops.map((crop) => <CropCard key={crop.crop} crop={crop} layer={layer} report={report} teller={teller} />)}
        </>
      )}
      <ItemsCard report={report} teller={teller} />
      {crops.length > 0 && (
        <section className="pn-card" aria-label="Result sheets">
          <CostCautions report={report} />
          <WriteButton label="Write “Cost per acre” and “Break-even”" sheets={() => [costPerAcreSheet(report), breakEvenSheet(report)]} />
        </section>
      )}
      <TablesPart report={report} />
    </>
  );
}

/** What must be said where ammonia, a dryer, a bin or long hours are among the costs, and what the figures are for. */
function CostCautions({ report: { season } }: Pick<PageProps, "report">) {
  const told = useMemo(() => [...uncheckedNotes(season), ...costCautions(season), planningCaution], [season]);
  return <ul className="pn-notice-list">{told.map((words) => <li key={words}>{words}</li>)}</ul>;
}

/** What to do when there is nothing to show a cost of. */
function NoCrops({ report }: Pick<PageProps, "report">) {
  const { jump } = usePane();
  const found = [...report.tablesFound];
  const isThere = ({ name }: InputTable) => found.some((each) => sameName(each, name));
  const needed = inputTables.filter(({ name }) => name === "Crops" || name === "Fields");
  const [there, missing] = [needed.filter(isThere), needed.filter((table) => !isThere(table))];
  return (
    <section className="pn-card">
      <h3>No crop has a field yet</h3>
      <p>Enter a crop in the table Crops and a field of it in the table Fields; its cost per area appears here at once.</p>
      <Incomplete of={{ of: "farm" }} problems={report.problemsOf({ of: "farm" }).length} />
      {missing.length > 0 && <p className="pn-buttons"><MakeTables tables={missing} label={`Make ${missing.map(({ sheet }) => sheet).join(" and ")}`} isMain /></p>}
      {there.length > 0 && (
        <p className="pn-buttons">
          {there.map(({ name, sheet }) => <button key={name} type="button" className="pn-link" onClick={() => jump({ table: name })}>Go to {sheet}</button>)}
        </p>
      )}
    </section>
  );
}
