/** Purchases, applications, other costs, crops and fields as they are read, row by row. */
import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { readSeason } from "../readSeason";

const farm = `Crops
| Crop | Expected price |
| Corn | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
| Birch | Corn | 50 | 160 |
`;
const items = "Items\n| Item | Kind | Pack unit | Plan price per pack |\n| Urea | fertilizer | lb | 0.30 |\n";
const read = (tables: string) => {
  const { season, problems } = readSeason(contentFromText(tables));
  const faults = problems
    .filter(
      ({ code }) =>
        code !== "no-price" && code !== "no-plan-price" && code !== "nothing-bought" && code !== "date-missing" && code !== "line-twice",
    )
    .map(
      ({ code, at, touches }) =>
        `${code} ${at.column ?? "row"}: ${touches.map((subject) => ("name" in subject ? subject.name : subject.of)).join(", ")}`,
    );
  return { season, faults };
};

describe("a purchase", () => {
  const bought = (...rows: readonly string[]) =>
    read(
      `${farm}${items}Purchases\n| Date | Item | Quantity | Unit | Unit price | Amount | Freight | Rebate | Paid on |\n` +
        `${rows.map((row) => `| ${row} |`).join("\n")}`,
    );

  it("comes to its amount or its price, is paid when it says or at its date, and has no freight that is not entered", () => {
    const { season, faults } = bought(
      "2031-03-01 | Urea | 2000 | lb | 0.31 | | | | 2031-12-15",
      "2031-03-02 | Urea | 1 | ton | | 620 | 40 | 25 |",
    );
    expect(faults).toEqual([]);
    expect(
      season.purchases.map(({ quantity, amount, freight, rebate, paidOn }) =>
        [quantity, amount, freight, rebate].map(String).concat(paidOn),
      ),
    ).toEqual([
      ["2000", "620", "0", "0", "2031-12-15"],
      ["2000", "620", "40", "25", "2031-03-02"],
    ]);
  });

  it("is taken off for a return, whatever sign its amount has, to the cent", () => {
    const amounts = bought(
      "2031-03-01 | Urea | -2 | lb | | 0.60 | | |",
      "2031-03-01 | Urea | -2 | lb | | -0.60 | | |",
      "2031-03-01 | Urea | -2 | lb | 0.3 | 0.60 | | |",
      "2031-03-01 | Urea | -2 | lb | 0.30 | | | |",
    );
    expect(amounts.faults).toEqual([]);
    expect(amounts.season.purchases.map(({ amount }) => amount.toFixed())).toEqual(["-0.6", "-0.6", "-0.6", "-0.6"]);
  });

  it("tells a price and an amount that disagree, and a row without either once", () => {
    expect(bought("2031-03-01 | Urea | 100 | lb | 0.31 | 31.00 | | |", "2031-03-01 | Urea | 100 | lb | 0.31 | 31.01 | | |").faults).toEqual(
      ["amount-disagrees Amount: Urea"],
    );
    expect(bought("2031-03-01 | Urea | 100 | lb | | | | |").faults).toEqual([expect.stringMatching(/^amount-missing/)]);
    expect(bought("2031-03-01 | Urea | 100 | lb | | abc | | |").faults).toEqual([expect.stringMatching(/^not-a-number Amount/)]);
    expect(bought("2031-03-01 | Urea | 100 | lb | abc | | | |").faults).toEqual([expect.stringMatching(/^not-a-number Unit price/)]);
  });

  it("is left out without its date, item, quantity or unit", () => {
    const { season, faults } = bought(
      "| Urea | 100 | lb | 1 | | | |",
      "2031-03-01 | | 100 | lb | 1 | | | |",
      "2031-03-01 | Urea | | lb | 1 | | | |",
      "2031-03-01 | Urea | 100 | | 1 | | | |",
    );
    expect(season.purchases).toEqual([]);
    expect(faults.map((fault) => /^\w+ (\w+)/.exec(fault)![1])).toEqual(["Date", "Item", "Quantity", "Unit"]);
  });
});

describe("an application", () => {
  const used = (...rows: readonly string[]) =>
    read(
      `${farm}${items}Applications\n| Field or Crop | Item | Rate | Rate unit | Acres | Status |\n` +
        `${rows.map((row) => `| ${row} |`).join("\n")}`,
    );

  it("is told where it goes over more acres than there are, and not where it goes over all", () => {
    expect(used("Alder | Urea | 100 | lb/ac | 100 | plan", "Corn | Urea | 100 | lb/ac | 150 | plan").faults).toEqual([]);
    expect(used("Alder | Urea | 100 | lb/ac | 101 | plan").faults).toEqual(["area-too-large Acres: Alder, Urea"]);
  });

  it("is left out without its place, item, rate, unit or status, and names the item that it touches", () => {
    const { season, faults } = used(
      "| Urea | 100 | lb/ac | | plan",
      "Alder | | 100 | lb/ac | | plan",
      "Alder | Urea | | lb/ac | | plan",
      "Alder | Urea | 100 | | | plan",
      "Alder | Urea | 100 | lb/ac | |",
    );
    expect(season.applications).toEqual([]);
    expect(faults).toHaveLength(5);
    expect(faults.slice(2).every((fault) => fault.endsWith(": Alder, Urea"))).toBe(true);
  });
});

describe("another cost", () => {
  const costs = (...rows: readonly string[]) =>
    read(
      `${farm}Other costs\n| Item | Kind | Amount | Basis | Shared over | Cash | Month |\n${rows.map((row) => `| ${row} |`).join("\n")}`,
    );

  it("is shared over all, a crop or a field, by acres unless it says by revenue", () => {
    const { season, faults } = costs(
      "Office | overhead | 900 | whole farm | | | 2031-07",
      "Advice | overhead | 9 | per acre | Corn by revenue | no |",
      "Storage | haul | 0.05 | per bu | Alder, by acres | yes |",
      "Farm | overhead | 1 | whole farm | whole farm by revenue | |",
    );
    expect(faults).toEqual([]);
    expect(season.otherCosts.map(({ basis, over, by, cash, paidOn }) => [basis, over, by, cash, paidOn])).toEqual([
      ["whole farm", { all: true }, "acres", true, "2031-07-01"],
      ["per acre", { crop: "Corn" }, "revenue", false, null],
      ["per unit of yield", { field: "Alder" }, "acres", true, null],
      ["whole farm", { all: true }, "revenue", true, null],
    ]);
  });

  it("says which field or crop a fault touches, and what a name may have meant", () => {
    expect(
      costs(
        "Office | overhead | abc | whole farm | Alder | |",
        "Office | overhead | abc | whole farm | Corn | |",
        "Office | overhead | abc | whole farm | all | |",
      ).faults,
    ).toEqual(["not-a-number Amount: Alder", "not-a-number Amount: Corn", "not-a-number Amount: farm"]);
    const { problems } = readSeason(
      contentFromText(
        `${farm}Other costs\n| Item | Kind | Amount | Basis | Shared over |\n| Office | overhead | 9 | whole farm | Aldr |\n| ` +
          "Office | overhead | 9 | whole farm | Corm |",
      ),
    );
    expect(problems.map(({ code, like }) => `${code} ${like}`)).toEqual(["unknown-name Alder", "unknown-name Corn"]);
  });

  it("is left out without its item, kind, amount or basis", () => {
    const { season, faults } = costs(
      "| overhead | 9 | whole farm | | |",
      "Office | | 9 | whole farm | | |",
      "Office | overhead | | whole farm | | |",
      "Office | overhead | 9 | | | |",
    );
    expect(season.otherCosts).toEqual([]);
    expect(faults.map((fault) => /^[\w-]+ (\w+)/.exec(fault)![1])).toEqual(["Item", "Kind", "Amount", "Basis"]);
  });
});

describe("a crop", () => {
  const crops = (...rows: readonly string[]) =>
    read(
      "Crops\n| Crop | Yield unit | Expected price | Low price | Per-unit selling cost | Other income per acre |\n" +
        `${rows.map((row) => `| ${row} |`).join("\n")}`,
    );

  it("costs nothing to sell and brings nothing else unless it says so", () => {
    const { season } = crops("Corn | bu/ac | 4 | | |", "Wheat | ton | 200 | 180 | 3 | 12");
    expect(
      season.crops.map(({ yieldUnit, sellingCostPerUnit, otherIncomePerArea, lowPrice }) => [
        yieldUnit,
        ...[sellingCostPerUnit, otherIncomePerArea, lowPrice].map(String),
      ]),
    ).toEqual([
      ["bu", "0", "0", "null"],
      ["ton", "3", "12", "180"],
    ]);
  });

  it("is what its faults touch, or the farm where it has no name", () => {
    expect(crops("Corn | bu | 4 | abc | |", "| bu | 4 | | |").faults.filter((fault) => !fault.startsWith("table-missing"))).toEqual([
      "not-a-number Low price: Corn",
      "blank Crop: farm",
    ]);
  });
});

describe("the land of a field", () => {
  const land = (row: string) => {
    const { season, faults } = read(
      "Crops\n| Crop | Expected price |\n| Corn | 4 |\nFields\n| Field | Crop | Acres | Yield goal | Tenure | Rent per acre | Land " +
        `charge per acre | Operator share of crop % |\n| Alder | Corn | 100 | 200 | ${row} |`,
    );
    return [season.fields[0]!.tenure, ...faults.map((fault) => fault.split(":")[0])];
  };

  it("follows from a share, a rent or neither where no tenure is said", () => {
    expect([land("| | |"), land("| 250 | |"), land("| 0 | |"), land("| | | 60"), land("| 100 | | 60"), land("| | 180 | 100")]).toEqual([
      ["owned"],
      ["cash rent"],
      ["owned"],
      ["crop share"],
      ["crop share", "tenure-conflict Rent per acre"],
      ["owned"],
    ]);
  });

  it("is told where what is entered does not go together", () => {
    expect([
      land("owned | 250 | |"),
      land("owned | 0 | 180 |"),
      land("owned | | | 60"),
      land("cash rent | 250 | 180 |"),
      land("cash rent | 250 | 0 | 100"),
      land("cash rent | | |"),
      land("crop share | | |"),
    ]).toEqual([
      ["owned", "tenure-conflict Rent per acre"],
      ["owned"],
      ["owned", "tenure-conflict Operator share of crop %"],
      ["cash rent", "tenure-conflict Land charge per acre"],
      ["cash rent"],
      ["cash rent", "rent-missing Rent per acre"],
      ["crop share", "share-missing Operator share of crop %"],
    ]);
  });

  describe("under a flexible rent", () => {
    const flexible = (row: string) => {
      const { season, faults } = read(
        "Crops\n| Crop | Expected price |\n| Corn | 4 |\nFields\n| Field | Crop | Acres | Yield goal | Tenure | Rent per acre | Base " +
          "gross per acre | Share above base % | Most rent | Operator share of crop % | Land charge per acre |\n" +
          `| Alder | Corn | 100 | 200 | ${row} |`,
      );
      const [field] = season.fields;
      const terms = field!.flexibleRent;
      const told = terms ? [terms.baseGross, terms.shareAbove, terms.most].map((each) => each?.toFixed() ?? "none") : [];
      return [field!.tenure, field!.rentPerArea?.toFixed() ?? "none", ...told, ...faults.map((fault) => fault.split(":")[0])];
    };

    it("has base, base gross, share and the most that is paid", () => {
      expect(flexible("flexible rent | 200 | 720 | 40 | 400 | |")).toEqual(["flexible rent", "200", "720", "0.4", "400"]);
      expect(flexible("Flexible Rent | 0 | 0 | 30% | | 100 |")).toEqual(["flexible rent", "0", "0", "0.3", "none"]);
    });

    it("follows from its terms where no tenure is said, and a share of the crop comes first", () => {
      expect(flexible("| 200 | 720 | 40 | | |")).toEqual(["flexible rent", "200", "720", "0.4", "none"]);
      expect(flexible("| | 720 | 40 | | 60 |")[0]).toBe("crop share");
      expect(flexible("| 200 | 0 | 0 | | |")).toEqual(["cash rent", "200"]);
    });

    it("is told where terms are missing or do not go together, and the base rent counts alone", () => {
      expect(flexible("flexible rent | | 720 | 40 | | |")).toEqual([
        "flexible rent",
        "none",
        "720",
        "0.4",
        "none",
        "rent-missing Rent per acre",
      ]);
      expect(flexible("flexible rent | 200 | | | | |")).toEqual([
        "flexible rent",
        "200",
        "rent-terms-missing Base gross per acre",
        "rent-terms-missing Share above base %",
      ]);
      expect(flexible("flexible rent | 200 | 720 | 140 | | |")).toEqual(["flexible rent", "200", "percent-range Share above base %"]);
      expect(flexible("flexible rent | 200 | 720 | 40 | 199.99 | |")).toEqual(["flexible rent", "200", "most-rent-low Most rent"]);
      expect(flexible("flexible rent | 200 | 720 | 40 | 200 | |")).toEqual(["flexible rent", "200", "720", "0.4", "200"]);
      expect(flexible("flexible rent | 200 | 720 | 40 | some | |")).toEqual(["flexible rent", "200", "not-a-number Most rent"]);
      expect(flexible("flexible rent | 200 | 720 | 40 | | 60 | 150")).toEqual([
        "flexible rent",
        "200",
        "720",
        "0.4",
        "none",
        "tenure-conflict Land charge per acre",
        "tenure-conflict Operator share of crop %",
      ]);
    });

    it.each(["owned", "cash rent", "crop share"])("tells its terms on land that is held as %s, and counts none of them", (tenure) => {
      const [rent, part] = [tenure === "cash rent" ? "200" : "", tenure === "crop share" ? "60" : ""];
      expect(flexible(`${tenure} | ${rent} | 720 | 40 | 400 | ${part} |`)).toEqual([
        tenure,
        rent === "" ? "none" : rent,
        "tenure-conflict Base gross per acre",
        "tenure-conflict Share above base %",
        "tenure-conflict Most rent",
      ]);
    });
  });
});
