import { expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { seasonReport } from "./report";

/** A line whose basis nobody said, of more an acre than an acre earns: 200 bu at 4 are 800, 60 at 11 are 660. */
const touched = (target: string, amount: string) => {
  const report = seasonReport(
    contentFromText(`Season
| Setting | Value |
| Season year | 2031 |
Crops
| Crop | Expected price |
| Corn | 4 |
| Soybeans | 11 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
| Birch | Soybeans | 50 | 60 |
Budget
| For | Kind | Amount | Basis |
| ${target} | seed | ${amount} | |`),
  );
  const found = report.problems.filter(({ code }) => code === "per-acre-high");
  return found.map(({ touches, like }) => [touches[0], like]);
};

it("marks what a line touches that is more an acre than the acre earns, and nothing else", () => {
  expect(touched("Corn", "12000")).toEqual([[{ of: "crop", name: "Corn" }, "800.00"]]);
  expect(touched("Birch", "661")).toEqual([[{ of: "field", name: "Birch" }, "660.00"]]);
  expect(touched("all", "801")).toEqual([[{ of: "farm" }, "800.00"]]);
  expect([touched("Corn", "800"), touched("Soybeans", "660"), touched("all", "800")]).toEqual([[], [], []]);
});
