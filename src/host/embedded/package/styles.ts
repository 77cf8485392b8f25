/** Cell styles: what a style number means, and new ones for cells of ours. */
import { oncePer } from "../oncePer";
import { getFormatFromId } from "numfmt";
import type { CellStyle } from "../../../workbook/resultSheet";
import { fillColours } from "../../sheetLook";
import { bookOf } from "../book";
import { isOfType, relationshipsOf, type PackageEdit } from "./packageParts";
import type { Parts } from "./zip";
import { children, documentOf, first, sibling, type Element } from "./xml";

export type StyleFacts = {
  readonly numberFormat: string;
  readonly bold: boolean;
  readonly italic: boolean;
  /** `null`: by what the cell holds. */
  readonly align: "left" | "center" | "right" | null;
  /** Whether the cell has a fill of its own, of whatever colour. */
  readonly shaded: boolean;
  readonly locked: boolean;
};

export const usual: StyleFacts = { numberFormat: "General", bold: false, italic: false, align: null, shaded: false, locked: true };
const factsIn = oncePer((bytes: Uint8Array): readonly StyleFacts[] => readStyles(documentOf(bytes).documentElement!));

const stylesPart = (parts: Parts): string | null =>
  relationshipsOf(parts, bookOf(parts).part).find((each) => isOfType(each, "styles"))?.target ?? null;

/** What each style number of the workbook means. */
export function stylesOf(parts: Parts): readonly StyleFacts[] {
  const part = stylesPart(parts);
  const bytes = part === null ? undefined : parts.get(part);
  return bytes === undefined ? [usual] : factsIn(bytes);
}

export const styleAt = (parts: Parts, style: number): StyleFacts => stylesOf(parts)[style] ?? usual;

function readStyles(root: Element): readonly StyleFacts[] {
  const formats = new Map(
    listOf(root, "numFmts", "numFmt").map((each) => [each.getAttribute("numFmtId"), each.getAttribute("formatCode") ?? "General"]),
  );
  const fonts = listOf(root, "fonts", "font").map((font) => ({ bold: isOn(font, "b"), italic: isOn(font, "i") }));
  const fills = listOf(root, "fills", "fill").map((fill) =>
    children(fill, "patternFill").some((pattern) => pattern.getAttribute("patternType") === "solid"),
  );
  return listOf(root, "cellXfs", "xf").map((xf) => {
    const id = xf.getAttribute("numFmtId") ?? "0";
    const align = children(xf, "alignment")[0]?.getAttribute("horizontal");
    return {
      numberFormat: formats.get(id) ?? getFormatFromId(Number(id)) ?? "General",
      bold: false,
      italic: false,
      ...fonts[Number(xf.getAttribute("fontId") ?? "0")],
      align: align === "left" || align === "center" || align === "right" ? align : null,
      shaded: fills[Number(xf.getAttribute("fillId") ?? "0")] ?? false,
      locked: !/^(0|false)$/.test(children(xf, "protection")[0]?.getAttribute("locked") ?? "1"),
    };
  });
}

/** Whether a font has a property that is on where its element is there, unless it says no. */
function isOn(font: Element, name: string): boolean {
  const found = children(font, name)[0];
  return found !== undefined && !/^(0|false)$/.test(found.getAttribute("val") ?? "1");
}

const listOf = (root: Element, list: string, item: string): readonly Element[] => {
  const found = children(root, list)[0];
  return found === undefined ? [] : children(found, item);
};

/** Adds styles to a package, each once, and answers their numbers. */
export class StyleMaker {
  private readonly made = new Map<string, number>();
  private readonly part: string;

  constructor(private readonly edit: PackageEdit) {
    this.part = stylesPart(edit.parts) ?? this.addPart();
  }

  private addPart(): string {
    const book = bookOf(this.edit.parts).part;
    const name = this.edit.freeName("xl/styles", ".xml");
    this.edit.add(name, emptyStyles, "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml");
    this.edit.relate(book, "styles", name);
    return name;
  }

  /** The number of a style, made from scratch. */
  number(style: CellStyle): number {
    return this.remembered(`new ${JSON.stringify(style)}`, (root) => this.addStyle(root, style));
  }

  /** The number of a style that is like another but for its number format. */
  withFormat(like: number, numberFormat: string): number {
    return this.remembered(`${like} ${numberFormat}`, (root) => {
      const xfs = children(root, "cellXfs")[0]!;
      const base = children(xfs, "xf")[like];
      const xf = (base?.cloneNode(true) ?? sibling(xfs, "xf", { fontId: "0", fillId: "0", borderId: "0", xfId: "0" })) as Element;
      xf.setAttribute("numFmtId", formatId(root, numberFormat));
      xf.setAttribute("applyNumberFormat", "1");
      return append(xfs, xf);
    });
  }

  private remembered(key: string, make: (root: Element) => number): number {
    let number = this.made.get(key);
    if (number === undefined) {
      this.edit.edit(this.part, (root) => {
        number = make(root);
      });
      this.made.set(key, number!);
    }
    return number!;
  }

  private addStyle(root: Element, style: CellStyle): number {
    const xfs = children(root, "cellXfs")[0]!;
    const fontId = style.bold || style.italic || style.size !== undefined ? addFont(root, style) : 0;
    const xf = sibling(xfs, "xf", {
      numFmtId: style.numberFormat === undefined ? "0" : formatId(root, style.numberFormat),
      fontId: String(fontId),
      fillId: String(style.fill === undefined ? 0 : addFill(root, fillColours[style.fill])),
      borderId: String(style.border === undefined ? 0 : addBorder(root, style.border)),
      xfId: "0",
      ...(style.numberFormat === undefined ? {} : { applyNumberFormat: "1" }),
      ...(fontId === 0 ? {} : { applyFont: "1" }),
      ...(style.fill === undefined ? {} : { applyFill: "1" }),
      ...(style.border === undefined ? {} : { applyBorder: "1" }),
    });
    if (style.align !== undefined || style.wrap) {
      xf.setAttribute("applyAlignment", "1");
      xf.appendChild(
        sibling(xf, "alignment", {
          ...(style.align === undefined ? {} : { horizontal: style.align }),
          ...(style.wrap ? { wrapText: "1", vertical: "top" } : {}),
        }),
      );
    }
    return append(xfs, xf);
  }
}

function append(list: Element, item: Element): number {
  list.appendChild(item);
  const items = children(list, item.localName!);
  list.setAttribute("count", String(items.length));
  return items.length - 1;
}

function formatId(root: Element, code: string): string {
  if (code === "General") return "0";
  let list = children(root, "numFmts")[0];
  if (list === undefined) {
    list = sibling(root, "numFmts");
    root.insertBefore(list, root.firstChild);
  }
  const formats = children(list, "numFmt");
  const same = formats.find((each) => each.getAttribute("formatCode") === code);
  if (same !== undefined) return same.getAttribute("numFmtId")!;
  const id = String(Math.max(163, ...formats.map((each) => Number(each.getAttribute("numFmtId")))) + 1);
  append(list, sibling(list, "numFmt", { numFmtId: id, formatCode: code }));
  return id;
}

/** The workbook's usual font, bold, slanted or of another size. */
function addFont(root: Element, { bold, italic, size }: CellStyle): number {
  const list = children(root, "fonts")[0]!;
  const font = children(list, "font")[0]!.cloneNode(true) as Element;
  for (const name of ["b", "i"]) for (const each of children(font, name)) font.removeChild(each);
  if (italic) font.insertBefore(sibling(font, "i"), font.firstChild);
  if (bold) font.insertBefore(sibling(font, "b"), font.firstChild);
  if (size !== undefined) first(font, "sz")?.setAttribute("val", String(size));
  return append(list, font);
}

function addFill(root: Element, colour: string): number {
  const list = children(root, "fills")[0]!;
  const fill = sibling(list, "fill");
  const pattern = sibling(fill, "patternFill", { patternType: "solid" });
  pattern.appendChild(sibling(pattern, "fgColor", { rgb: `FF${colour.slice(1)}` }));
  pattern.appendChild(sibling(pattern, "bgColor", { indexed: "64" }));
  fill.appendChild(pattern);
  return append(list, fill);
}

function addBorder(root: Element, where: NonNullable<CellStyle["border"]>): number {
  const drawn = where === "box" ? ["left", "right", "top", "bottom"] : [where];
  const list = children(root, "borders")[0]!;
  const border = sibling(list, "border");
  for (const name of ["left", "right", "top", "bottom", "diagonal"]) {
    const isDrawn = drawn.includes(name);
    const edge = sibling(border, name, isDrawn ? { style: "thin" } : {});
    if (isDrawn) edge.appendChild(sibling(edge, "color", { auto: "1" }));
    border.appendChild(edge);
  }
  return append(list, border);
}

export const emptyStyles = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><fonts count="1"><font><sz val="11"/><name val="Calibri"/><family val="2"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`;
