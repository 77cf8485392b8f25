import type { Cell } from "../../../workbook/cell";

/** A formula as it stands in a cell, without its `=`. `shared`: this cell follows the master of a group. */
export type CellFormula = {
  readonly text: string;
  readonly kind: "plain" | "shared" | "array" | "table";
  /** The number of a shared group. */
  readonly group?: string;
  /** The cells of an array formula, or of a shared group at its master. */
  readonly area?: string;
  /** The attributes of its mark as the file has them, for writing it again with another value. */
  readonly tag?: string;
};

export type StoredCell = {
  readonly column: number;
  readonly value: Cell;
  /** The value is an error and not a text that looks like one. */
  readonly isError?: boolean;
  readonly formula?: CellFormula;
  /** The file has no value for the formula. */
  readonly isUnknown?: boolean;
  /** Number of the cell's style. */
  readonly style: number;
  /** Notes of a formula's cell on its kind of value (`cm`, `vm`), as attributes. */
  readonly notes?: string;
  /** Where it stands in the part as it was read; absent for a cell of ours. */
  readonly source?: readonly [from: number, to: number];
};

export type SheetRow = {
  /** The attributes of the row as written, from the blank before the first. */
  readonly attributes: string;
  readonly cells: readonly StoredCell[];
};
