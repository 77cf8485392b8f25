/** A published budget as a season workbook, and what its table prints. */
import { Decimal } from "../../src/core/numbers/decimal";
import type { WorkbookContent } from "../../src/workbook/cell";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { contentFromText } from "../support/tableFromText";
import { rangeOfPrint, type Range } from "./printRange";
import type { Source } from "./sources";

/** Where a budget was read; its id is the budget's. */
type Read = Required<Omit<Source, "id" | "standing">>;

/** One printed figure and where the JSON report has it. */
export type Printed = {
  /** The figure under its crop, e.g. `plan/costPerUnit/full`. */
  readonly figure: string;
  /** Left out where there is one crop. */
  readonly crop?: string;
  /** The parts of Other costs that the figure holds, by their column Part; left out where it holds all. */
  readonly parts?: readonly string[];
  /** Acres or hectares, where the table prints the figure of the whole enterprise. */
  readonly times?: string;
  readonly prints: string;
  /** Present where we come to something else: our figure to the printed digits. The reason is in disagreements.ts. */
  readonly ours?: string;
};

export type Budget = {
  readonly id: string;
  readonly source: Read;
  /** The workbook as text. Other costs may have a column Part of the source's own headings, which we leave alone. */
  readonly workbook: string;
  readonly printed: readonly Printed[];
};

/** The source of a budget under its id. */
export const sourceOf = ({ id, source }: Budget): Source => ({ id, ...source });

/** Which figure of the season's report it is, the layer left out. */
export const formulaOf = ({ figure }: Printed): string => `seasonReport: ${figure.split("/")[1]}`;

/** The figure that the season's JSON report gives for what is printed; `null` where it has no answer. */
export const figureOf = (budget: Budget, printed: Printed): Decimal | null => figureWith(budget, printed, new Map());

/** What the report says of the crops of a budget, by its workbook, its parts and the entries that were moved: many figures ask for one. */
const known = new Map<string, readonly unknown[]>();

function cropsOf({ workbook }: Budget, parts: readonly string[] | undefined, moved: ReadonlyMap<string, Decimal>): readonly unknown[] {
  const key = JSON.stringify([workbook, parts, [...moved]]);
  const before = known.get(key);
  if (before !== undefined) return before;
  const report = seasonReport(onlyParts(moveEntries(contentFromText(workbook), moved), parts));
  if (report.problems.length > 0) throw new Error(`the workbook has problems: ${JSON.stringify(report.problems)}`);
  const { crops } = reportJson(report);
  known.set(key, crops);
  return crops;
}

function figureWith(budget: Budget, { figure, crop, parts, times }: Printed, moved: ReadonlyMap<string, Decimal>): Decimal | null {
  const crops = cropsOf(budget, parts, moved) as readonly { readonly crop: string }[];
  const of = crop === undefined ? crops[0] : crops.find((each) => each.crop === crop);
  const found = figure.split("/").reduce<unknown>((within, name) => (within as Record<string, unknown> | null)?.[name], of);
  if (found === undefined) throw new Error(`the report has no ${figure} of ${crop ?? "the first crop"}`);
  return found === null ? null : new Decimal(found as string).times(times ?? "1");
}

/** The workbook with only those rows of Other costs that are of the parts. */
function onlyParts(content: WorkbookContent, parts: readonly string[] | undefined): WorkbookContent {
  if (parts === undefined) return content;
  return {
    ...content,
    tables: content.tables.map((table) => {
      const column = table.headers.indexOf("Part");
      return column < 0 ? table : { ...table, rows: table.rows.filter((row) => parts.includes(String(row[column]))) };
    }),
  };
}

/** What a source has rounded to print; a quantity without a point was set and not rounded. */
const printedColumns = /price|cost|income|rent|share|amount|yield|rate|quantity|hours|freight/i;

/**
 * What the figure may be if each entry with a decimal point is anything that rounds to it. The entries of one column move the figure one
 * way all along, so that both ends are at the corners where every column pulls the same way.
 */
export function rangeOfFigure(budget: Budget, printed: Printed): Range {
  const at = (moved: readonly Moved[]): Decimal => figureWith(budget, printed, new Map(moved))!;
  const middle = at([]);
  const pulled = entriesOf(budget.workbook).flatMap((entries) => {
    const pull = at(entries.map(({ place, range }) => [place, range.to])).minus(middle);
    if (pull.isZero()) return [];
    return entries.map(({ place, range }) => ({
      place,
      low: pull.gt("0") ? range.from : range.to,
      high: pull.gt("0") ? range.to : range.from,
    }));
  });
  return { from: at(pulled.map(({ place, low }) => [place, low])), to: at(pulled.map(({ place, high }) => [place, high])) };
}
type Moved = readonly [place: string, to: Decimal];
type Entry = { readonly place: string; readonly range: Range };

const placeOf = (table: string, row: number, column: number): string => `${table}/${row}/${column}`;

/** The entries column by column, with the digits that are printed: a cell that is a number has lost its last noughts. */
function entriesOf(workbook: string): readonly (readonly Entry[])[] {
  const asText = workbook.replaceAll(/\| *(-?\d+\.\d+) *(?=\|)/g, "| '$1 ");
  return contentFromText(asText).tables.flatMap(({ name, headers, rows }) => {
    // A line with its amount must agree with its quantity and price: what it is made of is not moved apart.
    if (headers.includes("Amount") && headers.includes("Unit price")) return [];
    return headers.map((heading, column) =>
      rows.flatMap((row, index) => {
        const entry = String(row[column]);
        const isPrinted = printedColumns.test(heading) && /^-?\d+\.\d+$/.test(entry);
        return isPrinted ? [{ place: placeOf(name, index, column), range: rangeOfPrint(entry) }] : [];
      }),
    );
  });
}

const moveEntries = (content: WorkbookContent, moved: ReadonlyMap<string, Decimal>): WorkbookContent => ({
  ...content,
  tables: content.tables.map((table) => ({
    ...table,
    rows: table.rows.map((row, index) =>
      row.map((value, column) => {
        const to = moved.get(placeOf(table.name, index, column));
        return to === undefined ? value : Number(to);
      }),
    ),
  })),
});
