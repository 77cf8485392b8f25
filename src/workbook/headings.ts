/** Headings that are nearly ours: a column that nobody reads because of a slip would be dropped in silence. */
import type { RawTable } from "./cell";
import { declaredTables } from "./columns/all";
import { oldHeadings } from "./oldHeadings";
import type { TableName } from "./tableNames";
import type { Problem } from "./problem";
import { inputTables } from "./templates";
import { editDistance, plain, plainHeading } from "./words";

/** Columns that are read besides those that we offer, under their headings of today. */
export const columnsAlsoRead = (name: string): readonly string[] =>
  declaredTables
    .filter(({ table }) => plain(table) === plain(name))
    .flatMap(({ columns }) =>
      Object.values(columns)
        .filter(({ offered }) => offered === false)
        .map(({ heading }) => heading),
    );
/** Letters that may differ in a slip, and the length from which a heading can be told from another word. */
const slip = 2;
const shortest = 6;

/** The headings of today that a table of ours may have. */
export const headingsOf = (name: TableName): readonly string[] => [
  ...inputTables.filter((table) => plain(table.name) === plain(name)).flatMap(({ columns }) => columns.map(({ heading }) => heading)),
  ...columnsAlsoRead(name),
];

/** Every heading under which a table of ours is read, in plain words, with the heading of today that it stands for. */
const readAs = (name: TableName): ReadonlyMap<string, string> =>
  new Map([
    ...oldHeadings(name).flatMap(({ heading, was }) => was.map((old) => [plainHeading(old), heading] as const)),
    ...headingsOf(name).map((heading) => [plainHeading(heading), heading] as const),
  ]);

/** The heading of today that a heading of ours stands for, of today itself or an older one; `undefined` where it is none of the table. */
export const ourHeading = (name: TableName, typed: string): string | undefined => readAs(name).get(plainHeading(typed));

/**
 * Columns that are there twice, if only under an older heading, and columns of the grower's own that look like one of ours which
 * is not there.
 */
export function headingProblems(name: TableName, { headers }: RawTable): readonly Problem[] {
  const ours = readAs(name);
  const there = headers.map(plainHeading);
  const isThere = (heading: string) => there.includes(plainHeading(heading));
  return headers.flatMap((found, index): readonly Problem[] => {
    const key = there[index]!;
    const at = { table: name, column: found };
    const known = ours.get(key);
    // An older heading stands here still only where today's does too.
    if (known !== undefined)
      return plainHeading(known) !== key || there.indexOf(key) < index
        ? [{ code: "column-twice", at, found, like: known, touches: [{ of: "farm" }] }]
        : [];
    if (key.length < shortest) return [];
    const like = [...ours].find(([own, heading]) => own.length >= shortest && !isThere(heading) && editDistance(own, key) <= slip)?.[1];
    return like === undefined ? [] : [{ code: "column-unread", at, found, like, touches: [{ of: "farm" }] }];
  });
}
