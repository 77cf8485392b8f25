/**
 * A column of one of our tables, declared once: what it is called, how it looks, what may stand in it, what it says and what it
 * moves. New tables, the reader, the matching of ranges, forms and the page of tables all take it from its declaration.
 */
import type { Decimal } from "../../core/decimal";
import type { IsoDate } from "../../core/row";
import { points, type AreaUnit, type Points } from "../../core/units";
import type { ProblemCode } from "../problem";
import type { TableName } from "../tableNames";

export type Range = "any" | "zero or more" | "above zero";

/** What a column needs of a row to read its cell: `null` where the cell is blank, or at fault, which the row notes. */
export type CellReader = {
  /** The area unit of the workbook, which tells what some words mean. */
  readonly areaUnit: AreaUnit;
  readonly text: (heading: string) => string | null;
  readonly number: (heading: string, range: Range) => Decimal | null;
  readonly share: (heading: string) => Decimal | null;
  readonly interestRate: (heading: string) => Decimal | null;
  readonly date: (heading: string) => IsoDate | null;
  readonly choice: <Word extends string>(heading: string, words: readonly Word[]) => Word | null;
  /** Notes a fault of the cell. */
  readonly fault: (code: ProblemCode, heading: string, more?: { readonly choices?: readonly string[] }) => null;
};

/** What is said of a column besides its heading. */
export type Said = {
  /** A sentence for whoever fills it: what to enter, in which unit. */
  readonly hint: string;
  readonly required?: true;
  /** Of the column, in characters; by its heading where nothing is said. */
  readonly width?: number;
  /** Headings that older workbooks have for it. */
  readonly was?: readonly string[];
  /** Words that growers and dealers write above it, as `tradeWord` spells them: proposed where a range is matched. Common practice, from memory. */
  readonly words?: readonly string[];
  /** Read where a table has it, and not among the columns of a new table. */
  readonly offered?: false;
  /** What it is for, of a column that moves no figure. */
  readonly movesNothing?: string;
};

export type Column<Value = unknown> = Said & {
  readonly heading: string;
  readonly numberFormat?: string;
  /** The words of a drop-down list. */
  readonly choices?: readonly string[];
  readonly read: (row: CellReader) => Value | null;
};
export type Columns = Readonly<Record<string, Column>>;

/** One row as read: what each column says, `null` where it is blank or at fault. */
export type RowOf<Of extends Columns> = { readonly [Key in keyof Of]: Of[Key] extends Column<infer Value> ? Value | null : never };

/** All columns of a table, in the order in which a new table has them. */
export type Declared<Of extends Columns = Columns> = { readonly table: TableName; readonly columns: Of };
export const declared = <const Of extends Columns>(table: TableName, columns: Of): Declared<Of> => ({ table, columns });

const moneyFormat = "#,##0.00";
// `#,##0.##` would show a whole number with a point and nothing behind it.
const quantityFormat = "General";
const percentFormat = "0.0#%";
const dateFormat = "yyyy-mm-dd";

type Ranged = Said & { readonly range?: Range };

export const text = (heading: string, said: Said): Column<string> => ({ ...said, heading, read: (row) => row.text(heading) });

export const quantity = (heading: string, { range = "zero or more", ...said }: Ranged): Column<Decimal> =>
  ({ ...said, heading, numberFormat: quantityFormat, read: (row) => row.number(heading, range) });

/** Money, in the workbook's currency. */
export const money = (heading: string, { range = "zero or more", ...said }: Ranged): Column<Decimal> =>
  ({ ...said, heading, numberFormat: moneyFormat, read: (row) => row.number(heading, range) });

/** A fraction from 0 to 1, typed as such or in percent. */
export const share = (heading: string, said: Said): Column<Decimal> => ({ ...said, heading, numberFormat: percentFormat, read: (row) => row.share(heading) });

/** A rate of interest a year. */
export const rate = (heading: string, said: Said): Column<Decimal> => ({ ...said, heading, numberFormat: percentFormat, read: (row) => row.interestRate(heading) });

/** Points of moisture: 15.5, 15.5% and 0.155 are the same. */
export const moisture = (heading: string, said: Said): Column<Points> => ({
  ...said, heading, numberFormat: percentFormat,
  read: (row) => {
    const fraction = row.share(heading);
    return fraction === null ? null : points(fraction.times("100"));
  },
});

export const date = (heading: string, said: Said): Column<IsoDate> => ({ ...said, heading, numberFormat: dateFormat, read: (row) => row.date(heading) });

/** One of the words listed, in any case. */
export const choice = <const Word extends string>(heading: string, choices: readonly Word[], said: Said): Column<Word> =>
  ({ ...said, heading, choices, read: (row) => row.choice(heading, choices) });

/** One of the words listed, in any spelling that `named` understands. */
export const word = <const Word extends string>(heading: string, choices: readonly Word[], named: (typed: string, areaUnit: AreaUnit) => Word | null, said: Said): Column<Word> => ({
  ...said, heading, choices,
  read: (row) => {
    const typed = row.text(heading);
    return typed === null ? null : named(typed, row.areaUnit) ?? row.fault("not-in-list", heading, { choices });
  },
});
