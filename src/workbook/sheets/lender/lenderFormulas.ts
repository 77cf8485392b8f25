/**
 * The formulas of the lender pages. They say what core/breakEven.ts says and round as workbook/shown.ts rounds, with
 * functions that every spreadsheet has, so that a reader may try another price or yield without us.
 */

/** References of the cells that hold F, v, s, o, Y and p, and d where the buyer takes anything off. */
export type BalanceCells = {
  readonly fixed: string;
  readonly moving: string;
  readonly share: string;
  readonly otherIncome: string;
  readonly yieldHere: string;
  readonly price: string;
  readonly dock?: string;
};

const noAnswer = '"–"';
const rounded = (value: string, places: number): string => `ROUND(ROUND(${value},9),${places})`;
const roundedUp = (value: string, places: number): string =>
  `IF((${value})<0,ROUNDDOWN(ROUND(${value},9),${places}),ROUNDUP(ROUND(${value},9),${places}))`;

export const costPerAreaFormula = ({ fixed, moving, share, yieldHere }: BalanceCells): string =>
  `=${rounded(`${fixed}+${moving}*${share}*${yieldHere}`, 2)}`;

export const costPerUnitFormula = ({ fixed, moving, share, yieldHere }: BalanceCells): string =>
  `=IF(${share}*${yieldHere}=0,${noAnswer},${rounded(`${moving}+${fixed}/(${share}*${yieldHere})`, 2)})`;

const plus = (dock: string | undefined): string => (dock === undefined ? "" : `+${dock}`);
const less = (dock: string | undefined): string => (dock === undefined ? "" : `-${dock}`);

export const breakEvenPriceFormula = ({ fixed, moving, share, otherIncome, yieldHere, dock }: BalanceCells): string =>
  `=IF(${share}*${yieldHere}=0,${noAnswer},${roundedUp(`${moving}${plus(dock)}+(${fixed}-${otherIncome})/(${share}*${yieldHere})`, 2)})`;

export const breakEvenYieldFormula = ({ fixed, moving, share, otherIncome, price, dock }: BalanceCells): string =>
  `=IF((${price}-${moving}${less(dock)})*${share}<=0,${noAnswer},MAX(0,${roundedUp(`(${fixed}-${otherIncome})/((${price}-${moving}${less(dock)})*${share})`, 1)}))`;

export const netFormula = ({ fixed, moving, share, otherIncome, yieldHere, price, dock }: BalanceCells): string =>
  `=${rounded(`(${price}-${moving}${less(dock)})*${share}*${yieldHere}+${otherIncome}-${fixed}`, 2)}`;

/** A part of a cell, a price to the cent or a yield to the tenth; all of it as it is. */
export const partFormula = (cell: string, part: string, places: number): string =>
  part === "1" ? `=${cell}` : `=${rounded(`${cell}*${part}`, places)}`;
