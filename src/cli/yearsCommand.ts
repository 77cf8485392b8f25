/** The command line that puts the past seasons of a folder of workbooks into one table of a new workbook. */
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { HostError } from "../host/workbookHost";
import { toFix } from "../workbook/problem";
import { yearsOf, yearsTogether, type YearsOf } from "../workbook/next/yearsTogether";
import { Refusal } from "./arguments";
import { ended, type ExitCode } from "./ended";
import { isMarked } from "./madeByUs";
import { refuseNew, writeNew } from "./newFile";
import { isSameFile } from "./sameFile";
import { onOneLine, printed } from "./terminalText";
import { orRefuse, workbookFile } from "./workbookFile";
import { isWorkbook } from "./workbookNames";

const usage = "Usage: npm run -s years -- FOLDER --out NEW.xlsx [--force]";

async function run(words: readonly string[]): Promise<ExitCode> {
  const { folder, out, force } = asked(words);
  await refuseNew(out, force);
  const found = (await orRefuse(`${folder} cannot be read`, readdir(folder))).filter(isWorkbook).sort();
  const names: string[] = [];
  // What this command wrote here before is no season of its own.
  for (const name of found) if (!(await isSameFile(join(folder, name), out))) names.push(name);
  if (names.length < found.length && !isMarked(await orRefuse(`${out} cannot be read`, readFile(out))))
    throw new Refusal(`${onOneLine(out)} is one of the workbooks that are read: name another file to write to.`);
  if (names.length === 0) throw new Refusal(`${folder} has no workbook (.xlsx) in it.`);
  const lines: string[] = [];
  const all: YearsOf[] = [];
  let worst: ExitCode = 0;
  for (const name of names) {
    try {
      const { content, report, isOther } = await workbookFile(join(folder, name));
      const years = isOther ? null : yearsOf(onOneLine(name), content, report);
      if (years === null) {
        lines.push(
          `${onOneLine(name)}: left out, ${isOther ? "none of its tables is one of a season" : "nothing tells the year of its season"}.`,
        );
        worst = isOther || worst > 1 ? worst : 1;
        continue;
      }
      const faults = toFix(report.problems).length;
      if (faults > 0 && worst < 1) worst = 1;
      all.push(years);
      lines.push(
        `${years.name}: ${counted(years.kept.length, "field")} kept, ${counted(years.entered.length, "entry", "entries")} of Past seasons` +
          (years.open.length === 0 ? "" : `; harvest not done, so not kept: ${years.open.join(", ")}`) +
          (faults === 0 ? "." : `; incomplete, ${counted(faults, "entry", "entries")} to fix.`),
      );
    } catch (cause) {
      if (!(cause instanceof Refusal) && !(cause instanceof HostError)) throw cause;
      worst = 2;
      lines.push(`${onOneLine(name)}: NOT READ. ${onOneLine(cause.message)}`);
    }
  }
  if (all.length === 0) throw new Refusal([...lines, "No past season was found, and nothing is written."].join("\n"));
  const table = yearsTogether(all, (told) => {
    lines.push(told);
    if (worst < 1) worst = 1;
  });
  await writeNew(out, [table], ["Past seasons of several workbooks", ...lines]);
  process.stdout.write(`${printed(lines.join("\n"))}\n`);
  return worst;
}

const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

function asked(words: readonly string[]) {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: { out: { type: "string" }, force: { type: "boolean", default: false } },
    });
    const [folder, ...rest] = positionals;
    if (folder === undefined || rest.length > 0 || values.out === undefined) throw new Refusal(usage);
    return { folder, out: values.out, force: values.force };
  } catch (cause) {
    if (cause instanceof Refusal) throw cause;
    throw new Refusal(`${cause instanceof Error ? cause.message : String(cause)}\n${usage}`, { cause });
  }
}

await ended(run);
