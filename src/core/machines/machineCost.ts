/** What a machine costs per area and per hour, cost by cost. */
import { capitalRecovery } from "../capitalRecovery";
import { Decimal, sum, zero } from "../numbers/decimal";
import type { Kind } from "../kinds";
import {
  moneyPerArea,
  moneyPerHour,
  moneyPerYear,
  type AreaPerHour,
  type AreaUnit,
  type Hours,
  type MoneyPerArea,
  type MoneyPerHour,
  type MoneyPerYear,
} from "../numbers/units";
import { fieldCapacity } from "./fieldCapacity";
import { dieselPerHour, lubePerFuel } from "./fuel";
import type { Machine, MachinePart } from "./machine";
import { repairsPerYear, salvageValue } from "./machineWear";

/** Hours of labour in an hour of machine work: getting ready, greasing and the road (PM 710: 1.1 to 1.2). */
export const labourPerMachineHour = new Decimal("1.1");

export type MachineCostName = "Fuel" | "Lube" | "Labour" | "Repairs" | "Capital recovery" | "Taxes, insurance, housing";

/** One cost of a machine. Running costs are of the operating layer, unpaid labour and ownership of the full layer. */
type MachineCostLine = {
  readonly name: MachineCostName;
  readonly kind: Extract<Kind, "fuel" | "hired labour" | "unpaid labour" | "repairs" | "machine ownership">;
  readonly perHour: MoneyPerHour;
  readonly perArea: MoneyPerArea;
};

export type MachineCost = {
  readonly machine: Machine;
  readonly capacity: AreaPerHour;
  readonly lines: readonly MachineCostLine[];
  /** Fuel, lube, labour and repairs: what another acre costs. */
  readonly running: MoneyPerArea;
  /** Capital recovery, taxes, insurance and housing: what is paid whether or not the machine runs. */
  readonly ownership: MoneyPerArea;
  readonly perArea: MoneyPerArea;
  /** Per area by the kind under which each cost counts. */
  readonly byKind: ReadonlyMap<Kind, MoneyPerArea>;
};

/** Hours a year of each part, all its work together. */
export type PartHours = { readonly main: Hours; readonly tractor: Hours | null };

/** What a part costs a year to own. */
export type OwnershipPerYear = { readonly capitalRecovery: MoneyPerYear; readonly taxesInsuranceHousing: MoneyPerYear };

/** Capital recovery at the real rate, and taxes, insurance and housing on the mean of price and salvage value. */
export function ownershipPerYear(
  part: MachinePart,
  hoursAYear: Hours,
  { realRate, taxesInsuranceHousing }: Pick<Machine, "realRate" | "taxesInsuranceHousing">,
): OwnershipPerYear {
  const salvage = salvageValue(part, hoursAYear);
  return {
    capitalRecovery: capitalRecovery(part.purchasePrice, salvage, realRate, part.yearsKept),
    taxesInsuranceHousing: moneyPerYear(part.purchasePrice.plus(salvage).div("2").times(taxesInsuranceHousing)),
  };
}

/**
 * Every cost of a machine at the hours that its parts work in a year. A part that does not work at all this season
 * costs nothing per hour, because there is no hour to carry it.
 */
export function machineCost(machine: Machine, unit: AreaUnit, partHours: PartHours): MachineCost {
  const capacity = fieldCapacity(unit, machine.speed, machine.width, machine.fieldEfficiency);
  const parts = [{ part: machine.main, hours: partHours.main }];
  if (machine.tractor !== null && partHours.tractor !== null) parts.push({ part: machine.tractor, hours: partHours.tractor });
  const worked = parts.filter(({ hours }) => hours.gt("0"));
  const perHourOfAll = (perYear: (part: MachinePart, hours: Hours) => Decimal): Decimal =>
    sum(worked.map(({ part, hours }) => perYear(part, hours).div(hours)));
  const owned = (name: keyof OwnershipPerYear) => perHourOfAll((part, hours) => ownershipPerYear(part, hours, machine)[name]);
  const fuel = fuelPerHour(machine, unit, capacity);
  const line = (name: MachineCostName, kind: MachineCostLine["kind"], perHour: Decimal): MachineCostLine => ({
    name,
    kind,
    perHour: moneyPerHour(perHour),
    perArea: moneyPerArea(perHour.div(capacity)),
  });
  const lines = [
    line("Fuel", "fuel", fuel),
    line("Lube", "fuel", fuel.times(lubePerFuel)),
    line("Labour", machine.labour, machine.wage.times(labourPerMachineHour)),
    line("Repairs", "repairs", perHourOfAll(repairsPerYear)),
    line("Capital recovery", "machine ownership", owned("capitalRecovery")),
    line("Taxes, insurance, housing", "machine ownership", owned("taxesInsuranceHousing")),
  ];
  const total = (of: readonly MachineCostLine[]) => moneyPerArea(sum(of.map((each) => each.perArea)));
  const ofKind = (kind: Kind) => lines.filter((each) => each.kind === kind);
  return {
    machine,
    capacity,
    lines,
    running: total(lines.filter((each) => each.kind !== "machine ownership")),
    ownership: total(ofKind("machine ownership")),
    perArea: total(lines),
    byKind: new Map([...new Set(lines.map((each) => each.kind))].map((kind) => [kind, total(ofKind(kind))])),
  };
}

/** Money for fuel in an hour: by the amount measured per area, else by the power, else none. */
function fuelPerHour({ power, fuelPrice, fuelPerArea }: Machine, unit: AreaUnit, capacity: AreaPerHour): Decimal {
  if (fuelPerArea !== null) return fuelPerArea.times(capacity).times(fuelPrice);
  return power === null ? zero : dieselPerHour(unit, power).times(fuelPrice);
}
