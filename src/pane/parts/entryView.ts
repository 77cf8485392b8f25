/** One entry of the workbook as a line of words: where it stands and what it says. */
import type { EntryRef, Target } from "../../core/row";
import type { Season } from "../../core/season";
import { cellOf, type Places } from "../../workbook/cellName";
import type { Format } from "../format";

type EntryLine = {
  readonly ref: EntryRef;
  /** "Purchases, row 12". */
  readonly place: string;
  /** The first cell of that row as the sheet names it, "A13", to find it on paper; empty where it has none. */
  readonly cell: string;
  readonly says: string;
};

/** Looks entries up by their place. A season can have many thousands of them, so that nothing is put into words before it is asked for. */
export type EntryTeller = (ref: EntryRef) => EntryLine;

const key = ({ table, row }: EntryRef) => `${table}\n${row}`;
const targetName = (target: Target): string => ("field" in target ? target.field : target.crop);
const words = (...parts: readonly (string | null)[]): string => parts.filter((part) => part !== null && part !== "").join(", ");

export function entryTeller({ season, ...places }: Places & { readonly season: Season }, format: Format): EntryTeller {
  let index: ReadonlyMap<string, () => string> | null = null;
  return (ref) => {
    index ??= tellers(season, format);
    return { ref, place: `${ref.table}, entry ${ref.row}`, cell: cellOf(places, ref), says: index.get(key(ref))?.() ?? "" };
  };
}

function tellers(season: Season, format: Format): ReadonlyMap<string, () => string> {
  const says = new Map<string, () => string>();
  const tell = <Entry extends { readonly source: EntryRef }>(entries: readonly Entry[], line: (entry: Entry) => string) => {
    for (const entry of entries) says.set(key(entry.source), () => line(entry));
  };
  const items = new Map(season.items.map((item) => [item.name, item]));
  const unitOf = (item: string) => items.get(item)?.unit.name ?? "";
  const { quantity, amount, areaUnit, areaName } = format;
  tell(season.crops, (crop) => words(crop.name, `expected price ${amount(crop.price)} per ${crop.yieldUnit}`));
  tell(season.fields, (field) => words(field.name, `${quantity(field.area)} ${areaUnit}`, field.tenure));
  tell(season.items, (item) =>
    words(item.name, item.planPricePerPack === null ? null : `plan price ${amount(item.planPricePerPack)} per ${item.packName}`),
  );
  tell(season.bills, (row) => words(row.paidOn, row.name, amount(row.amount)));
  tell(season.purchases, (row) => words(row.date, row.item, `${quantity(row.quantity)} ${unitOf(row.item)}`, amount(row.amount)));
  tell(season.applications, (row) =>
    words(row.date, targetName(row.target), row.item, `${quantity(row.rate)} ${unitOf(row.item)} per ${areaName}`, row.status),
  );
  tell(season.operations, (row) => words(row.date, targetName(row.target), row.operation, operationCost(row.cost, format), row.status));
  tell(season.otherCosts, (row) => words(row.item, `${amount(row.amount)} ${row.basis}`));
  tell(season.sales, (row) => words(row.date, row.kind, `${quantity(row.quantity)} at ${amount(row.price)}`));
  tell(season.harvest, (row) => words(row.date, row.field, quantity(row.quantity)));
  return says;
}

function operationCost(cost: Season["operations"][number]["cost"], { amount, areaName, quantity }: Format): string {
  switch (cost.basis) {
    case "per acre":
      return `${amount(cost.rate)} per ${areaName}`;
    case "per hour":
      return `${quantity(cost.hours)} h at ${amount(cost.rate)}`;
    case "lump sum":
      return `${amount(cost.rate)} in all`;
    case "machine":
      return cost.machine;
  }
}
