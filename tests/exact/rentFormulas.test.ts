/**
 * The formulas of the lender pages where several rents go by price and yield: a spreadsheet that works them out comes to a price and a
 * yield at which the crop just pays, rounded up, and a step below it does not.
 */
import { expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { moneyPerArea, share } from "../../src/core/numbers/units";
import { rentAbove, type RentStep } from "../../src/core/flexibleRent";
import { engineInNode } from "../../src/host/embedded/recalculation/loadInNode";
import {
  breakEvenPriceFormula,
  breakEvenYieldFormula,
  netFormula,
  type BalanceCells,
} from "../../src/workbook/sheets/lender/lenderFormulas";
import { Habits } from "./typing";

/** One to three rents in order of their gross; together the landlords take less than the operator's part of more. */
const rents = (habits: Habits): readonly RentStep[] =>
  Array.from({ length: 1 + habits.below(3) }, () => 400 + habits.below(700))
    .sort((one, other) => one - other)
    .map((from) => ({ from: moneyPerArea(String(from)), share: share(`0.${10 + habits.below(20)}`) }));

const season = (habits: Habits) => ({
  fixed: new Decimal(300 + habits.below(600)),
  moving: new Decimal(habits.below(60)).div(100),
  otherIncome: new Decimal(habits.below(40)),
  yieldHere: new Decimal(120 + habits.below(120)),
  price: new Decimal(300 + habits.below(300)).div(100),
  rent: rents(habits),
});
type Case = ReturnType<typeof season>;
const netAt = ({ fixed, moving, otherIncome, rent }: Case, price: Decimal, yieldHere: Decimal): Decimal =>
  price
    .minus(moving)
    .times(yieldHere)
    .plus(otherIncome)
    .minus(fixed)
    .minus(rentAbove(rent, price.times(yieldHere)));

const cases = Array.from({ length: 60 }, (_, index) => season(new Habits(1 + index * 7919, false, "1900")));
const cells = ({ fixed, moving, otherIncome, yieldHere, price, rent }: Case): BalanceCells => ({
  ...{ fixed: fixed.toFixed(), moving: moving.toFixed(), otherIncome: otherIncome.toFixed(), share: "1" },
  ...{ yieldHere: yieldHere.toFixed(), price: price.toFixed(), rent },
});

it("come to the least price and yield that pay the rents that go with them", async () => {
  const formulas = cases.flatMap((each, row) =>
    [breakEvenPriceFormula, breakEvenYieldFormula, netFormula].map((formula, column) => ({
      ...{ sheet: 0, row, column },
      formula: formula(cells(each))!.slice(1),
    })),
  );
  const answers = await engineInNode({ sheets: ["Pages"], constants: [], formulas });
  expect(cases.filter(({ rent }) => rent.length > 1).length).toBeGreaterThan(20);
  cases.forEach((each, index) => {
    const [price, yieldHere, net] = answers.slice(index * 3).map((answer) => new Decimal(answer as number));
    const said = JSON.stringify(each);
    expect(netAt(each, price!, each.yieldHere).gte(0), said).toBe(true);
    expect(netAt(each, price!.minus("0.01"), each.yieldHere).lt(0), said).toBe(true);
    expect(netAt(each, each.price, yieldHere!).gte(0), said).toBe(true);
    expect(netAt(each, each.price, yieldHere!.minus("0.1")).lt(0), said).toBe(true);
    expect(net!.toFixed(2), said).toBe(netAt(each, each.price, each.yieldHere).toFixed(2));
  });
});
