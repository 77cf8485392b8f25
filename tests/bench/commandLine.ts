/** The command line as a person starts it: on the demo, and on a folder of workbooks. */
import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Milliseconds by the clock, and of the processor in all processes together. */
export type CommandMeasured = { readonly what: string; readonly clock: number; readonly processor: number };

const season = "shared/demo-season.xlsx";

export function commandLine(workbooks: number): readonly CommandMeasured[] {
  const folder = mkdtempSync(join(tmpdir(), "pennyacre-bench-"));
  try {
    mkdirSync(join(folder, "from"));
    for (let index = 0; index < workbooks; index += 1) copyFileSync(season, join(folder, "from", `season-${index + 1}.xlsx`));
    const one = [1, 2, 3].map(() => started("--", season));
    return [
      { what: "npm run -s report on the demo", ...least(one) },
      {
        what: `npm run -s report on a folder of ${workbooks} workbooks, with lender pages`,
        ...started("--", join(folder, "from"), "--lender", join(folder, "to")),
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const least = (times: readonly Omit<CommandMeasured, "what">[]) => ({
  clock: Math.min(...times.map(({ clock }) => clock)),
  processor: Math.min(...times.map(({ processor }) => processor)),
});

/** A shell's own clock tells what its children took of the processor; Node does not. */
function started(...words: readonly string[]): Omit<CommandMeasured, "what"> {
  const { stderr, error } = spawnSync(
    "bash",
    ["-c", 'TIMEFORMAT="%R %U %S"; time npm run -s report "$@" > /dev/null 2>&1', "report", ...words],
    { encoding: "utf8" },
  );
  if (error !== undefined) throw error;
  const [clock, user, system] = stderr.trim().split(" ").map(Number) as [number, number, number];
  return { clock: clock * 1000, processor: (user + system) * 1000 };
}
