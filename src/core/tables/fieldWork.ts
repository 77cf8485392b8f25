/**
 * Usual speed and field efficiency of a few machines (ASABE D497, table 3), all of them from memory: a starting point
 * for an entry, never a figure that is used unseen.
 */
import { Decimal } from "../decimal";

export type UsualFieldWork = {
  readonly machine: string;
  readonly efficiency: Decimal;
  readonly efficiencyFrom: Decimal;
  readonly efficiencyTo: Decimal;
  /** Miles an hour. */
  readonly speed: Decimal;
  readonly speedFrom: Decimal;
  readonly speedTo: Decimal;
};

const usual = (machine: string, efficiency: readonly [string, string, string], speed: readonly [string, string, string]): UsualFieldWork => ({
  machine,
  efficiency: new Decimal(efficiency[0]), efficiencyFrom: new Decimal(efficiency[1]), efficiencyTo: new Decimal(efficiency[2]),
  speed: new Decimal(speed[0]), speedFrom: new Decimal(speed[1]), speedTo: new Decimal(speed[2]),
});

export const usualFieldWork: readonly UsualFieldWork[] = [
  usual("row-crop planter", ["0.65", "0.5", "0.75"], ["5.5", "4", "7"]),
  usual("tandem disk", ["0.8", "0.7", "0.9"], ["6", "4", "7"]),
  usual("field cultivator", ["0.85", "0.7", "0.9"], ["7", "5", "8"]),
  usual("chisel plow", ["0.85", "0.7", "0.9"], ["5", "4", "6.5"]),
  usual("self-propelled combine", ["0.7", "0.65", "0.8"], ["3", "2", "5"]),
  usual("boom sprayer", ["0.65", "0.5", "0.8"], ["6.5", "3", "7"]),
];
