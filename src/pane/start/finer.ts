/** What would make the figures of a rough budget finer, the most useful first. */
import type { Season } from "../../core/season";
import { chargedAsUsed, type Kind } from "../../core/kinds";

export type Finer = { readonly id: "bills" | "rates" | "machines" | "fields"; readonly words: string; readonly table: string };

const machineKinds: ReadonlySet<Kind> = new Set<Kind>(["fuel", "repairs", "machine ownership"]);

/** All steps that are still to do; none where nothing is budgeted roughly. */
export function finerSteps({ budget, purchases, bills, applications, machines, fields, crops }: Season): readonly Finer[] {
  if (budget.length === 0) return [];
  const isBudgeted = (kinds: ReadonlySet<Kind>) => budget.some(({ kind }) => kinds.has(kind));
  const whole = fields.filter(({ name }) => crops.some((crop) => name === `All ${crop.name.toLowerCase()}`)).map(({ name }) => name);
  const steps: readonly (Finer & { readonly isOpen: boolean })[] = [
    {
      id: "bills",
      table: "Purchases",
      isOpen: purchases.length + bills.length === 0,
      words: "Enter bills as they come: what is paid takes the place of the budget, kind by kind.",
    },
    {
      id: "fields",
      table: "Fields",
      isOpen: whole.length > 0,
      words: `Put your own fields in place of ${whole.join(" and ")}: each gets its own cost and break-evens.`,
    },
    {
      id: "rates",
      table: "Applications",
      isOpen: applications.length === 0 && isBudgeted(chargedAsUsed),
      words: "Enter rates in Applications: then it is known what is still to buy.",
    },
    {
      id: "machines",
      table: "Machines",
      isOpen: machines.length === 0 && isBudgeted(machineKinds),
      words: "Describe your machines: fuel, repairs and ownership are worked out from them.",
    },
  ];
  return steps.filter(({ isOpen }) => isOpen).map(({ id, words, table }) => ({ id, words, table }));
}
