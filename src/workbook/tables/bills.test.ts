/** Bills with Kind and For, from the cells to the layers and the cash flow. */
import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { sum } from "../../core/numbers/decimal";
import { paidAndCharged } from "../../core/lender/paidAndCharged";
import { seasonReport } from "../report";
import { farmCashFlow } from "../sheets/lender/farmCashFlow";

const farm = (bills: string, more = "") =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |

Crops
| Crop | Expected price |
| Corn | 4 |
| Oats | 3 |

Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
| Birch | Corn | 50 | 160 |

Items
| Item | Kind | Pack unit | Plan price per pack |
| Urea | fertilizer | lb | 0.3 |
| Diesel | fuel | gal | 3 |
${more}
Purchases
| Date | Item | Quantity | Unit | Unit price | Amount | Freight | Rebate | Kind | For | Supplier | Paid on | Note |
${bills}
`),
  );
type Report = ReturnType<typeof farm>;
const outlook = ({ figures }: Report, field = "Alder") => {
  const { budget } = figures.crops[0]!.fields.find((each) => each.field === field)!.outlook;
  return Object.fromEntries([...budget.costPerArea.byKind].map(([kind, value]) => [kind, value.toFixed()]));
};
const told = ({ problems }: Report) =>
  problems
    .filter(({ code }) => code !== "capital-not-charged" && code !== "cost-none")
    .map(({ code, at }) => `${code} ${at.table} ${at.row ?? ""} ${at.column ?? ""}`.trim());
const outOf = (report: Report) => {
  const flow = farmCashFlow(report)!;
  expect(
    paidAndCharged(report.season, report.figures, flow)
      .filter(({ charged, differences, paid }) =>
        sum([charged, ...Object.values(differences)])
          .minus(paid)
          .abs()
          .gt("1e-9"),
      )
      .map(({ group }) => group),
  ).toEqual([]);
  return sum(flow.months.map(({ moneyOut }) => moneyOut))
    .toDecimalPlaces(9)
    .toFixed();
};

describe("a bill with Kind and For", () => {
  it("needs no item, quantity or unit, and takes freight and rebate along", () => {
    const report = farm("| 2031-04-01 | | | | | 1000 | 20 | 10 | supplies | Alder | Co-op | | |");
    expect([told(report), outlook(report), outlook(report, "Birch"), outOf(report)]).toEqual([[], { supplies: "10.1" }, {}, "1010"]);
  });

  it("is shared over the fields of a crop, or over all", () => {
    for (const over of ["Corn", "all", "All fields"]) {
      const report = farm(`| 2031-04-01 | Tarps | 3 | rolls | 100 | | | | supplies | ${over} | | | |`);
      expect([told(report), outlook(report), outlook(report, "Birch")]).toEqual([[], { supplies: "2" }, { supplies: "2" }]);
    }
  });

  it("is told where the same invoice stands as a line of an item too: charged by acres it counts twice, as stock it is paid twice", () => {
    const direct = "| 2031-04-01 | Fuel of April | | | | 900 | | | fuel | all | | | |";
    const item = "| 2031-04-01 | Diesel | 300 | gal | | 900 | | | | | | | |";
    expect(told(farm(`${item}\n${direct}`))).toEqual(["line-twice Purchases 2"]);
    expect(told(farm(`${direct}\n${item}`))).toEqual(["line-twice Purchases 2"]);
    expect(outlook(farm(`${item}\n${direct}`))).toEqual({ fuel: "12" });
    // Another day, amount, kind, supplier or Note is another bill.
    const ofDealer = item.replace(/\| \| \| \|$/, "| Dealer | | |");
    expect(told(farm(`${ofDealer}\n${direct}`))).toEqual(["line-twice Purchases 2"]);
    for (const other of [
      direct.replace("04-01", "04-02"),
      direct.replace("900", "901"),
      direct.replace("| fuel |", "| supplies |"),
      direct.replace("| all | |", "| all | Co-op |"),
      direct.replace("| all | | | |", "| all | | | the rest |"),
    ])
      expect(told(farm(`${ofDealer}\n${other}`)), other).toEqual([]);
  });

  it("takes the kind of an item that is known, and is no stock and no price of it", () => {
    const report = farm("| 2031-04-01 | Urea | 1000 | lb | | 900 | | | | Alder | | | |");
    expect([told(report), outlook(report), outOf(report)]).toEqual([[], { fertilizer: "9" }, "900"]);
    expect(report.figures.items[0]!.bought.toFixed()).toBe("0");
  });

  it("of an item that Applications uses stays a purchase, and says so", () => {
    const used = "\nApplications\n| Field or Crop | Item | Rate | Rate unit | Status |\n| Alder | Urea | 10 | lb/ac | done |\n";
    const report = farm("| 2031-04-01 | Urea | 1000 | lb | | 400 | | | | Alder | | | |", used);
    expect([told(report), outlook(report), outOf(report)]).toEqual([["bill-of-used Purchases 1 For"], { fertilizer: "4" }, "400"]);
  });

  it("tells what it lacks, and loses nothing that it has", () => {
    const lacking = {
      "| 2031-04-01 | Tarps | 3 | rolls | | | | | supplies | Corn | | | |": "amount-missing Purchases 1",
      "| 2031-04-01 | Tarps | | | | 300 | | | | Corn | | | |": "blank Purchases 1 Kind",
      "| 2031-04-01 | Tarps | | | | 300 | | | cash rent | Corn | | | |": "not-in-list Purchases 1 Kind",
      "| 2031-04-01 | Tarps | | | | 300 | | | supplies | Oats | | | |": "no-fields Purchases 1 For",
      "| 2031-04-01 | Tarps | | | | 300 | | | supplies | Cron | | | |": "unknown-name Purchases 1 For",
      "| | Tarps | | | | 300 | | | supplies | Corn | | | |": "blank Purchases 1 Date",
      "| 2031-04-01 | Tarps | | | | 3OO | | | supplies | Corn | | | |": "not-a-number Purchases 1 Amount",
      "| 2031-04-01 | Tarps | 3 | rolls | 100 | 290 | | | supplies | Corn | | | |": "amount-disagrees Purchases 1 Amount",
      "| 2031-04-01 | Urea | 10 | lb | 1 | | | | supplies | | | | |": "kind-alone Purchases 1 Kind",
      "| 2031-04-01 | Tarps | | | | 300 | | | supplies | Corn | | | |\n| 2031-04-01 | Tarps | | | | 300 | | | supplies | Corn | | | |":
        "line-twice Purchases 2",
    };
    for (const [rows, problem] of Object.entries(lacking)) {
      const report = farm(rows);
      expect(told(report)).toEqual([problem]);
    }
  });

  it("beside done work at a rate is told until a Note settles it", () => {
    const work =
      "\nOperations\n| Field or Crop | Operation | Rate | Basis | Date | Status |\n| Alder | Spray | 9 | per acre | 2031-05-01 | done |\n";
    expect(told(farm("| 2031-06-01 | | | | | 900 | | | custom work | Corn | | | |", work))).toEqual(["bill-beside-done Purchases 1"]);
    expect(told(farm("| 2031-06-01 | | | | | 900 | | | custom work | Corn | | | mowing |", work))).toEqual([]);
    expect(told(farm("| 2031-06-01 | | | | | 900 | | | custom work | Birch | | | |", work))).toEqual([]);
  });
});
