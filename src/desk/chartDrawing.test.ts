import { describe, expect, it } from "vitest";
import { chartDrawing } from "./chartDrawing";

const chart = (kind: "column" | "line" | "other", ...values: (number | null)[]) => ({
  title: "T",
  kind,
  categories: values.map(String),
  series: [{ name: "S", values }],
});

describe("the drawing of a chart", () => {
  it("begins bars at nothing and ends at a round step", () => {
    const drawing = chartDrawing(chart("column", 110, 40, 255))!;
    expect([drawing.zero, drawing.ticks.map(({ words }) => words)]).toEqual([0, ["0", "50", "100", "150", "200", "250", "300"]]);
    expect(drawing.lines[0]![0]!.map(({ share }) => share.toFixed(3))).toEqual(["0.367", "0.133", "0.850"]);
  });

  it("has room below nothing for a loss", () => {
    const drawing = chartDrawing(chart("column", 3, -1))!;
    expect([drawing.zero, drawing.ticks.map(({ words }) => words)]).toEqual([0.25, ["-1", "0", "1", "2", "3"]]);
  });

  it("lets lines begin where they lie when that is far from nothing, and parts them at a blank", () => {
    const drawing = chartDrawing(chart("line", 4.1, 4.3, null, 4.2))!;
    expect(drawing.ticks.map(({ words }) => words)).toEqual(["4.10", "4.15", "4.20", "4.25", "4.30"]);
    expect(drawing.lines[0]!.map((run) => run.map(({ category }) => category))).toEqual([[0, 1], [3]]);
  });

  it("is none of a kind that is not drawn, and of no figures", () => {
    expect([chartDrawing(chart("other", 1)), chartDrawing(chart("line", null)), chartDrawing(chart("column", 0))?.zero]).toEqual([
      null,
      null,
      0,
    ]);
  });
});
