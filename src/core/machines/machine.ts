/**
 * A machine as the core takes it: one implement and the tractor that pulls it, or one self-propelled machine.
 *
 * The measures go with the workbook's area unit. Acres: PTO horsepower, feet, miles an hour, gallons. Hectares:
 * kilowatts, metres, kilometres an hour, litres.
 */
import type { Decimal } from "../numbers/decimal";
import type { EntryRef } from "../row";
import type { RemainingValueClass } from "../tables/remainingValue";
import type { RepairClass } from "../tables/repairFactors";
import type { Hours, Money, MoneyPerHour, Share, Years, YearlyRate } from "../numbers/units";

/** The tractor, the implement, or the self-propelled machine: what is owned, wears and loses value on its own. */
export type MachinePart = {
  /** Parts of the same name are one thing that several machines use, such as a tractor before two implements. */
  readonly name: string;
  /** What it costs new today. Salvage value and repairs are counted on it even where less was paid. */
  readonly listPrice: Money;
  /** What was paid, or what it is worth to the farm at `age`. */
  readonly purchasePrice: Money;
  /** Years old when it was bought at that price; 0 for a new one. */
  readonly age: Years;
  /** Years from then until it is sold or traded, above zero. */
  readonly yearsKept: Years;
  /** Hours of all its work in a year; `null`: what the season's own passes take. */
  readonly hoursAYear: Hours | null;
  /** `null`: no repairs are computed; they are entered as they come. */
  readonly repairClass: RepairClass | null;
  /** Salvage value by class or as stated; `null`: worth nothing in the end. */
  readonly salvage: { readonly by: RemainingValueClass } | { readonly stated: Money } | null;
};

export type Machine = {
  readonly name: string;
  /** The implement, or the self-propelled machine. */
  readonly main: MachinePart;
  /** `null` where it is self-propelled. */
  readonly tractor: MachinePart | null;
  /** PTO horsepower (kilowatts) of the engine that does the work; `null`: no fuel is computed from it. */
  readonly power: Decimal | null;
  /** Feet (metres). */
  readonly width: Decimal;
  /** Miles (kilometres) an hour. */
  readonly speed: Decimal;
  readonly fieldEfficiency: Share;
  /** Gallons (litres) of a sprayer's tank; `null`: it has none, or it is not entered. */
  readonly tankSize: Decimal | null;
  /** Interest on its value a year, less inflation. */
  readonly realRate: YearlyRate;
  /** Taxes, insurance and housing a year, as a fraction of the mean of purchase price and salvage value. */
  readonly taxesInsuranceHousing: YearlyRate;
  readonly wage: MoneyPerHour;
  /** Whether the hours are paid for in money or are the grower's own. */
  readonly labour: "hired labour" | "unpaid labour";
  /** Money for a gallon (litre). */
  readonly fuelPrice: Money;
  /** Gallons an acre (litres a hectare) as measured; `null`: computed from the power. */
  readonly fuelPerArea: Decimal | null;
  readonly source: EntryRef;
};
