import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { seasonReport } from "../report";

const farm = (setting: string, crop = "Corn") => `
Season
| Setting | Value |
| Stand response | ${setting} |
Crops
| Crop | Expected price |
| ${crop} | 4 |
Fields
| Field | Crop | Acres | Yield goal | Planned planting date | Planted date | Target stand |
| Alder | ${crop} | 120 | 200 | 2031-05-01 | 2031-05-11 | 32000 |
Other costs
| Item | Kind | Amount | Basis |
| Office | overhead | 900 | whole farm |
Stand_counts
| Field | Date | Row width | Length | Plants |
| Alder | 2031-05-25 | 30 | 17.424 | 24 |
`;
const table = `
Our_trials
| Corn, planted | 20,000 | 28 000 plants | 32000 |
| May 1 | 80 | 95 | 100 |
| 2031-05-11 | 70 | 90% | 96 |
`;

describe("a table of yields of the grower's own", () => {
  it("answers in the place of the published one, by straight lines between its cells", () => {
    const { problems, figures, season } = seasonReport(contentFromText(farm("Our trials") + table));
    expect(problems).toEqual([]);
    expect(season.standTables!.map(({ dates, standUnit }) => [dates!.map(({ from }) => from), standUnit])).toEqual([
      [["05-01", "05-11"], "plants per acre"],
    ]);
    const [stand] = figures.stands;
    // 24 plants on a thousandth of an acre: half way from 70 to 90; the goal is for 100.
    expect(stand!.summary.mean.toFixed(6)).toBe("24000.000000");
    expect(stand!.outlook!.ok && stand!.outlook!.value.outlook.toFixed(6)).toBe("160.000000");
    expect(stand!.table!.name).toBe("Our trials");
  });

  it("holds fractions where Excel shows percentages", () => {
    const { figures } = seasonReport(
      contentFromText(
        farm("Our trials") + table.replace("| 80 | 95 | 100 |", "| 0.8 | 0.95 | 1 |").replace("| 70 | 90% | 96 |", "| 0.7 | 0.9 | 0.96 |"),
      ),
    );
    expect(figures.stands[0]!.outlook!.ok && figures.stands[0]!.outlook!.value.outlook.toFixed(6)).toBe("160.000000");
  });

  it("may go by stand alone, or by date alone", () => {
    const outlook = (rows: string) => {
      const [stand] = seasonReport(contentFromText(`${farm("Our trials")}Our_trials\n${rows}`)).figures.stands;
      return stand!.outlook!.ok ? stand!.outlook!.value.outlook.toFixed(6) : null;
    };
    expect(outlook("| Corn | 20000 | 32000 |\n| | 70 | 100 |")).toBe("160.000000");
    expect(outlook("| Corn | Percent |\n| 1 May | 100 |\n| 5/21 | 80 |")).toBe("180.000000");
  });

  it("is of the only crop of a season where neither heading nor name tells one", () => {
    const { season } = seasonReport(contentFromText(farm("Our trials", "Sorghum") + table.replace("Corn, planted", "Planted")));
    expect(season.standTables!.map(({ crop }) => crop)).toEqual(["Sorghum"]);
  });

  it("may be a range that the table Matches names", () => {
    const content = contentFromText(`${farm("Our trials")}Matches\n| Table | Range | Column | Heading |\n| Our trials | Notes!A1:D3 | | |`);
    const [range] = contentFromText(table).tables;
    const { problems, season } = seasonReport({ ...content, ranges: new Map([["Notes!A1:D3", range!]]) });
    expect(problems).toEqual([]);
    expect(season.standTables!.map(({ name }) => name)).toEqual(["Our trials"]);
    expect(seasonReport(content).problems.map(({ code }) => code)).toEqual(["stand-table-unknown", "range-missing"]);
  });
});
