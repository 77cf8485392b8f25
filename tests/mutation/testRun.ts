/**
 * The tests, held ready in a process of its own, so that a mutation that never ends can be ended: each run reads the code with the
 * mutation in it, asks the files of tests in the order that is given, and ends with the first test that notices.
 */
import { resolve } from "node:path";
import { createVitest, type Reporter, type TestModule, type TestSpecification } from "vitest/node";
import { codeOf, mutated, type Mutation } from "./mutations";
import { noting } from "./passages";

/** What is asked: which tests notice the mutation, or, without one, what all tests pass through. */
export type Asked =
  { readonly mutation: Mutation; readonly files: readonly string[]; readonly only?: string } | { readonly passages: readonly Mutation[] };
/** Who noticed; nobody; or that it took for ever. `seconds` are those of each file of tests, of a run without a mutation. */
export type Answer =
  | { readonly noticed: string | null }
  | { readonly endless: true }
  | { readonly fault: string }
  | { readonly seconds: Readonly<Record<string, number>> };

/** So much of the processor between two tests is for ever: the slowest test needs six seconds. */
const longestProcessorSeconds = 30;

let change: { readonly file: string; readonly text: (text: string) => string } | null = null;
let noted: ReadonlyMap<string, readonly (readonly [number, Mutation])[]> = new Map();
let order: readonly string[] = [];
let busy = process.cpuUsage();
const alive = (): void => {
  busy = process.cpuUsage();
};

const noticed: string[] = [];
const watching: Reporter = {
  onTestModuleStart: alive,
  onTestModuleCollected: alive,
  onTestCaseReady: alive,
  onTestCaseResult: (test) => {
    alive();
    if (test.result().state === "failed") noticed.push(`${test.module.relativeModuleId} > ${test.fullName}`);
  },
  onTestModuleEnd: (module) => {
    if (module.errors().length > 0) noticed.push(`${module.relativeModuleId} cannot be run`);
  },
};

async function vitestOf(isolate: boolean) {
  class AsAsked {
    shard = (files: TestSpecification[]) => Promise.resolve(files);
    sort = (files: TestSpecification[]) => {
      const rank = new Map(order.map((file, index) => [resolve(file), index]));
      return Promise.resolve([...files].sort((one, other) => (rank.get(one.moduleId) ?? 0) - (rank.get(other.moduleId) ?? 0)));
    };
  }
  const vitest = await createVitest(
    "test",
    {
      config: "tests/mutation/vitest.config.ts",
      watch: false,
      pool: "threads",
      maxWorkers: 1,
      isolate,
      bail: isolate ? 0 : 1,
      update: "none",
      reporters: [watching],
      onConsoleLog: () => false,
      sequence: { sequencer: AsAsked, hooks: "list" },
    },
    {
      plugins: [
        {
          name: "mutation",
          enforce: "pre",
          transform(text: string, path: string) {
            const file = path.split("?")[0]!;
            if (change?.file === file) return { code: change.text(text), map: null };
            const places = noted.get(file);
            return places === undefined ? null : { code: noting(file, text, places), map: null };
          },
        },
      ],
    },
  );
  const specifications = new Map((await vitest.globTestSpecifications()).map((each) => [each.moduleId, each]));
  return { vitest, specifications };
}
type Held = Awaited<ReturnType<typeof vitestOf>>;

async function run({ vitest, specifications }: Held, files: readonly string[]): Promise<readonly TestModule[]> {
  noticed.length = 0;
  order = files;
  alive();
  const asked = files.flatMap((file) => specifications.get(resolve(file)) ?? []);
  if (asked.length !== files.length) throw new Error(`no such tests: ${files.join(", ")}`);
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(asked);
  for (const error of unhandledErrors) noticed.push(`a fault outside of the tests: ${String((error as Error).message)}`);
  return testModules;
}

async function tried(held: Held, { mutation, files, only }: Extract<Asked, { mutation: Mutation }>): Promise<Answer> {
  const file = resolve(codeOf(mutation));
  change = { file, text: (text) => mutated(text, mutation) };
  held.vitest.invalidateFile(file);
  if (only === undefined) held.vitest.resetGlobalTestNamePattern();
  else held.vitest.setGlobalTestNamePattern(only);
  try {
    await run(held, files);
    return { noticed: noticed[0] ?? null };
  } finally {
    change = null;
    held.vitest.invalidateFile(file);
  }
}

async function passed(mutations: readonly Mutation[]): Promise<Answer> {
  const places = new Map<string, (readonly [number, Mutation])[]>();
  mutations.forEach((mutation, number) => {
    const file = resolve(codeOf(mutation));
    places.set(file, [...(places.get(file) ?? []), [number, mutation]]);
  });
  noted = places;
  const held = await vitestOf(true);
  const modules = await run(held, [...held.specifications.keys()]);
  await held.vitest.close();
  if (noticed.length > 0) throw new Error(`tests fail without a mutation: ${noticed.join("; ")}`);
  return { seconds: Object.fromEntries(modules.map((each) => [each.relativeModuleId, each.diagnostic().duration / 1000])) };
}

let held: Held | null = null;
async function answer(asked: Asked): Promise<Answer> {
  if ("passages" in asked) return passed(asked.passages);
  held ??= await vitestOf(false);
  return tried(held, asked);
}

setInterval(() => {
  const { user, system } = process.cpuUsage(busy);
  if ((user + system) / 1e6 < longestProcessorSeconds) return;
  process.send!({ endless: true } satisfies Answer, () => process.exit(1));
}, 500).unref();
process.on("message", (asked: Asked) => {
  void answer(asked)
    .catch((fault: unknown): Answer => ({ fault: String(fault) }))
    .then((told) => process.send!(told));
});
