import { describe, expect, it } from "vitest";
import { planningCaution } from "../../core/cautions";
import { contentFromText } from "../../../tests/support/tableFromText";
import { seasonReport } from "../report";
import { reportJson } from "../reportJson";

const farm = `
Season
| Setting | Value |
| Operating interest rate | 8% |
| Interest months | 6 |
Crops
| Crop | Yield unit | Weight per bu | Expected price | Per-unit selling cost |
| Corn | bu | 56 | 4.40 | 0.40 |
Fields
| Field | Crop | Acres | Yield goal | Tenure | Operator share of crop % |
| Alder | Corn | 120 | 200 | | |
| Birch | Corn | 80 | 180 | crop share | 50 |
Other costs
| Item | Kind | Amount | Basis |
| Office | overhead | 900 | whole farm |
Changes`;
const headings =
  "| Change | Quadrant | Item | Quantity | Unit | Price | Basis | Years kept | Salvage | Field or Crop | Acres | Interest rate | " +
  "Counted in |";
const report = (...rows: readonly string[]) => seasonReport(contentFromText([farm, headings, ...rows].join("\n")));
const linesOf = (...rows: readonly string[]) => report(...rows).season.changes![0]!.lines;

describe("readChanges", () => {
  it("reads a change as it is typed, and nothing is wrong with a gain that is blank", () => {
    const { season, problems } = report(
      "| Wheels | Added Returns | Yield gain | | bu | | per acre | | | Alder | | | Yes |",
      "|  wheels | added costs | Closing wheels | 16 | row | $300 | lump sum | 5 | 400 | | | 6.5% | |",
    );
    expect(problems).toEqual([]);
    expect(season.changes).toHaveLength(1);
    const [change] = season.changes!;
    expect(change).toMatchObject({ name: "Wheels", target: { field: "Alder" }, countedIn: true });
    expect([change!.area, change!.rate].map(String)).toEqual(["120", "0.065"]);
    expect(
      change!.lines.map(({ sellsCrop, quantity, unit, source }) => [sellsCrop, quantity?.toString() ?? null, unit, source!.row]),
    ).toEqual([
      [true, null, "bu/ac", 1],
      [false, "16", "row", 2],
    ]);
  });

  it("takes the whole farm and the operating interest rate where nothing else is said", () => {
    const [change] = report("| Shed | added costs | Shed | 1 | piece | 50000 | lump sum | 20 | | | | | |").season.changes!;
    expect([change!.target, change!.area.toString(), change!.rate.toString(), change!.countedIn]).toEqual([null, "200", "0.08", false]);
  });

  it("counts land that grows two crops once where it is about the whole farm", () => {
    const twice = farm
      .replace("| Operator share of crop % |", "| Operator share of crop % | Same land as |")
      .replace("| crop share | 50 |", "| crop share | 50 | |\n| Birch rye | Corn | 30 | 60 | crop share | 50 | Birch |");
    const [change] = seasonReport(
      contentFromText(`${twice}\n${headings}\n| Shed | added costs | Shed | 1 | piece | 50000 | lump sum | 20 | | | | | |`),
    ).season.changes!;
    expect(change!.area.toString()).toBe("200");
  });

  it("takes a line with years for a lump sum, another for per acre, where no basis is typed", () => {
    expect(
      linesOf("| A | added costs | One | 1 | piece | 5 | | 3 | | | | | |", "| A | added costs | Two | 1 | ac | 5 | | | | | | | |").map(
        ({ basis }) => basis,
      ),
    ).toEqual(["lump sum", "per acre"]);
  });

  it("keeps a price that is typed, and prices only what counts the crop", () => {
    const lines = linesOf(
      "| A | added returns | Gain | 2 | bu | 4.10 | per acre | | | Corn | | | |",
      "| A | added returns | Gain in weight | 112 | lb/ac | | per acre | | | | | | |",
      "| A | reduced returns | Loss | 1 | | | per acre | | | | | | |",
    );
    expect(lines.map(({ price, sellsCrop }) => [price?.toString() ?? null, sellsCrop])).toEqual([
      ["4.1", false],
      [null, true],
      [null, true],
    ]);
    // 112 lb are two bushels of 56 lb.
    expect(lines.map(({ quantity, unit }) => [quantity!.toFixed(20), unit])).toEqual([
      ["2.00000000000000000000", "bu"],
      ["2.00000000000000000000", "bu/ac"],
      ["1.00000000000000000000", "bu/ac"],
    ]);
  });

  it("goes by the acres that are entered, and tells lines that disagree, in the order of the table", () => {
    const { season, problems } = report(
      "| A | added costs | One | 1 | ac | 5 | per acre | | | Alder | 40 | 6% | |",
      "| B | added costs | Two | | ac | 5 | per acre | | | | | | |",
      "| A | added costs | Three | 1 | ac | 5 | per acre | | | Alder | 50 | 6.5% | |",
    );
    expect(season.changes!.map(({ name, area }) => `${name} ${area}`)).toEqual(["A 40", "B 200"]);
    expect(problems.map(({ code, at, found, like }) => `${code} ${at.row} ${at.column} ${found} ${like ?? ""}`.trim())).toEqual([
      "quantity-missing 2 Quantity",
      "change-disagrees 3 Acres 50 40",
      "change-disagrees 3 Interest rate 6.5 % 6 %",
    ]);
  });

  it("tells a quadrant that is missing once", () => {
    expect(report("| A | | One | | ac | 5 | per acre | | | | | | |").problems.map(({ code, at }) => `${code} ${at.column}`)).toEqual([
      "blank Quadrant",
    ]);
  });

  it("leaves years off a yearly line, so that it is not spread as well", () => {
    expect(linesOf("| A | added costs | Insurance | 1 | year | 90 | per year | 5 | | | | | |")[0]!.yearsKept).toBeNull();
  });

  it("comes out as JSON: quadrants and net in all, break-evens, payback", () => {
    const { changes } = reportJson(
      report(
        "| Wheels | added returns | Yield gain | 1 | bu | | per acre | | | Birch | | 0 | |",
        "| Wheels | reduced costs | Spared | 1 | year | 40 | per year | | | | | | |",
        "| Wheels | added costs | Wheels | 16 | row | 25 | lump sum | 4 | | | | | |",
      ),
    );
    // 80 ac × 1 bu × 4.00 × half = 160; 400 over 4 years without interest = 100.
    expect(changes).toEqual([
      {
        change: "Wheels",
        acres: "80",
        addedReturns: "160",
        reducedCosts: "40",
        addedCosts: "100",
        reducedReturns: "0",
        netPerAcre: "1.25",
        net: "100",
        breakEven: { yieldGain: "0.375", price: "1.9", acres: "30" },
        paybackYears: "2",
        layout: null,
        cautions: [planningCaution],
      },
    ]);
  });
});
