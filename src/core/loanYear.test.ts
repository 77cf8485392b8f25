import { describe, expect, it } from "vitest";
import { Decimal } from "./numbers/decimal";
import { loanYear } from "./loanYear";
import type { Loan, Settings } from "./season";
import { money } from "./numbers/units";

const loan = (more: Partial<Loan> = {}): Loan => ({
  name: "Note",
  kind: "term",
  balance: money("100000"),
  rate: new Decimal("0.08"),
  payment: money("20000"),
  paymentsAYear: new Decimal("1"),
  nextDue: "2031-03-01",
  firstDue: null,
  bornBy: null,
  source: { table: "Loans", row: 1 },
  ...more,
});
type Around = Pick<Settings, "seasonYear" | "operatingInterest" | "repaymentDate">;
const season: Around = { seasonYear: "2031", operatingInterest: null, repaymentDate: null };
const places = (value: Decimal) => value.toDecimalPlaces(10).toFixed();
const year = (more: Partial<Loan> = {}, around: Around = season) => {
  const { interest, principal, opening, closing, payments } = loanYear(loan(more), around);
  return {
    interest: places(interest),
    principal: places(principal),
    opening: places(opening),
    closing: places(closing),
    months: payments.map(({ month }) => month).join(" "),
  };
};

describe("a term loan", () => {
  it("takes the payments that fall due from January to December: interest on what is owed, the rest principal", () => {
    // 8 % of 100,000 is 8,000 of the 20,000.
    expect(year()).toEqual({ interest: "8000", principal: "12000", opening: "100000", closing: "88000", months: "2031-03" });
    // 2 % a quarter of 100,000, 97,000, 93,940 and 90,818.80, in January, April, July and October.
    expect(year({ payment: money("5000"), paymentsAYear: new Decimal("4"), nextDue: "2031-01-15" })).toEqual({
      interest: "7635.176",
      principal: "12364.824",
      opening: "100000",
      closing: "87635.176",
      months: "2031-01 2031-04 2031-07 2031-10",
    });
  });

  it("reckons the payments back that the year has before the next one", () => {
    // The balance before the next January is what the last one left: (100,000 + 20,000) ÷ 1.08 were owed before it.
    expect(year({ nextDue: "2032-01-10" })).toEqual({
      interest: "8888.8888888889",
      principal: "11111.1111111111",
      opening: "111111.1111111111",
      closing: "100000",
      months: "2031-01",
    });
    // Half years at 4 %: March to come, September as well; and both from the September after.
    const half = { paymentsAYear: new Decimal("2"), payment: money("10000") };
    // 4 % of 100,000 and of 94,000.
    expect(year({ ...half, nextDue: "2031-03-15" })).toMatchObject({ interest: "7760", principal: "12240", closing: "87760" });
    expect(year({ ...half, nextDue: "2031-09-15", balance: money("94000") })).toMatchObject({
      interest: "7760",
      principal: "12240",
      opening: "100000",
      closing: "87760",
    });
    expect(year({ ...half, nextDue: "2032-03-15", balance: money("87760") })).toMatchObject({
      interest: "7760",
      principal: "12240",
      opening: "100000",
      months: "2031-03 2031-09",
    });
  });

  it("has no payment before its first", () => {
    const half = { paymentsAYear: new Decimal("2"), payment: money("10000"), nextDue: "2032-03-15", balance: money("87760") };
    // Only September was paid: (87,760 + 10,000) ÷ 1.04 = 94,000 were owed before it, 3,760 is interest.
    expect(year({ ...half, firstDue: "2031-09-15" })).toMatchObject({
      interest: "3760",
      principal: "6240",
      opening: "94000",
      months: "2031-09",
    });
    expect(year({ ...half, firstDue: "2032-03-15" })).toEqual({
      interest: "0",
      principal: "0",
      opening: "87760",
      closing: "87760",
      months: "",
    });
    // A first payment of long ago changes nothing.
    expect(year({ ...half, firstDue: "2024-03-15" })).toMatchObject({ interest: "7760", months: "2031-03 2031-09" });
  });

  it("goes on to the year from a payment before it, and is paid off by the last as much as is left", () => {
    // 108,000 − 20,000 = 88,000 after 2030; 7,040 of interest.
    expect(year({ nextDue: "2030-03-01" })).toMatchObject({ interest: "7040", opening: "88000", closing: "75040" });
    expect(year({ balance: money("10000") })).toEqual({
      interest: "800",
      principal: "10000",
      opening: "10000",
      closing: "0",
      months: "2031-03",
    });
    expect(year({ balance: money("10000"), nextDue: "2030-03-01" })).toEqual({
      interest: "0",
      principal: "0",
      opening: "0",
      closing: "0",
      months: "",
    });
  });

  it("is paid as entered below its interest, all of it interest, and the rest is owed", () => {
    // 8,000 are due and 5,000 paid: 3,000 more are owed.
    expect(year({ payment: money("5000") })).toEqual({
      interest: "5000",
      principal: "0",
      opening: "100000",
      closing: "103000",
      months: "2031-03",
    });
    // The same seen from the year after: (103,000 + 5,000) ÷ 1.08.
    expect(year({ payment: money("5000"), balance: money("103000"), nextDue: "2032-03-01" })).toMatchObject({
      interest: "5000",
      principal: "0",
      opening: "100000",
      closing: "103000",
    });
    // Interest alone leaves the balance.
    expect(year({ payment: money("8000") })).toMatchObject({ interest: "8000", principal: "0", closing: "100000" });
  });

  it("counts the year's interest while its payment or its day is not entered", () => {
    const interest = { interest: "8000", principal: "0", opening: "100000", closing: "100000", months: "" };
    expect(year({ payment: null })).toEqual(interest);
    expect(year({ nextDue: null })).toEqual(interest);
    expect(year({ nextDue: "2301-03-01" })).toEqual(interest);
  });

  it("is of the year of its next payment where no season year is known", () => {
    expect(year({ nextDue: "2029-03-01" }, { ...season, seasonYear: null })).toMatchObject({
      interest: "8000",
      opening: "100000",
      months: "2029-03",
    });
  });
});

describe("an operating loan", () => {
  const line = { kind: "operating", balance: money("50000"), payment: null, nextDue: null } as const;
  const byDate = (repaymentDate: string): Around => ({
    ...season,
    operatingInterest: { method: "by date", rate: new Decimal("0.09"), repaymentDate },
  });

  it("bears interest on what it carries into the year, from 1 January to its repayment", () => {
    // 50,000 × 8 % × 334 days ÷ 365 = 3,660.27 (1,336,000 ÷ 365).
    expect(year(line, byDate("2031-12-01"))).toEqual({
      interest: "3660.2739726027",
      principal: "0",
      opening: "50000",
      closing: "50000",
      months: "",
    });
    expect(year(line, byDate("2031-01-01")).interest).toBe("0");
  });

  it("goes by its own day before the season's, and by the whole year without any", () => {
    // 31 days.
    expect(year({ ...line, nextDue: "2031-02-01" }, byDate("2031-12-01")).interest).toBe(
      places(new Decimal("4000").times("31").div("365")),
    );
    expect(year({ ...line, nextDue: "2030-02-01" }, byDate("2031-12-01")).interest).toBe("3660.2739726027");
    expect(year(line).interest).toBe("4000");
    expect(
      year(line, { ...season, operatingInterest: { method: "months", rate: new Decimal("0.09"), months: new Decimal("7") } }).interest,
    ).toBe("4000");
    // A day of repayment counts without a rate for other money: 334 days again.
    expect(year(line, { ...season, repaymentDate: "2031-12-01" }).interest).toBe("3660.2739726027");
    expect(year(line, { ...byDate("2031-12-01"), seasonYear: null }).interest).toBe("4000");
  });
});
