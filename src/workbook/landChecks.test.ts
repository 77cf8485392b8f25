import { expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { seasonReport } from "./report";

/** Peas after corn on the same land, and what is applied to the corn's row after its last load. */
const codes = (kind: string, date: string) =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
Crops
| Crop | Expected price | Standard moisture |
| Corn | 4 | 15.5 |
| Peas | 6 | |
Fields
| Field | Crop | Acres | Yield goal | Same land as | Harvest done |
| Alder | Corn | 100 | 200 | | yes |
| Alder peas | Peas | 100 | 40 | Alder | |
Items
| Item | Kind | Pack unit | Plan price per pack |
| Thing | ${kind} | lb | 1 |
Harvest
| Field | Date | Weight or bushels | Moisture |
| Alder | 2031-07-10 | 900 | 15 |
Applications
| Field or Crop | Item | Rate | Rate unit | Date | Status |
| Alder | Thing | 2 | lb/ac | ${date} | done |
`),
  ).problems.map(({ code }) => code);

it("what is applied to a field after its last load may be the next crop's on that land, but for its own drying and haul", () => {
  expect(codes("fertilizer", "2031-07-20")).toContain("next-crop-here");
  expect(codes("fertilizer", "2031-07-01")).not.toContain("next-crop-here");
  expect(codes("haul", "2031-07-20")).not.toContain("next-crop-here");
});
