import { describe, expect, it } from "vitest";
import { capitalRecovery, capitalRecoveryFactor, discount, realRate } from "../../src/core/capitalRecovery";
import { Decimal } from "../../src/core/numbers/decimal";
import { fieldCapacity } from "../../src/core/machines/fieldCapacity";
import { dieselPerHour, lubePerFuel } from "../../src/core/machines/fuel";
import { labourPerMachineHour, ownershipPerYear } from "../../src/core/machines/machineCost";
import { ownOrHire } from "../../src/core/machines/ownOrHire";
import { accumulatedRepairs, remainingValue, salvageValue } from "../../src/core/machines/machineWear";
import type { MachinePart } from "../../src/core/machines/machine";
import { area, hours, money, moneyPerArea, moneyPerYear, share, yearlyRate, years } from "../../src/core/numbers/units";
import { expectPrinted } from "../support/expectPrinted";
import * as printed from "./machinery";

const percent = (fraction: Decimal) => fraction.times("100");

describe("the tractor of 180 hp in PM 710", () => {
  const { listPrice, purchasePrice, hoursAYear, yearsKept, computed } = printed.tractor180hp;
  const part = (salvage: MachinePart["salvage"]): MachinePart => ({
    name: "Tractor",
    listPrice: money(listPrice),
    purchasePrice: money(purchasePrice),
    age: years("0"),
    yearsKept: years(yearsKept),
    hoursAYear: hours(hoursAYear),
    repairClass: null,
    salvage,
  });

  it("keeps 23 % of its list price", () => {
    expectPrinted(percent(remainingValue("tractor 150 hp up", years("15"), hours("400"))), printed.tractor180hp.remainingPercent);
  });

  it("loses 68,200 from what was paid to 23 % of what it lists at", () => {
    const salvage = money(new Decimal(listPrice).times("0.23"));
    expectPrinted(salvage, printed.tractor180hp.salvage);
    expectPrinted(new Decimal(purchasePrice).minus(salvage), printed.tractor180hp.depreciation);
  });

  it("bears a real rate of 5 %", () => {
    expect(realRate(yearlyRate(printed.tractor180hp.nominal), yearlyRate(printed.tractor180hp.inflation)).toString()).toBe(
      printed.tractor180hp.real,
    );
  });

  it("costs 8,429.54 a year to own, 21.07 an hour (computed from the printed inputs)", () => {
    const rate = yearlyRate(printed.tractor180hp.real);
    const owned = ownershipPerYear(part({ stated: money(printed.tractor180hp.salvage) }), hours(hoursAYear), {
      realRate: rate,
      taxesInsuranceHousing: yearlyRate("0.01"),
    });
    expectPrinted(capitalRecoveryFactor(rate, years(yearsKept)), computed.factor);
    expectPrinted(owned.capitalRecovery, computed.capitalRecovery);
    expectPrinted(owned.taxesInsuranceHousing, computed.taxesInsuranceHousing);
    const all = owned.capitalRecovery.plus(owned.taxesInsuranceHousing);
    expectPrinted(all, computed.ownership);
    expectPrinted(all.div(hoursAYear), computed.perHour);
  });

  it("takes its salvage value from the list price, not from the price paid", () => {
    const bySalvageClass = salvageValue(part({ by: "tractor 150 hp up" }), hours(hoursAYear));
    expectPrinted(bySalvageClass.div(listPrice).times("100"), "23");
  });
});

describe("fuel and lube", () => {
  it.each(printed.fuel)("are $gallons gallons an hour at $power hp ($source)", ({ power, gallons, price, fuelCost, lubeCost }) => {
    const used = dieselPerHour("ac", new Decimal(power));
    expectPrinted(used, gallons);
    if (price === null) return;
    expectPrinted(used.times(price), fuelCost);
    expectPrinted(used.times(price).times(lubePerFuel), lubeCost);
  });

  it("are the same engine in kilowatts and litres", () => {
    const kilowatts = new Decimal("180").times("0.74569987158227022");
    expect(dieselPerHour("ha", kilowatts).toFixed(12)).toBe(new Decimal("7.92").times("3.785411784").toFixed(12));
  });
});

describe("accumulated repairs", () => {
  const cells = printed.accumulatedRepairs.flatMap((row) => {
    const printedCells = row.percent.split(" ");
    return row.hours.split(" ").map((at, index) => ({ of: row.of, at, cell: printedCells[index]! }));
  });
  it.each(cells)("of a $of come to $cell % of list price after $at hours", ({ of, at, cell }) => {
    expectPrinted(percent(accumulatedRepairs(of, hours(at))), cell);
  });
  it.each(printed.ontarioRepairs)("of a two-wheel-drive tractor are $percent % at $hours hours in Ontario too", (row) => {
    expectPrinted(percent(accumulatedRepairs("2WD tractor", hours(row.hours))), row.percent);
  });
  it("of a tractor that listed at 80,000 and took 25 % in 6,000 hours were 3.33 an hour (Growing Produce)", () => {
    expectPrinted(new Decimal("80000").times("0.25").div("6000"), "3.33");
  });
});

describe("remaining value", () => {
  const cells = printed.remainingValues.flatMap((row) =>
    row.percent.split(" ").map((cell, index) => {
      const age = String(index + 1);
      return {
        of: row.of,
        at: row.hours,
        age,
        cell,
        off: printed.remainingValuesOff.find((each) => each.of === row.of && each.hours === row.hours && each.age === age),
      };
    }),
  );
  it.each(cells.filter(({ off }) => off === undefined))(
    "of a $of at $at hours a year is $cell % after $age years",
    ({ of, at, age, cell }) => {
      expectPrinted(percent(remainingValue(of, years(age), hours(at))), cell);
    },
  );
  it.each(printed.remainingValuesOff)("of a $of at $hours hours a year is $ours % after $age years, where $printed % is printed", (row) => {
    expectPrinted(percent(remainingValue(row.of, years(row.age), hours(row.hours))), row.ours);
    expect(cells.filter(({ off }) => off === row).map(({ cell }) => cell)).toEqual([row.printed]);
  });
});

describe("capital recovery", () => {
  const cells = printed.capitalRecoveryFactors.rows.flatMap((row) =>
    row.factors.map((factor, index) => ({ years: row.years, rate: printed.capitalRecoveryFactors.rates[index]!, factor })),
  );
  it.each(cells)("takes $factor a year over $years years at $rate", ({ years: n, rate, factor }) => {
    // The table drops a last nought: 0.534 stands for 0.53400.
    expectPrinted(capitalRecoveryFactor(yearlyRate(rate), years(n)), factor.padEnd(7, "0"));
  });

  it.each(printed.loanPayments)("is the level payment of $payment on $loan", (row) => {
    const rate = new Decimal(row.rate).div("perYear" in row ? row.perYear : "1");
    expectPrinted(new Decimal(row.loan).times(capitalRecoveryFactor(yearlyRate(rate), years(row.periods))), row.payment);
  });

  it("splits into the price's and the salvage value's part (University of Maryland)", () => {
    const { price, salvage, pricePart, salvagePart, perHour } = printed.constructionMachine;
    const rate = yearlyRate(printed.constructionMachine.rate);
    const n = years(printed.constructionMachine.years);
    expectPrinted(new Decimal(price).times(capitalRecoveryFactor(rate, n)), pricePart);
    expectPrinted(new Decimal(salvage).times(discount(rate, n)).times(capitalRecoveryFactor(rate, n)), salvagePart);
    expectPrinted(capitalRecovery(money(price), money(salvage), rate, n).div(printed.constructionMachine.hours), perHour);
  });
});

describe("field capacity", () => {
  it.each(printed.fieldCapacities)("is $printed $unit an hour at a speed of $speed, $width wide", (row) => {
    expectPrinted(fieldCapacity(row.unit, new Decimal(row.speed), new Decimal(row.width), share(row.efficiency)), row.printed);
  });
});

describe("labour", () => {
  it("is 1.1 hours for an hour of the machine (farmdoc)", () => {
    const labour = new Decimal(printed.illinoisTractors.wage).times(labourPerMachineHour);
    expectPrinted(labour, printed.illinoisTractors.labour);
    for (const row of printed.illinoisTractors.rows) expectPrinted(labour.plus(row.overhead).plus(row.fuelAndLube), row.total);
  });
});

describe("own or hire", () => {
  it("breaks even at 58.8 acres where 1,000 a year stands against 17 an acre (own example)", () => {
    const result = ownOrHire(moneyPerYear("1000"), moneyPerArea("8"), moneyPerArea("25"), area("100"));
    expectPrinted(result.breakEvenArea, "58.8");
    expectPrinted(result.own, "18.00");
    expectPrinted(result.saved, "7.00");
  });
});
