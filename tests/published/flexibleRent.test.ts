import { describe, expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { expectPrinted } from "../support/expectPrinted";
import { contentFromText } from "../support/tableFromText";
import { flexibleRents } from "./flexibleRents";

const cases = flexibleRents.flatMap(({ id, lease, cases: of }) => of.map((each) => ({ id, ...lease, ...each })));

describe("a flexible cash rent", () => {
  it.each(cases)(
    "comes to the printed $prints at $price and $yieldHere ($id)",
    ({ base, baseGross, share, most, price, yieldHere, prints }) => {
      const report = seasonReport(
        contentFromText(`
      Crops
      | Crop | Expected price |
      | Corn | ${price}       |
      Fields
      | Field | Crop | Acres | Yield goal   | Tenure        | Rent per acre | Base gross per acre | Share above base % | Most rent |
      | One   | Corn | 40    | ${yieldHere} | flexible rent | ${base}       | ${baseGross}        | ${share}           | ${most}   |`),
      );
      expect(report.problems).toEqual([]);
      const costs = reportJson(report).fields[0]!.plan.costPerAcre as unknown as Readonly<Record<string, string>>;
      const { "cash rent": rent } = reportJson(report).fields[0]!.plan.costPerAcre.byKind;
      expectPrinted(new Decimal(rent!), prints);
      expectPrinted(new Decimal(costs["cash"]!), prints);
      expect(costs["operating"]).toBe("0");
    },
  );
});
