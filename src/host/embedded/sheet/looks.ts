/** What a sheet shows beside its cells: column widths, joined cells, hidden and frozen parts. */
import { oncePer } from "../oncePer";
import { parseArea, type Block } from "../../address";
import { attribute } from "../package/attribute";
import type { SheetData } from "./sheetXml";

export type SheetLook = {
  /** Widths in characters of the columns that have one of their own. */
  readonly widths: ReadonlyMap<number, number>;
  readonly hiddenColumns: ReadonlySet<number>;
  readonly frozenRows: number;
  readonly merges: readonly Block[];
};

/** A width for all 16,384 columns says nothing of those that are used. */
const widestRun = 1000;

export const lookOf = oncePer((data: SheetData): SheetLook => {
  const { prefix: p, before, after } = data;
  const widths = new Map<number, number>();
  const hiddenColumns = new Set<number>();
  for (const [tag] of before.matchAll(new RegExp(`<${p}col\\s[^>]*>`, "g"))) {
    const number = (name: string) => Number(attribute(tag, name) ?? "NaN");
    const isHidden = /^(1|true)$/.test(attribute(tag, "hidden") ?? "");
    const width = number("width");
    for (let column = number("min"); column <= Math.min(number("max"), number("min") + widestRun); column += 1) {
      if (Number.isFinite(width)) widths.set(column - 1, width);
      if (isHidden) hiddenColumns.add(column - 1);
    }
  }
  const pane = new RegExp(`<${p}pane\\s[^>]*>`).exec(before)?.[0] ?? "";
  const isFrozen = /^frozen/.test(attribute(pane, "state") ?? "");
  const merges = [...after.matchAll(new RegExp(`<${p}mergeCell\\s[^>]*>`, "g"))].flatMap(
    ([tag]) => parseArea(attribute(tag, "ref") ?? "") ?? [],
  );
  return { widths, hiddenColumns, frozenRows: isFrozen ? Number(attribute(pane, "ySplit") ?? "0") : 0, merges };
});
