/** What is asked on the command line. */
import { parseArgs } from "node:util";

export const usage = [
  "Usage: npm run -s report -- FILE.xlsx [--json] [--out RESULT.xlsx] [--lender PAGES.xlsx] [--force]",
  "       npm run -s report -- FOLDER --lender FOLDER [--force]",
  "--force replaces a file that is there already; a copy that Pennyacre wrote is replaced without it.",
].join("\n");

/** Something that the person at the command line can mend: told in a sentence, without a stack. */
export class Refusal extends Error {
  override readonly name = "Refusal";
}

export type ReportRequest = {
  readonly path: string;
  readonly json: boolean;
  readonly out: string | null;
  readonly lender: string | null;
  readonly force: boolean;
};

export function asked(words: readonly string[]): ReportRequest {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        json: { type: "boolean", default: false },
        out: { type: "string" },
        lender: { type: "string" },
        force: { type: "boolean", default: false },
      },
    });
    const [path, ...rest] = positionals;
    if (path === undefined || rest.length > 0) throw new Refusal(usage);
    return { path, json: values.json, out: values.out ?? null, lender: values.lender ?? null, force: values.force };
  } catch (cause) {
    if (cause instanceof Refusal) throw cause;
    throw new Refusal(`${cause instanceof Error ? cause.message : String(cause)}\n${usage}`, { cause });
  }
}
