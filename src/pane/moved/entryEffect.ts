/** What one entry did, in a line: what was entered, and what it moved, in parts that add up to the difference as shown. */
import { Decimal, sum } from "../../core/numbers/decimal";
import type { Budget, CropFigures } from "../../core/figures";
import { countsIn, layerCosts, type Kind, type Layer } from "../../core/kinds";
import { moneyPerArea } from "../../core/numbers/units";
import type { Cell } from "../../workbook/cell";
import type { SeasonReport } from "../../workbook/seasonReport";
import { shownMoney } from "../../workbook/shown";
import { plain, plainHeading } from "../../workbook/words";
import type { Format } from "../format";
import type { ChangedRow } from "./changedRow";

/** So many kinds are named of a crop before the rest are one part. */
const named = 3;

/** Roundings of the parts come to less. */
const cents = "0.03";

/** "Urea 0.31 a lb against plan 0.26: Corn +3.10 an acre (fertilizer +3.08, operating interest +0.02), cash cost." */
export function entryEffect(change: ChangedRow, before: SeasonReport, after: SeasonReport, layer: Layer, format: Format): string {
  const moved = after.figures.crops.flatMap((crop) => {
    const old = before.figures.crops.find((each) => each.crop === crop.crop);
    return old === undefined
      ? []
      : cropMoved(crop.crop, budgetOf(old), budgetOf(crop), layer, format).map((words) =>
          after.problemsOf({ of: "crop", name: crop.crop }).length === 0 ? words : `${words}, incomplete`,
        );
  });
  const what = subject(change, after, format);
  return moved.length === 0
    ? `${what}: no cost per ${format.areaName} and no net moved by a cent.`
    : `${what}: ${moved.join("; ")} (${layerCosts[layer]}).`;
}

const budgetOf = ({ outlook, final }: CropFigures): Budget => final ?? outlook;

function cropMoved(crop: string, old: Budget, now: Budget, layer: Layer, format: Format): readonly string[] {
  const signed = (amount: Decimal) => format.signed(moneyPerArea(amount));
  const cost = shownMoney(now.costPerArea.layers[layer]).minus(shownMoney(old.costPerArea.layers[layer]));
  const [netNow, netOld] = [now.netPerArea[layer], old.netPerArea[layer]];
  const net = shownMoney(netNow).minus(shownMoney(netOld));
  if (cost.isZero() && net.isZero()) return [];
  const parts = partsOf(old, now, cost, layer).map(({ name, amount }) => ({ name: format.words(name), amount }));
  const reasons =
    parts.length < 2 && cost.abs().eq(parts[0]?.amount.abs() ?? cost)
      ? parts.map(({ name }) => name)
      : parts.map(({ name, amount }) => `${name} ${signed(amount)}`);
  const costs = cost.isZero()
    ? ""
    : `${signed(cost)} an ${format.areaName}`.replace(" an hectare", " a hectare") +
      (reasons.length === 0 ? "" : ` (${reasons.join(", ")})`);
  // What the net does beyond the cost is a yield, a price or other income; a cent beside a cost is rounding.
  const nets = net
    .plus(cost)
    .abs()
    .lte(cost.isZero() ? "0" : "0.01")
    ? ""
    : `net ${signed(net)}`;
  return [`${crop} ${[costs, nets].filter((each) => each !== "").join(", ")}`];
}

/** The kinds of the layer that moved by a cent or more, largest first; what they leave of the difference is the last part. */
function partsOf(old: Budget, now: Budget, cost: Decimal, layer: Layer): readonly { readonly name: string; readonly amount: Decimal }[] {
  const kinds = new Set<Kind>([...old.costPerArea.byKind.keys(), ...now.costPerArea.byKind.keys()]);
  const of = ({ costPerArea }: Budget, kind: Kind): Decimal =>
    (countsIn(kind, layer) ? costPerArea.byKind.get(kind) : undefined) ?? new Decimal("0");
  const all = [...kinds]
    .map((name) => ({ name: name as string, amount: shownMoney(moneyPerArea(of(now, name).minus(of(old, name)))) }))
    .filter(({ amount }) => !amount.isZero())
    .sort((one, other) => other.amount.abs().comparedTo(one.amount.abs()));
  const largest = all.slice(0, named);
  const left = cost.minus(sum(largest.map(({ amount }) => amount)));
  return left.isZero() ? largest : [...largest, { name: all.length > named || left.abs().gt(cents) ? "others" : "rounding", amount: left }];
}

/** What was entered: of a bill the item's price against the plan, else the cell with what it said before. */
function subject({ table, headers, was, is }: ChangedRow, { figures }: SeasonReport, format: Format): string {
  const at = (heading: string) => headers.findIndex((each) => plainHeading(each) === plainHeading(heading));
  const row = is ?? was!;
  const name = String(row[at("Item")] ?? "").trim();
  if (plainHeading(table) === "purchases") {
    const item = figures.items.find((each) => plain(each.item) === plain(name));
    if (item !== undefined && item.averagePrice !== null) {
      return (
        `${item.item} ${format.money(item.averagePrice)} ` +
        `${plain(item.unit) === "each" ? "" : "a "}${item.unit}${item.planPrice === null ? "" : ` against plan ${format.money(item.planPrice)}`}`
      );
    }
  }
  // What a row is about is a name where it has one: days and years stand as bare numbers in front of many.
  const isNamed = (cell: Cell) => typeof cell === "string" && cell.trim() !== "";
  const about = row.find(isNamed) ?? row.find((cell) => words(cell) !== "");
  const title = `${table.replaceAll("_", " ")}: ${words(about, format)}`;
  if (was === null) return `${title}, new`;
  if (is === null) return `${title}, taken out`;
  const shown = (cell: Cell | undefined, heading: string) => (isYear(heading) || isYear(words(about)) ? words(cell) : words(cell, format));
  const cells = headers.flatMap((heading, index) =>
    words(was[index]) === words(is[index]) ? [] : [{ heading, from: shown(was[index], heading), to: shown(is[index], heading) }],
  );
  const [only] = cells;
  if (cells.length !== 1 || only === undefined) return title;
  // A day is a bare number in its cell.
  return isDay(only.heading)
    ? `${title}, ${only.heading}`
    : `${title}, ${only.heading} ${only.from === "" ? "blank" : only.from} → ${only.to === "" ? "blank" : only.to}`;
}

const isDay = (heading: string): boolean => /date|paid on|due|done on|planted/i.test(heading);
const isYear = (heading: string): boolean => /^season$|^(season |crop )?year$/i.test(heading.trim());
const words = (cell: Cell | undefined, format?: Format): string =>
  typeof cell === "number" && format !== undefined ? format.quantity(new Decimal(String(cell))) : String(cell ?? "").trim();
