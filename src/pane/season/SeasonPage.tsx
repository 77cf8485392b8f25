import { useMemo, useState } from "react";
import { layerNames, layers, type Layer } from "../../core/kinds";
import type { PageProps } from "../pages";
import { PurchasePart } from "../purchase/PurchasePart";
import { Incomplete } from "../parts/Incomplete";
import { Segments } from "../parts/Segments";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { breakEvenSheet } from "../../workbook/sheets/breakEven";
import { costPerAcreSheet } from "../../workbook/sheets/costPerAcre";
import { TablesPart } from "../setup/TablesPart";
import { CropCard } from "./CropCard";
import { entryTeller } from "./entryView";
import { ItemsCard } from "./ItemsCard";

const layerWords: Record<Layer, string> = {
  operating: "What growing this crop costs this season.",
  cash: "Operating, and cash rent, land tax, overhead and term interest.",
  full: "Cash without term interest, and machine ownership, land charge, unpaid labour and management.",
  cashNeed: "Cash, and term principal, family living and income tax.",
};

/** The season: a card for each crop, then the items. */
export function SeasonPage({ report }: PageProps) {
  const { format } = usePane();
  const [layer, setLayer] = useState<Layer>("cash");
  const teller = useMemo(() => entryTeller(report.season, format), [report, format]);
  const { crops } = report.figures;
  return (
    <>
      <PurchasePart report={report} layer={layer} />
      {crops.length === 0 ? <NoCrops problems={report.problemsOf({ of: "farm" }).length} /> : (
        <>
          <Segments legend="Cost layer" choices={layers.map((value) => ({ value, name: layerNames[value] }))} chosen={layer} choose={setLayer} />
          <p className="pn-note">{layerWords[layer]}</p>
          {crops.map((crop) => <CropCard key={crop.crop} crop={crop} layer={layer} report={report} teller={teller} />)}
        </>
      )}
      <ItemsCard report={report} teller={teller} />
      {crops.length > 0 && (
        <section className="pn-card" aria-label="Result sheets">
          <WriteButton label="Write “Cost per acre” and “Break-even”" sheets={() => [costPerAcreSheet(report), breakEvenSheet(report)]} />
        </section>
      )}
      <TablesPart report={report} />
    </>
  );
}

/** What to do when there is nothing to show a cost of. */
function NoCrops({ problems }: { readonly problems: number }) {
  const { jump } = usePane();
  return (
    <section className="pn-card">
      <h3>No crop has a field yet</h3>
      <p>Enter a crop in the table Crops and a field of it in the table Fields; its cost per area appears here at once.</p>
      <Incomplete of={{ of: "farm" }} problems={problems} />
      <p className="pn-buttons">
        <button type="button" className="pn-link" onClick={() => jump({ table: "Crops" })}>Go to Crops</button>
        <button type="button" className="pn-link" onClick={() => jump({ table: "Fields" })}>Go to Fields</button>
      </p>
    </section>
  );
}
