/** Workbook, sheets, tables, names, charts and page setup, as the library asks for them. See rangeObjects.ts. */
import type { Cell } from "../../../src/workbook/cell";
import { blockAt, fullAddress } from "./addresses";
import { HostRefusal } from "./hostRefusal";
import { RangeObject } from "./rangeObjects";
import { contentOf } from "./typedCell";
import type { Block, ChartModel, NameModel, SheetModel, TableModel, WorkbookModel } from "./workbookModel";

/** Kinds of events that somebody asked to be told of, by their number in the library. */
export type Watched = Set<number>;
export const sheetChanged = 10;
export const sheetDeleted = 15;
export const tableChanged = 101;

/** What is shared by all objects of one workbook. */
type Shared = { readonly workbook: WorkbookModel; readonly references: Map<string, RangeObject>; readonly watched: Watched };

/** A collection that is asked with `items/...`. */
export abstract class Collection<Item> {
  abstract readonly items: readonly Item[];
}

const found = <Item>(item: Item | undefined | null, what: string): Item => {
  if (item === undefined || item === null) throw new HostRefusal("ItemNotFound", `The requested resource doesn't exist: ${what}`);
  return item;
};

export class WorkbookObject {
  readonly #shared: Shared;
  constructor(workbook: WorkbookModel, watched: Watched) { this.#shared = { workbook, references: new Map(), watched }; }
  get Worksheets(): Worksheets { return new Worksheets(this.#shared); }
  get Tables(): Tables { return new Tables(this.#shared); }
  get Functions(): Functions { return new Functions(this.#shared.workbook); }
  get Protection(): { readonly Protected: boolean } { return new Protection(this.#shared.workbook.structureLocked); }
  GetSelectedRange(): RangeObject { return range(this.#shared, found(this.#shared.workbook.selected, "selection")); }
  _RemoveReference(id: string): void { this.#shared.references.delete(id); }
  /** A range that an earlier batch kept. */
  kept(id: string): RangeObject { return found(this.#shared.references.get(id), id); }
}

const range = ({ workbook, references }: Shared, block: Block) => new RangeObject(workbook, block, references);

class Protection {
  constructor(private readonly locked: boolean) {}
  get Protected(): boolean { return this.locked; }
}

class Functions {
  constructor(private readonly workbook: WorkbookModel) {}
  /** Only for what the product asks: a day at the beginning of 1904, in either date system. */
  Date(year: number, month: number, day: number): FunctionResult {
    const days = Math.round((Date.UTC(year, month - 1, day) - Date.UTC(1904, 0, 1)) / 86_400_000);
    return new FunctionResult(this.workbook.date1904 ? days : days + 1462);
  }
}
class FunctionResult {
  constructor(private readonly result: Cell) {}
  get Value(): Cell { return this.result; }
}

class Worksheets extends Collection<Worksheet> {
  constructor(private readonly shared: Shared) { super(); }
  get items(): Worksheet[] { return this.shared.workbook.sheets.map((sheet) => new Worksheet(this.shared, sheet)); }
  indexer(key: string): Worksheet { return found(this.items.find((sheet) => sheet.Id === key || sheet.Name.toLowerCase() === key.toLowerCase()), key); }
  GetItemOrNullObject(name: string): Worksheet | null {
    const sheet = this.shared.workbook.sheet(name);
    return sheet ? new Worksheet(this.shared, sheet) : null;
  }
  Add(name: string): Worksheet { return new Worksheet(this.shared, this.shared.workbook.addSheet(name)); }
  _RegisterDataChangedEvent(): void { this.shared.watched.add(sheetChanged); }
  _UnregisterDataChangedEvent(): void { this.shared.watched.delete(sheetChanged); }
  _RegisterDeletedEvent(): void { this.shared.watched.add(sheetDeleted); }
  _UnregisterDeletedEvent(): void { this.shared.watched.delete(sheetDeleted); }
}

class Worksheet {
  constructor(private readonly shared: Shared, readonly model: SheetModel) {}
  get Id(): string { return this.model.id; }
  get Name(): string { return this.model.name; }
  get Visibility(): string { return this.model.visibility; }
  get Protection(): Protection { return new Protection(this.model.locked); }
  get Names(): Names { return new Names(this.model); }
  get Charts(): Charts { return new Charts(this.shared, this.model); }
  get Tables(): Tables { return new Tables(this.shared, this.model); }
  get FreezePanes(): FreezePanes { return new FreezePanes(this.model); }
  get PageLayout(): PageLayout { return new PageLayout(this.model); }
  Activate(): void {}
  GetRange(address?: string | null): RangeObject { return range(this.shared, blockAt(this.model, address ?? "A:XFD")); }
  GetRangeByIndexes(row: number, column: number, rows: number, columns: number): RangeObject {
    return range(this.shared, { sheet: this.model, row, column, rows, columns });
  }
}

class Names {
  constructor(private readonly sheet: SheetModel) {}
  GetItemOrNullObject(name: string): NamedItem | null {
    const item = this.sheet.names.find((each) => each.name.toLowerCase() === name.toLowerCase());
    return item ? new NamedItem(item) : null;
  }
  Add(name: string, formula: string): NamedItem {
    const item = { name, formula, visible: true };
    this.sheet.names.push(item);
    return new NamedItem(item);
  }
}
class NamedItem {
  constructor(private readonly model: NameModel) {}
  get Name(): string { return this.model.name; }
  set Visible(value: boolean) { this.model.visible = value; }
}

class FreezePanes {
  constructor(private readonly sheet: SheetModel) {}
  FreezeRows(count: number): void { this.sheet.frozenRows = count; }
  Unfreeze(): void { this.sheet.frozenRows = 0; }
}

class PageLayout {
  constructor(private readonly sheet: SheetModel) {}
  get HeadersFooters(): { DefaultForAllPages: HeaderFooter } { return new HeadersFooters(this.sheet); }
  set Orientation(value: string) { this.sheet.page["orientation"] = value; }
  set PaperSize(value: string) { this.sheet.page["paperSize"] = value; }
  set Zoom(value: object) { this.sheet.page["zoom"] = value; }
  SetPrintArea(address: string): void { this.sheet.page["printArea"] = fullAddress(blockAt(this.sheet, address)); }
  SetPrintTitleRows(address: string): void { this.sheet.page["titleRows"] = address.replaceAll("$", ""); }
}
class HeadersFooters {
  constructor(private readonly sheet: SheetModel) {}
  get DefaultForAllPages(): HeaderFooter { return new HeaderFooter(this.sheet); }
}
class HeaderFooter {
  constructor(private readonly sheet: SheetModel) {}
  set LeftFooter(value: string) { this.sheet.page["leftFooter"] = value; }
  set RightFooter(value: string) { this.sheet.page["rightFooter"] = value; }
}

class Tables extends Collection<Table> {
  constructor(private readonly shared: Shared, private readonly sheet?: SheetModel) { super(); }
  get _EventTargetId(): string { return "Workbook"; }
  get items(): Table[] {
    const { tables } = this.shared.workbook;
    return tables.filter(({ sheet }) => !this.sheet || sheet === this.sheet).map((table) => new Table(this.shared, table));
  }
  indexer(key: string): Table { return found(this.GetItemOrNullObject(key), key); }
  GetItemOrNullObject(key: string): Table | null {
    return this.items.find((table) => table.Id === key || table.Name.toLowerCase() === key.toLowerCase()) ?? null;
  }
  Add(address: string, _hasHeaders: boolean): Table {
    const { workbook } = this.shared;
    const { sheet, row, column, rows, columns } = blockAt(found(this.sheet, "sheet"), address);
    const table: TableModel = { id: workbook.id("table"), name: `Table${workbook.tables.length + 1}`, sheet, row, column, bodyRows: rows - 1, columns, totals: false, showHeaders: true };
    workbook.tables.push(table);
    return new Table(this.shared, table);
  }
  _RegisterDataChangedEvent(): void { this.shared.watched.add(tableChanged); }
  _UnregisterDataChangedEvent(): void { this.shared.watched.delete(tableChanged); }
}

class Table {
  constructor(private readonly shared: Shared, private readonly model: TableModel) {}
  get Id(): string { return this.model.id; }
  get Name(): string { return this.model.name; }
  set Name(name: string) {
    if (!/^[A-Za-z_\\][\w.\\]*$/.test(name)) throw new HostRefusal("InvalidArgument", `${name} is no name for a table`);
    this.model.name = name;
  }
  get ShowHeaders(): boolean { return this.model.showHeaders; }
  set Style(_name: string) {}
  get Worksheet(): Worksheet { return new Worksheet(this.shared, this.model.sheet); }
  get Columns(): Columns { return new Columns(this.shared, this.model); }
  get Rows(): Rows { return new Rows(this.shared.workbook, this.model); }
  GetHeaderRowRange(): RangeObject {
    if (!this.model.showHeaders) throw new HostRefusal("ItemNotFound", "The table has no header row.");
    return range(this.shared, { ...this.model, rows: 1 });
  }
  GetDataBodyRange(): RangeObject { return range(this.shared, { ...this.model, row: this.model.row + 1, rows: this.model.bodyRows }); }
}
class Columns extends Collection<Column> {
  constructor(private readonly shared: Shared, private readonly table: TableModel) { super(); }
  get items(): Column[] { return Array.from({ length: this.table.columns }, (_, index) => new Column(this.shared, this.table, index)); }
  GetItemOrNullObject(name: string): Column | null { return this.items.find((column) => column.Name.toLowerCase() === name.toLowerCase()) ?? null; }
}
class Column {
  constructor(private readonly shared: Shared, private readonly table: TableModel, private readonly index: number) {}
  get Id(): number { return this.index + 1; }
  get Name(): string { return String(this.table.sheet.cell(this.table.row, this.table.column + this.index)?.value ?? ""); }
  GetDataBodyRange(): RangeObject {
    const { sheet, row, column, bodyRows } = this.table;
    return range(this.shared, { sheet, row: row + 1, column: column + this.index, rows: bodyRows, columns: 1 });
  }
}
class Rows {
  constructor(private readonly workbook: WorkbookModel, private readonly table: TableModel) {}
  /** Adds rows at the end; null leaves a cell as Excel would have it. */
  Add(index: number | null, values: (Cell | null)[][]): TableRow {
    const { table } = this;
    if (index !== null && index !== undefined) throw new HostRefusal("NotImplemented", "Rows are only added at the end here");
    if (values.some((cells) => cells.length !== table.columns)) throw new HostRefusal("InvalidArgument", "A row has too many or too few cells.");
    const first = table.row + 1 + table.bodyRows;
    this.workbook.growTable(table, values.length);
    values.forEach((cells, down) => cells.forEach((typed, across) => {
      if (typed === null) return;
      const { value, formula } = contentOf(typed);
      this.workbook.put(table, first + down, table.column + across, value, formula);
    }));
    return new TableRow();
  }
}
class TableRow {}

class Charts extends Collection<Chart> {
  constructor(private readonly shared: Shared, private readonly sheet: SheetModel) { super(); }
  get items(): Chart[] { return this.sheet.charts.map((chart) => new Chart(this.sheet, chart)); }
  indexer(key: string): Chart { return found(this.items.find((chart) => chart.Id === key), key); }
  GetItemOrNullObject(key: string): Chart | null { return this.items.find((chart) => chart.Id === key) ?? null; }
  Add(_type: string, source: RangeObject, _by: string): Chart {
    this.shared.workbook.touch(this.sheet);
    const chart = { id: this.shared.workbook.id("chart"), title: "", place: "", series: [{ name: "", values: source.Address, categories: "" }] };
    this.sheet.charts.push(chart);
    return new Chart(this.sheet, chart);
  }
}
class Chart {
  constructor(private readonly sheet: SheetModel, private readonly model: ChartModel) {}
  get Id(): string { return this.model.id; }
  get Name(): string { return this.model.id; }
  get Title(): ChartTitle { return new ChartTitle(this.model); }
  get Legend(): ChartLegend { return new ChartLegend(); }
  get Series(): ChartSeriesCollection { return new ChartSeriesCollection(this.model); }
  SetPosition(from: string, to: string): void {
    blockAt(this.sheet, `${from}:${to}`);
    this.model.place = `${from}:${to}`;
  }
  Delete(): void { this.sheet.charts.splice(this.sheet.charts.indexOf(this.model), 1); }
}
class ChartTitle {
  constructor(private readonly chart: ChartModel) {}
  set Text(value: string) { this.chart.title = value; }
}
class ChartLegend {
  set Visible(_value: boolean) {}
  set Position(_value: string) {}
}
class ChartSeriesCollection {
  constructor(private readonly chart: ChartModel) {}
  GetItemAt(index: number): ChartSeries { return new ChartSeries(found(this.chart.series[index], `series ${index}`)); }
  Add(name: string): ChartSeries {
    const series = { name, values: "", categories: "" };
    this.chart.series.push(series);
    return new ChartSeries(series);
  }
}
class ChartSeries {
  constructor(private readonly model: ChartModel["series"][number]) {}
  get Format(): ChartSeriesFormat { return new ChartSeriesFormat(); }
  set Name(value: string) { this.model.name = value; }
  SetValues(source: RangeObject): void { this.model.values = source.Address; }
  SetXAxisValues(source: RangeObject): void { this.model.categories = source.Address; }
}
class ChartSeriesFormat {
  get Fill(): ChartFill { return new ChartFill(); }
  get Line(): ChartLine { return new ChartLine(); }
}
class ChartFill { SetSolidColor(_colour: string): void {} }
class ChartLine { set Color(_colour: string) {} }
