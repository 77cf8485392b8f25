/** Finds the invoice line that is entered twice: both count, and the grower is told. */
import type { Purchase } from "../../core/season";
import type { EntryRef } from "../../core/row";
import { purchaseColumns } from "../columns/purchases";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";

const { note, supplier } = purchaseColumns.columns;

/** An invoice line, its quantity as text. */
export type Line = Pick<Purchase, "item" | "date" | "amount" | "source"> & { readonly quantity: string };

/**
 * Lines are alike where item, date, quantity, amount and Note are. Another Note tells them apart, and so do two suppliers.
 * Two loads of one day at one price may well be two lines; so this is told and nothing is left out.
 */
export class LinesAlike {
  /** The first of the lines that are alike. Thousands of lines are read, so a line is put into words only where another shares its day. */
  private readonly byDay = new Map<string, { readonly purchase: Line; readonly row: Row }[]>();

  constructor(private readonly table: TableReader) {}

  look(purchase: Line, row: Row): void {
    const day = `${purchase.date} ${purchase.item}`;
    const others = this.byDay.get(day);
    if (others === undefined) {
      this.byDay.set(day, [{ purchase, row }]);
      return;
    }
    const first = others.find((other) => isAlike(other.purchase, purchase) && sameNote(other.row, row) && !twoSuppliers(other.row, row));
    if (first === undefined) others.push({ purchase, row });
    else this.tell(purchase, first.purchase.source);
  }

  private tell({ item, source: { table, row } }: Line, first: EntryRef): void {
    this.table.problems.push({
      code: "line-twice",
      at: { table, row },
      other: { table: first.table, row: first.row },
      found: item,
      touches: [{ of: "item", name: item }],
    });
  }
}

const isAlike = (a: Line, b: Line): boolean => a.quantity === b.quantity && a.amount.eq(b.amount);
const sameNote = (a: Row, b: Row): boolean => plain(a.of(note) ?? "") === plain(b.of(note) ?? "");

function twoSuppliers(a: Row, b: Row): boolean {
  const [one, two] = [a.of(supplier), b.of(supplier)];
  return one !== null && two !== null && plain(one) !== plain(two);
}
