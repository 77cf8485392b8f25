/** The columns of the table Machines. */
import { remainingValueClasses } from "../../core/tables/remainingValue";
import { repairClasses } from "../../core/tables/repairFactors";
import { choice, declared, money, quantity, rate, share, text } from "./column";

const machineLabour = ["hired labour", "unpaid labour"] as const;

/**
 * What a machine is valued by: of the implement, or under headings that begin with "Tractor" of what pulls it, which only some
 * rows need.
 */
const part = (of: "implement" | "tractor") => {
  const name = (words: string) => (of === "implement" ? words : `Tractor ${words.charAt(0).toLowerCase()}${words.slice(1)}`);
  const needed = of === "implement" ? ({ required: true } as const) : {};
  return {
    listPrice: money(name("List price"), { ...needed, hint: "What it costs new today; salvage and repairs are counted on it." }),
    purchasePrice: money(name("Purchase price"), { hint: "What was paid, or what it is worth to you. Blank: the list price." }),
    age: quantity(name("Age"), { unit: "years", hint: "Years old when bought at that price." }),
    yearsKept: quantity(name("Years kept"), { unit: "years", ...needed, range: "above zero", hint: "Years until it is sold or traded." }),
    hoursAYear: quantity(name("Hours a year"), {
      unit: "hours",
      range: "above zero",
      hint: "Blank: the hours of the season's own passes.",
    }),
    repairClass: choice(name("Repair class"), repairClasses, {
      hint: "Computes repairs by published factors. Blank: enter repairs as they come.",
      width: 20,
    }),
    remainingValueClass: choice(name("Remaining value class"), remainingValueClasses, {
      hint: "Computes what it is worth in the end. Blank: nothing, or the salvage value.",
    }),
    salvage: money(name("Salvage value"), { hint: "What it will be worth, money." }),
  };
};

export type PartColumns = ReturnType<typeof part>;

/** Each part's columns by themselves, and all of them in the order of a new table. */
export const implementColumns = part("implement");
export const tractorColumns = part("tractor");

const prefixed = (columns: PartColumns) => ({
  tractorListPrice: columns.listPrice,
  tractorPurchasePrice: columns.purchasePrice,
  tractorAge: columns.age,
  tractorYearsKept: columns.yearsKept,
  tractorHoursAYear: columns.hoursAYear,
  tractorRepairClass: columns.repairClass,
  tractorRemainingValueClass: columns.remainingValueClass,
  tractorSalvage: columns.salvage,
});

export const machineColumns = declared("Machines", {
  machine: text("Machine", {
    required: true,
    hint: "The implement with its tractor, or the self-propelled machine.",
    width: 24,
    words: ["implement", "equipment"],
  }),
  ...implementColumns,
  power: quantity("Power", {
    unit: "power",
    range: "above zero",
    hint: "PTO horsepower (kilowatts with hectares) that does the work.",
    movesNothing: [
      { where: { column: "Fuel per acre", says: "filled" }, why: "Fuel as measured counts before fuel computed from the power." },
    ],
  }),
  width: quantity("Width", { unit: "along", required: true, range: "above zero", hint: "Feet (metres)." }),
  speed: quantity("Speed", { unit: "speed", required: true, range: "above zero", hint: "Miles (kilometres) an hour." }),
  fieldEfficiency: share("Field efficiency", { hint: "Part of the time that it works. Blank: 70 %." }),
  fuelPerArea: quantity("Fuel per acre", { unit: "fuel volume", hint: "As measured. Blank: computed from the power." }),
  fuelPrice: money("Fuel price", { hint: "Money per gallon (litre). Blank: the setting Fuel per gallon." }),
  realRate: rate("Real interest rate", { hint: "Interest less inflation on what it is worth; 0 for none." }),
  taxesInsuranceHousing: rate("Taxes, insurance, housing", { hint: "A year, as a part of its mean value. Blank: 1 %." }),
  wage: money("Labour per hour", { unit: "money per hour", hint: "Blank: the setting Labour per hour." }),
  labour: choice("Labour", machineLabour, { hint: "Whether the hours are paid.", width: 16 }),
  tankSize: quantity("Tank size", {
    range: "above zero",
    hint: "Gallons (litres) of a sprayer. Mixes without a size take it where one machine alone has one.",
  }),
  tractor: text("Tractor", { hint: "The tractor's name; the same name on every row that it pulls. Blank: self-propelled." }),
  ...prefixed(tractorColumns),
});
