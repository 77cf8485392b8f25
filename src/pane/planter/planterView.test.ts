import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { reportJson } from "../../workbook/reportJson";
import { seasonReport } from "../../workbook/report";
import { dueRows } from "../change/dueRows";
import { formatOf } from "../format";
import { planterView } from "./planterView";
import { emptyRows, nextPart, rowsView, type RowsDraft } from "./rowsDraft";

const farm = (checks: string, settings = "| Labour per hour | 30 |") =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
${settings}
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 200 | 180 |
Items
| Item | Kind | Pack unit | Plan price per pack |
| Disc | repairs | each | 40 |
Operations
| Field or Crop | Operation | Rate | Status |
| Alder | Scouting | 2 | plan |
Planter checks
| Machine | Row | Part | New | Replace at | Measured | Unit | Item | Hours | Done on |
${checks}`),
  );
const viewOf = (report: ReturnType<typeof farm>) => planterView(report.figures.planters[0]!, formatOf(report.season.settings, "en-US"));

describe("the planter in the pane", () => {
  it("has what is due first, with its cost, and the rest in a sentence", () => {
    const view = viewOf(
      farm(
        "| Planter | 1 | Opener disc | 15 | 14.5 | 14.6 | in | Disc | 1 | |\n" +
          "| Planter | 2 | Opener disc | 15 | 14.5 | 14.4 | in | Disc | 1 | |\n" +
          "| Planter | 3 | Opener disc | 15 | 14.5 | 15 | in | Disc | 1 | |",
      ),
    );
    expect([view.due, view.cost]).toEqual(["1 part due or to adjust", "70.00 USD"]);
    expect(view.lines.map(({ name, state, cost }) => `${name}: ${state}, ${cost}`)).toEqual([
      "Opener disc, row 2: due, 120% worn, 70.00",
      "Opener disc, row 1: soon, 80% worn, 70.00",
    ]);
    expect(view.restsOn).toBe("No entry of Operations names Planter, so nothing is said per acre. 1 part soon due: 70.00 USD more.");
    expect(view.others).toBe("1 part good.");
  });

  it("says what counts as nothing", () => {
    expect(viewOf(farm("| Planter | 2 | Opener disc | 15 | 14.5 | 14.4 | in | Disc | 1 | |", "")).unknown).toEqual([
      "Labour per hour is not set, so hours in the shop count as nothing.",
    ]);
  });

  it("counts a part that was looked at twice as an entry to fix, not twice in silence, until the older is done", () => {
    const twice = (done: string) =>
      farm(
        `| Planter | 2 | Opener disc | 15 | 14.5 | 14.4 | in | Disc | 1 | ${done} |\n| Planter | 2 | Opener disc | 15 | 14.5 | 14.4 | in | Disc | 1 | |`,
      );
    expect(twice("").problems.map(({ code }) => code)).toContain("part-twice");
    expect(twice("2031-03-01").problems.map(({ code }) => code)).not.toContain("part-twice");
    expect(reportJson(twice("2031-03-01")).planter.map(({ cost }) => cost)).toEqual(["0", "70"]);
  });
});

describe("the rows that a rebuild begins with", () => {
  const due = (row: string, hours = "1") => `| Planter | ${row} | Opener disc | 15 | 14.5 | 14.4 | in | Disc | ${hours} | |`;
  const begun = (...checks: readonly string[]) => {
    const rows = dueRows(farm(checks.join("\n")).figures.planters);
    return rows === null ? null : [rows.rows, rows.partsPerRow, rows.hoursPerRow].map((each) => each?.toFixed() ?? null);
  };

  it("are those due or to adjust, with what one of them takes in the mean", () => {
    expect(begun(due("1"), due("2", "2"), "| Planter | 2 | Meter seal | 4 | 3 | 2.9 | in | Disc | 1 | |")).toEqual(["2", "60", "2"]);
  });

  it("leave blank what is not known, and are none where money would be of no row", () => {
    expect(begun(due("1"), due("2", ""))).toEqual(["2", "40", null]);
    expect(begun(due("1"), due(""))).toBeNull();
    expect(begun(due("1"), due("2").replace("Planter", "Other"))).toBeNull();
    expect(begun(due("1").replace("14.4", "15"))).toBeNull();
  });
});

describe("a filled sheet typed back in", () => {
  const typed: RowsDraft = {
    ...emptyRows("Planter"),
    part: "Opener disc",
    whenNew: "15",
    replaceAt: "14.5",
    unit: "in",
    rows: "3",
    measured: ["14.8", "", "14.4"],
  };

  it("is an entry for each row that was measured", () => {
    const { entries, says, boxes } = rowsView(typed, [], false);
    expect([boxes, says]).toEqual([3, "2 of 3 rows measured. A blank row is not written."]);
    expect(entries!.map((row) => [...row].map(([heading, value]) => `${heading} ${String(value)}`).join(", "))).toEqual([
      "Machine Planter, Row 1, Part Opener disc, New 15, Replace at 14.5, Measured 14.8, Unit in",
      "Machine Planter, Row 3, Part Opener disc, New 15, Replace at 14.5, Measured 14.4, Unit in",
    ]);
  });

  it("loses nothing unsaid", () => {
    expect(rowsView({ ...typed, rows: "2" }, [], false)).toMatchObject({
      faults: { rows: "1 more row is filled in than the planter has." },
      entries: null,
    });
    expect(rowsView({ ...typed, measured: ["14.8x"] }, [], false)).toMatchObject({ faults: { "row 1": "Enter a number." }, entries: null });
    expect(rowsView({ ...typed, item: "Discs" }, [], false).faults.item).toMatch(/no “Discs”/);
    expect(rowsView({ ...typed, rows: "2.5" }, [], false).faults.rows).toBe("Enter a whole number up to 48.");
    expect(rowsView({ ...typed, measured: [] }, [], false)).toMatchObject({ faults: {}, entries: null });
  });

  it("begins the next part with the same planter", () => {
    expect(nextPart(typed)).toEqual({ ...emptyRows("Planter"), rows: "3" });
  });
});
