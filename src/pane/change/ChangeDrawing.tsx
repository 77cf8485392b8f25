import type { Change, ChangeLine } from "../../core/partialBudget/change";
import type { Format } from "../format";
import { usePane } from "../paneContext";
import { changePlot, type ChangePlot } from "./changePlot";

export type ChangeDrawingProps = { readonly change: Change; readonly gain: ChangeLine };

const [left, across, top, down] = [52, 232, 14, 110];
/** Height of a line of figures. */
const label = 12;

/** Net change against the yield gain, with the gain at which it begins to pay; nothing where that cannot be told. */
export function ChangeDrawing({ change, gain }: ChangeDrawingProps) {
  const { format } = usePane();
  const plot = changePlot(change, gain);
  if (plot === null) return null;
  const x = (position: string) => left + (Number(position) / 100) * across;
  const y = (position: string) => top + (Number(position) / 100) * down;
  const { line, zero, crossing, now, gains, nets } = plot;
  /** Whether an end of the scale has room for its label beside that of nothing. */
  const hasRoom = (end: string) => Math.abs(y(end) - y(zero)) >= label;
  return (
    <figure className="pn-drawing">
      <svg viewBox="0 0 300 176" role="img" aria-label={drawingWords(plot, gain, format)}>
        <path className="pn-axis" d={`M${left} ${top}V${top + down}M${left} ${y(zero)}H${left + across}`} />
        {nets.most.gt("0") && hasRoom("0") && (
          <text x={left - 5} y={y("0") + 4} textAnchor="end">
            {format.whole(nets.most)}
          </text>
        )}
        <text x={left - 5} y={y(zero) + 4} textAnchor="end">
          0
        </text>
        {nets.least.isNegative() && hasRoom("100") && (
          <text x={left - 5} y={y("100") + 4} textAnchor="end">
            {format.whole(nets.least)}
          </text>
        )}
        <path className="pn-curve" d={`M${x(line.from[0])} ${y(line.from[1])}L${x(line.to[0])} ${y(line.to[1])}`} />
        <g className="pn-target">
          <path d={`M${x(crossing.x)} ${y(zero)}V${top + down + 6}`} strokeDasharray="3 2" />
          <text x={Math.min(240, Math.max(80, x(crossing.x)))} y={top + down + 19} textAnchor="middle">
            {crossingWords(crossing, format)}
          </text>
        </g>
        {now !== null && <circle className="pn-dot" cx={x(now.x)} cy={y(now.y)} r={4} />}
        <text x={x("0")} y={top + down + 34} textAnchor="start">
          {format.quantity(gains.from)}
        </text>
        <text x={x("100")} y={top + down + 34} textAnchor="end">
          {format.quantity(gains.to)}
        </text>
        <text className="pn-axis-name" x={left + across / 2} y={top + down + 48} textAnchor="middle">
          {gain.item}, {gain.unit}
        </text>
      </svg>
      <figcaption className="pn-note">
        Net change, {format.perArea} a year{now === null ? "" : "; the dot is what is entered"}.
      </figcaption>
    </figure>
  );
}

const crossingWords = ({ gain, pays }: ChangePlot["crossing"], { yieldNeeded, yieldAtMost }: Format): string =>
  pays === "below"
    ? `pays up to ${yieldAtMost(gain)}`
    : gain.isNegative()
      ? `pays from ${yieldAtMost(gain)}`
      : `pays from ${yieldNeeded(gain)}`;

/** The drawing in words. */
export const drawingWords = ({ crossing, now, gains, nets }: ChangePlot, { item, unit }: ChangeLine, format: Format): string =>
  `Net change from ${format.money(nets.least)} to ${format.money(nets.most)} ${format.perArea} as ${item.toLowerCase()} goes from ` +
  `${format.quantity(gains.from)} to ${format.quantity(gains.to)} ${unit}; ` +
  `${crossingWords(crossing, format)}${now === null ? "" : `; ${format.money(now.net)} as entered`}.`;
