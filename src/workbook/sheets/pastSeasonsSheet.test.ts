import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { sheetLines } from "../../../tests/support/sheetLines";
import { seasonReport } from "../report";
import { reportJson } from "../reportJson";
import { pastSeasonsSheet } from "./pastSeasonsSheet";

const reportOf = (proven: string, rows: string) =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Fields
| Field | Crop | Acres | Yield goal | Proven yield |
| Alder | Corn | 100 | 200 | ${proven} |
Other costs
| Item | Kind | Amount | Basis |
| Rent | cash rent | 250 | per acre |
Past seasons
| Season | Field | Crop | Acres | Yield goal | Yield | Cash cost per acre | Full cost per acre | Planned full cost per acre | Price | Net per acre |
${rows}
`),
  );
const fourYears = [
  "| 2030 | alder | corn | 100 | 195 | 190 | 560 | 640 | 620 | 4.20 | 158 |",
  "| 2029 | Alder | Corn | 100 | 195 | 170 | | | | | |",
  "| 2028 | Alder | Corn | 100 | | 0 | | | | | |",
  "| 2027 | Alder | Corn | 100 | | 180 | | | | | |",
].join("\n");

describe("the sheet of past seasons", () => {
  const report = reportOf("", fourYears);
  const lines = sheetLines(pastSeasonsSheet(report));

  it("holds goal against harvest and the price needed against the price got, and a dash for what is not entered", () => {
    // 4.20 − 158 ÷ 190 = 3.3684 shown as 3.37; cash 80 less: 3.20 − … = 4.20 − 238 ÷ 190 = 2.9474.
    expect(lines).toContain("2030 | 100 | 195 | 190 | -5 | 560 | 640 | 620 | 2.95 | 3.37 | 4.2 | 158");
    expect(lines).toContain("2029 | 100 | 195 | 170 | -25 | – | – | – | – | – | – | –");
  });

  it("makes a proven yield of four years and says which, with the least and the best", () => {
    expect(lines).toContain("Alder | Corn | 200 | 135 | 0 | 190 | 4 |  | Mean of 4 years, 2027 to 2030.");
    const [field] = reportJson(report).fields;
    expect([field!.outlook.yield.proven, field!.provenFrom]).toEqual([
      "135",
      { entered: false, seasons: ["2030", "2029", "2028", "2027"] },
    ]);
  });

  it("leaves a proven yield that is entered as it is, and says so", () => {
    const own = reportOf("182", fourYears);
    expect(sheetLines(pastSeasonsSheet(own))).toContain(
      "Alder | Corn | 200 | 182 | 0 | 190 | 4 |  | 4 years, 2027 to 2030; the proven yield is your own entry.",
    );
    expect(reportJson(own).fields[0]!.provenFrom).toEqual({ entered: true, seasons: [] });
  });

  it("says why older years do not count", () => {
    const gap = reportOf(
      "",
      fourYears
        .split("\n")
        .filter((row) => !row.includes("2029"))
        .join("\n"),
    );
    expect(sheetLines(pastSeasonsSheet(gap)).find((line) => line.startsWith("Alder | Corn | 200"))).toContain(
      "1 year, 2030: 4 make a proven yield; nothing is entered for 2029, so older years do not count.",
    );
    expect(reportJson(gap).fields[0]!.provenFrom).toBeNull();
  });

  it("marks figures that rest on a row which cannot be read, of the field's proven yield too", () => {
    const broken = reportOf("", `${fourYears}\n| 2026 | Alder | Corn | many | | 200 | | | | | |`);
    expect(broken.problemsOf({ of: "field", name: "Alder" }).map(({ code }) => code)).toEqual(["not-a-number"]);
    // Where the proven yield is entered nothing of the season rests on it.
    const own = reportOf("182", `${fourYears}\n| 2026 | Alder | Corn | many | | 200 | | | | | |`);
    expect([own.problemsOf({ of: "field", name: "Alder" }).length, own.problemsOf({ of: "years" }).length]).toEqual([0, 1]);
  });
});

describe("the charts of past seasons", () => {
  it("draw the years in order, and nothing of which a year is not known", () => {
    const whole = "| 2029 | Alder | Corn | 100 | 195 | 170 | 500 | 600 | 600 | 4.00 | 80 |";
    const sheet = pastSeasonsSheet(reportOf("", `${fourYears.split("\n")[0]}\n${whole}`));
    const at = (cell: string) => sheet.rows[Number(cell.slice(1)) - 1]?.["ABCDEFGHIJKL".indexOf(cell[0]!)]?.value;
    const read = ([from, to]: readonly string[]) => [at(from!), at(to!)];
    expect(
      sheet.charts.map(({ categories, series }) =>
        [categories, ...series.map(({ values }) => values)].map((range) => read(range.split(":"))),
      ),
    ).toEqual([
      [
        ["2029", "2030"],
        [195, 195],
        [170, 190],
      ],
      [
        ["2029", "2030"],
        [3.53, 3.37],
        [4, 4.2],
      ],
    ]);
    expect(pastSeasonsSheet(reportOf("", fourYears)).charts).toEqual([]);
    expect(pastSeasonsSheet(reportOf("", whole)).charts).toEqual([]);
  });
});
