import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { seasonReport } from "../../workbook/report";
import { ranked } from "../../workbook/hybridWords";
import { ownFields } from "../../workbook/ownFields";
import { comparisonsOf } from "../../workbook/sheets/hybridsSheet";
import { formatOf } from "../format";
import { hybridPlot, plotSays } from "./hybridPlot";
import { hybridStart } from "./hybridStart";
import { checkSays, hybridLine, netSays, ownSays } from "./hybridsView";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const report = seasonReport(
  contentFromText(`
Season
| Setting | Value |
| Drying charge per point | 0.05 |
Crops
| Crop | Yield unit | Standard moisture | Expected price |
| Corn | bu | 15 | 4 |
Fields
| Field | Crop | Acres | Yield goal | Hybrid or variety | Seeds dropped |
| Home | Corn | 100 | 200 | Oak | 32000 |
| Away | Corn | 60 | 200 | Ash | 32000 |
Hybrids
| Hybrid | Price per bag | Seeds per bag | Trait fee per acre | Check |
| Oak | 250 | 80000 | | yes |
| Ash | 300 | 80000 | 4 | |
| Elm | 250 | 80000 | | |
| Yew | 250 | 80000 | | |
Hybrid trials
| Trial | Hybrid | Yield | Moisture |
| North | Oak | 200 | 18 |
| South | Oak | 180 | 16 |
| North | Ash | 212 | 20 |
| South | Ash | 192.1 | 18 |
| North | Elm | 207 | 17 |
| South | Elm | 178 | 15 |
| South | Yew | 190 | |`),
);
const all = ranked(comparisonsOf(report)).filter(({ isCheck }) => !isCheck);
const lineOf = (name: string) => {
  const index = all.findIndex(({ hybrid }) => hybrid === name);
  return hybridLine(all[index]!, index + 1, "bu/ac", format);
};
const startOf = (name: string) =>
  hybridStart(
    report,
    comparisonsOf(report).find(({ hybrid }) => hybrid === name)!,
    false,
  );

describe("a hybrid in one line", () => {
  it("is ranked by what it nets, and says what its trials show", () => {
    expect(all.map(({ hybrid }) => hybrid)).toEqual(["Elm", "Ash", "Yew"]);
    // Differences 12 and 12.1: 12.05 ± 12.706 × 0.05.
    expect(lineOf("Ash").about).toBe("12.1 bu/ac more (11.4 to 12.7) in 2 trials, 2.0 points wetter");
    expect(lineOf("Elm").about).toBe("2.5 bu/ac more (−54.7 to 59.7) in 2 trials, 1.0 points drier: no difference shown by these trials");
    expect(lineOf("Yew").about).toBe("10.0 bu/ac more in 1 trial: one trial says nothing of how far it may be off");
    expect(lineOf("Yew").aside).toBe("–");
  });

  it("says of the check by itself what it does in all of its trials, and of an own field how it stands", () => {
    const oak = comparisonsOf(report).find(({ isCheck }) => isCheck)!;
    // Drying of 200 and 180 dry bushels at 18 and 16: 31.10 and 9.11; seed 100.
    expect(checkSays(oak, "bu/ac", format)).toEqual([
      "Oak by itself: 190.0 bu/ac in 2 trials.",
      "Nets 639.90 USD per acre over 2 trials.",
      "Seed and fees 100.00 USD per acre.",
    ]);
    expect(ownFields(report, "Corn").map((each) => ownSays(each, format))).toEqual(["Ash, projected", "Oak, projected"]);
  });

  it("tells what it nets and what the check nets over the same trials", () => {
    const [nets, seed] = netSays(
      all.find(({ hybrid }) => hybrid === "Ash")!,
      format,
    );
    expect(nets).toMatch(/^Nets \d+\.\d\d USD per acre over 2 trials, \+\d+\.\d\d beside Oak \(.* to .*\)\.$/);
    expect(seed).toBe("Seed and fees 124.00 USD per acre.");
  });
});

describe("the picture", () => {
  it("has the check where the lines cross, and leaves out what has no moisture", () => {
    const plot = hybridPlot(all)!;
    expect(plot.dots.map(({ hybrid, mark }) => [hybrid, mark])).toEqual([
      ["Elm", "1"],
      ["Ash", "2"],
    ]);
    // One point drier to two wetter; bounds of −54.7 and 59.7 to the fives around them.
    expect([plot.wet.from, plot.wet.to, plot.yields.from, plot.yields.to].map(String)).toEqual(["-1", "2", "-55", "60"]);
    expect(plot.zero).toEqual({ x: "33.3", y: "52.2" });
    expect(plot.dots[1]).toMatchObject({ x: "100.0", y: "41.7" });
    expect(plotSays(all, "Oak", "bu/ac", format)).toBe(
      "Yield and moisture beside Oak: Elm 2.5 bu/ac more, 1.0 points drier; Ash 12.1 bu/ac more, 2.0 points wetter.",
    );
    expect(hybridPlot([])).toBeNull();
  });
});

describe("the change to a hybrid", () => {
  it("begins with the trials' moisture, its own seed and fee, the check's acres, and a gain only where they show one", () => {
    expect(startOf("Ash")).toEqual({
      layout: "Another hybrid",
      target: "crop Corn",
      boxes: {
        name: "Ash instead of Oak",
        acres: "100",
        gain: "12.05",
        nowSeeds: "32000",
        otherSeeds: "32000",
        nowPrice: "250",
        nowPerUnit: "80000",
        nowTrait: "",
        otherPrice: "300",
        otherPerUnit: "80000",
        otherTrait: "4",
        nowWet: "2",
        nowDiscount: "",
        otherWet: "4",
        otherDiscount: "",
      },
    });
    expect(startOf("Elm")!.boxes["gain"]).toBe("");
    expect(startOf("Yew")!.boxes["gain"]).toBe("");
    expect(startOf("Yew")!.boxes).not.toHaveProperty("otherWet");
    expect(startOf("Oak")).toBeNull();
  });
});
