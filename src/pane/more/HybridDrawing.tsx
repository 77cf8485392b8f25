import type { HybridComparison } from "../../core/hybrids/comparison";
import { usePane } from "../paneContext";
import { hybridPlot, plotSays } from "./hybridPlot";

export type HybridDrawingProps = { readonly all: readonly HybridComparison[]; readonly check: string; readonly unit: string };

const [left, across, top, down] = [44, 240, 12, 150];

/** Yield against moisture, each hybrid a number beside its dot; the check stands where the two lines cross. */
export function HybridDrawing({ all, check, unit }: HybridDrawingProps) {
  const { format } = usePane();
  const plot = hybridPlot(all);
  if (plot === null) return null;
  const x = (at: string) => left + (Number(at) / 100) * across;
  const y = (at: string) => top + (Number(at) / 100) * down;
  const { dots, zero, wet, yields } = plot;
  const isFar = (at: number, ends: readonly number[]) => ends.every((end) => Math.abs(at - end) > 14);
  return (
    <figure className="pn-drawing">
      <svg viewBox="0 0 300 206" role="img" aria-label={plotSays(all, check, unit, format)}>
        <path className="pn-axis" d={`M${left} ${y(zero.y)}H${left + across}M${x(zero.x)} ${top}V${top + down}`} />
        <text x={left - 5} y={top + 5} textAnchor="end">
          {format.quantity(yields.to)}
        </text>
        {isFar(y(zero.y), [top, top + down]) && (
          <text x={left - 5} y={y(zero.y) + 4} textAnchor="end">
            0
          </text>
        )}
        <text x={left - 5} y={top + down + 4} textAnchor="end">
          {format.quantity(yields.from)}
        </text>
        {dots.map(({ mark, x: at, y: up, bounds }) => (
          <g key={mark}>
            {bounds !== null && (
              <path className="pn-known" d={`M${x(at)} ${y(bounds.high)}V${y(bounds.low)}m-4 0h8M${x(at) - 4} ${y(bounds.high)}h8`} />
            )}
            <circle className="pn-dot" cx={x(at)} cy={y(up)} r={4} />
            <text
              className="pn-strong"
              x={x(at) > left + across - 16 ? x(at) - 7 : x(at) + 7}
              y={y(up) - 4}
              textAnchor={x(at) > left + across - 16 ? "end" : "start"}
            >
              {mark}
            </text>
          </g>
        ))}
        <text x={left} y={top + down + 20} textAnchor="start">
          {format.quantity(wet.from)}
        </text>
        {isFar(x(zero.x), [left, left + across]) && (
          <text x={x(zero.x)} y={top + down + 20} textAnchor="middle">
            0
          </text>
        )}
        <text x={left + across} y={top + down + 20} textAnchor="end">
          {format.quantity(wet.to)}
        </text>
        <text className="pn-axis-name" x={left + across / 2} y={top + down + 38} textAnchor="middle">
          points wetter than {check}
        </text>
      </svg>
      <figcaption className="pn-note">
        Up: {unit} more than {check}, which stands where the lines cross. Bars: how far the mean may be off. Numbers as in the list.
      </figcaption>
    </figure>
  );
}
