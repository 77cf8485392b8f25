/** `npm run fuzz -- SECONDS`: new random cases of all three kinds for so long, each kind a third of the time. */
import { spawnSync } from "node:child_process";

const seconds = Number(process.argv[2] ?? "60");
if (!(seconds > 0)) throw new RangeError(`how many seconds? got ${process.argv[2]}`);
const { status } = spawnSync("npx", ["--no-install", "vitest", "run", "--project", "unit", "tests/fuzz"], {
  stdio: "inherit",
  env: { PENNYACRE_SEED: "random", ...process.env, PENNYACRE_FUZZ: String(seconds) },
});
process.exitCode = status ?? 1;
