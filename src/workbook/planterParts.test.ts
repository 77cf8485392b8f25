import { expect, it } from "vitest";
import { planterParts } from "./planterParts";

it("every part of the check sheet has a name of its own and says what is looked at", () => {
  const names = planterParts.map(({ part }) => part);
  expect(new Set(names).size).toBe(names.length);
  for (const { part, look } of planterParts) {
    expect(part, part).toMatch(/^[A-Z][\w, ]{4,40}$/);
    expect(look, part).toMatch(/^[A-Z].{10,80}$/);
  }
});
