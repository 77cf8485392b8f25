/** Rows that add up others without saying so: a subtotal among the entries would count everything above it twice. */
import { zero, type Decimal } from "../core/numbers/decimal";
import type { Named } from "./columns/column";
import { fieldColumns } from "./columns/fields";
import { harvestColumns } from "./columns/harvest";
import { loanColumns } from "./columns/loans";
import { otherCostColumns } from "./columns/otherCosts";
import { purchaseColumns } from "./columns/purchases";
import { saleColumns } from "./columns/sales";
import type { Cell, RawTable } from "./cell";
import { isBlank, readNumber, type NumberStyle } from "./numbers";
import type { Problem } from "./problem";
import type { TableName } from "./tableNames";
import { isTotalRow } from "./totalRows";
import { parted } from "./typedUnits";
import { plain, plainHeading } from "./words";

/** Columns whose numbers add up, with the column that names a row. */
const additive: Readonly<Partial<Record<TableName, { readonly adds: Named; readonly names: Named }>>> = {
  Fields: { adds: fieldColumns.columns.acres, names: fieldColumns.columns.field },
  "Other costs": { adds: otherCostColumns.columns.amount, names: otherCostColumns.columns.item },
  Loans: { adds: loanColumns.columns.balance, names: loanColumns.columns.name },
  Purchases: { adds: purchaseColumns.columns.amount, names: purchaseColumns.columns.item },
  Sales: { adds: saleColumns.columns.quantity, names: saleColumns.columns.crop },
  Harvest: { adds: harvestColumns.columns.net, names: harvestColumns.columns.field },
};
/** Columns of other tables that name fields, and that name items: what is named there is land, or a thing that is bought, and no sum. */
const namingFields: ReadonlySet<string> = new Set(["field", "fieldorcrop", "for"]);
const namingItems: ReadonlySet<string> = new Set(["item"]);
const sumWords = /\b(all|sum|both|whole|combined|together|overall)\b/i;
const fewest = 2;

type Entry = { readonly row: number; readonly name: string; readonly number: Decimal };
type Sum = Entry & { readonly parts: number };

/**
 * A row whose number is the sum of those above it (since the table's begin, a blank row or the sum before), or the first row where it
 * is the sum of all others. Entries to fix, or to check where it may well be chance: a round number that says nothing of a sum. Of
 * two parts only, such a number is told of fields alone, because real budgets are full of them.
 */
export function sumRows(tables: ReadonlyMap<TableName, RawTable>, style: NumberStyle): readonly Problem[] {
  return [...tables].flatMap(([name, raw]) => {
    const columns = additive[name];
    if (columns === undefined) return [];
    const column = ({ heading }: Named) => raw.headers.findIndex((each) => plainHeading(each) === plainHeading(heading));
    const [adds, names] = [column(columns.adds), column(columns.names)];
    if (adds < 0) return [];
    const sums = sumsOf(groupsOf(raw, adds, names, style));
    if (sums.length === 0) return [];
    const isOfFields = name === "Fields";
    const known = isOfFields ? namedIn(tables, namingFields, name) : name === "Purchases" ? namedIn(tables, namingItems, name) : new Set();
    return sums
      .filter((sum) => !known.has(plain(sum.name)))
      .flatMap((sum): readonly Problem[] => {
        const isSure = isOfFields || sumWords.test(sum.name) || !sum.number.mod("10").isZero();
        if (!isSure && sum.parts === fewest) return [];
        const at = { table: name, row: sum.row + 1, column: raw.headers[adds]! };
        return [
          { code: isSure ? "sum-row" : "sum-maybe", at, found: sum.number.toFixed(), like: String(sum.parts), touches: [{ of: "farm" }] },
        ];
      });
  });
}

/** Rows that are filled and add up nothing by their own word, in groups that blank rows part. */
function groupsOf({ rows }: RawTable, adds: number, names: number, style: NumberStyle): readonly (readonly Entry[])[] {
  const groups: Entry[][] = [[]];
  rows.forEach((cells, row) => {
    if (cells.every(isBlank)) return void groups.push([]);
    const number = numberIn(cells[adds] ?? "", style);
    if (number !== null && !number.isZero() && !isTotalRow(cells))
      groups.at(-1)!.push({ row, name: String(cells[names] ?? "").trim(), number });
  });
  return groups.filter((group) => group.length > 0);
}

function numberIn(cell: Cell, style: NumberStyle): Decimal | null {
  if (isBlank(cell)) return null;
  const reading = readNumber((typeof cell === "string" ? parted(cell)?.number : undefined) ?? cell, style);
  return typeof reading === "string" ? null : reading.value;
}

/** Entries that may be parts of a sum: how many, and what they come to. */
type Parts = { readonly count: number; readonly total: Decimal };
const noParts: Parts = { count: 0, total: zero };
const withPart = ({ count, total }: Parts, { number }: Entry): Parts => ({ count: count + 1, total: total.plus(number) });
const isSum = ({ number }: Entry, { count, total }: Parts): boolean => count >= fewest && total.eq(number);

function sumsOf(groups: readonly (readonly Entry[])[]): readonly Sum[] {
  const sums: Sum[] = [];
  let [all, others] = [noParts, noParts];
  let first: Entry | null = null;
  for (const group of groups) {
    let above = noParts;
    for (const entry of group) {
      const parts = [above, all].find((entries) => isSum(entry, entries));
      if (parts === undefined) {
        [above, all] = [withPart(above, entry), withPart(all, entry)];
        if (first === null) first = entry;
        else others = withPart(others, entry);
      } else {
        sums.push({ ...entry, parts: parts.count });
        above = noParts;
      }
    }
  }
  return first !== null && isSum(first, others) ? [{ ...first, parts: others.count }, ...sums] : sums;
}

/** What the columns of other tables name, in plain words. */
function namedIn(tables: ReadonlyMap<TableName, RawTable>, columns: ReadonlySet<string>, but: TableName): ReadonlySet<string> {
  return new Set(
    [...tables].flatMap(([name, { headers, rows }]) =>
      name === but
        ? []
        : headers.flatMap((heading, column) =>
            columns.has(plainHeading(heading)) ? rows.map((cells) => plain(String(cells[column] ?? "").trim())) : [],
          ),
    ),
  );
}
