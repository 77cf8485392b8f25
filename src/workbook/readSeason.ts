/** From the cells of a workbook to a season, with every problem that stands in the way. */
import type { EntryRef } from "../core/row";
import { countingOf } from "../core/weather/fieldWeather";
import type { Season } from "../core/season";
import type { Cell, RawTable, SheetPlace, WorkbookContent } from "./cell";
import { applicationColumns } from "./columns/applications";
import { fieldColumns } from "./columns/fields";
import { purchaseColumns } from "./columns/purchases";
import { seasonColumns } from "./columns/season";
import { billsBesideDone } from "./billChecks";
import { budgetChecks } from "./budgetChecks";
import { budgetSheets } from "./budgetSheets";
import { budgetSums } from "./budgetSums";
import { crossChecks } from "./checks";
import { withoutExamples } from "./exampleRows";
import { findTables } from "./findTables";
import { harvestProblems } from "./harvestChecks";
import { headingProblems } from "./headings";
import { headingsBesideUnits, headingUnits } from "./headingUnits";
import { hybridProblems } from "./hybridChecks";
import { matchesTable, tableNames, type TableName } from "./tableNames";
import { openingProblems } from "./openingChecks";
import { ItemConverter } from "./itemUnits";
import type { Place, Problem } from "./problem";
import { publishedStandTables } from "./publishedStandTables";
import type { SeasonReading } from "./seasonReport";
import { loanChecks } from "./loanChecks";
import { settled } from "./settle";
import { pastNames, provenSettled } from "./settleProven";
import { budgetSettled } from "./settleBudget";
import { loansSettled } from "./settleLoans";
import { Names } from "./names";
import { inTheirHeadings } from "./oldHeadings";
import { TableReader } from "./tableReader";
import type { Style } from "./tableRow";
import { readBudget } from "./tables/budget";
import { readChanges } from "./tables/changes";
import { readCrops } from "./tables/crops";
import { readFields } from "./tables/fields";
import { readDocks } from "./tables/dockTables";
import { readSales } from "./tables/grainUnits";
import { readHarvest } from "./tables/harvest";
import { readHybrids } from "./tables/hybrids";
import { readHybridTrials } from "./tables/hybridTrials";
import { readWeather } from "./tables/weather";
import { readWeeds } from "./tables/weeds";
import { spotProblems } from "./spotChecks";
import { standProblems } from "./standChecks";
import { weatherProblems } from "./weatherChecks";
import { mixProblems, weedProblems } from "./weedChecks";
import { readApplications, readItems } from "./tables/items";
import { readInsurance } from "./tables/insurance";
import { readLoans } from "./tables/loans";
import { readMachines } from "./tables/machines";
import { readOperations, readOtherCosts } from "./tables/operations";
import { readOwnStandTables } from "./tables/ownStandTables";
import { typingStyle, readSettings } from "./tables/settings";
import { readPastSeasons } from "./tables/pastSeasons";
import { readPlanterChecks } from "./tables/planterChecks";
import { readStandCounts } from "./tables/standCounts";
import { nothingRead, readPurchases } from "./tables/purchases";
import { TargetPlaces } from "./tables/targets";
import { sumRows } from "./sumRows";
import { yearsOfEntries } from "./seasonYear";
import { problemsBySubject } from "./touched";
import { plain, plainHeading } from "./words";

/** The texts of the row that is being entered in a table. */
const openCells = (reader: TableReader | undefined): readonly string[] =>
  reader === undefined || reader.openRow === null
    ? []
    : (reader.raw.rows[reader.openRow] ?? []).filter((cell): cell is string => typeof cell === "string" && cell.trim() !== "");

/** The items that rows of Applications name. */
function appliedItems(reader: TableReader | undefined, items: Names): ReadonlySet<string> {
  const column = reader?.indexOf("Item") ?? -1;
  return new Set(
    reader === undefined || column < 0 ? [] : reader.raw.rows.flatMap((cells) => items.spelled(String(cells[column] ?? "").trim()) ?? []),
  );
}

/** The tables without which there is nothing to compute. */
const needed = ["Crops", "Fields"] as const;

/**
 * Reads everything that can be read. A row with a fault in a cell that it cannot do without is left out; a fault in
 * another cell leaves that cell blank. Either way the fault is among the problems.
 *
 * @param isTyping whether somebody is at the workbook, so that a half-typed last row is being entered and no fault yet
 */
export function readSeason(content: WorkbookContent, isTyping = false): SeasonReading {
  const found = findTables(content);
  const { own } = found;
  const { tables, problems: exampleProblems } = withoutExamples(found.tables);
  const typing = typingStyle(tables.get("Season") ?? null);
  const style: Style = { ...typing, dayFirst: typing.decimalComma, dateSystem: content.dateSystem, isTyping };
  const readers = new Map([...tables].map(([name, raw]) => [name, new TableReader(name, raw, style)]));
  const { settings: entered, problems: settingProblems } = readSettings(tables.get("Season") ?? null, style);
  const years = entered.seasonYear === null ? yearsOfEntries(tables, style) : [entered.seasonYear];
  const settings = { ...entered, seasonYear: years.length === 1 ? years[0]! : null };
  const from = <Entries>(name: TableName, read: (table: TableReader) => readonly Entries[]): readonly Entries[] => {
    const table = readers.get(name);
    return table === undefined ? [] : read(table);
  };

  const [cropNames, fieldNames, itemNames, machineNames] = [new Names(), new Names(), new Names(), new Names()];
  const crops = from("Crops", (table) => readCrops(table, cropNames, settings));
  const forget = (table: "Crops" | "Fields" | "Items" | "Machines", names: Names) => {
    for (const cell of openCells(readers.get(table))) names.forget(cell);
  };
  cropNames.keep(crops.map((crop) => crop.name));
  forget("Crops", cropNames);
  const fields = from("Fields", (table) => readFields(table, fieldNames, cropNames));
  fieldNames.keep(fields.map((field) => field.name));
  forget("Fields", fieldNames);
  const units = from("Items", (table) => readItems(table, itemNames, settings.areaUnit, style, firstUnits(tables)));
  const machines = from("Machines", (table) => readMachines(table, machineNames, settings));
  itemNames.keep(units.map(({ item }) => item.name));
  machineNames.keep(machines.map((machine) => machine.name));
  forget("Items", itemNames);
  forget("Machines", machineNames);
  const byItem = new Map(units.map((each) => [each.item.name, each]));
  const byField = new Map(fields.map((field) => [field.name, field]));
  const byCrop = new Map(crops.map((crop) => [crop.name, crop]));
  const places = new TargetPlaces(fieldNames, cropNames, fields);
  const converter = new ItemConverter(settings.areaUnit);
  const standTables = readOwnStandTables(own, {
    settings,
    others: content.others ?? [],
    crops,
    style,
    setting: settingPlace(tables.get("Season"), "Stand response"),
  });
  const docks = readDocks(own, {
    settings,
    others: content.others ?? [],
    crops,
    style,
    setting: settingPlace(tables.get("Season"), "Test weight dock"),
  });
  const hybrids = from("Hybrids", (table) => readHybrids(table, crops, fields, cropNames));
  const purchaseTable = readers.get("Purchases");
  const { noted, ...bought } =
    purchaseTable === undefined
      ? nothingRead
      : readPurchases(
          purchaseTable,
          {
            items: itemNames,
            units: byItem,
            places,
            applied: appliedItems(readers.get("Applications"), itemNames),
            seasonYear: settings.seasonYear,
          },
          converter,
        );
  const read: Season = {
    settings,
    crops,
    fields,
    machines,
    standTables: standTables.tables,
    published: publishedStandTables,
    items: units.map(({ item }) => item),
    budget: from("Budget", (table) => readBudget(table, places, settings.seasonYear)),
    ...bought,
    applications: from("Applications", (table) => readApplications(table, places, itemNames, byItem, converter)),
    operations: from("Operations", (table) => readOperations(table, places, machineNames)),
    otherCosts: from("Other costs", (table) => readOtherCosts(table, places, settings.seasonYear)),
    loans: from("Loans", (table) => readLoans(table, places)),
    insurance: from("Insurance", (table) => readInsurance(table, cropNames)),
    standCounts: from("Stand counts", (table) => readStandCounts(table, fieldNames, byField)),
    weather: from("Weather", (table) => readWeather(table, countingOf({ settings }).unit)),
    hybrids,
    hybridTrials: from("Hybrid trials", (table) => readHybridTrials(table, { crops, fields, hybrids, docks: docks.docks })),
    weeds: from("Weeds", (table) => readWeeds(table, places)),
    planterChecks: from("Planter checks", (table) => readPlanterChecks(table, machineNames, itemNames)),
    pastSeasons: from("Past seasons", (table) =>
      readPastSeasons(table, { fields: fieldNames, crops: cropNames, byField, byCrop, seasonYear: settings.seasonYear }),
    ),
    sales: from("Sales", (table) => readSales(table, cropNames, byCrop, settings.seasonYear)),
    harvest: from("Harvest", (table) => readHarvest(table, fieldNames, byField, byCrop, docks.docks)),
    changes: from("Changes", (table) => readChanges(table, places, { crops, fields, settings })),
  };
  const { season: once, problems: twice } = settled(read);
  const { season: beforeBudget, problems: besideLoans } = loansSettled(once, settingPlace(tables.get("Season"), "Operating interest rate"));
  const { season: withoutHistory, problems: besideLines } = budgetSettled(beforeBudget, (setting) =>
    settingPlace(tables.get("Season"), setting),
  );
  const season = provenSettled(withoutHistory);
  const isUnreadable = (name: TableName) => found.problems.some(({ code, at }) => code === "table-unreadable" && at.table === name);
  const missing = needed
    .filter((name) => !tables.has(name) && !isUnreadable(name))
    .map((name): Problem => ({ code: "table-missing", at: { table: name }, found: "", touches: [{ of: "farm" }] }));
  const headings = [...tables].flatMap(([name, raw]) => [
    ...headingProblems(name, raw),
    ...headingsBesideUnits(name, raw),
    ...(raw.parts ?? [raw]).flatMap((part) =>
      headingUnits(name, part, { areaUnit: settings.areaUnit, yieldUnits: [...new Set(crops.map((crop) => crop.yieldUnit))] }),
    ),
  ]);
  const readerProblems = [...readers.values()].flatMap((reader) => reader.problems);
  const isAskedAlready = readerProblems.some(({ code }) => code === "year-missing");
  const yearAsked = isAskedAlready ? [] : yearProblems(season, years, settingPlace(tables.get("Season"), "Season year"));
  const all = [
    ...missing,
    ...found.problems,
    ...exampleProblems,
    ...headings,
    ...sumRows(tables, style),
    ...settingProblems,
    ...yearAsked,
    ...standTables.problems,
    ...docks.problems,
    ...readerProblems,
    ...twice,
    ...besideLoans,
    ...besideLines,
    ...budgetChecks(readers.get("Budget"), season),
    ...budgetSums(season.budget),
    ...budgetSheets(readers.get("Budget"), season.budget),
    ...crossChecks(season),
    ...billsBesideDone(season, noted),
    ...loanChecks(season),
    ...standProblems(season),
    ...spotProblems(season),
    ...weatherProblems(season),
    ...hybridProblems(season),
    ...weedProblems(season),
    ...mixProblems(season),
    ...pastNames(season),
    ...openingProblems(season),
    ...harvestProblems(season, readers.get("Fields")?.has(fieldColumns.columns.harvestDone) ?? false),
  ];
  const withPlaces = [...tables.values(), ...own, ...content.tables.filter(({ name }) => plain(name) === plain(matchesTable))];
  const problems = inTheirHeadings(
    inOrder(
      oncePerCell(
        withPlaces,
        all.filter((problem) => !namesWhatWasLost(problem, missing)),
      ),
    ),
    tables,
  );
  return {
    season,
    problems,
    problemsOf: problemsBySubject(season, problems),
    placeOf: (place) => placeOf(withPlaces, place),
    tablesFound: new Set(tables.keys()),
  };
}

/** A missing table explains every name that is looked for in it: those are not problems of their own. */
function namesWhatWasLost({ code }: Problem, missing: readonly Problem[]): boolean {
  return missing.length > 0 && (code === "unknown-name" || code === "target-missing");
}

/** In the order of our tables and then of their rows; what is wrong with a table as a whole comes first. */
export function inOrder(problems: readonly Problem[]): readonly Problem[] {
  const tables = new Map<string, number>(tableNames.map((name, index) => [name, index]));
  const of = ({ at }: Problem) => tables.get(at.table) ?? tables.size;
  return [...problems].sort((a, b) => of(a) - of(b) || (a.at.row ?? 0) - (b.at.row ?? 0));
}

/** The unit in which each item is first bought, or else first used: what counts for one without a pack. */
function firstUnits(tables: ReadonlyMap<TableName, RawTable>): ReadonlyMap<string, string> {
  const units = new Map<string, string>();
  for (const [name, heading] of [
    ["Purchases", purchaseColumns.columns.unit.heading],
    ["Applications", applicationColumns.columns.rateUnit.heading],
  ] as const) {
    const raw = tables.get(name);
    if (raw === undefined) continue;
    const column = (wanted: string) => raw.headers.findIndex((each) => plainHeading(each) === plainHeading(wanted));
    const [item, unit] = [column("Item"), column(heading)];
    // Thousands of rows name a few things: each spelling is looked at once it has a unit, and then no more.
    const seen = new Set<Cell>();
    for (const row of raw.rows) {
      const name = row[item] ?? "";
      if (seen.has(name)) continue;
      const key = plain(String(name));
      const typed = String(row[unit] ?? "").trim();
      if (key === "" || typed === "") continue;
      seen.add(name);
      if (!units.has(key)) units.set(key, typed);
    }
  }
  return units;
}

/** The cell of a setting; the table Season where it has no row. */
function settingPlace(raw: RawTable | undefined, setting: string): Place {
  const column = raw?.headers.findIndex((heading) => plainHeading(heading) === plainHeading(seasonColumns.columns.setting.heading)) ?? -1;
  const row = raw?.rows.findIndex((cells) => plain(String(cells[column] ?? "")) === plain(setting)) ?? -1;
  return row < 0 ? { table: "Season" } : { table: "Season", row: row + 1, column: seasonColumns.columns.value.heading };
}

/** The year is asked for where the dates disagree, and where a loan falls due in a year that nothing tells. */
function yearProblems({ settings, loans }: Season, years: readonly string[], at: Place): readonly Problem[] {
  const isNeeded = years.length > 1 || loans.length > 0;
  if (settings.seasonYear !== null || !isNeeded) return [];
  return [{ code: "season-year-missing", at, found: years.join(", "), touches: [{ of: "cash flow" }] }];
}

/** Several entries may be made of one cell of the grower's own, such as a field's name beside ten costs: a fault in it is one. */
function oncePerCell(tables: readonly RawTable[], problems: readonly Problem[]): readonly Problem[] {
  const told = new Set<string>();
  return problems.filter(({ code, at, found }) => {
    const place = placeOf(tables, at);
    if (place?.isOwn !== true) return true;
    const key = JSON.stringify([code, place, found]);
    return !told.has(key) && told.add(key);
  });
}

function placeOf(tables: readonly RawTable[], place: Place | EntryRef): SheetPlace | null {
  const raw = tables.find(({ name }) => plain(name) === plain(place.table));
  if (raw === undefined) return null;
  const wanted = "column" in place && place.column !== undefined ? plainHeading(place.column) : null;
  const among = (headings: readonly string[]) => headings.findIndex((heading) => plainHeading(heading) === wanted);
  const column = wanted === null ? 0 : Math.max(0, [raw.headers, raw.called ?? []].map(among).find((index) => index >= 0) ?? 0);
  const origin = raw.origins?.[(place.row ?? 1) - 1];
  if (origin !== undefined) return { sheet: origin.sheet, row: origin.row, column: origin.columns[column] ?? raw.body.column, isOwn: true };
  return {
    sheet: raw.body.sheet,
    row: raw.body.row + (place.row ?? 1) - 1,
    column: raw.body.column + (raw.made?.includes(column) === true ? 0 : column),
  };
}
