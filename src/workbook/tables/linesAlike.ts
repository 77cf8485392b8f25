/** Finds the invoice line that is entered twice: both count, and the grower is told. */
import type { Purchase } from "../../core/season";
import type { EntryRef } from "../../core/row";
import { purchaseColumns } from "../columns/purchases";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";

const { note, supplier } = purchaseColumns.columns;

/** An invoice line; its quantity as text is asked for where another line shares its day. */
export type Line = Pick<Purchase, "item" | "date" | "amount" | "source"> & { readonly quantity: () => string };
type Looked = { readonly purchase: Line; readonly row: Row };

/**
 * Lines are alike where item, date, quantity, amount and Note are. Another Note tells them apart, and so do two suppliers.
 * Two loads of one day at one price may well be two lines; so this is told and nothing is left out.
 */
export class LinesAlike {
  /** The first of the lines that are alike, by item and day; where several share them also by quantity. */
  private readonly byDay = new Map<string, Looked | Map<string, Looked[]>>();

  constructor(private readonly table: TableReader) {}

  look(purchase: Line, row: Row): void {
    const line = { purchase, row };
    const day = `${purchase.date} ${purchase.item}`;
    let others = this.byDay.get(day);
    if (others === undefined) return void this.byDay.set(day, line);
    if (!(others instanceof Map)) this.byDay.set(day, (others = new Map([[others.purchase.quantity(), [others]]])));
    const quantity = purchase.quantity();
    const ofQuantity = others.get(quantity);
    if (ofQuantity === undefined) return void others.set(quantity, [line]);
    const first = ofQuantity.find((other) => isAlike(other, line));
    if (first === undefined) ofQuantity.push(line);
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

const isAlike = (a: Looked, b: Looked): boolean =>
  a.purchase.amount.eq(b.purchase.amount) && sameNote(a.row, b.row) && !twoSuppliers(a.row, b.row);
const sameNote = (a: Row, b: Row): boolean => plain(a.of(note) ?? "") === plain(b.of(note) ?? "");

function twoSuppliers(a: Row, b: Row): boolean {
  const [one, two] = [a.of(supplier), b.of(supplier)];
  return one !== null && two !== null && plain(one) !== plain(two);
}
