/** What each machine costs at each stage, its hours taken from the operations of that stage. */
import type { Stage } from "./figures";
import { seasonMachines } from "./machines/seasonMachines";
import { workAt, type MachineCosts } from "./operationCosts";
import type { Operation, Season } from "./season";
import { Tally } from "./numbers/tally";
import { area } from "./numbers/units";
import type { FieldWork, Work, WorkByField } from "./work";

/** A machine carries its year on all its hours, those for the next crop among them. */
const forNextCrop = ({ next }: FieldWork<Operation>, stage: Stage): readonly Work<Operation>[] =>
  stage === "plan" ? [] : stage === "final" ? next.done : [...next.done, ...next.left];

export function seasonMachineCosts(
  { machines, settings }: Pick<Season, "machines" | "settings">,
  operations: WorkByField<Operation>,
): MachineCosts {
  const at = (stage: Stage) => {
    if (machines.length === 0) return new Map<string, never>();
    const worked = new Map<string, Tally>();
    for (const works of operations.values()) {
      for (const work of works.values()) {
        for (const { row, areaPasses } of [...workAt(work, stage), ...forNextCrop(work, stage)]) {
          if (row.cost.basis !== "machine") continue;
          const { machine } = row.cost;
          worked.set(machine, (worked.get(machine) ?? new Tally()).add(areaPasses));
        }
      }
    }
    return seasonMachines(machines, settings.areaUnit, new Map([...worked].map(([name, tally]) => [name, area(tally.total())])));
  };
  return { plan: at("plan"), outlook: at("outlook"), final: at("final") };
}
