import { useMemo } from "react";
import { layerCosts, layers, type Layer } from "../../core/kinds";
import { ofLayer } from "../../workbook/incompleteMark";
import { toFix } from "../../workbook/problem";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Incomplete } from "../parts/Incomplete";
import { usePane } from "../paneContext";
import { farmView } from "./farmView";

/** The whole farm in one strip: is there money left, where is none, and how high the loan goes. */
export function FarmStrip({ report }: { readonly report: SeasonReport }) {
  const { format, layer, chooseLayer } = usePane();
  const view = useMemo(() => farmView(report, layer, format), [report, layer, format]);
  return (
    <section className="pn-card pn-farm" aria-label="Whole farm">
      <header className="pn-farm-head">
        <span>Left over, {format.currency}</span>
        <select
          className="pn-select"
          aria-label="After which cost"
          value={layer}
          onChange={({ target }) => chooseLayer(target.value as Layer)}
        >
          {layers.map((each) => (
            <option key={each} value={each}>
              after {layerCosts[each]}
            </option>
          ))}
        </select>
      </header>
      <p className="pn-main pn-farm-main">
        <span className={view.isLoss ? "pn-figure pn-loss" : "pn-figure"}>{view.leftOver}</span>
        <span className="pn-note">
          {view.isLoss && <strong className="pn-loss">short, </strong>}
          {view.sincePlan}
        </span>
      </p>
      <Incomplete of={{ of: "farm" }} problems={ofLayer(toFix(report.problems), layer).length} />
      <svg className="pn-farm-bar" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true">
        <rect className="pn-bar-income" x="0" y="1" height="10" width={view.bar.income} />
        <rect className="pn-bar-cost" x="0" y="1" height="10" width={view.bar.cost} />
      </svg>
      <p className="pn-ends pn-note">
        <span>{view.cost}</span>
        <span>{view.income}</span>
      </p>
      <p>
        <strong>{view.short}</strong> {view.loan}
      </p>
    </section>
  );
}
