/** From the cells of a workbook to a season, with every problem that stands in the way. */
import { accounts } from "../core/accounts";
import { areTheSame, ReadingMemory } from "../core/readingMemory";
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
const openCells = (reader: TableReader): readonly string[] =>
  reader.openRow === null
    ? []
    : (reader.raw.rows[reader.openRow] ?? []).filter((cell): cell is string => typeof cell === "string" && cell.trim() !== "");

/** The items that rows of Applications name. */
function appliedItems(raw: RawTable | undefined, items: Names): ReadonlySet<string> {
  const column = raw?.headers.findIndex((each) => plainHeading(each) === plainHeading(applicationColumns.columns.item.heading)) ?? -1;
  return new Set(
    raw === undefined || column < 0 ? [] : raw.rows.flatMap((cells) => items.spelled(String(cells[column] ?? "").trim()) ?? []),
  );
}

/** The same season, with what settling put together anew in the place of what it was, where it says the same. */
const untouched = (season: Season, kept: ReadingMemory): Season => ({
  ...season,
  items: kept.as("items", season.items),
  fields: kept.as("fields", season.fields),
  budget: kept.as("budget", season.budget),
  otherCosts: kept.as("other costs", season.otherCosts),
  standTables: kept.as("stand tables", season.standTables),
  ...(season.bills === undefined ? {} : { bills: kept.as("bills", season.bills) }),
});

/** The tables without which there is nothing to compute. */
const needed = ["Crops", "Fields"] as const;

/**
 * Reads everything that can be read. A row with a fault in a cell that it cannot do without is left out; a fault in
 * another cell leaves that cell blank. Either way the fault is among the problems.
 *
 * @param isTyping whether somebody is at the workbook, so that a half-typed last row is being entered and no fault yet
 * @param kept of the last reading of the same workbook; a new one is begun where nothing is
 */
export function readSeason(content: WorkbookContent, isTyping = false, kept = new ReadingMemory()): SeasonReading {
  const found = findTables(content);
  const own = kept.as("own", found.own);
  const { tables: asFound, problems: exampleProblems } = withoutExamples(found.tables);
  const tables = new Map([...asFound].map(([name, raw]) => [name, kept.as(`table ${name}`, raw)]));
  const typing = typingStyle(tables.get("Season") ?? null);
  const style: Style = kept.as("style", { ...typing, dayFirst: typing.decimalComma, dateSystem: content.dateSystem, isTyping });
  const { settings: entered, problems: settingProblems } = kept.of("settings as entered", [tables.get("Season"), style], () =>
    readSettings(tables.get("Season") ?? null, style),
  );
  const years = entered.seasonYear === null ? yearsOfEntries(tables, style) : [entered.seasonYear];
  const seasonYear = years.length === 1 ? years[0]! : null;
  const settings = kept.of("settings", [entered, seasonYear], () => ({ ...entered, seasonYear }));
  const readers = new Map<TableName, TableReader>();
  /** What a table says. `given`: all that `read` rests on besides the table. */
  const tableRead = <Entries>(
    name: TableName,
    given: readonly unknown[],
    read: (table: TableReader) => Entries,
    none: () => Entries,
  ): Entries => {
    const raw = tables.get(name);
    const { reader, entries } = kept.of<{ readonly reader: TableReader | null; readonly entries: Entries }>(
      name,
      [raw, style, ...given],
      (last) => {
        if (raw === undefined) return { reader: null, entries: none() };
        const reader = new TableReader(
          name,
          raw,
          style,
          last !== null && areTheSame(last.given, [raw, style, ...given], 1) ? last.value.reader : null,
        );
        return { reader, entries: read(reader) };
      },
    );
    if (reader !== null) readers.set(name, reader);
    return entries;
  };
  const from = <Entry>(name: TableName, given: readonly unknown[], read: (table: TableReader) => readonly Entry[]) =>
    tableRead<readonly Entry[]>(name, given, read, () => []);
  /** The same of a table whose rows others refer to by name. */
  const named = <Entry>(
    name: TableName,
    given: readonly unknown[],
    read: (table: TableReader, names: Names) => readonly Entry[],
    nameOf: (entry: Entry) => string,
  ) =>
    tableRead(
      name,
      given,
      (table) => {
        const names = new Names();
        const entries = read(table, names);
        names.keep(entries.map(nameOf));
        for (const cell of openCells(table)) names.forget(cell);
        return { names, entries };
      },
      () => ({ names: new Names(), entries: [] as readonly Entry[] }),
    );

  const { names: cropNames, entries: crops } = named(
    "Crops",
    [settings],
    (table, names) => readCrops(table, names, settings),
    ({ name }) => name,
  );
  const { names: fieldNames, entries: fields } = named(
    "Fields",
    [cropNames],
    (table, names) => readFields(table, names, cropNames),
    ({ name }) => name,
  );
  const unitsFirst = kept.as("first units", firstUnits(tables));
  const { names: itemNames, entries: units } = named(
    "Items",
    [settings, unitsFirst],
    (table, names) => readItems(table, names, settings.areaUnit, style, unitsFirst),
    ({ item }) => item.name,
  );
  const { names: machineNames, entries: machines } = named(
    "Machines",
    [settings],
    (table, names) => readMachines(table, names, settings),
    ({ name }) => name,
  );
  const byItem = kept.of("items by name", [units], () => new Map(units.map((each) => [each.item.name, each])));
  const byField = kept.of("fields by name", [fields], () => new Map(fields.map((field) => [field.name, field])));
  const byCrop = kept.of("crops by name", [crops], () => new Map(crops.map((crop) => [crop.name, crop])));
  const places = kept.of("places", [fieldNames, cropNames, fields], () => new TargetPlaces(fieldNames, cropNames, fields));
  const converter = kept.of("converter", [settings], () => new ItemConverter(settings.areaUnit));
  const standTables = readOwnStandTables(own, {
    settings,
    others: content.others ?? [],
    crops,
    style,
    setting: settingPlace(tables.get("Season"), "Stand response"),
  });
  const others = kept.as("others", content.others ?? []);
  const docks = kept.of("docks", [own, others, settings, crops, style, tables.get("Season")], () =>
    readDocks(own, { settings, others, crops, style, setting: settingPlace(tables.get("Season"), "Test weight dock") }),
  );
  const hybrids = from("Hybrids", [crops, fields, cropNames], (table) => readHybrids(table, crops, fields, cropNames));
  const applied = kept.as("applied", appliedItems(tables.get("Applications"), itemNames));
  const { noted, ...bought } = tableRead(
    "Purchases",
    [itemNames, byItem, places, applied, seasonYear, converter],
    (table) => readPurchases(table, { items: itemNames, units: byItem, places, applied, seasonYear }, converter),
    () => nothingRead,
  );
  const read: Season = {
    settings,
    crops,
    fields,
    machines,
    standTables: standTables.tables,
    published: publishedStandTables,
    items: units.map(({ item }) => item),
    budget: from("Budget", [places, seasonYear], (table) => readBudget(table, places, seasonYear)),
    ...bought,
    applications: from("Applications", [places, itemNames, byItem, converter], (table) =>
      readApplications(table, places, itemNames, byItem, converter),
    ),
    operations: from("Operations", [places, machineNames], (table) => readOperations(table, places, machineNames)),
    otherCosts: from("Other costs", [places, seasonYear], (table) => readOtherCosts(table, places, seasonYear)),
    loans: from("Loans", [places], (table) => readLoans(table, places)),
    insurance: from("Insurance", [cropNames], (table) => readInsurance(table, cropNames)),
    standCounts: from("Stand counts", [fieldNames, byField], (table) => readStandCounts(table, fieldNames, byField)),
    weather: from("Weather", [settings], (table) => readWeather(table, countingOf({ settings }).unit)),
    hybrids,
    hybridTrials: from("Hybrid trials", [crops, fields, hybrids, docks], (table) =>
      readHybridTrials(table, { crops, fields, hybrids, docks: docks.docks }),
    ),
    weeds: from("Weeds", [places], (table) => readWeeds(table, places)),
    planterChecks: from("Planter checks", [machineNames, itemNames], (table) => readPlanterChecks(table, machineNames, itemNames)),
    pastSeasons: from("Past seasons", [fieldNames, cropNames, byField, byCrop, seasonYear], (table) =>
      readPastSeasons(table, { fields: fieldNames, crops: cropNames, byField, byCrop, seasonYear }),
    ),
    sales: from("Sales", [cropNames, byCrop, seasonYear], (table) => readSales(table, cropNames, byCrop, seasonYear)),
    harvest: from("Harvest", [fieldNames, byField, byCrop, docks], (table) => readHarvest(table, fieldNames, byField, byCrop, docks.docks)),
    changes: from("Changes", [places, crops, fields, settings], (table) => readChanges(table, places, { crops, fields, settings })),
  };
  const { season: once, problems: twice } = settled(read);
  const { season: beforeBudget, problems: besideLoans } = loansSettled(once, settingPlace(tables.get("Season"), "Operating interest rate"));
  const { season: withoutHistory, problems: besideLines } = budgetSettled(beforeBudget, (setting) =>
    settingPlace(tables.get("Season"), setting),
  );
  const season = untouched(provenSettled(withoutHistory), kept);
  accounts(season, kept);
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
  const readerProblems = [...tables.keys()].flatMap((name) => readers.get(name)?.problems ?? []);
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
