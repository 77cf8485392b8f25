import { expect, it } from "vitest";
import { Typed } from "./typed";

it("takes a percent sign only where percent is asked for: ten percent of seeds are no number of seeds", () => {
  const typed = new Typed({ loss: "10 %", seeds: "10 %" }, false);
  expect([typed.number("loss", { isPercent: true })?.toFixed(), typed.number("seeds")]).toEqual(["10", null]);
  expect(typed.faults).toEqual({ seeds: "Enter a number." });
});
