import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { columnHint } from "./columnHints";
import { gradeOf } from "./problem";
import { seasonReport } from "./report";

const farm = `Crops
| Crop | Expected price |
| Corn | 4.40 |
Fields
| Field | Crop | Acres | Yield goal | Rent per acre |
| Alder | Corn | 120 | 200 | 150 |
Changes
`;
const lines = (
  heading: string,
  [first, second]: readonly [string, string],
) => `${farm}| Change | Quadrant | Item | Quantity | Price | ${heading} |
| Wheels | added costs | Pass | 1 | 3 | ${first} |
| Wheels | added costs | Oil | 1 | 2 | ${second} |
`;
const report = (text: string) => seasonReport(contentFromText(text));
const places = ({ problems, placeOf }: ReturnType<typeof report>) =>
  problems.map((problem) => [problem.code, problem.at.column, placeOf(problem.at)?.column]);

describe("a column with a heading of before", () => {
  it("is read as its own, in any case and with a word in brackets", () => {
    for (const heading of ["Counted in", "Active", "ACTIVE (yes or no)"]) {
      const read = report(lines(heading, ["yes", ""]));
      expect([read.season.changes![0]!.countedIn, read.problems], heading).toEqual([true, []]);
    }
  });

  it("is read in Stand counts too: weak plants count half under either heading", () => {
    const weak = (heading: string) =>
      report(`${farm.replace("Changes\n", "")}Stand counts
| Field | Date | Row width | Length | Plants | ${heading} |
| Alder | 2031-05-20 | 30 | 17.424 | 26 | 3 |
`).season.standCounts!.map((count) => count.weak.toFixed());
    expect([weak("Weak plants"), weak("Doubtful plants"), weak("Other")]).toEqual([["3"], ["3"], ["0"]]);
  });

  it("is told of by the heading that the workbook has, at its own cell", () => {
    expect(places(report(lines("Active", ["yes", "no"])))).toEqual([["change-disagrees", "Active", 5]]);
    expect(places(report(lines("Active", ["maybe", ""])))).toEqual([["not-in-list", "Active", 5]]);
    expect(places(report(lines("Counted in", ["maybe", ""])))).toEqual([["not-in-list", "Counted in", 5]]);
    expect(report(lines("Counted in", ["maybe", ""])).placeOf({ table: "Changes", row: 1, column: "Active" })?.column).toBe(0);
    expect(report(lines("Active", ["yes", ""])).placeOf({ table: "Changes", row: 1, column: "Counted in" })?.column).toBe(5);
  });

  it("is an entry to fix beside the heading of today, on whichever side, and today's counts", () => {
    for (const [heading, yes] of [
      ["Active | Counted in", "no | yes"],
      ["Counted in | Active", "yes | no"],
    ] as const) {
      const read = report(lines(heading, [yes, yes]));
      expect(
        [
          read.season.changes![0]!.countedIn,
          read.problems.map(({ code, at, found, like }) => [code, at.column, found, like, gradeOf({ code })]),
        ],
        heading,
      ).toEqual([true, [["column-twice", "Active", "Active", "Counted in", "fix"]]]);
    }
  });

  it("is an entry to fix where it is there twice, and the first counts", () => {
    const read = report(lines("Active | Active (old)", ["yes | no", "yes | no"]));
    expect([read.season.changes![0]!.countedIn, read.problems.map(({ code, found, like }) => [code, found, like])]).toEqual([
      true,
      [["column-twice", "Active (old)", "Counted in"]],
    ]);
  });

  it("is told of where a slip is in it", () => {
    expect(report(lines("Actives", ["yes", ""])).problems.map(({ code, at, like }) => [code, at.column, like])).toEqual([
      ["column-unread", "Actives", "Counted in"],
    ]);
  });

  it("is read where the table Matches names it, and has the hint of its column", () => {
    const content = contentFromText(`${farm.replace("Changes\n", "")}Matches
| Table | Range | Column | Heading |
| Changes | Mine | Change | What |
| Changes | Mine | Quadrant | Box |
| Changes | Mine | Item | Line |
| Changes | Mine | Quantity | Many |
| Changes | Mine | Price | Each |
| Changes | Mine | Active | On |
Mine
| What | Box | Line | Many | Each | On |
| Wheels | added costs | Pass | 1 | 3 | yes |
`);
    const { season, problems } = seasonReport(content);
    expect([season.changes!.map(({ countedIn }) => countedIn), problems]).toEqual([[true], []]);
    expect(columnHint("Changes", "active")).toBe(columnHint("Changes", "Counted in"));
    expect(columnHint("Changes", "active")).not.toBe("");
  });
});
