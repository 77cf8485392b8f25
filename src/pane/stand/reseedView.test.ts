import { describe, expect, it } from "vitest";
import { countedContent } from "../../../tests/support/paneWorkbook";
import { area, yieldPerArea } from "../../core/numbers/units";
import { seasonReport } from "../../workbook/report";
import { formatOf } from "../format";
import { emptyReseed, reseedQuestion, type ReseedDraft } from "./reseedDraft";
import { reseedView } from "./reseedView";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const report = seasonReport(countedContent);
const stand = report.figures.stands.find(({ field }) => field.name === "Mill Road")!;
const begun = emptyReseed(report, { stand, part: null }, false);
const ask = (changes: Partial<ReseedDraft> = {}) => reseedQuestion({ ...begun, ...changes }, report, { stand, part: null }, false);
const ground = {
  summary: stand.summary,
  concerned: { area: stand.field.area, yield: stand.outlook!.ok ? stand.outlook!.value.outlook : stand.field.yieldGoal },
  others: [],
  yieldUnit: "bu",
  today: "2031-05-15",
};
function answered(changes: Partial<ReseedDraft>) {
  const view = reseedView(ask(changes).question!, ground, format);
  if (!view.known) throw new Error(view.why);
  return { ...view, says: Object.fromEntries(view.lines.map(({ name, says }) => [name, says])) };
}

describe("the question whether to reseed", () => {
  it("begins with the field, its counts and its seed, and with nothing that nobody entered", () => {
    // Seed: 18,760 ÷ 70 bags a bag × 34,000 ÷ 80,000.
    expect(begun).toMatchObject({
      area: "120",
      stand: "21625",
      date: "2031-06-05",
      newStand: "32000",
      price: "4.35",
      seed: "113.9",
      drying: "0",
      keptPoints: "0",
    });
    expect(
      [
        begun.endOldStand,
        begun.seedCredit,
        begun.pass,
        begun.treatment,
        begun.herbicide,
        begun.other,
        begun.insurance,
        begun.allowance,
      ].join(""),
    ).toBe("");
  });

  it("asks the same where numbers are typed with a decimal comma", () => {
    const comma = reseedQuestion(emptyReseed(report, { stand, part: null }, true), report, { stand, part: null }, true);
    expect(comma).toEqual(ask());
    expect(emptyReseed(report, { stand, part: null }, true).price).toBe("4,35");
  });

  it("names what is wrong at the box", () => {
    expect(ask({ area: "130", date: "", pass: "dear", allowance: "120" })).toEqual({
      question: null,
      faults: {
        area: "The field has 120.",
        date: "Enter a date.",
        pass: "Enter a number.",
        allowance: "Enter a percentage from 0 to 100.",
      },
    });
  });
});

describe("the answer", () => {
  it("sets yields, cost and the gap needed side by side", () => {
    // Purdue 2012: 25 May, 30,000 plants 87 %; planned 100 %; kept 12 May as in the outlook. 195 × 0.87 = 169.65.
    const view = answered({ date: "2031-05-25", newStand: "30000", seed: "50" });
    expect(view.says["Yield kept"]).toBe("176.1 bu per acre");
    expect(view.says["Yield after replanting"]).toBe("169.7 bu per acre");
    // 50 ÷ (4.35 − 0.22) = 12.107 bu.
    expect(view.says["Extra yield needed"]).toBe("12.2 bu per acre");
    expect(view.says["Extra yield from replanting"]).toBe("−6.5 bu per acre");
    // (169.65 − 176.109375) × 4.13 − 50
    expect([view.decision, view.figure]).toEqual(["Keeping the stand is better by these figures.", "−76.68"]);
    expect(view.says["Break-even price"]).toBe("replanting pays at no price");
  });

  it("finds the thinnest stand worth keeping and the last date for a stand that is very thin", () => {
    const view = answered({ stand: "12000", date: "2031-05-20", seed: "60", area: "40" });
    expect(view.decision).toBe("Replanting pays by these figures.");
    expect(view.figure).toMatch(/^\+/);
    // 91 % of 195 less 60 ÷ 4.13 is 83.55 %: between 80.8 % at 16,000 and 84.8 % at 18,000 plants of 12 May.
    expect(view.says["Thinnest stand worth keeping"]).toBe("17,400 plants per acre");
    // 70.2 % kept and 60 ÷ 4.13 come to 77.65 %: between 81 % of 30 May and 75 % of 4 June.
    expect(view.says["Last date on which replanting pays"]).toBe("Jun 1");
    // (40 × 177.45 + 80 × 176.109375) ÷ 120
    expect(view.says["Whole field with the part replanted"]).toBe("176.6 bu per acre");
  });

  it("names no last date that lies before today: in June, and a year later, none is left", () => {
    const asked = (today: string) => {
      const view = reseedView(ask({ stand: "12000", date: "2031-05-20", seed: "60", area: "40" }).question!, { ...ground, today }, format);
      return view.known ? view.lines.find(({ name }) => name.startsWith("Last date"))!.says : view.why;
    };
    const none = "none that is still to come, or after the planting";
    expect(["2030-12-01", "2031-06-01", "2031-06-02", "2032-04-01"].map(asked)).toEqual(["Jun 1", "Jun 1", none, none]);
  });

  it("lists what was not entered and so counted as nothing", () => {
    expect(answered({}).notEntered).toBe(
      "Not entered, and so counted as nothing: ending the old stand, the seller's credit, the planting pass, treatment, herbicide, " +
        "other costs, the insurance payment, an allowance off the new yield, drying.",
    );
    const all = {
      endOldStand: "8",
      seedCredit: "20",
      pass: "22",
      treatment: "5",
      herbicide: "12",
      other: "1",
      insurance: "40",
      allowance: "10",
      drying: "0.05",
    };
    expect(answered(all).notEntered).toBe("");
  });

  it("says what a unit of the crop nets, of each where drying sets them apart", () => {
    expect(answered({ stand: "12000" }).home).toEqual([
      "The crop, kept or replanted, nets 4.13 USD per bu: its price of 4.35, less 0.22 for hauling, drying and selling, times the " +
        "operator's share of 100 %.",
    ]);
    // 0.22 + 2 × 0.05 and 0.22 + 6 × 0.05
    expect(answered({ drying: "0.05", keptPoints: "2", newPoints: "6" }).home).toEqual([
      "The crop kept nets 4.03 USD per bu: its price of 4.35, less 0.32 for hauling, drying and selling, times the operator's share " +
        "of 100 %.",
      "The crop replanted nets 3.83 USD per bu: its price of 4.35, less 0.52 for hauling, drying and selling, times the operator's " +
        "share of 100 %.",
    ]);
  });

  it("sets the part that is replanted beside the other parts as they are", () => {
    // 40 acres at 169.65, and 80 at 190: 183.2 the acre.
    const parts = {
      ...ground,
      concerned: { ...ground.concerned, area: area("40") },
      others: [{ area: area("80"), yield: yieldPerArea("190") }],
    };
    const view = reseedView(ask({ date: "2031-05-25", newStand: "30000", area: "40" }).question!, parts, format);
    const whole = view.known ? view.lines.find(({ name }) => name.startsWith("Whole field"))!.says : "";
    expect(whole).toBe("183.2 bu per acre");
  });

  it("rounds the price below which it pays down, so that at the price shown it still does", () => {
    // Reseeding loses 6.459375 bu and is paid 25 more than it costs: 25 ÷ 6.459375 + 0.22 = 4.0904.
    const view = answered({ date: "2031-05-25", newStand: "30000", seed: "50", insurance: "75" });
    expect(view.says["Break-even price"]).toBe("replanting pays below 4.09 USD per bu");
  });

  it("draws the grid a week before to two weeks after, and leaves blank what the table does not say", () => {
    const { grid } = answered({ date: "2031-06-04" });
    expect(grid.columns).toEqual(["May 28", "Jun 4", "Jun 11", "Jun 18"]);
    expect(grid.rows.at(-1)!.name).toBe("32,000");
    expect(grid.rows.every(({ cells }) => cells[2] === "–" && /^−?\d+$/.test(cells[0]!))).toBe(true);
  });

  it("refuses in words outside the table, and says which stand or date it means", () => {
    const view = reseedView(ask({ stand: "4000", date: "2031-07-01" }).question!, ground, format);
    expect(view.known || view.why).toBe(
      'The kept stand 4000 is outside the table "Corn, central Corn Belt (Purdue 2012)" (10000 to 36000). The new planting date ' +
        '2031-07-01 is outside the table "Corn, central Corn Belt (Purdue 2012)" (04-10 to 06-09). The table goes no further.',
    );
  });
});
