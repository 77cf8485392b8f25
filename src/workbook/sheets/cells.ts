/** Cells of our result sheets: values already rounded as they are shown, so that a cell and the pane never differ. */
import { Decimal } from "../../core/numbers/decimal";
import type { CellStyle, SheetCell } from "../resultSheet";
import { shownMoney, shownPriceNeeded, shownQuantity, shownStand, shownYield, shownYieldNeeded } from "../shown";

const moneyFormat = "#,##0.00;-#,##0.00;0.00";
const yieldFormat = "#,##0.0";

export const text = (value: string, style: CellStyle = {}): SheetCell => ({ value, style });
export const blank: SheetCell = { value: "" };

/** A cell in which a figure has no answer. */
const none = (style: CellStyle): SheetCell => ({ value: "–", style: { align: "right", ...style } });

const number =
  (format: string, shown: (value: Decimal) => Decimal) =>
  (value: Decimal | null, style: CellStyle = {}): SheetCell =>
    value === null ? none(style) : { value: Number(shown(value).toFixed()), style: { numberFormat: format, align: "right", ...style } };

export const moneyCell = number(moneyFormat, shownMoney);
/** Money where nothing is nothing: a dash, so that the eye finds what there is. */
export const moneyOrDash = (value: Decimal, style: CellStyle = {}): SheetCell =>
  shownMoney(value).isZero() ? none(style) : moneyCell(value, style);
/** The difference of two amounts as they are shown, so that a reader who subtracts on paper finds the same. */
export const changeOf = (from: Decimal, to: Decimal): Decimal => shownMoney(to).minus(shownMoney(from));
/** Money to the nearest whole, for large sums. */
export const wholeMoneyCell = number("#,##0;-#,##0;–", (value) => value.toDecimalPlaces(0, Decimal.ROUND_HALF_UP));
export const wholeQuantityCell = number("#,##0", (value) => value.toDecimalPlaces(0, Decimal.ROUND_HALF_UP));
export const priceNeededCell = number(moneyFormat, shownPriceNeeded);
export const yieldCell = number(yieldFormat, shownYield);
export const yieldNeededCell = number(yieldFormat, shownYieldNeeded);
export const quantityCell = number("#,##0.##", shownQuantity);
export const areaCell = number("#,##0.0", shownYield);
/** A fraction as a percentage of one decimal. */
export const percentCell = number("0.0%", (value) => value.toDecimalPlaces(3, Decimal.ROUND_HALF_UP));
export const standCell = number("#,##0", shownStand);

export const title = (value: string): readonly SheetCell[] => [text(value, { bold: true, size: 14 })];
export const note = (value: string): readonly SheetCell[] => [text(value, { italic: true })];
export const section = (value: string): readonly SheetCell[] => [text(value, { bold: true, size: 12 })];

/** A row of column headings: the first to the left, the figures to the right. */
export const headings = (...names: readonly string[]): readonly SheetCell[] =>
  names.map((name, index) =>
    text(name, { bold: true, fill: "heading", wrap: true, border: "bottom", align: index === 0 ? "left" : "right" }),
  );

/** The style of a subtotal. */
export const subtotal: CellStyle = { bold: true, border: "top", fill: "soft" };
