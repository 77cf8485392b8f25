import { serialOfMoment } from "../../../workbook/daySerial";
import type { Cell } from "../../../workbook/cell";
import { Damaged } from "../package/fault";
import { richText } from "./sharedStrings";
import { unescapeText } from "../package/xml";

/** How days are counted, and the texts that cells point at. */
export type CellMeaning = { readonly date1904: boolean; readonly sharedStrings: readonly string[] };

const blank = -1;
const quote = 34;
const slash = 47;
const equals = 61;
const greater = 62;
const zero = 48;
const nine = 57;

/**
 * Walks through the cells of a row as they stand in the part. One scanner serves a whole sheet and makes no objects on
 * its way, because a sheet may have a million cells: what a cell is stands in the scanner until `next` is called again.
 */
export class CellScanner {
  /** From 0; a cell that does not say where it is stands right after the last one. */
  column = blank;
  style = 0;
  type = "";
  /** Where the cell begins and ends in the text. */
  from = 0;
  to = 0;
  /** Where its value is written, between the marks; -1 where it has none. */
  valueFrom = blank;
  valueTo = blank;
  /** The formula: the end of its opening mark, and where its text ends; -1 where it has none. */
  formulaTag = blank;
  formulaFrom = blank;
  formulaTo = blank;

  private at = 0;
  private end = 0;
  private readonly opening: string;
  private readonly closing: string;

  constructor(
    private readonly text: string,
    private readonly prefix: string,
  ) {
    this.opening = `<${prefix}c`;
    this.closing = `</${prefix}c>`;
  }

  /** Goes to the beginning of a row's content. */
  enter(from: number, to: number): this {
    this.at = from;
    this.end = to;
    this.column = blank;
    return this;
  }

  /** The next cell, if there is one. */
  next(): boolean {
    const { text, opening } = this;
    let at = text.indexOf(opening, this.at);
    while (at >= 0 && at < this.end && !isNameEnd(text.charCodeAt(at + opening.length))) at = text.indexOf(opening, at + 1);
    if (at < 0 || at >= this.end) return false;
    this.from = at;
    this.style = 0;
    this.type = "";
    this.valueFrom = this.formulaTag = blank;
    const before = this.column;
    this.column = blank;
    const tagEnd = this.readAttributes(at + opening.length);
    if (this.column === blank) this.column = before + 1;
    if (text.charCodeAt(tagEnd - 1) === slash) this.to = tagEnd + 1;
    else {
      const bodyTo = text.indexOf(this.closing, tagEnd);
      if (bodyTo < 0 || bodyTo > this.end) throw new Damaged("a cell has no end");
      this.readBody(tagEnd + 1, bodyTo);
      this.to = bodyTo + this.closing.length;
    }
    this.at = this.to;
    return true;
  }

  /** Reads `r`, `s` and `t`; answers where the opening mark ends. */
  private readAttributes(from: number): number {
    const { text } = this;
    for (let at = from; ;) {
      const code = text.charCodeAt(at);
      if (code === greater) return at;
      if (code === slash || code <= 32) {
        at += 1;
        continue;
      }
      const nameFrom = at;
      at = text.indexOf("=", at);
      const length = text.charCodeAt(at - 1) <= 32 ? text.slice(nameFrom, at).trim().length : at - nameFrom;
      do at += 1;
      while (text.charCodeAt(at) <= 32);
      const to = text.indexOf(text.charCodeAt(at) === quote ? '"' : "'", at + 1);
      if (at <= nameFrom || to < 0 || to > this.end) throw new Damaged("a cell is not written as XML");
      if (length === 1) this.readAttribute(text.charCodeAt(nameFrom), at + 1, to);
      at = to + 1;
    }
  }

  private readAttribute(name: number, from: number, to: number): void {
    if (name === 114) this.column = this.columnIn(from, to);
    else if (name === 115) this.style = this.wholeNumber(from, to);
    else if (name === 116) this.type = this.text.slice(from, to);
  }

  private columnIn(from: number, to: number): number {
    let column = 0;
    let at = from;
    for (; at < to; at += 1) {
      const code = this.text.charCodeAt(at) | 32;
      if (code < 97 || code > 122) break;
      column = column * 26 + code - 96;
    }
    if (column === 0 || column > 16_384) throw new Damaged("a cell is not on the sheet");
    return column - 1;
  }

  private wholeNumber(from: number, to: number): number {
    let number = 0;
    for (let at = from; at < to; at += 1) {
      const code = this.text.charCodeAt(at);
      if (code >= zero && code <= nine) number = number * 10 + code - zero;
    }
    return number;
  }

  private readBody(from: number, to: number): void {
    const { text, prefix } = this;
    for (let at = text.indexOf("<", from); at >= 0 && at < to;) {
      const name = at + 1 + prefix.length;
      const code = text.charCodeAt(name);
      const isOne = isNameEnd(text.charCodeAt(name + 1));
      const tagEnd = text.indexOf(">", name);
      const isEmpty = text.charCodeAt(tagEnd - 1) === slash;
      let next = tagEnd + 1;
      if (isOne && code === 118) {
        this.valueFrom = isEmpty ? tagEnd : tagEnd + 1;
        this.valueTo = isEmpty ? tagEnd : text.indexOf("<", tagEnd);
        next = isEmpty ? next : text.indexOf(">", this.valueTo) + 1;
      } else if (isOne && code === 102) {
        this.formulaTag = name + 1;
        this.formulaFrom = isEmpty ? tagEnd : tagEnd + 1;
        this.formulaTo = isEmpty ? tagEnd : text.indexOf("<", tagEnd);
        next = isEmpty ? next : text.indexOf(">", this.formulaTo) + 1;
      } else {
        if (code === 105 && this.type === "inlineStr") {
          this.valueFrom = tagEnd + 1;
          this.valueTo = isEmpty ? this.valueFrom : Math.max(this.valueFrom, text.lastIndexOf("<", to - 1));
        }
        return;
      }
      if (next <= 0 || next > to) throw new Damaged("a cell's content has no end");
      at = text.indexOf("<", next);
    }
  }

  /** Whether the cell has a formula for which the file has no value. */
  get isUnknown(): boolean {
    return this.formulaTag !== blank && (this.valueFrom === blank || (this.valueFrom === this.valueTo && this.type !== "str"));
  }

  /** What the cell shows. */
  value({ date1904, sharedStrings }: CellMeaning): Cell {
    const { valueFrom: from, valueTo: to, text } = this;
    if (from === blank || from === to) return "";
    switch (this.type) {
      case "":
      case "n":
        return numberIn(text.slice(from, to));
      case "s":
        return sharedStrings[this.wholeNumber(from, to)] ?? "";
      case "b":
        return /^\s*(1|true)\s*$/.test(text.slice(from, to));
      case "inlineStr":
        return richText(text.slice(from, to), this.prefix);
      case "d":
        return serialOf(text.slice(from, to), date1904);
      default:
        return unescapeText(text.slice(from, to));
    }
  }
}

const isNameEnd = (code: number): boolean => code <= 32 || code === greater || code === slash || code === equals;

function numberIn(text: string): Cell {
  const number = Number(text);
  // What no program writes, but a hand might: it is kept in sight rather than taken for zero.
  return Number.isNaN(number) ? unescapeText(text) : number;
}

/** A date that stands in the file as text (ISO 8601), as its serial number. */
function serialOf(text: string, date1904: boolean): number {
  const milliseconds = Date.parse(/T.*(Z|[+-]\d\d:?\d\d)$/.test(text) ? text : `${text.includes("T") ? text : `${text}T00:00:00`}Z`);
  return serialOfMoment(milliseconds, date1904 ? "1904" : "1900");
}
