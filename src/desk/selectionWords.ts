/** What is said of the cells that are selected: how many, and the sum of the numbers among them. */
import { sum, type Decimal } from "../core/numbers/decimal";
import { areaName, type Block } from "../host/address";
import type { GridBook } from "./gridBook";
import type { View } from "./views";

/** More cells than these are not added up while somebody selects. */
const mostAdded = 100_000;

/** E.g. `C5:C9: 5 numbers, sum 1,234.5`; the block alone where it holds no numbers or too many cells. */
export function selectionWords(book: GridBook, view: View, block: Block): string {
  const { name, used } = view;
  const rows = view.rowsShown === undefined || view.rowsShown === null ? null : new Set(view.rowsShown);
  const [bottom, right] = [Math.min(block.bottom, used.rows - 1), Math.min(block.right, used.columns - 1)];
  const where = areaName(block);
  if ((bottom - block.top + 1) * (right - block.left + 1) > mostAdded) return `${where} selected.`;
  const numbers: Decimal[] = [];
  for (let row = block.top; row <= bottom; row += 1) {
    if (rows !== null && !rows.has(row)) continue;
    for (let column = block.left; column <= right; column += 1) {
      const { amount } = book.cell(name, { row, column });
      if (amount !== null) numbers.push(amount);
    }
  }
  if (numbers.length === 0) return `${where} selected.`;
  return `${where}: ${numbers.length === 1 ? "one number" : `${numbers.length} numbers`}, sum ${grouped(sum(numbers))}.`;
}

/** Every digit, with a comma between thousands. */
function grouped(value: Decimal): string {
  const [whole = "", part] = value.abs().toFixed().split(".");
  const minus = value.isNegative() && !value.isZero() ? "−" : "";
  return `${minus}${whole.replace(/\B(?=(\d{3})+$)/g, ",")}${part === undefined ? "" : `.${part}`}`;
}
