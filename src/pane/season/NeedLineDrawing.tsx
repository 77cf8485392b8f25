import { lineWidth, type Label, type NeedLine } from "./needLine";

const row = 16;
const halfBand = 7;

/** The axis with its band, ticks and labels; every figure is text of the drawing, and the whole is said in words. */
export function NeedLineDrawing({ line, caption }: { readonly line: NeedLine; readonly caption: string }) {
  const axis = line.rowsAbove * row + 14;
  const height = axis + 12 + line.rowsBelow * row;
  const label =
    (at: number) =>
    ({ words, x, isStrong }: Label) => (
      <text key={words} x={x} y={at} textAnchor="middle" className={isStrong ? "pn-strong" : ""}>
        {words}
      </text>
    );
  return (
    <figure className="pn-drawing pn-needline">
      <figcaption className="pn-note">{caption}</figcaption>
      <svg viewBox={`0 0 ${lineWidth} ${height}`} role="img" aria-label={line.says}>
        {line.band !== null && (
          <rect
            className="pn-bounds"
            x={line.band.from}
            y={axis - halfBand}
            width={Math.max(line.band.to - line.band.from, 1)}
            height={2 * halfBand}
          />
        )}
        <line className="pn-axis" x1={0} x2={lineWidth} y1={axis} y2={axis} />
        {line.needs.map(({ x, isShort }, index) => (
          <line key={index} className={isShort ? "pn-need pn-need-short" : "pn-need"} x1={x} x2={x} y1={axis - 6} y2={axis + 8} />
        ))}
        {line.marks.map(({ x, isMain }, index) =>
          isMain ? (
            <path key={index} className="pn-expected" d={`M${x - 5} ${axis - 13}h10l-5 8z`} />
          ) : (
            <line key={index} className="pn-known" x1={x} x2={x} y1={axis - 9} y2={axis} />
          ),
        )}
        {line.above.map((each) => label(axis - 17 - each.row * row)(each))}
        {line.below.map((each) => label(axis + 20 + each.row * row)(each))}
      </svg>
    </figure>
  );
}
