import { expect, it } from "vitest";
import { Typed } from "./typed";

it("takes a percent sign only where percent is asked for: ten percent of seeds are no number of seeds", () => {
  const typed = new Typed({ loss: "10 %", seeds: "10 %" }, false);
  expect([typed.number("loss", { isPercent: true })?.toFixed(), typed.number("seeds")]).toEqual(["10", null]);
  expect(typed.faults).toEqual({ seeds: "Enter a number." });
});

it("takes no money of another currency than the workbook's, and says which it is", () => {
  const draft = { price: "€3.20", rent: "CAD 215", cost: "$12", whole: "1,200 USD" };
  const typed = new Typed(draft, false, "USD");
  expect((["price", "rent", "cost", "whole"] as const).map((name) => typed.number(name)?.toFixed() ?? null)).toEqual([
    null,
    null,
    "12",
    "1200",
  ]);
  expect(typed.faults).toEqual({ price: "Enter it in USD.", rent: "Enter it in USD." });
  // A box that asks for no money, as of a size, holds no currency against anything.
  expect(new Typed({ size: "3 GAL" }, false, "USD").number("size")?.toFixed()).toBe("3");
});
