/** Everything that a workbook of the bridge holds, without the ids that Excel makes up, to be compared. */
import { rangeAddress } from "./addresses";
import type { SheetModel, WorkbookModel } from "./workbookModel";

export const everythingIn = (workbook: WorkbookModel) => ({
  names: workbook.names,
  sheets: workbook.sheets.map((sheet) => ({
    name: sheet.name,
    cells: cellsOf(sheet),
    names: sheet.names,
    validations: [...sheet.validations].sort(),
    widths: [...sheet.widths].sort(),
    page: sheet.page,
    merges: sheet.merges,
    frozenRows: sheet.frozenRows,
    visibility: sheet.visibility,
    charts: sheet.charts.map(({ title, series, place }) => ({ title, series, place })),
    tables: workbook.tables
      .filter((table) => table.sheet === sheet)
      .map(({ name, bodyRows, totals, ...at }) => ({ name, range: rangeAddress({ ...at, rows: 1 + bodyRows + Number(totals) }) })),
  })),
});

/** Cells that are not as in a new sheet. */
const cellsOf = (sheet: SheetModel) =>
  sheet.cells.flatMap((row, down) =>
    row.flatMap((cell, across) => {
      const { numberFormat, bold, ...looks } = cell.looks;
      const isNew =
        cell.value === "" && cell.formula === undefined && numberFormat === "General" && !bold && Object.keys(looks).length === 0;
      return isNew ? [] : [{ at: `${down},${across}`, ...cell }];
    }),
  );
