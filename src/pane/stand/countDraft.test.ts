import { describe, expect, it } from "vitest";
import { field } from "../../../tests/support/season";
import { Decimal } from "../../core/numbers/decimal";
import { formatOf } from "../format";
import { countView, emptyCount, nextCount } from "./countDraft";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const mill = field("Mill", "100", "200", { rowWidth: new Decimal("30") });
const draft = { ...emptyCount("2031-06-02", mill, "ac", false), plants: "26", weak: "3", remark: " =odd " };

describe("a count being typed", () => {
  it("starts from the field's row width and a thousandth of an acre", () => {
    // 17 ft 5 in at 30 in, as extension leaflets print it.
    expect([draft.rowWidth, draft.length]).toEqual(["30", "17.42"]);
  });

  it("starts from numbers as they are typed, with a decimal comma where the workbook has it", () => {
    const comma = emptyCount("2031-06-02", { ...mill, rowWidth: new Decimal("30.5") }, "ac", true);
    expect([comma.rowWidth, comma.length]).toEqual(["30,5", "17,14"]);
    expect(countView({ ...comma, plants: "26" }, mill, true, format).says).toMatch(/^26 on 17.14 ft of row, 30.5 in wide/);
  });

  it("says the stand of the place, a weak plant as one half", () => {
    const { says, row } = countView(draft, mill, false, format);
    expect(says).toBe("26 and 3 weak on 17.42 ft of row, 30 in wide: 27,500 plants per acre.");
    expect(Object.fromEntries([...row!].map(([heading, value]) => [heading, value instanceof Decimal ? value.toString() : value]))).toEqual(
      { Field: "Mill", Date: { day: "2031-06-02" }, "Row width": "30", Length: "17.42", Plants: "26", "Weak plants": "3", Remark: "=odd" },
    );
  });

  it("takes a hoop instead of a length", () => {
    // A hoop of 28 1/4 in is a ten-thousandth of an acre to within 0.1 %: 14 plants stand for about 140,000.
    const { says, row } = countView({ ...draft, how: "hoop", hoop: "28.25", plants: "14", weak: "" }, mill, false, format);
    expect(says).toBe("14 on a hoop of 28.25 in: 140,100 plants per acre.");
    expect([...row!.keys()]).not.toContain("Length");
  });

  it("writes part and coordinates with the spot, and only ones that can be", () => {
    const placed = { ...draft, part: " Knoll ", partAcres: "20", latitude: "42° 0' 36\" N", longitude: "-93.62" };
    const { row } = countView(placed, mill, false, format);
    expect(["Part", "Part acres", "Latitude", "Longitude"].map((heading) => String(row!.get(heading)))).toEqual([
      "Knoll",
      "20",
      "42.01",
      "-93.62",
    ]);
    const faults = (more: Partial<typeof placed>) => countView({ ...placed, ...more }, mill, false, format).faults;
    expect([
      faults({ part: "" }),
      faults({ longitude: "" }),
      faults({ latitude: "north" }),
      faults({ latitude: "-93.62", longitude: "42" }),
      faults({ longitude: "-9362" }),
    ]).toEqual([
      { part: "Name the part that has so many acres." },
      { longitude: "Enter both, or neither." },
      { latitude: "Enter degrees, such as 41.5868." },
      { latitude: "Latitude and longitude are the wrong way round." },
      { longitude: "No field lies there." },
    ]);
    expect(countView({ ...placed, latitude: "", longitude: "" }, mill, false, format).row!.has("Latitude")).toBe(false);
  });

  it("writes the day on which a part was planted apart, which needs a name and comes before the count", () => {
    const replanted = { ...draft, part: "Knoll", partPlanted: "2031-05-28" };
    expect(countView(replanted, mill, false, format).row!.get("Part planted")).toEqual({ day: "2031-05-28" });
    expect(countView(draft, mill, false, format).row!.has("Part planted")).toBe(false);
    const faults = (more: Partial<typeof replanted>) => countView({ ...replanted, ...more }, mill, false, format).faults;
    expect([faults({ part: " " }), faults({ partPlanted: "2031-06-03" }), faults({ partPlanted: "in May" })]).toEqual([
      { partPlanted: "Name the part that was planted then." },
      { partPlanted: "The count is from before that day and would count for nothing." },
      { partPlanted: "Enter a date." },
    ]);
  });

  it("names every fault at its box and writes no row", () => {
    const view = countView({ ...draft, date: "", length: "0", plants: "many", weak: "-1" }, mill, false, format);
    expect(Object.keys(view.faults)).toEqual(["date", "length", "plants", "weak"]);
    expect([view.says, view.row]).toEqual(["", null]);
    expect(countView({ ...draft, plants: "" }, mill, false, format).faults.plants).toBe("Enter a number, zero if there is none.");
    expect(countView({ ...draft, plants: "0", weak: "" }, mill, false, format).row).not.toBeNull();
  });

  it("keeps how the place was measured for the next one", () => {
    expect(nextCount(draft)).toEqual({ ...draft, plants: "", weak: "", remark: "" });
    const placed = { ...draft, part: "Knoll", partAcres: "20", partPlanted: "2031-05-28", latitude: "42", longitude: "-93" };
    expect(nextCount(placed)).toEqual({ ...draft, plants: "", weak: "", remark: "", part: "Knoll" });
  });
});
