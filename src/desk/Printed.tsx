import type { GridBook } from "./gridBook";
import type { SheetChart } from "../host/embedded";
import { SheetCharts } from "./SheetCharts";
import { lastInUse, type View } from "./views";

type PrintedProps = { readonly book: GridBook; readonly view: View; readonly farm: string; readonly charts: readonly SheetChart[] };

/** What is shown, whole and as a plain table with its charts, for paper: the grid itself draws only what is in sight. */
export function Printed({ book, view, farm, charts }: PrintedProps) {
  const { first, table, name, title } = view;
  const last = lastInUse(view);
  const columns = Array.from({ length: last.column - first.column + 1 }, (_, index) => first.column + index);
  const rows = Array.from({ length: last.row - first.row + 1 }, (_, index) => first.row + index);
  const cells = (row: number) => {
    const covered = view.merges.filter((join) => row >= join.top && row <= join.bottom);
    return columns.flatMap((column) => {
      const join = covered.find((each) => column >= each.left && column <= each.right);
      if (join !== undefined && (column > Math.max(join.left, first.column) || row > join.top)) return [];
      const { text, kind, look } = book.cell(name, { row, column });
      const span = join === undefined ? 1 : join.right - Math.max(join.left, first.column) + 1;
      return [
        <td
          key={column}
          colSpan={span}
          data-kind={kind}
          data-look={[look.bold && "bold", look.italic && "italic", look.align].filter(Boolean).join(" ") || undefined}
        >
          {text}
        </td>,
      ];
    });
  };
  return (
    <section className="printed" aria-hidden="true">
      <h2>{title}</h2>
      <table>
        {table?.headingRow !== undefined && table.headingRow !== null && (
          <thead>
            <tr>
              {columns.map((column) => (
                <th key={column}>{book.cell(name, { row: table.headingRow!, column }).text}</th>
              ))}
            </tr>
          </thead>
        )}
        <tbody>
          {rows.map((row) => (
            <tr key={row}>{cells(row)}</tr>
          ))}
        </tbody>
      </table>
      {charts.length > 0 && <SheetCharts charts={charts} />}
      <p>{farm}. Figures are for planning, from your own entries, not audited or verified; not financial, tax or legal advice.</p>
    </section>
  );
}
