import type { Decimal } from "../numbers/decimal";

/**
 * Why money is paid and not charged, or charged and not paid. `stock`: bought and not used. `opening stock`: paid last season. `other
 * season`: bills for another one. `landlord`: paid before a landlord's
 * part comes back. `next crop`: work after the last load. `machine work`: bills for what machine rows compute, and what is computed
 * and paid by those bills. `no field`: no field bears it. `beyond yield`: grain is sold that the outlook does not let expect.
 * `interest by balance`: the loan's balance bears another interest than the costs are charged.
 */
export const differenceReasons = [
  "stock",
  "opening stock",
  "other season",
  "landlord",
  "next crop",
  "machine work",
  "no field",
  "beyond yield",
  "interest by balance",
] as const;
export type DifferenceReason = (typeof differenceReasons)[number];
/** Money that is paid beyond what is charged; below zero where more is charged. A reason that is left out is none. */
export type Differences = Partial<Readonly<Record<DifferenceReason, Decimal>>>;
