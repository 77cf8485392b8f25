/** What the column under a heading is counted in, as it is declared. */
import { declaredTables } from "./columns/all";
import type { ColumnUnit } from "./columns/columnUnit";
import { plain, plainHeading } from "./words";

const units: ReadonlyMap<string, ReadonlyMap<string, ColumnUnit>> = new Map(
  declaredTables.map(({ table, columns }) => [
    plain(table),
    new Map(
      Object.values(columns).flatMap(({ heading, was = [], unit }) =>
        unit === undefined ? [] : [heading, ...was].map((each) => [plainHeading(each), unit] as const),
      ),
    ),
  ]),
);

/** `null` where nothing is said of it, or no table of ours has it. */
export const unitOfColumn = (table: string, heading: string): ColumnUnit | null =>
  units.get(plain(table))?.get(plainHeading(heading)) ?? null;

/** The headings of a table's columns of one unit, in plain words. */
export const headingsIn = (table: string, wanted: ColumnUnit): ReadonlySet<string> =>
  new Set([...(units.get(plain(table)) ?? [])].flatMap(([heading, unit]) => (unit === wanted ? [heading] : [])));
