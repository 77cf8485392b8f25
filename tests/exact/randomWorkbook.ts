/**
 * Workbooks as random farms would type them, the same for one number: seasons typed in many ways with machines, counts, weather,
 * weeds, planter checks and changes beside them, some with damages, and the workbook of every column with damages.
 */
import fc from "fast-check";
import { Decimal } from "../../src/core/numbers/decimal";
import { money, moneyPerArea, moneyPerUnit, points } from "../../src/core/numbers/units";
import type { Target } from "../../src/core/row";
import type { Season } from "../../src/core/season";
import type { Cell, RawTable, WorkbookContent } from "../../src/workbook/cell";
import { everyColumn } from "../support/everyColumn";
import { plainHeading } from "../../src/workbook/words";
import { damaged } from "../support/messyWorkbook";
import { countedOnce } from "./countedOnce";
import { growingSeason, harvestedSeason } from "./randomSeason";
import { typedSeason } from "./typedSeason";
import { Habits } from "./typing";

type Row = readonly Cell[];

/** The workbook of a number from 0. */
export function randomWorkbook(number: number): WorkbookContent {
  const habits = new Habits(number * 7919 + 17, number % 8 >= 4, number % 10 === 9 ? "1904" : "1900");
  if (number % 8 === 7) return damaged(everyColumn(), new Habits(number, false, "1900"), habits.below(5));
  const [season] = fc.sample(number % 2 === 0 ? growingSeason : harvestedSeason, { seed: number, numRuns: 1 });
  const meant = number % 8 < 5 ? tidied(countedOnce(season!)) : countedOnce(season!);
  const typed = withTheRest(typedSeason(meant, habits), meant, habits);
  return number % 8 === 6 ? damaged(typed, habits, 1 + habits.below(3)) : typed;
}

/** The season as somebody leaves it who looked at every entry to fix: its figures are complete. */
function tidied(season: Season): Season {
  const isGrown = (name: string) => season.fields.some(({ crop }) => crop === name);
  const reaches = (at: Target) => ("field" in at ? true : isGrown(at.crop));
  const weighed = new Set(season.harvest.map(({ field }) => field));
  const [standard, price] = [points("15"), money("4.25")];
  return {
    ...season,
    settings: { ...season.settings, areaUnit: "ac", standResponse: null, labourPerHour: money("22") },
    crops: season.crops.map((crop) => ({ ...crop, price: crop.price.isZero() ? moneyPerUnit("4.25") : crop.price })),
    fields: season.fields.map((field) => ({
      ...field,
      harvestDone: weighed.has(field.name) ? field.harvestDone : null,
      sameLandAs: null,
      planted: null,
      landChargePerArea: field.tenure === "owned" ? moneyPerArea("150") : null,
    })),
    items: season.items.map((item) => ({ ...item, planPricePerPack: item.planPricePerPack ?? price })),
    purchases: season.purchases.filter(({ quantity, amount }) => quantity.gt("0") && amount.gte("0")),
    applications: season.applications.filter(({ target }) => reaches(target)).map((row) => ({ ...row, area: null })),
    operations: season.operations.filter(({ target }) => reaches(target)).map((row) => ({ ...row, area: null })),
    otherCosts: season.otherCosts.filter(({ over }) => !("crop" in over) || isGrown(over.crop)),
    sales: season.sales.filter(({ crop }) => isGrown(crop)),
    harvest: season.harvest.map((load) => ({ ...load, moisture: load.moisture ?? standard })),
    loans: (season.loans ?? [])
      .filter(({ kind, payment, nextDue }) => kind === "operating" || (payment !== null && nextDue !== null))
      .map((loan) => ({ ...loan, firstDue: null })),
  };
}

/** The tables that random seasons have no rows for, over the same fields. */
function withTheRest(content: WorkbookContent, season: Season, habits: Habits): WorkbookContent {
  const each = (percent: number, make: () => RawTable | null): readonly RawTable[] => {
    const table = habits.below(100) < percent ? make() : null;
    return table === null ? [] : [table];
  };
  const extra = [
    ...each(40, () => counts(season, habits)),
    ...each(40, () => machines(habits)),
    ...each(30, () => weather(habits)),
    ...each(30, () => weeds(season, habits)),
    ...each(30, () => changes(season, habits)),
    ...each(30, () => insurance(season, habits)),
  ];
  const hasMachine = extra.some(({ name }) => name === "Machines");
  const checks = hasMachine ? each(50, () => planter(habits)) : [];
  const tables = content.tables
    .filter(({ headers }) => headers.length > 1)
    .map((table) => (hasMachine && table.name.startsWith("Operations") ? withMachineWork(table, season, habits) : table));
  return { ...content, tables: [...tables, ...extra, ...checks] };
}

const table = (name: string, headers: readonly string[], rows: readonly Row[]): RawTable => ({
  name,
  headers: [...headers],
  rows: rows.map((row) => [...row]),
  body: { sheet: name, row: 1, column: 0 },
});
const number = (habits: Habits, least: number, most: number, places: number): Decimal =>
  new Decimal(`${least * 10 ** places + habits.below((most - least) * 10 ** places + 1)}e-${places}`);
const times = <Each>(count: number, make: (index: number) => Each): readonly Each[] =>
  Array.from({ length: count }, (_, index) => make(index));
const day = (from: string, days: number): string => new Date(Date.parse(from) + days * 86_400_000).toISOString().slice(0, 10);

/** Places counted in fields that were planted, on the days after. */
function counts(season: Season, habits: Habits): RawTable | null {
  const planted = season.fields.flatMap(({ name, planted: on }) => (on === null ? [] : [{ name, on }]));
  if (planted.length === 0) return null;
  const rows = planted.flatMap(({ name, on }) =>
    times(1 + habits.below(4), (): Row => {
      const isHoop = habits.below(3) === 0;
      return [
        name,
        habits.date(day(on, 18 + habits.below(3))),
        isHoop ? "" : habits.number(number(habits, 20, 38, 0)),
        isHoop ? "" : habits.number(number(habits, 10, 20, 2)),
        isHoop ? habits.number(number(habits, 24, 36, 0)) : "",
        habits.number(number(habits, 3, 34, 0)),
        habits.number(number(habits, 0, 3, 0)),
      ];
    }),
  );
  return table("Stand counts", ["Field", "Date", "Row width", "Length", "Hoop diameter", "Plants", "Weak plants"], rows);
}

function machines(habits: Habits): RawTable {
  const row: Row = [
    "Planter",
    habits.money(number(habits, 40_000, 200_000, 0)),
    habits.number(number(habits, 0, 12, 0)),
    habits.number(number(habits, 3, 12, 0)),
    habits.number(number(habits, 60, 300, 0)),
    habits.word("planter"),
    habits.number(number(habits, 5_000, 30_000, 0)),
    habits.number(number(habits, 100, 250, 0)),
    habits.number(number(habits, 15, 60, 0)),
    habits.number(number(habits, 4, 6, 1)),
    habits.number(number(habits, 60, 75, 0)),
    habits.money(number(habits, 2, 5, 2)),
    habits.rate(number(habits, 2, 7, 1).div("100")),
    habits.money(number(habits, 15, 35, 2)),
  ];
  const headings =
    "Machine, List price, Age, Years kept, Hours a year, Repair class, Salvage value, Power, Width, Speed, Field efficiency, Fuel price, " +
    "Real interest rate, Labour per hour";
  return table("Machines", headings.split(", "), [row]);
}

/** Passes of the planter, planned or done, below what stands there. */
function withMachineWork(operations: RawTable, season: Season, habits: Habits): RawTable {
  const headers = [...operations.headers];
  const at = (heading: string): number => {
    const place = headers.findIndex((each) => plainHeading(each) === plainHeading(heading));
    if (place >= 0) return place;
    headers.push(heading);
    return headers.length - 1;
  };
  const rows = season.fields.slice(0, 1 + habits.below(2)).map((field): Row => {
    const cells = new Map<number, Cell>([
      [at("Field or Crop"), habits.word(field.name)],
      [at("Operation"), "Planting"],
      [at("Machine"), habits.word("Planter")],
      [at("Date"), habits.date("2031-05-05")],
      [at("Status"), habits.word(habits.pick("plan", "done"))],
    ]);
    return headers.map((_, index) => cells.get(index) ?? "");
  });
  const wide = (cells: Row): Cell[] => headers.map((_, index) => cells[index] ?? "");
  return { ...operations, headers, rows: [...operations.rows.map(wide), ...rows.map(wide)] };
}

/** Two springs of days, with a gap now and then. */
function weather(habits: Habits): RawTable {
  const rows = ["2030-04-20", "2031-04-20"].flatMap((from) =>
    times(40, (index): Row => {
      const low = number(habits, 38, 60, 0);
      return [
        habits.date(day(from, index)),
        habits.number(low.plus(number(habits, 5, 30, 0))),
        habits.number(low),
        habits.number(number(habits, 0, 1, 2)),
      ];
    }).filter(() => habits.below(25) > 0),
  );
  return table("Weather", ["Date", "High", "Low", "Rain"], rows);
}

const weeds = (season: Season, habits: Habits): RawTable =>
  table(
    "Weeds",
    ["Field or Crop", "Weed", "Resistant to", "Seen on"],
    season.fields.map((field): Row => [
      habits.word(field.name),
      "Waterhemp",
      habits.pick<Cell>("9", 9, "2; 9", ""),
      habits.date("2031-05-20"),
    ]),
  );

function changes(season: Season, habits: Habits): RawTable {
  const [field] = season.fields;
  const isCounted = habits.pick("yes", "no", "");
  const rows: readonly Row[] = [
    [
      "Wheels",
      "added costs",
      "Closing wheels",
      habits.number(number(habits, 6, 24, 0)),
      "row",
      habits.money(number(habits, 100, 500, 0)),
      "lump sum",
    ],
    ["Wheels", "added returns", "Yield gain", habits.number(number(habits, 0, 4, 1)), "bu", "", "per acre"],
  ];
  const headings = [
    "Change",
    "Quadrant",
    "Item",
    "Quantity",
    "Unit",
    "Price",
    "Basis",
    "Years kept",
    "Field or Crop",
    "Interest rate",
    "Counted in",
  ];
  return table(
    "Changes",
    headings,
    rows.map((row, index) => [
      ...row,
      index === 0 ? 5 : "",
      field === undefined ? "" : field.crop,
      index === 0 ? 6 : "",
      index === 0 ? isCounted : "",
    ]),
  );
}

const insurance = (season: Season, habits: Habits): RawTable =>
  table(
    "Insurance",
    ["Crop", "Form", "Approved yield", "Coverage", "Projected price"],
    season.crops.map((crop): Row => [
      habits.word(crop.name),
      habits.word(habits.pick("revenue", "yield")),
      habits.number(number(habits, 40, 200, 0)),
      habits.pick<Cell>(75, "80%", "0.7"),
      habits.money(number(habits, 3, 12, 2)),
    ]),
  );

const planter = (habits: Habits): RawTable =>
  table(
    "Planter checks",
    ["Machine", "Row", "Part", "New", "Replace at", "Measured", "Unit", "Hours"],
    times(1 + habits.below(4), (index): Row => [
      "Planter",
      index + 1,
      "Opener disc",
      15,
      14.5,
      habits.number(number(habits, 14, 15, 2)),
      "in",
      habits.number(number(habits, 0, 1, 1)),
    ]),
  );
