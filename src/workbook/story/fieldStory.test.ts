import { beforeAll, describe, expect, it } from "vitest";
import { demo } from "../../../tests/support/demoReport";
import { everyColumn } from "../../../tests/support/everyColumn";
import { contentFromText } from "../../../tests/support/tableFromText";
import { fieldStories } from "./fieldStory";
import { seasonReport } from "../report";
import type { SeasonReport } from "../seasonReport";

const storyOf = (report: SeasonReport, name: string, day?: (date: string) => string) => {
  const crop = report.figures.crops.find(({ fields }) => fields.some(({ field }) => field === name))!;
  const story = fieldStories(report, day)(
    crop.fields.find(({ field }) => field === name)!,
    crop,
  );
  return new Map(story.map((part) => [part.name, part.lines]));
};

const farm = (fields: string, rest = "") =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
Crops
| Crop | Yield unit | Weight per bu | Standard moisture | Expected price |
| Corn | bu | 56 | 15.5 | 4.4 |
Fields
${fields}
${rest}`),
  );

describe("the story of a field", () => {
  it("is short where little is entered, and says that nothing is planted", () => {
    const report = farm("| Field | Crop | Acres | Yield goal |\n| Alder | Corn | 120 | 200 |");
    expect([...storyOf(report, "Alder")]).toEqual([
      ["Planned", ["Goal 200.0 bu per acre.", "Owned."]],
      ["Planted and counted", ["Not planted yet."]],
    ]);
  });

  it("tells plan, land, planting and what the yield is projected at, days as the reader writes them", () => {
    const report = farm(
      `| Field | Crop | Acres | Yield goal | Hybrid or variety | Planned planting date | Planted date | Seeds dropped | Tenure | Operator share of crop % | Uniformity loss % |
| Alder | Corn | 120 | 200 | Early one | 2031-05-02 | 2031-05-03 | 34000 | crop share | 50 | |
| Birch | Corn | 80 | 200 | | 2031-05-02 | 2031-05-02 | | cash rent | | 4 |`,
    );
    const story = storyOf(report, "Alder", (date) => `[${date}]`);
    expect(story.get("Planned")).toEqual([
      "Early one. Goal 200.0 bu per acre; planting on [2031-05-02].",
      "Crop share; 50 % of the crop is the operator's.",
    ]);
    expect(story.get("Planted and counted")![0]).toBe("Planted on [2031-05-03], 1 day after the plan, 34,000 seeds dropped per acre.");
    expect(storyOf(report, "Birch").get("Planted and counted")!.at(-1)).toBe(
      "Projected yield 192.0 bu per acre after 4 % for unevenness, as entered: 8.0 below the goal.",
    );
  });

  it("tells a harvest under way and one that is done, and the years behind it", () => {
    const fields = (done: string) => `| Field | Crop | Acres | Yield goal | Harvest done |\n| Alder | Corn | 10 | 200 | ${done} |`;
    const rest = `Harvest
| Field | Date | Weight or bushels | Bushels are | Moisture |
| Alder | 2031-10-01 | 900 | dry | 16 |
Past seasons
| Season | Field | Crop | Acres | Yield | Net per acre |
| 2030 | Alder | Corn | 10 | 188 | -12 |`;
    const underWay = storyOf(farm(fields(""), rest), "Alder");
    expect(underWay.get("Harvest")).toEqual(["Harvest so far 900 bu in 1 load, 45 % of the projected yield, 1,100 left, 16.0 % moisture."]);
    expect(underWay.get("Past seasons")).toEqual(["2030 Corn 188.0, net -12.00.", "Proven yield: 1 year, 2030: 4 make a proven yield."]);
    expect(storyOf(farm(fields("2031-10-02"), rest), "Alder").get("Harvest")).toEqual([
      "Done: 900 bu in 1 load, 90.0 per acre for a goal of 200.0, 16.0 % moisture.",
    ]);
  });

  it("names a flexible rent with its terms", () => {
    expect(storyOf(seasonReport(everyColumn()), "Dale").get("Planned")![1]).toMatch(
      /^Flexible rent, 150\.00 per acre and 35 % of price × yield above 600, at most 290\.00: Dale /,
    );
  });
});

describe("the stories of the demo", () => {
  let report: SeasonReport;
  beforeAll(async () => {
    ({ report } = await demo());
  });

  it("have heat, passes, weeds and the years of every planted field", () => {
    const story = storyOf(report, "Larkspur Bottom");
    expect([...story.keys()]).toEqual(["Planned", "Planted and counted", "Heat and rain", "Passes against weeds", "Past seasons"]);
    expect(story.get("Heat and rain")![0]).toMatch(
      /^GDD \(50 °F base\): \d+ from planting to 2026-06-15, \d+ ahead of normal; rain [\d.]+ in; /,
    );
    expect(story.get("Heat and rain")![1]).toMatch(
      /^Matures about 2026-10-\d\d, between 2026-\d\d-\d\d and .+; \d+ days before the median 28 °F freeze, \d+ days after the earliest\.$/,
    );
    expect(story.get("Passes against weeds")!.join(" ")).toMatch(/Planned: .*Done: .*Waterhemp, .* of 3 passes/);
  });

  it("end with the harvest where it is done, with what was planned and never done", () => {
    const story = storyOf(report, "Hollow Oak");
    expect(story.get("Harvest")![0]).toMatch(/^Done: [\d,.]+ bu in \d+ loads, 83\.1 per acre for a goal of 84\.0/);
    expect(story.get("Planted and counted")!.some((line) => line.startsWith("Projected yield"))).toBe(false);
  });
});
