import type { Decimal } from "../../core/numbers/decimal";
import type { StandSummary } from "../../core/stand/standSummary";
import { usePane } from "../paneContext";
import { standPlot } from "./standPlot";
import { plotWords } from "./standView";

export type StandDrawingProps = { readonly summary: StandSummary; readonly target: Decimal | null };

const [left, across] = [22, 256];
const dot = 4.5;

/** The spots counted as dots over the likely range of the stand, with the target. */
export function StandDrawing({ summary, target }: StandDrawingProps) {
  const { format } = usePane();
  const { dots, mean, interval, target: aim, ticks, levels } = standPlot(summary, target, format.areaUnit);
  const x = (position: string) => left + (Number(position) / 100) * across;
  const ground = 26 + levels * dot * 2;
  const height = ground + 46;
  return (
    <figure className="pn-drawing">
      <svg viewBox={`0 0 300 ${height}`} role="img" aria-label={plotWords(summary, target, format)}>
        {interval !== null && (
          <rect
            className="pn-band"
            x={x(interval.low)}
            width={Math.max(1, x(interval.high) - x(interval.low))}
            y={20}
            height={ground - 18}
          />
        )}
        {aim !== null && (
          <g className="pn-target">
            <path d={`M${x(aim)} 18V${ground}`} />
            <text x={Math.min(272, Math.max(28, x(aim)))} y={12} textAnchor="middle">
              target
            </text>
          </g>
        )}
        {dots.map(({ x: at, level }, index) => (
          <circle key={index} className="pn-dot" cx={x(at)} cy={ground - 6 - level * dot * 2} r={dot - 0.7} />
        ))}
        <path className="pn-axis" d={`M${left} ${ground}H${left + across}`} />
        <path className="pn-mean" d={`M${x(mean)} ${ground + 2}l-5 8h10z`} />
        {ticks.map(({ x: at, stand }) => (
          <g key={at}>
            <path className="pn-axis" d={`M${x(at)} ${ground}v5`} />
            <text x={x(at)} y={ground + 24} textAnchor="middle">
              {format.quantity(stand)}
            </text>
          </g>
        ))}
        <text className="pn-axis-name" x={150} y={ground + 40} textAnchor="middle">
          plants per {format.areaName}
        </text>
      </svg>
      <figcaption className="pn-note">Dots: spots counted.{interval !== null && " Band: the likely stand."}</figcaption>
    </figure>
  );
}
