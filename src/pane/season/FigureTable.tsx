import type { FigureRow } from "./cropView";

export type FigureTableProps = {
  readonly caption: string;
  /** What the rows are, above the first column; left out where the caption says it. */
  readonly corner?: string;
  readonly columns: readonly string[];
  readonly rows: readonly FigureRow[];
};

/** Figures under headings, the names to the left. */
export function FigureTable({ caption, corner, columns, rows }: FigureTableProps) {
  return (
    <table className="pn-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          {corner === undefined ? <td /> : <th scope="col">{corner}</th>}
          {columns.map((column) => (
            <th key={column} scope="col" className="pn-number">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, cells }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {cells.map((cell, index) => (
              <td key={columns[index]} className="pn-number">
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
