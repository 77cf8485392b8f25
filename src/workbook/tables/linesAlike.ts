/** Finds the invoice line that is entered twice: both count, and the grower is told. */
import type { Purchase } from "../../core/season";
import type { EntryRef } from "../../core/row";
import { purchaseColumns } from "../columns/purchases";
import type { TableReader } from "../tableReader";
import { plain } from "../words";

const { note, supplier } = purchaseColumns.columns;

/** An invoice line; its quantity as text is asked for where another line shares its day. */
export type Line = Pick<Purchase, "item" | "date" | "amount" | "source"> & { readonly quantity: () => string };

/**
 * Lines are alike where item, date, quantity, amount and Note are. Another Note tells them apart, and so do two suppliers.
 * Two loads of one day at one price may well be two lines; so this is told and nothing is left out.
 */
export class LinesAlike {
  /** The first of the lines that are alike, by item and day; where several share them also by quantity. */
  private readonly byDay = new Map<string, Line | Map<string, Line[]>>();

  constructor(private readonly table: TableReader) {}

  look(line: Line): void {
    const day = `${line.date} ${line.item}`;
    let others = this.byDay.get(day);
    if (others === undefined) return void this.byDay.set(day, line);
    if (!(others instanceof Map)) this.byDay.set(day, (others = new Map([[others.quantity(), [others]]])));
    const quantity = line.quantity();
    const ofQuantity = others.get(quantity);
    if (ofQuantity === undefined) return void others.set(quantity, [line]);
    const first = ofQuantity.find((other) => other.amount.eq(line.amount) && this.areNamedAlike(other, line));
    if (first === undefined) ofQuantity.push(line);
    else this.tell(line, first.source);
  }

  /** Whether both have one Note and no two suppliers. */
  private areNamedAlike(a: Line, b: Line): boolean {
    const [one, two] = [this.table.rowOf(a.source), this.table.rowOf(b.source)];
    const [ofOne, ofTwo] = [one.of(supplier), two.of(supplier)];
    const haveTwoSuppliers = ofOne !== null && ofTwo !== null && plain(ofOne) !== plain(ofTwo);
    return plain(one.of(note) ?? "") === plain(two.of(note) ?? "") && !haveTwoSuppliers;
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
