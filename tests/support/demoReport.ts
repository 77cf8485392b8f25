import { readFileSync } from "node:fs";
import { openWorkbook, type EmbeddedWorkbook } from "../../src/host/embedded";
import { seasonReport } from "../../src/workbook/report";
import type { SeasonReport } from "../../src/workbook/seasonReport";

/** A workbook of `shared/`, opened afresh, with its report. */
export async function demo(
  name: "demo-season" | "demo-season-with-problems" = "demo-season",
): Promise<{ readonly workbook: EmbeddedWorkbook; readonly report: SeasonReport }> {
  const workbook = opened(readFileSync(`shared/${name}.xlsx`));
  return { workbook, report: seasonReport(await workbook.read()) };
}

/** A workbook that a test takes for granted. */
export function opened(bytes: Uint8Array): EmbeddedWorkbook {
  const result = openWorkbook(bytes);
  if (!result.ok) throw new Error(result.problems.map((fault) => fault.message).join("\n"));
  return result.value;
}
