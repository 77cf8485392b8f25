import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { adjusterCaution, blankGainCaution, labelCaution, underPlanterCaution } from "../../core/cautions";
import { seasonReport } from "../report";
import type { ResultSheet } from "../resultSheet";
import { changeSheet } from "./changeSheet";
import { resultSheets } from "./resultSheets";
import { standSheet } from "./standSheet";

const report = seasonReport(
  contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
Crops
| Crop | Expected price | Low price | Per-unit selling cost |
| Corn | 4.40 | 2.40 | 0.40 |
Fields
| Field | Crop | Acres | Yield goal | Planned planting date | Planted date | Target stand | Seeds dropped | Uniformity loss % |
| Alder | Corn | 100 | 200 | 2031-05-01 | 2031-05-15 | 32000 | 34000 | 2 |
| Birch | Corn | 60 | 180 | | | | | |
| Cedar | Corn | 40 | 190 | 2031-05-01 | 2031-05-01 | 32000 | | |
Items
| Item | Kind |
| Product Q | crop protection |
Stand_counts
| Field | Date | Row width | Length | Plants |
| Alder | 2031-06-01 | 30 | 17.424 | 24 |
| Alder | 2031-06-02 | 30 | 17.424 | 22 |
| Cedar | 2031-06-02 | 30 | 17.424 | 3 |
Changes
| Change | Quadrant | Item | Quantity | Unit | Price | Basis | Years kept | Salvage | Field or Crop | Acres | Interest rate | Counted in |
| Closing wheels | added returns | Yield gain | | bu | | per acre | | | Corn | | 0 | |
| Closing wheels | added costs | Wheels | 16 | row | 100 | lump sum | 4 | | | | | |
| A pass more | added returns | =Yield gain | 3 | bu | | per acre | | | Alder | | | yes |
| A pass more | added costs | Product Q | 1 | ac | 5 | per acre | | | | | | |
| A pass more | added costs | Hours kept | 1 | h | 60 | lump sum | 2 | | | | 0 | |
| Replant the low end | added costs | Seed | | bag | 280 | per acre | | | | 10 | | |
`),
);
const rowsOf = (sheet: ResultSheet) => sheet.rows.map((row) => row.map(({ value }) => value));
const change = (name: string) =>
  changeSheet(
    report,
    report.figures.changes.find((each) => each.change.name === name)!,
  );
const row = (sheet: ResultSheet, first: string) =>
  rowsOf(sheet)
    .find(([name]) => name === first)
    ?.slice(1) ?? null;
const says = (sheet: ResultSheet): string =>
  rowsOf(sheet)
    .map(([words]) => String(words ?? ""))
    .join(" ");

describe("changeSheet", () => {
  it("leads with the gain that pays, rounded up, and with why nothing else can be told", () => {
    const sheet = change("Closing wheels");
    // 400 a year on 200 ac at 4.00 a bushel: 0.5 bu.
    expect(row(sheet, "Yield gain")).toEqual([0.5, "  bu/ac, or more"]);
    expect(row(sheet, "Price of the crop")).toBeNull();
    expect(says(sheet)).toContain("What else it pays from is known once every entry is: Yield gain is blank.");
    expect(
      rowsOf(sheet)
        .filter(([name]) => name === "Net change")
        .at(-1)!
        .slice(1),
    ).toEqual(["", "", "", "", "–", "–"]);
    expect(row(sheet, "Net change of what is entered")).toEqual(["", "", "", "", -400, -2]);
    expect(rowsOf(sheet).findIndex(([name]) => name === "Pays from")).toBeLessThan(
      rowsOf(sheet).findIndex(([name]) => name === "Net change"),
    );
  });

  it("shows the gain needed at each price; the expected one stands in for a high price that is not entered", () => {
    const sheet = change("Closing wheels");
    expect(row(sheet, "Price")).toEqual([2.4, 4.4, 4.4]);
    expect(row(sheet, "Yield gain needed (bu/ac)")).toEqual([1, 0.5, 0.5]);
  });

  it("moves price and yield together where both are known", () => {
    const sheet = change("A pass more");
    // 2.00 and 4.00 a bushel brought home, less 5.30.
    expect([row(sheet, "   0, none at all"), row(sheet, "   3, as entered"), row(sheet, "   4.5, half as much again")]).toEqual([
      [-5.3, -5.3, -5.3],
      [0.7, 6.7, 6.7],
      [3.7, 12.7, 12.7],
    ]);
    expect(row(change("Closing wheels"), "   0, none at all")).toBeNull();
  });

  it("adds up by quadrant, line by line", () => {
    const sheet = change("A pass more");
    expect(row(sheet, "   =Yield gain")).toEqual([3, "  bu/ac", 4, "  per acre", 1200, 12]);
    expect(row(sheet, "Added costs")).toEqual(["", "", "", "", 530, 5.3]);
    expect(row(sheet, "   Hours kept")).toEqual([1, "  h", 60, "  lump sum, 2 years", 30, 0.3]);
    expect(
      rowsOf(sheet)
        .filter(([name]) => name === "Net change")
        .at(-1)!
        .slice(5),
    ).toEqual([670, 6.7]);
    expect(row(sheet, "Payback")).toEqual([0.1, "  years without interest, 0.1 with it"]);
  });

  it("says money per unit of the crop, or of what is priced, by its name", () => {
    // 530 ÷ 100 acres ÷ 3 bushels + 0.40, rounded up.
    expect(row(change("A pass more"), "Price of the crop")).toEqual([2.17, "  USD per bu, or more"]);
    expect(says(change("A pass more"))).toContain(
      "The crop nets 4.00 USD per bu: its price of 4.40, less 0.40 for hauling, drying and selling, times the operator's share of 100 %.",
    );
    expect(
      rowsOf(change("A pass more"))
        .find(([name]) => String(name).endsWith("net return, full cost"))!
        .slice(1),
    ).toEqual(["Per acre", "In all"]);
  });

  it("lays a change that is counted in over the outlook of its crop", () => {
    const sheet = change("A pass more");
    const { outlook, withChanges } = report.figures.overlays[0]!;
    expect(row(sheet, "Projected with the changes counted in")).toEqual([
      Number(withChanges!.perArea.toFixed(2)),
      Number(withChanges!.inAll.toFixed(2)),
    ]);
    expect(withChanges!.inAll.minus(outlook.inAll).toString()).toBe("670");
    expect(row(change("Closing wheels"), "Projected with the changes counted in")).toBeNull();
  });

  it("cautions where the work can hurt, and tells what trials found", () => {
    expect(says(change("Closing wheels"))).toContain(underPlanterCaution);
    expect(says(change("Closing wheels"))).toContain("What trials found");
    expect(says(change("A pass more"))).not.toContain(underPlanterCaution);
    expect(
      report.figures.changes
        .map((each) => says(changeSheet(report, each)))
        .map((words) =>
          [blankGainCaution.slice(0, 40), labelCaution.slice(0, 40), adjusterCaution].map((caution) => words.includes(caution)),
        ),
    ).toEqual([
      [true, false, false],
      [false, true, false],
      [false, false, true],
    ]);
  });

  it("marks a change that is not whole", () => {
    expect(says(change("Replant the low end"))).toMatch(/Incomplete: 1 entry needs attention\. Changes, entry 6, Quantity/);
    expect(says(change("A pass more"))).not.toContain("Incomplete");
    // Its grain is priced by the shares of the crop's fields, one of which has a stand that no table knows.
    expect(says(change("Closing wheels"))).toMatch(/Incomplete: 1 entry needs attention\. Stand counts, entry 3 \(A4\): the actual stand/);
  });
});

describe("standSheet", () => {
  const sheet = standSheet(report);

  it("tells of each field what was counted, with its spread", () => {
    // 24,000 and 22,000: s = 1,414.2, t = 12.7062 of one degree of freedom, ÷ √2: ± 12,706.
    expect(row(sheet, "Alder")).toEqual(["2031-06-02", 2, 20, 23000, 10300, 35700, 0.061, 0.676]);
    expect(row(sheet, "Cedar")).toEqual(["2031-06-02", 1, 8, 3000, "–", "–", "–", "–"]);
    expect(row(sheet, "Birch")).toBeNull();
  });

  it("shows the cells that the outlook was read from, their parts adding up, and ends at the outlook of the figures", () => {
    const rows = rowsOf(sheet);
    const from = rows.findIndex(([name]) => name === "actual");
    const read = rows.slice(
      from,
      rows.findIndex(([name], index) => index > from && name !== ""),
    );
    expect(read.reduce((all, cells) => all + Number(cells[4]), 0)).toBeCloseTo(1, 9);
    const stand = report.figures.stands[0]!;
    const value = stand.outlook!.ok ? stand.outlook!.value : null;
    expect(read.reduce((all, cells) => all + Number(cells[3]) * Number(cells[4]), 0) / 100).toBeCloseTo(
      Number(value!.real.relativeYield.toFixed()),
      9,
    );
    expect(row(sheet, "Projected yield (bu)")).toEqual([Number(value!.outlook.toFixed(1))]);
    expect(row(sheet, "Lost to unevenness, as entered")).toEqual([0.02]);
  });

  it("says how the outlook came there, step by step, and never moves the goal", () => {
    const rows = rowsOf(sheet);
    const at = rows.findIndex(([name]) => name === "Projected yield by date");
    const steps = rows.slice(at + 1, at + 4);
    expect(steps.map(([, date]) => date)).toEqual(["2031-05-15", "2031-06-02", "2031-06-02"]);
    expect(steps[0]![2]).toBe(200);
    expect(steps.slice(1).map(([, , from]) => from)).toEqual(steps.slice(0, -1).map(([, , , to]) => to));
    expect(steps.at(-1)![3]).toBe(row(sheet, "Projected yield (bu)")![0]);
    expect(row(sheet, "Yield goal (bu)")).toEqual([200]);
  });

  it("says why a table gives no answer, names the table with its limits, and cautions", () => {
    expect(says(sheet)).toMatch(/The projected yield stays at 190\.0: the actual stand 3000 is outside the table/);
    expect(says(sheet)).toContain("Dates after 25 May are an extrapolation by the source.");
    expect(says(sheet)).toContain(adjusterCaution);
  });
});

describe("resultSheets", () => {
  it("are the two of every season, the pages of its fields, the stand where one is counted, and one of each change", () => {
    expect(resultSheets(report).map(({ name }) => name)).toEqual([
      "Cost per acre",
      "Break-even",
      "Field pages",
      "Stand",
      "Change – Closing wheels",
      "Change – A pass more",
      "Change – Replant the low end",
    ]);
    const { figures, ...reading } = report;
    expect(resultSheets({ ...reading, figures: { ...figures, stands: [], changes: [] } })).toHaveLength(3);
  });
});
