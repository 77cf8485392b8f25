/** Rates that a number alone does not tell: 0.5 is half a percent or fifty. How the cell shows it does, so that hosts look. */
import type { Cell } from "./cell";
import { headingsIn } from "./unitOfColumn";
import { plain, plainHeading } from "./words";

type Block = { readonly headers: readonly string[]; readonly rows: readonly (readonly Cell[])[] };
type At = { readonly row: number; readonly column: number };

/** Between these a bare rate of interest may be a part of one or percent. */
const [above, below] = [0.4, 1] as const;
/** In the table Season a setting's value may be a rate. */
const settingValue = "value";
/** What a grower may call such a column of a range of their own. */
const ownColumns = /rate|interest|taxes/;

/** Body cells of a table, or of a matched range (`null`), whose number format decides what they say. */
export function unclearRates(table: string | null, { headers, rows }: Block): readonly At[] {
  const rates = table === null ? null : headingsIn(table, "rate of interest");
  const isRate = (heading: string): boolean =>
    rates === null ? ownColumns.test(heading) : rates.has(heading) || (plain(table!) === "season" && heading === settingValue);
  const columns = headers.flatMap((heading, column) => (isRate(plainHeading(heading)) ? [column] : []));
  return columns.flatMap((column) =>
    rows.flatMap((cells, row) => {
      const cell = cells[column];
      return typeof cell === "number" && cell > above && cell < below ? [{ row, column }] : [];
    }),
  );
}

/** Whether a number format shows percent: a percent sign that is not quoted or escaped. */
export const showsPercent = (format: string): boolean => format.replace(/"[^"]*"|\\./g, "").includes("%");
