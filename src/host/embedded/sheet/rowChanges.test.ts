import { describe, expect, it } from "vitest";
import { RowChanges } from "./rowChanges";
import type { SheetRow } from "./sheetRow";

const row = (attributes: string): SheetRow => ({ attributes, cells: [] });
const rows = (from: number, to: number, name: string) =>
  new Map(Array.from({ length: to - from }, (_, index) => [from + index, row(name)]));

describe("RowChanges", () => {
  it("has each row once, as it was set last, in whichever layer it lies", () => {
    const many = RowChanges.none.with(rows(0, 5000, "first"));
    const changed = many.with(rows(10, 20, "second"));
    expect([changed.get(9), changed.get(10), changed.get(5000)]).toEqual([row("first"), row("second"), undefined]);
    expect(many.get(10)).toEqual(row("first"));
    expect(changed.numbers()).toHaveLength(5000);
    expect(new Set(changed.numbers()).size).toBe(5000);
    const again = changed.with(rows(4000, 6000, "third"));
    expect(again.numbers()).toHaveLength(6000);
    expect([again.get(15), again.get(3999), again.get(4000), again.has(5999), again.has(6000)]).toEqual([
      row("second"),
      row("first"),
      row("third"),
      true,
      false,
    ]);
  });
});
