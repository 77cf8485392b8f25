import { hintWords, rowsMade, type InputColumn, type InputTable } from "../../workbook/inputTable";
import { cellName, columnName } from "../address";
import { widthInPoints } from "../sheetLook";
import { unfinishedMark, type TablePlace } from "./placesForTables";
import { putInputPage } from "./putPage";
import type { Supports } from "./supports";
import { asTyped } from "./typedCells";

/** Longest list of choices, commas included, that Excel takes as text (a longer one needs cells), and longest hint. */
const longestList = 255;
/** Longest title of a hint. */
const longestTitle = 32;

/** Makes an input table on its sheet, or finishes one; what is there already is not written again. */
export function putTable(workbook: Excel.Workbook, { model, name, old }: TablePlace, supports: Supports): void {
  const sheet = old?.sheet ?? workbook.worksheets.add(name);
  const mark = old?.isMarked ? sheet.names.getItem(unfinishedMark) : sheet.names.add(unfinishedMark, "=1");
  mark.visible = false;
  putEntries(sheet, model, old?.table ?? null);
  putLooks(sheet, model, supports);
  mark.delete();
}

/** The headings and the rows, and the table over them, which gets its name at once. */
function putEntries(sheet: Excel.Worksheet, model: InputTable, old: Excel.Table | null): void {
  const { name, columns } = model;
  const rows = rowsMade(model);
  if (old === null) {
    const block = sheet.getRangeByIndexes(0, 0, 1 + rows.length, columns.length).untrack();
    block.numberFormat = [columns.map(() => "General"), ...rows.map(() => columns.map(({ numberFormat }) => numberFormat ?? "General"))];
    block.values = [columns.map(({ heading }) => asTyped(heading)), ...rows.map((row) => row.map(asTyped))];
  }
  const table = old ?? sheet.tables.add(`A1:${cellName({ row: rows.length, column: columns.length - 1 })}`, true);
  if (old?.name.toLowerCase() !== name.toLowerCase()) table.name = name;
  table.style = "TableStyleLight1";
}

/** Widths, page, lists of choices and hints: all of it can be put in place twice. */
function putLooks(sheet: Excel.Worksheet, model: InputTable, supports: Supports): void {
  const { columns } = model;
  columns.forEach((column, index) => {
    sheet.getRangeByIndexes(0, index, 1, 1).untrack().format.columnWidth = widthInPoints(column.width);
  });
  putInputPage(
    sheet,
    columns.map(({ width }) => width),
    supports,
  );
  if (!supports("1.8")) return;
  let spare = columns.length + 1;
  columns.forEach((column, index) => {
    const validation = sheet.getRangeByIndexes(1, index, rowsMade(model).length, 1).untrack().dataValidation;
    if (column.choices !== undefined) {
      const inCells = column.choices.join(",").length > longestList || column.choices.some((word) => word.includes(","));
      offer(validation, inCells ? listInCells(sheet, column, spare++) : column.choices.join(","));
    }
    const prompt = { showPrompt: true, title: column.heading.slice(0, longestTitle), message: hintWords(column).slice(0, longestList) };
    validation.prompt = prompt;
    sheet.getRangeByIndexes(0, index, 1, 1).untrack().dataValidation.prompt = prompt;
  });
}

/** A drop-down list that also takes other entries, after a warning. */
function offer(validation: Excel.DataValidation, source: string): void {
  validation.rule = { list: { inCellDropDown: true, source } };
  validation.errorAlert = {
    showAlert: true,
    style: "Warning",
    title: "Not in the list",
    message: "Pennyacre may not know this word. Keep it all the same?",
  };
}

/** Puts a long list of choices to the right of the table, where the grower can see it, and gives the formula that points there. */
function listInCells(sheet: Excel.Worksheet, { heading, choices = [] }: InputColumn, column: number): string {
  const list = sheet.getRangeByIndexes(0, column, choices.length + 1, 1).untrack();
  list.values = [[asTyped(`Choices for ${heading}`)], ...choices.map((word) => [asTyped(word)])];
  const letters = columnName(column);
  return `=$${letters}$2:$${letters}$${choices.length + 1}`;
}
