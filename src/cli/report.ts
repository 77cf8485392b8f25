/**
 * The command line: `report FILE.xlsx [--json] [--out RESULT.xlsx]`.
 *
 * Exit codes: 0 everything is computed, 1 computed but incomplete, with the problems on stderr, 2 nothing could be read
 * or written, 70 a fault of our own.
 */
import { readFile, writeFile } from "node:fs/promises";
import { parseArgs } from "node:util";
import { openWorkbook } from "../host/embedded";
import { HostError } from "../host/workbookHost";
import { describe } from "../workbook/problem";
import { seasonReport } from "../workbook/report";
import { reportJson } from "../workbook/reportJson";
import type { SeasonReport } from "../workbook/seasonReport";
import { breakEvenSheet } from "../workbook/sheets/breakEven";
import { costPerAcreSheet } from "../workbook/sheets/costPerAcre";
import { summary } from "./summary";

const usage = "Usage: npm run -s report -- FILE.xlsx [--json] [--out RESULT.xlsx]";

/** Something that the person at the command line can mend: told in a sentence, without a stack. */
class Refusal extends Error {
  override readonly name = "Refusal";
}

type Options = { readonly file: string; readonly json: boolean; readonly out: string | null };

function options(words: readonly string[]): Options {
  try {
    const { values, positionals } = parseArgs({
      args: [...words], allowPositionals: true, options: { json: { type: "boolean", default: false }, out: { type: "string" } },
    });
    const [file, ...rest] = positionals;
    if (file === undefined || rest.length > 0) throw new Refusal(usage);
    return { file, json: values.json, out: values.out ?? null };
  } catch (cause) {
    if (cause instanceof Refusal) throw cause;
    throw new Refusal(`${cause instanceof Error ? cause.message : String(cause)}\n${usage}`, { cause });
  }
}

async function bytesOf(file: string): Promise<Uint8Array> {
  try {
    return await readFile(file);
  } catch (cause) {
    throw new Refusal(`${file} cannot be read: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
  }
}

async function run(words: readonly string[]): Promise<0 | 1> {
  const { file, json, out } = options(words);
  const opened = openWorkbook(await bytesOf(file));
  if (!opened.ok) throw new Refusal(opened.problems.map((fault) => `${file}: ${fault.message}`).join("\n"));
  const workbook = opened.value;
  const report = seasonReport(await workbook.read());
  if (out !== null) {
    await workbook.write([costPerAcreSheet(report), breakEvenSheet(report)]);
    await writeFile(out, workbook.save());
  }
  process.stdout.write(`${json ? JSON.stringify(reportJson(report), null, 2) : summary(report)}\n`);
  tellProblems(report);
  return report.problems.length === 0 ? 0 : 1;
}

function tellProblems({ problems }: SeasonReport): void {
  for (const problem of problems) {
    const { table, row, column, what, remedy } = describe(problem);
    const place = [table, row === null ? null : `row ${row}`, column].filter((part) => part !== null).join(", ");
    process.stderr.write(`${place}: ${what} ${remedy}\n`);
  }
}

try {
  process.exitCode = await run(process.argv.slice(2));
} catch (error) {
  const refused = error instanceof Refusal || error instanceof HostError;
  process.stderr.write(`${refused ? error.message : error instanceof Error ? error.stack : String(error)}\n`);
  process.exitCode = refused ? 2 : 70;
}
