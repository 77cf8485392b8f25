/** Spots of a file on their way into the table Stand counts: what would be written, what is there already, what was not read. */
import { Decimal } from "../../core/numbers/decimal";
import type { AreaUnit } from "../../core/numbers/units";
import type { IsoDate } from "../../core/row";
import type { Field, Season } from "../../core/season";
import type { Coordinates } from "../../core/stand/standCount";
import { standCountColumns } from "../../workbook/columns/standCounts";
import { coordinatesFault, isSexagesimal, readDegrees } from "../../workbook/degrees";
import { readDate } from "../../workbook/dates";
import { plain, plainHeading } from "../../workbook/words";
import { entryRow, type EntryRow } from "../commands/entryRow";
import { Typed, typedNumber } from "../parts/typed";
import { pointsFile, type PointRecord, type PointsFile } from "./pointsFile";

const { columns } = standCountColumns;

/** What widths and lengths of a file are in: inches with feet, or centimetres with metres. */
export const sizeUnits = ["in and ft", "cm and m"] as const;
export type SizeUnit = (typeof sizeUnits)[number];

export type FileSpotsDraft = {
  readonly text: string;
  /** Of sizes in the file, where its headings do not say. */
  readonly unit: SizeUnit | null;
  /** What was measured out at each spot, and when, where the file does not say. */
  readonly how: "length" | "hoop";
  readonly rowWidth: string;
  readonly length: string;
  readonly hoop: string;
  readonly date: string;
};
export type FileSpotsBox = "rowWidth" | "length" | "hoop" | "date";

export type FileSpotsView = {
  readonly fault: string | null;
  readonly asks: { readonly unit: boolean; readonly size: boolean; readonly date: boolean };
  readonly faults: { readonly [Box in FileSpotsBox]?: string };
  /** What was found, in sentences. */
  readonly says: readonly string[];
  /** The rows to add; `null` where there is nothing to add, or something to answer first. */
  readonly rows: readonly EntryRow[] | null;
};

type Known = "field" | "date" | "rowWidth" | "length" | "hoop" | "plants" | "weak" | "part" | "partAcres" | "partPlanted" | "remark";
const known: readonly Known[] = [
  "field",
  "date",
  "rowWidth",
  "length",
  "hoop",
  "plants",
  "weak",
  "part",
  "partAcres",
  "partPlanted",
  "remark",
];
/** Words of phones and surveying programs, besides those that growers write (common practice, from memory). */
const more: Readonly<Partial<Record<Known, readonly string[]>>> = {
  date: ["time", "timestamp", "datetime", "created", "createdat", "recorded", "collected", "observed"],
  plants: ["plants", "plantscounted", "alive", "living"],
  remark: ["notes", "note", "description", "desc", "comment", "comments", "label"],
};
/** A name of a point is a remark; that of a field only where a field has it. */
const pointName = /^(name|title|waypoint)$/;
const perArea = /peracre|perhectare|\/ac|\/ha|population/;
const mostNamed = 5;
const centimetresInInch = "2.54";
const metresInFoot = "0.3048";
const hectaresInAcre = "0.40468564224";

type Meant = ReadonlyMap<Known, string>;

/** What the headings of a file mean, each at most one of our columns. */
function meaningOf(headings: readonly string[]): Meant {
  const meant = new Map<Known, string>();
  for (const heading of headings) {
    const word = plainHeading(heading);
    if (pointName.test(word) || perArea.test(plain(heading))) continue;
    const found = known.find((of) => {
      const { heading: ours, was = [], words = [] } = columns[of];
      return [ours, ...was].some((each) => plainHeading(each) === word) || words.includes(word) || more[of]?.includes(word) === true;
    });
    if (found !== undefined && !meant.has(found)) meant.set(found, heading);
  }
  const name = headings.find((heading) => pointName.test(plainHeading(heading)));
  if (name !== undefined && !meant.has("remark")) meant.set("remark", name);
  return meant;
}

/** What a heading says of its unit, in brackets. */
function unitOf(heading: string): SizeUnit | null {
  const said = plain(/[([]([^)\]]*)/.exec(heading)?.[1] ?? "");
  if (/^(in|inch|inches|"|ft|feet|foot|')$/.test(said)) return "in and ft";
  return /^(cm|centimet(er|re)s?|m|met(er|re)s?)$/.test(said) ? "cm and m" : null;
}

export function fileSpotsView(draft: FileSpotsDraft, field: Field, season: Season, decimalComma: boolean): FileSpotsView {
  const none: FileSpotsView = { fault: null, asks: { unit: false, size: false, date: false }, faults: {}, says: [], rows: null };
  if (draft.text.trim() === "") return none;
  const file = pointsFile(draft.text);
  if ("fault" in file) return { ...none, fault: file.fault };
  const meant = meaningOf(file.headings);
  if (!meant.has("plants")) {
    const standing = file.headings.find((heading) => perArea.test(plain(heading)));
    return {
      ...none,
      fault:
        standing === undefined
          ? "No heading says how many plants were counted, so nothing of it is read."
          : `“${standing}” is plants by area. A spot needs the plants that were counted, on a length of row or in a hoop.`,
    };
  }
  const sizes = (["rowWidth", "length", "hoop"] as const).flatMap((of) => meant.get(of) ?? []);
  const hasSize = meant.has("length") || meant.has("hoop");
  const asks = { unit: sizes.some((heading) => unitOf(heading) === null), size: !hasSize, date: !meant.has("date") };
  const typed = new Typed<FileSpotsBox>(draft, decimalComma);
  const size = (box: "rowWidth" | "length" | "hoop") => typed.number(box, { needed: true, aboveZero: true });
  const measured = hasSize
    ? null
    : draft.how === "hoop"
      ? { rowWidth: null, length: null, hoop: size("hoop") }
      : { rowWidth: size("rowWidth"), length: size("length"), hoop: null };
  const day = asks.date ? typed.day("date") : null;
  const answers: Answers = { meant, file, field, season, unit: draft.unit, measured, day };
  const unit = asks.unit && draft.unit === null ? ["Choose what its widths and lengths are in, and nothing is guessed."] : [];
  if (!typed.isSound || unit.length > 0) return { ...none, asks, faults: typed.faults, says: unit };
  return { ...none, asks, ...sorted(answers) };
}

type Measured = { readonly rowWidth: Decimal | null; readonly length: Decimal | null; readonly hoop: Decimal | null };
type Answers = {
  readonly meant: Meant;
  readonly file: PointsFile;
  readonly field: Field;
  readonly season: Season;
  readonly unit: SizeUnit | null;
  readonly measured: Measured | null;
  readonly day: IsoDate | null;
};
type Spot = { readonly field: string; readonly date: IsoDate; readonly plants: Decimal; readonly at: Coordinates; readonly row: EntryRow };

function sorted(answers: Answers): Pick<FileSpotsView, "says" | "rows"> {
  const { file, meant, season } = answers;
  const read = file.points.map((point) => ({ point, spot: spotOf(point, answers) }));
  const unread = [
    ...file.unread,
    ...read.flatMap(({ point, spot }) => (typeof spot === "string" ? [{ named: point.named, why: spot }] : [])),
  ].map(({ named, why }) => `${named}, ${why}`);
  const keyOf = ({ field, date, plants, at }: Omit<Spot, "row">) =>
    [plain(field), date, plants.toFixed(), at.latitude.toFixed(), at.longitude.toFixed()].join("\n");
  const there = new Set(season.standCounts.flatMap(({ spot, ...count }) => (spot === null ? [] : [keyOf({ ...count, at: spot })])));
  const [added, doubled]: [Spot[], number[]] = [[], []];
  for (const { spot } of read) {
    if (typeof spot === "string") continue;
    if (there.has(keyOf(spot))) doubled.push(1);
    else added.push(spot);
    there.add(keyOf(spot));
  }
  const used = new Set(meant.values());
  const left = file.headings.filter((heading) => !used.has(heading));
  const fields = [...new Set(added.map(({ field }) => field))];
  return {
    says: [
      added.length === 0
        ? "No spot of it is new."
        : `${added.length === 1 ? "One spot" : `${added.length} spots`} to add in ${named(fields)}, ${days(added.map(({ date }) => date))}.`,
      ...(doubled.length === 0 ? [] : [`There already, alike, or twice in the file: ${doubled.length}.`]),
      ...(unread.length === 0 ? [] : [`Not read: ${named(unread)}.`]),
      ...(left.length === 0 ? [] : [`Columns that are not read: ${named(left)}.`]),
    ],
    rows: added.length === 0 ? null : added.map(({ row }) => row),
  };
}

const named = (all: readonly string[]): string =>
  `${all.slice(0, mostNamed).join("; ")}${all.length > mostNamed ? `; and ${all.length - mostNamed} more` : ""}`;

function days(all: readonly IsoDate[]): string {
  const inOrder = [...all].sort();
  const [first, last] = [inOrder[0]!, inOrder[inOrder.length - 1]!];
  return first === last ? first : `${first} to ${last}`;
}

/** The row of a point; or why there is none. */
function spotOf(point: PointRecord, { meant, file, field, season, unit, measured, day }: Answers): Spot | string {
  const comma = file.decimalComma;
  const said = (of: Known): string => point.says.get(meant.get(of) ?? "") ?? "";
  const numberIn = (of: Known) => (said(of) === "" ? null : (typedNumber(said(of), comma) ?? "none"));
  const [latitude, longitude] = [degreesIn(point.latitude, comma), degreesIn(point.longitude, comma)];
  if (latitude === null || longitude === null) return "its latitude or longitude is no number of degrees";
  const at = { latitude, longitude };
  const fault = coordinatesFault(at);
  if (fault !== null) return fault === "swapped" ? "its latitude and longitude are the wrong way round" : "no field lies there";
  const name = said("field");
  const of = name === "" ? field : season.fields.find((each) => plain(each.name) === plain(name));
  if (of === undefined) return `no field is called “${name}”`;
  const dayIn = (box: Known) => readDate(said(box).replace(/[T ]\d{1,2}:.*$/, ""), { dateSystem: "1900", dayFirst: comma });
  const date = day ?? dayIn("date");
  if (date === null) return `“${said("date")}” is no date`;
  const partPlanted = said("partPlanted") === "" ? null : dayIn("partPlanted");
  if (said("partPlanted") !== "" && partPlanted === null) return `“${said("partPlanted")}” is no date of planting`;
  const numbers = (["plants", "weak", "partAcres", "rowWidth", "length", "hoop"] as const).map(numberIn);
  if (numbers.some((each) => each === "none" || each?.isNegative() === true)) return "a number of it is none, or below zero";
  const [plants, weak, partAcres, ...sizes] = numbers as (Decimal | null)[];
  if (plants === null || plants === undefined) return "it says no plants; 0 if there was none";
  const asOurs = (index: number, heading: string | undefined, isAlong: boolean) =>
    sizes[index] === null || sizes[index] === undefined || heading === undefined
      ? null
      : inUnit(sizes[index], unitOf(heading) ?? unit!, season.settings.areaUnit, isAlong);
  const size: Measured = measured ?? {
    rowWidth: asOurs(0, meant.get("rowWidth"), false) ?? of.rowWidth,
    length: asOurs(1, meant.get("length"), true),
    hoop: asOurs(2, meant.get("hoop"), false),
  };
  if (size.hoop === null && (size.length === null || size.rowWidth === null)) return "it says no length with a row width, and no hoop";
  const hoop = size.hoop !== null && !size.hoop.isZero();
  return {
    field: of.name,
    date,
    plants,
    at,
    row: entryRow([
      [columns.field, of.name],
      [columns.date, { day: date }],
      [columns.rowWidth, hoop ? null : size.rowWidth],
      [columns.length, hoop ? null : size.length],
      [columns.hoop, hoop ? size.hoop : null],
      [columns.plants, plants],
      [columns.weak, weak ?? null],
      [columns.latitude, latitude],
      [columns.longitude, longitude],
      [columns.part, said("part")],
      [
        columns.partAcres,
        partAcres === null || partAcres === undefined ? null : areaIn(partAcres, meant.get("partAcres")!, season.settings.areaUnit),
      ],
      [columns.partPlanted, partPlanted === null ? null : { day: partPlanted }],
      [columns.remark, said("remark")],
    ]),
  };
}

/** Acres of a part, where the heading names the other unit. */
function areaIn(value: Decimal, heading: string, area: AreaUnit): Decimal {
  const saysHectares = /hectare|\bha\b/i.test(heading);
  const saysAcres = /[([]\s*(ac|acres?)\s*[)\]]/i.test(heading);
  if (area === "ac" && saysHectares) return value.div(hectaresInAcre).toDecimalPlaces(2);
  return area === "ha" && saysAcres ? value.times(hectaresInAcre).toDecimalPlaces(2) : value;
}

const degreesIn = (typed: string, comma: boolean): Decimal | null =>
  isSexagesimal(typed) ? readDegrees(typed) : typedNumber(typed, comma);

function inUnit(value: Decimal, unit: SizeUnit, area: AreaUnit, isAlong: boolean): Decimal {
  if ((unit === "in and ft") === (area === "ac")) return value;
  const factor = new Decimal(isAlong ? metresInFoot : centimetresInInch);
  return unit === "in and ft" ? value.times(factor) : value.div(factor).toDecimalPlaces(2);
}
