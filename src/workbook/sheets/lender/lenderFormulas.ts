/**
 * The formulas of the lender pages. They say what core/breakEven.ts says and round as workbook/shown.ts rounds, with
 * functions that every spreadsheet has, so that a reader may try another price or yield without us.
 */

import { zero, type Decimal } from "../../../core/numbers/decimal";
import { rentAbove, type RentStep } from "../../../core/flexibleRent";

/**
 * References of the cells that hold F, v, s, o, Y and p, and d where the buyer takes anything off; and the steps of a rent that goes
 * by p × Y, which formulas hold themselves.
 */
export type BalanceCells = {
  readonly fixed: string;
  readonly moving: string;
  readonly share: string;
  readonly otherIncome: string;
  readonly yieldHere: string;
  readonly price: string;
  readonly dock?: string;
  readonly rent?: readonly RentStep[];
};

const noAnswer = '"–"';
const rounded = (value: string, places: number): string => `ROUND(ROUND(${value},9),${places})`;
const roundedUp = (value: string, places: number): string =>
  `IF((${value})<0,ROUNDDOWN(ROUND(${value},9),${places}),ROUNDUP(ROUND(${value},9),${places}))`;

export const costPerAreaFormula = (cells: BalanceCells): string =>
  `=${rounded(`${cells.fixed}+${cells.moving}*${cells.share}*${cells.yieldHere}${plusRent(cells)}`, 2)}`;

export const costPerUnitFormula = (cells: BalanceCells): string => {
  const { fixed, moving, share, yieldHere, rent } = cells;
  const perArea = rent === undefined ? fixed : `(${fixed}${plusRent(cells)})`;
  return `=IF(${share}*${yieldHere}=0,${noAnswer},${rounded(`${moving}+${perArea}/(${share}*${yieldHere})`, 2)})`;
};

const plus = (dock: string | undefined): string => (dock === undefined ? "" : `+${dock}`);
const less = (dock: string | undefined): string => (dock === undefined ? "" : `-${dock}`);

export const breakEvenPriceFormula = (cells: BalanceCells): string | null => {
  const { fixed, moving, share, otherIncome, yieldHere, dock, rent } = cells;
  const units = `${share}*${yieldHere}`;
  if (rent !== undefined) {
    const toPay = `(${fixed}-${otherIncome}+(${moving}${plus(dock)})*${units})`;
    return fitting(`=IF(${units}=0,${noAnswer},${leastGross(share, toPay, rent, (gross) => ceiling(`${gross}/${yieldHere}`, 2))})`);
  }
  return `=IF(${units}=0,${noAnswer},${roundedUp(`${moving}${plus(dock)}+(${fixed}-${otherIncome})/(${units})`, 2)})`;
};

export const breakEvenYieldFormula = (cells: BalanceCells): string | null => {
  const { fixed, moving, share, otherIncome, price, dock, rent } = cells;
  const perUnit = `(${price}-${moving}${less(dock)})*${share}`;
  const toPay = `(${fixed}-${otherIncome})`;
  if (rent !== undefined) {
    const needed = leastGross(`(${perUnit}/${price})`, toPay, rent, (gross) => `MAX(0,${ceiling(`${gross}/${price}`, 1)})`);
    return fitting(`=IF(OR(${perUnit}<=0,${price}<=0),${noAnswer},${needed})`);
  }
  return `=IF(${perUnit}<=0,${noAnswer},MAX(0,${roundedUp(`${toPay}/(${perUnit})`, 1)}))`;
};

export const netFormula = (cells: BalanceCells): string => {
  const { fixed, moving, share, otherIncome, yieldHere, price, dock, rent } = cells;
  const lessRent = rent === undefined ? "" : `-${rentFormula(rent, `${price}*${yieldHere}`)}`;
  return `=${rounded(`(${price}-${moving}${less(dock)})*${share}*${yieldHere}+${otherIncome}-${fixed}${lessRent}`, 2)}`;
};

/** The numbers of steps as a formula holds them: far beyond the cent, and short enough for a cell. */
const list = (values: readonly Decimal[]): string => `{${values.map((value) => value.toSignificantDigits(13).toFixed()).join(",")}}`;
const fromOf = (rent: readonly RentStep[]): string => list(rent.map(({ from }) => from));

/** Rent above its base at a gross. */
const rentFormula = (rent: readonly RentStep[], gross: string): string =>
  `SUMPRODUCT(${list(rent.map(({ share }) => share))},(${gross}>${fromOf(rent)})*(${gross}-${fromOf(rent)}))`;
const plusRent = ({ rent, price, yieldHere }: BalanceCells): string =>
  rent === undefined ? "" : `+${rentFormula(rent, `${price}*${yieldHere}`)}`;

/** Rounded up, as `roundedUp` does, with the value said once. */
const ceiling = (value: string, places: 1 | 2): string => {
  const scale = places === 1 ? "10" : "100";
  return `-INT(-ROUND((${value})*${scale},${9 - places}))/${scale}`;
};

/**
 * What `answer` makes of the least gross at which `part` of it has paid so much and the rent that goes by it; without an answer
 * where the landlord takes all of more. The steps that do not pay yet are those before the first that does.
 */
function leastGross(part: string, toPay: string, rent: readonly RentStep[], answer: (gross: string) => string): string {
  const from = fromOf(rent);
  const above = list(rent.map((step) => rentAbove(rent, step.from)));
  const sofar = list(rent.map((_, index) => rent.slice(0, index + 1).reduce((total, { share }) => total.plus(share), zero)));
  const places = `{${rent.map((_, index) => index + 1).join(",")}}`;
  const first = `SUMPRODUCT(MAX((${part}*${from}-${above}>=${toPay})/${places}))`;
  // The step before the first that pays; the last where none does.
  const step = `IF(${first}=0,${rent.length},ROUND(1/MAX(${first},1E-9),0)-1)`;
  const slope = `(${part}-INDEX(${sofar},${step}))`;
  const gross = `(INDEX(${from},${step})+(${toPay}-${part}*INDEX(${from},${step})+INDEX(${above},${step}))/${slope})`;
  return `IF(${step}=0,${answer(`(${toPay}/${part})`)},IF(${slope}<=1E-9,${noAnswer},${answer(gross)}))`;
}

/** Characters that a formula may have. */
const longest = 8_000;
const fitting = (formula: string): string | null => (formula.length > longest ? null : formula);

/** A part of a cell, a price to the cent or a yield to the tenth; all of it as it is. */
export const partFormula = (cell: string, part: string, places: number): string =>
  part === "1" ? `=${cell}` : `=${rounded(`${cell}*${part}`, places)}`;
