/** An input table that we offer to make: its headings, how their cells look, what may be chosen, and one example row. */
import type { Cell } from "./cell";

export type InputColumn = {
  readonly heading: string;
  readonly width: number;
  readonly numberFormat?: string;
  /** The words of a drop-down list. Entries outside the list are allowed with a warning. */
  readonly choices?: readonly string[];
  /** A sentence shown when the heading is pointed at or opened: what to enter, in which unit. */
  readonly hint: string;
  readonly required: boolean;
  /** Words that growers and dealers write above it instead: see `Said`. */
  readonly words?: readonly string[];
};

export type InputTable = {
  /** Table name as Excel allows it: letters, digits and underscores, e.g. `Other_costs`. */
  readonly name: string;
  /** Sheet name, e.g. `Other costs`. */
  readonly sheet: string;
  readonly columns: readonly InputColumn[];
  readonly example: readonly Cell[];
};
