import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { saysTheSame } from "./readingMemory";

const plain = fc.letrec((tie) => ({
  value: fc.oneof(
    { depthSize: "small" },
    fc.constantFrom(null, undefined, true, 0, 1, "", "corn"),
    fc.array(tie("value"), { maxLength: 3 }),
    fc.dictionary(fc.constantFrom("a", "b", "c"), tie("value"), { maxKeys: 3, noNullPrototype: true }),
    fc.array(fc.constantFrom("a", "b", 1), { maxLength: 3 }).map((values) => new Set(values)),
    fc.array(fc.tuple(fc.constantFrom("a", "b", 1), tie("value")), { maxLength: 3 }).map((pairs) => new Map(pairs)),
  ),
})).value;

describe("two plain values", () => {
  it("say the same where one is a copy of the other", () => {
    fc.assert(fc.property(plain, (value) => saysTheSame(value, structuredClone(value))));
  });

  it("say the same only where a deep comparison of all that they hold does", () => {
    fc.assert(
      fc.property(plain, plain, (one, other) => {
        const alike = (() => {
          try {
            expect(one).toStrictEqual(other);
            return true;
          } catch {
            return false;
          }
        })();
        expect(saysTheSame(one, other)).toBe(alike);
      }),
      { numRuns: 2_000 },
    );
  });

  it.each<readonly [string, unknown, unknown]>([
    ["a list and a longer one", [1], [1, 2]],
    ["a list and what has its places", [1], { 0: 1, length: 1 }],
    [
      "a map and a larger one",
      new Map([["a", 1]]),
      new Map([
        ["a", 1],
        ["b", 2],
      ]),
    ],
    ["a map and one of other keys", new Map([["a", undefined]]), new Map([["b", undefined]])],
    ["a set and a larger one", new Set(["a"]), new Set(["a", "b"])],
    ["an entry that is not there and one of nothing", {}, { a: undefined }],
    ["nothing and an object", null, {}],
    ["a number and an object", 1, {}],
  ])("do not say the same: %s", (_, one, other) => {
    expect([saysTheSame(one, other), saysTheSame(other, one)]).toEqual([false, false]);
  });
});
