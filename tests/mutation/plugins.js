/** Lets the mutations of the sample through (the tool can be told places, and at a place there may be several), and notes what comes of each at once. */
import { appendFileSync, readFileSync } from "node:fs";

const { PENNYACRE_MUTATIONS: sample, PENNYACRE_MUTATION_RESULTS: results } = process.env;

/** Lines and columns from 1, as the sample has them; the tool itself counts both from 0. */
const key = (fileName, { start, end }, mutatorName, replacement, from) =>
  JSON.stringify([
    fileName.replaceAll("\\", "/").replace(/^.*\/src\//, "src/"),
    ...[start, end].flatMap(({ line, column }) => [line - from, column - from]),
    mutatorName,
    replacement,
  ]);

const sampleChecker = () => {
  const asked = new Set(
    JSON.parse(readFileSync(sample, "utf8")).map((each) => key(each.fileName, each.location, each.mutatorName, each.replacement, 1)),
  );
  return {
    init: async () => {},
    group: async (mutants) => [mutants.map(({ id }) => id)],
    check: async (mutants) =>
      Object.fromEntries(
        mutants.map(({ id, fileName, location, mutatorName, replacement }) => [
          id,
          asked.has(key(fileName, location, mutatorName, replacement, 0))
            ? { status: "passed" }
            : { status: "compileError", reason: "not in the sample" },
        ]),
      ),
  };
};

/** A line for each as it is known, so that a run that somebody ends can be gone on with. */
const noter = () => ({
  onMutantTested: ({ fileName, location, mutatorName, replacement, status, killedBy, coveredBy }) => {
    if (status === "CompileError") return;
    const told = { fileName, location, mutatorName, replacement, status, killedBy, coveredBy: coveredBy?.length };
    appendFileSync(results, `${JSON.stringify(told)}\n`);
  },
});

export const strykerPlugins = [
  { kind: "Checker", name: "sample", factory: sampleChecker },
  { kind: "Reporter", name: "noter", factory: noter },
];
