import { describe, expect, it } from "vitest";
import { countedContent } from "../../../tests/support/paneWorkbook";
import { paneProblems, paneSeason, reportOf } from "../../../tests/support/paneSeason";
import { Decimal } from "../../core/numbers/decimal";
import { moneyPerUnit } from "../../core/numbers/units";
import { seasonReport } from "../../workbook/report";
import { formatOf } from "../format";
import { asCrop } from "../../workbook/asCrop";
import { fieldRows, fieldView } from "./fieldsView";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const counted = seasonReport(countedContent);

describe("the list of fields", () => {
  it("has every field once, the lowest net return first", () => {
    const rows = fieldRows(counted, "cash", format);
    expect(rows.map(({ field }) => field).sort()).toEqual(["Creek Bottom", "Long Eighty", "Mill Road"]);
    const nets = rows.map(({ net }) => new Decimal(net.replace("−", "-").replace(",", "")));
    expect(nets.every((net, index) => index === 0 || net.gte(nets[index - 1]!))).toBe(true);
    expect(rows.some(({ bar }) => bar === "100.0")).toBe(true);
  });

  it("calls a loss what shows its sign, and none what rounds to 0", () => {
    // Mill Road needs 2.73 to pay 532.23 from 195 bu.
    const at = (price: string) =>
      fieldRows(
        reportOf({ ...paneSeason, crops: paneSeason.crops.map((crop) => ({ ...crop, price: moneyPerUnit(price) })) }),
        "cash",
        format,
      ).find(({ field }) => field === "Mill Road");
    expect([at("2.72"), at("2.728"), at("2.74")]).toMatchObject([
      { net: "−2", isLoss: true },
      { net: "0", isLoss: false },
      { net: "2", isLoss: false },
    ]);
  });

  it("marks a thin stand, a late planting, a harvest and entries to fix", () => {
    const marks = (report: typeof counted) => Object.fromEntries(fieldRows(report, "cash", format).map((row) => [row.field, row.marks]));
    // Planned for 28 April and 30 April, planted on 12 May and 2 May; 21,600 and fewer plants against a target of 32,000.
    expect(marks(counted)).toMatchObject({ "Mill Road": ["thin stand", "planted 14 days late"], "Creek Bottom": ["harvested"] });
    // Its counts are outside the table; two days late cost a little by the date alone.
    expect(marks(counted)["Long Eighty"]).toEqual(["thin stand", "planted 2 days late", "1 entry to fix"]);
    expect(marks(reportOf(paneSeason, [{ ...paneProblems[0]!, touches: [{ of: "field", name: "Mill Road" }] }]))["Mill Road"]).toEqual([
      "1 entry to fix",
    ]);
    expect(fieldRows(counted, "cash", format).map(({ field, isMarked }) => [field, isMarked])).toEqual(
      expect.arrayContaining([
        ["Creek Bottom", false],
        ["Mill Road", true],
      ]),
    );
    const begun = reportOf({ ...paneSeason, fields: paneSeason.fields.map((field) => ({ ...field, harvestDone: null })) });
    // 3,520 of 58 × 64 = 3,712 bu.
    expect(marks(begun)["Creek Bottom"]).toEqual(["harvest 95 % so far"]);
  });
});

describe("a field's own page", () => {
  const { crops } = reportOf().figures;
  const [corn, mill] = [crops[0]!, crops[0]!.fields[0]!];

  it("has its own cost and both break-evens in every layer", () => {
    const view = fieldView(corn, mill, "cash", format);
    expect(view.says).toBe("195.0 bu per acre projected, goal 195.0; 4.35 per bu expected.");
    expect(view.rows.map(({ name }) => name)).toEqual(["operating cost", "cash cost", "full cost", "cash need"]);
    // Rent 235, insurance 16, haul 0.22 × 195 = 42.90, seed 268 × 34,000 ÷ 80,000 = 113.90, urea 0.285 × 160 = 45.60, work 26 +
    // 41, diesel 11.83.
    expect(view.rows[1]!.cells).toEqual(["532.23", "2.73", "118.5", "316.02"]);
    expect(view.figure).toBe("316.02");
  });

  it("stands for its crop where a part speaks of one", () => {
    expect(asCrop(corn, mill)).toMatchObject({ crop: "Corn", fields: [{ field: "Mill Road" }], final: null });
    expect(asCrop(corn, mill).outlook.costPerArea.layers.cash.toFixed(2)).toBe("532.23");
  });
});
