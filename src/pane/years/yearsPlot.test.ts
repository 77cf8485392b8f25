import { describe, expect, it } from "vitest";
import type { CropYear } from "../../core/history/cropYears";
import { Decimal } from "../../core/numbers/decimal";
import { formatOf } from "../format";
import { pricePlot, yieldPlot, plotGround } from "./yearsPlot";

const decimal = (value: string | null) => (value === null ? null : new Decimal(value));
const year = (season: string, goal: string | null, harvested: string | null, needed: string | null = null, price: string | null = null) =>
  ({
    season,
    goal: decimal(goal),
    yield: decimal(harvested),
    priceNeeded: { full: decimal(needed) },
    price: decimal(price),
  }) as unknown as CropYear;
const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");

describe("the pictures of past years", () => {
  it("draw columns from nothing up, as long as their figures, the oldest year first", () => {
    const plot = yieldPlot("Corn", [year("2030", "200", "100"), year("2029", "150", "200")], "bu", format)!;
    const heights = plot.years.map(({ columns }) => columns.map((column) => column!.height));
    expect(plot.years.map(({ season }) => season)).toEqual(["2029", "2030"]);
    expect(heights[0]![1]).toBe(heights[1]![0]);
    expect(heights[1]![0]).toBe(2 * heights[1]![1]!);
    for (const column of plot.years.flatMap(({ columns }) => columns)) expect(column!.y + column!.height).toBe(plotGround);
    expect(plot.says).toBe("Corn, bu per acre, goal and yield: 2029 150.0 and 200.0; 2030 200.0 and 100.0.");
  });

  it("leave out what is not known, and a year that knows neither", () => {
    const plot = pricePlot(
      "Corn",
      [year("2030", null, null, "3.4", "4"), year("2029", "1", "1"), year("2028", null, null, null, "5")],
      "bu",
      format,
    )!;
    expect(plot.years.map(({ season, columns }) => [season, columns.map((column) => column !== null)])).toEqual([
      ["2028", [false, true]],
      ["2030", [true, true]],
    ]);
    expect(plot.says).toContain("2028 – and 5.00; 2029 – and –; 2030 3.40 and 4.00");
    expect(yieldPlot("Corn", [year("2030", "200", "180")], "bu", format)).toBeNull();
    expect(yieldPlot("Corn", [year("2030", "0", "0"), year("2029", "0", null)], "bu", format)).toBeNull();
  });
});
