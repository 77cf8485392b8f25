/** One row of a table, cell by cell as typed values, with the faults found on the way. */
import { Decimal, hundred, one as whole } from "../core/numbers/decimal";
import type { EntryRef, IsoDate } from "../core/row";
import type { AreaUnit } from "../core/numbers/units";
import type { Cell } from "./cell";
import type { Column, Named, NumberColumn, Range } from "./columns/column";
import { readDate, type DateStyle } from "./dates";
import type { Names } from "./names";
import { isBlank, isErrorValue, readNumber, type NumberStyle } from "./numbers";
import type { Problem, ProblemCode } from "./problem";
import { wordBought, wordMeant } from "./synonyms";
import { parted, withoutUnit } from "./typedUnits";
import { unitOfColumn } from "./unitOfColumn";
import { nearest, plain, plainWord } from "./words";

/** How a workbook is typed. `areaUnit`: its own; acres where nothing is said. */
export type Style = NumberStyle &
  DateStyle & {
    readonly areaUnit?: AreaUnit;
    /** Whether somebody is at the workbook now, so that the last row of a table may be half typed. */
    readonly isTyping?: boolean;
  };
type Fault = Omit<Problem, "at" | "touches"> & { readonly column: string | undefined };
type More = Pick<Problem, "choices" | "like" | "other">;

/** What a row must know of its table. */
export type TableOfRow = {
  readonly name: string;
  readonly style: Style;
  /** The place of a column; -1 where the table has none of the name. */
  indexOf(column: string): number;
  /** Whether the formula of a cell could not be worked out. */
  isStale(row: number, column: number): boolean;
  /** Whether a cell whose number alone is unclear shows it in percent. */
  isPercent(row: number, column: number): boolean;
  /** The value that is not counted, of a formula that has one in the file and another when it is worked out. */
  notCounted(row: number, column: number): string | undefined;
};

/** A column by its declaration or by its heading. */
export type ColumnAt = Named | string;
export const headingOf = (column: ColumnAt): string => (typeof column === "string" ? column : column.heading);

const noFaults: readonly Fault[] = [];
/** What is wrong with a row that somebody has begun and not finished. */
const notTypedYet: ReadonlySet<ProblemCode> = new Set([
  "blank",
  "target-missing",
  "amount-missing",
  "cost-missing",
  "hours-missing",
  "place-missing",
]);
/** A bare rate of interest up to this is a fraction: nobody lends at more than forty percent, and few at less than one. */
export const largestFraction = new Decimal("0.4");

export class Row {
  /** In the order in which they were found. */
  faults: readonly Fault[] = noFaults;
  /** Whether a cell that the row cannot do without is at fault. */
  lost = false;

  constructor(
    private readonly table: TableOfRow,
    private readonly cells: readonly Cell[],
    private readonly index: number,
  ) {}

  get source(): EntryRef {
    return { table: this.table.name, row: this.index + 1 };
  }

  get areaUnit(): AreaUnit {
    return this.table.style.areaUnit ?? "ac";
  }

  /** Notes a fault of a cell, or of the row where no column is named. */
  fault(code: ProblemCode, column?: ColumnAt, more: More & { found?: string } = {}): null {
    const { found, ...rest } = more;
    this.faults = [
      ...this.faults,
      {
        code,
        column: column === undefined ? undefined : headingOf(column),
        found: found ?? (column === undefined ? "" : String(this.cell(column)).trim()),
        ...rest,
      },
    ];
    return null;
  }

  /** A fault that the row cannot be read with. */
  lose(code: ProblemCode, column?: ColumnAt, more: More & { found?: string } = {}): null {
    this.lost = true;
    return this.fault(code, column, more);
  }

  cell(column: ColumnAt): Cell {
    return this.cells[this.table.indexOf(headingOf(column))] ?? "";
  }

  /** Text as typed, outer spaces aside; `null` for a blank cell. */
  text(column: ColumnAt): string | null {
    const cell = this.filled(column);
    return cell === null ? null : String(cell).trim();
  }

  /** What a column says in this row; `null` where it is blank, or at fault, which is noted. */
  of<Value>(column: Column<Value>): Value | null {
    return column.read(this);
  }

  /** The same of a column that the row cannot do without. */
  need<Value>(column: Column<Value>): Value | null {
    return this.of(column) ?? this.missing(column);
  }

  needText(column: ColumnAt): string | null {
    return this.text(column) ?? this.missing(column);
  }

  number(column: ColumnAt, range: Range = "zero or more"): Decimal | null {
    const cell = this.filled(column);
    return cell === null ? null : this.inRange(column, this.readNumber(column, cell)?.value ?? null, range);
  }

  needNumber(column: ColumnAt, range: Range = "zero or more"): Decimal | null {
    return this.number(column, range) ?? this.missing(column);
  }

  /**
   * A quantity and its unit, which may be typed together in the cell of the quantity: `2 jugs`, `32 oz/ac`. Where the unit has
   * a cell of its own that says another one, the quantity is no number.
   */
  measured(
    column: ColumnAt | NumberColumn,
    unitColumn: ColumnAt,
    ranged?: Range,
  ): { readonly value: Decimal | null; readonly unit: string | null } {
    const range = ranged ?? (typeof column === "object" && "range" in column ? column.range : "zero or more");
    const unit = this.text(unitColumn);
    const cell = this.cell(column);
    const parts = typeof cell === "string" && typeof readNumber(cell, this.table.style) === "string" ? parted(cell) : null;
    const reading = parts === null ? "not-a-number" : readNumber(parts.number, this.table.style);
    if (typeof reading === "string" || (unit !== null && one(unit) !== one(parts!.unit)))
      return { value: this.needNumber(column, range), unit: unit ?? this.missing(unitColumn) };
    return { value: this.inRange(column, reading.value, range) ?? this.missing(column), unit: unit ?? parts!.unit };
  }

  /** A fraction: 60, 60% and 0.6 are all sixty percent. */
  share(column: ColumnAt): Decimal | null {
    const share = this.rate(column);
    return share !== null && share.gt(whole) ? this.fault("percent-range", column) : share;
  }

  /** A fraction that may exceed one: 60, 60% and 0.6 are all sixty percent, and 1 is all of it. */
  private rate(column: ColumnAt): Decimal | null {
    const reading = this.percent(column);
    return reading === null || reading.percent || reading.value.lte(whole) ? (reading?.value ?? null) : reading.value.div(hundred);
  }

  /**
   * A rate of interest as a fraction: 8.5, 8.5% and 0.085 are the same, and 1 is one percent. Between the largest
   * fraction that anybody pays and one, a number without its sign may mean either: it is a fault unless its cell shows percent.
   */
  interestRate(column: ColumnAt): Decimal | null {
    const reading = this.percent(column);
    if (reading === null) return null;
    if (reading.percent || reading.value.lte(largestFraction)) return reading.value;
    if (reading.value.lt(whole) && this.table.isPercent(this.index, this.table.indexOf(headingOf(column)))) return reading.value;
    return reading.value.lt(whole) ? this.fault("rate-unclear", column) : reading.value.div(hundred);
  }

  private percent(column: ColumnAt) {
    const cell = this.filled(column);
    const reading = cell === null ? null : this.readNumber(column, cell);
    return reading !== null && reading.value.isNegative() && !reading.value.isZero() ? this.fault("percent-range", column) : reading;
  }

  date(column: ColumnAt): IsoDate | null {
    const cell = this.filled(column);
    if (cell === null) return null;
    return readDate(cell, this.table.style) ?? this.fault("not-a-date", column);
  }

  /** Several dates in one cell, with semicolons; `null` where the cell is blank or one of them is none, which is noted. */
  dates(column: ColumnAt): readonly IsoDate[] | null {
    const cell = this.filled(column);
    if (cell === null) return null;
    const read = String(cell)
      .split(";")
      .map((part) => part.trim())
      .filter((part) => part !== "")
      .map((part) => readDate(/^\d+$/.test(part) ? Number(part) : part, this.table.style));
    return read.every((date) => date !== null) ? read : this.fault("not-a-date", column);
  }

  needDate(column: ColumnAt): IsoDate | null {
    return this.date(column) ?? this.missing(column);
  }

  /** One of the words, in any case; `null` where the cell is blank or holds another word, which is noted. */
  choice<Word extends string>(column: ColumnAt, words: readonly Word[]): Word | null {
    const typed = this.text(column);
    if (typed === null) return null;
    // Most are typed as they are listed.
    if ((words as readonly string[]).includes(typed)) return typed as Word;
    const key = plainWord(typed);
    return (
      words.find((word) => plainWord(word) === key) ??
      wordMeant(typed, words) ??
      wordBought(typed, words) ??
      this.fault("not-in-list", column, { choices: words, ...likeOf(nearest(typed, words)) })
    );
  }

  needChoice<Word extends string>(column: ColumnAt, words: readonly Word[]): Word | null {
    return this.choice(column, words) ?? this.missing(column);
  }

  /** A name of another table, as that table spells it. */
  needName(column: ColumnAt, names: Names): string | null {
    const typed = this.needText(column);
    if (typed === null) return null;
    const name = names.spelled(typed);
    if (name !== null) return name;
    if (!names.isLost(typed)) return this.lose("unknown-name", column, likeOf(nearest(typed, names.all)));
    // The row that defines it is at fault; that is told there.
    this.lost = true;
    return null;
  }

  /** Notes that an entry gives way to another of the same row, where both are filled: the other counts. */
  besides(column: ColumnAt, counting: ColumnAt): void {
    if (this.text(column) !== null && !this.isFaulty(column))
      this.fault("entry-beside", column, { other: { ...this.source, column: headingOf(counting) } });
  }

  /** Whether a fault of this cell is noted that leaves it without a value. */
  isFaulty(column: ColumnAt): boolean {
    const heading = headingOf(column);
    return this.faults.some(
      (fault) => fault.column === heading && fault.code !== "value-differs" && (fault.code !== "stale-value" || fault.found === ""),
    );
  }

  /** Whether the row cannot be read and nothing is wrong with it but that something is not typed yet. */
  get isHalfTyped(): boolean {
    return this.lost && this.faults.length > 0 && this.faults.every(({ code }) => notTypedYet.has(code));
  }

  /** Loses the row for a cell without a value: one that is blank, or whose fault is noted already. */
  missing(column: ColumnAt): null {
    this.lost = true;
    return this.isFaulty(column) ? null : this.fault("blank", column);
  }

  /** The cell where something stands in it that is no error; notes errors, and formulas that could not be worked out. */
  private filled(column: ColumnAt): Cell | null {
    const at = this.table.indexOf(headingOf(column));
    if (at < 0) return null;
    const cell = this.cells[at] ?? "";
    const notCounted = this.table.notCounted(this.index, at);
    if (notCounted !== undefined) this.faultOnce("value-differs", column, { like: notCounted });
    const isOld = this.table.isStale(this.index, at);
    if (isOld && !isErrorValue(cell)) this.faultOnce("stale-value", column);
    if (isBlank(cell)) return null;
    return isErrorValue(cell) ? this.fault("formula-error", column) : cell;
  }

  /** A cell may be read more than once. */
  private faultOnce(code: ProblemCode, column: ColumnAt, more: More = {}): void {
    if (!this.faults.some((fault) => fault.code === code && fault.column === headingOf(column))) this.fault(code, column, more);
  }

  private readNumber(column: ColumnAt, cell: Cell) {
    const reading = readNumber(cell, this.table.style);
    if (reading === "not-a-number" && typeof cell === "string") {
      const number = withoutUnit(cell, unitOfColumn(this.table.name, headingOf(column)), this.areaUnit);
      const again = number === null ? reading : readNumber(number, this.table.style);
      if (typeof again !== "string") return again;
    }
    return typeof reading === "string" ? this.fault(reading, column) : reading;
  }

  private inRange(column: ColumnAt, value: Decimal | null, range: Range): Decimal | null {
    if (value === null || range === "any") return value;
    const isZero = value.isZero();
    if (range === "above zero") return !isZero && value.isPositive() ? value : this.fault("not-above-zero", column);
    return isZero || value.isPositive() ? value : this.fault("negative", column);
  }
}

/** A unit in the singular. */
const one = (unit: string): string => plain(unit).replace(/s$/, "");

const likeOf = (like: string | null): More => (like === null ? {} : { like });
