import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { seasonReport } from "./report";

const told = (...bills: readonly string[]) => {
  const report = seasonReport(
    contentFromText(`Season
| Setting | Value |
| Season year | 2031 |
Crops
| Crop | Expected price |
| Corn | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
Items
| Item | Kind | Pack unit | Charged |
| Urea | fertilizer | lb | by acres |
| Lime | fertilizer | lb | by acres |
Purchases
| Date | Item | Quantity | Unit | Amount | Opening stock |
${bills.join("\n")}`),
  );
  const found = report.problems.filter(({ code }) => code === "opening-beside");
  return {
    found: found.map(({ at, other, touches }) => [at.row, other?.row, ...touches]),
    ofUrea: report.problemsOf({ of: "item", name: "Urea" }).length,
  };
};
const opening = "| 2031-01-01 | Urea | 2000 | lb | 600 | yes |";

describe("a bill beside the opening stock", () => {
  it("of an older day may be in it already: it is told, and what the item costs is not complete", () => {
    expect(told(opening, "| 2030-11-20 | Urea | 2000 | lb | 600 | |")).toEqual({
      found: [[2, 1, { of: "item", name: "Urea" }]],
      ofUrea: 1,
    });
  });
  it("is none of its business on the day or later, of another item, as a return, or as more stock of an older day", () => {
    const nothing = { found: [], ofUrea: 0 };
    expect(told(opening, "| 2031-01-01 | Urea | 2000 | lb | 600 | |")).toEqual(nothing);
    expect(told(opening, "| 2031-02-01 | Urea | 2000 | lb | 600 | |")).toEqual(nothing);
    expect(told(opening, "| 2030-11-20 | Lime | 2000 | lb | 600 | |")).toEqual(nothing);
    expect(told(opening, "| 2030-11-20 | Urea | -500 | lb | -150 | |").found).toEqual([]);
    expect(told(opening, "| 2030-11-20 | Urea | 500 | lb | 150 | yes |").found).toEqual([]);
  });
});
