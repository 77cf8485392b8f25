import { areaName, parseArea, quotedSheet, type Block } from "../../address";
import type { FormulaBook, FormulaCell } from "./formulaBook";
import { formulaTokens, type FormulaToken } from "./formulaTokens";
import { tableArea, tableReference, type FormulaPlace } from "./tableReference";

/** Cells of one sheet. */
export type SheetArea = { readonly sheet: number; readonly area: Block };

/** What a formula reads, and the same formula in the words that the calculation engine has right. */
export type UnderstoodFormula = {
  /** Null where the engine cannot be asked: another workbook, several sheets at once, a name or a table that is not there. */
  readonly engineFormula: string | null;
  readonly reads: readonly SheetArea[];
  /** It may read anything, because it makes up its references, or because we could not follow them. */
  readonly readsAnything: boolean;
  /** Its value changes by itself: the day, the time, chance. */
  readonly isVolatile: boolean;
};

/** A formula of the workbook with what we understood of it. */
export type KnownFormula = { readonly cell: FormulaCell; readonly understood: UnderstoodFormula };

/** Functions that make up their references as they are worked out: what they read cannot be known beforehand. */
const madeUpReferences = new Set(["INDIRECT", "OFFSET"]);
/** Functions that leave hidden rows out, or only those that a filter hides: which of the two a file does not say. */
const shownOnly = new Set(["SUBTOTAL", "AGGREGATE"]);
const volatileFunctions = new Set(["NOW", "TODAY", "RAND", "RANDBETWEEN", "RANDARRAY"]);
/** Functions that turn days into numbers or back; the engine counts days from 1900 only. */
const dayFunctions = new Set([
  "DATE",
  "DATEDIF",
  "DATEVALUE",
  "DAY",
  "DAYS360",
  "EDATE",
  "EOMONTH",
  "ISOWEEKNUM",
  "MONTH",
  "NETWORKDAYS",
  "NETWORKDAYS.INTL",
  "NOW",
  "TEXT",
  "TODAY",
  "WEEKDAY",
  "WEEKNUM",
  "WORKDAY",
  "WORKDAY.INTL",
  "YEAR",
  "YEARFRAC",
]);
/** Names that lead to names that lead to themselves end here. */
const deepestName = 20;

/**
 * Reads a formula that stands in a cell. Three rewrites make the engine agree with Excel: references to tables become
 * areas, names become what they stand for, and `--x`, which gives 0 over several cells, becomes `1*x`.
 */
export function understoodFormula(formula: string, place: FormulaPlace, book: FormulaBook): UnderstoodFormula {
  const reader = new FormulaReader(place, book);
  const text = reader.read(formula, 0);
  if (reader.countsShownOnly && reader.reads.some((area) => book.hasHiddenRow(area))) reader.isBeyondEngine = true;
  return {
    engineFormula: reader.isBeyondEngine ? null : text,
    reads: reader.reads,
    readsAnything: reader.readsAnything,
    isVolatile: reader.isVolatile,
  };
}

class FormulaReader {
  readonly reads: SheetArea[] = [];
  readsAnything = false;
  isVolatile = false;
  isBeyondEngine = false;
  countsShownOnly = false;

  constructor(
    private readonly place: FormulaPlace,
    private readonly book: FormulaBook,
  ) {}

  read(formula: string, depth: number): string {
    const tokens = formulaTokens(formula);
    const words = tokens.map((token, index) => this.rewritten(token, tokens[index - 1], depth));
    return formula.includes("--") ? withoutDoubleMinus(words) : words.join("");
  }

  private rewritten(token: FormulaToken, before: FormulaToken | undefined, depth: number): string {
    switch (token.kind) {
      case "sheet":
        return token.text;
      case "area":
        return this.area(token.text, before?.kind === "sheet" ? before.text : null, depth);
      case "table":
        return this.table(token.text);
      case "name":
        return this.name(token.text, before?.kind === "sheet" ? before.text : null, depth);
      case "function":
        return this.func(token.text);
      case "other":
        if (token.text === "#" || token.text === "@") this.giveUp();
        return token.text;
      default:
        return token.text;
    }
  }

  private area(text: string, prefix: string | null, depth: number): string {
    const sheet = prefix === null ? this.place.sheet : this.sheetOf(prefix);
    const area = parseArea(text);
    if (sheet === null || area === null) return this.giveUp(text);
    // In a name, a reference without $ moves along with the cell that uses the name.
    if (depth > 0 && !isFixed(text)) return this.giveUp(text);
    const used = this.book.used(sheet);
    const isWhole = /^\$?[A-Za-z]/.test(text) !== /[0-9]$/.test(text);
    const clipped = isWhole
      ? {
          ...area,
          bottom: Math.min(area.bottom, Math.max(used.rows - 1, 0)),
          right: Math.min(area.right, Math.max(used.columns - 1, area.left)),
        }
      : area;
    this.reads.push({ sheet, area: clipped });
    return isWhole ? areaName(clipped) : text;
  }

  private table(text: string): string {
    const found = tableArea(tableReference(text), this.place, this.book.tables);
    if (found === null) return this.giveUp(text);
    this.reads.push(found);
    return `${quotedSheet(this.book.sheets[found.sheet]!)}!${areaName(found.area)}`;
  }

  private name(text: string, prefix: string | null, depth: number): string {
    if (/^(true|false)$/i.test(text) || text.startsWith("_xlpm.")) return text.replace("_xlpm.", "");
    const sheet = prefix === null ? this.place.sheet : this.sheetOf(prefix);
    const called = this.book.names.filter(({ name }) => name.toLowerCase() === text.toLowerCase());
    const found = called.find((each) => each.sheet === sheet) ?? called.find((each) => each.sheet === null);
    if (found !== undefined) {
      if (depth >= deepestName || prefix !== null) return this.giveUp(text);
      return /^[^(),+*/^&<>=-]*$/.test(found.refersTo) ? this.read(found.refersTo, depth + 1) : `(${this.read(found.refersTo, depth + 1)})`;
    }
    const table = this.book.tables.find(({ name }) => name.toLowerCase() === text.toLowerCase());
    // The variables of LET and LAMBDA are names that nobody has defined: the engine may know them.
    return table === undefined ? text : this.table(`${table.name}[]`);
  }

  private func(text: string): string {
    const plain = text.replace(/^_xlfn\.(?:_xlws\.)?/i, "");
    const upper = plain.toUpperCase();
    if (madeUpReferences.has(upper)) this.giveUp();
    if (shownOnly.has(upper)) this.countsShownOnly = true;
    if (volatileFunctions.has(upper)) this.isVolatile = true;
    if (upper === "SINGLE" || upper === "ANCHORARRAY" || (this.book.dateSystem === "1904" && dayFunctions.has(upper)))
      this.isBeyondEngine = true;
    return plain;
  }

  private sheetOf(prefix: string): number | null {
    const bare = prefix
      .slice(0, -1)
      .replace(/^'(.*)'$/s, "$1")
      .replaceAll("''", "'")
      .toLowerCase();
    const index = this.book.sheets.findIndex((name) => name.toLowerCase() === bare);
    return index < 0 ? null : index;
  }

  private giveUp(text = ""): string {
    this.isBeyondEngine = true;
    this.readsAnything = true;
    return text;
  }
}

const isFixed = (text: string): boolean => text.split(":").every((corner) => /^\$[A-Za-z]{1,3}(\$[0-9]+)?$|^\$[0-9]+$/.test(corner));

/** `--x` to `1*x`, where the first minus begins a value: after nothing, an operator, a comma or an opening bracket. */
function withoutDoubleMinus(words: readonly string[]): string {
  const result: string[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const before = result.findLast((word) => word.trim() !== "");
    const begins = before === undefined || /^[-+*/^&=<>,;({]$/.test(before);
    if (words[at] === "-" && words[at + 1] === "-" && begins) {
      result.push("1", "*");
      at += 1;
    } else result.push(words[at]!);
  }
  return result.join("");
}
