import { PMT, IPMT } from "@formulajs/formulajs";
import { ipmt, pmt } from "financial";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakEvenPrice, type Costs } from "../../src/core/breakEven";
import { Decimal } from "../../src/core/numbers/decimal";
import { debtService, levelPayment, schedule } from "../../src/core/lender/amortisation";
import { guarantee, indemnity, triggerYield, type Policy } from "../../src/core/lender/guarantee";
import { priceYieldGrid } from "../../src/core/lender/priceYieldGrid";
import { repayment } from "../../src/core/lender/repayment";
import { seasonFigures } from "../../src/core/seasonFigures";
import { money, moneyPerArea, moneyPerUnit, share, yieldPerArea } from "../../src/core/numbers/units";
import { expectPrinted } from "../support/expectPrinted";
import { field, operation, sale, seasonOf } from "../support/season";
import { amortisation, azuki, guarantees, levelPayments, repaymentCapacity, sorghum, unsold } from "./lender";

const most = new Decimal("1200");

describe("the published loan schedule", () => {
  const ratePerPeriod = new Decimal(amortisation.rate);
  const payment = levelPayment(money(amortisation.principal), ratePerPeriod, new Decimal(amortisation.years));
  const lines = schedule({ balance: money(amortisation.principal), ratePerPeriod, payment }, most)!;

  it("has its payment, its thirty lines and its total interest to the cent", () => {
    expectPrinted(payment, amortisation.payment);
    expect(lines).toHaveLength(30);
    for (const printed of amortisation.lines) {
      const line = lines[printed.year - 1]!;
      expectPrinted(line.balance, printed.balance);
      if ("interest" in printed) expectPrinted(line.interest, printed.interest);
      if ("principal" in printed) expectPrinted(line.principal, printed.principal);
    }
    expectPrinted(lines[29]!.interest, amortisation.lastInterest);
    expectPrinted(debtService(lines).interest, amortisation.totalInterest);
  });

  it.each(levelPayments)("pays $payment on $principal in $periods periods", ({ principal, periods, payment: printed }) => {
    expectPrinted(levelPayment(money(principal), new Decimal("0.05").div("12"), new Decimal(periods)), printed);
  });
});

describe("two general libraries (financial, a port of numpy-financial, and formulajs)", () => {
  it("agree on the payment and on the interest of any period to a ten-millionth", () => {
    // Up to 1.5 % a period: beyond, (1 + i)^n grows so large that the libraries' doubles lose their own digits.
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 150 }),
        fc.integer({ min: 2, max: 360 }),
        fc.integer({ min: 1000, max: 900_000 }),
        fc.nat(),
        (basisPoints, periods, principal, pick) => {
          const rate = basisPoints / 10_000;
          const period = (pick % periods) + 1;
          const ratePerPeriod = new Decimal(basisPoints.toString()).div("10000");
          const payment = levelPayment(money(principal.toString()), ratePerPeriod, new Decimal(periods.toString()));
          const line = schedule({ balance: money(principal.toString()), ratePerPeriod, payment }, most)![period - 1]!;
          const near = (actual: Decimal, theirs: number) => {
            expect(Math.abs(Number(actual.toFixed(10)) + theirs) / principal).toBeLessThan(1e-7);
          };
          near(payment, pmt(rate, periods, principal));
          near(payment, PMT(rate, periods, principal) as number);
          near(line.interest, ipmt(rate, period, periods, principal));
          near(line.interest, IPMT(rate, period, periods, principal) as number);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("a loan schedule", () => {
  it("has no end where the payment does not cover the interest", () => {
    expect(schedule({ balance: money("1000"), ratePerPeriod: new Decimal("0.1"), payment: money("100") }, most)).toBeNull();
  });
  it("divides evenly without interest, the last payment as much as is left", () => {
    const lines = schedule({ balance: money("1000"), ratePerPeriod: new Decimal("0"), payment: money("300") }, most)!;
    expect(lines.map(({ payment }) => payment.toFixed())).toEqual(["300", "300", "300", "100"]);
  });
});

describe("repayment capacity", () => {
  it("passes the debt test and fails the replacement test of the published farm", () => {
    const of = repaymentCapacity;
    const result = repayment({
      netIncome: money(of.netIncome),
      incomeTax: money(of.incomeTax),
      termInterest: money(of.termInterest),
      depreciation: money(of.depreciation),
      familyLiving: money(of.familyLiving),
      termPrincipal: money(of.termPrincipal),
      replacement: money(of.replacement),
    });
    expectPrinted(result.capacity, of.capacity);
    expectPrinted(result.margin, of.margin);
    expectPrinted(result.termDebtCoverage, of.coverage);
    expectPrinted(result.marginAfterReplacement, of.marginAfterReplacement);
  });
});

describe("a guarantee", () => {
  const policy = (parts: { approvedYield: string; coverage: string; projected: string }, more: Partial<Policy> = {}): Policy => ({
    form: "revenue",
    approvedYield: yieldPerArea(parts.approvedYield),
    coverage: share(parts.coverage),
    projectedPrice: moneyPerUnit(parts.projected),
    harvestPrice: null,
    harvestPriceOption: false,
    priceCap: new Decimal("2"),
    ...more,
  });

  it("of revenue pays what the crop falls short of it", () => {
    const of = guarantees.revenue;
    expectPrinted(guarantee(policy(of)).perArea, of.guarantee);
    expectPrinted(indemnity(policy(of), yieldPerArea(of.harvested), moneyPerUnit(of.harvestPrice)), of.indemnity);
  });
  it("of revenue starts to pay at the printed yields", () => {
    const of = guarantees.triggers;
    expect(guarantee(policy(of)).perArea.toFixed(0, Decimal.ROUND_DOWN)).toBe(of.guarantee);
    for (const row of of.rows)
      expect(triggerYield(policy(of), moneyPerUnit(row.harvestPrice))!.toFixed(0, Decimal.ROUND_DOWN)).toBe(row.trigger);
  });
  it("of yield pays the missing bushels at the set price", () => {
    const of = guarantees.yield;
    const yieldPolicy = policy({ ...of, projected: of.price }, { form: "yield" });
    expectPrinted(guarantee(yieldPolicy).yield, of.guarantee);
    // The price of a yield policy is set: no option moves it.
    expectPrinted(guarantee({ ...yieldPolicy, harvestPrice: moneyPerUnit("9"), harvestPriceOption: true }).price, of.price);
    expect(indemnity(yieldPolicy, guarantee(yieldPolicy).yield, moneyPerUnit("9")).toFixed()).toBe("0");
    expectPrinted(new Decimal(indemnity(yieldPolicy, yieldPerArea(of.harvested), moneyPerUnit("9")).times(of.acres)), of.indemnity);
  });
  it("with the harvest price option takes the higher price up to its cap", () => {
    const of = guarantees.harvestPriceOption;
    expectPrinted(
      guarantee(policy(of, { harvestPrice: moneyPerUnit(of.harvestPrice), harvestPriceOption: true, priceCap: new Decimal(of.cap) }))
        .perArea,
      of.guarantee,
    );
    expectPrinted(guarantee(policy(of, { harvestPrice: moneyPerUnit(of.harvestPrice) })).perArea, "510.00");
  });
  it("in tonnes pays the shortfall at its dollar value", () => {
    const of = guarantees.tonnes;
    const whole = policy({ approvedYield: of.guaranteed, coverage: "1", projected: of.price }, { form: "yield" });
    expectPrinted(indemnity(whole, yieldPerArea(of.harvested), moneyPerUnit(of.price)), of.claim);
  });
});

describe("the yield and price table", () => {
  it("gives the published gross margins of azuki beans to the dollar that is printed", () => {
    const costs: Costs = {
      fixed: moneyPerArea(azuki.fixed),
      moving: moneyPerUnit(azuki.perTonne),
      operatorShare: share("1"),
      otherIncome: moneyPerArea("0"),
    };
    const prices = azuki.prices.map((price) => moneyPerUnit(new Decimal(price).times(azuki.incomeShare)));
    const grid = priceYieldGrid(
      costs,
      azuki.rows.map((row) => yieldPerArea(row.yield)),
      prices,
    );
    azuki.rows.forEach((row, index) => {
      row.net.forEach((printed, column) => {
        expectPrinted(grid.rows[index]!.net[column]!, printed);
      });
    });
  });
  it.each(sorghum.rows)("gives the published sorghum price at $yield cwt", (row) => {
    const held = (fixed: string): Costs => ({
      fixed: moneyPerArea(fixed),
      moving: moneyPerUnit("0"),
      operatorShare: share("1"),
      otherIncome: moneyPerArea("0"),
    });
    expectPrinted(breakEvenPrice(held(sorghum.variableCost), yieldPerArea(row.yield)), row.variable);
    expectPrinted(breakEvenPrice(held(sorghum.totalCost), yieldPerArea(row.yield)), row.total);
  });
  it("is thirty cents lower at a low yield once the haul moves with it", () => {
    const haul = new Decimal(sorghum.haulPerCwt);
    const fixed = moneyPerArea(new Decimal(sorghum.variableCost).minus(haul.times("45")));
    const costs: Costs = { fixed, moving: moneyPerUnit(haul), operatorShare: share("1"), otherIncome: moneyPerArea("0") };
    expectPrinted(breakEvenPrice(costs, yieldPerArea(sorghum.withMovingHaul.yield)), sorghum.withMovingHaul.price);
  });
});

describe("the price needed on unsold grain", () => {
  it("is that of our own example", () => {
    const { sales } = seasonFigures(
      seasonOf({
        fields: [field("All", unsold.acres, unsold.yield)],
        operations: [operation("All costs", "All", unsold.cost, "plan")],
        sales: unsold.sales.map(([quantity, price]) => sale(quantity, price)),
      }),
    ).crops[0]!;
    expectPrinted(sales.averagePrice, unsold.average);
    expectPrinted(sales.unsold, unsold.rest);
    expectPrinted(sales.priceNeeded.operating, unsold.needed);
  });
});
