/** Input tables on new sheets of their own. */
import { hintWords, rowsMade, type InputColumn, type InputTable } from "../../../workbook/inputTable";
import { sheetNameChoices } from "../../sheetNames";
import { pageNumber, pagesWide, sheetTitle } from "../../sheetLook";
import { areaName, cellName, columnName, quotedSheet, type Block } from "../../address";
import { bookOf } from "../book";
import { cellXml } from "../sheet/cellXml";
import { addSheet, contentType, head, printTitles, setNamesOfSheet, spreadsheet, worksheet } from "./newSheets";
import type { PackageEdit } from "../package/packageParts";
import type { StoredCell } from "../sheet/sheetRow";
import type { StyleMaker } from "../package/styles";
import { escapeAttribute, escapeText, textOf } from "../package/xml";

/** So many rows below the headings get the drop-down lists, for the table to grow into. */
const rowsWithChoices = 2000;
/** Excel's limits for a list that stands in the validation itself, for a hint, and for its title. */
const longestList = 255;
const longestPrompt = 255;
const longestTitle = 32;

/** Makes an input table: headings, formats, drop-down lists, a hint that shows as a cell is selected, and a first row for entries. */
export function writeInputTable(edit: PackageEdit, styles: StyleMaker, table: InputTable): void {
  const { columns } = table;
  const odd = rowsMade(table).find((row) => row.length !== columns.length);
  if (odd !== undefined) throw new RangeError(`the table ${table.name} has ${columns.length} columns and a row of ${odd.length}`);
  const sheet = freeSheetName(edit, table.sheet);
  const part = addSheet(edit, sheet, worksheet("", ""));
  const file = edit.freeName("xl/tables/table", ".xml");
  const id = freeTableId(edit);
  edit.add(file, tableXml(table, id), contentType("spreadsheetml.table"));
  edit.put(part, inputSheetXml(styles, table, edit.relate(part, "table", file)));
  // Lists of choices beside the table are not printed.
  const printed = `${quotedSheet(sheet)}!$A:$${columnName(columns.length - 1)}`;
  setNamesOfSheet(edit, sheet, { "_xlnm.Print_Area": printed, ...printTitles(sheet, 1, pagesWideOf(table) > 1) });
}

const pagesWideOf = ({ columns }: InputTable): number => pagesWide(columns.map(({ width }) => width));

function freeSheetName(edit: PackageEdit, wanted: string): string {
  const taken = new Set(bookOf(edit.parts).sheets.map(({ name }) => name.toLowerCase()));
  for (const name of sheetNameChoices(wanted)) if (!taken.has(name.toLowerCase())) return name;
  throw new RangeError("there is always another name");
}

/** A table's number, which no other table of the workbook may have. */
function freeTableId(edit: PackageEdit): number {
  const taken = [...edit.parts]
    .filter(([name]) => /\/tables\/[^/]*\.xml$/i.test(name))
    .map(([, bytes]) => Number(/<[\w:]*table\s[^>]*?\sid="(\d+)"/.exec(textOf(bytes))?.[1] ?? "0"));
  return Math.max(0, ...taken) + 1;
}

function tableXml(table: InputTable, id: number): string {
  const { name, columns } = table;
  const range = areaName({ top: 0, left: 0, bottom: rowsMade(table).length, right: columns.length - 1 });
  const columnsXml = columns.map(({ heading }, index) => `<tableColumn id="${index + 1}" name="${escapeAttribute(heading)}"/>`).join("");
  return (
    `${head}<table xmlns="${spreadsheet}" id="${id}" name="${name}" displayName="${name}" ref="${range}" totalsRowShown="0">` +
    `<autoFilter ref="${range}"/><tableColumns count="${columns.length}">${columnsXml}</tableColumns><tableStyleInfo ` +
    'name="TableStyleLight1" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/></table>'
  );
}

/** What stands above the words of a list beside a table. */
export const listHeading = (heading: string): string => `Choices for ${heading}`;

/** A list that is too long for a validation, or has a comma in a word, stands in cells to the right of the table, in sight. */
type ListInCells = { readonly heading: string; readonly words: readonly string[]; readonly column: number };

function listsInCells(columns: readonly InputColumn[]): readonly ListInCells[] {
  let spare = columns.length;
  return columns.flatMap(({ heading, choices = [] }) => {
    const fits = choices.join(",").length <= longestList && !choices.some((word) => /[",]/.test(word));
    if (choices.length === 0 || fits) return [];
    spare += 1;
    return [{ heading, words: choices, column: spare }];
  });
}

function inputSheetXml(styles: StyleMaker, table: InputTable, tableId: string): string {
  const { columns } = table;
  const heading = styles.number({ bold: true, wrap: true });
  const formats = columns.map(({ numberFormat }) => (numberFormat === undefined ? 0 : styles.number({ numberFormat })));
  const lists = listsInCells(columns);
  const rows: StoredCell[][] = [
    columns.map((column, index) => ({ column: index, value: column.heading, style: heading })),
    ...rowsMade(table).map((row) => row.map((value, index) => ({ column: index, value, style: formats[index]! }))),
  ];
  for (const { heading: name, words, column } of lists) {
    [listHeading(name), ...words].forEach((word, row) => (rows[row] ??= []).push({ column, value: word, style: 0 }));
  }
  const widths = columns
    .map(
      ({ width }, index) =>
        `<col min="${index + 1}" max="${index + 1}" width="${width}" ` +
        `customWidth="1"${formats[index] === 0 ? "" : ` style="${formats[index]!}"`}/>`,
    )
    .join("");
  const before =
    '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><sheetViews><sheetView workbookViewId="0"><pane ySplit="1" ' +
    'topLeftCell="A2" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft"/></sheetView></sheetViews>' +
    `<sheetFormatPr defaultRowHeight="15"/><cols>${widths}</cols>`;
  const data = rows
    .map(
      (cells, row) =>
        `<row r="${row + 1}">${cells
          .filter(({ value, style }) => value !== "" || style !== 0)
          .map((cell) => cellXml("", row, cell))
          .join("")}</row>`,
    )
    .join("");
  const validations = columns.flatMap((column, index) => [
    hintXml(column, { top: 0, left: index, bottom: 0, right: index }, null),
    hintXml(column, { top: 1, left: index, bottom: rowsWithChoices, right: index }, listSource(column, lists)),
  ]);
  return worksheet(
    before,
    data,
    `<dataValidations count="${validations.length}">${validations.join("")}</dataValidations><pageMargins left="0.5" right="0.5" ` +
      `top="0.6" bottom="0.6" header="0.3" footer="0.3"/><pageSetup orientation="landscape" fitToWidth="${pagesWideOf(table)}" ` +
      `fitToHeight="0"/><headerFooter><oddFooter>${escapeText(`&L&8${sheetTitle}&R&8${pageNumber}`)}</oddFooter></headerFooter>` +
      `<tableParts count="1"><tablePart r:id="${tableId}"/></tableParts>`,
  );
}

/** Where the words of a column's list are, as a validation's formula; null where it has none. */
function listSource({ heading, choices = [] }: InputColumn, lists: readonly ListInCells[]): string | null {
  if (choices.length === 0) return null;
  const inCells = lists.find((list) => list.heading === heading);
  if (inCells === undefined) return `"${choices.join(",")}"`;
  const letters = columnName(inCells.column);
  return `$${letters}$2:$${letters}$${choices.length + 1}`;
}

/** The hint that is shown at cells and, where there is a list, the list, which also takes other entries after a warning. */
function hintXml(column: InputColumn, area: Block, source: string | null): string {
  const { heading } = column;
  const words = hintWords(column);
  const prompt =
    words === ""
      ? ""
      : ` showInputMessage="1" promptTitle="${escapeAttribute(heading.slice(0, longestTitle))}" ` +
        `prompt="${escapeAttribute(words.slice(0, longestPrompt))}"`;
  const cells = area.top === area.bottom ? cellName({ row: area.top, column: area.left }) : areaName(area);
  if (source === null) return `<dataValidation allowBlank="1"${prompt} sqref="${cells}"/>`;
  const warning =
    ' errorStyle="warning" allowBlank="1" showErrorMessage="1" errorTitle="Not in the list" error="Pennyacre may not know ' +
    'this word. Keep it all the same?"';
  return `<dataValidation type="list"${warning}${prompt} sqref="${cells}"><formula1>${escapeText(source)}</formula1></dataValidation>`;
}
