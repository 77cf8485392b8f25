/** A block of cells; rows and columns count from 0. */
export type Rectangle = { readonly row: number; readonly column: number; readonly rows: number; readonly columns: number };

/**
 * Covers the cells that are alike with few rectangles: runs along each row, joined with the same run in the row above.
 * `keyOf` gives what a cell is alike in, or null for a cell to leave out; `joinable` forbids joining rows where it is false.
 */
export function rectanglesByKey<Item>(
  rows: readonly (readonly Item[])[],
  keyOf: (item: Item) => string | null,
  joinable: (key: string) => boolean,
): readonly { readonly key: string; readonly at: Rectangle }[] {
  type Growing = { readonly key: string; readonly at: { row: number; column: number; rows: number; columns: number } };
  const all: Growing[] = [];
  let above: Growing[] = [];
  rows.forEach((items, row) => {
    const here: Growing[] = [];
    items.forEach((item, column) => {
      const key = keyOf(item);
      if (key === null) return;
      const before = here.at(-1);
      if (before?.key === key && before.at.column + before.at.columns === column) before.at.columns += 1;
      else here.push({ key, at: { row, column, rows: 1, columns: 1 } });
    });
    above = here.map((run) => {
      const same = above.find(({ key, at }) => key === run.key && at.column === run.at.column && at.columns === run.at.columns);
      if (same === undefined || !joinable(run.key)) {
        all.push(run);
        return run;
      }
      same.at.rows += 1;
      return same;
    });
  });
  return all;
}
