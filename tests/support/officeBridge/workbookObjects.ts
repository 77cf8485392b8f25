/** Workbook, sheets, names and page setup, as the library asks for them. See rangeObjects.ts. */
import type { Cell } from "../../../src/workbook/cell";
import { blockAt, fullAddress } from "./addresses";
import { Charts } from "./chartObjects";
import { HostRefusal } from "./hostRefusal";
import type { RangeObject } from "./rangeObjects";
import { Collection, found, range, sheetChanged, sheetDeleted, type Shared, type Watched } from "./shared";
import { Tables } from "./tableObjects";
import type { NameModel, SheetModel, WorkbookModel } from "./workbookModel";

export class WorkbookObject {
  readonly #shared: Shared;
  constructor(workbook: WorkbookModel, watched: Watched) {
    this.#shared = { workbook, references: new Map(), watched, worksheet: (sheet) => new Worksheet(this.#shared, sheet) };
  }
  get Worksheets(): Worksheets {
    return new Worksheets(this.#shared);
  }
  get Tables(): Tables {
    return new Tables(this.#shared);
  }
  get Names(): Names {
    return new Names(this.#shared.workbook.names);
  }
  get Functions(): Functions {
    return new Functions(this.#shared.workbook);
  }
  get Application(): Application {
    return new Application(this.#shared.workbook);
  }
  get Protection(): { readonly Protected: boolean } {
    return new Protection(this.#shared.workbook.structureLocked);
  }
  GetSelectedRange(): RangeObject {
    return range(this.#shared, found(this.#shared.workbook.selected, "selection"));
  }
  _RemoveReference(id: string): void {
    this.#shared.references.delete(id);
  }
  /** A range that an earlier batch kept. */
  kept(id: string): RangeObject {
    return found(this.#shared.references.get(id), id);
  }
}

class Protection {
  constructor(private readonly locked: boolean) {}
  get Protected(): boolean {
    return this.locked;
  }
}

class Application {
  constructor(private readonly workbook: WorkbookModel) {}
  CreateWorkbook(file: string): WorkbookCreated {
    return new WorkbookCreated(this.workbook, file);
  }
}
class WorkbookCreated {
  constructor(
    private readonly from: WorkbookModel,
    private readonly file: string,
  ) {}
  get Id(): string {
    return "{created}";
  }
  Open(): void {
    this.from.opened.push(this.file);
  }
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
  get Value(): Cell {
    return this.result;
  }
}

class Worksheets extends Collection<Worksheet> {
  constructor(private readonly shared: Shared) {
    super();
  }
  get items(): Worksheet[] {
    return this.shared.workbook.sheets.map((sheet) => new Worksheet(this.shared, sheet));
  }
  indexer(key: string): Worksheet {
    return found(
      this.items.find((sheet) => sheet.Id === key || sheet.Name.toLowerCase() === key.toLowerCase()),
      key,
    );
  }
  GetItemOrNullObject(name: string): Worksheet | null {
    const sheet = this.shared.workbook.sheet(name);
    return sheet ? new Worksheet(this.shared, sheet) : null;
  }
  Add(name: string): Worksheet {
    return new Worksheet(this.shared, this.shared.workbook.addSheet(name));
  }
  _RegisterDataChangedEvent(): void {
    this.shared.watched.add(sheetChanged);
  }
  _UnregisterDataChangedEvent(): void {
    this.shared.watched.delete(sheetChanged);
  }
  _RegisterDeletedEvent(): void {
    this.shared.watched.add(sheetDeleted);
  }
  _UnregisterDeletedEvent(): void {
    this.shared.watched.delete(sheetDeleted);
  }
}

export class Worksheet {
  constructor(
    private readonly shared: Shared,
    readonly model: SheetModel,
  ) {}
  get Id(): string {
    return this.model.id;
  }
  get Name(): string {
    return this.model.name;
  }
  get Visibility(): string {
    return this.model.visibility;
  }
  get Protection(): Protection {
    return new Protection(this.model.locked);
  }
  get Names(): Names {
    return new Names(this.model.names);
  }
  get Charts(): Charts {
    return new Charts(this.shared, this.model);
  }
  get Tables(): Tables {
    return new Tables(this.shared, this.model);
  }
  get FreezePanes(): FreezePanes {
    return new FreezePanes(this.model);
  }
  get PageLayout(): PageLayout {
    return new PageLayout(this.model);
  }
  Activate(): void {}
  Delete(): void {
    this.shared.workbook.removeSheet(this.model);
  }
  GetUsedRangeOrNullObject(valuesOnly?: boolean): RangeObject | null {
    return this.GetRange().GetUsedRangeOrNullObject(valuesOnly ?? false);
  }
  GetRange(address?: string | null): RangeObject {
    return range(this.shared, blockAt(this.model, address ?? "A:XFD"));
  }
  GetRangeByIndexes(row: number, column: number, rows: number, columns: number): RangeObject {
    return range(this.shared, { sheet: this.model, row, column, rows, columns });
  }
}

class Names extends Collection<NamedItem> {
  constructor(private readonly models: NameModel[]) {
    super();
  }
  get items(): NamedItem[] {
    return this.models.map((item) => new NamedItem(item, this.models));
  }
  GetItemOrNullObject(name: string): NamedItem | null {
    return this.items.find((each) => each.Name.toLowerCase() === name.toLowerCase()) ?? null;
  }
  indexer(name: string): NamedItem {
    return found(this.GetItemOrNullObject(name), name);
  }
  Add(name: string, formula: string): NamedItem {
    if (this.GetItemOrNullObject(name))
      throw new HostRefusal("ItemAlreadyExists", "A resource with the same name or identifier already exists.");
    const item = { name, formula, visible: true };
    this.models.push(item);
    return new NamedItem(item, this.models);
  }
}
class NamedItem {
  constructor(
    private readonly model: NameModel,
    private readonly models: NameModel[],
  ) {}
  get Name(): string {
    return this.model.name;
  }
  get Formula(): string {
    return this.model.formula;
  }
  set Formula(value: string) {
    this.model.formula = value;
  }
  get Visible(): boolean {
    return this.model.visible;
  }
  set Visible(value: boolean) {
    this.model.visible = value;
  }
  Delete(): void {
    this.models.splice(this.models.indexOf(this.model), 1);
  }
}

class FreezePanes {
  constructor(private readonly sheet: SheetModel) {}
  FreezeRows(count: number): void {
    this.sheet.frozenRows = count;
  }
  Unfreeze(): void {
    this.sheet.frozenRows = 0;
  }
}

class PageLayout {
  constructor(private readonly sheet: SheetModel) {}
  get HeadersFooters(): { DefaultForAllPages: HeaderFooter } {
    return new HeadersFooters(this.sheet);
  }
  set Orientation(value: string) {
    this.sheet.page["orientation"] = value;
  }
  set PaperSize(value: string) {
    this.sheet.page["paperSize"] = value;
  }
  set Zoom(value: object) {
    this.sheet.page["zoom"] = value;
  }
  SetPrintArea(address: string): void {
    this.sheet.page["printArea"] = fullAddress(blockAt(this.sheet, address));
  }
  SetPrintTitleColumns(address: string): void {
    this.sheet.page["titleColumns"] = address.replaceAll("$", "");
  }
  SetPrintTitleRows(address: string): void {
    this.sheet.page["titleRows"] = address.replaceAll("$", "");
  }
}
class HeadersFooters {
  constructor(private readonly sheet: SheetModel) {}
  get DefaultForAllPages(): HeaderFooter {
    return new HeaderFooter(this.sheet);
  }
}
class HeaderFooter {
  constructor(private readonly sheet: SheetModel) {}
  set LeftFooter(value: string) {
    this.sheet.page["leftFooter"] = value;
  }
  set RightFooter(value: string) {
    this.sheet.page["rightFooter"] = value;
  }
}
