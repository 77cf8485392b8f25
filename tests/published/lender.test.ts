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
import { field, operation, sale, seasonOf } from "../support/season";
import { check, checkCut, checksPage } from "./checks";
import { amortisation, azuki, guarantees, levelPayments, repaymentCapacity, sorghum, unsold } from "./lender";
import { sources } from "./sources";

const most = new Decimal("1200");

describe("the published loan schedule", () => {
  const ratePerPeriod = new Decimal(amortisation.rate);
  const payment = levelPayment(money(amortisation.principal), ratePerPeriod, new Decimal(amortisation.years));
  const lines = schedule({ balance: money(amortisation.principal), ratePerPeriod, payment }, most)!;

  it("has its payment, its thirty lines and its total interest to the cent", () => {
    const source = sources["Decker Lateral"];
    check(payment, amortisation.payment, source, levelPayment, "payment");
    expect(lines).toHaveLength(30);
    for (const printed of amortisation.lines) {
      const line = lines[printed.year - 1]!;
      check(line.balance, printed.balance, source, schedule, `balance of year ${printed.year}`);
      if ("interest" in printed) check(line.interest, printed.interest, source, schedule, `interest of year ${printed.year}`);
      if ("principal" in printed) check(line.principal, printed.principal, source, schedule, `principal of year ${printed.year}`);
    }
    check(lines[29]!.interest, amortisation.lastInterest, source, schedule, "interest of year 30");
    check(debtService(lines).interest, amortisation.totalInterest, source, debtService, "interest in all");
  });

  it.each(levelPayments)("pays $payment on $principal in $periods periods", ({ principal, periods, payment: printed }) => {
    const level = levelPayment(money(principal), new Decimal("0.05").div("12"), new Decimal(periods));
    check(level, printed, sources["60-month loan"], levelPayment);
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
    const worked = sources["Purdue repayment 2025, worked out"];
    check(result.capacity, of.capacity, sources["Purdue repayment 2025"], repayment, "capacity");
    check(result.margin, of.margin, sources["Purdue repayment 2025"], repayment, "margin");
    check(result.termDebtCoverage, of.coverage, worked, repayment, "coverage");
    check(result.marginAfterReplacement, of.marginAfterReplacement, worked, repayment, "margin after replacement");
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
    check(guarantee(policy(of)).perArea, of.guarantee, sources["crop insurance illustrations"], guarantee, "guarantee");
    const paid = indemnity(policy(of), yieldPerArea(of.harvested), moneyPerUnit(of.harvestPrice));
    check(paid, of.indemnity, sources["crop insurance illustrations"], indemnity, "payment");
  });
  it("of revenue starts to pay at the printed yields", () => {
    const of = guarantees.triggers;
    const source = sources["crop insurance illustrations"];
    checkCut(guarantee(policy(of)).perArea, of.guarantee, source, guarantee, "guarantee");
    for (const { harvestPrice, trigger } of of.rows)
      checkCut(triggerYield(policy(of), moneyPerUnit(harvestPrice))!, trigger, source, triggerYield, `at ${harvestPrice}`);
  });
  it("of yield pays the missing bushels at the set price", () => {
    const of = guarantees.yield;
    const yieldPolicy = policy({ ...of, projected: of.price }, { form: "yield" });
    const worked = sources["crop insurance illustrations, worked out"];
    check(guarantee(yieldPolicy).yield, of.guarantee, worked, guarantee, "guarantee");
    // The price of a yield policy is set: no option moves it.
    expect(guarantee({ ...yieldPolicy, harvestPrice: moneyPerUnit("9"), harvestPriceOption: true }).price.toFixed(2)).toBe(of.price);
    expect(indemnity(yieldPolicy, guarantee(yieldPolicy).yield, moneyPerUnit("9")).toFixed()).toBe("0");
    const perAcre = indemnity(yieldPolicy, yieldPerArea(of.harvested), moneyPerUnit("9"));
    check(perAcre.times(of.acres), of.indemnity, worked, indemnity, "payment");
  });
  it("with the harvest price option takes the higher price up to its cap", () => {
    const of = guarantees.harvestPriceOption;
    const harvestPrice = moneyPerUnit(of.harvestPrice);
    const withOption = guarantee(policy(of, { harvestPrice, harvestPriceOption: true, priceCap: new Decimal(of.cap) }));
    check(withOption.perArea, of.guarantee, sources["harvest price option"], guarantee, "with it");
    check(guarantee(policy(of, { harvestPrice })).perArea, "510.00", sources["harvest price option"], guarantee, "without it");
  });
  it("in tonnes pays the shortfall at its dollar value", () => {
    const of = guarantees.tonnes;
    const whole = policy({ approvedYield: of.guaranteed, coverage: "1", projected: of.price }, { form: "yield" });
    check(indemnity(whole, yieldPerArea(of.harvested), moneyPerUnit(of.price)), of.claim, sources["Manitoba insurance"], indemnity);
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
        const where = `${row.yield} t at ${azuki.prices[column]}`;
        check(grid.rows[index]!.net[column]!, printed, sources["NSW azuki 2010"], priceYieldGrid, where);
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
    const source = sources["Texas sorghum 2016"];
    check(breakEvenPrice(held(sorghum.variableCost), yieldPerArea(row.yield)), row.variable, source, breakEvenPrice, "variable cost");
    check(breakEvenPrice(held(sorghum.totalCost), yieldPerArea(row.yield)), row.total, source, breakEvenPrice, "total cost");
  });
  it("is thirty cents lower at a low yield once the haul moves with it", () => {
    const haul = new Decimal(sorghum.haulPerCwt);
    const fixed = moneyPerArea(new Decimal(sorghum.variableCost).minus(haul.times("45")));
    const costs: Costs = { fixed, moving: moneyPerUnit(haul), operatorShare: share("1"), otherIncome: moneyPerArea("0") };
    const price = breakEvenPrice(costs, yieldPerArea(sorghum.withMovingHaul.yield));
    check(price, sorghum.withMovingHaul.price, sources["Texas sorghum 2016"], breakEvenPrice);
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
    const source = sources["unsold grain"];
    check(sales.averagePrice, unsold.average, source, seasonFigures, "average price");
    check(sales.unsold, unsold.rest, source, seasonFigures, "unsold");
    check(sales.priceNeeded.operating, unsold.needed, source, seasonFigures, "price needed");
  });
});

checksPage("Lender");
