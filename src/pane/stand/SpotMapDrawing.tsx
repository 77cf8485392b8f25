import { FigureTable } from "../season/FigureTable";
import { usePane } from "../paneContext";
import type { SpotMap } from "./spotMap";

/** Where the spots of a field lie, with their figures. */
export function SpotMapDrawing({ map }: { readonly map: SpotMap }) {
  const { format } = usePane();
  return (
    <>
      <figure className="pn-drawing pn-map">
        <Drawing map={map} />
        <figcaption className="pn-note">{map.caption}</figcaption>
      </figure>
      <FigureTable
        caption={`Spots, plants per ${format.areaName} and where they lie, degrees`}
        corner="Spot"
        columns={["plants", "north", "east"]}
        rows={map.rows.map((row, index) => ({ ...row, name: `${index + 1} ${row.name}` }))}
      />
    </>
  );
}

/** Marks, names of parts, the scale and the arrow to the north; the whole is said in words. */
function Drawing({ map: { width, height, marks, names, scale, says } }: { readonly map: SpotMap }) {
  const foot = height - 24;
  return (
    <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={says}>
      {marks.map(({ x, y, size, isThin }, index) =>
        isThin ? (
          <path key={index} className="pn-thin-spot" d={`M${x} ${y - size}l${size} ${size} ${-size} ${size} ${-size} ${-size}z`} />
        ) : (
          <circle key={index} className="pn-dot" cx={x} cy={y} r={size} />
        ),
      )}
      {names.map(({ words, x, y }) => (
        <text key={words} x={x} y={y} textAnchor="middle">
          {words}
        </text>
      ))}
      <path className="pn-axis" d={`M24 ${foot - 5}v5h${scale.length}v-5`} />
      <text x={24} y={foot + 18}>
        {scale.words}
      </text>
      <path className="pn-north" d={`M${width - 24} ${foot - 14}l5 14 -5 -4 -5 4z`} />
      <text x={width - 24} y={foot + 18} textAnchor="middle">
        N
      </text>
    </svg>
  );
}
