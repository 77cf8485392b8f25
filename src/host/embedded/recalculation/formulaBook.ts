/** A workbook as recalculation sees it: formulas, values, tables and names, wherever the host keeps them. */
import type { Block } from "../../address";
import type { Cell } from "../../../workbook/cell";
import type { FormulaPlace, FormulaTable } from "./tableReference";

/** The value of a cell; an error is told apart from a text that only looks like one. */
export type CalculatedValue = Cell | { readonly error: string };

/** A formula, without its `=`, with the value that the file or the last calculation has for it: null where there is none. */
export type FormulaCell = FormulaPlace & {
  readonly formula: string;
  readonly value: CalculatedValue | null;
  /** The cells that an array formula fills, if more than its own. */
  readonly fills?: Block;
};

type FormulaName = { readonly name: string; readonly sheet: number | null; readonly refersTo: string };

export type FormulaBook = {
  readonly dateSystem: "1900" | "1904";
  /** Names of all sheets; elsewhere a sheet is known by its position here. */
  readonly sheets: readonly string[];
  readonly tables: readonly FormulaTable[];
  readonly names: readonly FormulaName[];
  readonly formulas: readonly FormulaCell[];
  /** How many rows and columns of a sheet are used. */
  readonly used: (sheet: number) => { readonly rows: number; readonly columns: number };
  readonly valueAt: (place: FormulaPlace) => CalculatedValue;
  readonly hasHiddenRow: (cells: { readonly sheet: number; readonly area: Block }) => boolean;
};

export const isCellError = (value: CalculatedValue | null): value is { readonly error: string } =>
  typeof value === "object" && value !== null;

/** What a file says of the values that it stores for its formulas. */
export type StoredValues = {
  /** It asks for all of them to be worked out as it is opened, so none of them says anything. */
  readonly areToBeWorkedOut: boolean;
  /** Formulas whose value was old already as the file was saved, because nobody could work them out. */
  readonly old: readonly FormulaPlace[];
  /** Formulas count with the digits that they show, so arithmetic alone does not give their value. */
  readonly areRounded: boolean;
};
export const asWorkedOut: StoredValues = { areToBeWorkedOut: false, old: [], areRounded: false };
