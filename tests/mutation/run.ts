/**
 * `npm run mutation`: mutates the core and the workbook's code in so many places of a seeded sample, and says which mutations no test
 * notices: `npm run mutation -- 600 1` for so many of such a seed. A run that was ended is gone on with.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { discovered, mutationTool, type Mutation } from "./discover";

type Tried = Mutation & { readonly status: string; readonly killedBy?: readonly string[] };

const [count = "600", seed = "1"] = process.argv.slice(2);
const folder = `.tmp/mutation/${count}-${seed}`;
mkdirSync(folder, { recursive: true });

const id = ({ fileName, location: { start, end }, mutatorName, replacement }: Mutation): string =>
  JSON.stringify([fileName.replace(/^.*\/src\//, "src/"), start.line, start.column, end.line, end.column, mutatorName, replacement]);
const rank = (mutation: Mutation): string =>
  createHash("sha256")
    .update(`${seed} ${id(mutation)}`)
    .digest("hex");

const kept = <Value>(name: string): Value | null =>
  existsSync(`${folder}/${name}`) ? (JSON.parse(readFileSync(`${folder}/${name}`, "utf8")) as Value) : null;
function keep<Value>(name: string, value: Value): Value {
  writeFileSync(`${folder}/${name}`, JSON.stringify(value, null, 1));
  return value;
}

/** What was noted of a pass so far. */
function noted(pass: string): readonly Tried[] {
  const file = `${folder}/${pass}.jsonl`;
  if (!existsSync(file)) return [];
  const lines = readFileSync(file, "utf8").split("\n");
  return lines.filter((line) => line !== "").map((line) => JSON.parse(line) as Tried);
}

const noticed = ({ status }: Tried): boolean => status === "Killed" || status === "Timeout";

/** Tries each mutation that the pass has no result of yet. */
function tried(pass: "covering" | "all", mutations: readonly Mutation[]): readonly Tried[] {
  // What no test noticed is tried again: tests may have come.
  const known = new Set(
    noted(pass)
      .filter((each) => pass === "covering" || noticed(each))
      .map(id),
  );
  const open = mutations.filter((each) => !known.has(id(each)));
  if (open.length > 0) {
    const { status } = spawnSync(process.execPath, [mutationTool, "run", "tests/mutation/stryker.config.js"], {
      stdio: "inherit",
      env: {
        ...process.env,
        PENNYACRE_MUTATIONS: (keep("open.json", open), `${folder}/open.json`),
        PENNYACRE_MUTATION_RESULTS: `${process.cwd()}/${folder}/${pass}.jsonl`,
        ...(pass === "all" ? { PENNYACRE_MUTATION_ALL: "yes" } : {}),
        PENNYACRE_JUDGE: "short",
        PENNYACRE_SEED: seed,
      },
    });
    if (status !== 0) throw new Error(`the mutation tool ended with ${status}`);
  }
  const asked = new Set(mutations.map(id));
  const latest = new Map(noted(pass).map((each) => [id(each), each]));
  return [...latest].flatMap(([key, each]) => (asked.has(key) ? [each] : []));
}
const all = kept<readonly Mutation[]>("sample.json") ?? keep("sample.json", await sampled());
async function sampled(): Promise<readonly Mutation[]> {
  const mutations = [...(await discovered())];
  console.log(`${mutations.length} mutations`);
  const ranks = new Map(mutations.map((each) => [each, rank(each)]));
  return mutations.sort((one, other) => (ranks.get(one)! < ranks.get(other)! ? -1 : 1)).slice(0, Number(count));
}
const first = tried("covering", all);
if (first.length < all.length)
  console.log(
    `${all.length - first.length} of the sample have no result: the code changed under them, or the run was ended; take another seed`,
  );
const unnoticed = first.filter((each) => !noticed(each));
console.log(`${first.length} tried on the tests that cover them, ${unnoticed.length} left`);
const left = tried("all", unnoticed).filter((each) => !noticed(each));
keep("left.json", left);
console.log(`seed ${seed}: ${first.length - left.length} of ${first.length} noticed`);
