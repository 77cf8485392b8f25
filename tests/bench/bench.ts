/**
 * `npm run bench`: how long everything takes that somebody waits for. `-- --write` puts what it measured into docs/performance.md;
 * `-- figures`, `-- formulas`, `-- desk` and `-- command` measure that part alone.
 *
 * A machine's speed says little, and less where others use it too: so times are those of the processor where they can be, the least
 * of several, and stand beside a plain loop over the same cells, timed in the same run.
 */
import { spawnSync } from "node:child_process";
import { existsSync, writeFileSync } from "node:fs";
import { cpus, loadavg } from "node:os";
import { fileURLToPath } from "node:url";
import { buildProduct } from "./built";
import { commandLine } from "./commandLine";
import { desk } from "./desk";
import type { FiguresMeasured } from "./figures";
import { formulas } from "./formulas";
import { commandPart, deskPart, figuresLine, figuresPart, formulasPart, page } from "./page";

const words = process.argv.slice(2);
const parts = ["figures", "formulas", "desk", "command"] as const;
const asked = parts.filter((part) => words.includes(part));
const isAsked = (part: (typeof parts)[number]) => asked.length === 0 || asked.includes(part);
const sizes = [1_000, 10_000, 100_000, 300_000];
const asFormulas = 20_000;
const folderOf = 40;

const load = () => loadavg()[0]!.toFixed(1);
const machine = `Node ${process.version}, ${cpus().length} processors`;
const told: string[] = [];
/** Prints what a part measured, with the load of the machine before and after it. */
async function part(measure: () => readonly string[] | Promise<readonly string[]>): Promise<void> {
  const before = load();
  const lines = [...(await measure()), `Load of the machine: ${before} before, ${load()} after.`];
  told.push(...lines, "");
  console.log(`${lines.join("\n")}\n`);
}

function ofSize(entries: number): FiguresMeasured {
  const program = fileURLToPath(new URL("figures.ts", import.meta.url));
  const { status, stdout } = spawnSync(process.execPath, ["--expose-gc", "--import", "tsx", program, String(entries)], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "inherit"],
  });
  if (status !== 0) throw new Error(`The season of ${entries} rows could not be timed.`);
  return JSON.parse(stdout) as FiguresMeasured;
}

buildProduct();
console.log(`${machine}.\n`);
if (isAsked("figures"))
  await part(() =>
    figuresPart(
      sizes.map((entries) => {
        const measured = ofSize(entries);
        console.log(figuresLine(measured));
        return measured;
      }),
    ),
  );
if (isAsked("formulas")) await part(async () => formulasPart(await formulas(asFormulas)));
if (isAsked("desk")) {
  if (!existsSync("dist/index.html")) throw new Error("There is no build to time. Run: npm run build");
  await part(async () => deskPart(await desk()));
}
if (isAsked("command")) await part(() => commandPart(commandLine(folderOf)));
if (words.includes("--write")) writeFileSync("docs/performance.md", page(machine, told));
