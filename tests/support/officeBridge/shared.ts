/** What the objects of the test workbook have in common. */
import { HostRefusal } from "./hostRefusal";
import { RangeObject } from "./rangeObjects";
import type { Block, SheetModel, WorkbookModel } from "./workbookModel";

/** Kinds of events that somebody asked to be told of, by their number in the library. */
export type Watched = Set<number>;
export const sheetChanged = 10;
export const sheetDeleted = 15;
export const tableChanged = 101;

/** What is shared by all objects of one workbook. */
export type Shared = {
  readonly workbook: WorkbookModel;
  readonly references: Map<string, RangeObject>;
  readonly watched: Watched;
  /** A sheet as an object: sheets have tables, and a table tells its sheet. */
  readonly worksheet: (sheet: SheetModel) => object;
};

/** A collection that is asked with `items/...`. */
export abstract class Collection<Item> {
  abstract readonly items: readonly Item[];
}

/** The thing, or the refusal Excel gives for one that is not there. */
export const found = <Item>(item: Item | undefined | null, what: string): Item => {
  if (item === undefined || item === null) throw new HostRefusal("ItemNotFound", `The requested resource doesn't exist: ${what}`);
  return item;
};

/** A block as a range of the object model. */
export const range = ({ workbook, references }: Shared, block: Block) => new RangeObject(workbook, block, references);
