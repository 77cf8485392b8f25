import type { SheetRow } from "./sheetRow";

/** So many rows are copied from step to step; more of them are laid down once and shared by the steps that follow. */
const mostCopied = 1000;

/**
 * Rows that are not as the sheet's part has them. A step that fills ten thousand rows must not make each later step copy
 * ten thousand entries, so they lie in two layers, of which only the upper, smaller one is copied.
 */
export class RowChanges {
  private constructor(
    private readonly lower: ReadonlyMap<number, SheetRow>,
    private readonly upper: ReadonlyMap<number, SheetRow>,
  ) {}

  static readonly none = new RowChanges(new Map(), new Map());

  with(rows: ReadonlyMap<number, SheetRow>): RowChanges {
    const upper = new Map([...this.upper, ...rows]);
    return upper.size <= mostCopied ? new RowChanges(this.lower, upper) : new RowChanges(new Map([...this.lower, ...upper]), new Map());
  }

  get(row: number): SheetRow | undefined {
    return this.upper.get(row) ?? this.lower.get(row);
  }

  has(row: number): boolean {
    return this.upper.has(row) || this.lower.has(row);
  }

  /** The numbers of the rows, in no order. */
  numbers(): number[] {
    return [...this.upper.keys(), ...[...this.lower.keys()].filter((row) => !this.upper.has(row))];
  }
}
