/** The table Machines: one implement with its tractor, or one self-propelled machine, a row. */
import { Decimal, zero } from "../../core/numbers/decimal";
import type { Machine, MachinePart } from "../../core/machines/machine";
import { measureNamed } from "../../core/numbers/measure";
import type { Settings } from "../../core/season";
import { hours, money, moneyPerHour, share, yearlyRate, years } from "../../core/numbers/units";
import type { Column, Named } from "../columns/column";
import { implementColumns, machineColumns, tractorColumns, type PartColumns } from "../columns/machines";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";

const { columns } = machineColumns;
const ofTractor = Object.values(tractorColumns);

/** Where nothing is entered: common practice, and shown with every machine. */
const usualFieldEfficiency = new Decimal("0.7");
const usualTaxesInsuranceHousing = new Decimal("0.01");

export function readMachines(table: TableReader, names: Names, settings: Settings): readonly Machine[] {
  if (!table.hasNeeded(machineColumns)) return [];
  const tractors: Tractors = new Map();
  return table.rows(
    (row): Machine | null => {
      const name = names.define(row, columns.machine);
      const main = partOf(row, implementColumns, name);
      const tractor = tractorOf(row, tractors);
      const width = row.need(columns.width);
      const speed = row.need(columns.speed);
      const power = row.of(columns.power);
      const fuelPerArea = row.of(columns.fuelPerArea);
      const wage = orZero(row, columns.wage, row.of(columns.wage) ?? settings.labourPerHour, "labour");
      const burns = power !== null || (fuelPerArea !== null && !fuelPerArea.isZero());
      const typedPrice = row.of(columns.fuelPrice) ?? usualFuelPrice(settings);
      const fuelPrice = burns ? orZero(row, columns.fuelPrice, typedPrice, "fuel") : (typedPrice ?? zero);
      const realRate = orZero(row, columns.realRate, row.of(columns.realRate), "interest on what it is worth");
      if (name === null || main === null || width === null || speed === null) return null;
      if (row.of(columns.tractor) !== null && tractor === null) return null;
      return {
        name,
        main,
        tractor,
        width,
        speed,
        power,
        fieldEfficiency: share(efficiencyOf(row) ?? usualFieldEfficiency),
        tankSize: row.of(columns.tankSize),
        realRate: yearlyRate(realRate),
        taxesInsuranceHousing: yearlyRate(row.of(columns.taxesInsuranceHousing) ?? usualTaxesInsuranceHousing),
        wage: moneyPerHour(wage),
        labour: row.of(columns.labour) ?? "unpaid labour",
        fuelPrice: money(fuelPrice),
        fuelPerArea,
        source: row.source,
      };
    },
    (row) => {
      const name = names.spelled(String(row.cell(columns.machine)));
      return name === null ? [{ of: "farm" }] : [{ of: "machine", name }];
    },
  );
}

/** A machine that works none of the time does no acre. */
function efficiencyOf(row: Row): Decimal | null {
  const part = row.of(columns.fieldEfficiency);
  return part?.isZero() === true ? row.fault("not-above-zero", columns.fieldEfficiency) : part;
}

/** A price or rate that a machine costs more by; one that nobody entered counts as zero, and not in silence. */
function orZero(row: Row, column: Named, value: Decimal | null, without: string): Decimal {
  if (value === null && !row.faults.some((fault) => fault.column === column.heading)) row.fault("machine-zero", column, { like: without });
  return value ?? zero;
}

/** The setting is money per gallon whatever the area unit; a machine of a hectare workbook burns litres. */
const usualFuelPrice = ({ fuelPerGallon, areaUnit }: Settings): Decimal | null =>
  fuelPerGallon === null || areaUnit === "ac" ? fuelPerGallon : fuelPerGallon.div(measureNamed("gal")!.factor);

/** Each tractor as the first row that names it has it. */
type Tractors = Map<string, { readonly row: Row; readonly part: MachinePart | null }>;

/**
 * The tractor of a row. One name is one tractor, whose first row counts: later rows may leave its cells blank, and are told
 * where they say something else.
 */
function tractorOf(row: Row, tractors: Tractors): MachinePart | null {
  const name = row.of(columns.tractor);
  if (name === null) {
    for (const column of ofTractor)
      if (row.text(column) !== null) row.fault("tractor-unnamed", column, { other: { ...row.source, column: columns.tractor.heading } });
    return null;
  }
  const known = tractors.get(plain(name));
  if (known === undefined) {
    const part = partOf(row, tractorColumns, name);
    tractors.set(plain(name), { row, part });
    return part;
  }
  for (const column of ofTractor) {
    const [said, first] = [row.text(column), known.row.text(column) ?? ""];
    if (said !== null && !isAlike(row, known.row, column))
      row.fault("tractor-disagrees", column, { like: first, other: { ...known.row.source, column: column.heading } });
  }
  return known.part;
}

/** Whether two rows say the same: as numbers where both are some, else as words. */
function isAlike(row: Row, first: Row, column: Column): boolean {
  const [one, two] = [row.text(column) ?? "", first.text(column) ?? ""];
  if (plain(one) === plain(two)) return true;
  const [a, b] = column.choices !== undefined ? [null, null] : [row.number(column), first.number(column)];
  return a !== null && b !== null && a.eq(b);
}

/** The implement, or its tractor, by its own columns. */
function partOf(row: Row, part: PartColumns, name: string | null): MachinePart | null {
  const list = row.need(part.listPrice);
  const kept = row.need(part.yearsKept);
  const paid = row.of(part.purchasePrice);
  const age = row.of(part.age);
  const perYear = row.of(part.hoursAYear);
  const salvage = row.of(part.salvage);
  if (salvage !== null) row.besides(part.remainingValueClass, part.salvage);
  const valueClass = row.of(part.remainingValueClass);
  const repairClass = row.of(part.repairClass);
  if (name === null || list === null || kept === null) return null;
  return {
    name,
    listPrice: money(list),
    purchasePrice: money(paid ?? list),
    age: years(age ?? zero),
    yearsKept: years(kept),
    hoursAYear: perYear === null ? null : hours(perYear),
    repairClass,
    salvage: salvage !== null ? { stated: money(salvage) } : valueClass === null ? null : { by: valueClass },
  };
}
