/** What the sentences of a field are told from, and how their figures are written. */
import { hundred, type Decimal } from "../../core/numbers/decimal";
import type { CropFigures, FieldFigures } from "../../core/figures";
import type { Field } from "../../core/season";
import type { SeasonReport } from "../seasonReport";
import { shownMoney, shownQuantity, shownStand, shownYield } from "../shown";
import { grouped } from "../sheets/amounts";

export type Teller = {
  readonly report: SeasonReport;
  readonly field: FieldFigures;
  readonly crop: CropFigures;
  readonly entry: Field;
  readonly day: (date: string) => string;
};

export const yieldWords = (value: Decimal): string => grouped(shownYield(value)).replace(/^(-?[\d,]+)$/, "$1.0");
export const plants = (value: Decimal): string => grouped(shownStand(value));
export const quantity = (value: Decimal): string => grouped(shownQuantity(value));
export const money = (value: Decimal): string => shownMoney(value).toFixed(2);
export const percent = (value: Decimal): string => `${grouped(shownYield(value.times(hundred)))} %`;
export const areaWord = ({
  report: {
    season: { settings },
  },
}: Teller): string => (settings.areaUnit === "ac" ? "acre" : "hectare");

export const daysWords = (days: Decimal): string => `${days.toFixed()} ${days.eq("1") ? "day" : "days"}`;
