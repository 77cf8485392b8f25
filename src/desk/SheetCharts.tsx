import type { SheetChart } from "../host/embedded";
import { chartDrawing } from "./chartDrawing";

const [width, height] = [380, 210];
const plot = { left: 46, right: width - 8, top: 10, bottom: height - 34 };
const patterns = ["#404040", "#a6a6a6", "#d9d9d9", "#737373"];
const place = (share: number) => plot.bottom - share * (plot.bottom - plot.top);

/** The charts of a sheet, drawn plainly from what its cells say now. Their figures stand in the cells. */
export function SheetCharts({ charts }: { readonly charts: readonly SheetChart[] }) {
  return (
    <section className="charts" aria-label="Charts of this sheet">
      {charts.map((chart, index) => (
        <Chart key={index} chart={chart} />
      ))}
    </section>
  );
}

function Chart({ chart }: { readonly chart: SheetChart }) {
  const { title, kind, categories, series } = chart;
  const drawing = chartDrawing(chart);
  if (drawing === null)
    return (
      <figure>
        <figcaption>{title === "" ? "A chart" : title}</figcaption>
        <p>This kind of chart is not drawn here. It stays in the file as it is.</p>
      </figure>
    );
  const step = (plot.right - plot.left) / Math.max(1, categories.length);
  const middle = (category: number) => plot.left + step * (category + 0.5);
  const bar = Math.min(28, (step * 0.8) / Math.max(1, series.length));
  const shown = Math.max(1, Math.ceil((categories.length * 46) / (plot.right - plot.left)));
  return (
    <figure>
      <figcaption>{title}</figcaption>
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={
          `${title}: ${series.map(({ name }) => name).join(", ")}, by ${categories[0] ?? ""} to ${categories.at(-1) ?? ""}. The ` +
          "figures stand in the cells."
        }
      >
        {drawing.ticks.map(({ share, words }) => (
          <g key={words}>
            <line className="chart-grid" x1={plot.left} x2={plot.right} y1={place(share)} y2={place(share)} />
            <text x={plot.left - 4} y={place(share) + 4} textAnchor="end">
              {words}
            </text>
          </g>
        ))}
        {series.map(({ name }, at) =>
          kind === "line"
            ? drawing.lines[at]!.map((points, part) => (
                <polyline
                  key={`${name} ${part}`}
                  className="chart-line"
                  stroke={patterns[at % 4]}
                  strokeDasharray={at % 2 === 1 ? "5 3" : undefined}
                  points={points.map(({ category, share }) => `${middle(category)},${place(share)}`).join(" ")}
                />
              ))
            : drawing.lines[at]!.flat().map(({ category, share }) => (
                <rect
                  key={category}
                  className="chart-bar"
                  fill={patterns[at % 4]}
                  x={middle(category) - (bar * series.length) / 2 + bar * at}
                  width={bar}
                  y={Math.min(place(share), place(drawing.zero))}
                  height={Math.abs(place(share) - place(drawing.zero))}
                />
              )),
        )}
        <line className="chart-axis" x1={plot.left} x2={plot.right} y1={place(drawing.zero)} y2={place(drawing.zero)} />
        {categories.map((words, category) =>
          category % shown === 0 ? (
            <text key={category} x={middle(category)} y={plot.bottom + 15} textAnchor="middle">
              {words.length > 9 ? `${words.slice(0, 8)}…` : words}
            </text>
          ) : null,
        )}
      </svg>
      {series.length > 1 && (
        <p className="chart-legend">
          {series.map(({ name }, at) => (
            <span key={name}>
              <i style={{ background: patterns[at % 4] }} />
              {name}
            </span>
          ))}
        </p>
      )}
    </figure>
  );
}
