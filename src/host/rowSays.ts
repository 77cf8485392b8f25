import type { Cell } from "../../workbook/cell";

/** Whether Excel gives back what a cell was given: numbers to the fifteen digits that it keeps. */
export const sameCell = (one: Cell, other: Cell): boolean =>
  one === other || (typeof one === "number" && typeof other === "number" && one.toPrecision(15) === other.toPrecision(15));

/** Whether Excel works a cell out; text that begins like a formula is given as both the same. */
export const isFormula = (formula: unknown, value: unknown): boolean => typeof formula === "string" && formula.startsWith("=") && formula !== value;
