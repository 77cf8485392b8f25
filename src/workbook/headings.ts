/** Headings that are nearly ours: a column that nobody reads because of a slip would be dropped in silence. */
import type { RawTable } from "./cell";
import type { TableName } from "./tableNames";
import type { Problem } from "./problem";
import { inputTables } from "./templates";
import { editDistance, plain, plainHeading } from "./words";

/** Columns that are read besides those that we offer. */
export const columnsAlsoRead: Readonly<Partial<Record<TableName, readonly string[]>>> = {
  Applications: ["Field", "Crop"], Operations: ["Field", "Crop"], Changes: ["Field", "Crop"], Sales: ["Unit"],
};
/** Letters that may differ in a slip, and the length from which a heading can be told from another word. */
const slip = 2;
const shortest = 6;

/** The headings that a table of ours may have. */
export const headingsOf = (name: TableName): readonly string[] =>
  [...inputTables.filter((table) => plain(table.name) === plain(name)).flatMap(({ columns }) => columns.map(({ heading }) => heading)), ...(columnsAlsoRead[name] ?? [])];

/** Columns that are there twice, and columns of the grower's own that look like one of ours which is not there. */
export function headingProblems(name: TableName, { headers }: RawTable): readonly Problem[] {
  const ours = new Map(headingsOf(name).map((heading) => [plainHeading(heading), heading]));
  const there = headers.map(plainHeading);
  return headers.flatMap((found, index): readonly Problem[] => {
    const key = there[index]!;
    const at = { table: name, column: found };
    const known = ours.get(key);
    if (known !== undefined) return there.indexOf(key) < index ? [{ code: "column-twice", at, found, like: known, touches: [{ of: "farm" }] }] : [];
    if (key.length < shortest) return [];
    const like = [...ours].find(([own]) => own.length >= shortest && !there.includes(own) && editDistance(own, key) <= slip)?.[1];
    return like === undefined ? [] : [{ code: "column-unread", at, found, like, touches: [{ of: "farm" }] }];
  });
}
