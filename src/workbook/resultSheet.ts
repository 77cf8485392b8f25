/** A sheet of ours as plain data: what the report makers produce and both hosts write, in one block, with its page setup. */
import type { Cell } from "./cell";

/** How a cell looks. Everything left out is the workbook's default. */
export type CellStyle = {
  /** An Excel number format code in its invariant form, e.g. `#,##0.00`. */
  readonly numberFormat?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  readonly align?: "left" | "center" | "right";
  readonly wrap?: boolean;
  /** A thin line; a box on all sides marks a cell that the reader may change. */
  readonly border?: "top" | "bottom" | "box";
  /** Greys that print in black and white. */
  readonly fill?: "heading" | "soft";
};

/** A value, or a formula (beginning with `=`) with the value it gives. Text in `value` is never taken for a formula. */
export type SheetCell = { readonly value: Cell; readonly formula?: string; readonly style?: CellStyle };

export type ChartModel = {
  readonly kind: "column" | "line";
  readonly title: string;
  /** Cells of the same sheet, as A1 ranges without the sheet's name, e.g. `A5:A12`. */
  readonly categories: string;
  readonly series: readonly { readonly name: string; readonly values: string }[];
  /** Whether the axis of values begins at nothing: a column is as long as its value then. Not where one of them is negative. */
  readonly startsAtZero?: boolean;
  /** The corners of the chart, as A1 cells. */
  readonly from: string;
  readonly to: string;
};

export type ResultSheet = {
  readonly name: string;
  /** Width of each column in characters. */
  readonly columns: readonly number[];
  /** Rows of the block from A1; a shorter row is filled with blanks. */
  readonly rows: readonly (readonly SheetCell[])[];
  /** Cells joined across, as A1 ranges. */
  readonly merges?: readonly string[];
  /** How many of the first rows are repeated on each printed page and stay in view on the screen. */
  readonly headingRows: number;
  readonly page: {
    readonly orientation: "portrait" | "landscape";
    readonly paper: "letter" | "a4";
    /** 0: as many as it takes. */
    readonly pagesTall: number;
    /** Percent, instead of fitting to the page, where pages are to end after certain rows: Excel minds those only so. */
    readonly scale?: number;
    /** Rows, counted from 1, after which a page ends; used with `scale`. */
    readonly breakAfter?: readonly number[];
    readonly footer: string;
    /** How many pages this sheet takes, which its footer then counts by themselves, from 1; left out: those of the whole print. */
    readonly pages?: number;
  };
  readonly charts: readonly ChartModel[];
};
