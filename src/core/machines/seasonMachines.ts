/** The machines of a season: their hours from the work that they do, and what each costs. */
import { sum, zero } from "../numbers/decimal";
import { area, hours, type Area, type AreaUnit, type Hours } from "../numbers/units";
import { fieldCapacity, hoursFor } from "./fieldCapacity";
import type { Machine, MachinePart } from "./machine";
import { machineCost, type MachineCost } from "./machineCost";

/** Area that each machine goes over in the season, passes counted, by the machine's name. */
export type AreaWorked = ReadonlyMap<string, Area>;

/**
 * What each machine costs. The hours of a part are those stated; where none are, the hours that the season's passes of
 * all machines with a part of that name take: a tractor before two implements carries the hours of both.
 */
export function seasonMachines(machines: readonly Machine[], unit: AreaUnit, worked: AreaWorked): ReadonlyMap<string, MachineCost> {
  const byPart = new Map<string, Hours>();
  for (const machine of machines) {
    const taken = seasonHours(machine, unit, worked);
    // One machine may name a part twice only by mistake; its hours still count once.
    for (const key of new Set(partsOf(machine).map(partKey))) byPart.set(key, hours(sum([byPart.get(key) ?? zero, taken])));
  }
  const hoursOf = (part: MachinePart): Hours => part.hoursAYear ?? byPart.get(partKey(part))!;
  return new Map(
    machines.map((machine) => [
      machine.name,
      machineCost(machine, unit, { main: hoursOf(machine.main), tractor: machine.tractor === null ? null : hoursOf(machine.tractor) }),
    ]),
  );
}

/** Hours that a machine works in the season: its area ÷ its field capacity. */
export const seasonHours = (machine: Machine, unit: AreaUnit, worked: AreaWorked): Hours =>
  hoursFor(worked.get(machine.name) ?? area(zero), fieldCapacity(unit, machine.speed, machine.width, machine.fieldEfficiency));

const partsOf = ({ main, tractor }: Machine): readonly MachinePart[] => (tractor === null ? [main] : [main, tractor]);
const partKey = ({ name }: MachinePart): string => name.trim().toLowerCase();
