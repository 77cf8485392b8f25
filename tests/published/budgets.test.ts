import { describe, it } from "vitest";
import { australianBudgets } from "./australianBudgets";
import { breakEvens } from "./breakEvens";
import { figureOf, formulaOf, rangeOfFigure, sourceOf, type Budget, type Printed } from "./budget";
import { check, checkApart, checksPage } from "./checks";
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
    check(figureOf(budget, printed), printed.prints, sourceOf(budget), formulaOf(printed), { name: printed.of });
  });

  const apart = titled(budget.printed.filter(({ ours }) => ours !== undefined));
  if (apart.length > 0)
    it.each(apart)("prints $prints where we get $ours, a listed disagreement: $of", (printed) => {
      const pair = { prints: printed.prints, ours: printed.ours! };
      checkApart(figureOf(budget, printed)!, pair, sourceOf(budget), formulaOf(printed), rangeOfFigure(budget, printed), {
        name: printed.of,
      });
    });
});

checksPage("Budgets of a season");
