/** The workbook as it would be read with one more row in Purchases, so that the form can say what the row will do before it is added. */
import { Decimal } from "../../core/numbers/decimal";
import type { Cell, WorkbookContent } from "../../workbook/cell";
import { findTables } from "../../workbook/findTables";
import { inputTables } from "../../workbook/templates";
import { plainHeading } from "../../workbook/words";
import type { Entry, EntryRow } from "../commands/entryRow";
import { tableNamed } from "../commands/tableNamed";

/** The table that is made with the first purchase. */
const purchases = inputTables.find(({ name }) => name === "Purchases")!;

/** What the row's cells would hold, by heading. */
export const purchaseCells = (row: EntryRow): readonly (readonly [string, Cell])[] =>
  [...row].map(([heading, entry]) => [heading, cellOf(entry)]);

/** @returns `null` where purchases are read from a range of the grower's own, to which nothing is added */
export function withPurchase(content: WorkbookContent, row: ReturnType<typeof purchaseCells>): WorkbookContent | null {
  const there = tableNamed(content, "Purchases");
  if (there === null && findTables(content).tables.has("Purchases")) return null;
  const table = there ?? {
    name: purchases.name,
    headers: purchases.columns.map(({ heading }) => heading),
    rows: [],
    body: { sheet: purchases.name, row: 1, column: 0 },
  };
  const entries = new Map(row.map(([heading, cell]) => [plainHeading(heading), cell]));
  const cells = table.headers.map((heading) => entries.get(plainHeading(heading)) ?? "");
  // A row that was made beforehand and stands blank is where the host would write.
  const isBlank = (each: readonly Cell[]) => each.every((cell) => String(cell ?? "").trim() === "");
  const at = table.rows.findLastIndex((each) => !isBlank(each)) + 1;
  const rows = [...table.rows.slice(0, at), cells, ...table.rows.slice(at)];
  return { ...content, tables: [...content.tables.filter((each) => each !== there), { ...table, rows }] };
}

const cellOf = (entry: Entry): Cell =>
  typeof entry === "string" ? entry : entry instanceof Decimal ? Number(entry.toFixed()) : (entry as { readonly day: string }).day;
