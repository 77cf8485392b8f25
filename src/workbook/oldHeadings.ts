/** Headings that columns of ours had before: they are read and written to as the column's own, and told of as the workbook has them. */
import type { RawTable } from "./cell";
import type { Place, Problem } from "./problem";
import { inputTables } from "./templates";
import { plain, plainHeading } from "./words";

type Old = { readonly heading: string; readonly was: readonly string[] };
const oldOf: ReadonlyMap<string, readonly Old[]> = new Map(
  inputTables.map(
    ({ sheet, columns }) =>
      [plain(sheet), columns.flatMap(({ heading, was = [] }) => (was.length === 0 ? [] : [{ heading, was }]))] as const,
  ),
);
const isNamed = (heading: string, words: readonly string[]): boolean => words.some((each) => plainHeading(each) === plainHeading(heading));

/** The columns of a table that had other headings before. */
export const oldHeadings = (table: string): readonly Old[] => oldOf.get(plain(table)) ?? [];

/** The heading under which a table has a column of ours: the one of today before older ones; `undefined` where it has none. */
export function headingThere(table: string, headers: readonly string[], heading: string): string | undefined {
  const { was = [] } = oldHeadings(table).find((each) => isNamed(heading, [each.heading])) ?? {};
  return [heading, ...was].map((words) => headers.find((each) => isNamed(each, [words]))).find((found) => found !== undefined);
}

/**
 * A table with our heading of today over each column that has an older one. Where today's stands there too, the older one stays
 * as it is: see `headingProblems`.
 */
export function underTodaysHeadings(table: string, raw: RawTable): RawTable {
  const old = new Map(
    oldHeadings(table).flatMap(({ heading, was }) => {
      const there = headingThere(table, raw.headers, heading);
      return there === undefined || !isNamed(there, was) ? [] : [[raw.headers.indexOf(there), heading] as const];
    }),
  );
  return old.size === 0
    ? raw
    : { ...raw, headers: raw.headers.map((heading, index) => old.get(index) ?? heading), called: raw.called ?? raw.headers };
}

/** Problems that name a column by the older heading that the workbook has for it. */
export function inTheirHeadings(problems: readonly Problem[], tables: ReadonlyMap<string, RawTable>): readonly Problem[] {
  const theirs = new Map(
    [...tables].flatMap(([table, { headers, called = headers }]) =>
      oldHeadings(table).flatMap(({ heading, was }) => {
        const own = called[headers.findIndex((each) => isNamed(each, [heading]))];
        return own !== undefined && isNamed(own, was) ? [[`${table}\n${heading}`, own] as const] : [];
      }),
    ),
  );
  if (theirs.size === 0) return problems;
  const headed = <At extends Place>(at: At): At => ({
    ...at,
    ...(at.column === undefined ? {} : { column: theirs.get(`${at.table}\n${at.column}`) ?? at.column }),
  });
  return problems.map((problem) => ({
    ...problem,
    at: headed(problem.at),
    ...(problem.other === undefined ? {} : { other: headed(problem.other) }),
  }));
}
