/** Numbers typed in a form, with what is wrong said of each. */
import type { Decimal } from "../../core/numbers/decimal";
import { readNumber } from "../../workbook/numbers";

export type Faults<Name extends string> = { readonly [N in Name]?: string };

/**
 * The number that a person means by what they typed; `null` where it is none. It is read as a cell of the workbook is, and where
 * only a decimal comma makes a number of it, as one with a decimal comma: here the row that will be written is shown at once.
 *
 * @param currency of the workbook's money, so that a sign or code of another one makes no number of it; left out where none is asked
 */
export function typedNumber(text: string, decimalComma: boolean, currency?: string): Decimal | null {
  const reading = readNumber(text, { decimalComma, ...(currency !== undefined && { currency }) });
  if (reading === "decimal-comma") return typedNumber(text, true, currency);
  return typeof reading === "string" || reading.percent ? null : reading.value;
}

/** A number as it would be typed, to begin a box with: in a workbook of decimal commas a point would be taken for thousands. */
export const typedAs = (value: Decimal, decimalComma: boolean): string =>
  decimalComma ? value.toFixed().replace(".", ",") : value.toFixed();

export type Wanted = {
  readonly needed?: boolean;
  readonly aboveZero?: boolean;
  readonly mayBeNegative?: boolean;
  /** The box asks for percent, so that a sign behind the number says nothing new; elsewhere it makes no number of it. */
  readonly isPercent?: boolean;
};

/** Reads the boxes of a form one by one and gathers their faults. */
export class Typed<Name extends string> {
  readonly faults: { [N in Name]?: string } = {};

  constructor(
    private readonly draft: { readonly [N in Name]?: string },
    private readonly decimalComma: boolean,
    /** Of the money that boxes of the form ask for; left out where none does. */
    private readonly currency?: string,
  ) {}

  /** The number in a box, zero or more unless it may be negative; `null` where it is blank or no such number. */
  number(name: Name, { needed = false, aboveZero = false, mayBeNegative = false, isPercent = false }: Wanted = {}): Decimal | null {
    const text = (this.draft[name] ?? "").trim();
    const typed = isPercent ? text.replace(/\s*%$/, "") : text;
    if (typed === "") {
      if (needed) this.faults[name] = aboveZero ? "Enter a number above zero." : "Enter a number.";
      return null;
    }
    const value = typedNumber(typed, this.decimalComma, this.currency);
    if (value === null)
      this.faults[name] = typedNumber(typed, this.decimalComma) === null ? "Enter a number." : `Enter it in ${this.currency}.`;
    else if (aboveZero && value.lte("0")) this.faults[name] = "Enter a number above zero.";
    else if (!mayBeNegative && value.isNegative()) this.faults[name] = "Enter zero or more.";
    else return value;
    return null;
  }

  /** The day in a box, as `YYYY-MM-DD`; `null` where there is none. */
  day(name: Name): string | null {
    const typed = this.draft[name] ?? "";
    if (/^\d{4}-\d\d-\d\d$/.test(typed)) return typed;
    this.faults[name] = "Enter a date.";
    return null;
  }

  get isSound(): boolean {
    return Object.keys(this.faults).length === 0;
  }
}
