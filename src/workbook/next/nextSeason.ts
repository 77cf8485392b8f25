/** A workbook for the next season, made from this one's: what stays true is carried, what was left over opens it. */
import { Decimal } from "../../core/numbers/decimal";
import type { RawTable, WorkbookContent } from "../cell";
import { applicationColumns } from "../columns/applications";
import { budgetColumns } from "../columns/budget";
import type { Named } from "../columns/column";
import { fieldColumns } from "../columns/fields";
import { itemColumns } from "../columns/items";
import { operationColumns } from "../columns/operations";
import { otherCostColumns } from "../columns/otherCosts";
import { pastSeasonColumns } from "../columns/pastSeasons";
import { planterCheckColumns } from "../columns/planterChecks";
import { purchaseColumns } from "../columns/purchases";
import { saleColumns } from "../columns/sales";
import { seasonColumns } from "../columns/season";
import { serialOfDay } from "../daySerial";
import { typingStyle } from "../tables/settings";
import { findTables } from "../findTables";
import type { InputTable } from "../inputTable";
import { toFix } from "../problem";
import type { EntryRef } from "../../core/row";
import type { Season, Status } from "../../core/season";
import type { SeasonReport } from "../seasonReport";
import { matchesTable, type TableName } from "../tableNames";
import { inputTables } from "../templates";
import { plain, plainHeading } from "../words";
import { keptSeason } from "./keptSeason";
import { nextLoans } from "./nextLoans";
import { NextTable } from "./nextRows";
import { leftOver, workForNext, type Cells } from "./openingStock";

export type NextSeason = {
  /** The year of the new season. */
  readonly year: string;
  /** Its tables with their rows, in the order of a season's work. */
  readonly tables: readonly InputTable[];
  /** What is to be known of it: what stayed behind, what to look at. */
  readonly notes: readonly string[];
};

type Rows = readonly Cells[];
type Carry = (table: NextTable, report: SeasonReport, next: string, say: (words: string) => void) => Rows;

const asIs: Carry = (table) => table.rows;
const [fields, items, applications, operations] = [
  fieldColumns.columns,
  itemColumns.columns,
  applicationColumns.columns,
  operationColumns.columns,
];

/** Rows of the plan, a year later; what was done and never planned is left behind. What could not be read goes on as it stands. */
const planned =
  (rowsOf: (season: Season) => readonly { readonly status: Status; readonly source: EntryRef }[], status: Named, date: Named): Carry =>
  (table, { season }) =>
    table
      .rowsBut(new Set(rowsOf(season).flatMap((row) => (row.status === "done" ? row.source.row : []))))
      .map((row) => table.with(table.yearLater(row, date), [status, "plan"]));

const isSetting = (name: string, setting: string): boolean => plain(name) === plain(setting);

/** How each table is carried; one that is not named stays behind. */
const carried: Partial<Record<TableName, Carry>> = {
  Season: (table, _report, next) => {
    const { setting, value } = seasonColumns.columns;
    const rows = table.rows.map((row) => {
      const name = table.text(row, setting);
      if (isSetting(name, "Season year")) return table.with(row, [value, Number(next)]);
      return isSetting(name, "Repayment date") ? table.yearLater(row, value) : row;
    });
    return rows.some((row) => isSetting(table.text(row, setting), "Season year"))
      ? rows
      : [...rows, table.with(new Map(), [setting, "Season year"], [value, Number(next)])];
  },
  Crops: asIs,
  Fields: (table) =>
    table.rows.map((row) =>
      table.with(table.yearLater(row, fields.plannedPlanting), [fields.planted, ""], [fields.harvestDone, ""], [fields.uniformityLoss, ""]),
    ),
  Budget: (table) =>
    table.rows.map((row) => table.with(table.yearLater(row, budgetColumns.columns.month), [budgetColumns.columns.allIn, ""])),
  Items: (table, { figures }) => {
    const prices = new Map(figures.items.map(({ item, averagePrice }) => [plain(item), averagePrice]));
    return table.rows.map((row) => {
      const price = prices.get(plain(table.text(row, items.item))) ?? null;
      return price === null ? row : table.with(row, [items.planPrice, Number(price.toDecimalPlaces(4).toFixed())]);
    });
  },
  Purchases: (table, report, next, say) => [...leftOver(report, next), ...billsForNext(table, next, say)],
  Applications: planned((season) => season.applications, applications.status, applications.date),
  Operations: planned((season) => season.operations, operations.status, operations.date),
  Machines: asIs,
  "Other costs": (table, report, next) => [
    ...table.rows.map((row) => table.yearLater(row, otherCostColumns.columns.month)),
    ...workForNext(report, next),
  ],
  Loans: (table, report, _next, say) => nextLoans(report, table, say),
  Insurance: asIs,
  Weather: asIs,
  Hybrids: asIs,
  "Hybrid trials": asIs,
  Weeds: asIs,
  // What is mended is measured anew.
  "Planter checks": (table) => table.rows.filter((row) => table.text(row, planterCheckColumns.columns.doneOn) === ""),
  Sales: (table, _report, next) =>
    table.rows
      .filter((row) => table.text(row, saleColumns.columns.cropYear).includes(next))
      .map((row) => table.with(row, [saleColumns.columns.cropYear, ""])),
  "Past seasons": (table, report) => {
    const kept = keptSeason(report)?.rows ?? [];
    const key = (of: (column: Named) => string) =>
      [pastSeasonColumns.columns.season, pastSeasonColumns.columns.field, pastSeasonColumns.columns.crop]
        .map((column) => plain(of(column)))
        .join("\n");
    const again = new Set(kept.map((row) => key(({ heading }) => String(row.get(heading) ?? ""))));
    return [...kept, ...table.rows.filter((row) => !again.has(key((column) => table.text(row, column))))];
  },
};

/** Bills that *For season* keeps for the next one: paid this season, or its own to pay. */
function billsForNext(table: NextTable, next: string, say: (words: string) => void): Rows {
  const { columns } = purchaseColumns;
  return table.rows.flatMap((row): Rows => {
    const season = /\d{4}/.exec(table.text(row, columns.forSeason))?.[0];
    if (season === undefined || season < next) return [];
    const name = table.text(row, columns.item);
    if (season > next) {
      say(`Purchases: the bill of ${name} for season ${season} stays behind.`);
      return [];
    }
    const isPaidThen = table.dayOf(row, columns.paidOn)?.startsWith(next) === true;
    if (isPaidThen) return [table.with(row, [columns.forSeason, ""])];
    const noted = `Paid in the season before: ${table.dayOf(row, columns.paidOn) ?? table.dayOf(row, columns.date) ?? ""}`;
    return [
      table.with(
        row,
        [columns.date, serialOfDay(`${next}-01-01`, "1900")],
        [columns.forSeason, ""],
        [columns.paidOn, ""],
        [columns.opening, "yes"],
        [columns.note, [table.text(row, columns.note), noted].filter((words) => words !== "").join(". ")],
      ),
    ];
  });
}

/**
 * The next season's tables. Columns of the grower's own go with the rows of Fields, Items and Machines, and tables that settings
 * name go with Season; other sheets of the grower's own stay behind and are named.
 *
 * @returns `null` where nothing tells the season's year
 */
export function nextSeason(content: WorkbookContent, report: SeasonReport): NextSeason | null {
  const { seasonYear } = report.season.settings;
  if (seasonYear === null) return null;
  const next = new Decimal(seasonYear).plus("1").toFixed();
  const { tables: found, own } = findTables(content);
  const notes: string[] = [];
  const style = { dateSystem: content.dateSystem, dayFirst: typingStyle(found.get("Season") ?? null).decimalComma };
  const empty = (template: InputTable): RawTable => ({
    name: template.name,
    headers: template.columns.map(({ heading }) => heading),
    rows: [],
    body: { sheet: template.sheet, row: 1, column: 0 },
  });
  const tables = inputTables.flatMap((template): readonly InputTable[] => {
    const name = template.sheet as TableName;
    const carry = carried[name];
    const raw = found.get(name);
    if (template.sheet === matchesTable || carry === undefined) {
      if (raw !== undefined && raw.rows.length > 0) notes.push(`${name}: its entries are of season ${seasonYear} and stay behind.`);
      return [];
    }
    const rows = carry(new NextTable(raw ?? empty(template), template, style), report, next, (words) => notes.push(words));
    return rows.length === 0 && raw === undefined ? [] : [tableWith(template, rows)];
  });
  const settings = report.season.settings;
  const named = [settings.testWeightDock, settings.standResponse].flatMap((words) => (words ?? "").split(";")).map(plain);
  const goes = own.filter(({ name }) => named.includes(plain(name)));
  const stays = own.filter(({ name }) => !named.includes(plain(name)));
  if (stays.length > 0) notes.push(`Sheets and tables of your own stay behind: ${stays.map(({ name }) => name).join(", ")}.`);
  // There is a season year, so that there is something to keep.
  const { open } = keptSeason(report)!;
  if (open.length > 0)
    notes.push(`Not kept in Past seasons, because their harvest is not done: ${open.join(", ")}. Keep the season again once it is.`);
  const faults = toFix(report.problems).length;
  if (faults > 0)
    notes.push(`${faults} ${faults === 1 ? "entry" : "entries"} to fix in season ${seasonYear}: what rests on them may be wrong here too.`);
  notes.push(
    "Look at: crops of fields, prices of crops, rents, insurance. Items have their last average price as plan price. " +
      "Formulas are carried as the values that they had.",
  );
  return { year: next, tables: [...tables, ...goes.map(ownTable)], notes };
}

/** A table with rows under its own headings; headings of the grower's own follow ours. */
function tableWith(template: InputTable, rows: Rows): InputTable {
  const ours = new Map(template.columns.map((column) => [plainHeading(column.heading), column]));
  const more = [...new Set(rows.flatMap((row) => [...row.keys()]))].filter((heading) => heading !== "" && !ours.has(plainHeading(heading)));
  const isFilled = (heading: string) => rows.some((row) => (row.get(heading) ?? "") !== "");
  const columns = [
    ...template.columns,
    ...more.filter(isFilled).map((heading) => ({ heading, hint: "", required: false, width: Math.max(12, heading.length + 2) })),
  ];
  return {
    ...template,
    columns,
    rows: rows.map((row) => {
      const byHeading = new Map([...row].map(([heading, cell]) => [plainHeading(heading), cell]));
      return columns.map(({ heading }) => byHeading.get(plainHeading(heading)) ?? "");
    }),
  };
}

const ownTable = (raw: RawTable): InputTable => ({
  name: raw.name,
  sheet: raw.name.replaceAll("_", " ").slice(0, 31),
  columns: raw.headers.map((heading) => ({ heading, hint: "", required: false, width: Math.max(12, heading.length + 2) })),
  rows: raw.rows,
});
