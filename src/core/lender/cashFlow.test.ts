import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Decimal, sum } from "../numbers/decimal";
import { money } from "../numbers/units";
import { cashFlow, type Flow } from "./cashFlow";
import { monthsBetween, monthsLater } from "./month";

const months = monthsBetween("2031-01", "2031-06");
const flow = (month: string | null, amount: string, group = "supplies"): Flow => ({ month, group, amount: money(amount), entries: [] });
const loan = (opening: string, rate: string) => ({ opening: money(opening), rate: new Decimal(rate) });
const none = money("0");

describe("months", () => {
  it("run over the year's end", () => {
    expect(monthsBetween("2030-11", "2031-02")).toEqual(["2030-11", "2030-12", "2031-01", "2031-02"]);
    expect(monthsLater("2031-01", new Decimal("-1"))).toBe("2030-12");
  });
});

describe("cashFlow", () => {
  it("draws what is lacking, adds interest to the loan each month and pays it back from what is over", () => {
    const { months: rows, peak } = cashFlow(
      [flow("2031-01", "-10000"), flow("2031-03", "4000", "grain sales"), flow("2031-05", "8000", "grain sales")],
      months,
      loan("0", "0.12"),
      none,
    );
    expect(rows.map((row) => row.loan.toFixed())).toEqual(["10000", "10100", "6201", "6263.01", "0", "0"]);
    expect(rows.map((row) => row.interest.toFixed())).toEqual(["0", "100", "101", "62.01", "62.6301", "0"]);
    expect(rows[4]!.cash.toFixed()).toBe("1674.3599");
    expect(peak).toMatchObject({ month: "2031-02" });
    expect(peak!.balance.toFixed()).toBe("10100");
  });

  it("uses cash at hand before it borrows", () => {
    const { months: rows, peak } = cashFlow([flow("2031-02", "-800")], months, loan("0", "0.08"), money("1000"));
    expect(rows.at(-1)!.cash.toFixed()).toBe("200");
    expect(peak).toBeNull();
  });

  it("spreads what has no month evenly and says how much that is", () => {
    const flows = cashFlow([flow(null, "-1200", "overhead")], months, loan("0", "0"), none);
    expect(flows.months.map((row) => row.moneyOut.toFixed())).toEqual(Array(6).fill("200"));
    expect(flows.spread.toFixed()).toBe("-1200");
  });

  it("adds up what moves in one group and month, and names the groups that bring money first", () => {
    const flows = cashFlow(
      [
        flow("2031-01", "-300"),
        flow("2031-01", "-50"),
        flow("2031-02", "900", "grain sales"),
        flow("2031-02", "0", "rebates"),
        flow(null, "-6", "overhead"),
      ],
      months,
      loan("0", "0"),
      none,
    );
    expect(flows.months[0]!.flows.get("supplies")!.toFixed()).toBe("-350");
    expect(flows.groups).toEqual(["grain sales", "supplies", "overhead"]);
    expect(flows.spread.toFixed()).toBe("-6");
  });

  it("counts the last cent", () => {
    const {
      months: rows,
      groups,
      peak,
    } = cashFlow([flow("2031-01", "-0.90"), flow("2031-01", "0.40", "rebates")], months, loan("0", "0"), none);
    expect([rows[0]!.moneyIn, rows[0]!.moneyOut, peak!.balance].map(String)).toEqual(["0.4", "0.9", "0.5"]);
    expect(groups).toEqual(["rebates", "supplies"]);
  });

  it("loses no money: what comes in, is drawn and was there is what goes out, is repaid and is left", () => {
    const amounts = fc.array(fc.tuple(fc.constantFrom(...months, null), fc.integer({ min: -900_000, max: 900_000 })), { maxLength: 20 });
    fc.assert(
      fc.property(amounts, fc.nat({ max: 500_000 }), fc.nat({ max: 500_000 }), fc.nat({ max: 20 }), (moves, opening, atHand, percent) => {
        const flows = moves.map(([month, amount]) => flow(month, amount.toString(), amount > 0 ? "in" : "out"));
        const { months: rows } = cashFlow(flows, months, loan(opening.toString(), `${percent}e-2`), money(atHand.toString()));
        const all = (of: (row: (typeof rows)[number]) => Decimal) => sum(rows.map(of));
        const last = rows.at(-1)!;
        const left = new Decimal(atHand.toString())
          .plus(all((row) => row.moneyIn))
          .plus(all((row) => row.draw))
          .minus(all((row) => row.moneyOut))
          .minus(all((row) => row.repaid));
        expect(left.minus(last.cash).abs().lt("1e-20")).toBe(true);
        const owed = new Decimal(opening.toString())
          .plus(all((row) => row.interest))
          .plus(all((row) => row.draw))
          .minus(all((row) => row.repaid));
        expect(owed.minus(last.loan).abs().lt("1e-20")).toBe(true);
        for (const row of rows) expect(row.cash.gte("0") && row.loan.gte("0") && (row.cash.isZero() || row.loan.isZero())).toBe(true);
      }),
    );
  });
});
