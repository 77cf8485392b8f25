import { useMemo } from "react";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Disclosure } from "../parts/Disclosure";
import { usePane } from "../paneContext";
import { FigureTable } from "../season/FigureTable";
import { harvestedFields, type DotPlot } from "./harvestDots";

/** Yields of the fields that are in, beside planting date, stand, hybrid and heat; none before the second one of a crop. */
export function HarvestedFieldsPart({ report }: { readonly report: SeasonReport }) {
  const { format } = usePane();
  const all = useMemo(() => harvestedFields(report, format), [report, format]);
  return all.map(({ crop, unit, columns, rows, plots }) => (
    <Disclosure key={crop} look="section" label={`${crop} harvested, field by field`}>
      <FigureTable caption={`${crop}, ${unit} per ${format.areaName}`} corner="Field" columns={columns} rows={rows} />
      {plots.map((plot) => (
        <DotsDrawing key={plot.across} plot={plot} />
      ))}
      <p className="pn-note">Numbers as in the list. Fields differ in more than what is shown: this is no trial.</p>
    </Disclosure>
  ));
}

const [left, across, top, down] = [44, 236, 14, 110];

function DotsDrawing({ plot }: { readonly plot: DotPlot }) {
  const ground = top + down + 10;
  return (
    <figure className="pn-drawing">
      <figcaption className="pn-note">Yield, by {plot.across}</figcaption>
      <svg viewBox={`0 0 300 ${ground + 22}`} role="img" aria-label={plot.says}>
        <path className="pn-axis" d={`M${left - 6} ${top - 6}V${ground}H${left + across + 8}`} />
        <text x={left - 10} y={top + 5} textAnchor="end">
          {plot.top}
        </text>
        {plot.top !== plot.bottom && (
          <text x={left - 10} y={top + down + 5} textAnchor="end">
            {plot.bottom}
          </text>
        )}
        <text x={left} y={ground + 18} textAnchor="start">
          {plot.left}
        </text>
        <text x={left + across + 8} y={ground + 18} textAnchor="end">
          {plot.right}
        </text>
        {plot.dots.map(({ mark, x, y }) => {
          const [at, up] = [left + (Number(x) / 100) * across, top + (Number(y) / 100) * down];
          return (
            <g key={mark}>
              <circle className="pn-dot" cx={at} cy={up} r={4} />
              <text
                className="pn-strong"
                x={at > left + across - 16 ? at - 7 : at + 7}
                y={up - 4}
                textAnchor={at > left + across - 16 ? "end" : "start"}
              >
                {mark}
              </text>
            </g>
          );
        })}
      </svg>
    </figure>
  );
}
