/**
 * A column of one of our tables, declared once: what it is called, how it looks, what may stand in it, what it says and what it
 * moves. New tables, the reader, the matching of ranges, forms and the page of tables all take it from its declaration.
 */
import type { Decimal } from "../../core/numbers/decimal";
import type { IsoDate } from "../../core/row";
import { points, type AreaUnit, type Points } from "../../core/numbers/units";
import type { ProblemCode } from "../problem";
import { isSexagesimal, readDegrees } from "../degrees";
import type { ColumnUnit } from "./columnUnit";
import type { TableName, matchesTable } from "../tableNames";

export type Range = "any" | "zero or more" | "above zero";

/** Which column of a table: its declaration, so that a heading is spelled in one place. */
export type Named = { readonly heading: string };

/** What a column needs of a row to read its cell: `null` where the cell is blank, or at fault, which the row notes. */
export type CellReader = {
  /** The area unit of the workbook, which tells what some words mean. */
  readonly areaUnit: AreaUnit;
  readonly text: (column: Named) => string | null;
  readonly number: (column: Named, range: Range) => Decimal | null;
  readonly share: (column: Named) => Decimal | null;
  readonly interestRate: (column: Named) => Decimal | null;
  readonly date: (column: Named) => IsoDate | null;
  readonly choice: <Word extends string>(column: Named, words: readonly Word[]) => Word | null;
  /** Notes a fault of the cell. */
  readonly fault: (code: ProblemCode, column: Named, more?: { readonly choices?: readonly string[]; readonly like?: string }) => null;
};

/** Rows in which a column of numbers or dates moves no figure. */
export type Still = {
  /** By what another column says there, "" being blank and "filled" anything; left out: any row. */
  readonly where?: { readonly column: string; readonly says: string };
  readonly why: string;
};

/** What is said of a column besides its heading. */
export type Said = {
  /** A sentence for whoever fills it: what to enter, in which unit. */
  readonly hint: string;
  readonly required?: true;
  /** What its numbers are counted in: other units typed behind them or named above them are told. */
  readonly unit?: ColumnUnit;
  /** Of the column, in characters; by its heading where nothing is said. */
  readonly width?: number;
  /**
   * Headings that older workbooks have for it: read, written to and told of as its own. Beside the heading of today each is an
   * entry to fix.
   */
  readonly was?: readonly string[];
  /**
   * Words that growers and dealers write above it, as `tradeWord` spells them: proposed where a range is matched. One that stands
   * at two columns of a table (a cost may be a price or an amount) proposes neither there. Common practice, from memory.
   */
  readonly words?: readonly string[];
  /** Read where a table has it, and not among the columns of a new table. */
  readonly offered?: false;
  /** Where it moves no figure, each with the reason: what is not said here moves one, or is told. */
  readonly movesNothing?: readonly Still[];
};

export type Column<Value = unknown> = Said & {
  readonly heading: string;
  readonly numberFormat?: string;
  /** The words of a drop-down list. */
  readonly choices?: readonly string[];
  readonly read: (row: CellReader) => Value | null;
};
export type Columns = Readonly<Record<string, Column>>;

/** All columns of a table, in the order in which a new table has them. */
export type Declared<Of extends Columns = Columns> = { readonly table: TableName | typeof matchesTable; readonly columns: Of };
export const declared = <const Table extends Declared["table"], const Of extends Columns>(
  table: Table,
  columns: Of,
): Declared<Of> & { readonly table: Table } => ({ table, columns });

const moneyFormat = "#,##0.00";
// `#,##0.##` would show a whole number with a point and nothing behind it.
const quantityFormat = "General";
const countFormat = "0";
const percentFormat = "0.0#%";
const dateFormat = "yyyy-mm-dd";

type Ranged = Said & { readonly range?: Range };
/** A column of plain numbers. */
export type NumberColumn = Column<Decimal> & { readonly range: Range };

type Look = Pick<Column, "numberFormat" | "choices">;
type Read<Value> = (row: CellReader, column: Named) => Value | null;

const column = <Value>(heading: string, said: Said, look: Look, read: Read<Value>): Column<Value> => {
  const named = { heading };
  return { ...said, ...look, heading, read: (row) => read(row, named) };
};

export const text = (heading: string, said: Said): Column<string> => column(heading, said, {}, (row, at) => row.text(at));

const numbers =
  (numberFormat: string) =>
  (heading: string, { range = "zero or more", ...said }: Ranged): NumberColumn => ({
    ...column(heading, said, { numberFormat }, (row, at) => row.number(at, range)),
    range,
  });

export const quantity = numbers(quantityFormat);

/** Whole things, one by one. */
export const count = numbers(countFormat);

/** Money, in the workbook's currency. */
export const money = (heading: string, said: Ranged): NumberColumn => numbers(moneyFormat)(heading, { unit: "money", ...said });

/** A fraction from 0 to 1, typed as such or in percent. */
export const share = (heading: string, said: Said): Column<Decimal> =>
  column(heading, said, { numberFormat: percentFormat }, (row, at) => row.share(at));

/** A rate of interest a year. */
export const rate = (heading: string, said: Said): Column<Decimal> =>
  column(heading, { unit: "rate of interest", ...said }, { numberFormat: percentFormat }, (row, at) => row.interestRate(at));

/** Points of moisture: 15.5, 15.5% and 0.155 are the same. */
export const moisture = (heading: string, said: Said): Column<Points> =>
  column(heading, said, { numberFormat: percentFormat }, (row, at) => {
    const fraction = row.share(at);
    if (fraction === null) return null;
    // Grain that is all water leaves nothing when it is dried.
    return fraction.gte("1") ? row.fault("percent-range", at) : points(fraction.times("100"));
  });

export const date = (heading: string, said: Said): Column<IsoDate> =>
  column(heading, said, { numberFormat: dateFormat }, (row, at) => row.date(at));

/** Degrees, as a decimal or with minutes and seconds and the letter of the half of the globe: `41.5868`, `93° 37' 12" W`. */
export const degrees = (heading: string, said: Said): Column<Decimal> =>
  column(heading, said, { numberFormat: quantityFormat }, (row, at) => {
    const typed = row.text(at);
    if (typed === null || !isSexagesimal(typed)) return row.number(at, "any");
    return readDegrees(typed) ?? row.fault("not-a-number", at);
  });

/** One of the words listed, in any case. */
export const choice = <const Word extends string>(heading: string, choices: readonly Word[], said: Said): Column<Word> =>
  column(heading, said, { choices }, (row, at) => row.choice(at, choices));

export const yesOrNo = (heading: string, said: Said): Column<"yes" | "no"> => choice(heading, ["yes", "no"], said);

/** One of the words listed, in any spelling that `named` understands. */
export const word = <const Word extends string>(
  heading: string,
  choices: readonly Word[],
  named: (typed: string, areaUnit: AreaUnit) => Word | null,
  said: Said,
): Column<Word> =>
  column(heading, said, { choices }, (row, at) => {
    const typed = row.text(at);
    return typed === null ? null : (named(typed, row.areaUnit) ?? row.fault("not-in-list", at, { choices }));
  });
