import { expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { seasonReport } from "../../workbook/report";
import { finerSteps } from "./finer";

const steps = (more: string, field = "All corn", budget = "| Corn | seed | 120 |\n| Corn | fuel | 20 |") =>
  finerSteps(
    seasonReport(
      contentFromText(`
Crops
| Crop | Expected price |
| Corn | 4 |

Fields
| Field | Crop | Acres | Yield goal |
| ${field} | Corn | 100 | 200 |

Items
| Item | Kind | Pack unit | Plan price per pack |
| Urea | fertilizer | lb | 0.3 |
${budget === "" ? "" : `\nBudget\n| For | Kind | Amount |\n${budget}\n`}${more}`),
    ).season,
  ).map(({ id }) => id);

it("names what is still rough, the most useful first, and nothing that is done", () => {
  expect(steps("")).toEqual(["bills", "fields", "rates", "machines"]);
  expect(steps("\nPurchases\n| Date | Amount | Kind | For |\n| 2031-04-01 | 500 | seed | Corn |\n", "Alder")).toEqual([
    "rates",
    "machines",
  ]);
  expect(steps("", "Alder", "| Corn | overhead | 20 |")).toEqual(["bills"]);
  expect(steps("\nApplications\n| Field or Crop | Item | Rate | Rate unit | Status |\n| Corn | Urea | 100 | lb/ac | plan |\n")).toEqual([
    "bills",
    "fields",
    "machines",
  ]);
});

it("says nothing where nothing is budgeted roughly", () => {
  expect(steps("", "All corn", "")).toEqual([]);
});
