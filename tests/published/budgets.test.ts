import { describe, expect, it } from "vitest";
import { expectPrinted } from "../support/expectPrinted";
import { australianBudgets } from "./australianBudgets";
import { breakEvens } from "./breakEvens";
import { figureOf, type Budget, type Printed } from "./budget";
import { isListed } from "./disagreements";
import { iowaBudgets } from "./iowaBudgets";
import { kenyanBudget } from "./kenyanBudget";
import { margins } from "./margins";
import { minnesotaBudgets } from "./minnesotaBudgets";
import { rutgersBudget } from "./rutgersBudget";
import { texasBudgets } from "./texasBudgets";

const budgets: readonly Budget[] = [
  ...minnesotaBudgets,
  ...iowaBudgets,
  rutgersBudget,
  ...texasBudgets,
  ...australianBudgets,
  kenyanBudget,
  ...margins,
  ...breakEvens,
];

const titled = (printed: readonly Printed[]) =>
  printed.map((each) => ({
    ...each,
    of: [each.crop ?? "", each.figure, ...(each.parts ?? []), each.times === undefined ? "" : `on ${each.times}`]
      .filter((word) => word !== "")
      .join(" "),
  }));

describe.each(budgets)("the published budget $id", (budget) => {
  it.each(titled(budget.printed.filter(({ ours }) => ours === undefined)))("comes to $prints: $of", (printed) => {
    expectPrinted(figureOf(budget, printed), printed.prints);
  });

  const apart = titled(budget.printed.filter(({ ours }) => ours !== undefined));
  if (apart.length > 0)
    it.each(apart)("prints $prints where we get $ours, a listed disagreement: $of", (printed) => {
      expectPrinted(figureOf(budget, printed), printed.ours!);
      expect(printed.ours).not.toBe(printed.prints);
      expect(isListed(budget.id, printed.prints, printed.ours!)).toBe(true);
    });
});
