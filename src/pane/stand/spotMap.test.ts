import { describe, expect, it } from "vitest";
import { countedContent } from "../../../tests/support/paneWorkbook";
import { seasonReport } from "../../workbook/report";
import { formatOf } from "../format";
import { spotMap } from "./spotMap";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
/** The four spots of Mill Road with coordinates: 21,000 (19 and 2 weak make 20), 22, 24.5 and 20 thousand plants. */
const mapOf = (spots: readonly (readonly [number, number] | null)[], parts: readonly string[] = []) => {
  const report = seasonReport({
    ...countedContent,
    tables: countedContent.tables.map((each) =>
      each.name !== "Stand_counts"
        ? each
        : {
            ...each,
            headers: [...each.headers, "Latitude", "Longitude", "Part", "Part acres"],
            rows: each.rows.map((row, index) => [
              ...row,
              ...(spots[index] ?? ["", ""]),
              parts[index] ?? "",
              parts[index] === undefined ? "" : 30,
            ]),
          },
    ),
  });
  return spotMap(
    report.figures.stands.find(({ field }) => field.name === "Mill Road")!,
    format,
  );
};
/** A square of 0.004 degrees to the north and 0.006 to the east: 444 by 497 m at 42°, 1,460 by 1,630 ft. */
const corners = [
  [42.004, -93.006],
  [42.004, -93],
  [42, -93.006],
  [42, -93],
] as const;

describe("the map of the spots", () => {
  it("has north above and east to the right, and one scale for both", () => {
    // 497.1 by 444.3 m: 200 units high, 223.8 wide, in the middle of 252.
    const { marks, scale } = mapOf(corners)!;
    expect(marks.map(({ x, y }) => [x, y])).toEqual([
      [38.1, 24],
      [261.9, 24],
      [38.1, 224],
      [261.9, 224],
    ]);
    // 200 units are 444.3 m, 1,458 ft: 500 ft are 68.6.
    expect(scale).toEqual({ length: 68.6, words: "500 ft" });
  });

  it("draws a mark by its plants, and on its corner where they are well under the target", () => {
    const { marks } = mapOf(corners)!;
    // Half-widths of 8 at the target of 32,000, so 5 at 20,000; nine tenths of the target are 28,800.
    expect(marks.map(({ size, isThin }) => [size, isThin])).toEqual([
      [5, true],
      [5.5, true],
      [6.1, true],
      [5, true],
    ]);
  });

  it("says in words what it shows", () => {
    const map = mapOf(corners, ["Knoll"])!;
    expect(map.says).toBe(
      "Map of 4 spots counted in Mill Road, north up, 1,630 ft from west to east and 1,460 ft from south to north. Thinnest 20,000 in " +
        "the northwest (Knoll), fullest 24,500 in the southwest. 4 are under nine tenths of the target.",
    );
    expect(map.names.map(({ words }) => words)).toEqual(["Knoll"]);
    expect(map.rows[0]).toEqual({ name: "northwest, Knoll", cells: ["20,000", "42.00400", "−93.00600"] });
  });

  it("tells of spots without coordinates, and is none where no spot has any", () => {
    expect(mapOf([corners[0], corners[1]])!.caption).toContain("2 spots have no coordinates.");
    expect(mapOf([])).toBeNull();
  });

  it("draws one spot, or spots in one place, without a scale beyond reason", () => {
    const one = mapOf([corners[0]])!;
    expect([one.marks.length, one.says]).toEqual([
      1,
      "Map of one spot counted in Mill Road, north up: 20,000 plants per acre. One is under nine tenths of the target.",
    ]);
    expect(one.marks.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
  });
});
