import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { seasonReport } from "../../workbook/report";
import { formatOf } from "../format";
import { harvestedFields } from "./harvestDots";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const farm = (fields: string) =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
Crops
| Crop | Yield unit | Weight per bu | Standard moisture | Expected price |
| Wheat | bu | 60 | 13.5 | 6 |
Fields
| Field | Crop | Acres | Yield goal | Hybrid or variety | Planted date | Harvest done |
${fields}
Harvest
| Field | Date | Weight or bushels | Bushels are | Moisture |
| Alder | 2031-07-01 | 700 | dry | 13 |
| Birch | 2031-07-02 | 900 | dry | 13 |
| Cedar | 2031-07-03 | 800 | dry | 13 |`),
  );
const [alder, birch, cedar] = [
  "| Alder | Wheat | 10 | 80 | W-7 | 2030-10-01 | yes |",
  "| Birch | Wheat | 10 | 80 | | 2031-04-11 | yes |",
  "| Cedar | Wheat | 10 | 80 | | 2031-01-04 | yes |",
];

describe("harvested fields side by side", () => {
  it("are ranked by yield, and stand as dots by planting date, the autumn before the spring", () => {
    const [wheat] = harvestedFields(farm([alder, birch, cedar].join("\n")), format);
    expect(wheat!.rows.map(({ name, cells }) => [name, cells[0], cells[2]])).toEqual([
      ["1. Birch", "90.0", "Apr 11"],
      ["2. Cedar", "80.0", "Jan 4"],
      ["3. Alder, W-7", "70.0", "Oct 1"],
    ]);
    const [dates, ...others] = wheat!.plots;
    expect(others).toEqual([]);
    expect([dates!.left, dates!.right, dates!.bottom, dates!.top]).toEqual(["Oct 1", "Apr 11", "70.0", "90.0"]);
    // 1 October is 91 days before the year, 4 January its 4th and 11 April its 101st day: 95 of 192 days.
    expect(dates!.dots.map(({ mark, x, y }) => `${mark} ${x} ${y}`)).toEqual(["1 100.0 0.0", "2 49.5 50.0", "3 0.0 100.0"]);
    expect(dates!.says).toBe("Wheat, bu per acre by planting date: Alder Oct 1, 70.0; Cedar Jan 4, 80.0; Birch Apr 11, 90.0.");
  });

  it("are none with one field in, and not drawn where nothing sets them apart", () => {
    expect(harvestedFields(farm([alder, birch.replace("| yes |", "| |"), cedar.replace("| yes |", "| |")].join("\n")), format)).toEqual([]);
    const alike = [alder, birch.replace("2031-04-11", "2030-10-01"), cedar.replace("2031-01-04", "2030-10-01")].join("\n");
    expect(harvestedFields(farm(alike), format)[0]!.plots).toEqual([]);
  });
});
