import { describe, expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { contentFromText } from "../support/tableFromText";
import { check, checkApart, checksPage, type Formula } from "./checks";
import { rangeOver, type Range } from "./printRange";
import {
  averageCost,
  bushelsPerTonne,
  drying,
  equivalentWeights,
  nutrientPrices,
  operatingInterest,
  seed,
  shrink,
  stagedSales,
} from "./seasonRules";
import { sources, type Source } from "./sources";

function reportOf(workbook: string) {
  const report = seasonReport(contentFromText(workbook));
  // What is printed are rules of a harvest, a rate or a price, on land without a cost.
  expect(report.problems.filter(({ code }) => code !== "cost-none")).toEqual([]);
  return reportJson(report);
}

type Row = { readonly prints: string; readonly ours?: string };

/** Holds a figure to what is printed, or to the disagreement that is listed. */
function checkRow(actual: Decimal, { prints, ours }: Row, source: Source, formula: Formula, range?: Range): void {
  if (ours === undefined) check(actual, prints, source, formula);
  else checkApart(actual, { prints, ours }, source, formula, range);
}
const interestByMonths = "seasonReport: operating interest";
const averageOf = "seasonReport: average price";
const dryYield = "seasonReport: yield at standard moisture";

const oneAcre = (crop = "| Corn | 4.00 |") => `
  Crops
  | Crop | Expected price |
  ${crop}
  Fields
  | Field | Crop | Acres | Yield goal |
  | One   | Corn | 1     | 100        |`;

describe("operating interest by months", () => {
  it.each(operatingInterest)("is $prints on $spent at $rate % for $months months ($id)", ({ id, spent, rate, months, prints }) => {
    const { crops } = reportOf(`${oneAcre()}
      Season
      | Setting                 | Value     |
      | Operating interest rate | ${rate}%  |
      | Interest method         | months    |
      | Interest months         | ${months} |
      Other costs
      | Item   | Kind            | Amount   | Basis    |
      | Inputs | other operating | ${spent} | per acre |`);
    check(new Decimal(crops[0]!.plan.costPerAcre.byKind["operating interest"]!), prints, sources[id], interestByMonths);
  });
});

describe("an item's average price", () => {
  const used = (lots: readonly (readonly [string, string])[], priced: "Amount" | "Unit price", quantity: string) =>
    reportOf(`${oneAcre()}
    Items
    | Item   | Kind     | Pack unit | Charged |
    | Things | supplies | each      | as used |
    Purchases
    | Date       | Item   | Quantity | Unit | ${priced} |
    ${lots.map(([bought, cost]) => `| 2031-04-01 | Things | ${bought} | each | ${cost} |`).join("\n")}
    Applications
    | Field | Item   | Rate        | Rate unit | Status |
    | One   | Things | ${quantity} | each/ac   | done   |`);

  it("charges what is used and leaves the rest, as an accounting problem prints", () => {
    const of = averageCost.whole;
    const { crops, items } = used([[of.quantity, of.amount]], "Amount", of.used);
    const source = sources["I05 average cost"];
    check(new Decimal(items[0]!.averagePrice!), of.unit, source, averageOf, "a unit");
    check(new Decimal(crops[0]!.outlook.costPerAcre.byKind["supplies"]!), of.cost, source, averageOf, "used");
    check(new Decimal(items[0]!.left!), of.left, source, averageOf, "left");
    check(new Decimal(items[0]!.left!).times(items[0]!.averagePrice!), of.leftValue, source, averageOf, "what is left is worth");
  });
  it("is carried as value and quantity, where a source that cuts it is 26 cents off", () => {
    const of = averageCost.twoLots;
    const { crops, items } = used(of.lots, "Unit price", of.used);
    expect(new Decimal(items[0]!.averagePrice!).toFixed(4)).toBe(of.unit);
    checkRow(new Decimal(crops[0]!.outlook.costPerAcre.byKind["supplies"]!), of, sources[of.id], averageOf);
  });
});

describe("a nutrient", () => {
  it.each(nutrientPrices)("costs $prints a pound in $product at $price a ton", ({ product, price, nutrient, prints }) => {
    const { crops } = reportOf(`${oneAcre()}
      Items
      | Item    | Kind       | Pack unit | Plan price per pack | Analysis N-P-K |
      | Product | fertilizer | ton       | ${price}            | ${product}     |
      Applications
      | Field | Item    | Rate | Rate unit         | Status |
      | One   | Product | 1    | lb ${nutrient}/ac | plan   |`);
    const perPound = new Decimal(crops[0]!.plan.costPerAcre.byKind["fertilizer"]!);
    check(perPound, prints, sources["nutrient prices"], "seasonReport: price of a nutrient");
  });
});

describe("a unit of seed", () => {
  const planted = (acres: string, rate: string, price: string) =>
    reportOf(`
    Crops
    | Crop | Expected price |
    | Corn | 4.00           |
    Fields
    | Field | Crop | Acres    | Yield goal |
    | One   | Corn | ${acres} | 200        |
    Items
    | Item | Kind | Pack name | Pack size    | Pack unit | Plan price per pack |
    | Seed | seed | unit      | ${seed.pack} | seeds     | ${price}            |
    Applications
    | Field | Item | Rate    | Rate unit | Status |
    | One   | Seed | ${rate} | seeds/ac  | plan   |`);

  it("plants as many acres as printed", () => {
    const units = planted(seed.acres, seed.rate, seed.cost.price).items[0]!.needed!;
    check(new Decimal(units), "1", sources[seed.cost.id], "seasonReport: needed");
  });
  it("costs an acre what its price, printed to the dollar, gives", () => {
    const { rate, price, id } = seed.cost;
    const range = rangeOver([price], (unitPrice) => unitPrice.times(rate).div(seed.pack));
    const perAcre = new Decimal(planted("1", rate, price).crops[0]!.plan.costPerAcre.byKind["seed"]!);
    checkRow(perAcre, seed.cost, sources[id], "seasonReport: cost of seed", range);
  });
});

/** Yields of loads of grain, one field of an acre each, as the harvest table brings them to standard moisture. */
function harvested(
  crop: { unit: string; weight?: string; standard: string },
  loads: readonly { weight: string; unit: string; moisture: string }[],
): readonly Decimal[] {
  const { fields } = reportOf(`
    Crops
    | Crop | Yield unit   | Weight per bu          | Standard moisture | Expected price |
    | Crop | ${crop.unit} | ${crop.weight ?? ""}   | ${crop.standard}  | 4.00           |
    Fields
    | Field | Crop | Acres | Yield goal | Harvest done |
    ${loads.map((_, index) => `| Field ${index} | Crop | 1 | 100 | yes |`).join("\n")}
    Harvest
    | Field | Date | Weight or bushels | Unit | Moisture |
    ${loads.map((load, index) => `| Field ${index} | 2031-10-01 | ${load.weight} | ${load.unit} | ${load.moisture} |`).join("\n")}`);
  return fields.map((field) => new Decimal(field.final!.yield.used!));
}

describe.each(equivalentWeights)("the printed weights of wet $crop", ({ id, weight, standard, rows }) => {
  it.each(rows as readonly (Row & { readonly moisture: string })[])("hold a bushel at $moisture %", (row) => {
    const [bushels] = harvested({ unit: "bu", weight, standard }, [{ weight: "1000", unit: "lb", moisture: row.moisture }]);
    checkRow(new Decimal("1000").div(bushels!), row, sources[id], dryYield);
  });
});

describe("shrink to standard moisture", () => {
  const lost = (weight: string, moisture: string, standard: string) =>
    new Decimal("100")
      .times(new Decimal(weight).minus(harvested({ unit: "lb", standard }, [{ weight, unit: "lb", moisture }])[0]!))
      .div(weight);

  it.each(shrink.rows as readonly (Row & { readonly standard: string })[])("is $prints % for the first point above $standard", (row) => {
    checkRow(lost("1000", new Decimal(row.standard).plus("1").toFixed(), row.standard), row, sources[shrink.id], dryYield);
  });
  it("is the printed part from 25 to 15.5 %", () => {
    const { moisture, standard, prints } = shrink.whole;
    check(lost("1000", moisture, standard), prints, sources[shrink.id], dryYield);
  });
  it("keeps the dry matter, on the wet basis", () => {
    const { weight, moisture, standard, id } = shrink.wetBasis;
    const [kept] = harvested({ unit: "lb", standard }, [{ weight, unit: "lb", moisture }]);
    checkRow(kept!, shrink.wetBasis, sources[id], dryYield);
    expect(kept!.times("0.845").toFixed(3)).toBe("8000.000");
  });
});

describe("a tonne", () => {
  it.each(bushelsPerTonne)("is $prints bushels of $crop", ({ weight, prints }) => {
    const [bushels] = harvested({ unit: "bu", weight, standard: "15" }, [{ weight: "1", unit: "t", moisture: "15" }]);
    check(bushels!, prints, sources["bushels in a tonne"], dryYield);
  });
});

describe("drying", () => {
  it.each(drying)("costs $prints a bushel for $points points at $perPoint", ({ perPoint, points, prints }) => {
    const { crops } = reportOf(`
      Season
      | Setting                 | Value       |
      | Drying charge per point | ${perPoint} |
      Crops
      | Crop | Expected price | Standard moisture | Expected harvest moisture                  |
      | Corn | 4.00           | 15                | ${new Decimal(points).plus("15").toFixed()} |
      Fields
      | Field | Crop | Acres | Yield goal |
      | One   | Corn | 1     | 100        |`);
    check(new Decimal(crops[0]!.plan.costPerUnit["operating"]!), prints, sources["drying a bushel"], "seasonReport: drying");
  });
});

describe("the average price of sales", () => {
  it("is weighted by what is sold at each", () => {
    const { crops } = reportOf(`${oneAcre()}
      Sales
      | Crop | Date | Quantity | Price |
      ${stagedSales.sales.map(([quantity, price]) => `| Corn | 2031-06-01 | ${quantity} | ${price} |`).join("\n")}`);
    check(new Decimal(crops[0]!.sales.averagePrice!), stagedSales.prints, sources["AgWeb 2010"], "seasonReport: average price of sales");
  });
});

checksPage("Rules of a season");
