/** The table Stand counts: one spot counted a row. */
import { zero } from "../../core/numbers/decimal";
import { area } from "../../core/numbers/units";
import type { Field } from "../../core/season";
import type { CountedPart, CountedPlace, Coordinates, StandCount } from "../../core/stand/standCount";
import { standCountColumns } from "../columns/standCounts";
import { coordinatesFault } from "../degrees";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";

const { columns } = standCountColumns;

export function readStandCounts(table: TableReader, names: Names, fields: ReadonlyMap<string, Field>): readonly StandCount[] {
  if (!table.hasNeeded(standCountColumns)) return [];
  const spelled = new Map<string, string>();
  return table.rows(
    (row): StandCount | null => {
      const field = row.needName(columns.field, names);
      const date = row.need(columns.date);
      const plants = row.need(columns.plants);
      const place = placeOf(row, field === null ? undefined : fields.get(field));
      const weak = row.of(columns.weak) ?? zero;
      const part = partOf(row, (name) => {
        const key = `${field ?? ""}\n${plain(name)}`;
        return spelled.get(key) ?? (spelled.set(key, name), name);
      });
      if (field === null || date === null || plants === null || place === null) return null;
      return { field, date, place, plants, weak, part, spot: spotOf(row), remark: row.of(columns.remark), source: row.source };
    },
    (row, column) => {
      if (column === columns.latitude.heading || column === columns.longitude.heading) return [{ of: "map" }];
      const name = names.spelled(String(row.cell(columns.field)));
      return name === null ? [{ of: "farm" }] : [{ of: "field", name }];
    },
  );
}

/** A hoop, or a length of row at the row width of the place or of the field. */
function placeOf(row: Row, field: Field | undefined): CountedPlace | null {
  const hoop = row.of(columns.hoop);
  if (hoop !== null) {
    row.besides(columns.length, columns.hoop);
    return { hoopDiameter: hoop };
  }
  const length = row.of(columns.length);
  const rowWidth = row.of(columns.rowWidth) ?? field?.rowWidth ?? null;
  return length === null || rowWidth === null ? row.lose("place-missing") : { rowWidth, length };
}

/** Acres and planting of a part are nobody's without its name. */
function partOf(row: Row, spell: (name: string) => string): CountedPart | null {
  const [name, acres, planted] = [row.of(columns.part), row.of(columns.partAcres), row.of(columns.partPlanted)];
  if (name !== null) return { name: spell(name), area: acres === null ? null : area(acres), planted };
  if (acres !== null) return row.fault("part-unnamed", columns.part, { found: acres.toFixed() });
  return planted === null ? null : row.fault("part-unnamed", columns.part, { found: planted });
}

/** Both coordinates, each where it can be; the spot is left off the map otherwise and counts all the same. */
function spotOf(row: Row): Coordinates | null {
  const [latitude, longitude] = [row.of(columns.latitude), row.of(columns.longitude)];
  if (latitude === null && longitude === null) return null;
  if (latitude === null || longitude === null) {
    const [blank, filled] = latitude === null ? [columns.latitude, columns.longitude] : [columns.longitude, columns.latitude];
    return row.isFaulty(blank) ? null : row.fault("coordinate-alone", blank, { found: "", like: filled.heading });
  }
  const fault = coordinatesFault({ latitude, longitude });
  if (fault === null) return { latitude, longitude };
  if (fault === "swapped")
    return row.fault("coordinates-swapped", columns.latitude, { found: `${latitude.toFixed()}, ${longitude.toFixed()}` });
  const found = fault === "latitude" ? latitude : longitude;
  return row.fault("coordinates-impossible", columns[fault], { found: found.toFixed() });
}
