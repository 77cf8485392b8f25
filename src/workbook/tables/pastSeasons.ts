/** The table Past seasons: how one field ended in one past year a row. */
import { one } from "../../core/numbers/decimal";
import { area, moneyPerArea, moneyPerUnit, share, yieldPerArea } from "../../core/numbers/units";
import type { PastField } from "../../core/history/pastField";
import { sitesIn } from "../../core/weeds/sites";
import type { Crop, Field } from "../../core/season";
import type { Named } from "../columns/column";
import { pastSeasonColumns } from "../columns/pastSeasons";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";
import { yieldUnitNamed, yieldUnits } from "../yieldUnits";

const { columns } = pastSeasonColumns;

/** What its rows name: fields and crops of today are spelled as today, others as they stand. */
export type PastPlaces = {
  readonly fields: Names;
  readonly crops: Names;
  readonly byField: ReadonlyMap<string, Field>;
  readonly byCrop: ReadonlyMap<string, Crop>;
  readonly seasonYear: string | null;
};

export function readPastSeasons(table: TableReader, { fields, crops, byField, byCrop, seasonYear }: PastPlaces): readonly PastField[] {
  if (!table.hasNeeded(pastSeasonColumns)) return [];
  const seen = new Map<string, Row>();
  const fieldOf = (row: Row) => {
    const typed = row.text(columns.field);
    return typed === null ? null : (fields.spelled(typed) ?? typed);
  };
  return table.rows(
    (row): PastField | null => {
      const season = seasonOf(row);
      const [field, typedCrop, acres] = [
        row.need(columns.field) === null ? null : fieldOf(row),
        row.need(columns.crop),
        row.need(columns.acres),
      ];
      const crop = typedCrop === null ? null : (crops.spelled(typedCrop) ?? typedCrop);
      const hybrid = row.of(columns.hybrid);
      checkUnit(row, crop === null ? undefined : byCrop.get(crop));
      const sitesUsed = sitesIn(row.text(columns.sitesUsed));
      const numbers = numbersOf(row);
      if (season !== null && seasonYear !== null && season > seasonYear)
        return row.lose("past-later", columns.season, { found: season, like: seasonYear });
      if (season === null || field === null || crop === null || acres === null) return null;
      const key = [season, field, crop, hybrid ?? ""].map(plain).join("\n");
      const first = seen.get(key);
      if (first !== undefined) return row.lose("past-twice", columns.field, { found: `${season} ${field}`, other: first.source });
      seen.set(key, row);
      return { season, field, crop, hybrid, area: area(acres), ...numbers, sitesUsed, source: row.source };
    },
    (row) => {
      const field = byField.get(fieldOf(row) ?? "");
      // The proven yield of a field rests on its years where none is entered.
      return field !== undefined && field.provenYield === null ? [{ of: "years" }, { of: "field", name: field.name }] : [{ of: "years" }];
    },
  );
}

/** The year, as typed or of a date that Excel made of it. */
function seasonOf(row: Row): string | null {
  const typed = row.need(columns.season);
  return typed === null ? null : (/(?:^|\D)(\d{4})(?:\D|$)/.exec(typed)?.[1] ?? row.lose("not-a-date", columns.season));
}

/** A yield in another unit than the crop's of today says nothing beside the others. */
function checkUnit(row: Row, crop: Crop | undefined): void {
  const typed = row.text(columns.yieldUnit);
  if (typed === null || crop === undefined) return;
  const unit = yieldUnitNamed(typed, row.areaUnit, crop.yieldUnit);
  if (unit === null || unit === "ton-unclear") row.lose("not-in-list", columns.yieldUnit, { choices: yieldUnits });
  else if (unit !== crop.yieldUnit) row.lose("past-unit", columns.yieldUnit, { like: `${crop.name} in ${crop.yieldUnit}` });
}

function numbersOf(row: Row) {
  const perArea = (column: Parameters<Row["of"]>[0] & Named) => {
    const value = row.number(column, "any");
    return value === null ? null : moneyPerArea(value);
  };
  const [goal, harvested, price, ours] = [
    row.of(columns.goal),
    row.of(columns.yield),
    row.of(columns.price),
    row.of(columns.operatorShare),
  ];
  return {
    goal: goal === null ? null : yieldPerArea(goal),
    yield: harvested === null ? null : yieldPerArea(harvested),
    costs: {
      operating: perArea(columns.operating),
      cash: perArea(columns.cash),
      full: perArea(columns.full),
      cashNeed: perArea(columns.cashNeed),
    },
    planned: perArea(columns.planned),
    price: price === null ? null : moneyPerUnit(price),
    net: perArea(columns.net),
    operatorShare: share(ours ?? one),
    planted: row.of(columns.planted),
    stand: row.of(columns.stand),
    heatUnits: row.of(columns.heatUnits),
    rain: row.of(columns.rain),
  };
}
