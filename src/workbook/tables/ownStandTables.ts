/** Tables of yield by date and stand of the grower's own: what the setting Stand response names. */
import { hundred, larger, zero, type Decimal } from "../../core/numbers/decimal";
import type { Crop, Settings } from "../../core/season";
import { failed, type Result } from "../../result";
import { cropWord, noTable } from "../../core/stand/fieldStand";
import type { MonthDay } from "../../core/stand/monthDay";
import { ownStandTable, type OwnStandTableFault } from "../../core/stand/ownStandTable";
import type { StandTable } from "../../core/stand/standTable";
import type { Cell, RawTable } from "../cell";
import { readDate } from "../dates";
import { isBlank, readNumber } from "../numbers";
import type { Place, Problem } from "../problem";
import { publishedStandTable, publishedStandTables } from "../publishedStandTables";
import type { Style } from "../tableRow";
import { problemsBelow } from "../rowsBelow";
import { nearest, plain } from "../words";

export type OwnStandTables = { readonly tables: readonly StandTable[]; readonly problems: readonly Problem[] };
type Around = {
  readonly settings: Settings;
  /** Names of tables that were not read. */ readonly others: readonly string[];
  readonly crops: readonly Crop[];
  readonly style: Style;
  readonly setting: Place;
};

/** The names of tables in the setting Stand response. */
export const standResponseNames = (typed: string | null): readonly string[] =>
  (typed ?? "")
    .split(";")
    .map((name) => name.trim())
    .filter((name) => name !== "" && name.toLowerCase() !== noTable);

/**
 * Reads each table of the workbook that the setting names. Its headings are stands, the first column holds planting
 * dates or nothing, its cells are percent of full yield. The crop stands in its first heading or in its name.
 *
 * @param own the tables and matched ranges of the workbook that are none of ours
 */
export function readOwnStandTables(own: readonly RawTable[], around: Around): OwnStandTables {
  const tables: StandTable[] = [];
  const problems: Problem[] = [];
  for (const name of standResponseNames(around.settings.standResponse)) {
    const raw = own.find((each) => plain(each.name) === plain(name));
    if (raw === undefined) {
      if (publishedStandTable(name) !== null) continue;
      const like = nearest(name, [
        ...publishedStandTables.tables.map((table) => table.name),
        ...own.map((table) => table.name),
        ...around.others,
      ]);
      problems.push({
        code: "stand-table-unknown",
        at: around.setting,
        found: name,
        touches: [{ of: "farm" }],
        ...(like === null ? {} : { like }),
      });
      continue;
    }
    const crop = cropOf(raw, around.crops);
    if (crop === null) {
      problems.push({ code: "stand-table-crop", at: { table: raw.name }, found: raw.name, touches: [{ of: "farm" }] });
      continue;
    }
    problems.push(...problemsBelow(raw, raw.name, [{ of: "crop", name: crop }]));
    const read = tableOf(raw, name, crop, around);
    if (read.ok) tables.push(read.value);
    else problems.push(...read.problems);
  }
  return { tables, problems };
}

/** The crop that the first heading names, else the table's name, else the only crop of the season. */
function cropOf(raw: RawTable, crops: readonly Crop[]): string | null {
  for (const words of [raw.headers[0] ?? "", raw.name.replaceAll("_", " ")]) {
    const named = crops.find(({ name }) => words.toLowerCase().includes(cropWord(name)));
    if (named !== undefined) return named.name;
  }
  return crops.length === 1 ? crops[0]!.name : null;
}

/** The table, or what is wrong with its cells. */
function tableOf(raw: RawTable, name: string, crop: string, { settings, style }: Around): Result<StandTable, Problem> {
  const problems: Problem[] = [];
  const fault = (like: string, found: Cell, at: Omit<Place, "table"> = {}): null => {
    problems.push({
      code: "stand-table-fault",
      at: { table: raw.name, ...at },
      found: String(found),
      like,
      touches: [{ of: "crop", name: crop }],
    });
    return null;
  };
  const columns = raw.headers
    .map((heading, index) => ({ heading, index }))
    .slice(1)
    .filter(({ heading, index }) => heading.trim() !== "" && raw.rows.some((row) => !isBlank(row[index] ?? "")));
  const rows = raw.rows.map((cells, index) => ({ cells, row: index + 1 })).filter(({ cells }) => !cells.every(isBlank));
  const dated = rows.some(({ cells }) => !isBlank(cells[0] ?? ""));
  const dates = dated
    ? rows.map(
        ({ cells, row }) =>
          monthDay(cells[0] ?? "", style) ??
          fault("a planting date is missing or cannot be read", cells[0] ?? "", { row, column: raw.headers[0] ?? "" }),
      )
    : null;
  const single = columns.length === 1 && !/\d/.test(columns[0]!.heading);
  const stands = single
    ? null
    : columns.map(
        ({ heading }) =>
          standOf(heading, style) ?? fault(`the heading "${heading}" is not a number of plants`, heading, { column: heading }),
      );
  const percent = rows.map(({ cells, row }) =>
    columns.map(({ heading, index }) => {
      const cell = cells[index] ?? "";
      if (isBlank(cell)) return null;
      const reading = readNumber(cell, style);
      if (typeof reading === "string") return fault("a percentage is not a number", cell, { row, column: heading });
      return reading.percent ? reading.value.times(hundred) : reading.value;
    }),
  );
  if (columns.length === 0 || rows.length === 0) fault("it has no percentages", "");
  if (problems.length > 0) return failed(...problems);
  const read = ownStandTable(
    {
      name,
      crop,
      standUnit: settings.areaUnit === "ac" ? "plants per acre" : "plants per hectare",
      dates: dates as readonly MonthDay[] | null,
      stands: stands as readonly Decimal[] | null,
      percent: inPercent(percent),
    },
    {
      title: raw.name,
      publisher: "this workbook",
      year: settings.seasonYear ?? "no year entered",
      address: raw.body.sheet,
      where: "table",
    },
  );
  if (read.ok) return read;
  for (const each of read.problems) fault(faultWords[each.fault], "", placeOf(each, rows, columns));
  return failed(...problems);
}

const faultWords: Readonly<Record<OwnStandTableFault["fault"], string>> = {
  "no axis": "it has neither dates nor stands",
  "dates not ascending": "a planting date is not later than the one above it",
  "stands not ascending": "a stand is not larger than the one before it",
  "row of another length": "its rows are not of one length",
  "percent outside 0 to 120": "a percentage is not between 0 and 120",
};

function placeOf(
  { fault, where }: OwnStandTableFault,
  rows: readonly { readonly row: number }[],
  columns: readonly { readonly heading: string }[],
): Omit<Place, "table"> {
  if (fault === "stands not ascending") return { column: columns[where - 1]!.heading };
  return fault === "no axis" ? {} : { row: rows[where - 1]!.row };
}

/** Fractions as percent: cells that Excel shows as percentages hold fractions. */
function inPercent(cells: readonly (readonly (Decimal | null)[])[]): readonly (readonly (Decimal | null)[])[] {
  const highest = cells.flat().reduce<Decimal>((most, cell) => (cell === null ? most : larger(most, cell)), zero);
  return highest.gt("1.2") ? cells : cells.map((row) => row.map((cell) => cell?.times(hundred) ?? null));
}

/** "28,000", "28 000 plants": a number with words after it. */
function standOf(heading: string, style: Style): Decimal | null {
  const [, digits = "", rest = ""] = /^([\s\d.,']+)(.*)$/.exec(heading) ?? [];
  if (/\d/.test(rest) || digits.trim() === "") return null;
  const reading = readNumber(digits.trim(), style);
  return typeof reading === "string" || reading.value.lte("0") ? null : reading.value;
}

/** The day of a date with or without its year. */
function monthDay(cell: Cell, style: Style): MonthDay | null {
  const typed = String(cell).trim();
  const candidates: readonly Cell[] = typeof cell === "string" ? [typed, `${typed} 2001`, `${typed}/2001`, `${typed}-2001`] : [cell];
  for (const candidate of candidates) {
    const date = isBlank(cell) ? null : readDate(candidate, style);
    if (date !== null) return date.slice(5);
  }
  return null;
}
