/** The rows of a season's tables as the next season begins with them. */
import type { Cell, DateSystem, RawTable } from "../cell";
import type { Named } from "../columns/column";
import { readDate, type DateStyle } from "../dates";
import { daysBetweenSystems, serialOfDay } from "../daySerial";
import type { InputTable } from "../inputTable";
import { isBlank } from "../numbers";
import { plainHeading } from "../words";

type Cells = ReadonlyMap<string, Cell>;

/** A table as it is read, with a way to its columns. Its days are serial numbers of the usual system, whatever the workbook counts by. */
export class NextTable {
  private readonly places: ReadonlyMap<string, number>;
  private readonly days: ReadonlySet<number>;

  constructor(
    readonly raw: RawTable,
    template: InputTable,
    private readonly style: DateStyle,
  ) {
    this.places = new Map([...raw.headers].reverse().map((heading, index) => [plainHeading(heading), raw.headers.length - 1 - index]));
    this.days = new Set(
      template.columns.flatMap(({ heading, numberFormat = "" }) =>
        numberFormat.startsWith("yyyy") ? (this.places.get(plainHeading(heading)) ?? []) : [],
      ),
    );
  }

  get rows(): readonly Cells[] {
    return this.rowsBut(new Set());
  }

  /** Rows that say anything, as cells by heading; without some, by their numbers from 1. A heading twice is its first column. */
  rowsBut(left: ReadonlySet<number>): readonly Cells[] {
    const at = [...this.places.values()].sort((a, b) => a - b);
    return this.raw.rows.flatMap((cells, index) =>
      cells.every(isBlank) || left.has(index + 1)
        ? []
        : [
            new Map(
              at.map((column) => [
                this.raw.headers[column]!,
                this.days.has(column) ? this.usual(cells[column] ?? "") : (cells[column] ?? ""),
              ]),
            ),
          ],
    );
  }

  private usual(cell: Cell): Cell {
    return typeof cell === "number" && this.style.dateSystem === "1904" ? cell + daysBetweenSystems : cell;
  }

  /** A setting's value is no column of days, and counts as the workbook does. */
  private systemOf({ heading }: Named): DateSystem {
    return this.days.has(this.places.get(plainHeading(heading)) ?? -1) ? "1900" : this.style.dateSystem;
  }

  dayOf(row: Cells, column: Named): string | null {
    return readDate(row.get(this.called(column)) ?? "", { ...this.style, dateSystem: this.systemOf(column) });
  }

  /** The heading under which a column of ours stands here; its own where the table has none. */
  called({ heading }: Named): string {
    const at = this.places.get(plainHeading(heading));
    return at === undefined ? heading : this.raw.headers[at]!;
  }

  text(row: Cells, column: Named): string {
    return String(row.get(this.called(column)) ?? "").trim();
  }

  with(row: Cells, ...cells: readonly (readonly [Named, Cell])[]): Cells {
    return new Map([...row, ...cells.map(([column, cell]) => [this.called(column), cell] as const)]);
  }

  /** The row with the days of some columns a year later; what is no day with a year stays as it is. */
  yearLater(row: Cells, ...columns: readonly Named[]): Cells {
    return this.with(
      row,
      ...columns.map((column) => [column, this.later(row.get(this.called(column)) ?? "", this.systemOf(column))] as const),
    );
  }

  private later(cell: Cell, dateSystem: DateSystem): Cell {
    if (isBlank(cell)) return cell;
    const text = String(cell).trim();
    // "Mar 2031", "2031-03": a month is no day.
    const month = /^(\D*|\d{1,2}[-/ ])(\d{4})$|^(\d{4})([-/]\d{1,2})$/.exec(text);
    if (month !== null && typeof cell === "string") return text.replace(/\d{4}/, (year) => String(Number(year) + 1));
    const day = readDate(cell, { ...this.style, dateSystem, seasonYear: null });
    return day === null ? cell : serialOfDay(aYearLater(day), "1900");
  }
}

/** The same day of the next year; the last of February for its 29th. */
const aYearLater = (day: string): string => `${Number(day.slice(0, 4)) + 1}${day.slice(4) === "-02-29" ? "-02-28" : day.slice(4)}`;
