/** Entries as people type them: understood where they can mean one thing only, else told. */
import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { readSeason } from "./readSeason";

type Told = { readonly season: ReturnType<typeof readSeason>["season"]; readonly told: readonly string[] };
function read(tables: string, season = "| Season year | 2031 |"): Told {
  const { season: entries, problems } = readSeason(contentFromText(`Season\n| Setting | Value |\n${season}\n${tables}`));
  return { season: entries, told: problems.map(({ code, at }) => `${code} ${at.table} ${at.column ?? ""}`.trim()) };
}
const hectares = "| Season year | 2031 |\n| Area unit | ha |";
const farm =
  "Crops\n| Crop | Yield unit | Expected price | Per-unit selling cost |\n| Corn | bu | 4 | 0.1 |\nFields\n| Field | Crop | Acres | " +
  "Yield goal |\n| Alder | Corn | 100 | 200 |\n";
const items =
  "Items\n| Item | Kind | Pack name | Pack size | Pack unit | Plan price per pack |\n| Killer | herbicide | jug | 2.5 | gal | 130 |\n" +
  "| Urea | fert | | | lb | 0.3 |\n";

describe("a number", () => {
  const goal = (typed: string, season?: string) => {
    const {
      season: { fields },
      told,
    } = read(farm.replace("| 200 |", `| ${typed} |`), season);
    return told.length > 0 ? told.join() : fields[0]!.yieldGoal.toFixed();
  };
  it("may be a fraction, or a whole and a fraction", () => {
    expect(["1/2", "3 1/2", "3-1/2", "190½", "-1/2", "5/0", "3 5/4"].map((each) => goal(each))).toEqual([
      "0.5",
      "3.5",
      "3.5",
      "190.5",
      "negative Fields Yield goal",
      "not-a-number Fields Yield goal",
      "not-a-number Fields Yield goal",
    ]);
  });

  it("beyond what money can be is told and never worked with", () => {
    const beyond = "number-beyond Fields Yield goal";
    expect(
      ["1e9000000", `1e${"9".repeat(400)}`, "1e-9000000", "9".repeat(5000), "1e15", "999999999999999", "0e999999"].map((each) =>
        goal(each),
      ),
    ).toEqual([beyond, beyond, beyond, beyond, beyond, "999999999999999", "0"]);
  });
});

describe("a number with the unit of its column", () => {
  const field = (acres: string, width: string, season?: string) => {
    const {
      season: { fields },
      told,
    } = read(
      farm.replace("| Yield goal |", "| Yield goal | Row width |").replace("| 100 | 200 |", `| ${acres} | 200 | ${width} |`),
      season,
    );
    return told.length > 0 ? told.join() : `${fields[0]!.area.toFixed()} ${fields[0]!.rowWidth?.toFixed() ?? ""}`.trim();
  };

  it("is understood", () => {
    expect([field("152 ac", '30"'), field("152.5 acres", "30 in"), field("1,152 ac", "15 inches")]).toEqual([
      "152 30",
      "152.5 30",
      "1152 15",
    ]);
    expect(field("60 ha", "75 cm", hectares)).toBe("60 75");
  });

  it("is told where the unit is another", () => {
    expect([field("60 ha", "30"), field("152", "75 cm"), field("about 152 ac", "30")]).toEqual([
      "not-a-number Fields Acres",
      "not-a-number Fields Row width",
      "not-a-number Fields Acres",
    ]);
    expect(field("152 ac", "", hectares)).toBe("not-a-number Fields Acres");
  });
});

describe("a quantity with its unit", () => {
  const bought = (quantity: string, unit: string) => {
    const { season, told } = read(
      `${farm}${items}Purchases\n| Date | Item | Quantity | Unit | Unit price |\n| 2031-04-01 | Killer | ${quantity} | ${unit} | 130 |\n`,
    );
    return told.length > 0 ? told.join() : `${season.purchases[0]!.quantity.toFixed()} for ${season.purchases[0]!.amount.toFixed()}`;
  };
  const used = (rate: string, unit: string) => {
    const { season, told } = read(
      `${farm}${items}Applications\n| Field or Crop | Item | Rate | Rate unit | Date | Status |\n| Corn | Killer | ${rate} | ` +
        `${unit} | 2031-05-20 | planned |\n`,
    );
    return told.length > 0 ? told.join() : season.applications[0]!.rate.toFixed();
  };

  it("is understood where the unit has no cell of its own, or the same: 2 jugs of 2.5 gal are 5 gal for 260", () => {
    expect([bought("2 jugs", ""), bought("2 jugs", "jug"), bought("2", "jugs")]).toEqual(["5 for 260", "5 for 260", "5 for 260"]);
    // 32 of the 128 fluid ounces of a gallon.
    expect([used("32 oz/ac", ""), used("32 oz/ac", "oz/ac"), used("32", "oz/ac"), used("1 qt", "")]).toEqual([
      "0.25",
      "0.25",
      "0.25",
      "0.25",
    ]);
  });

  it("is told where its two units disagree", () => {
    expect(bought("2 jugs", "gal")).toBe("not-a-number Purchases Quantity");
    expect(used("32 oz/ac", "gal/ac")).toBe("not-a-number Applications Rate");
    expect(bought("2", "")).toBe("blank Purchases Unit");
    expect(bought("two", "jug")).toBe("not-a-number Purchases Quantity");
  });
});

describe("a word", () => {
  it("is understood where it can mean only one of the list", () => {
    const { season, told } = read(`${farm}${items}Operations\n| Field or Crop | Operation | Rate | Basis | Date | Status | Kind |
| Alder | Spraying | 9 | /ac | 2031-05-20 | planned | custom |\n| Alder | Tiling | 900 | total | 2031-05-20 | completed | repair |
Other costs\n| Item | Kind | Amount | Basis | Cash |\n| Office | overhead | 900 | total | y |\n| Land | property tax | 30 | acre | true |\n`);
    expect(told).toEqual([]);
    expect(season.items.map(({ kind }) => kind)).toEqual(["crop protection", "fertilizer"]);
    expect(season.operations.map(({ status, kind, cost }) => [status, kind, cost.basis])).toEqual([
      ["plan", "custom work", "per acre"],
      ["done", "repairs", "lump sum"],
    ]);
    expect(season.otherCosts.map(({ kind, basis, cash }) => [kind, basis, cash])).toEqual([
      ["overhead", "whole farm", true],
      ["land tax", "per acre", true],
    ]);
  });

  it("is told where it may mean more than one, or nothing", () => {
    const kind = (typed: string) =>
      read(`${farm}Other costs\n| Item | Kind | Amount | Basis |\n| Something | ${typed} | 900 | whole farm |\n`).told;
    expect([kind("interest"), kind("insurance"), kind("labour")]).toEqual(Array(3).fill(["not-in-list Other costs Kind"]));
  });
});

describe("a date", () => {
  const planned = (typed: string, season?: string) => {
    const {
      season: { fields },
      told,
    } = read(farm.replace("| Yield goal |", "| Yield goal | Planned planting date |").replace("| 200 |", `| 200 | ${typed} |`), season);
    return told.length > 0 ? told.join() : fields[0]!.plannedPlanting;
  };

  it("may be eight figures, as a number and as text", () => {
    expect([planned("20310502"), planned("'20310502"), planned("20311302")]).toEqual([
      "2031-05-02",
      "2031-05-02",
      "not-a-date Fields Planned planting date",
    ]);
  });

  it("without a year is of the season's year", () => {
    expect([planned("5/3"), planned("May 3"), planned("3 May"), planned("13/5")]).toEqual([
      "2031-05-03",
      "2031-05-03",
      "2031-05-03",
      "2031-05-13",
    ]);
    expect(planned("5/3", "| Season year | 2031 |\n| Decimal comma | yes |")).toBe("2031-03-05");
    expect(planned("5/3", "| Currency | USD |")).toBe("not-a-date Fields Planned planting date");
  });
});

describe("a ton", () => {
  const quantity = (season: string | undefined, packUnit: string, unit: string) => {
    const {
      season: { purchases },
      told,
    } = read(
      `${farm}Items\n| Item | Kind | Pack unit | Plan price per pack |\n| Lime | fertilizer | ${packUnit} | 0.1 |\nPurchases\n| ` +
        `Date | Item | Quantity | Unit | Unit price |\n| 2031-04-01 | Lime | 3 | ${unit} | 100 |\n`,
      season,
    );
    return told.length > 0 ? told.join() : purchases[0]!.quantity.toDecimalPlaces(4).toFixed();
  };

  it("is 2,000 lb in a workbook of acres and a tonne in one of hectares", () => {
    expect([
      quantity(undefined, "lb", "ton"),
      quantity(hectares, "kg", "ton"),
      quantity(hectares, "t", "tons"),
      quantity(hectares, "ton", "ton"),
      quantity(hectares, "ton", "kg"),
    ]).toEqual(["6000", "3000", "3", "3", "0.003"]);
  });

  it("is told on hectares where the item is counted in pounds, and not where it says which", () => {
    expect([quantity(hectares, "lb", "ton"), quantity(hectares, "lb", "short ton"), quantity(hectares, "kg", "short ton")]).toEqual([
      "ton-unclear Purchases Unit",
      "6000",
      "2721.5542",
    ]);
  });

  it("of grain goes by the same rule", () => {
    const sold = (season: string, yieldUnit: string) => {
      const {
        season: { crops, sales },
        told,
      } = read(
        `${farm.replace("| Corn | bu |", `| Corn | ${yieldUnit} |`)}Sales\n| Crop | Date | Quantity | Price | Unit |\n| Corn | ` +
          "2031-03-01 | 5 | 160 | ton |\n",
        season,
      );
      return told.length > 0 ? told.join() : `${sales[0]!.quantity.toFixed()} ${crops[0]!.yieldUnit}`;
    };
    expect([
      sold(hectares, "ton"),
      sold(hectares, "t"),
      sold(hectares, "kg"),
      sold(hectares, "lb"),
      sold("| Season year | 2031 |", "lb"),
    ]).toEqual(["5 t", "5 t", "5000 kg", "ton-unclear Sales Unit", "10000 lb"]);
  });
});

describe("a basis of an area", () => {
  const told = (basis: string, unit: string) =>
    read(
      `${farm}Operations\n| Field or Crop | Operation | Rate | Basis | Status |\n| Alder | Spraying | 9 | ${basis} | plan |
Other costs\n| Item | Kind | Amount | Basis |\n| Land | land tax | 30 | ${basis} |
Changes\n| Change | Quadrant | Item | Quantity | Price | Basis |\n| Trial | added costs | Pass | 1 | 9 | ${basis} |\n`,
      `| Season year | 2031 |\n| Area unit | ${unit} |`,
    ).told;
  const everywhere = ["Operations", "Other costs", "Changes"].map((table) => `basis-area ${table} Basis`);

  it("is told where it is not that of the season, in each table that has one: 9 an acre are 22.24 a hectare", () => {
    expect([told("per acre", "ha"), told("/ac", "ha"), told("per hectare", "ac"), told("per ha", "ac")]).toEqual(Array(4).fill(everywhere));
  });

  it("is understood where it is", () => {
    expect([told("per acre", "ac"), told("acre", "ac"), told("per hectare", "ha"), told("/ha", "ha"), told("ha", "ha")]).toEqual(
      Array(5).fill([]),
    );
  });
});

describe("a rate of interest between two fifths and one", () => {
  const content = contentFromText(
    "Season\n| Setting | Value |\n| Season year | 2031 |\n| Operating interest rate | 0.5 |\n| Interest method | by date |\n| " +
      `Repayment date | 2031-12-01 |\n${farm}Loans\n| Name | Kind | Balance | Rate |\n| Line | operating | 1000 | 0.5 |\n`,
  );
  const read = (shown: boolean) => {
    const percents = (table: string) => (table === "Season" ? [{ row: 1, column: 1 }] : table === "Loans" ? [{ row: 0, column: 3 }] : []);
    const { season, problems } = readSeason({
      ...content,
      tables: content.tables.map((table) => (shown ? { ...table, percents: percents(table.name) } : table)),
    });
    return [
      season.settings.operatingInterest?.rate.toFixed(),
      season.loans?.[0]?.rate.toFixed(),
      problems.map(({ code }) => code).filter((code) => code === "rate-unclear").length,
    ];
  };

  it("is what its cell shows: 0.5 shown as 50 % is fifty percent; as a plain number it is told", () => {
    expect(read(true)).toEqual(["0.5", "0.5", 0]);
    expect(read(false)).toEqual([undefined, undefined, 2]);
  });
});

describe("the season's year", () => {
  const year = (typed: string) => {
    const { season, told } = read(farm, `| Season year | ${typed} |`);
    return [season.settings.seasonYear, told.filter((each) => each.startsWith("not-a-date"))];
  };

  it("is four figures alone, or that of a date; five figures are told instead of being cut", () => {
    expect(["2031", "2031 season", "'2031-01-01", "47849"].map(year)).toEqual([
      ["2031", []],
      ["2031", []],
      ["2031", []],
      ["2031", []],
    ]);
    expect(year("203100")).toEqual([null, ["not-a-date Season Value"]]);
  });
});
