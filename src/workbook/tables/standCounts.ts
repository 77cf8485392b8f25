/** The table Stand counts: one place counted a row. */
import { zero } from "../../core/decimal";
import type { Field } from "../../core/season";
import type { CountedPlace, StandCount } from "../../core/stand/standCount";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";

export function readStandCounts(table: TableReader, names: Names, fields: ReadonlyMap<string, Field>): readonly StandCount[] {
  if (!table.needs("Field", "Date", "Plants")) return [];
  return table.rows((row): StandCount | null => {
    const field = row.needName("Field", names);
    const date = row.needDate("Date");
    const plants = row.needNumber("Plants");
    const place = placeOf(row, field === null ? undefined : fields.get(field));
    const doubtful = row.number("Doubtful plants") ?? zero;
    if (field === null || date === null || plants === null || place === null) return null;
    return { field, date, place, plants, doubtful, remark: row.text("Remark"), source: row.source };
  }, (row) => {
    const name = names.spelled(String(row.cell("Field")));
    return name === null ? [{ of: "farm" }] : [{ of: "field", name }];
  });
}

/** A hoop, or a length of row at the row width of the place or of the field. */
function placeOf(row: Row, field: Field | undefined): CountedPlace | null {
  const hoop = row.number("Hoop diameter", "above zero");
  if (hoop !== null) {
    row.besides("Length", "Hoop diameter");
    return { hoopDiameter: hoop };
  }
  const length = row.number("Length", "above zero");
  const rowWidth = row.number("Row width", "above zero") ?? field?.rowWidth ?? null;
  return length === null || rowWidth === null ? row.lose("place-missing") : { rowWidth, length };
}
