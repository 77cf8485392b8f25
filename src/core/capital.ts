/** Whether the full layer charges interest on the capital in a field, so that term interest leaves it there. */
import { nearestLines } from "./budgetLines/nearestLines";
import { isOver } from "./over";
import type { Season } from "./season";

/**
 * `charged`: machine ownership or a land charge stands for the capital in the field. `none`: somebody has entered 0, so
 * that there is none to charge. `unsaid`: nothing is entered.
 */
export type Capital = "charged" | "none" | "unsaid";

/**
 * Of every field, by its name: its land charge, other costs and the budget lines that count there of both kinds, and machines at
 * work in it.
 */
export function capitalOf({
  fields,
  otherCosts,
  operations,
  budget,
}: Pick<Season, "fields" | "otherCosts" | "operations" | "budget">): ReadonlyMap<string, Capital> {
  const ofCapital = ["machine ownership", "land charge"] as const;
  const entered = otherCosts.filter(({ kind }) => kind === "machine ownership" || kind === "land charge");
  const [fieldsWorked, cropsWorked] = [new Set<string>(), new Set<string>()];
  for (const { cost, target } of operations) {
    if (cost.basis !== "machine") continue;
    if ("field" in target) fieldsWorked.add(target.field);
    else cropsWorked.add(target.crop);
  }
  return new Map(
    fields.map((field) => {
      const lines = ofCapital.flatMap((kind) =>
        nearestLines(
          budget.filter((line) => line.kind === kind),
          field,
        ),
      );
      const charges = [...entered.filter(({ over }) => isOver(over, field)), ...lines].map(({ amount }) => amount);
      if (field.landChargePerArea !== null) charges.push(field.landChargePerArea);
      const charged = charges.some((charge) => !charge.isZero()) || fieldsWorked.has(field.name) || cropsWorked.has(field.crop);
      return [field.name, charged ? "charged" : charges.length > 0 ? "none" : "unsaid"];
    }),
  );
}
