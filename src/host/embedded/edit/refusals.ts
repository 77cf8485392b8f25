/** What is refused before anything is changed, in words for the user. */
import { oncePer } from "../oncePer";
import type { Cell } from "../../../workbook/cell";
import { HostError } from "../../workbookHost";
import { areaName, cellName, contains, lastColumn, lastRow, type Block, type At } from "../../address";
import { bookOf, type SheetEntry } from "../book";
import { lookOf } from "../sheet/looks";
import { formulaArea, type SheetData } from "../sheet/sheetXml";
import { cellIn, dataOf, type State } from "../state";
import { styleAt } from "../package/styles";
import { documentOf, first } from "../package/xml";
import type { Parts } from "../package/zip";

/** Excel's own limit for the text of a cell. */
const longestText = 32_767;

/** Refuses what no file can hold. @throws RangeError for a number that is none, which only we could have made */
export function refuseImpossible(entries: readonly (At & { readonly value?: Cell })[]): void {
  for (const { row, column, value } of entries) {
    if (row < 0 || column < 0 || row > lastRow || column > lastColumn)
      throw new HostError("failed", "A sheet ends at cell XFD1048576. Choose a place further up or to the left.");
    if (typeof value === "string" && value.length > longestText)
      throw new HostError(
        "failed",
        `The text for cell ${cellName({ row, column })} is too long: a cell holds ${longestText.toLocaleString("en-US")} characters.`,
      );
    if (typeof value === "number" && !Number.isFinite(value)) throw new RangeError(`${value} is no number for a cell`);
  }
}

/** Refuses entries in cells that a joined cell covers, where nobody would see them. */
export function refuseCovered(data: SheetData, entries: readonly (At & ({ readonly value: Cell } | { readonly formula: string }))[]): void {
  for (const merge of lookOf(data).merges) {
    const hidden = entries.find(
      (entry) =>
        contains(merge, entry) && (entry.row !== merge.top || entry.column !== merge.left) && !("value" in entry && entry.value === ""),
    );
    if (hidden !== undefined)
      throw new HostError(
        "failed",
        `Cell ${cellName(hidden)} is part of the joined cells ${areaName(merge)}. Enter it in ` +
          `${cellName({ row: merge.top, column: merge.left })}, or unmerge them in Excel.`,
      );
  }
}

/** Refuses what Excel would refuse: a locked cell, or a part of an array formula. */
export function refuseLocked(state: State, sheet: SheetEntry, edits: readonly At[]): void {
  const data = dataOf(state, sheet.part);
  if (isProtected(data) && edits.some((at) => styleAt(state.parts, cellIn(data, at)?.style ?? 0).locked)) {
    throw new HostError(
      "protected",
      `The sheet "${sheet.name}" is protected. Take the protection off in Excel (Review, Unprotect Sheet) and try again.`,
    );
  }
  const whole = new Set(edits.map(({ row, column }) => `${row},${column}`));
  for (const area of arrayAreas(data)) {
    if (!edits.some((at) => contains(area, at))) continue;
    for (let row = area.top; row <= area.bottom; row += 1) {
      for (let column = area.left; column <= area.right; column += 1) {
        if (!whole.has(`${row},${column}`))
          throw new HostError(
            "failed",
            `A part of the array formula in ${areaName(area)} cannot be changed alone. Change or clear all of it.`,
          );
      }
    }
  }
}

export const isProtected = (data: SheetData): boolean =>
  new RegExp(`<${data.prefix}sheetProtection[^>]*\\ssheet="(1|true)"`).test(data.after);

/** The blocks of array formulas and data tables that fill more than one cell. */
const arrayAreas = oncePer((data: SheetData): readonly Block[] =>
  data.rows.withFormulas().flatMap((row) =>
    data.rows.get(row)!.cells.flatMap(({ formula }) => {
      const area = formula?.kind === "array" || formula?.kind === "table" ? formulaArea(formula) : null;
      return area === null || (area.top === area.bottom && area.left === area.right) ? [] : [area];
    }),
  ),
);

/** @throws HostError where sheets may be neither added nor taken away */
export function refuseLockedStructure(parts: Parts): void {
  const book = documentOf(parts.get(bookOf(parts).part)!);
  if (/^(1|true)$/.test(first(book, "workbookProtection")?.getAttribute("lockStructure") ?? "")) {
    throw new HostError(
      "protected",
      "The structure of the workbook is protected, so that no sheet can be added. Take the protection off in Excel (Review, Protect " +
        "Workbook) and try again.",
    );
  }
}
