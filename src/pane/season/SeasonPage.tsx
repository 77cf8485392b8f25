import { useMemo } from "react";
import type { CropFigures } from "../../core/figures";
import type { Layer } from "../../core/kinds";
import type { PageProps } from "../page";
import { Incomplete } from "../parts/Incomplete";
import { usePane } from "../paneContext";
import { sameName } from "../commands/tableNamed";
import type { InputTable } from "../../workbook/inputTable";
import { inputTables } from "../../workbook/templates";
import { MakeTables } from "../setup/MakeTables";
import { FinerLine } from "../start/FinerLine";
import { CropCard } from "./CropCard";
import { entryTeller } from "../parts/entryView";
import { FarmStrip } from "./FarmStrip";

/** The season: the farm's strip, then a block for each crop. */
export function SeasonPage({ report }: PageProps) {
  const { format, layer } = usePane();
  const teller = useMemo(() => entryTeller(report, format), [report, format]);
  const { crops } = report.figures;
  const shown = useMemo(() => mostTold(crops, layer), [crops, layer]);
  return (
    <>
      {crops.length === 0 ? (
        <NoCrops report={report} />
      ) : (
        <>
          <FarmStrip report={report} />
          {crops.map((crop, index) => (
            <CropCard key={crop.crop} crop={crop} layer={layer} report={report} teller={teller} isOpen={index === shown} />
          ))}
          <FinerLine season={report.season} tables={report.tablesFound} />
        </>
      )}
    </>
  );
}

/** The crop that is shown in full: the one that lost most since the plan on all its area. */
function mostTold(crops: readonly CropFigures[], layer: Layer): number {
  const lost = crops.map(({ plan, outlook, area }) => plan.netPerArea[layer].minus(outlook.netPerArea[layer]).times(area));
  return lost.reduce((most, each, index) => (each.gt(lost[most]!) ? index : most), 0);
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
      {missing.length > 0 && (
        <p className="pn-buttons">
          <MakeTables tables={missing} label={`Make ${missing.map(({ sheet }) => sheet).join(" and ")}`} isMain />
        </p>
      )}
      {there.length > 0 && (
        <p className="pn-buttons">
          {there.map(({ name, sheet }) => (
            <button key={name} type="button" className="pn-link" onClick={() => jump({ table: name })}>
              Go to {sheet}
            </button>
          ))}
        </p>
      )}
    </section>
  );
}
