/**
 * A reading that keeps what was not touched says what a reading that knows nothing says: of random workbooks, each changed step by
 * step in a cell, a row or a table, as somebody at the workbook changes it.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ReadingMemory } from "../../src/core/readingMemory";
import type { Cell, RawTable, WorkbookContent } from "../../src/workbook/cell";
import { seasonReport } from "../../src/workbook/report";
import { canonicalReport } from "./frozenReport";
import { isLong } from "./judge";
import { randomWorkbook } from "./randomWorkbook";

/** One change, its places as fractions of what is there. */
type Step = {
  readonly what: (typeof whats)[number];
  readonly table: number;
  readonly row: number;
  readonly column: number;
  readonly from: number;
};
const whats = [
  "another cell's value",
  "a blank",
  "words",
  "a row out",
  "a row twice",
  "rows turned about",
  "a table out",
  "nothing",
  "a stale cell",
] as const;
const fraction = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });
const steps = fc.array(fc.record({ what: fc.constantFrom(...whats), table: fraction, row: fraction, column: fraction, from: fraction }), {
  minLength: 3,
  maxLength: 6,
});

const at = (of: number, count: number) => Math.floor(of * count);

function changed(content: WorkbookContent, step: Step): WorkbookContent {
  const { tables } = content;
  const which = at(step.table, tables.length);
  if (step.what === "a table out") return { ...content, tables: tables.filter((_, index) => index !== which) };
  // New lists all through, as a host that reads everything again hands them over.
  return {
    ...content,
    tables: tables.map((table, index) =>
      index === which ? changedTable(table, step) : { ...table, rows: table.rows.map((row) => [...row]) },
    ),
  };
}

function changedTable(table: RawTable, { what, row, column, from }: Step): RawTable {
  const { rows } = table;
  if (rows.length === 0) return table;
  const [here, across] = [at(row, rows.length), at(column, table.headers.length)];
  const put = (value: Cell): RawTable => ({
    ...table,
    rows: rows.map((cells, index) => (index === here ? cells.with(across, value) : cells)),
  });
  switch (what) {
    case "another cell's value":
      return put(rows[at(from, rows.length)]![across]!);
    case "a blank":
      return put("");
    case "words":
      return put("about ten");
    case "a row out":
      return { ...table, rows: rows.filter((_, index) => index !== here) };
    case "a row twice":
      return { ...table, rows: [...rows, rows[here]!] };
    case "rows turned about":
      return { ...table, rows: rows.toReversed() };
    case "a stale cell":
      return { ...table, stale: [...(table.stale ?? []), { row: here, column: across }] };
    default:
      return table;
  }
}

describe("a reading that keeps what was not touched", () => {
  it("says what one says that knows nothing", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_999 }), steps, fc.boolean(), (number, all, isTyping) => {
        const kept = new ReadingMemory();
        let content = randomWorkbook(number);
        seasonReport(content, isTyping, kept);
        for (const step of all) {
          content = changed(content, step);
          expect(canonicalReport(seasonReport(content, isTyping, kept)), step.what).toBe(canonicalReport(seasonReport(content, isTyping)));
        }
      }),
      { numRuns: isLong ? 2_000 : 12 },
    );
  }, 600_000);
});
