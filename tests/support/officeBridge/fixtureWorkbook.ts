/** Makes a workbook of the bridge from a fixture of the contract, and a snapshot from a workbook. */
import type { Fixture, FixtureSheet, SheetSnapshot, Snapshot } from "../../host/fixture";
import { resultSheetMark } from "../../../src/host/sheetNames";
import { blockAt, letters, rangeAddress } from "./addresses";
import { WorkbookModel, type SheetModel } from "./workbookModel";

export function workbookFrom({ dateSystem, sheets }: Fixture): WorkbookModel {
  const workbook = new WorkbookModel();
  workbook.date1904 = dateSystem === "1904";
  for (const fixture of sheets) fillSheet(workbook, workbook.addSheet(fixture.name), fixture);
  return workbook;
}

function fillSheet(
  workbook: WorkbookModel,
  sheet: SheetModel,
  { cells, formulas = {}, tables = [], ours, hidden, locked, unlocked = [] }: FixtureSheet,
): void {
  cells.forEach((row, down) =>
    row.forEach((value, across) => {
      if (value !== "") workbook.put({ sheet }, down, across, value, formulas[letters(across) + String(down + 1)]);
    }),
  );
  for (const { name, range, totalsRow = false } of tables) {
    const { row, column, rows, columns } = blockAt(sheet, range);
    workbook.tables.push({
      id: workbook.id("table"),
      name,
      sheet,
      row,
      column,
      bodyRows: rows - 1 - Number(totalsRow),
      columns,
      totals: totalsRow,
      showHeaders: true,
    });
  }
  if (ours) sheet.names.push({ name: resultSheetMark, formula: "=TRUE", visible: false });
  if (hidden) sheet.visibility = "Hidden";
  sheet.locked = locked ?? false;
  for (const address of unlocked) {
    const { row, column } = blockAt(sheet, address);
    sheet.unlocked.add(`${row},${column}`);
  }
}

export function snapshotOf(workbook: WorkbookModel): Snapshot {
  const { selected } = workbook;
  return {
    sheets: workbook.sheets.map((sheet) => sheetSnapshot(workbook, sheet)),
    selected: selected && { sheet: selected.sheet.name, cell: letters(selected.column) + String(selected.row + 1) },
  };
}

function sheetSnapshot(workbook: WorkbookModel, sheet: SheetModel): SheetSnapshot {
  const cells: Record<string, SheetSnapshot["cells"][string]> = {};
  sheet.cells.forEach((row, down) =>
    row.forEach(({ value, formula, looks }, across) => {
      if (value === "" && formula === undefined) return;
      const { numberFormat, bold } = looks;
      cells[letters(across) + String(down + 1)] = { value, ...(formula !== undefined && { formula }), numberFormat, bold };
    }),
  );
  return {
    name: sheet.name,
    cells,
    tables: workbook.tables
      .filter((table) => table.sheet === sheet)
      .map(({ name, totals, bodyRows, ...at }) => ({ name, range: rangeAddress({ ...at, rows: 1 + bodyRows + Number(totals) }) })),
    merges: sheet.merges,
    columnWidths: Array.from(
      { length: Math.max(0, ...[...sheet.widths.keys()].map((column) => column + 1)) },
      (_, column) => ((sheet.widths.get(column) ?? 48) / 0.75 - 5) / 7,
    ),
    frozenRows: sheet.frozenRows,
    titleRows: (sheet.page["titleRows"] as string | undefined) ?? null,
    orientation: sheet.page["orientation"] === "Landscape" ? "landscape" : "portrait",
    titleColumns: (sheet.page["titleColumns"] as string | undefined) ?? null,
    pagesWide: (sheet.page["zoom"] as { horizontalFitToPages?: number } | undefined)?.horizontalFitToPages ?? null,
    charts: sheet.charts.map(({ title, series }) => ({ title, series: series.length })),
    choices: [...sheet.validations].flatMap(([cell, { rule }]) => {
      const source = (rule as { list?: { source?: string } } | undefined)?.list?.source;
      return source === undefined ? [] : [{ cell, words: source.split(",") }];
    }),
  };
}
