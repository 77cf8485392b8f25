/**
 * Rows that tables once came with, to be typed over. Nothing that the grower did not type is counted: they are read as
 * blank rows and told. Because a row may have been half typed over, each is an entry to fix.
 */
import type { Cell, RawTable } from "./cell";
import type { Problem } from "./problem";
import type { TableName } from "./tableNames";

/** What stood in the cell to be typed over first. */
const exampleWords = "example: replace";
/** The rows that said so nowhere, as they came: 2 March 2031 as Excel counts days is 47909. */
const wholeRows: Readonly<Partial<Record<TableName, readonly Cell[]>>> = {
  Insurance: ["Corn", "revenue", 182, 0.8, 4.4, "", "yes", ""],
  Sales: ["Corn", 47909, 5000, 4.45, "November", "forward"],
};

const isExampleWords = (cell: Cell): boolean =>
  typeof cell === "string" && cell.length >= exampleWords.length && cell.trim().toLowerCase() === exampleWords;

function exampleCell(name: TableName, cells: readonly Cell[]): number {
  const whole = wholeRows[name];
  const asItCame = whole !== undefined && cells.length >= whole.length && cells.every((cell, index) => cell === (whole[index] ?? ""));
  return asItCame ? 0 : cells.findIndex(isExampleWords);
}

/** The tables with their example rows blank, and a problem for each of those. */
export function withoutExamples(tables: ReadonlyMap<TableName, RawTable>): {
  readonly tables: ReadonlyMap<TableName, RawTable>;
  readonly problems: readonly Problem[];
} {
  const problems: Problem[] = [];
  const own = [...tables].map(([name, raw]): readonly [TableName, RawTable] => {
    const examples = new Map(
      raw.rows.flatMap((cells, row) => {
        const column = exampleCell(name, cells);
        return column < 0 ? [] : [[row, column] as const];
      }),
    );
    if (examples.size === 0) return [name, raw];
    for (const [row, column] of examples) {
      problems.push({
        code: "example-row",
        at: { table: name, row: row + 1, column: raw.headers[column] ?? "" },
        found: String(raw.rows[row]![column]).trim(),
        touches: [{ of: "farm" }],
      });
    }
    return [name, { ...raw, rows: raw.rows.map((cells, row) => (examples.has(row) ? cells.map(() => "") : cells)) }];
  });
  return { tables: new Map(own), problems };
}
