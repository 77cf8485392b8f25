import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { seasonReport } from "../report";
import { reportJson } from "../reportJson";

const farm = `
Season
| Setting | Value |
| Drying charge per point | 0.05 |
Crops
| Crop | Yield unit | Weight per bu | Standard moisture | Expected price |
| Corn | bu | 56 | 15.5 | 4 |
| Soybeans | bu | 60 | 13 | 10 |
Fields
| Field | Crop | Acres | Yield goal | Hybrid or variety | Seeds dropped |
| Alder | Corn | 100 | 200 | Oak 1 | 32000 |
| Birch | Soybeans | 80 | 55 | Bean 1 | 140000 |
Budget
| For | Kind | Amount | Basis |
| all | supplies | 10 | per acre |
`;
const offered = `
Hybrids
| Hybrid | Crop | Price per bag | Seeds per bag | Trait fee per acre | Check |
| Oak 1 | Corn | 250 | 80000 | | yes |
| Ash 2 | Corn | 300 | 80000 | 5 | |
`;
/** The report of trials: trial, year, hybrid, yield, yield is, moisture. */
const reportOf = (rows: string, hybrids = offered, before = farm) =>
  reportJson(
    seasonReport(
      contentFromText(`${before}${hybrids}
Hybrid trials
| Trial | Year | Hybrid | Yield | Yield is | Moisture | Test weight |
${rows}`),
    ),
  );
const of = (name: string, report: ReturnType<typeof reportOf>) => report.hybrids.find(({ hybrid }) => hybrid === name)!;
const codes = ({ problems }: ReturnType<typeof reportOf>) => problems.map(({ code, table, row }) => `${code} ${table} ${row}`);
const twoTrials = `| North | 2030 | Oak 1 | 200 | | 15.5 | |
| North | 2030 | Ash 2 | 210 | | 15.5 | |
| South | 2030 | Oak 1 | 180 | | 15.5 | |
| South | 2030 | Ash 2 | 186 | | 15.5 | |`;

describe("what would be dropped", () => {
  it("a trial without the check is left out of the difference by name, and takes nothing from the others", () => {
    const alone = `${twoTrials}\n| Far | 2030 | Ash 2 | 400 | | 15.5 | |`;
    const [before, after] = [of("Ash 2", reportOf(twoTrials)), of("Ash 2", reportOf(alone))];
    expect(before).toMatchObject({ check: "Oak 1", trials: "2", yieldDifference: "8", withoutCheck: [] });
    expect(after).toEqual({ ...before, withoutCheck: ["Far 2030"] });
  });

  it("a hybrid that never stood beside the check has no difference, and tells what it nets by itself", () => {
    const report = reportOf(`${twoTrials}\n| Far | 2030 | Elm 3 | 210 | | 15.5 | |`, `${offered}| Elm 3 | Corn | 250 | 80000 | | |\n`);
    expect(of("Elm 3", report)).toMatchObject({
      trials: "1",
      yieldDifference: null,
      netDifference: null,
      netPerAcre: "740",
      withoutCheck: ["Far 2030"],
    });
  });

  it("a hybrid of the trials that the table Hybrids lacks is compared all the same; it has no price, so it nets nothing known", () => {
    const report = reportOf(twoTrials.replaceAll("Ash 2", "Elm 3"));
    expect(of("Elm 3", report)).toMatchObject({ yieldDifference: "8", netPerAcre: null, netDifference: null });
    expect(of("Ash 2", report)).toMatchObject({ trials: "0", yieldDifference: null });
  });

  it("is told where nothing says of which crop a hybrid is, and takes the crop of those beside it", () => {
    expect(codes(reportOf(`${twoTrials}\n| Far | 2030 | Elm 3 | 210 | | 15.5 | |`))).toEqual(["hybrid-crop-missing Hybrid trials 5"]);
    expect(of("Elm 3", reportOf(`${twoTrials}\n| North | 2030 | Elm 3 | 210 | | 15.5 | |`)).yieldDifference).toBe("10");
  });

  it("a trial without moisture is compared by yield, is in no net, and is told", () => {
    const report = reportOf(`${twoTrials}\n| Far | 2030 | Oak 1 | 150 | | 15.5 | |\n| Far | 2030 | Ash 2 | 140 | | | |`);
    expect(of("Ash 2", report)).toMatchObject({ trials: "3", yieldDifference: "2", netTrials: "2", netDifference: "7" });
    expect(codes(report)).toEqual(["trial-moisture-missing Hybrid trials 6"]);
  });

  it("a check that stands in no trial is told", () => {
    const report = reportOf(twoTrials.replaceAll("Oak 1", "Elm 3"));
    expect(codes(report)).toEqual(["check-without-trial Hybrids 1"]);
  });

  it("a bag without its seeds is told", () => {
    expect(codes(reportOf(twoTrials, offered.replace("300 | 80000", "300 | ")))).toEqual(["blank Hybrids 2"]);
  });
});

describe("what would be counted twice", () => {
  it("a hybrid twice in one trial is one trial, by its mean, and is told once a trial", () => {
    const twice = `${twoTrials}\n| North | 2030 | Ash 2 | 214 | | 15.5 | |\n| north | 2030 | ash 2 | 206 | | 15.5 | |`;
    const [before, after] = [reportOf(twoTrials), reportOf(twice)];
    expect(of("Ash 2", after)).toEqual(of("Ash 2", before));
    expect(codes(after)).toEqual(["hybrid-twice Hybrid trials 5"]);
    expect(after.complete).toBe(true);
  });

  it("one trial of two years is two, one pasted again under another name is told, and two years that agree by chance are not one", () => {
    const nextYear = twoTrials.replaceAll("2030", "2029").replaceAll("186", "196");
    expect(of("Ash 2", reportOf(`${twoTrials}\n${nextYear}`))).toMatchObject({ trials: "4", yieldDifference: "10.5" });
    const again = reportOf(`${twoTrials}\n${twoTrials.replaceAll("South", "South plot").split("\n").slice(2).join("\n")}`);
    expect(of("Ash 2", again).trials).toBe("3");
    expect(codes(again)).toEqual(["trial-twice Hybrid trials 5"]);
  });

  it("the mean and the LSD at the foot of a printed trial are no hybrids", () => {
    const report = reportOf(`${twoTrials}\n| North | 2030 | Mean | 205 | | | |\n| North | 2030 | LSD (0.10) | 12 | | | |`);
    expect(report.hybrids.map(({ hybrid }) => hybrid)).toEqual(["Oak 1", "Ash 2"]);
    expect(codes(report)).toEqual(["total-row Hybrid trials 5", "total-row Hybrid trials 6"]);
  });

  it("two hybrids marked as checks of one crop are told, and the first counts", () => {
    const report = reportOf(twoTrials, offered.replace("| 5 | |", "| 5 | yes |"));
    expect(codes(report)).toEqual(["check-twice Hybrids 2"]);
    expect(of("Ash 2", report).check).toBe("Oak 1");
  });
});

describe("what would be mixed", () => {
  it("a yield in another unit is told, and not compared", () => {
    const report = reportOf(`${twoTrials}\n| Far | 2030 | Oak 1 | 12.6 | | 15.5 | |\n| Far | 2030 | Ash 2 | 12553 | | 15.5 | |`);
    expect(codes(report)).toEqual(["trial-yield-unlike Hybrid trials 5", "trial-yield-unlike Hybrid trials 6"]);
    expect(of("Ash 2", report).trials).toBe("2");
  });

  it("a heading in another unit is told", () => {
    const heading = reportJson(
      seasonReport(
        contentFromText(
          `${farm}${offered}\nHybrid trials\n| Trial | Hybrid | Yield (t/ha) |\n| North | Oak 1 | 200 |\n| North | Ash 2 | 210 |`,
        ),
      ),
    );
    expect(codes(heading)).toContain("heading-unit Hybrid trials null");
  });

  it("a wet yield is dried by its moisture, and without moisture it is told and counts nowhere", () => {
    const wet = reportOf("| North | 2030 | Oak 1 | 200 | dry | 20 | |\n| North | 2030 | Ash 2 | 211.25 | wet | 20 | |");
    // 211.25 × 80 ÷ 84.5 = 200: the same dry bushels, and the same to dry.
    expect(of("Ash 2", wet)).toMatchObject({ yieldDifference: "0", netDifference: "-25" });
    const unknown = reportOf(`${twoTrials}\n| Far | 2030 | Oak 1 | 200 | | 20 | |\n| Far | 2030 | Ash 2 | 200 | wet | | |`);
    expect(codes(unknown)).toEqual(["blank Hybrid trials 6"]);
    expect(of("Ash 2", unknown).trials).toBe("2");
  });

  it("drying is charged on the wet bushels, or the dry ones as set, trial by trial: a dry trial pays for no wet one", () => {
    const rows = "| North | 2030 | Oak 1 | 160 | | 20.5 | |\n| South | 2030 | Oak 1 | 160 | | 10.5 | |";
    // 160 × 84.5 ÷ 79.5 wet bushels × 5 points × 0.05 in the north, nothing in the south; seed 100.
    const wet = 640 - (160 * 84.5 * 5 * 0.05) / 79.5 / 2 - 100;
    expect(Number(of("Oak 1", reportOf(rows)).netPerAcre)).toBeCloseTo(wet, 10);
    const dry = farm.replace("| 0.05 |", "| 0.05 |\n| Drying counted on | dry |");
    expect(of("Oak 1", reportOf(rows, offered, dry)).netPerAcre).toBe("520");
  });

  it("a trial of corn and one of soybeans at the same place are held apart", () => {
    const report = reportOf(`${twoTrials}\n| North | 2030 | Bean 1 | 60 | | 13 | |\n| North | 2030 | Bean 2 | 63 | | 13 | |`, offered);
    expect(codes(report)).toEqual(["hybrid-crop-missing Hybrid trials 6"]);
    const told = reportOf(
      `${twoTrials}\n| North | 2030 | Bean 1 | 60 | | 13 | |\n| North | 2030 | Bean 2 | 63 | | 13 | |`,
      `${offered}| Bean 2 | Soybeans | 60 | 140000 | | |\n`,
    );
    expect(codes(told)).toEqual([]);
    expect(of("Bean 2", told)).toMatchObject({ crop: "Soybeans", check: "Bean 1", checkChosen: false, yieldDifference: "3" });
    expect(of("Ash 2", told)).toMatchObject({ trials: "2", yieldDifference: "8" });
  });

  it("a year that is left out of some entries of a trial is told, so that the trial is not cut in two", () => {
    const report = reportOf(`${twoTrials}\n| North | | Elm 3 | 220 | | 15.5 | |\n| South | 30 | Elm 3 | 190 | | 15.5 | |`);
    expect(codes(report)).toEqual(["blank Hybrid trials 5", "not-a-date Hybrid trials 6"]);
  });

  it("a name that is nearly one of the farm's is told", () => {
    expect(codes(reportOf(`${twoTrials}\n| North | 2030 | Ash-2 | 211 | | 15.5 | |`))).toEqual(["hybrid-unlike Hybrid trials 5"]);
    expect(codes(reportOf(`${twoTrials}\n| North | 2030 | Ash 3 | 211 | | 15.5 | |`))).toEqual([]);
  });

  it("the dock is taken off both sides of a trial or off neither", () => {
    const docked = `${farm.replace("| 0.05 |", "| 0.05 |\n| Test weight dock | Steps |")}
Steps
| Crop | Test weight | Dock |
| Corn | 54 | 0 |
| Corn | 50 | 0.1 |
`;
    const rows = (oak: string, ash: string) =>
      `| North | 2030 | Oak 1 | 200 | | 15.5 | ${oak} |\n| North | 2030 | Ash 2 | 200 | | 15.5 | ${ash} |`;
    expect(of("Ash 2", reportOf(rows("56", "52"), offered, docked)).netDifference).toBe("-45");
    const half = reportOf(rows("", "52"), offered, docked);
    expect(of("Ash 2", half).netDifference).toBe("-25");
    expect(codes(half)).toEqual(["trial-weight-missing Hybrid trials 1"]);
    expect(codes(reportOf(rows("56", "49"), offered, docked))).toEqual(["dock-outside Hybrid trials 2"]);
    expect(codes(reportOf(rows("56", "72"), offered, docked))).toEqual([
      "test-weight-beyond Hybrid trials 2",
      "trial-weight-missing Hybrid trials 2",
    ]);
  });
});

describe("the check", () => {
  it("is the hybrid on most acres that stood in a trial, where none is marked, and is said not to be chosen", () => {
    const unmarked = offered.replace("| | yes |", "| | |");
    const more = (fields: string) => farm.replace("| Birch |", `${fields}\n| Birch |`);
    expect(of("Oak 1", reportOf(twoTrials, unmarked))).toMatchObject({ check: "Oak 1", checkChosen: false });
    // 60 and 50 acres of Ash 2 are more than 100 of Oak 1; what is on most of all stood in no trial.
    const ash = "| Cedar | Corn | 60 | 200 | Ash 2 | |\n| Dale | Corn | 50 | 200 | ash 2 | |\n| East | Corn | 500 | 200 | Yew 9 | |";
    expect(of("Oak 1", reportOf(twoTrials, unmarked, more(ash)))).toMatchObject({ check: "Ash 2", yieldDifference: "-8" });
    expect(of("Oak 1", reportOf(twoTrials, offered, more(ash)))).toMatchObject({ check: "Oak 1", checkChosen: true });
  });
});

describe("the interval", () => {
  it("holds zero or not, and one trial has none", () => {
    // Differences 10 and 6: mean 8, standard deviation 2.828, t of one degree of freedom 12.706.
    expect(of("Ash 2", reportOf(twoTrials))).toMatchObject({ showsNoDifference: true });
    expect(Number(of("Ash 2", reportOf(twoTrials)).low)).toBeCloseTo(8 - 12.7062 * 2, 3);
    const same = reportOf(twoTrials.replace("186", "190"));
    expect(of("Ash 2", same)).toMatchObject({ low: "10", high: "10", showsNoDifference: false });
    const less = reportOf(twoTrials.replace("210", "190").replace("186", "170"));
    expect(of("Ash 2", less)).toMatchObject({ low: "-10", high: "-10", showsNoDifference: false });
    const one = reportOf(twoTrials.split("\n").slice(0, 2).join("\n"));
    expect(of("Ash 2", one)).toMatchObject({ trials: "1", yieldDifference: "10", low: null, high: null, showsNoDifference: null });
  });
});
