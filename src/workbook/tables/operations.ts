/** The tables Operations and Other costs. */
import { one } from "../../core/numbers/decimal";
import type { IsoDate } from "../../core/row";
import type { Operation, OtherCost } from "../../core/season";
import { area, money, moneyPerArea } from "../../core/numbers/units";
import { operationColumns } from "../columns/operations";
import { otherCostColumns } from "../columns/otherCosts";
import type { Named } from "../columns/column";
import { monthNamed, monthOfYear } from "../dates";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { nearest } from "../words";
import { warnOfArea } from "./items";
import { needsTarget, targetOf, targetSubjects, type TargetPlaces } from "./targets";

const { columns } = operationColumns;
const { columns: other } = otherCostColumns;

export function readOperations(table: TableReader, places: TargetPlaces, machines: Names): readonly Operation[] {
  if (!needsTarget(table) || !table.needs(columns.operation, columns.status)) return [];
  return table.rowsAlone(
    (row): Operation | null => {
      const target = targetOf(row, table, places);
      const operation = row.need(columns.operation);
      const status = row.need(columns.status);
      const acres = row.of(columns.acres);
      if (target !== null && acres !== null) warnOfArea(row, columns.acres, acres, target, places);
      const passes = row.of(columns.passes) ?? one;
      const cost = costOf(row, machines);
      const kind = row.of(columns.kind) ?? "custom work";
      const date = row.of(columns.date);
      if (target === null || operation === null || status === null || cost === null) return null;
      return { target, operation, area: acres === null ? null : area(acres), passes, cost, date, status, kind, source: row.source };
    },
    (row) => targetSubjects(row, table, places),
  );
}

function costOf(row: Row, machines: Names): Operation["cost"] | null {
  const machine = row.of(columns.machine);
  if (machine !== null) {
    const named = row.needName(columns.machine, machines);
    for (const column of [columns.rate, columns.hours]) row.besides(column, columns.machine);
    return named === null ? null : { basis: "machine", machine: named };
  }
  const rate = row.of(columns.rate);
  if (rate === null) return row.lose("cost-missing");
  const basis = row.of(columns.basis) ?? "per acre";
  if (basis !== "per hour") row.besides(columns.hours, columns.basis);
  if (basis === "per acre") return { basis, rate: moneyPerArea(rate) };
  if (basis === "lump sum") return { basis, rate: money(rate) };
  const hours = row.of(columns.hours);
  if (hours?.isZero() === true && !rate.isZero()) row.fault("quantity-zero", columns.hours, { like: rate.toFixed() });
  return hours === null ? row.lose("hours-missing") : { basis, rate: money(rate), hours };
}

export function readOtherCosts(table: TableReader, places: TargetPlaces, seasonYear: string | null): readonly OtherCost[] {
  if (!table.hasNeeded(otherCostColumns)) return [];
  return table.rows(
    (row): OtherCost | null => {
      const item = row.need(other.item);
      const kind = row.need(other.kind);
      const amount = row.need(other.amount);
      const basis = row.need(other.basis);
      const shared = sharedOver(row, places);
      const cash = row.of(other.cash) !== "no";
      const paidOn = monthOf(row, other.month, seasonYear);
      if (item === null || kind === null || amount === null || basis === null || shared === null) return null;
      return { item, kind, amount, basis, ...shared, cash, paidOn, source: row.source };
    },
    (row) => sharedSubjects(row, places),
  );
}

const byWords = /[\s,;]*\bby\s+(acres?|hectares?|revenue)\s*$/i;
const allWords = /^(all|farm|whole farm|all fields)?$/i;

/** "all", a crop or a field, perhaps followed by "by acres" or "by revenue". */
function sharedOver(row: Row, places: TargetPlaces): Pick<OtherCost, "over" | "by"> | null {
  const typed = row.of(other.sharedOver) ?? "";
  const by = /revenue/i.test(byWords.exec(typed)?.[1] ?? "") ? "revenue" : "acres";
  const over = typed.replace(byWords, "").trim();
  if (allWords.test(over)) return { over: { all: true }, by };
  const target = places.named(over);
  if (target !== null) return { over: target, by };
  const like = nearest(over, [...places.fieldNames.all, ...places.cropNames.all]);
  return row.lose("unknown-name", other.sharedOver, like === null ? {} : { like });
}

function sharedSubjects(row: Row, places: TargetPlaces): ReturnType<typeof targetSubjects> {
  const over = String(row.cell(other.sharedOver)).replace(byWords, "").trim();
  const target = allWords.test(over) ? null : places.named(over);
  return target === null ? [{ of: "farm" }] : ["field" in target ? { of: "field", name: target.field } : { of: "crop", name: target.crop }];
}

/** The first day of the month named, in the season's year; or the date itself. */
export function monthOf(row: Row, column: Named, seasonYear: string | null): IsoDate | null {
  const typed = row.text(column);
  if (typed === null) return null;
  const month = monthNamed(typed);
  if (month === null) return monthOfYear(typed) ?? row.date(column);
  return seasonYear === null ? row.fault("year-missing", column) : `${seasonYear}-${String(month).padStart(2, "0")}-01`;
}
