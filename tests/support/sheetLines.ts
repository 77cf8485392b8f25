import type { ResultSheet } from "../../src/workbook/resultSheet";

/** What a sheet prints, a line a row: its cells between bars, without the blank ones at the end. Rows without words are left out. */
export const sheetLines = ({ rows }: Pick<ResultSheet, "rows">): readonly string[] =>
  rows
    .map((row) =>
      row
        .map(({ value }) => String(value))
        .join(" | ")
        .replace(/[ |]+$/, ""),
    )
    .filter((line) => line !== "");
