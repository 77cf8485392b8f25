import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { seasonReport } from "../../workbook/report";
import { netChange } from "../partialBudget/netChange";
import { anotherHybrid } from "../partialBudget/layouts/hybrid";
import { Decimal, one, zero } from "../numbers/decimal";
import { area, moneyPerArea, moneyPerUnit, money, points, share, yearlyRate, yieldPerArea } from "../numbers/units";
import { hybridComparisons } from "./comparison";
import { plannedRate } from "./seedCost";
import { sharesOfAcres } from "./shareOfAcres";

const seasonOf = (countedOn: string, trials: string, more = "", fields = "| Home | Corn | 100 | 200 | A | 34000 |") =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Drying charge per point | 0.05 |
| Drying counted on | ${countedOn} |
| Test weight dock | Steps |
Steps
| Test weight | Dock |
| 54 | 0 |
| 50 | 0.02 |
Crops
| Crop | Yield unit | Standard moisture | Expected price |
| Corn | bu | 15 | 4.2 |
Fields
| Field | Crop | Acres | Yield goal | Hybrid or variety | Seeds dropped |
${fields}
Hybrids
| Hybrid | Price per bag | Seeds per bag | Trait fee per acre | Check | Heat units to maturity | Days |
| A | 300 | 80000 | | yes | 2700 | 110 |
| B | 260 | 80000 | | | 2500 | 101 |
${more}
Hybrid trials
| Trial | Hybrid | Yield | Moisture | Test weight |
${trials}`),
  );
const compared = ({ season, figures }: ReturnType<typeof seasonOf>) => hybridComparisons(season, figures.items);
const one2 = "| Plot | A | 205 | 22 | 56 |\n| Plot | B | 200 | 19 | 51 |";

describe("what a hybrid nets", () => {
  it("is yield × price less drying, dock, seed and fees: the one that yields less may net more", () => {
    // Worked by hand. A: 205 × 4.20 − 205 × 7 × 0.05 − 34,000 × 300 ÷ 80,000 = 861 − 71.75 − 127.50; B: 200 × 4.18 − 40 − 110.50.
    const [a, b] = compared(seasonOf("dry", one2));
    expect([a!.netPerArea, b!.netPerArea, b!.netDifference!.mean].map(String)).toEqual(["661.75", "685.5", "23.75"]);
    expect(b!.yieldDifference!.mean.toFixed()).toBe("-5");
  });

  it("is what the change to it leaves, where the change begins with its trial", () => {
    for (const countedOn of ["dry", "wet"]) {
      const report = seasonOf(countedOn, one2);
      const [, b] = compared(report);
      const seeds = plannedRate(report.season, "Corn")!;
      const { own, check } = b!.graded!;
      const facts = (price: string, of: typeof own) => ({
        seedsPerArea: seeds,
        pricePerUnit: money(price),
        seedsPerUnit: new Decimal("80000"),
        traitFee: null,
        wetPoints: of.wetPoints,
        discount: of.dock,
      });
      const { change } = anotherHybrid({
        area: area("1"),
        areaUnit: "ac",
        yieldUnit: "bu",
        grain: { price: moneyPerUnit("4.2"), moving: moneyPerUnit("0"), share: share(one) },
        rate: yearlyRate(zero),
        now: facts("300", check),
        other: facts("260", own),
        yieldNow: yieldPerArea("205"),
        yieldGain: b!.yieldDifference!.mean,
        dryingPerPoint: moneyPerUnit("0.05"),
        wetStandard: countedOn === "wet" ? points("15") : null,
      });
      expect(netChange(change).net.perArea!.toDecimalPlaces(20).toFixed(), countedOn).toBe(
        moneyPerArea(b!.netDifference!.mean).toDecimalPlaces(20).toFixed(),
      );
    }
  });

  it("takes the price of the item of its name where the table Hybrids has none", () => {
    const items =
      "Items\n| Item | Kind | Pack name | Pack size | Pack unit | Plan price per pack |\n| a | seed | bag | 80 | thousand seeds | 320 |";
    const report = seasonOf("dry", one2, `| C | | | 5 | | | |\n${items}`);
    expect(compared(report).map(({ seedCost }) => seedCost?.toFixed() ?? null)).toEqual(["127.5", "110.5", null]);
    const without = { ...report.season, hybrids: report.season.hybrids.map((each) => ({ ...each, pricePerBag: null })) };
    // 34,000 × 320 ÷ 80,000.
    expect(hybridComparisons(without, report.figures.items)[0]!.seedCost?.toFixed()).toBe("136");
  });

  it("has one rate of seed for all, from the fields by acres, else from planned rows of seed, of which halves are one", () => {
    const fields = "| Home | Corn | 100 | 200 | A | 34000 |\n| Away | Corn | 50 | 200 | B | |";
    const rows = (seed: string) => `Items
| Item | Kind | Pack name | Pack size | Pack unit | Plan price per pack |
| A | seed | bag | 80 | thousand seeds | 320 |
Applications
| Field or Crop | Item | Rate | Rate unit | Acres | Date | Status |
${seed}`;
    const rate = (seed: string) => plannedRate(seasonOf("dry", one2, rows(seed), fields).season, "Corn")!.toFixed();
    // (34,000 × 100 + 28,000 × 50) ÷ 150.
    expect(rate("| Away | A | 28 | thousand seeds/ac | | 2031-05-01 | plan |")).toBe("32000");
    const halves =
      "| Away | A | 30 | thousand seeds/ac | 25 | 2031-05-01 | plan |\n| Away | A | 26 | thousand seeds/ac | 25 | 2031-05-01 | plan |";
    expect(rate(halves)).toBe("32000");
    expect(rate("| Away | A | 28 | thousand seeds/ac | | 2031-05-01 | done |")).toBe("34000");
  });
});

describe("the farm's acres by hybrid", () => {
  it("add up to the crop's, whatever is named, and have the first and the last day of maturity", () => {
    const rows = ["Home | Corn | 100 | 200 | A", "Away | Corn | 60 | 200 | b", "Hill | Corn | 40 | 200 | B", "Bog | Corn | 50 | 200 | "];
    const fields = rows.map((row) => `| ${row} | |`).join("\n");
    const { season } = seasonOf("dry", one2, "", fields);
    const on = (field: string, date: string) => ({ field, date, byPlan: field === "Away" });
    const shares = sharesOfAcres(season, [on("Hill", "2031-09-20"), on("Away", "2031-09-12"), on("Home", "2031-09-30")]);
    expect(
      shares.map(({ hybrid, area: acres, share: part, days, matures, byPlan, notProjected }) => [
        hybrid,
        acres.toFixed(),
        part.toFixed(),
        days?.toFixed() ?? null,
        matures,
        byPlan,
        notProjected,
      ]),
    ).toEqual([
      ["B", "100", "0.4", "101", { first: "2031-09-12", last: "2031-09-20" }, ["Away"], []],
      ["A", "100", "0.4", "110", { first: "2031-09-30", last: "2031-09-30" }, [], []],
      [null, "50", "0.2", null, null, [], ["Bog"]],
    ]);
  });
});
