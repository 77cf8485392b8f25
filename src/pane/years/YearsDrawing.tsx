import { plotGround, plotWidth, type YearsPlot } from "./yearsPlot";

type YearsDrawingProps = {
  readonly plot: YearsPlot;
  /** What the hollow and the filled columns are. */
  readonly caption: string;
  /** Filled with the colour of cost or of income. */
  readonly looks: readonly [string, string];
};

/** Two columns a year beside each other; their figures stand in the table below. */
export function YearsDrawing({ plot, caption, looks }: YearsDrawingProps) {
  return (
    <figure className="pn-drawing pn-years">
      <figcaption className="pn-note">{caption}</figcaption>
      <svg viewBox={`0 0 ${plotWidth} ${plotGround + 20}`} role="img" aria-label={plot.says}>
        {plot.years.map(({ season, middle, columns }) => (
          <g key={season}>
            {columns.map(
              (column, index) => column !== null && column.height > 0 && <rect key={looks[index]} className={looks[index]} {...column} />,
            )}
            <text x={middle} y={plotGround + 16} textAnchor="middle">
              {plot.years.length > 6 ? `’${season.slice(-2)}` : season}
            </text>
          </g>
        ))}
        <path className="pn-axis" d={`M0 ${plotGround}H${plotWidth}`} />
      </svg>
    </figure>
  );
}
