import { describe, expect, it } from "vitest";
import { seedCost } from "../../src/core/hybrids/seedCost";
import { Decimal } from "../../src/core/numbers/decimal";
import { seedsPerArea } from "../../src/core/numbers/units";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { check as held, checksPage } from "./checks";
import { sourceSaid, sources } from "./sources";
import { contentFromText } from "../support/tableFromText";
import { differences, docks, onePoint, seed, sleep } from "./hybrids";

/** The hybrid *Other* of trials: trial, hybrid, yield, moisture, test weight, LSD. */
const compared = (trials: string, { price = "4", settings = "", more = "" } = {}) => {
  const report = reportJson(
    seasonReport(
      contentFromText(`
Season
| Setting | Value |
| Drying counted on | dry |
${settings}
Crops
| Crop | Yield unit | Standard moisture | Expected price |
| Corn | bu | 15 | ${price} |
Fields
| Field | Crop | Acres | Yield goal | Hybrid or variety | Seeds dropped |
| Home | Corn | 100 | 200 | Check | 32000 |
${more}
Hybrids
| Hybrid | Price per bag | Seeds per bag | Check |
| Check | 250 | 80000 | yes |
| Other | 250 | 80000 | |
Hybrid trials
| Trial | Hybrid | Yield | Moisture | Test weight | Trial LSD |
${trials}`),
    ),
  );
  return report.hybrids.find(({ hybrid }) => hybrid === "Other")!;
};

describe("a difference", () => {
  it.each(differences)("is as printed ($id)", ({ source, publisher, check, hybrid, difference, lsd, isNone }) => {
    const rows = [...check.map((yields) => `| Plot | Check | ${yields} | 15 | | ${lsd ?? ""} |`), `| Plot | Other | ${hybrid} | 15 | | |`];
    const told = compared(rows.join("\n"));
    held(new Decimal(told.yieldDifference!), difference, sourceSaid(`${source}, ${publisher}`), "seasonReport: hybrids, yield difference");
    expect(told.showsNoDifference).toBe(isNone);
  });

  it("over pairs has the interval of the paired t test", () => {
    // Yields are never below zero: both drugs with 200 more.
    const more = (value: string) => new Decimal(value).plus("200").toFixed();
    const rows = sleep.first.flatMap((first, index) => [
      `| Trial ${index} | Check | ${more(first)} | 15 | | |`,
      `| Trial ${index} | Other | ${more(sleep.second[index]!)} | 15 | | |`,
    ]);
    const told = compared(rows.join("\n"));
    const source = sources["Student 1908"];
    held(new Decimal(told.yieldDifference!), sleep.mean, source, "seasonReport: hybrids, yield difference", "mean");
    held(new Decimal(told.low!), sleep.low, source, "seasonReport: hybrids, interval", "low");
    held(new Decimal(told.high!), sleep.high, source, "seasonReport: hybrids, interval", "high");
    expect(told.showsNoDifference).toBe(false);
  });
});

describe("what a hybrid nets", () => {
  it.each(seed)("has the seed that is printed ($id)", ({ source, publisher, seeds, bag, cost }) => {
    const ours = seedCost(seedsPerArea(seeds), { price: new Decimal(bag), seeds: new Decimal("80000") });
    held(ours, cost, sourceSaid(`${source}, ${publisher}`), "seedCost of a hybrid");
  });

  it("gives up what is printed for a point more to dry", () => {
    const { charge, price, percent } = onePoint;
    const told = compared("| Plot | Check | 180 | 17 | | |\n| Plot | Other | 180 | 18 | | |", {
      price,
      settings: `| Drying charge per point | ${charge} |`,
    });
    const given = new Decimal(told.netDifference!).div("180").div(price).times("-100");
    held(given, percent, sources["hybrid moisture"], "seasonReport: hybrids, net difference");
  });

  it.each(docks.readings)("is docked as a schedule prints it, at %s lb %s", (testWeight, off) => {
    const more = `Steps\n| Test weight | Dock |\n${docks.lines.map((line) => `| ${line.join(" | ")} |`).join("\n")}`;
    const told = compared(`| Plot | Check | 180 | 15 | 54 | |\n| Plot | Other | 180 | 15 | ${testWeight} | |`, {
      settings: "| Test weight dock | Steps |",
      more,
    });
    held(new Decimal(told.netDifference!).div("-180"), off, sources["Minnesota elevator 2023"], "seasonReport: hybrids, net difference");
  });
});

checksPage("Hybrids");
