/** Rows of a wide sheet that add up others by their numbers, whatever they are called: counted, they would be the same money again. */
import { zero, type Decimal } from "../core/numbers/decimal";
import type { Cell } from "./cell";
import { isBlank, readNumber } from "./numbers";

type Row = { readonly index: number; readonly numbers: readonly (Decimal | null)[] };

/** Real budgets have two numbers that happen to add up; in two columns of a row it is no chance. */
const fewestColumns = 2;
const fewestRows = 2;

/**
 * The rows whose money, in every column of it, is the sum of that above: since the first row, or since the sum before. Money for an
 * acre is also added up times what stands in another column, such as the acres.
 *
 * @param named the column that names a field or crop, -1 where none does; one column of money is enough where a row has no name
 * @returns for each such row, from 0, how many others it adds up
 */
export function wideSums(rows: readonly (readonly Cell[])[], money: readonly number[], named: number): ReadonlyMap<number, number> {
  const sums = new Map<number, number>();
  let [since, all]: [readonly Row[], readonly Row[]] = [[], []];
  rows.forEach((cells, index) => {
    const row: Row = { index, numbers: cells.map(numberIn) };
    const filled = money.filter((column) => row.numbers[column]?.isZero() === false);
    if (filled.length === 0) return;
    const isEnough = filled.length >= (isBlank(cells[named] ?? "") ? 1 : fewestColumns);
    const parts = isEnough ? [since, all].find((above) => adds(row, above, filled, money)) : undefined;
    if (parts === undefined)
      [since, all] = [
        [...since, row],
        [...all, row],
      ];
    else {
      sums.set(index, parts.length);
      since = [];
    }
  });
  return sums;
}

function adds({ numbers }: Row, above: readonly Row[], filled: readonly number[], money: readonly number[]): boolean {
  if (above.length < fewestRows) return false;
  const weights = numbers
    .map((_, column) => column)
    .filter((column) => !money.includes(column) && above.every((row) => (row.numbers[column] ?? null) !== null));
  return [null, ...weights].some((weight) =>
    filled.every((column) =>
      above
        .reduce((sum, row) => sum.plus((row.numbers[column] ?? zero).times(weight === null ? 1 : row.numbers[weight]!)), zero)
        .eq(numbers[column]!),
    ),
  );
}

/** Text counts as far as it can be read without knowing how the workbook writes numbers. */
function numberIn(cell: Cell): Decimal | null {
  if (isBlank(cell)) return null;
  const reading = readNumber(cell, { decimalComma: false });
  return typeof reading === "string" ? null : reading.value;
}
