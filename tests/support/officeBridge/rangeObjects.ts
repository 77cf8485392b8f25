/**
 * Ranges and what hangs on them, as the library asks for them: members are named as in its requests, and a member that
 * is not here makes the request fail. Only what the product uses is here.
 */
import type { Cell } from "../../../src/workbook/cell";
import { fullAddress, rangeAddress } from "./addresses";
import { HostRefusal } from "./hostRefusal";
import { contentOf } from "./typedCell";
import type { Block, Looks, SheetModel, WorkbookModel } from "./workbookModel";

export class RangeObject {
  private reference?: string;
  constructor(
    readonly workbook: WorkbookModel,
    readonly block: Block,
    readonly references: Map<string, RangeObject>,
  ) {}

  get _ReferenceId(): string | undefined {
    return this.reference;
  }
  _KeepReference(): void {
    if (this.reference !== undefined) return;
    this.reference = this.workbook.id("range"); // never the one of a range that was given back
    this.references.set(this.reference, this);
  }

  get Address(): string {
    return fullAddress(this.block);
  }
  get RowIndex(): number {
    return this.block.row;
  }
  get ColumnIndex(): number {
    return this.block.column;
  }
  get RowCount(): number {
    return this.block.rows;
  }
  get ColumnCount(): number {
    return this.block.columns;
  }
  get Format(): RangeFormat {
    return new RangeFormat(this);
  }
  get DataValidation(): DataValidation {
    return new DataValidation(this);
  }

  get Values(): Cell[][] {
    return this.matrix((row, column) => this.block.sheet.cell(row, column)?.value ?? "");
  }
  set Values(given: Cell[][]) {
    this.putAll(given);
  }
  get Formulas(): Cell[][] {
    return this.matrix((row, column) => {
      const cell = this.block.sheet.cell(row, column);
      return cell?.formula ?? cell?.value ?? "";
    });
  }
  set Formulas(given: Cell[][]) {
    this.putAll(given);
  }
  get NumberFormat(): string[][] {
    return this.matrix((row, column) => this.block.sheet.cell(row, column)?.looks.numberFormat ?? "General");
  }
  set NumberFormat(given: string[][]) {
    this.each(given, (row, column, format) => {
      this.workbook.touch(this.block.sheet);
      this.block.sheet.cellToChange(row, column).looks.numberFormat = format;
    });
  }

  GetCell(row: number, column: number): RangeObject {
    return this.at({ row: this.block.row + row, column: this.block.column + column, rows: 1, columns: 1 });
  }
  GetRow(row: number): RangeObject {
    return this.at({ row: this.block.row + row, rows: 1 });
  }
  GetResizedRange(rows: number, columns: number): RangeObject {
    return this.at({ rows: this.block.rows + rows, columns: this.block.columns + columns });
  }
  /** The two below are asked for by the library itself, which hands over more than 1,500 cells in pieces of some rows. */
  GetBoundingRect(other: RangeObject): RangeObject {
    const [one, two] = [this.block, other.block];
    const [row, column] = [Math.min(one.row, two.row), Math.min(one.column, two.column)];
    return this.at({
      row,
      column,
      rows: Math.max(one.row + one.rows, two.row + two.rows) - row,
      columns: Math.max(one.column + one.columns, two.column + two.columns) - column,
    });
  }
  _ValidateArraySize(rows: number, columns: number): void {
    if (rows !== this.block.rows || columns !== this.block.columns) throw wrongSize();
  }
  GetEntireColumn(): RangeObject {
    return this.at({ row: 0, rows: 1_048_576 });
  }
  GetUsedRangeOrNullObject(_valuesOnly: boolean): RangeObject | null {
    const used = usedPart(this.block);
    return used && this.at(used);
  }

  /** Everything around that hangs together, up to blank rows and columns. */
  GetSurroundingRegion(): RangeObject {
    const { sheet } = this.block;
    const isFilled = (row: number, column: number): boolean => row >= 0 && column >= 0 && (sheet.cell(row, column)?.value ?? "") !== "";
    let { row: top, column: left } = this.block;
    let [bottom, right] = [top + this.block.rows - 1, left + this.block.columns - 1];
    const inRow = (row: number) =>
      Array.from({ length: right - left + 3 }, (_, index) => left - 1 + index).some((column) => isFilled(row, column));
    const inColumn = (column: number) =>
      Array.from({ length: bottom - top + 3 }, (_, index) => top - 1 + index).some((row) => isFilled(row, column));
    for (let grew = true; grew;) {
      grew = false;
      if (inRow(top - 1)) {
        top -= 1;
        grew = true;
      }
      if (inRow(bottom + 1)) {
        bottom += 1;
        grew = true;
      }
      if (inColumn(left - 1)) {
        left -= 1;
        grew = true;
      }
      if (inColumn(right + 1)) {
        right += 1;
        grew = true;
      }
    }
    return this.at({ row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 });
  }

  Select(): void {
    this.workbook.selected = this.block;
  }
  Merge(): void {
    this.workbook.touch(this.block.sheet);
    this.block.sheet.merges.push(rangeAddress(this.block));
  }
  /** The two below are only ever asked for whole sheets. */
  Unmerge(): void {
    this.wholeSheet().merges = [];
  }
  Clear(): void {
    const sheet = this.wholeSheet();
    sheet.cells.length = 0;
    sheet.validations.clear();
  }

  private wholeSheet(): SheetModel {
    if (rangeAddress(this.block) !== "A:XFD") throw new HostRefusal("NotImplemented", "Only whole sheets are cleared here");
    this.workbook.touch(this.block.sheet);
    return this.block.sheet;
  }
  private at(other: Partial<Block>): RangeObject {
    return new RangeObject(this.workbook, { ...this.block, ...other }, this.references);
  }

  private matrix<Value>(of: (row: number, column: number) => Value): Value[][] {
    const { row, column, rows, columns } = this.block;
    if (rows * columns > 5_000_000) throw new HostRefusal("RangeExceedsLimit", "The range has too many cells.");
    return Array.from({ length: rows }, (_, down) => Array.from({ length: columns }, (_, across) => of(row + down, column + across)));
  }
  private each<Value>(given: Value[][], put: (row: number, column: number, value: Value) => void): void {
    const { row, column, rows, columns } = this.block;
    if (given.length !== rows || given.some((cells) => cells.length !== columns)) {
      throw wrongSize();
    }
    given.forEach((cells, down) => cells.forEach((value, across) => put(row + down, column + across, value)));
  }
  private putAll(given: Cell[][]): void {
    this.each(given, (row, column, typed) => {
      if ((typed as Cell | null) === null) return; // left as it is
      const { value, formula } = contentOf(typed);
      this.workbook.put(this.block, row, column, value, formula);
    });
  }
  /** Sets one thing of the looks of every cell. */
  look(name: keyof Looks & string, value: unknown): void {
    this.workbook.touch(this.block.sheet);
    this.matrix((row, column) => {
      this.block.sheet.cellToChange(row, column).looks[name] = value;
    });
  }
}

const wrongSize = () =>
  new HostRefusal("InvalidArgument", "The number of rows or columns in the input array doesn't match the size or dimensions of the range.");

/** The smallest block with all values of a block; null if it has none. */
export function usedPart(block: Block): Omit<Block, "sheet"> | null {
  let [top, left, bottom, right] = [Infinity, Infinity, -1, -1];
  block.sheet.cells.forEach((cells, row) =>
    cells.forEach((cell, column) => {
      const inside = row >= block.row && row < block.row + block.rows && column >= block.column && column < block.column + block.columns;
      if (!inside || (cell.value === "" && cell.formula === undefined)) return;
      [top, left, bottom, right] = [Math.min(top, row), Math.min(left, column), Math.max(bottom, row), Math.max(right, column)];
    }),
  );
  return bottom < 0 ? null : { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

class RangeFormat {
  constructor(readonly range: RangeObject) {}
  get Font(): RangeFont {
    return new RangeFont(this.range);
  }
  get Fill(): RangeFill {
    return new RangeFill(this.range);
  }
  get Borders(): RangeBorders {
    return new RangeBorders(this.range);
  }
  get Protection(): RangeProtection {
    return new RangeProtection(this.range);
  }
  set ColumnWidth(points: number) {
    const { sheet, column, columns } = this.range.block;
    for (let each = column; each < column + columns; each += 1) sheet.widths.set(each, points);
  }
  set HorizontalAlignment(value: string) {
    this.range.look("align", value);
  }
  set WrapText(value: boolean) {
    this.range.look("wrap", value);
  }
}
class RangeFont {
  constructor(readonly range: RangeObject) {}
  set Bold(value: boolean) {
    this.range.look("bold", value);
  }
  set Italic(value: boolean) {
    this.range.look("italic", value);
  }
  set Size(value: number) {
    this.range.look("size", value);
  }
}
class RangeFill {
  constructor(readonly range: RangeObject) {}
  set Color(value: string) {
    this.range.look("fill", value);
  }
}
class RangeProtection {
  constructor(readonly range: RangeObject) {}
  /** `null` where some of the cells are locked and others are not. */
  get Locked(): boolean | null {
    const { sheet, row, column, rows, columns } = this.range.block;
    const locks = new Set(
      Array.from({ length: rows * columns }, (_, at) => !sheet.isUnlocked(row + Math.floor(at / columns), column + (at % columns))),
    );
    return locks.size === 1 ? [...locks][0]! : null;
  }
}
class RangeBorders {
  constructor(readonly range: RangeObject) {}
  indexer(edge: string): RangeBorder {
    return new RangeBorder(this.range, edge);
  }
}
class RangeBorder {
  constructor(
    readonly range: RangeObject,
    readonly edge: string,
  ) {}
  set Style(value: string) {
    this.range.look(this.edge, value);
  }
}
class DataValidation {
  constructor(readonly range: RangeObject) {}
  set Rule(value: { list?: { source?: string } }) {
    if ((value.list?.source?.length ?? 0) > 255) throw new HostRefusal("InvalidArgument", "The list is too long.");
    this.change({ rule: value });
  }
  set Prompt(value: { title: string; message: string }) {
    if (value.title.length > 32 || value.message.length > 255) throw new HostRefusal("InvalidArgument", "The prompt is too long.");
    this.change({ prompt: value });
  }
  set ErrorAlert(value: unknown) {
    this.change({ errorAlert: value });
  }
  private change(part: object): void {
    const { sheet } = this.range.block;
    this.range.workbook.touch(sheet);
    const address = rangeAddress(this.range.block);
    sheet.validations.set(address, { ...sheet.validations.get(address), ...part });
  }
}
