/** The debt test and insurance payments against exact fractions, to 25 digits. */
import fc from "fast-check";
import { describe, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import type { Kind } from "../../src/core/kinds";
import { farmYear } from "../../src/core/lender/farmYear";
import { guarantee, insurancePayment, type Policy } from "../../src/core/lender/guarantee";
import { repayment } from "../../src/core/lender/repayment";
import type { Season } from "../../src/core/season";
import { seasonFigures } from "../../src/core/seasonFigures";
import { moneyPerUnit, share, yieldPerArea } from "../../src/core/numbers/units";
import { costsAt } from "./exactCosts";
import { areaOf, unitsAt } from "./exactFields";
import { itemAccount } from "./exactItems";
import { rentAboveOf } from "./exactRent";
import { agree, compare, divided, isZero, larger, minus, plus, read, smaller, times, total, zero, type Fraction } from "./fraction";
import { judge, runs } from "./judge";
import { growingSeason, harvestedSeason, underFlexibleRent } from "./randomSeason";

const cashKinds: readonly Kind[] = [
  "seed",
  "fertilizer",
  "crop protection",
  "fuel",
  "repairs",
  "custom work",
  "hired labour",
  "drying",
  "haul",
  "crop insurance",
  "supplies",
  "irrigation",
  "other operating",
  "operating interest",
  "cash rent",
  "land tax",
  "overhead",
  "term interest",
];

/** What all fields are charged of some kinds in the outlook, what is no cash left out. */
function paid(season: Season, kinds: readonly Kind[]): Fraction {
  const rents = kinds.includes("cash rent") ? season.fields.map((field) => rentAboveOf(season, field, "outlook")) : [];
  return total([
    ...rents,
    ...costsAt(
      season,
      season.items.map((item) => itemAccount(season, item)),
      "outlook",
    )
      .filter(({ cash, kind }) => cash && kinds.includes(kind))
      .map(({ field, amount, perUnit }) =>
        plus(
          amount,
          times(
            perUnit,
            unitsAt(
              season,
              season.fields.find(({ name }) => name === field)!,
              "outlook",
            ),
          ),
        ),
      ),
  ]);
}

function income(season: Season): Fraction {
  return total(
    season.crops.map((crop) => {
      const fields = season.fields.filter((field) => field.crop === crop.name);
      if (fields.length === 0) return zero;
      const sales = season.sales.filter(
        (sale) =>
          sale.crop === crop.name &&
          (season.settings.seasonYear === null || [null, season.settings.seasonYear].includes(sale.cropYear ?? null)),
      );
      const left = minus(
        total(fields.map((field) => unitsAt(season, field, "outlook"))),
        total(sales.map(({ quantity }) => read(quantity))),
      );
      return plus(
        plus(total(sales.map(({ quantity, price }) => times(read(quantity), read(price)))), times(larger(left, zero), read(crop.price))),
        times(read(crop.otherIncomePerArea), total(fields.map(areaOf))),
      );
    }),
  );
}

function debtFaults(season: Season): readonly string[] {
  const year = farmYear(seasonFigures(season));
  const is = repayment(year);
  const [interest, principal] = [paid(season, ["term interest"]), paid(season, ["term principal"])];
  const netIncome = minus(income(season), paid(season, cashKinds));
  const capacity = minus(plus(netIncome, interest), paid(season, ["income tax", "family living"]));
  const due = plus(interest, principal);
  const wanted = {
    income: income(season),
    cashCosts: paid(season, cashKinds),
    capacity,
    due,
    margin: minus(capacity, due),
    coverage: isZero(due) ? null : divided(capacity, due),
  };
  const actual = {
    income: year.income,
    cashCosts: year.cashCosts,
    capacity: is.capacity,
    due: is.debtService,
    margin: is.margin,
    coverage: is.termDebtCoverage,
  };
  return (Object.keys(wanted) as (keyof typeof wanted)[])
    .filter((name) => (actual[name] === null || wanted[name] === null ? actual[name] !== wanted[name] : !agree(actual[name], wanted[name])))
    .map((name) => `${name}: ${String(actual[name]?.toFixed())}`);
}

const decimal = (most: number, places: number) =>
  fc.integer({ min: 0, max: most * 10 ** places }).map((whole) => new Decimal(`${whole}e-${places}`));
const policies = fc.record({
  form: fc.constantFrom("revenue", "yield"),
  approvedYield: decimal(300, 1).map(yieldPerArea),
  coverage: decimal(1, 2).map(share),
  projectedPrice: decimal(15, 2).map(moneyPerUnit),
  harvestPrice: fc.option(decimal(40, 2).map(moneyPerUnit)),
  harvestPriceOption: fc.boolean(),
  priceCap: fc.constantFrom("1.4", "2", "1").map((text) => new Decimal(text)),
  harvested: decimal(300, 1).map(yieldPerArea),
});

/** The missing yield at the projected price; or what the crop at the harvest price, capped, falls short of the guarantee. */
function policyFaults({ harvested, ...policy }: Policy & { readonly harvested: ReturnType<typeof yieldPerArea> }): readonly string[] {
  const [bushels, projected, at] = [times(read(policy.approvedYield), read(policy.coverage)), read(policy.projectedPrice), read(harvested)];
  const harvest = policy.harvestPrice === null ? projected : smaller(read(policy.harvestPrice), times(projected, read(policy.priceCap)));
  const raised = policy.form === "revenue" && policy.harvestPriceOption ? larger(projected, harvest) : projected;
  const short = policy.form === "yield" ? times(minus(bushels, at), projected) : minus(times(bushels, raised), times(at, harvest));
  const wanted = { guarantee: times(bushels, raised), payment: compare(short, zero) > 0n ? short : zero };
  const actual = { guarantee: guarantee(policy).perArea, payment: insurancePayment(policy, harvested).perArea };
  return (Object.keys(wanted) as (keyof typeof wanted)[])
    .filter((name) => !agree(actual[name], wanted[name]))
    .map((name) => `${name}: ${actual[name].toFixed()}`);
}

describe("the debt test", () => {
  it("has the figures of exact fractions to 25 digits", { timeout: 900_000 }, () => {
    judge("growing seasons, debt test against exact fractions", growingSeason, debtFaults);
    judge(
      "growing seasons, debt test against exact fractions, under flexible rent",
      underFlexibleRent(growingSeason),
      debtFaults,
      runs / 2,
    );
    judge("harvested seasons, debt test against exact fractions", harvestedSeason, debtFaults);
  });
});

describe("an insurance policy", () => {
  it("guarantees and pays what exact fractions say", { timeout: 900_000 }, () => {
    judge("policies against exact fractions", policies, policyFaults);
  });
});
