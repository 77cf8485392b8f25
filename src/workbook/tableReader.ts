/**
 * Reads the rows of one table, cell by cell, into typed values, and notes every fault on the way.
 *
 * Our own reader rather than a schema library: a season has a hundred thousand cells, each fault must know its row,
 * its column and what stood there, and half of the columns are units of something in another table.
 */
import { saysTheSame } from "../core/readingMemory";
import type { EntryRef } from "../core/row";
import type { Cell, RawTable } from "./cell";
import type { Declared } from "./columns/column";
import { isBlank } from "./numbers";
import type { Problem, Subject } from "./problem";
import { Row, headingOf, type ColumnAt, type Style, type TableOfRow } from "./tableRow";
import { isTotalRow } from "./totalRows";
import { plainHeading } from "./words";

type ReadRow<Entry> = (row: Row, index: number) => Entry | null;
/** Whose figures the faults of a row make uncertain, in a column or of the row. */
type Touches = (row: Row, column?: string) => readonly Subject[];

/** The place of each of our columns in a table as it is; columns that are not there are absent. */
export class TableReader implements TableOfRow {
  readonly problems: Problem[] = [];
  /** The row, from 0, that is being entered: the last one, where nothing is wrong with it but that something is still blank. */
  openRow: number | null = null;
  private readonly columns = new Map<string, number>();
  /** The same by our own spelling, so that a heading is put into plain words once and not for every cell. */
  private readonly asked = new Map<string, number>();
  private readonly stale: ReadonlySet<string>;
  /** A row that looks blank is none where its formulas could not be worked out. */
  private readonly staleRows: ReadonlyMap<number, number>;
  private readonly percents: ReadonlySet<string>;
  private readonly differing: ReadonlyMap<string, string>;
  /** The entries of rows without a fault, by the row, of a table whose rows are read each by itself. */
  private readonly sound: unknown[] = [];
  /** The same at the last reading. */
  private before: { readonly rows: RawTable["rows"]; readonly entries: readonly unknown[] } | null = null;

  /**
   * @param last the reader of the last reading, where all that its rows were read by is as it was: rows that are read each by itself
   *   and have not changed are taken from it
   */
  constructor(
    readonly name: string,
    readonly raw: RawTable,
    readonly style: Style,
    last: TableReader | null = null,
  ) {
    if (last !== null && (["headers", "stale", "differing", "percents"] as const).every((of) => saysTheSame(last.raw[of], raw[of])))
      this.before = { rows: last.raw.rows, entries: last.sound };
    raw.headers.forEach((heading, index) => {
      const key = plainHeading(heading);
      if (key !== "" && !this.columns.has(key)) this.columns.set(key, index);
    });
    this.stale = new Set((raw.stale ?? []).map(({ row, column }) => `${row},${column}`));
    this.staleRows = new Map((raw.stale ?? []).map(({ row, column }) => [row, column]));
    this.percents = new Set((raw.percents ?? []).map(({ row, column }) => `${row},${column}`));
    this.differing = new Map((raw.differing ?? []).map(({ row, column, notCounted }) => [`${row},${column}`, notCounted]));
  }

  has(column: ColumnAt): boolean {
    return this.indexOf(headingOf(column)) >= 0;
  }

  /** Notes each of `columns` that the table lacks; answers whether all are there. */
  needs(...columns: readonly ColumnAt[]): boolean {
    const missing = columns.map(headingOf).filter((column) => !this.has(column));
    for (const column of missing)
      this.problems.push({ code: "column-missing", at: { table: this.name, column }, found: "", touches: [{ of: "farm" }] });
    return missing.length === 0;
  }

  /** Whether the table has every column that its rows cannot do without; notes each that it lacks. */
  hasNeeded({ columns }: Declared): boolean {
    return this.needs(...Object.values(columns).filter(({ required }) => required));
  }

  indexOf(column: string): number {
    let index = this.asked.get(column);
    if (index === undefined) this.asked.set(column, (index = this.columns.get(plainHeading(column)) ?? -1));
    return index;
  }

  isStale(row: number, column: number): boolean {
    return this.stale.size > 0 && this.stale.has(`${row},${column}`);
  }

  /** Whether a cell shows its number in percent, as far as the host was asked. */
  isPercent(row: number, column: number): boolean {
    return this.percents.size > 0 && this.percents.has(`${row},${column}`);
  }

  /** The value that is not counted, of a formula that has one in the file and another when it is worked out. */
  notCounted(row: number, column: number): string | undefined {
    return this.differing.size === 0 ? undefined : this.differing.get(`${row},${column}`);
  }

  private noteUnworked(row: number): void {
    const column = this.staleRows.get(row);
    if (column === undefined) return;
    this.problems.push({
      code: "stale-value",
      at: { table: this.name, row: row + 1, column: this.raw.headers[column]! },
      found: "",
      touches: [{ of: "farm" }],
    });
  }

  /**
   * Reads every row that is not blank all through. What `read` answers is kept where the row has no fault in a cell that
   * it cannot do without; `touches` says whose figures its faults make uncertain, in this column or of the row.
   */
  rows<Entry>(read: ReadRow<Entry>, touches: Touches): Entry[] {
    return this.rowsBeside(read, touches, () => undefined);
  }

  /**
   * The same where rows are read each by itself: what `read` answers rests on the row, and on nothing that other rows left behind.
   * A row without a fault that is as it was at the last reading has its entry from there.
   */
  rowsAlone<Entry>(read: ReadRow<Entry>, touches: Touches): Entry[] {
    const { before, sound } = this;
    this.before = null;
    return this.rowsBeside(
      (row, index) => {
        const entry = read(row, index);
        if (entry !== null && !row.lost && row.faults.length === 0) sound[index] = entry;
        return entry;
      },
      touches,
      (cells, index) => {
        const entry = before?.entries[index] as Entry | undefined;
        if (entry === undefined || !saysTheSame(before!.rows[index], cells)) return undefined;
        sound[index] = entry;
        return entry;
      },
    );
  }

  /** A row to look at once more, that was read before. */
  rowOf({ row }: EntryRef): Row {
    return new Row(this, this.raw.rows[row - 1]!, row - 1);
  }

  /** @param known the entry of a row that need not be read; undefined where it must be */
  private rowsBeside<Entry>(
    read: ReadRow<Entry>,
    touches: Touches,
    known: (cells: readonly Cell[], index: number) => Entry | undefined,
  ): Entry[] {
    const entries: Entry[] = [];
    const last = this.style.isTyping === true ? this.raw.rows.findLastIndex((cells) => !cells.every(isBlank)) : -1;
    this.raw.rows.forEach((cells, index) => {
      const before = known(cells, index);
      if (before !== undefined) return void entries.push(before);
      if (cells.every(isBlank)) return this.noteUnworked(index);
      if (isTotalRow(cells)) {
        const found = String(cells.find((cell) => !isBlank(cell))).trim();
        this.problems.push({ code: "total-row", at: { table: this.name, row: index + 1 }, found, touches: [{ of: "farm" }] });
        return;
      }
      const row = new Row(this, cells, index);
      const entry = read(row, index);
      if (index === last && row.isHalfTyped) {
        this.openRow = index;
        const found = cells.filter((cell) => !isBlank(cell)).join(", ");
        this.problems.push({
          code: "row-open",
          at: { table: this.name, row: index + 1 },
          found,
          like: row.faults
            .map(({ column }) => column ?? "")
            .filter((column) => column !== "")
            .join(", "),
          touches: [],
        });
        return;
      }
      if (row.faults.length > 0) {
        for (const { column, ...fault } of row.faults) {
          this.problems.push({
            ...fault,
            at: { table: this.name, row: index + 1, ...(column === undefined ? {} : { column }) },
            touches: touches(row, column),
          });
        }
      }
      if (entry !== null && !row.lost) entries.push(entry);
    });
    return entries;
  }
}
