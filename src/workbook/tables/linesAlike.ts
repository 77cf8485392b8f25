/** Finds the invoice line that is entered twice: both count, and the grower is told. */
import type { Kind } from "../../core/kinds";
import { once } from "../../core/once";
import type { Bill, Purchase } from "../../core/season";
import type { EntryRef } from "../../core/row";
import { purchaseColumns } from "../columns/purchases";
import type { TableReader } from "../tableReader";
import { plain } from "../words";

const { date, note, supplier } = purchaseColumns.columns;

/** An invoice line; its quantity as text is asked for where another line shares its day. */
export type Line = Pick<Purchase, "item" | "date" | "amount" | "source"> & { readonly quantity: () => string };

/** What a line that is not read again is compared by stays what it was. */
const known = new WeakMap<Purchase, Line>();

/** A purchase as a line; its quantity is spelled once, however often the workbook is read again. */
export function lineOf(purchase: Purchase): Line {
  let line = known.get(purchase);
  if (line === undefined) {
    const { item, date, amount, source, quantity } = purchase;
    known.set(purchase, (line = { item, date, amount, source, quantity: once(() => quantity.toFixed()) }));
  }
  return line;
}

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

  /**
   * A bill that is charged directly and a line of an item may be one invoice in two ways: told where day, kind and what is paid in all
   * are the same, however the item is called.
   */
  lookAcross(lines: readonly Purchase[], kindOf: (item: string) => Kind, bills: readonly Bill[]): void {
    if (bills.length === 0) return;
    const byDay = new Map<string, Bill[]>();
    for (const bill of bills) {
      const day = this.table.rowOf(bill.source).of(date)!;
      byDay.set(day, [...(byDay.get(day) ?? []), bill]);
    }
    for (const line of lines) {
      const ofDay = byDay.get(line.date)?.filter(({ kind }) => kind === kindOf(line.item)) ?? [];
      if (ofDay.length === 0) continue;
      const paid = line.amount.plus(line.freight).minus(line.rebate);
      const same = ofDay.find((bill) => bill.amount.eq(paid) && this.areNamedAlike(bill, line));
      if (same === undefined) continue;
      const [first, second] = same.source.row < line.source.row ? [same, line] : [line, same];
      this.tell({ item: line.item, source: second.source }, first.source);
    }
  }

  /** Whether both have one Note and no two suppliers. */
  private areNamedAlike(a: Pick<Line, "source">, b: Pick<Line, "source">): boolean {
    const [one, two] = [this.table.rowOf(a.source), this.table.rowOf(b.source)];
    const [ofOne, ofTwo] = [one.of(supplier), two.of(supplier)];
    const haveTwoSuppliers = ofOne !== null && ofTwo !== null && plain(ofOne) !== plain(ofTwo);
    return plain(one.of(note) ?? "") === plain(two.of(note) ?? "") && !haveTwoSuppliers;
  }

  private tell({ item, source: { table, row } }: Pick<Line, "item" | "source">, first: EntryRef): void {
    this.table.problems.push({
      code: "line-twice",
      at: { table, row },
      other: { table: first.table, row: first.row },
      found: item,
      touches: [{ of: "item", name: item }],
    });
  }
}
