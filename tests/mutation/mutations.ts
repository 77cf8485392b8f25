/** What a mutation is, and the code with one in it. */
import { createHash } from "node:crypto";

type Place = { readonly line: number; readonly column: number };
/** One change of the code: what stands from `start` to `end` (lines and columns from 1) becomes `replacement`. */
export type Mutation = {
  readonly fileName: string;
  readonly location: { readonly start: Place; readonly end: Place };
  readonly mutatorName: string;
  readonly replacement: string;
};

/** The path of the code within the project. */
export const codeOf = ({ fileName }: Mutation): string => fileName.replaceAll("\\", "/").replace(/^.*\/src\//, "src/");

/** The same for the same mutation in every run, and another for every other. */
export const idOf = (mutation: Mutation): string => {
  const { start, end } = mutation.location;
  const { mutatorName, replacement } = mutation;
  return JSON.stringify([codeOf(mutation), start.line, start.column, end.line, end.column, mutatorName, replacement]);
};

/** So many of all, drawn by a hash of seed and place, so that a mutation that is new moves none of the others. */
export function sampleOf(all: readonly Mutation[], count: number, seed: string): readonly Mutation[] {
  const rank = (mutation: Mutation) =>
    createHash("sha256")
      .update(`${seed} ${idOf(mutation)}`)
      .digest("hex");
  const ranked = all.map((mutation) => ({ mutation, rank: rank(mutation) }));
  return ranked
    .sort((one, other) => (one.rank < other.rank ? -1 : 1))
    .slice(0, count)
    .map(({ mutation }) => mutation);
}

/** Where a place stands in the text, counted in characters from 0. */
export function offsetOf(text: string, { line, column }: Place): number {
  let at = 0;
  for (let left = line - 1; left > 0; left -= 1) at = text.indexOf("\n", at) + 1;
  return at + column - 1;
}

/** What may bind its neighbours otherwise than what it replaces. */
const bindsOtherwise = ["ArithmeticOperator", "EqualityOperator", "LogicalOperator"];

/** The text with the mutation in it. */
export function mutated(text: string, { location, mutatorName, replacement }: Mutation): string {
  const put = bindsOtherwise.includes(mutatorName) ? `(${replacement})` : replacement;
  return text.slice(0, offsetOf(text, location.start)) + put + text.slice(offsetOf(text, location.end));
}
