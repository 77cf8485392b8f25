/** The table Machines: one implement with its tractor, or one self-propelled machine, a row. */
import { Decimal, zero } from "../../core/decimal";
import type { Machine, MachinePart } from "../../core/machines/machine";
import { measureNamed } from "../../core/measure";
import type { Settings } from "../../core/season";
import { remainingValueClasses } from "../../core/tables/remainingValue";
import { repairClasses } from "../../core/tables/repairFactors";
import { hours, money, moneyPerHour, share, yearlyRate, years } from "../../core/units";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";

export const machineLabour = ["hired labour", "unpaid labour"] as const;
/** Where nothing is entered: common practice, and shown with every machine. */
const usualFieldEfficiency = new Decimal("0.7");
const usualTaxesInsuranceHousing = new Decimal("0.01");

export function readMachines(table: TableReader, names: Names, settings: Settings): readonly Machine[] {
  if (!table.needs("Machine", "List price", "Years kept", "Width", "Speed")) return [];
  const tractors: Tractors = new Map();
  return table.rows((row): Machine | null => {
    const name = names.define(row, { heading: "Machine" });
    const main = partOf(row, "", name);
    const tractor = tractorOf(row, tractors);
    const width = row.needNumber("Width", "above zero");
    const speed = row.needNumber("Speed", "above zero");
    const power = row.number("Power", "above zero");
    const fuelPerArea = row.number("Fuel per acre");
    const wage = orZero(row, "Labour per hour", row.number("Labour per hour") ?? settings.labourPerHour, "labour");
    const burns = power !== null || (fuelPerArea !== null && !fuelPerArea.isZero());
    const typedPrice = row.number("Fuel price") ?? usualFuelPrice(settings);
    const fuelPrice = burns ? orZero(row, "Fuel price", typedPrice, "fuel") : typedPrice ?? zero;
    const realRate = orZero(row, "Real interest rate", row.interestRate("Real interest rate"), "interest on what it is worth");
    if (name === null || main === null || width === null || speed === null) return null;
    if (row.text("Tractor") !== null && tractor === null) return null;
    return {
      name, main, tractor, width, speed, power,
      fieldEfficiency: share(efficiencyOf(row) ?? usualFieldEfficiency),
      realRate: yearlyRate(realRate),
      taxesInsuranceHousing: yearlyRate(row.interestRate("Taxes, insurance, housing") ?? usualTaxesInsuranceHousing),
      wage: moneyPerHour(wage), labour: row.choice("Labour", machineLabour) ?? "unpaid labour",
      fuelPrice: money(fuelPrice), fuelPerArea, source: row.source,
    };
  }, (row) => {
    const name = names.spelled(String(row.cell("Machine")));
    return name === null ? [{ of: "farm" }] : [{ of: "machine", name }];
  });
}

/** A machine that works none of the time does no acre. */
function efficiencyOf(row: Row): Decimal | null {
  const part = row.share("Field efficiency");
  return part?.isZero() === true ? row.fault("not-above-zero", "Field efficiency") : part;
}

/** A price or rate that a machine costs more by; one that nobody entered counts as zero, and not in silence. */
function orZero(row: Row, column: string, value: Decimal | null, without: string): Decimal {
  if (value === null && !row.faults.some((fault) => fault.column === column)) row.fault("machine-zero", column, { like: without });
  return value ?? zero;
}

/** The setting is money per gallon whatever the area unit; a machine of a hectare workbook burns litres. */
const usualFuelPrice = ({ fuelPerGallon, areaUnit }: Settings): Decimal | null =>
  (fuelPerGallon === null || areaUnit === "ac" ? fuelPerGallon : fuelPerGallon.div(measureNamed("gal")!.factor));

/** Each tractor as the first row that names it has it. */
type Tractors = Map<string, { readonly row: Row; readonly part: MachinePart | null }>;

const tractorColumns = ["List price", "Purchase price", "Age", "Years kept", "Hours a year", "Repair class", "Remaining value class", "Salvage value"]
  .map((words) => tractorColumn(words));

/**
 * The tractor of a row. One name is one tractor, whose first row counts: later rows may leave its cells blank, and are told
 * where they say something else.
 */
function tractorOf(row: Row, tractors: Tractors): MachinePart | null {
  const name = row.text("Tractor");
  if (name === null) {
    for (const column of tractorColumns) if (row.text(column) !== null) row.fault("tractor-unnamed", column, { other: { ...row.source, column: "Tractor" } });
    return null;
  }
  const known = tractors.get(plain(name));
  if (known === undefined) {
    const part = partOf(row, "Tractor ", name);
    tractors.set(plain(name), { row, part });
    return part;
  }
  for (const column of tractorColumns) {
    const [said, first] = [row.text(column), known.row.text(column) ?? ""];
    if (said !== null && !isAlike(row, known.row, column)) row.fault("tractor-disagrees", column, { like: first, other: { ...known.row.source, column } });
  }
  return known.part;
}

/** Whether two rows say the same: as numbers where both are some, else as words. */
function isAlike(row: Row, first: Row, column: string): boolean {
  const [one, two] = [row.text(column) ?? "", first.text(column) ?? ""];
  if (plain(one) === plain(two)) return true;
  const [a, b] = column.endsWith("class") ? [null, null] : [row.number(column), first.number(column)];
  return a !== null && b !== null && a.eq(b);
}

function tractorColumn(words: string): string {
  return `Tractor ${words.charAt(0).toLowerCase()}${words.slice(1)}`;
}

/** The columns of the implement, or with "Tractor " before them those of its tractor. */
function partOf(row: Row, before: "" | "Tractor ", name: string | null): MachinePart | null {
  const column = (words: string) => (before === "" ? words : tractorColumn(words));
  const list = row.needNumber(column("List price"));
  const kept = row.needNumber(column("Years kept"), "above zero");
  const paid = row.number(column("Purchase price"));
  const age = row.number(column("Age"));
  const perYear = row.number(column("Hours a year"), "above zero");
  const salvage = row.number(column("Salvage value"));
  if (salvage !== null) row.besides(column("Remaining value class"), column("Salvage value"));
  const valueClass = row.choice(column("Remaining value class"), remainingValueClasses);
  const repairClass = row.choice(column("Repair class"), repairClasses);
  if (name === null || list === null || kept === null) return null;
  return {
    name, listPrice: money(list), purchasePrice: money(paid ?? list), age: years(age ?? zero), yearsKept: years(kept),
    hoursAYear: perYear === null ? null : hours(perYear), repairClass,
    salvage: salvage !== null ? { stated: money(salvage) } : valueClass === null ? null : { by: valueClass },
  };
}
