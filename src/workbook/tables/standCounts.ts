/** The table Stand counts: one place counted a row. */
import { zero } from "../../core/numbers/decimal";
import type { Field } from "../../core/season";
import type { CountedPlace, StandCount } from "../../core/stand/standCount";
import { standCountColumns } from "../columns/standCounts";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";

const { columns } = standCountColumns;

export function readStandCounts(table: TableReader, names: Names, fields: ReadonlyMap<string, Field>): readonly StandCount[] {
  if (!table.hasNeeded(standCountColumns)) return [];
  return table.rows(
    (row): StandCount | null => {
      const field = row.needName(columns.field, names);
      const date = row.need(columns.date);
      const plants = row.need(columns.plants);
      const place = placeOf(row, field === null ? undefined : fields.get(field));
      const weak = row.of(columns.weak) ?? zero;
      if (field === null || date === null || plants === null || place === null) return null;
      return { field, date, place, plants, weak, remark: row.of(columns.remark), source: row.source };
    },
    (row) => {
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
