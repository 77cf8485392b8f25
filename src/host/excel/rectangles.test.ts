import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rectanglesByKey } from "./rectangles";

const same = (key: string) => (key === " " ? null : key);
const painted = (rows: readonly string[][], joinable: (key: string) => boolean) => {
  const canvas = rows.map((row) => row.map(() => " "));
  const rectangles = rectanglesByKey(rows, same, joinable);
  for (const { key, at } of rectangles) {
    for (let row = at.row; row < at.row + at.rows; row += 1) {
      for (let column = at.column; column < at.column + at.columns; column += 1) {
        expect(canvas[row]?.[column]).toBe(" "); // no cell is painted twice
        canvas[row]![column] = key;
      }
    }
  }
  return { canvas, count: rectangles.length };
};

describe("rectanglesByKey", () => {
  it("covers every cell that has a key once, and no other", () => {
    const letters = fc.array(fc.array(fc.constantFrom("a", "b", " "), { minLength: 1, maxLength: 6 }), { maxLength: 6 });
    fc.assert(
      fc.property(letters, (rows) => {
        expect(painted(rows, () => true).canvas).toEqual(rows);
      }),
    );
  });

  it("takes one rectangle for a block, and one a row where rows may not be joined", () => {
    const block = [
      ["a", "a"],
      ["a", "a"],
      ["a", "a"],
    ];
    expect(painted(block, () => true).count).toBe(1);
    expect(painted(block, () => false).count).toBe(3);
  });
});
