import { describe, expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { areaPerTank } from "../../src/core/weeds/tankMix";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { contentFromText } from "../support/tableFromText";
import { check, checkCut, checksPage } from "./checks";
import { sources } from "./sources";
import { groups, tanks } from "./weeds";

const report = (acres: string, items: string, rows: string, weeds = "") =>
  reportJson(
    seasonReport(
      contentFromText(`
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| One | Corn | ${acres} | 200 |
Items
| Item | Kind | Pack unit | Plan price per pack | Sites of action | Controls |
${items}
Applications
| Field or Crop | Item | Rate | Rate unit | Date | Status | Carrier per acre | Tank size |
${rows}
${weeds}`),
    ),
  );

describe("a tank", () => {
  it.each(tanks)("takes what is printed ($id)", ({ acres, carrier, tank, rate, unit, source, prints, isCut }) => {
    const base = unit === "lb" ? "lb" : "gal";
    const [mix] = report(
      acres,
      `| A | crop protection | ${base} | 40 | 4 | none |`,
      `| One | A | ${rate} | ${unit}/ac | 2031-05-20 | plan | ${carrier} | ${tank} |`,
    ).mixes;
    const [item] = mix!.items;
    const told: Readonly<Record<string, Decimal>> = {
      acresPerTank: areaPerTank(new Decimal(mix!.tank!), new Decimal(mix!.carrierPerAcre!)),
      perLoad: new Decimal(item!.perLoad!),
      total: new Decimal(item!.total!),
      totalInGallons: new Decimal(item!.total!).div("8"),
      volume: new Decimal(mix!.loads!).times(mix!.tank!).plus(mix!.lastLoad!),
    };
    for (const [name, printed] of Object.entries(prints)) {
      const holds = isCut ? checkCut : check;
      holds(told[name]!, printed, source, name === "acresPerTank" ? areaPerTank : `seasonReport: mixes, ${name}`, name);
    }
  });
});

describe("groups against a weed", () => {
  it("are those whose label controls it, and then those that it does not resist", () => {
    const useful = groups.all.split(", ").filter((group) => !(groups.useless as readonly string[]).includes(group));
    const items =
      `| All | crop protection | gal | 40 | ${groups.all} | Other |\n| Useful | crop protection | gal | 40 | ${useful.join(", ")} | ` +
      "Waterhemp |";
    const rows = "| One | All | 1 | pt/ac | 2031-05-20 | plan | | |\n| One | Useful | 1 | pt/ac | 2031-05-20 | plan | | |";
    const left = (resistant: string) =>
      report("10", items, rows, `Weeds\n| Field or Crop | Weed | Resistant to |\n| One | Waterhemp | ${resistant} |`).weeds[0]!.weeds[0]!
        .sitesLeft[0]!;
    check(new Decimal(String(left("").length)), groups.left, sources["Iowa groups 2016"], "seasonReport: weeds, sites left");
    expect(left("2, 5, 9, 14").length).toBe(left("").length - 4);
  });
});

checksPage("Tanks and weeds");
