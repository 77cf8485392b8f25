/** A place counted as it is being typed: what is wrong with it, what its row will say, and the stand it tells. */
import type { Decimal } from "../../core/numbers/decimal";
import type { Field } from "../../core/season";
import type { AreaUnit } from "../../core/numbers/units";
import { rowLengthOfThousandth, standAt, type CountedPlace } from "../../core/stand/standCount";
import { standCountColumns } from "../../workbook/columns/standCounts";
import { coordinatesFault, isSexagesimal, readDegrees } from "../../workbook/degrees";
import { entryRow, type EntryRow } from "../commands/entryRow";
import type { Format } from "../format";
import { Typed, typedAs, typedNumber } from "../parts/typed";

const { columns } = standCountColumns;

export type CountDraft = {
  readonly date: string;
  readonly how: "length" | "hoop";
  readonly rowWidth: string;
  readonly length: string;
  readonly hoop: string;
  readonly plants: string;
  readonly weak: string;
  readonly part: string;
  readonly partAcres: string;
  readonly partPlanted: string;
  readonly latitude: string;
  readonly longitude: string;
  readonly remark: string;
};
export type CountField = Exclude<keyof CountDraft, "how">;

/** The names of lengths: short ones across, long ones along the row. */
export const lengthUnits: Readonly<Record<AreaUnit, { readonly across: string; readonly along: string }>> = {
  ac: { across: "in", along: "ft" },
  ha: { across: "cm", along: "m" },
};

/** An empty form; row width and length as in the field, a length of row of one thousandth of the area unit. */
export function emptyCount(date: string, field: Field | undefined, unit: AreaUnit, decimalComma: boolean): CountDraft {
  const width = field?.rowWidth ?? null;
  const text = (value: Decimal) => typedAs(value, decimalComma);
  return {
    date,
    how: "length",
    rowWidth: width === null ? "" : text(width),
    length: width === null ? "" : text(rowLengthOfThousandth(width, unit).toDecimalPlaces(2)),
    hoop: "",
    plants: "",
    weak: "",
    part: "",
    partAcres: "",
    partPlanted: "",
    latitude: "",
    longitude: "",
    remark: "",
  };
}

/** The same after one place is added: the next is measured out as this one was, in the same part, said once in acres and planting. */
export const nextCount = (draft: CountDraft): CountDraft => ({
  ...draft,
  plants: "",
  weak: "",
  partAcres: "",
  partPlanted: "",
  latitude: "",
  longitude: "",
  remark: "",
});

export type CountView = {
  readonly faults: { readonly [F in CountField]?: string };
  /** The stand at this place, in words; empty until it can be said. */
  readonly says: string;
  /** `null` while there are faults. */
  readonly row: EntryRow | null;
};

export function countView(draft: CountDraft, field: Field, decimalComma: boolean, format: Format): CountView {
  const typed = new Typed<CountField>(draft, decimalComma);
  const { faults } = typed;
  if (!/^\d{4}-\d\d-\d\d$/.test(draft.date)) faults.date = "Enter the day of the count.";
  const byLength = draft.how === "length";
  const size = (name: "rowWidth" | "length" | "hoop") => typed.number(name, { needed: true, aboveZero: true });
  const rowWidth = byLength ? size("rowWidth") : null;
  const length = byLength ? size("length") : null;
  const hoop = byLength ? null : size("hoop");
  const plants = typed.number("plants", { needed: true });
  if (draft.plants.trim() === "") faults.plants = "Enter a number, zero if there is none.";
  const weak = typed.number("weak");
  const partAcres = typed.number("partAcres", { aboveZero: true });
  if (partAcres !== null && draft.part.trim() === "") faults.part = "Name the part that has so many acres.";
  const partPlanted = draft.partPlanted === "" ? null : typed.day("partPlanted");
  if (partPlanted !== null && draft.part.trim() === "") faults.partPlanted = "Name the part that was planted then.";
  else if (partPlanted !== null && partPlanted > draft.date)
    faults.partPlanted = "The count is from before that day and would count for nothing.";
  const [latitude, longitude] = coordinatesTyped(draft, decimalComma, faults);
  const place: CountedPlace | null =
    rowWidth !== null && length !== null ? { rowWidth, length } : hoop !== null ? { hoopDiameter: hoop } : null;
  if (Object.keys(faults).length > 0 || place === null || plants === null) return { faults, says: "", row: null };

  const { across, along } = lengthUnits[format.areaUnit];
  const stand = standAt({ place, plants, weak: weak ?? plants.minus(plants) }, format.areaUnit);
  const { quantity } = format;
  const measured =
    "hoopDiameter" in place
      ? `a hoop of ${quantity(place.hoopDiameter)} ${across}`
      : `${quantity(place.length)} ${along} of row, ${quantity(place.rowWidth)} ${across} wide`;
  return {
    faults,
    says:
      `${quantity(plants)}${weak === null || weak.isZero() ? "" : ` and ${quantity(weak)} weak`} on ${measured}: ` +
      `${format.plants(stand)} plants per ${format.areaName}.`,
    row: entryRow([
      [columns.field, field.name],
      [columns.date, { day: draft.date }],
      [columns.rowWidth, rowWidth],
      [columns.length, length],
      [columns.hoop, hoop],
      [columns.plants, plants],
      [columns.weak, weak],
      [columns.latitude, latitude],
      [columns.longitude, longitude],
      [columns.part, draft.part.trim()],
      [columns.partAcres, partAcres],
      [columns.partPlanted, partPlanted === null ? null : { day: partPlanted }],
      [columns.remark, draft.remark.trim()],
    ]),
  };
}

/** Both coordinates or none; what is wrong goes to the boxes. */
function coordinatesTyped(
  draft: CountDraft,
  decimalComma: boolean,
  faults: { [F in CountField]?: string },
): readonly [Decimal, Decimal] | readonly [null, null] {
  const read = (of: "latitude" | "longitude"): Decimal | null => {
    const text = draft[of].trim();
    if (text === "") return null;
    const value = isSexagesimal(text) ? readDegrees(text) : typedNumber(text, decimalComma);
    if (value === null) faults[of] = "Enter degrees, such as 41.5868.";
    return value;
  };
  const [latitude, longitude] = [read("latitude"), read("longitude")];
  for (const [of, value, other] of [
    ["latitude", latitude, draft.longitude],
    ["longitude", longitude, draft.latitude],
  ] as const)
    if (value === null && faults[of] === undefined && other.trim() !== "") faults[of] = "Enter both, or neither.";
  if (latitude === null || longitude === null) return [null, null];
  const fault = coordinatesFault({ latitude, longitude });
  if (fault === "swapped") faults.latitude = "Latitude and longitude are the wrong way round.";
  else if (fault !== null) faults[fault] = "No field lies there.";
  return [latitude, longitude];
}
