/** An input table that we offer to make: its headings, how their cells look, and what may be chosen. */
import type { Cell } from "./cell";

export type InputColumn = {
  readonly heading: string;
  readonly width: number;
  readonly numberFormat?: string;
  /** The words of a drop-down list. Entries outside the list are allowed with a warning. */
  readonly choices?: readonly string[];
  /** A sentence shown as a cell of the column is selected: what to enter, in which unit. */
  readonly hint: string;
  readonly required: boolean;
  /** Words that growers and dealers write above it instead: see `Said`. */
  readonly words?: readonly string[];
  /** Headings that it had before. */
  readonly was?: readonly string[];
};

/** The hint of a column as it is shown, with the word that it is needed. */
export const hintWords = ({ hint, required }: InputColumn): string => `${hint}${required ? " Needed." : ""}`.trim();

/** The rows that a table is made with: those of the grower, or one that is blank. */
export const rowsMade = ({ columns, rows = [] }: InputTable): readonly (readonly Cell[])[] =>
  rows.length > 0 ? rows : [columns.map(() => "")];

export type InputTable = {
  /** Table name as Excel allows it: letters, digits and underscores, e.g. `Other_costs`. */
  readonly name: string;
  /** Sheet name, e.g. `Other costs`. */
  readonly sheet: string;
  readonly columns: readonly InputColumn[];
  /** The grower's own rows, where the table is made to hold some; left out: a blank row, because no example is ever counted. */
  readonly rows?: readonly (readonly Cell[])[];
};
