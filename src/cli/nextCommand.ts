/** The command line that starts the next season: a new workbook made from this year's. The old one is never changed. */
import { parseArgs } from "node:util";
import { toFix } from "../workbook/problem";
import { nextSeason } from "../workbook/next/nextSeason";
import { Refusal } from "./arguments";
import { ended, type ExitCode } from "./ended";
import { refuseNew, writeNew } from "./newFile";
import { isSameFile } from "./sameFile";
import { onOneLine, printed } from "./terminalText";
import { workbookFile } from "./workbookFile";

const usage = "Usage: npm run -s next -- OLD.xlsx NEW.xlsx [--force]";

async function run(words: readonly string[]): Promise<ExitCode> {
  const { from, to, force } = asked(words);
  if (await isSameFile(from, to))
    throw new Refusal(
      `${onOneLine(to)} is the season's workbook itself, and the next one keeps not all of it: name another file to write to.`,
    );
  await refuseNew(to, force);
  const { content, report, isOther } = await workbookFile(from);
  if (isOther) throw new Refusal(`${from}: none of its tables is one of a season.`);
  const next = nextSeason(content, report);
  if (next === null) throw new Refusal(`${from}: nothing tells the year of its season. Enter Season year in the table Season.`);
  const lines = [`Season ${next.year}, made from the workbook of season ${report.season.settings.seasonYear ?? ""}`, ...next.notes];
  await writeNew(to, next.tables, lines);
  process.stdout.write(`${printed(lines.join("\n"))}\n`);
  return toFix(report.problems).length === 0 ? 0 : 1;
}

function asked(words: readonly string[]) {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: { force: { type: "boolean", default: false } },
    });
    const [from, to, ...rest] = positionals;
    if (from === undefined || to === undefined || rest.length > 0) throw new Refusal(usage);
    return { from, to, force: values.force };
  } catch (cause) {
    if (cause instanceof Refusal) throw cause;
    throw new Refusal(`${cause instanceof Error ? cause.message : String(cause)}\n${usage}`, { cause });
  }
}

await ended(run);
