/** What a bill that is being typed will do, said before it is added: against the planned price, and what an acre costs before and after. */
import { layerCosts, type Layer } from "../../core/kinds";
import type { Money } from "../../core/numbers/units";
import type { SeasonReport } from "../../workbook/seasonReport";
import { shownMoney } from "../../workbook/shown";
import type { Format } from "../format";

/** "Plan price 268.00 a bag: 2.00 lower."; empty where no plan price is known. @param paid per pack, freight and rebate included */
export function againstPlan(paid: Money, plan: Money | null, pack: string, format: Format): string {
  if (plan === null) return "";
  const more = shownMoney(paid).minus(shownMoney(plan));
  const differs = more.isZero() ? "as planned" : `${format.money(more.abs())} ${more.isNegative() ? "lower" : "higher"}`;
  return `Plan price ${format.money(plan)} a ${pack}: ${differs}.`;
}

/**
 * "Corn 425.69 → 428.79 an acre, price needed 2.38 → 2.40." for every crop that moves, by the same reading that follows when it
 * is added.
 */
export function rowEffect(before: SeasonReport, after: SeasonReport, layer: Layer, format: Format): string {
  const crops = after.figures.crops.flatMap(({ crop, outlook }) => {
    const old = before.figures.crops.find((each) => each.crop === crop)?.outlook;
    if (old === undefined) return [];
    const [from, to] = [old.costPerArea.layers[layer], outlook.costPerArea.layers[layer]];
    if (shownMoney(from).eq(shownMoney(to))) return [];
    const [needed, needs] = [format.priceNeeded(old.breakEvenPrice[layer]), format.priceNeeded(outlook.breakEvenPrice[layer])];
    return [
      (
        `${crop} ${format.money(from)} → ${format.money(to)} an ${format.areaName}, price needed ` +
        `${needed === needs ? `${needs} stays` : `${needed} → ${needs}`}`
      ).replace(" an hectare", " a hectare"),
    ];
  });
  const found = after.problems.filter(
    ({ code, at }) => !before.problems.some((each) => each.code === code && each.at.table === at.table && each.at.row === at.row),
  ).length;
  const told = found === 0 ? "" : ` ${found === 1 ? "One entry" : `${found} entries`} to fix or to check would come with it.`;
  return `${crops.length === 0 ? `No cost per ${format.areaName} moves by a cent (${layerCosts[layer]}).` : `${crops.join("; ")} (${layerCosts[layer]}).`}${told}`;
}
