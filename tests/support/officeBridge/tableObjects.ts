/** Tables with their columns and rows, as the library asks for them. See rangeObjects.ts. */
import type { Cell } from "../../../src/workbook/cell";
import { blockAt } from "./addresses";
import { HostRefusal } from "./hostRefusal";
import type { RangeObject } from "./rangeObjects";
import { Collection, found, range, tableChanged, type Shared } from "./shared";
import { contentOf } from "./typedCell";
import type { SheetModel, TableModel, WorkbookModel } from "./workbookModel";

export class Tables extends Collection<Table> {
  constructor(
    private readonly shared: Shared,
    private readonly sheet?: SheetModel,
  ) {
    super();
  }
  get _EventTargetId(): string {
    return "Workbook";
  }
  get items(): Table[] {
    const { tables } = this.shared.workbook;
    return tables.filter(({ sheet }) => !this.sheet || sheet === this.sheet).map((table) => new Table(this.shared, table));
  }
  indexer(key: string): Table {
    return found(this.GetItemOrNullObject(key), key);
  }
  GetItemOrNullObject(key: string): Table | null {
    return this.items.find((table) => table.Id === key || table.Name.toLowerCase() === key.toLowerCase()) ?? null;
  }
  Add(address: string, _hasHeaders: boolean): Table {
    const { workbook } = this.shared;
    const { sheet, row, column, rows, columns } = blockAt(found(this.sheet, "sheet"), address);
    const overlaps = workbook.tables.some(
      (each) =>
        each.sheet === sheet &&
        each.row < row + rows &&
        row <= each.row + each.bodyRows &&
        each.column < column + columns &&
        column < each.column + each.columns,
    );
    if (overlaps) throw new HostRefusal("MergedRangeConflict", "A table can't overlap with another table.");
    const table: TableModel = {
      id: workbook.id("table"),
      name: `Table${workbook.tables.length + 1}`,
      sheet,
      row,
      column,
      bodyRows: rows - 1,
      columns,
      totals: false,
      showHeaders: true,
    };
    workbook.tables.push(table);
    return new Table(this.shared, table);
  }
  _RegisterDataChangedEvent(): void {
    this.shared.watched.add(tableChanged);
  }
  _UnregisterDataChangedEvent(): void {
    this.shared.watched.delete(tableChanged);
  }
}

class Table {
  constructor(
    private readonly shared: Shared,
    private readonly model: TableModel,
  ) {}
  get Id(): string {
    return this.model.id;
  }
  get Name(): string {
    return this.model.name;
  }
  set Name(name: string) {
    if (!/^[A-Za-z_\\][\w.\\]*$/.test(name)) throw new HostRefusal("InvalidArgument", `${name} is no name for a table`);
    // The same words for a name that another table or a defined name has (github.com/OfficeDev/office-js/issues/551).
    const { tables, names } = this.shared.workbook;
    const taken = [...tables.filter((each) => each !== this.model), ...names].some(
      (each) => each.name.toLowerCase() === name.toLowerCase(),
    );
    if (taken) throw new HostRefusal("InvalidArgument", "The argument is invalid or missing or has an incorrect format.");
    this.model.name = name;
  }
  get ShowTotals(): boolean {
    return this.model.totals;
  }
  get ShowHeaders(): boolean {
    return this.model.showHeaders;
  }
  set Style(_name: string) {}
  get Worksheet(): object {
    return this.shared.worksheet(this.model.sheet);
  }
  get Columns(): Columns {
    return new Columns(this.shared, this.model);
  }
  get Rows(): Rows {
    return new Rows(this.shared.workbook, this.model);
  }
  GetRange(): RangeObject {
    return range(this.shared, { ...this.model, rows: 1 + this.model.bodyRows + Number(this.model.totals) });
  }
  /** Draws the table over another block, whose first row has the headings; nothing in the sheet moves. */
  Resize(address: string): void {
    const { workbook } = this.shared;
    const block = blockAt(this.model.sheet, address);
    if (block.row !== this.model.row) throw new HostRefusal("InvalidArgument", "The headings of a table stay in their row.");
    workbook.touch(this.model.sheet, this.model);
    Object.assign(this.model, { column: block.column, columns: block.columns, bodyRows: block.rows - 1 - Number(this.model.totals) });
  }
  GetHeaderRowRange(): RangeObject {
    if (!this.model.showHeaders) throw new HostRefusal("ItemNotFound", "The table has no header row.");
    return range(this.shared, { ...this.model, rows: 1 });
  }
  GetDataBodyRange(): RangeObject {
    if (this.shared.workbook.unreadable.has(this.model.name))
      throw new HostRefusal("GeneralException", "There was an internal error while processing the request.");
    return range(this.shared, { ...this.model, row: this.model.row + 1, rows: this.model.bodyRows });
  }
}
class Columns extends Collection<Column> {
  constructor(
    private readonly shared: Shared,
    private readonly table: TableModel,
  ) {
    super();
  }
  get items(): Column[] {
    return Array.from({ length: this.table.columns }, (_, index) => new Column(this.shared, this.table, index));
  }
  indexer(name: string): Column {
    return found(this.GetItemOrNullObject(name), name);
  }
  GetItemOrNullObject(name: string): Column | null {
    return this.items.find((column) => column.Name.toLowerCase() === name.toLowerCase()) ?? null;
  }
}
class Column {
  constructor(
    private readonly shared: Shared,
    private readonly table: TableModel,
    private readonly index: number,
  ) {}
  get Id(): number {
    return this.index + 1;
  }
  get Name(): string {
    return String(this.table.sheet.cell(this.table.row, this.table.column + this.index)?.value ?? "");
  }
  GetDataBodyRange(): RangeObject {
    const { sheet, row, column, bodyRows } = this.table;
    return range(this.shared, { sheet, row: row + 1, column: column + this.index, rows: bodyRows, columns: 1 });
  }
}
class Rows {
  constructor(
    private readonly workbook: WorkbookModel,
    private readonly table: TableModel,
  ) {}
  GetItemAt(index: number): TableRow {
    if (index < 0 || index >= this.table.bodyRows) throw new HostRefusal("InvalidArgument", "There is no such row.");
    return new TableRow(this.workbook, this.table, index);
  }
  /** Adds rows at the end; null leaves a cell as Excel would have it. */
  Add(index: number | null, values: (Cell | null)[][]): TableRow {
    const { table } = this;
    if (index !== null && index !== undefined) throw new HostRefusal("NotImplemented", "Rows are only added at the end here");
    if (values.some((cells) => cells.length !== table.columns))
      throw new HostRefusal("InvalidArgument", "A row has too many or too few cells.");
    const first = table.row + 1 + table.bodyRows;
    this.workbook.growTable(table, values.length);
    values.forEach((cells, down) =>
      cells.forEach((typed, across) => {
        if (typed === null) return;
        const { value, formula } = contentOf(typed);
        this.workbook.put(table, first + down, table.column + across, value, formula);
      }),
    );
    return new TableRow(this.workbook, table, first - table.row - 1);
  }
}
class TableRow {
  constructor(
    private readonly workbook: WorkbookModel,
    private readonly table: TableModel,
    private readonly index: number,
  ) {}
  Delete(): void {
    this.workbook.shrinkTable(this.table, this.index);
  }
}
