/** How a command of ours ends. */
import { HostError } from "../host/workbookHost";
import { Refusal } from "./arguments";
import { printed } from "./terminalText";

/** 0 done and complete, 1 done but incomplete, 2 nothing could be read or written, 70 a fault of our own. */
export type ExitCode = 0 | 1 | 2 | 70;

/** Runs a command with the words behind its name; what the person can mend is said in a sentence, without a stack. */
export async function ended(run: (words: readonly string[]) => Promise<ExitCode>): Promise<void> {
  // Whoever reads may stop before the end, as `head` does.
  process.stdout.on("error", (cause: NodeJS.ErrnoException) => {
    if (cause.code !== "EPIPE") throw cause;
    process.exit();
  });
  try {
    process.exitCode = await run(process.argv.slice(2));
  } catch (error) {
    const refused = error instanceof Refusal || error instanceof HostError;
    process.stderr.write(`${printed(refused ? error.message : error instanceof Error ? (error.stack ?? error.message) : String(error))}\n`);
    process.exitCode = refused ? 2 : 70;
  }
}
