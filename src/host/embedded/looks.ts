/** What a sheet shows beside its cells: column widths, drop-down lists, hidden and frozen parts. */
import { contains, parseArea, splitSheet, type Area, type At } from "./address";
import type { SheetData } from "./sheetXml";
import { dataOf, sheetNamed, valueIn, type State } from "./state";
import { unescapeText } from "./xml";

export type SheetLook = {
  /** Widths in characters of the columns that have one of their own. */
  readonly widths: ReadonlyMap<number, number>;
  readonly frozenRows: number;
  readonly merges: readonly Area[];
};

const looks = new WeakMap<SheetData, { readonly text: string; readonly look: SheetLook }>();

export function lookOf(data: SheetData): SheetLook {
  const found = looks.get(data);
  if (found !== undefined) return found.look;
  const p = data.prefix;
  const before = data.text.slice(0, data.rowsFrom);
  const widths = new Map<number, number>();
  for (const [tag] of before.matchAll(new RegExp(`<${p}col\\s[^>]*>`, "g"))) {
    const [min, max, width] = ["min", "max", "width"].map((name) => Number(new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1]));
    for (let column = min!; column <= Math.min(max!, min! + 500); column += 1) if (Number.isFinite(width)) widths.set(column - 1, width!);
  }
  const pane = new RegExp(`<${p}pane\\s[^>]*>`).exec(before)?.[0] ?? "";
  const merges = [...data.text.slice(data.rowsTo).matchAll(new RegExp(`<${p}mergeCell\\s+ref="([^"]+)"`, "g"))].flatMap(([, ref]) => parseArea(ref!) ?? []);
  const look = { widths, frozenRows: /state="frozen"/.test(pane) ? Number(/ySplit="(\d+)/.exec(pane)?.[1] ?? "0") : 0, merges };
  looks.set(data, { text: data.text, look });
  return look;
}

export type ChoiceList = { readonly areas: readonly Area[]; readonly source: string };
const lists = new Map<string, readonly ChoiceList[]>();

/** The drop-down lists of a sheet. */
export function choiceLists(data: SheetData): readonly ChoiceList[] {
  const after = data.text.slice(data.rowsTo);
  let found = lists.get(after);
  if (found === undefined) {
    const p = data.prefix;
    found = [...after.matchAll(new RegExp(`<${p}dataValidation\\s([^>]*type="list"[^>]*)>([\\s\\S]*?)</${p}dataValidation>`, "g"))].map(([, tag, body]) => ({
      areas: (/sqref="([^"]+)"/.exec(tag!)?.[1] ?? "").split(" ").flatMap((ref) => parseArea(ref) ?? []),
      source: unescapeText(new RegExp(`<${p}formula1>([\\s\\S]*?)</${p}formula1>`).exec(body!)?.[1] ?? ""),
    }));
    if (lists.size > 100) lists.clear();
    lists.set(after, found);
  }
  return found;
}

/** What the drop-down list of a cell offers; none where it has no list that we can read. */
export function choicesAt(state: State, sheet: string, at: At): readonly string[] {
  const entry = sheetNamed(state, sheet);
  const list = choiceLists(dataOf(state, entry.part)).find(({ areas }) => areas.some((area) => contains(area, at)));
  if (list === undefined) return [];
  const quoted = /^"([\s\S]*)"$/.exec(list.source);
  if (quoted) return quoted[1]!.split(",").map((word) => word.trim());
  const { sheet: other, area } = splitSheet(list.source);
  const range = parseArea(area);
  if (range === null) return [];
  const data = dataOf(state, sheetNamed(state, other ?? sheet).part);
  const words: string[] = [];
  for (let row = range.top; row <= Math.min(range.bottom, range.top + 1000); row += 1) {
    for (let column = range.left; column <= range.right; column += 1) {
      const value = valueIn(data, { row, column });
      if (value !== "") words.push(String(value));
    }
  }
  return words;
}
