import { expect, it } from "vitest";
import { reportOf } from "../../tests/support/reportOf";
import { field, load, seasonOf } from "../../tests/support/season";
import { demo } from "../../tests/support/demoReport";
import { summary } from "./summary";

it("groups thousands, and names the layers as everywhere", async () => {
  const { report } = await demo();
  const lines = summary(report).split("\n");
  expect(lines.filter((line) => line.startsWith("sold"))[0]).toBe("sold 60,000 bu at 4.42, unsold 107,401");
  expect(lines.slice(5, 9).map((line) => line.slice(0, 18).trim())).toEqual([
    "operating cost/ac",
    "cash cost/ac",
    "full cost/ac",
    "cash need/ac",
  ]);
});

it("says how much of a crop is in while its harvest is under way", () => {
  const report = reportOf(seasonOf({ fields: [field("Home", "100", "200")], harvest: [load("Home", "900")] }));
  expect(summary(report)).toContain("Home: harvest so far 900 bu in 1 load, 5 % of the projected yield, 19,100 left.");
});
