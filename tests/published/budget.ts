/** A published budget as a season workbook, and what its table prints. */
import { Decimal } from "../../src/core/numbers/decimal";
import type { WorkbookContent } from "../../src/workbook/cell";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { contentFromText } from "../support/tableFromText";

export type Source = {
  readonly title: string;
  readonly publisher: string;
  readonly year: string;
  readonly address: string;
  readonly where: string;
};

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
  /** Present where we come to something else: our figure to the printed digits. The reason is in disagreements.md. */
  readonly ours?: string;
};

export type Budget = {
  readonly id: string;
  readonly source: Source;
  /** The workbook as text. Other costs may have a column Part of the source's own headings, which we leave alone. */
  readonly workbook: string;
  readonly printed: readonly Printed[];
};

/** The figure that the season's JSON report gives for what is printed; `null` where it has no answer. */
export function figureOf({ workbook }: Budget, { figure, crop, parts, times }: Printed): Decimal | null {
  const report = seasonReport(onlyParts(contentFromText(workbook), parts));
  if (report.problems.length > 0) throw new Error(`the workbook has problems: ${JSON.stringify(report.problems)}`);
  const crops = reportJson(report).crops;
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
