/** The table Sales, and units that a row of grain names. */
import { one, type Decimal } from "../../core/numbers/decimal";
import type { IsoDate } from "../../core/row";
import type { Crop, Sale } from "../../core/season";
import { cropQuantity, moneyPerUnit } from "../../core/numbers/units";
import type { Named } from "../columns/column";
import { saleColumns } from "../columns/sales";
import { monthNamed, monthOfYear } from "../dates";
import type { Subject } from "../problem";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { yieldUnitNamed, yieldUnits } from "../yieldUnits";
import { cropFactor } from "./crops";

const { columns } = saleColumns;

export function readSales(table: TableReader, names: Names, crops: ReadonlyMap<string, Crop>, seasonYear: string | null): readonly Sale[] {
  if (!table.hasNeeded(saleColumns)) return [];
  return table.rows(
    (row): Sale | null => {
      const name = row.needName(columns.crop, names);
      const date = row.need(columns.date);
      const quantity = row.need(columns.quantity);
      const price = row.need(columns.price);
      if (quantity?.isZero() === true && price?.isZero() === false) row.fault("quantity-zero", columns.quantity, { like: price.toFixed() });
      const crop = name === null ? undefined : crops.get(name);
      const factor = crop === undefined ? null : unitFactor(row, columns.unit, crop);
      const delivered = deliveryOf(row, date, seasonYear);
      const cropYear = cropYearOf(row);
      if (cropYear !== null && seasonYear !== null && cropYear > seasonYear)
        return row.lose("crop-year-later", columns.cropYear, { like: seasonYear });
      if (name === null || date === null || quantity === null || price === null || factor === null) return null;
      return {
        crop: name,
        date,
        quantity: cropQuantity(quantity.times(factor)),
        price: moneyPerUnit(price.div(factor)),
        delivered,
        cropYear,
        kind: row.of(columns.kind),
        source: row.source,
      };
    },
    (row) => named("crop", names.spelled(String(row.cell(columns.crop)))),
  );
}

/** The year in which the grain grew, as typed or of a date that Excel made of it. */
function cropYearOf(row: Row): string | null {
  const typed = row.of(columns.cropYear);
  return typed === null ? null : (/\d{4}/.exec(typed)?.[0] ?? row.fault("not-a-date", columns.cropYear));
}

const named = (of: "crop", name: string | null): readonly Subject[] => (name === null ? [{ of: "farm" }] : [{ of, name }]);

/** Yield units in one of the unit that the row names; 1 where it names none. */
export function unitFactor(row: Row, column: Named, crop: Crop): Decimal | null {
  const typed = row.text(column);
  if (typed === null) return one;
  const unit = yieldUnitNamed(typed, row.areaUnit, crop.yieldUnit);
  if (unit === "ton-unclear") return row.lose(unit, column);
  if (unit === null) return row.lose("not-in-list", column, { choices: yieldUnits });
  return cropFactor(unit, crop) ?? row.lose("weight-missing", column);
}

/** The first day of the month of delivery: the next such month from the sale on, where only a month is named. */
function deliveryOf(row: Row, sold: IsoDate | null, seasonYear: string | null): IsoDate | null {
  const typed = row.of(columns.deliveryMonth);
  if (typed === null) return null;
  const month = monthNamed(typed);
  if (month === null) return monthOfYear(typed) ?? row.date(columns.deliveryMonth);
  const year = sold?.slice(0, 4) ?? seasonYear;
  if (year === null) return null;
  const inYear = (of: string) => `${of}-${String(month).padStart(2, "0")}-01`;
  return sold !== null && inYear(year).slice(0, 7) < sold.slice(0, 7) ? inYear(String(Number(year) + 1)) : inYear(year);
}
