/** Drop-down lists of cells. */
import { contains, parseArea, splitSheet, type Block, type At } from "../../address";
import { attribute } from "../package/attribute";
import { bookOf, sheetPosition, tablesOf } from "../book";
import { tableArea, tableReference } from "../recalculation/tableReference";
import type { SheetData } from "./sheetXml";
import { dataOf, sheetNamed, valueIn, type State } from "../state";
import { unescapeText } from "../package/xml";

/** The cells that have a list, and where its words are: `"a,b"`, a range, or a name. */
export type ChoiceList = { readonly areas: readonly Block[]; readonly source: string };

const lists = new WeakMap<SheetData["rows"], { readonly after: string; readonly found: readonly ChoiceList[] }>();

/** The lists of a sheet, those included that Excel 2010 and later keep apart because they are on another sheet. */
export function choiceLists({ rows, prefix, after }: SheetData): readonly ChoiceList[] {
  const known = lists.get(rows);
  if (known?.after === after) return known.found;
  const found = [
    ...after.matchAll(new RegExp(`<(${prefix}|x14:)dataValidation(\\s[^>]*[^/])>([\\s\\S]*?)</\\1dataValidation>`, "g")),
  ].flatMap(([, , tag, body]): ChoiceList[] => {
    if (attribute(tag!, "type") !== "list") return [];
    const sqref = attribute(tag!, "sqref") ?? /<xm:sqref>([^<]*)<\/xm:sqref>/.exec(body!)?.[1] ?? "";
    const source = /<(?:\w+:)?formula1>(?:<xm:f>)?([^<]*)</.exec(body!)?.[1] ?? "";
    return [
      {
        areas: sqref
          .trim()
          .split(/\s+/)
          .flatMap((ref) => parseArea(ref) ?? []),
        source: unescapeText(source).trim(),
      },
    ];
  });
  lists.set(rows, { after, found });
  return found;
}

/** More words than these nobody picks from a list. */
const mostWords = 1000;
/** A name may stand for a name; one that stands for itself ends here. */
const deepest = 5;

/** What the drop-down list of a cell offers; none where it has no list that we can read. */
export function choicesAt(state: State, sheet: string, at: At): readonly string[] {
  const entry = sheetNamed(state, sheet);
  const list = choiceLists(dataOf(state, entry.part)).find(({ areas }) => areas.some((area) => contains(area, at)));
  if (list === undefined) return [];
  const quoted = /^"([\s\S]*)"$/.exec(list.source);
  if (quoted)
    return quoted[1]!
      .replaceAll('""', '"')
      .split(",")
      .map((word) => word.trim())
      .filter((word) => word !== "");
  return wordsAt(state, sheet, list.source, deepest);
}

function wordsAt(state: State, sheet: string, source: string, depth: number): readonly string[] {
  const table = /^INDIRECT\(\s*"([^"]*\[[^"]*)"\s*\)$/i.exec(source)?.[1];
  if (table !== undefined) return wordsOfTable(state, table);
  const { sheet: other, area } = splitSheet(source);
  const range = parseArea(area);
  if (range !== null) return wordsIn(state, other ?? sheet, range);
  const position = sheetPosition(state.parts, sheet);
  const named = bookOf(state.parts).names.filter(({ name }) => name.toLowerCase() === source.toLowerCase());
  const name = named.find((each) => each.sheet === position) ?? named.find((each) => each.sheet === null);
  return name === undefined || depth === 0 ? [] : wordsAt(state, sheet, name.refersTo, depth - 1);
}

function wordsOfTable(state: State, reference: string): readonly string[] {
  const { sheets } = bookOf(state.parts);
  const tables = tablesOf(state.parts).map((table) => ({
    ...table,
    sheet: sheets.findIndex(({ name }) => name === table.sheet),
    columns: table.columns.map(({ name }) => name),
  }));
  const found = tableArea(tableReference(reference), { sheet: -1, row: -1, column: -1 }, tables);
  return found === null ? [] : wordsIn(state, sheets[found.sheet]!.name, found.area);
}

function wordsIn(state: State, sheet: string, { top, left, bottom, right }: Block): readonly string[] {
  const entry = bookOf(state.parts).sheets.find(({ name }) => name.toLowerCase() === sheet.toLowerCase());
  if (entry === undefined) return [];
  const data = dataOf(state, entry.part);
  const words: string[] = [];
  for (let row = top; row <= Math.min(bottom, top + mostWords); row += 1) {
    for (let column = left; column <= right; column += 1) {
      const value = valueIn(data, { row, column });
      if (value !== "") words.push(String(value));
    }
  }
  return words;
}
