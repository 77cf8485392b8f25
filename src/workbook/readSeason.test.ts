import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { seasonReport } from "./report";
import { reportJson } from "./reportJson";

const farm = `
Season
| Setting | Value |
| Season year | 2031 |
| Currency | USD |
| Operating interest rate | 8% |
| Interest method | by date |
| Repayment date | 2031-12-01 |
| Drying charge per point | 0.05 |
Crops
| Crop | Yield unit | Weight per bu | Standard moisture | Expected price | Per-unit selling cost | Expected harvest moisture |
| Corn | bu | 56 | 15.5 | $4.20 | 0.13 | 19.5 |
| Winter wheat | bu | 60 | 13.5 | 5.60 | | |
Fields
| field | CROP | Acres | Yield goal | Tenure | Rent per acre ($/ac) | Operator share of crop % | Harvest done |
| Alder | corn | 120 | 200 | cash rent | 250 | | |
| Birch | Corn | 80 | 180 | crop share | | 60 | no |
| Cedar | Winter wheat | 60 | 85 | | | | 2031-07-20 |
Items
| Item | Kind | Pack name | Pack size | Pack unit | Plan price per pack | Density | Analysis N-P-K | Operator share of cost % |
| Hybrid seed | seed | bag | 80000 | seeds | 280 | | | |
| UAN | fertilizer | | | | 0.24 | 10.66 lb/gal | 28-0-0 | 60% |
| Herbicide A | crop protection | jug | 2.5 | gal | 95 | | | |
| Diesel | fuel | | | gal | 3.40 | | | |
Purchases
| Date | Item | Quantity | Unit | Unit price | Amount | Freight | Rebate |
| 2031-02-01 | hybrid seed | 90 | bags | 270 | 24,300.00 | | 300 |
| 3/15/2031 | UAN | 12 | ton | 410 | | 120 | |
| 2031-04-01 | Herbicide A | 40 | jug | | 3600 | | |
| 2031-04-02 | Herbicide A | -4 | jug | | 360 | | |
| 2031-04-10 | Diesel | 500 | gal | 3.6 | | | |
Applications
| Field or Crop | Item | Rate | Rate unit | Acres | Date | Status |
| Corn | Hybrid seed | 34000 | seeds/ac | | 2031-05-02 | plan |
| Alder | Hybrid seed | 34000 | seeds/ac | | 2031-05-03 | done |
| Corn | UAN | 140 | lb N/ac | | 2031-06-05 | plan |
| Corn | Herbicide A | 32 | oz/ac | | 2031-05-20 | plan |
Operations
| Field or Crop | Operation | Acres | Passes | Rate | Basis | Date | Status | Kind | Hours |
| Corn | Planting | | | 22 | per acre | 2031-05-02 | plan | | |
| Alder | Scouting | | | 40 | per hour | 2031-06-10 | plan | hired labour | 5 |
Other_costs
| Item | Kind | Amount | Basis | Shared over | Cash | Month |
| Office | overhead | 2600 | whole farm | all | yes | March |
| Hail policy | crop insurance | 12.50 | per acre | Corn | yes | 7 |
| Checkoff | haul | 0.01 | per bu | corn | yes | |
Sales
| Crop | Date | Quantity | Price | Delivery month | Kind |
| Corn | 2031-03-01 | 5000 | 4.45 | Nov | forward |
Harvest
| Field | Date | Weight or bushels | Unit | Moisture |
| Cedar | 2031-07-20 | 300000 | lb | 14.5 |
`;

describe("readSeason", () => {
  it("charges interest to the repayment date where no method is named, and for so many months where these alone are", () => {
    const unnamed = farm.replace("| Interest method | by date |\n", "");
    const charged = (text: string) => {
      const { season, problems } = seasonReport(contentFromText(text));
      return [season.settings.operatingInterest?.method, problems.filter(({ code }) => code === "interest-incomplete").length];
    };
    expect(charged(unnamed)).toEqual(["by date", 0]);
    expect(charged(unnamed.replace("| Repayment date | 2031-12-01 |", "| Interest months | 8 |"))).toEqual(["months", 0]);
    expect(charged(unnamed.replace("| Repayment date | 2031-12-01 |\n", ""))).toEqual([undefined, 1]);
  });

  const report = seasonReport(contentFromText(farm));

  it("finds nothing wrong with a season that is entered well, however it is typed", () => {
    expect(report.problems).toEqual([]);
  });

  it("reads packs, units and nutrients into the base unit of each item", () => {
    const [seed, uan, herbicide] = report.season.items;
    expect([seed!.unit.name, uan!.unit.name, herbicide!.unit.name]).toEqual(["seeds", "ton", "gal"]);
    expect(report.season.purchases.map(({ quantity }) => quantity.toFixed())).toEqual(["7200000", "12", "100", "-10", "500"]);
    // 140 lb N from 28 % is 500 lb, a quarter of a ton; 32 fl oz are a quarter of a gallon.
    expect(report.season.applications.map(({ rate }) => rate.toFixed(12))).toEqual([
      "34000.000000000000",
      "34000.000000000000",
      "0.250000000000",
      "0.250000000000",
    ]);
  });

  it("shrinks wet grain by weight to standard moisture", () => {
    // 5,000 bu at 14.5 % are 5,000 × 85.5 ÷ 86.5 at 13.5 %.
    expect(report.season.harvest[0]!.quantity.times("86.5").toFixed(10)).toBe("427500.0000000000");
  });

  it("takes a return off, whatever sign its amount has", () => {
    expect(report.figures.items[2]!.averagePrice!.toFixed()).toBe("90");
  });

  it("comes out as JSON with the documented keys, every quantity a string", () => {
    const json = reportJson(report);
    expect(json.complete).toBe(true);
    expect(Object.keys(json.crops[0]!.plan)).toEqual([
      "yield",
      "price",
      "dockPerUnit",
      "costPerAcre",
      "costPerUnit",
      "breakEvenPrice",
      "breakEvenYield",
      "incomePerAcre",
      "interestInFull",
      "rentAboveBase",
      "netPerAcre",
    ]);
    expect(json.crops[0]!.plan.costPerAcre).toMatchObject({ byKind: { seed: "119" } });
    expect(JSON.stringify(json)).not.toMatch(/:\s*-?\d/);
  });
});

describe("a workbook with faults", () => {
  const codes = (text: string) =>
    seasonReport(contentFromText(text)).problems.map(
      ({ code, at }) => `${code} ${at.table}${at.row === undefined ? "" : ` ${at.row}`}${at.column === undefined ? "" : ` ${at.column}`}`,
    );

  it("misses its crops and fields, and says no more of names that stood in them", () => {
    expect(codes("Sales\n| Crop | Date | Quantity | Price |\n| Corn | 2031-01-01 | 5 | 4 |")).toEqual([
      "table-missing Crops",
      "table-missing Fields",
    ]);
  });

  it("still computes every field that is whole, and marks what a fault touches", () => {
    const report = seasonReport(
      contentFromText(
        farm
          .replace("| 2031-04-10 | Diesel | 500 | gal |", "| 2031-04-10 | Diesel | lots | gal |")
          .replace("| Alder | Scouting | | |", "| Alder | Scouting | 200 | |"),
      ),
    );
    expect(report.problems.map(({ code }) => code)).toEqual(["not-a-number", "area-too-large"]);
    expect(report.problemsOf({ of: "field", name: "Cedar" }).map(({ code }) => code)).toEqual(["not-a-number"]);
    expect(report.problemsOf({ of: "crop", name: "Corn" })).toHaveLength(2);
    expect(report.problemsOf({ of: "item", name: "UAN" })).toEqual([]);
    expect(report.placeOf(report.problems[0]!.at)).toEqual({ sheet: "Purchases", row: 5, column: 2 });
  });

  it("leaves out a crop that cannot be read together with its fields, and tells it once", () => {
    const report = seasonReport(contentFromText(farm.replace("| 5.60 |", "| #N/A |")));
    expect(report.problems.map(({ code, found }) => `${code} ${found}`)).toEqual(["formula-error #N/A"]);
    expect(report.figures.crops.map(({ crop }) => crop)).toEqual(["Corn"]);
    expect(report.problemsOf({ of: "crop", name: "Corn" })).toHaveLength(1);
  });
});
