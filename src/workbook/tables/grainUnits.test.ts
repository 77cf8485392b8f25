import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { readSeason } from "../readSeason";

const farm = `
Crops
| Crop | Yield unit | Weight per bu | Standard moisture | Expected price |
| Corn | bu | 56 | 15.5 | 4 |
Fields
| Field | Crop | Acres | Yield goal | Harvest done |
| Alder | Corn | 100 | 200 | |
`;
const harvested = (row: string) =>
  readSeason(contentFromText(`${farm}Harvest\n| Field | Date | Weight or bushels | Unit | Moisture |\n| Alder | 2031-10-01 | ${row} |`))
    .season.harvest[0]!;
const sold = (row: string) =>
  readSeason(contentFromText(`${farm}Sales\n| Crop | Date | Quantity | Unit | Price | Delivery month |\n| Corn | 2031-10-15 | ${row} |`))
    .season.sales[0]!;

describe("a load of grain", () => {
  // 56,000 lb are 1,000 bu of 56 lb; at 20 % moisture they hold 800 bu of dry matter, and 84.5 % of a standard bushel is dry.
  it("is shrunk to standard moisture where it is wetter", () => {
    expect(harvested("56000 | lb | 20").quantity.times("0.845").toFixed(20)).toBe("800.00000000000000000000");
  });

  it("is not stretched where it is drier, nor where the moisture is standard", () => {
    expect([harvested("1000 | | 13").quantity.toFixed(), harvested("1000 | bu | 15.5").quantity.toFixed()]).toEqual(["1000", "1000"]);
  });

  it("has its moisture in points, whether it is typed as 20, 20% or 0.2", () => {
    expect([harvested("1 | | 20"), harvested("1 | | 20%"), harvested("1 | | 0.2")].map(({ moisture }) => moisture!.toFixed())).toEqual([
      "20",
      "20",
      "20",
    ]);
  });
});

describe("bushels", () => {
  const typed = (are: string, moisture: string) =>
    readSeason(
      contentFromText(
        `${farm}Harvest\n| Field | Date | Weight or bushels | Bushels are | Moisture | Test weight |\n| Alder | 2031-10-01 | 1000 | ` +
          `${are} | ${moisture} | 57.5 |`,
      ),
    ).season.harvest[0]!;
  const both = (are: string, moisture: string) => {
    const { wet, quantity } = typed(are, moisture);
    return [wet.toFixed(6), quantity.toFixed(6)];
  };
  it("are wet unless they are typed as dry, which are not shrunk again", () => {
    // 1,000 wet × 80 ÷ 84.5 = 946.745562 dry; 1,000 dry × 84.5 ÷ 80 = 1,056.25 wet.
    expect([both("", "20"), both("wet", "20"), both("Dry", "20"), both("dry", "14")]).toEqual([
      ["1000.000000", "946.745562"],
      ["1000.000000", "946.745562"],
      ["1056.250000", "1000.000000"],
      ["1000.000000", "1000.000000"],
    ]);
    expect(typed("", "20").testWeight!.toFixed()).toBe("57.5");
  });
  it("that are all water are a fault, because drying would leave nothing", () => {
    expect(
      readSeason(
        contentFromText(
          `${farm}Harvest\n| Field | Date | Weight or bushels | Bushels are | Moisture |\n| Alder | 2031-10-01 | 1000 | dry | 100 |`,
        ),
      ).problems.map(({ code }) => code),
    ).toEqual(["percent-range"]);
    const standard = (moisture: string) => readSeason(contentFromText(farm.replace("15.5", moisture)));
    for (const all of ["100", "100%", "1"]) {
      const { season, problems } = standard(all);
      expect([season.crops[0]!.standardMoisture, problems.map(({ code, at }) => [code, at.column])]).toEqual([
        null,
        [["percent-range", "Standard moisture"]],
      ]);
    }
    expect(standard("99").problems).toEqual([]);
  });
});

describe("grain that is entered with a fault", () => {
  const faults = (tables: string) =>
    readSeason(contentFromText(farm + tables)).problems.map(
      ({ code, at, touches }) =>
        `${code} ${at.column}: ${touches.map((subject) => ("name" in subject ? subject.name : subject.of)).join()}`,
    );
  it("names the field or the crop that it touches, or the farm where none is named", () => {
    expect(
      faults(
        "Harvest\n| Field | Date | Weight or bushels | Moisture |\n| Alder | 2031-10-01 | 900 | |\n| Alder | 2031-10-01 | 900 | wet " +
          "|\n| | 2031-10-01 | 900 | 16 |",
      ),
    ).toEqual(["blank Moisture: Alder", "not-a-number Moisture: Alder", "blank Field: farm"]);
    expect(faults("Sales\n| Crop | Date | Quantity | Price |\n| Corn | 2031-10-01 | | 4 |\n| | 2031-10-01 | 900 | 4 |")).toEqual([
      "blank Quantity: Corn",
      "blank Crop: farm",
    ]);
  });
});

describe("a sale", () => {
  it("by weight comes to the same money in bushels", () => {
    const { quantity, price } = sold("112 | lb | 0.08 |");
    expect([quantity.toFixed(20), price.toFixed(20)]).toEqual(["2.00000000000000000000", "4.48000000000000000000"]);
    const tonnes = sold("100 | t | 176 |");
    expect(tonnes.quantity.times(tonnes.price).toFixed(15)).toBe("17600.000000000000000");
    // 1,000 kg ÷ (56 × 0.45359237 kg): the pound is exact by definition.
    expect(tonnes.quantity.div("100").toFixed(6)).toBe("39.368261");
  });

  it("is delivered in the month named, the next one where that is over", () => {
    expect(
      [sold("1 | | 4 | October"), sold("1 | | 4 | November"), sold("1 | | 4 | March"), sold("1 | | 4 | Mar 2033"), sold("1 | | 4 |")].map(
        ({ delivered }) => delivered,
      ),
    ).toEqual(["2031-10-01", "2031-11-01", "2032-03-01", "2033-03-01", null]);
  });
});
