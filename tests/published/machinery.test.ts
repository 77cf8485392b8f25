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
import { check, checkApart, checksPage } from "./checks";
import * as printed from "./machinery";
import { rangeOver } from "./printRange";
import { sources } from "./sources";

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
    const kept = percent(remainingValue("tractor 150 hp up", years("15"), hours("400")));
    check(kept, printed.tractor180hp.remainingPercent, sources["PM 710"], remainingValue);
  });

  it("loses 68,200 from what was paid to 23 % of what it lists at", () => {
    const salvage = money(new Decimal(listPrice).times("0.23"));
    check(salvage, printed.tractor180hp.salvage, sources["PM 710"], "list price × remaining part", "salvage");
    check(
      new Decimal(purchasePrice).minus(salvage),
      printed.tractor180hp.depreciation,
      sources["PM 710"],
      "price less salvage",
      "depreciation",
    );
  });

  it("bears a real rate of 5 %", () => {
    const { nominal, inflation, real } = printed.tractor180hp;
    check(realRate(yearlyRate(nominal), yearlyRate(inflation)), real, sources["PM 710"], realRate);
  });

  it("costs 8,429.54 a year to own, 21.07 an hour (computed from the printed inputs)", () => {
    const rate = yearlyRate(printed.tractor180hp.real);
    const owned = ownershipPerYear(part({ stated: money(printed.tractor180hp.salvage) }), hours(hoursAYear), {
      realRate: rate,
      taxesInsuranceHousing: yearlyRate("0.01"),
    });
    const source = sources["PM 710, worked out"];
    check(capitalRecoveryFactor(rate, years(yearsKept)), computed.factor, source, capitalRecoveryFactor, "factor");
    check(owned.capitalRecovery, computed.capitalRecovery, source, ownershipPerYear, "capital recovery");
    check(owned.taxesInsuranceHousing, computed.taxesInsuranceHousing, source, ownershipPerYear, "taxes, insurance, housing");
    const all = owned.capitalRecovery.plus(owned.taxesInsuranceHousing);
    check(all, computed.ownership, source, ownershipPerYear, "a year");
    check(all.div(hoursAYear), computed.perHour, source, ownershipPerYear, "an hour");
  });

  it("takes its salvage value from the list price, not from the price paid", () => {
    const bySalvageClass = salvageValue(part({ by: "tractor 150 hp up" }), hours(hoursAYear));
    check(bySalvageClass.div(listPrice).times("100"), "23", sources["PM 710"], salvageValue);
  });

  it("is worth 37 % of its list price where an article takes 37 % of the price paid", () => {
    const { listPrice: list, pricePaid, part: kept, prints, ours } = printed.salvageOfPricePaid;
    check(new Decimal(pricePaid).times(kept), prints, sources["Growing Produce"], "price paid × remaining part", "as the article does");
    const ofList = salvageValue(
      { ...part({ stated: money(new Decimal(list).times(kept)) }), listPrice: money(list), purchasePrice: money(pricePaid) },
      hours("400"),
    );
    checkApart(ofList, { prints, ours }, sources["Growing Produce"], salvageValue);
  });
});

describe("fuel and lube", () => {
  it.each(printed.fuel)("are $gallons gallons an hour at $power hp", ({ source, power, gallons, price, fuelCost, lubeCost }) => {
    const used = dieselPerHour("ac", new Decimal(power));
    check(used, gallons, source, dieselPerHour, "fuel");
    if (price === null) return;
    check(used.times(price), fuelCost, source, dieselPerHour, "cost of fuel");
    check(used.times(price).times(lubePerFuel), lubeCost, source, "lubePerFuel", "cost of lube");
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
    check(percent(accumulatedRepairs(of, hours(at))), cell, sources["PM 710 table 3"], accumulatedRepairs);
  });
  it.each(printed.ontarioRepairs)("of a two-wheel-drive tractor are $percent % at $hours hours in Ontario too", (row) => {
    check(percent(accumulatedRepairs("2WD tractor", hours(row.hours))), row.percent, sources["Ontario repairs"], accumulatedRepairs);
  });
  it("of a two-wheel-drive tractor are 6.3 % at 3,000 hours where Ontario prints 6.2", () => {
    const { hours: at, prints, ours } = printed.ontarioRepairsOff;
    checkApart(percent(accumulatedRepairs("2WD tractor", hours(at))), { prints, ours }, sources["Ontario repairs"], accumulatedRepairs);
  });
  it("of a tractor that listed at 80,000 and took 25 % in 6,000 hours were 3.33 an hour (Growing Produce)", () => {
    check(new Decimal("80000").times("0.25").div("6000"), "3.33", sources["Growing Produce"], "list price × part ÷ hours");
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
      check(percent(remainingValue(of, years(age), hours(at))), cell, sources["PM 710 table 1a"], remainingValue);
    },
  );
  it.each(printed.remainingValuesOff)("of a $of at $hours hours a year is $ours % after $age years, where $printed % is printed", (row) => {
    const pair = { prints: row.printed, ours: row.ours };
    checkApart(percent(remainingValue(row.of, years(row.age), hours(row.hours))), pair, sources["PM 710 table 1a"], remainingValue);
    expect(cells.filter(({ off }) => off === row).map(({ cell }) => cell)).toEqual([row.printed]);
  });
});

describe("capital recovery", () => {
  const cells = printed.capitalRecoveryFactors.rows.flatMap((row) =>
    row.factors.map((factor, index) => ({ years: row.years, rate: printed.capitalRecoveryFactors.rates[index]!, factor })),
  );
  it.each(cells)("takes $factor a year over $years years at $rate", ({ years: n, rate, factor }) => {
    // The table drops a last nought: 0.534 stands for 0.53400.
    check(capitalRecoveryFactor(yearlyRate(rate), years(n)), factor.padEnd(7, "0"), sources["Engineers Edge"], capitalRecoveryFactor);
  });

  it.each(printed.loanPayments)("is the level payment of $payment on $loan", (row) => {
    const rate = new Decimal(row.rate).div("perYear" in row ? row.perYear : "1");
    const payment = new Decimal(row.loan).times(capitalRecoveryFactor(yearlyRate(rate), years(row.periods)));
    check(payment, row.payment, row.source, capitalRecoveryFactor);
  });

  it("splits into the price's and the salvage value's part (University of Maryland)", () => {
    const { price, salvage, pricePart, salvagePart, perHour } = printed.constructionMachine;
    const rate = yearlyRate(printed.constructionMachine.rate);
    const n = years(printed.constructionMachine.years);
    const source = sources["Maryland ENCE420"];
    check(new Decimal(price).times(capitalRecoveryFactor(rate, n)), pricePart, source, capitalRecoveryFactor, "the price's part");
    const ofSalvage = new Decimal(salvage).times(discount(rate, n)).times(capitalRecoveryFactor(rate, n));
    check(ofSalvage, salvagePart, source, capitalRecoveryFactor, "the salvage value's part");
    const factors = rangeOver(printed.constructionMachine.factors, (recovery, sinking) =>
      new Decimal(price).times(recovery).minus(new Decimal(salvage).times(sinking)).div(printed.constructionMachine.hours),
    );
    const ours = capitalRecovery(money(price), money(salvage), rate, n).div(printed.constructionMachine.hours);
    checkApart(ours, perHour, source, capitalRecovery, factors);
  });
});

describe("field capacity", () => {
  it.each(printed.fieldCapacities)("is $printed $unit an hour at a speed of $speed, $width wide", (row) => {
    const capacity = fieldCapacity(row.unit, new Decimal(row.speed), new Decimal(row.width), share(row.efficiency));
    check(capacity, row.printed, sources["Michigan State capacity"], fieldCapacity);
  });
});

describe("labour", () => {
  it("is 1.1 hours for an hour of the machine (farmdoc)", () => {
    const labour = new Decimal(printed.illinoisTractors.wage).times(labourPerMachineHour);
    check(labour, printed.illinoisTractors.labour, sources["farmdoc tractors"], "labourPerMachineHour");
    for (const { power, overhead, fuelAndLube, total } of printed.illinoisTractors.rows)
      check(labour.plus(overhead).plus(fuelAndLube), total, sources["farmdoc tractors"], "labourPerMachineHour", `${power} hp in all`);
  });
});

describe("own or hire", () => {
  it("breaks even at 58.8 acres where 1,000 a year stands against 17 an acre (own example)", () => {
    const result = ownOrHire(moneyPerYear("1000"), moneyPerArea("8"), moneyPerArea("25"), area("100"));
    check(result.breakEvenArea, "58.8", sources["own or hire"], ownOrHire, "break-even area");
    check(result.own, "18.00", sources["own or hire"], ownOrHire, "own");
    check(result.saved, "7.00", sources["own or hire"], ownOrHire, "saved");
  });
});

checksPage("Machinery");
