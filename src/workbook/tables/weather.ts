/** The table Weather: one day at one place a row. */
import { Decimal } from "../../core/numbers/decimal";
import { inUnit, type TemperatureUnit } from "../../core/weather/heatUnits";
import type { WeatherDay } from "../../core/weather/record";
import { weatherColumns } from "../columns/weather";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";

const { date: dateColumn, high: highColumn, low: lowColumn, rain: rainColumn, place: placeColumn } = weatherColumns.columns;
const weather = () => [{ of: "weather" } as const];

/** No day on land where corn grows is hotter or colder, °F: beyond it the unit is another, or a point is missing. */
const coldest = new Decimal("-70");
const hottest = new Decimal("135");

export function readWeather(table: TableReader, unit: TemperatureUnit): readonly WeatherDay[] {
  if (!table.hasNeeded(weatherColumns)) return [];
  const seen = new Map<string, Row>();
  return table.rows((row): WeatherDay | null => {
    const date = row.need(dateColumn);
    const [high, low] = [temperatureOf(row, highColumn, unit), temperatureOf(row, lowColumn, unit)];
    const [rain, place] = [row.of(rainColumn), row.of(placeColumn)];
    if (high !== null && low !== null && low.gt(high)) return row.lose("low-above-high", lowColumn, { like: high.toFixed() });
    if (date === null) return null;
    const key = `${plain(place ?? "")}\n${date}`;
    const first = seen.get(key);
    if (first !== undefined) return row.lose("day-twice", dateColumn, { found: date, other: first.source });
    seen.set(key, row);
    return { date, place, high, low, rain, source: row.source };
  }, weather);
}

/** A temperature; a blank one is a day without, which a record may well have. */
function temperatureOf(row: Row, column: typeof highColumn, unit: TemperatureUnit): Decimal | null {
  const value = row.of(column);
  if (value === null) return null;
  const fahrenheit = inUnit(value, unit, "F");
  return fahrenheit.lt(coldest) || fahrenheit.gt(hottest) ? row.fault("temperature-unlike", column, { like: unit }) : value;
}
