/** A wide sheet of the grower's own, one row a field or crop and a column for each kind of cost: read as lines of the Budget. */
import type { Cell, RawTable, RowBelow, RowOrigin } from "./cell";
import { budgetColumns } from "./columns/budget";
import { isBlank } from "./numbers";
import { grown } from "./rowsBelow";
import { isTotalRow } from "./totalRows";
import { areaNamed, ownHeading, wideColumnSaid } from "./wideColumns";
import { wideSums } from "./wideSums";

const { over, kind, amount, basis, month, operatorCostShare, allIn, note } = budgetColumns.columns;
/** Columns of Budget that a row of a wide sheet may say for all its lines. */
const carried = [over, month, operatorCostShare, allIn].map(({ heading }) => heading);

export type Wide = {
  readonly raw: RawTable;
  /** Headings of columns with numbers in them of which nobody said what they hold. */
  readonly unsaid: readonly string[];
  /**
   * Rows left out because their numbers add up those of others: where they stand by the numbers of `raw`, what they begin with,
   * and how many others.
   */
  readonly sums: readonly { readonly row: number; readonly found: string; readonly others: number }[];
  /**
   * Rows below the range, after a gap or a total, that read as entries: where they stand by the numbers of `raw`, and by how many
   * rows below the last that is taken in.
   */
  readonly missed: readonly { readonly row: number; readonly by: number }[];
};

/** A cell of a line: what it says, and the column of the range that it stands in; `null` where we put it there. */
type Made = { readonly cell: Cell; readonly from: number | null };

/**
 * Lines of the Budget for the cells of a wide range that have something in them. The heading becomes the note, which tells two
 * columns of one kind apart.
 *
 * @param said by the own heading of the range: a column of Budget, or what a wide column holds
 */
export function wideRange(range: RawTable, said: ReadonlyMap<string, string>): Wide {
  // A heading that stands there twice was said of the first alone.
  const keys = range.headers.map(ownHeading);
  const columns = range.headers.map((heading, at) => ({
    heading: heading.trim(),
    at,
    says: keys.indexOf(keys[at]!) === at ? said.get(keys[at]!) : undefined,
  }));
  const money = columns.flatMap(({ says, ...column }) => {
    const wide = says === undefined ? null : wideColumnSaid(says);
    return wide === null || wide === "left out" ? [] : [{ ...column, ...wide }];
  });
  const columnOf = (heading: string): number => columns.find(({ says }) => says === heading)?.at ?? -1;
  const under = range.below ?? [];
  // A row of the range that says it is a total adds up nothing more.
  const sums = wideSums(
    [...range.rows, ...under.map(({ cells }) => cells)].map((cells) => (isTotalRow(cells) ? [] : cells)),
    money.map(({ at }) => at),
    columnOf(over.heading),
  );
  const isEntry = ({ cells }: RowBelow, index: number) =>
    !isTotalRow(cells) &&
    !sums.has(range.rows.length + index) &&
    !isBlank(cells[columnOf(over.heading)] ?? "") &&
    money.some(({ at }) => typeof cells[at] === "number");
  const entriesBelow = under.filter(isEntry);
  const found = grown(range, entriesBelow);
  const added = [...sums].filter(([row]) => row < range.rows.length);
  const missed = entriesBelow.slice(found.rows.length - range.rows.length).map(({ by }) => range.rows.length + by);
  const shared = carried.filter((heading) => columnOf(heading) >= 0);
  const lines = found.rows.flatMap((cells, row) =>
    (sums.has(row) ? [] : money)
      .filter(({ at }) => !isBlank(cells[at] ?? ""))
      .map((column) => {
        const own = (at: number): Made => ({ cell: cells[at] ?? "", from: at });
        const ours = (cell: Cell): Made => ({ cell, from: null });
        const noted = String(cells[columnOf(note.heading)] ?? "").trim();
        return {
          row,
          column,
          made: [
            ...shared.map((heading) => own(columnOf(heading))),
            ours(column.kind),
            own(column.at),
            ours(column.basis === "whole" ? "whole" : (areaNamed(column.heading) ?? (column.isSaid === true ? column.basis : ""))),
            ours(noted === "" ? column.heading : `${column.heading}: ${noted}`),
          ],
        };
      }),
  );
  const marked = <Mark extends { readonly row: number; readonly column: number }>(marks: readonly Mark[] = []): readonly Mark[] =>
    marks.flatMap((mark) =>
      lines.flatMap(({ row, made }, index) =>
        row !== mark.row ? [] : made.flatMap(({ from }, column) => (from === mark.column ? [{ ...mark, row: index, column }] : [])),
      ),
    );
  const originOf = (row: number, columns: readonly number[]): RowOrigin => ({
    sheet: found.body.sheet,
    row: found.body.row + row,
    columns,
  });
  const all = [...shared, kind.heading, amount.heading, basis.heading, note.heading];
  return {
    sums: added.map(([row, others], index) => ({
      row: lines.length + missed.length + 1 + index,
      found: String(range.rows[row]!.find((cell) => !isBlank(cell))).trim(),
      others,
    })),
    missed: missed.map((row, index) => ({ row: lines.length + 1 + index, by: row - found.rows.length })),
    unsaid: columns
      .filter(({ says, at }) => says === undefined && found.rows.some((cells) => typeof cells[at] === "number"))
      .map(({ heading }) => heading),
    raw: {
      name: found.name,
      headers: all,
      rows: lines.map(({ made }) => made.map(({ cell }) => cell)),
      body: found.body,
      origins: [
        ...lines.map(({ row, column, made }) =>
          originOf(
            row,
            made.map(({ from }) => found.body.column + (from === null ? column.at : found.made?.includes(from) === true ? 0 : from)),
          ),
        ),
        ...[...missed.map((row) => row - 1), ...added.map(([row]) => row)].map((row) =>
          originOf(
            row,
            all.map(() => found.body.column),
          ),
        ),
      ],
      ...(found.stale !== undefined && { stale: marked(found.stale) }),
      ...(found.percents !== undefined && { percents: marked(found.percents) }),
      ...(found.differing !== undefined && { differing: marked(found.differing) }),
    },
  };
}
