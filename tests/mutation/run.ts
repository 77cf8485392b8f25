/**
 * `npm run mutation`: mutates the core and the workbook's code in so many places of a seeded sample, and says which mutations nothing
 * notices: `npm run mutation -- 600 1` for so many of such a seed. A run that was ended is gone on with.
 */
import { appendFileSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { discovered } from "./discover";
import { codeOf, idOf, sampleOf, type Mutation } from "./mutations";
import { passagesOf } from "./passagesOf";
import { trials } from "./trials";

type Tried = Mutation & { readonly outcome: string; readonly by: string | null; readonly seconds: number };

const [count = "600", seed = "1"] = process.argv.slice(2);
const folder = `.tmp/mutation/${count}-${seed}`;
mkdirSync(folder, { recursive: true });
process.env.PENNYACRE_JUDGE = "short";
process.env.PENNYACRE_SEED = seed;
process.env.PENNYACRE_MUTATION = "yes";

/** The outcome of what the quick ones did not notice and the others have not been asked about. */
const open = "open";

/** What a file of the folder holds, made where it is not there yet. */
async function kept<Value>(name: string, made: () => Promise<Value>): Promise<Value> {
  const file = `${folder}/${name}`;
  if (!existsSync(file)) writeFileSync(file, JSON.stringify(await made(), null, 1));
  return JSON.parse(readFileSync(file, "utf8")) as Value;
}
const results = `${folder}/results.jsonl`;
const lines = existsSync(results) ? readFileSync(results, "utf8").split("\n") : [];
const outcomes = new Map(lines.filter((line) => line !== "").map((line) => [idOf(JSON.parse(line) as Tried), JSON.parse(line) as Tried]));

const sample = await kept("sample.json", async () => {
  const all = await discovered();
  console.log(`${all.length} mutations`);
  return sampleOf(all, Number(count), seed);
});
const passages = await kept("passages.json", () => passagesOf(sample, `${folder}/passed.jsonl`));

const tests = trials();
/** Asks somebody about a mutation and notes the answer. */
async function ask(number: number, who: typeof tests.tried): Promise<void> {
  const mutation = sample[number]!;
  const began = performance.now();
  const { outcome, by } = (await who(mutation, passages[number]!)) ?? { outcome: open, by: null };
  const tried = { ...mutation, outcome, by, seconds: Math.round((performance.now() - began) / 100) / 10 };
  outcomes.set(idOf(mutation), tried);
  appendFileSync(results, `${JSON.stringify(tried)}\n`);
  const { line, column } = mutation.location.start;
  console.log(`${number + 1} of ${sample.length} ${outcome}: ${codeOf(mutation)}:${line}:${column} ${by ?? ""} (${tried.seconds} s)`);
}
const outcomeOf = (mutation: Mutation) => outcomes.get(idOf(mutation))?.outcome;
// Slow answers come last, so that a run that is ended early has looked at as much of the sample as it could.
for (const [number, mutation] of sample.entries()) if (outcomeOf(mutation) === undefined) await ask(number, tests.tried);
for (const [number, mutation] of sample.entries()) if (outcomeOf(mutation) === open) await ask(number, tests.triedOnOthers);
tests.end();

const all = sample.map((mutation) => outcomes.get(idOf(mutation))!);
console.log(`seed ${seed}, ${sample.length} mutations:`);
for (const outcome of new Set(all.map((each) => each.outcome)))
  console.log(`${all.filter((each) => each.outcome === outcome).length} ${outcome}`);
rmSync(`${folder}/passed.jsonl`, { force: true });
