import type { InputColumn, InputTable } from "../../workbook/inputTable";
import { sameName, sheetNameChoices } from "../sheetNames";
import { HostError } from "../workbookHost";
import { cellName, columnName } from "../address";
import { putInputPage } from "./putPage";
import type { Supports } from "./supports";
import { widthInPoints } from "../sheetLook";
import { asTyped } from "./typed";

/** Longest list of choices, commas included, that Excel takes as text (a longer one needs cells), and longest hint. */
const longestList = 255;
/** Longest title of a hint. */
const longestTitle = 32;

/** Makes the tables that the workbook lacks, each on a new sheet, in one round trip after one that reads. */
export async function makeTables(
  context: Excel.RequestContext, tables: readonly InputTable[], supports: Supports, goOn: () => void,
): Promise<void> {
  const { workbook } = context;
  const there = workbook.tables.load("items/name");
  const sheets = workbook.worksheets.load("items/name");
  const protection = workbook.protection.load("protected");
  await context.sync();
  const missing = tables.filter(({ name }) => !there.items.some((table) => sameName(table.name, name)));
  if (missing.length === 0) return;
  if (protection.protected) {
    throw new HostError("protected", "The structure of this workbook is protected, so no sheet can be added. Unprotect it, then try again.");
  }
  goOn();
  const taken = new Set(sheets.items.map(({ name }) => name.toLowerCase()));
  for (const model of missing) {
    const name = freeName(model.sheet, taken);
    taken.add(name.toLowerCase());
    putTable(workbook.worksheets.add(name), model, supports);
  }
  await context.sync();
}

function freeName(wanted: string, taken: ReadonlySet<string>): string {
  for (const name of sheetNameChoices(wanted)) if (!taken.has(name.toLowerCase())) return name;
  throw new Error("The choices of names have no end");
}

function putTable(sheet: Excel.Worksheet, { name, columns, example }: InputTable, supports: Supports): void {
  const block = sheet.getRangeByIndexes(0, 0, 2, columns.length).untrack();
  block.numberFormat = [columns.map(() => "General"), columns.map(({ numberFormat }) => numberFormat ?? "General")];
  block.values = [columns.map(({ heading }) => asTyped(heading)), columns.map((_, index) => asTyped(example[index] ?? ""))];
  const table = sheet.tables.add(`A1:${cellName({ row: 1, column: columns.length - 1 })}`, true);
  table.name = name;
  table.style = "TableStyleLight1";
  columns.forEach((column, index) => {
    sheet.getRangeByIndexes(0, index, 1, 1).untrack().format.columnWidth = widthInPoints(column.width);
  });
  putInputPage(sheet, columns.map(({ width }) => width), supports);
  if (!supports("1.8")) return;
  let spare = columns.length + 1;
  columns.forEach((column, index) => {
    const validation = sheet.getRangeByIndexes(1, index, 1, 1).untrack().dataValidation;
    if (column.choices !== undefined) {
      const inCells = column.choices.join(",").length > longestList || column.choices.some((word) => word.includes(","));
      offer(validation, inCells ? listInCells(sheet, column, spare++) : column.choices.join(","));
    }
    const prompt = { showPrompt: true, title: column.heading.slice(0, longestTitle), message: `${column.hint}${column.required ? " Required." : ""}`.trim().slice(0, longestList) };
    validation.prompt = prompt;
    sheet.getRangeByIndexes(0, index, 1, 1).untrack().dataValidation.prompt = prompt;
  });
}

/** A drop-down list that also takes other entries, after a warning. */
function offer(validation: Excel.DataValidation, source: string): void {
  validation.rule = { list: { inCellDropDown: true, source } };
  validation.errorAlert = {
    showAlert: true, style: "Warning", title: "Not in the list",
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
