import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { seasonReport } from "../../workbook/report";
import { fileDaysView, usualPlace, type FileDaysDraft } from "./fileDays";

const { season } = seasonReport(
  contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 200 | 180 |
Weather
| Date | High | Low | Rain | Place |
| 2031-05-01 | 70 | 50 | 0 | Yard |
| 2031-05-02 | 71 | 50 | | Yard |
`),
);
const text =
  "Date,High (F),Low (F),Rain (in)\n2020-05-01,60,40,0\n2031-05-01,70,50,0\n2031-05-02,72,50,\n" +
  "2031-05-03,73,,0.1\n2031-05-04,74,51,0\nx,1,1,1";
const draft: FileDaysDraft = { text, unit: null, place: "yard", fromYear: "2021" };

describe("days of a file", () => {
  it("are added where they are new; those that are there stay, and nothing is left out without a word", () => {
    const { says, rows } = fileDaysView(draft, season);
    expect(says).toEqual([
      "2 days to add, 2031-05-03 to 2031-05-04, 1 without a high or a low.",
      "Left out, before 2021: 1 day.",
      "There already, alike: 1 day.",
      "There with other values, which stay: 2031-05-02.",
      "Not read: line 7, “x” is no date.",
    ]);
    expect(rows!.map((row) => [...row.keys()].join())).toEqual(["Date,High,Rain,Place", "Date,High,Low,Rain,Place"]);
  });

  it("are new at another place", () => {
    expect(fileDaysView({ ...draft, place: "Creek" }, season).rows).toHaveLength(4);
  });

  it("wait for the unit where the file does not name it", () => {
    const plain = { ...draft, text: "DATE,TMAX,TMIN\n2031-05-05,20,10" };
    expect(fileDaysView(plain, season)).toMatchObject({ asksUnit: true, rows: null });
    expect(fileDaysView({ ...plain, unit: "C and mm" }, season).rows).toHaveLength(1);
  });

  it("are of the only place that is recorded, else of the file's station", () => {
    expect(usualPlace(season, text)).toBe("Yard");
    expect(usualPlace({ weather: [] }, "Station,Date,Max (C),Min (C)\nCreek,2031-05-01,20,10")).toBe("Creek");
  });

  it("are none of a file without headings", () => {
    expect(fileDaysView({ ...draft, text: "Seed,4" }, season).fault).toMatch(/No line has a date/);
    expect(fileDaysView({ ...draft, fromYear: "21" }, season).fault).toMatch(/four digits/);
  });
});
