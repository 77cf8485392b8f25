import type { Cell } from "../../../workbook/cell";
import { CellScanner, type CellMeaning } from "./cellScanner";
import { Damaged } from "../package/fault";
import type { Block } from "../../address";
import { RowChanges } from "./rowChanges";
import type { CellFormula, StoredCell, SheetRow } from "./sheetRow";
import { unescapeText } from "../package/xml";
import { attribute } from "../package/attribute";

/** Where a row stands in the part, and what is known of it without looking at its cells again. */
type RowPlace = {
  readonly from: number;
  readonly tagEnd: number;
  readonly to: number;
  readonly first: number;
  readonly last: number;
  readonly hasFormula: boolean;
  readonly isNumbered: boolean;
  readonly isHidden: boolean;
};

/** Rows that were looked at last are kept as objects: the grid asks for their cells one by one. */
const mostKept = 1000;

/**
 * The rows of a sheet: those of its part, which are read cell by cell only when somebody looks at them, and those that
 * have changed since. Never changed itself; `with` makes the next one.
 */
export class SheetRows {
  private readonly kept = new Map<number, SheetRow>();

  private constructor(
    private readonly text: string,
    private readonly prefix: string,
    private readonly meaning: CellMeaning,
    private readonly places: ReadonlyMap<number, RowPlace>,
    private readonly changed: RowChanges,
    /** Shared formulas' first cells are found once, with the rows. */
    readonly masters: ReadonlyMap<string, SharedMaster>,
    /** Values of rows as the part has them, by the columns asked for: a table is read whole after each change of one of its rows. */
    private readonly valuesRead: Map<string, Map<number, readonly Cell[]>>,
  ) {}

  /**
   * The rows between two places of a sheet's part, each looked through once.
   *
   * @throws Damaged where they are not written as a sheet's rows are
   */
  static read(text: string, prefix: string, from: number, to: number, meaning: CellMeaning): SheetRows {
    const places = new Map<number, RowPlace>();
    const masters = new Map<string, SharedMaster>();
    const scanner = new CellScanner(text, prefix);
    const opening = `<${prefix}row`;
    const closing = `</${prefix}row>`;
    let number = -1;
    let isAscending = true;
    for (let at = text.indexOf(opening, from); at >= 0 && at < to;) {
      const tagEnd = text.indexOf(">", at);
      const isEmpty = text.charCodeAt(tagEnd - 1) === 47;
      const bodyTo = isEmpty ? tagEnd + 1 : text.indexOf(closing, tagEnd);
      if (tagEnd < 0 || bodyTo < 0 || bodyTo > to) throw new Damaged("a row has no end");
      const tag = text.slice(at, tagEnd);
      const named = attribute(tag, "r");
      const next = named === null ? number + 1 : Number(named) - 1;
      if (!Number.isInteger(next) || next < 0) throw new Damaged("a row has no number that a row can have");
      if (places.has(next)) throw new Damaged(`the row ${next + 1} is there twice`);
      isAscending &&= next > number;
      number = next;
      const stop = isEmpty ? bodyTo : bodyTo + closing.length;
      places.set(number, {
        from: at,
        tagEnd,
        to: stop,
        isNumbered: named !== null,
        isHidden: tag.includes("hidden") && /^(1|true)$/.test(attribute(tag, "hidden") ?? ""),
        ...cellsBetween(scanner.enter(tagEnd + 1, isEmpty ? tagEnd : bodyTo), text, number, masters),
      });
      at = text.indexOf(opening, stop);
    }
    const sorted = isAscending ? places : new Map([...places].sort(([one], [other]) => one - other));
    return new SheetRows(text, prefix, meaning, sorted, RowChanges.none, masters, new Map());
  }

  /** These rows with others in place of some, or added. */
  with(rows: ReadonlyMap<number, SheetRow>, masters: ReadonlyMap<string, SharedMaster> = this.masters): SheetRows {
    return new SheetRows(this.text, this.prefix, this.meaning, this.places, this.changed.with(rows), masters, this.valuesRead);
  }

  get(row: number): SheetRow | undefined {
    const found = this.changed.get(row) ?? this.kept.get(row);
    if (found !== undefined) return found;
    const place = this.places.get(row);
    if (place === undefined) return undefined;
    const read = this.readRow(place);
    if (this.kept.size >= mostKept) this.kept.clear();
    this.kept.set(row, read);
    return read;
  }

  /** The values of each row of a block. Those of a row that has not changed since the part was read are read once. */
  valuesOf({ top, left, bottom, right }: Block): readonly (readonly Cell[])[] {
    const columns = `${left}:${right}`;
    const read = this.valuesRead.get(columns) ?? new Map<number, readonly Cell[]>();
    this.valuesRead.set(columns, read);
    return Array.from({ length: Math.max(0, bottom - top + 1) }, (_, index) => {
      const row = top + index;
      if (this.changed.has(row)) return this.values(row, left, right);
      let values = read.get(row);
      if (values === undefined) read.set(row, (values = this.values(row, left, right)));
      return values;
    });
  }

  /** The values of a row from one column to another, both included. */
  private values(row: number, left: number, right: number): readonly Cell[] {
    const values = new Array<Cell>(Math.max(0, right - left + 1)).fill("");
    this.eachValue(row, (column, value) => {
      if (column >= left && column <= right) values[column - left] = value;
    });
    return values;
  }

  /** Goes through the cells of a row without making objects of them. */
  eachValue(row: number, take: (column: number, value: Cell, isError: boolean) => void): void {
    const changed = this.changed.get(row);
    if (changed !== undefined) {
      for (const { column, value, isError } of changed.cells) take(column, value, isError === true);
      return;
    }
    const place = this.places.get(row);
    if (place === undefined || place.last < 0) return;
    const scanner = (this.scanner ??= new CellScanner(this.text, this.prefix)).enter(place.tagEnd + 1, place.to);
    while (scanner.next()) take(scanner.column, scanner.value(this.meaning), scanner.type === "e");
  }

  private scanner: CellScanner | undefined;

  /** The numbers of all rows, in order. */
  numbers(): number[] {
    const added = this.changed.numbers().filter((row) => !this.places.has(row));
    if (added.length === 0) return [...this.places.keys()];
    return [...this.places.keys(), ...added].sort((one, other) => one - other);
  }

  /** Rows that are hidden, by hand or by a filter. */
  hiddenRows(): readonly number[] {
    return (this.hidden ??= [...this.places].flatMap(([row, { isHidden }]) => (isHidden ? [row] : [])));
  }

  private hidden: readonly number[] | undefined;

  /** Rows that may hold a formula, in order. */
  withFormulas(): number[] {
    return this.numbers().filter((row) => {
      const changed = this.changed.get(row);
      return changed === undefined ? this.places.get(row)!.hasFormula : changed.cells.some(({ formula }) => formula !== undefined);
    });
  }

  /** All rows in order: the number of each that must be written, and as text those that can be copied together from the part. */
  pieces(): (number | string)[] {
    const pieces: (number | string)[] = [];
    let [from, to] = [-1, -1];
    const copy = () => {
      if (from >= 0) pieces.push(this.text.slice(from, to));
    };
    for (const row of this.numbers()) {
      const place = this.changed.has(row) ? undefined : this.places.get(row);
      // A row that does not say its number has it from the one before, which may be a new one now.
      if (place === undefined || !place.isNumbered) {
        copy();
        from = -1;
        pieces.push(row);
      } else {
        // Rows out of order in the part: what lies between two of them may be a row that has its turn at another time.
        if (from < 0 || place.from < to || (place.from > to && this.text.slice(to, place.from).includes(`<${this.prefix}row`))) {
          copy();
          from = place.from;
        }
        to = place.to;
      }
    }
    copy();
    return pieces;
  }

  /** The numbers of the rows that are not as the part has them. */
  changedRows(): number[] {
    return this.changed.numbers();
  }

  /** The part's own words for a cell that has not changed. */
  textBetween(from: number, to: number): string {
    return this.text.slice(from, to);
  }

  /** Whether both have come from one reading of one part. */
  isOfOnePart(other: SheetRows): boolean {
    return this.places === other.places;
  }

  /** The row as it stands in the part; null where it has changed or is new. */
  sourceOf(row: number): string | null {
    const place = this.places.get(row);
    return place === undefined || this.changed.has(row) ? null : this.text.slice(place.from, place.to);
  }

  /** The smallest block that holds every cell; null where there is none. */
  used(): Block | null {
    let [top, left, bottom, right] = [Infinity, Infinity, -1, -1];
    const take = (row: number, first: number, last: number) => {
      top = Math.min(top, row);
      bottom = Math.max(bottom, row);
      left = Math.min(left, first);
      right = Math.max(right, last);
    };
    for (const [row, { first, last }] of this.places) if (last >= 0 && !this.changed.has(row)) take(row, first, last);
    for (const row of this.changed.numbers()) {
      const { cells } = this.changed.get(row)!;
      if (cells.length > 0) take(row, cells[0]!.column, cells.at(-1)!.column);
    }
    return bottom < 0 ? null : { top, left, bottom, right };
  }

  private readRow({ from, tagEnd, to }: RowPlace): SheetRow {
    const { text, prefix } = this;
    const isEmpty = text.charCodeAt(tagEnd - 1) === 47;
    const attributes = text.slice(from + 1 + prefix.length + 3, isEmpty ? tagEnd - 1 : tagEnd);
    const cells: StoredCell[] = [];
    const scanner = new CellScanner(text, prefix).enter(tagEnd + 1, isEmpty ? tagEnd : to);
    while (scanner.next()) {
      const formula = scanner.formulaTag < 0 ? undefined : formulaAt(text, scanner);
      const notes = formula === undefined ? "" : notesIn(text.slice(scanner.from, scanner.formulaTag));
      cells.push({
        column: scanner.column,
        value: scanner.value(this.meaning),
        style: scanner.style,
        source: [scanner.from, scanner.to],
        ...(scanner.type === "e" ? { isError: true } : {}),
        ...(formula === undefined ? {} : { formula }),
        ...(scanner.isUnknown ? { isUnknown: true } : {}),
        ...(notes === "" ? {} : { notes }),
      });
    }
    // Cells out of order are a slip of a few programs; everything here relies on their order.
    if (cells.some(({ column }, index) => index > 0 && column <= cells[index - 1]!.column))
      cells.sort((one, other) => one.column - other.column);
    return { attributes, cells };
  }
}

/** A formula that other cells share, and the cell that it is written for. */
export type SharedMaster = { readonly text: string; readonly row: number; readonly column: number };

function cellsBetween(
  scanner: CellScanner,
  text: string,
  row: number,
  masters: Map<string, SharedMaster>,
): Pick<RowPlace, "first" | "last" | "hasFormula"> {
  let [first, last, hasFormula] = [16_384, -1, false];
  while (scanner.next()) {
    const { column } = scanner;
    if (column < first) first = column;
    if (column > last) last = column;
    if (scanner.formulaTag < 0) continue;
    hasFormula = true;
    if (
      scanner.formulaFrom === scanner.formulaTo ||
      (!text.startsWith(' t="shared"', scanner.formulaTag) && !text.slice(scanner.formulaTag, scanner.formulaFrom).includes("shared"))
    )
      continue;
    const { text: formula, group } = formulaAt(text, scanner);
    if (group !== undefined) masters.set(group, { text: formula, row, column });
  }
  return { first, last, hasFormula };
}

const notesIn = (tag: string): string => [...tag.matchAll(/\s[cv]m="\d+"/g)].join("");

function formulaAt(text: string, { formulaTag, formulaFrom, formulaTo }: CellScanner): CellFormula {
  const tag = text.slice(formulaTag, formulaFrom);
  const kind = attribute(tag, "t");
  const area = attribute(tag, "ref");
  const group = attribute(tag, "si");
  return {
    tag: tag.replace(/\/?>?$/, "").trimEnd(),
    text: unescapeText(text.slice(formulaFrom, formulaTo)),
    kind: kind === "shared" || kind === "array" ? kind : kind === "dataTable" ? "table" : "plain",
    ...(group === null ? {} : { group }),
    ...(area === null ? {} : { area }),
  };
}
