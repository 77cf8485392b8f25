import { useMemo } from "react";
import { layerNames, layers, type Layer } from "../../core/kinds";
import type { PageProps } from "../page";
import { Incomplete } from "../parts/Incomplete";
import { Segments } from "../parts/Segments";
import { usePane } from "../paneContext";
import { sameName } from "../commands/tableNamed";
import type { InputTable } from "../../workbook/inputTable";
import { inputTables } from "../../workbook/templates";
import { MakeTables } from "../setup/MakeTables";
import { CropCard } from "./CropCard";
import { entryTeller } from "./entryView";

const layerWords: Record<Layer, string> = {
  operating: "What growing this crop costs this season.",
  cash: "Operating, and cash rent, land tax, overhead and term interest.",
  full: "Cash without term interest (with it where neither ownership nor a land charge is entered), and machine ownership, land charge, unpaid labour and management.",
  cashNeed: "Cash, and term principal, family living and income tax.",
};

/** The season: a card for each crop. */
export function SeasonPage({ report }: PageProps) {
  const { format, layer, chooseLayer } = usePane();
  const teller = useMemo(() => entryTeller(report, format), [report, format]);
  const { crops } = report.figures;
  return (
    <>
      {crops.length === 0 ? <NoCrops report={report} /> : (
        <>
          <Segments legend="Cost layer" choices={layers.map((value) => ({ value, name: layerNames[value] }))} chosen={layer} choose={chooseLayer} />
          <p className="pn-note">{layerWords[layer]}</p>
          {crops.map((crop) => <CropCard key={crop.crop} crop={crop} layer={layer} report={report} teller={teller} />)}
        </>
      )}
    </>
  );
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
