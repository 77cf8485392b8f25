import { describe, expect, it } from "vitest";
import { areaOfEntries, pasted } from "./paste";

const at = (top: number, left: number, bottom = top, right = left) => ({ top, left, bottom, right });
const picture = (rows: string[][], over: ReturnType<typeof at>) =>
  pasted(rows, over).map(({ at: { row, column }, text }) => `${row},${column} ${text}`);

describe("pasted", () => {
  it("goes down and right from one cell", () => {
    expect(
      picture(
        [
          ["a", "b"],
          ["c", "d"],
        ],
        at(4, 1),
      ),
    ).toEqual(["4,1 a", "4,2 b", "5,1 c", "5,2 d"]);
  });

  it("fills a selection with one cell", () => {
    expect(picture([["a"]], at(0, 0, 1, 1))).toEqual(["0,0 a", "0,1 a", "1,0 a", "1,1 a"]);
  });

  it("repeats a row down a selection that is as wide", () => {
    expect(picture([["a", "b"]], at(0, 0, 2, 1))).toEqual(["0,0 a", "0,1 b", "1,0 a", "1,1 b", "2,0 a", "2,1 b"]);
  });

  it("goes beyond a selection that is no multiple of it", () => {
    expect(picture([["a"], ["b"]], at(0, 0, 2, 0))).toEqual(["0,0 a", "1,0 b"]);
  });

  it("is nothing where nothing was copied", () => expect(pasted([], at(0, 0))).toEqual([]));
});

describe("areaOfEntries", () => {
  it("is what was pasted over", () => expect(areaOfEntries(pasted([["a", "b"]], at(2, 1, 4, 2)))).toEqual(at(2, 1, 4, 2)));
  it("is none for no entries", () => expect(areaOfEntries([])).toBeNull());
});
