/** Ranges of one layout on several sheets of the grower's own, such as a sheet a field: read as one table. */
import type { Cell, RawTable, RowOrigin } from "./cell";
import type { Problem } from "./problem";
import { plainHeading } from "./words";

/** A matched range, its headings ours, and what is told of it by the numbers of its own rows. */
export type JoinedPart = {
  readonly raw: RawTable;
  readonly told: readonly Problem[];
  /** The entries below it that it does not take in. */ readonly missed: Missed | null;
};

/** How many entries, and the row of the sheet, from 0, on which the last of them stands. */
export type Missed = { readonly entries: number; readonly bottom: number };

/** Whether two ranges share a cell, so that its entry would count twice. */
export function overlap(one: RawTable, other: RawTable): boolean {
  const [a, b] = [blockOf(one), blockOf(other)];
  return one.body.sheet === other.body.sheet && a.top <= b.bottom && b.top <= a.bottom && a.left <= b.right && b.left <= a.right;
}

function blockOf({ body, headers, rows }: RawTable) {
  return { top: body.row, bottom: body.row + rows.length - 1, left: body.column, right: body.column + headers.length - 1 };
}

/** The cells of a row of a range, counted from 1; rows below its last one as well. */
const originOf = ({ origins, body, headers, made = [] }: RawTable, row: number): RowOrigin =>
  origins?.[row - 1] ?? {
    sheet: body.sheet,
    row: body.row + row - 1,
    columns: headers.map((_, column) => body.column + (made.includes(column) ? 0 : column)),
  };

/** One range as it is; of several the rows one below the other, each placed where it stands. */
export function joined(parts: readonly [JoinedPart, ...JoinedPart[]]): Pick<JoinedPart, "raw" | "told"> {
  const [first, ...others] = parts;
  if (others.length === 0) return first;
  const headers = [
    ...new Map(
      parts
        .flatMap(({ raw }) => raw.headers)
        .filter((heading) => heading !== "")
        .map((heading) => [plainHeading(heading), heading]),
    ).values(),
  ];
  // Where each of them stands in a part, looked for once and not for every row.
  const columnsOf = parts.map(({ raw }) => {
    const there = raw.headers.map(plainHeading);
    return headers.map((heading) => there.indexOf(plainHeading(heading)));
  });
  const rowsOf = ({ raw }: JoinedPart, index: number): readonly (readonly Cell[])[] =>
    raw.rows.map((cells) => columnsOf[index]!.map((column) => cells[column] ?? ""));
  const placed = ({ raw }: JoinedPart, index: number, row: number): RowOrigin => {
    const { columns, ...origin } = originOf(raw, row);
    return { ...origin, columns: columnsOf[index]!.map((column) => columns[Math.max(0, column)] ?? columns[0]!) };
  };
  const above = parts.map((_, index) => parts.slice(0, index).reduce((rows, { raw }) => rows + raw.rows.length, 0));
  const marked = <Mark extends { readonly row: number; readonly column: number }>(
    marksOf: (raw: RawTable) => readonly Mark[] | undefined,
  ): readonly Mark[] =>
    parts.flatMap((part, index) =>
      (marksOf(part.raw) ?? [])
        .filter(({ row }) => row < part.raw.rows.length)
        .flatMap((mark) => {
          const column = columnsOf[index]!.indexOf(mark.column);
          return column < 0 ? [] : [{ ...mark, row: mark.row + above[index]!, column }];
        }),
    );
  const rows = parts.flatMap(rowsOf);
  const origins = parts.flatMap((part, index) => part.raw.rows.map((_, row) => placed(part, index, row + 1)));
  // What is told of a row below a range stands after all rows, so that its number is no other row's.
  const told = parts.flatMap((part, index) =>
    part.told.map((problem): Problem => {
      const { row } = problem.at;
      if (row === undefined) return problem;
      if (row <= part.raw.rows.length) return { ...problem, at: { ...problem.at, row: row + above[index]! } };
      return { ...problem, at: { ...problem.at, row: origins.push(placed(part, index, row)) } };
    }),
  );
  return {
    told,
    raw: {
      name: first.raw.name,
      headers,
      rows,
      body: first.raw.body,
      origins,
      parts: parts.map(({ raw }) => raw),
      stale: marked(({ stale }) => stale),
      differing: marked(({ differing }) => differing),
      percents: marked(({ percents }) => percents),
    },
  };
}
