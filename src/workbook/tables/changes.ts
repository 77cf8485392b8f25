/** The table Changes: one line of a partial budget a row; the lines of one name are one change. */
import { zero, type Decimal } from "../../core/numbers/decimal";
import { landArea } from "../../core/land";
import { isCapital, type Quadrant } from "../../core/partialBudget/change";
import type { LayoutName } from "../../core/partialBudget/layouts/layout";
import type { SeasonChange, SeasonChangeLine } from "../../core/partialBudget/seasonChange";
import type { Target } from "../../core/row";
import type { Crop, Field, Season, Settings } from "../../core/season";
import { area, money, yearlyRate, years, type YearlyRate } from "../../core/numbers/units";
import { changeColumns } from "../columns/changes";
import type { Named } from "../columns/column";
import type { Problem, ProblemCode } from "../problem";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";
import { yieldUnitNamed } from "../yieldUnits";
import { cropFactor } from "./crops";
import { warnOfArea } from "./items";
import { optionalTarget, targetColumn, type TargetPlaces } from "./targets";

const { columns } = changeColumns;

/** What a row says of the change as a whole; one row that says it is enough. */
type About = {
  readonly target: Target | null;
  readonly acres: Decimal | null;
  readonly rate: Decimal | null;
  readonly layout: LayoutName | null;
  readonly countedIn: "yes" | "no" | null;
};
type Entered = About & { readonly change: string; readonly line: SeasonChangeLine; readonly priceFaulty: boolean };
type Around = Pick<Season, "crops" | "fields"> & { readonly settings: Settings };

const grainQuadrants: ReadonlySet<Quadrant> = new Set<Quadrant>(["added returns", "reduced returns"]);

export function readChanges(table: TableReader, places: TargetPlaces, around: Around): readonly SeasonChange[] {
  if (!table.hasNeeded(changeColumns)) return [];
  const names = changeNames(table);
  const entered = table.rows(
    (row) => lineOf(row, table, places),
    (row) => {
      const name = names.get(plain(String(row.cell(columns.change))));
      return (name === undefined ? [...names.values()] : [name]).map((each) => ({ of: "change", name: each }));
    },
  );
  const byChange = new Map<string, Entered[]>();
  for (const each of entered) byChange.set(plain(each.change), [...(byChange.get(plain(each.change)) ?? []), each]);
  const changes = [...byChange].flatMap(([key, lines]): readonly SeasonChange[] => {
    const change = changeOf(names.get(key)!, lines, table, around);
    return change === null ? [] : [change];
  });
  table.problems.sort((a, b) => (a.at.row ?? 0) - (b.at.row ?? 0));
  return changes;
}

/** The names of the changes as they are first spelled. */
function changeNames(table: TableReader): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  for (const cells of table.raw.rows) {
    const typed = String(cells[table.indexOf(columns.change.heading)] ?? "").trim();
    if (typed !== "" && !names.has(plain(typed))) names.set(plain(typed), typed);
  }
  return names;
}

function lineOf(row: Row, table: TableReader, places: TargetPlaces): Entered | null {
  const change = row.need(columns.change);
  const quadrant = row.need(columns.quadrant);
  const item = row.need(columns.item);
  const quantity = row.of(columns.quantity);
  const price = row.of(columns.price);
  const kept = row.of(columns.yearsKept);
  const salvage = row.of(columns.salvage);
  const basis = row.of(columns.basis) ?? (kept === null ? "per acre" : "lump sum");
  if (kept !== null && basis === "per year") row.fault("years-on-yearly", columns.yearsKept);
  else if (kept === null && salvage !== null && !salvage.isZero() && !hasFault(row, columns.yearsKept))
    row.fault("salvage-unused", columns.salvage);
  if (quadrant !== null && quantity === null && !grainQuadrants.has(quadrant) && !hasFault(row, columns.quantity))
    row.fault("quantity-missing", columns.quantity);
  const target = optionalTarget(row, table, places);
  const acres = row.of(columns.acres);
  if (target !== null && acres !== null) warnOfArea(row, columns.acres, acres, target, places);
  const about: About = {
    acres,
    target: grown(row, target, places),
    rate: row.of(columns.rate),
    layout: row.of(columns.layout),
    countedIn: row.of(columns.countedIn),
  };
  if (change === null || quadrant === null || item === null) return null;
  return {
    ...about,
    change,
    priceFaulty: hasFault(row, columns.price),
    line: {
      quadrant,
      item,
      quantity,
      unit: row.of(columns.unit) ?? "",
      price: price === null ? null : money(price),
      basis,
      yearsKept: kept === null || basis === "per year" ? null : years(kept),
      salvage: salvage === null ? null : money(salvage),
      sellsCrop: false,
      source: row.source,
    },
  };
}

const hasFault = (row: Row, { heading }: Named): boolean => row.faults.some(({ column }) => column === heading);

/** The target, where any field grows it. */
function grown(row: Row, target: Target | null, places: TargetPlaces): Target | null {
  if (target === null || places.areaOf(target)?.gt(zero) === true) return target;
  row.fault("no-fields", undefined, { found: "field" in target ? target.field : target.crop });
  return null;
}

function changeOf(name: string, entered: readonly Entered[], table: TableReader, { crops, fields, settings }: Around): SeasonChange | null {
  const problem = (code: ProblemCode, { source }: SeasonChangeLine, { heading: column }: Named, more: Partial<Problem> = {}) =>
    table.problems.push({
      code,
      at: { table: table.name, row: source!.row, column },
      found: "",
      touches: [{ of: "change", name }],
      ...more,
    });
  const agreed = <Value>(of: (line: Entered) => Value | null, column: Named, words: (value: Value) => string): Value | null => {
    const told = entered.flatMap((each) => {
      const value = of(each);
      return value === null ? [] : [{ value, line: each.line }];
    });
    const [first, ...others] = told;
    if (first === undefined) return null;
    for (const { value, line } of others) {
      if (words(value) !== words(first.value)) problem("change-disagrees", line, column, { found: words(value), like: words(first.value) });
    }
    return first.value;
  };
  const target = agreed(
    (each) => each.target,
    targetColumn(table),
    (value) => ("field" in value ? value.field : value.crop),
  );
  const acres = agreed(
    (each) => each.acres,
    columns.acres,
    (value) => value.toFixed(),
  );
  const rate = agreed(
    (each) => each.rate,
    columns.rate,
    (value) => `${value.times("100").toFixed()} %`,
  );
  const layout = agreed(
    (each) => each.layout,
    columns.layout,
    (value) => value,
  );
  const countedIn =
    agreed(
      (each) => each.countedIn,
      columns.countedIn,
      (value) => value,
    ) === "yes";
  const crop = target === null ? null : cropOf(target, crops, fields);
  const land = acres ?? areaOf(target, fields);
  const [first] = entered;
  if (land.isZero()) {
    problem("area-missing", first!.line, columns.acres);
    return null;
  }
  const lines = entered.map(({ line, priceFaulty }) => {
    const priced = line.price === null && crop !== null && grainQuadrants.has(line.quadrant) ? soldLine(line, crop, settings) : line;
    if (priced.price === null && !priced.sellsCrop && !priceFaulty) problem("price-missing", line, columns.price);
    return priced;
  });
  return {
    name,
    target,
    layout,
    countedIn,
    area: area(land),
    rate: rateOf(lines, rate, settings, (line) => problem("rate-missing", line, columns.rate)),
    lines,
  };
}

const cropOf = (target: Target, crops: readonly Crop[], fields: readonly Field[]): Crop | null => {
  const name = "crop" in target ? target.crop : fields.find((field) => field.name === target.field)?.crop;
  return crops.find((crop) => crop.name === name) ?? null;
};

/** The area of the field or of the crop's fields; of all land, each acre once, where a change is about no field in particular. */
const areaOf = (target: Target | null, fields: readonly Field[]): Decimal =>
  landArea(fields.filter(({ name, crop }) => target === null || ("field" in target ? name === target.field : crop === target.crop)));

/**
 * A line without a price that counts the crop: it sells it at what a unit brings home. The line as it is where it counts
 * something else.
 */
function soldLine(line: SeasonChangeLine, crop: Crop, { areaUnit }: Settings): SeasonChangeLine {
  const unit = line.unit === "" ? crop.yieldUnit : yieldUnitNamed(line.unit, areaUnit, crop.yieldUnit);
  const factor = unit === null || unit === "ton-unclear" ? null : cropFactor(unit, crop);
  if (factor === null) return line;
  const words = line.basis === "per acre" ? `${crop.yieldUnit}/${areaUnit}` : crop.yieldUnit;
  return { ...line, unit: words, quantity: line.quantity?.times(factor) ?? null, sellsCrop: true };
}

/**
 * Interest on capital: as the change says, else the operating interest rate of the season, else none, which is a problem where it
 * matters.
 */
function rateOf(
  lines: readonly SeasonChangeLine[],
  typed: Decimal | null,
  { operatingInterest }: Settings,
  missing: (line: SeasonChangeLine) => void,
): YearlyRate {
  const rate = typed ?? operatingInterest?.rate ?? null;
  const capital = lines.find(isCapital);
  if (rate === null && capital !== undefined) missing(capital);
  return yearlyRate(rate ?? zero);
}
