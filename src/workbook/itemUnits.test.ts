import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { readSeason } from "./readSeason";

const fields =
  "Crops\n| Crop | Expected price |\n| Corn | 4 |\nFields\n| Field | Crop | Acres | Yield goal |\n| Alder | Corn | 100 | 200 |\n";

/** Purchases and applications of one item, as quantities in its base unit. */
function read({
  item,
  bought = [],
  used = [],
  areaUnit = "ac",
}: {
  item: string;
  bought?: readonly string[];
  used?: readonly string[];
  areaUnit?: string;
}) {
  const { season, problems } = readSeason(
    contentFromText(`${fields}Season
| Setting | Value |
| Area unit | ${areaUnit} |
Items
| Item | Kind | Pack name | Pack size | Pack unit | Density | Analysis N-P-K |
| Thing | ${item} |
Purchases
| Date | Item | Quantity | Unit | Amount |
${bought.map((quantity) => `| 2031-03-01 | Thing | ${quantity} | 100 |`).join("\n")}
Applications
| Field | Item | Rate | Rate unit | Status |
${used.map((rate) => `| Alder | Thing | ${rate} | plan |`).join("\n")}`),
  );
  return {
    bought: season.purchases.map(({ quantity }) => quantity.toSignificantDigits(12).toFixed()),
    used: season.applications.map(({ rate }) => rate.toSignificantDigits(12).toFixed()),
    problems: problems.filter(({ code }) => code !== "no-price" && code !== "no-plan-price").map(({ code, at }) => `${code} ${at.table}`),
  };
}

const seed = "seed | bag | 80000 | seeds | | ";

describe("quantities of an item", () => {
  it("are bags where seed is bought by the unit, as the trade calls a bag", () => {
    expect(
      read({ item: seed, bought: ["90 | units", "90 | bags", "90 | each", "90 | packs", "7200000 | seeds", "7200 | thousand seeds"] })
        .bought,
    ).toEqual(["7200000", "7200000", "7200000", "7200000", "7200000", "7200000"]);
  });

  it("are refused where seed has no pack, so that a unit could be a bag or a kernel", () => {
    expect(read({ item: "seed | | | seeds | | ", bought: ["90 | units"] }).problems).toEqual(["unit-not-convertible Purchases"]);
    expect(read({ item: "seed | | | | | ", bought: ["90 | units"], used: ["34000 | seeds/ac"] }).problems).toEqual([
      "unit-not-convertible Applications",
    ]);
  });

  it("are pieces where the pack is so many pieces", () => {
    expect(read({ item: "supplies | box | 12 | each | | ", bought: ["3 | boxes", "5 | each", "5 | pcs"] }).bought).toEqual([
      "36",
      "5",
      "5",
    ]);
  });

  it("know how many pounds a ton is, and do not know how much a jug holds", () => {
    expect(read({ item: "fertilizer | ton | | lb | | ", bought: ["2 | ton"], used: ["150 | lb/ac"] })).toEqual({
      bought: ["4000"],
      used: ["150"],
      problems: [],
    });
    expect(read({ item: "crop protection | jug | | gal | | ", bought: ["2 | jug"] }).problems).toEqual(["pack-incomplete Items"]);
  });

  it("are dry ounces of what is weighed, and pounds where a pack is called by its unit", () => {
    expect(read({ item: "crop protection | | | lb | | ", bought: ["10 | oz"], used: ["8 | oz/ac"] })).toEqual({
      bought: ["0.625"],
      used: ["0.5"],
      problems: [],
    });
    expect(read({ item: "fertilizer | lb | | lb | | ", bought: ["5 | lb", "5 | lbs"] }).bought).toEqual(["5", "5"]);
  });

  it("take a bare density in pounds a gallon, or kilograms a litre where areas are hectares, above nothing", () => {
    expect(read({ item: "fertilizer | | | L | 1.28 | ", bought: ["128 | kg"], areaUnit: "ha" })).toEqual({
      bought: ["100"],
      used: [],
      problems: [],
    });
    expect(read({ item: "fertilizer | | | gal | 10 | ", bought: ["20 | lb"] }).bought).toEqual(["2"]);
    expect(read({ item: "fertilizer | | | gal | 0 | ", bought: [] }).problems).toEqual(["not-above-zero Items"]);
  });

  it("go between weight and volume by the density, and to a nutrient by the analysis", () => {
    // 10.7 lb/gal: 2,000 lb are 186.9158… gal; the ten ounces cost as much and are told. 28 lb of N are 100 lb of a product with 28 %.
    expect(
      read({
        item: "fertilizer | | | gal | 10.7 | 28-0-0",
        bought: ["1 | ton", "10 | oz"],
        used: ["28 | lb N/ac", "28 | lbs of N per acre", "28 | lb actual N/ac"],
      }),
    ).toEqual({
      bought: ["186.91588785", "0.078125"],
      used: ["9.34579439252", "9.34579439252", "9.34579439252"],
      problems: ["price-unlike Purchases"],
    });
  });

  it("take a rate per acre into a workbook of hectares by the international acre", () => {
    // 100 lb/ac × 0.45359237 kg ÷ 0.40468564224 ha (both exact by definition).
    expect(read({ item: "fertilizer | | | kg | | ", used: ["100 | lb/ac", "100 | kg/ha", "100 | kg"], areaUnit: "ha" }).used).toEqual([
      "112.085115619",
      "100",
      "100",
    ]);
  });
});
