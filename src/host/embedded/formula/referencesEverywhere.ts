/** A change of references in every place of the workbook that may hold one. */
import { areaName, contains, parseArea, type Block } from "../../address";
import { bookOf, sheetPosition, tablesOf } from "../book";
import { PackageEdit } from "../package/packageParts";
import { withReferences, type ReferenceChange } from "./references";
import type { SheetData } from "../sheet/sheetXml";
import { dataOf, formulaIn, withCells, type CellEdit, type State } from "../state";
import { bytesOf, children, elements, escapeText, textOf, unescapeText } from "../package/xml";

export type ChangeEverywhere = ReferenceChange & {
  /** Whether a formula's words may hold such a reference, asked before they are read closely. */
  readonly mayConcern: (formula: string) => boolean;
  /** The cells that a conditional format or a drop-down list covers, in place of those that it did. */
  readonly covered?: (sheet: string, area: Block) => Block;
};

/** The state with the change made in cells, names, tables, conditional formats, lists and charts. */
export function changedEverywhere(state: State, change: ChangeEverywhere): State {
  const edited = new Map(state.edited);
  for (const { name, part } of bookOf(state.parts).sheets) {
    const data = dataOf(state, part);
    const next = withRules(withFormulas(state, name, data, change), name, change);
    if (next !== data) edited.set(part, next);
  }
  return { ...state, edited, parts: withNamesAndCharts(state, change) };
}

function withFormulas(state: State, sheet: string, data: SheetData, change: ChangeEverywhere): SheetData {
  const tables = tablesOf(state.parts).filter((table) => table.sheet === sheet);
  const edits = data.rows.withFormulas().flatMap((row) =>
    data.rows.get(row)!.cells.flatMap((cell): CellEdit[] => {
      const { column, value } = cell;
      const formula = cell.formula === undefined ? null : formulaIn(data, { row, column }, cell);
      if (formula === null || !change.mayConcern(formula)) return [];
      const own = tables.find(({ area }) => contains(area, { row, column }))?.name ?? null;
      const next = withReferences(formula, sheet, own, change);
      return next === formula ? [] : [{ row, column, value, formula: next }];
    }),
  );
  return edits.length === 0 ? data : withCells(data, edits, "wording");
}

/** Conditional formats and lists stand after the rows. */
function withRules(data: SheetData, sheet: string, change: ChangeEverywhere): SheetData {
  const after = data.after.replace(/<(\w+:)?(conditionalFormatting|dataValidation)[\s>][\s\S]*?(?:<\/\1\2>|\/>)/g, (rule) =>
    rule
      .replace(/(\ssqref=")([^"]*)(")/, (_, start: string, areas: string, end: string) => `${start}${covered(areas, sheet, change)}${end}`)
      .replace(
        /(<(?:xm:)?sqref>)([^<]*)(<)/,
        (_, start: string, areas: string, end: string) => `${start}${covered(areas, sheet, change)}${end}`,
      )
      .replace(
        /(<(?:\w+:)?(?:formula\d?|f)>)([^<]*)(<)/g,
        (_, start: string, formula: string, end: string) => `${start}${inXml(formula, sheet, change)}${end}`,
      ),
  );
  return after === data.after ? data : { ...data, after };
}

const covered = (areas: string, sheet: string, { covered: next }: ChangeEverywhere): string =>
  next === undefined
    ? areas
    : areas
        .split(" ")
        .map((text) => {
          const area = parseArea(text);
          const changed = area === null ? null : next(sheet, area);
          return changed === null || changed === area ? text : areaName(changed);
        })
        .join(" ");

/** A formula between the marks of an element. */
function inXml(xml: string, sheet: string, change: ChangeEverywhere): string {
  const formula = unescapeText(xml);
  if (!change.mayConcern(formula)) return xml;
  const next = withReferences(formula, sheet, null, change);
  return next === formula ? xml : escapeText(next);
}

function withNamesAndCharts({ parts }: State, change: ChangeEverywhere): State["parts"] {
  const edit = new PackageEdit(parts);
  const book = bookOf(parts);
  const onSheet = new Map(book.sheets.map(({ name }) => [sheetPosition(parts, name), name]));
  const replaced = (name: { readonly refersTo: string; readonly sheet: number | null }) =>
    change.mayConcern(name.refersTo) ? withReferences(name.refersTo, onSheet.get(name.sheet ?? 0) ?? "", null, change) : name.refersTo;
  if (book.names.some((name) => replaced(name) !== name.refersTo)) {
    edit.edit(book.part, (root) => {
      elements(root, "definedName").forEach((element, index) => {
        const name = book.names[index]!;
        const next = replaced(name);
        if (next !== name.refersTo) element.textContent = next;
      });
    });
  }
  for (const [name, content] of parts) {
    if (!/\/charts\/[^/]*\.xml$/.test(name)) continue;
    const text = textOf(content);
    const next = text.replace(
      /(<(?:\w+:)?f>)([^<]*)(<)/g,
      (_, start: string, formula: string, end: string) => `${start}${inXml(formula, "", change)}${end}`,
    );
    if (next !== text) edit.put(name, bytesOf(next));
  }
  for (const table of change.column === undefined ? [] : tablesOf(parts)) {
    const isConcerned = table.columns.some(({ formula }) => formula !== null && change.mayConcern(formula));
    if (!isConcerned) continue;
    edit.edit(table.part, (root) => {
      for (const element of ["calculatedColumnFormula", "totalsRowFormula"].flatMap((kind) =>
        elements(root, "tableColumn").flatMap((column) => children(column, kind)),
      )) {
        const formula = element.textContent ?? "";
        element.textContent = withReferences(formula, table.sheet, table.name, change);
      }
    });
  }
  return edit.parts;
}
