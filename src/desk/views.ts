/** What the desk can show: a table of the season on its own, a sheet as it is, a result; and where each stands in the rail. */
import type { Block, At } from "../host/address";
import type { SheetPlace } from "../workbook/cell";
import { tableNames } from "../workbook/tableNames";
import { plain } from "../workbook/words";
import type { DeskSheet, GridTable } from "./gridBook";

/** Groups of the rail, as the work of a season goes; then what is not a table of ours. */
const railGroups = [
  { title: "Plan", tables: ["Season", "Crops", "Fields", "Budget", "Items", "Machines"] },
  { title: "Bought and done", tables: ["Purchases", "Applications", "Operations", "Other costs"] },
  { title: "Field and weather", tables: ["Stand counts", "Weather", "Weeds", "Planter checks", "Hybrids", "Hybrid trials", "Harvest"] },
  { title: "Grain and money", tables: ["Sales", "Loans", "Insurance", "Changes", "Past seasons"] },
] as const;
const [ownSheets, results] = ["Own sheets", "Results"] as const;

/** A sheet, or the part of it that one of our tables fills, as the grid shows it. */
export type View = DeskSheet & {
  /** Tells one view of the workbook from another. */
  readonly id: string;
  readonly kind: "table" | "own" | "result";
  readonly group: string;
  readonly title: string;
  /** The table that is shown alone, its headings above the columns; `null` for a sheet as it is. */
  readonly table: GridTable | null;
  /** The first cell that is shown. */
  readonly first: At;
  /** The rows in sight where a filter hides some; else all of them are. */
  readonly rowsShown?: readonly number[] | null;
};

/** The views of a workbook in the order of the rail. A sheet that holds anything beside our tables is shown as it is too. */
export function viewsOf(sheets: readonly DeskSheet[]): readonly View[] {
  const tables = sheets
    .flatMap((sheet) =>
      sheet.tables
        .filter(({ headingRow }) => headingRow !== null)
        .flatMap((table) => {
          const place = placeInRail(table.name);
          return place === null || sheet.isResult ? [] : [{ place, view: tableView(sheet, table, place.group, place.title) }];
        }),
    )
    .sort((a, b) => a.place.order - b.place.order)
    .map(({ view }) => view);
  const asTheyAre = sheets.filter(
    (sheet) => sheet.isResult || !tables.some((view) => view.name === sheet.name && isAlone(sheet, view.table!)),
  );
  const own = asTheyAre.filter(({ isResult }) => !isResult).map((sheet) => sheetView(sheet));
  const named = own.map((view) =>
    tables.some(({ title }) => title === view.title) ? { ...view, title: `${view.title}, whole sheet` } : view,
  );
  return [...tables, ...named, ...asTheyAre.filter(({ isResult }) => isResult).map((sheet) => sheetView(sheet))];
}

/** The view of a sheet as it is. */
const sheetView = (sheet: DeskSheet): View => ({
  ...sheet,
  id: `sheet ${sheet.name}`,
  title: sheet.name,
  table: null,
  first: { row: 0, column: 0 },
  ...(sheet.isResult ? { kind: "result", group: results } : { kind: "own", group: ownSheets }),
});

const tableView = (sheet: DeskSheet, table: GridTable, group: string, title: string): View => ({
  ...sheet,
  id: `table ${table.name}`,
  kind: "table",
  group,
  title,
  table,
  first: { row: (table.headingRow ?? table.block.top - 1) + 1, column: table.block.left },
});

function placeInRail(name: string): { readonly group: string; readonly title: string; readonly order: number } | null {
  let order = 0;
  for (const { title: group, tables } of railGroups) {
    for (const title of tables) {
      if (plain(title) === plain(name)) return { group, title, order };
      order += 1;
    }
  }
  const other = tableNames.find((each) => plain(each) === plain(name));
  return other === undefined ? null : { group: "Plan", title: other, order };
}

/** Whether a sheet holds nothing but the table and what stands right below its columns, which the table's view shows as well. */
function isAlone({ used, columnsBesideLists = used.columns, tables }: DeskSheet, { block }: GridTable): boolean {
  return tables.length === 1 && block.top === 0 && block.left === 0 && columnsBesideLists <= block.right + 1;
}

/** The rows and columns of a view: those in use and some to go on; of a table its columns and one row to go on with. */
export function extentOf(view: View, reached: readonly At[]): { readonly first: At; readonly rows: number; readonly columns: number } {
  const { first, used, table } = view;
  const row = Math.max(...reached.map((at) => at.row));
  if (table !== null)
    return { first, rows: Math.min(lastRowOfExcel, Math.max(used.rows, table.block.bottom + 2, row + 1)), columns: table.block.right + 1 };
  const column = Math.max(...reached.map((at) => at.column));
  return {
    first,
    rows: Math.min(lastRowOfExcel, Math.max(used.rows, row) + 50),
    columns: Math.min(lastColumnOfExcel, Math.max(used.columns, column, 10) + 4),
  };
}

/** The last cell of a view that is in use: of a table the end of its block. */
export const lastInUse = ({ first, table, used }: View): At => ({
  row: Math.max(table === null ? used.rows - 1 : table.block.bottom, first.row),
  column: Math.max(table === null ? used.columns - 1 : table.block.right, first.column),
});

const lastRowOfExcel = 1_048_576;
const lastColumnOfExcel = 16_384;

/** Where a cell is shown: in the view of its table, also right below that, else on its sheet. */
export function viewAt(views: readonly View[], { sheet, row, column }: SheetPlace): View | undefined {
  const holds = ({ block }: { readonly block: Block }, below: number) =>
    row > block.top && row <= block.bottom + below && column >= block.left && column <= block.right;
  const here = views.filter(({ name }) => name === sheet);
  return here.find(({ table }) => table !== null && holds(table, 1)) ?? here.find(({ table }) => table === null) ?? here[0];
}

/** How many entries a table holds; `null` for a sheet as it is. */
export const entriesIn = ({ table, first }: View): number | null =>
  table === null ? null : Math.max(table.block.bottom - first.row + 1, 0);

/** The view to begin with: where bills are entered, else the first table, else the first sheet that holds something. */
export const firstView = (views: readonly View[]): string =>
  (views.find(({ kind, title }) => kind === "table" && title === "Purchases") ?? views.find(({ used }) => used.rows > 0) ?? views[0])?.id ??
  "";

/** Whether a row is in sight. */
export const isShown = ({ rowsShown }: View, row: number): boolean =>
  rowsShown === undefined || rowsShown === null || rowsShown.includes(row);
