/** Hands on what a file of tests passed through, and only that: together with all files before it, it would grow with each. */
import { afterAll } from "vitest";

type Coverage = { static: Record<string, number>; perTest: Record<string, Record<string, number>> };
type Tool = { readonly mutantCoverage?: Coverage };

// After the hook of the tool itself, which says the same of all files so far (the hooks run in the order of the list).
afterAll(({}, suite) => {
  const coverage = (globalThis as { __stryker__?: Tool }).__stryker__?.mutantCoverage;
  const meta = suite.meta as { mutantCoverage?: Coverage };
  if (coverage === undefined || meta.mutantCoverage === undefined) return;
  meta.mutantCoverage = structuredClone(coverage);
  // Emptied in place, because the code under test holds on to them.
  for (const part of [coverage.static, coverage.perTest]) for (const key of Object.keys(part)) Reflect.deleteProperty(part, key);
});
