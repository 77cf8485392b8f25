/** The table Harvest: one weighed load, or the whole of a field, a row. */
import type { Decimal } from "../../core/numbers/decimal";
import { wetAndDry } from "../../core/drying";
import type { Crop, Field, HarvestLoad } from "../../core/season";
import { cropQuantity, type AreaUnit, type YieldUnit } from "../../core/numbers/units";
import { harvestColumns } from "../columns/harvest";
import { measureMeant } from "../tonMeant";
import type { Names } from "../names";
import type { Subject } from "../problem";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";
import { cropFactor } from "./crops";
import type { Docks } from "./dockTables";
import { unitFactor } from "./grainUnits";

const { columns } = harvestColumns;

/**
 * What a net weight and the scale may differ by, because one of the two was rounded: a tenth of a bushel, a hundredth of any
 * other unit.
 */
const rounding: Readonly<Partial<Record<YieldUnit, string>>> = { bu: "0.1", lb: "1", kg: "1" };
const otherRounding = "0.01";

export function readHarvest(
  table: TableReader,
  names: Names,
  fields: ReadonlyMap<string, Field>,
  crops: ReadonlyMap<string, Crop>,
  docks: Docks,
): readonly HarvestLoad[] {
  const isOfScale = table.has(columns.gross) && table.has(columns.tare);
  if (!table.needs(columns.field, columns.date, ...(isOfScale ? [] : [columns.net]), columns.moisture)) return [];
  const tickets = new Tickets(table);
  const loads = table.rows(
    (row): HarvestLoad | null => {
      const name = row.needName(columns.field, names);
      const date = row.needDate(columns.date);
      const moisture = row.of(columns.moisture);
      if (moisture === null && !row.isFaulty(columns.moisture)) row.fault("blank", columns.moisture);
      const crop = name === null ? undefined : crops.get(fields.get(name)?.crop ?? "");
      const typedWeight = row.of(columns.testWeight);
      const [ticket, buyer] = [row.of(columns.ticket), row.of(columns.buyer)];
      if (crop === undefined) {
        // What was typed is looked at all the same, so that every fault is told at once.
        if (row.of(columns.net) === null && row.of(columns.gross) === null && !row.isFaulty(columns.net)) row.missing(columns.net);
        return null;
      }
      const weighed = quantityOf(row, crop, moisture);
      if (name === null || date === null || weighed === null || row.lost) return null;
      const testWeight = docks.testWeightOf(row, crop, columns.testWeight, typedWeight);
      const load = {
        field: name,
        date,
        quantity: weighed.dry,
        wet: weighed.wet,
        moisture,
        testWeight,
        dock: docks.of(row, crop, testWeight),
        ticket,
        buyer,
        source: row.source,
      };
      tickets.look(load);
      return load;
    },
    (row) => touched(names.spelled(String(row.cell(columns.field)))),
  );
  docks.tellWithout(table, loads, fields);
  return loads;
}

const touched = (name: string | null): readonly Subject[] => (name === null ? [{ of: "farm" }] : [{ of: "field", name }]);

/** What a load is, wet and dry, by its net as typed, or by the scale: gross less tare. Both may stand there and must agree. */
function quantityOf(row: Row, crop: Crop, moisture: HarvestLoad["moisture"]): ReturnType<typeof wetAndDry> | null {
  const factor = unitFactor(row, columns.unit, crop);
  const net = row.of(columns.net);
  const are = row.of(columns.are) ?? "wet";
  const scaled = scaleOf(row, crop);
  if (factor === null || scaled === "fault") return null;
  if (net === null && scaled === null) return row.missing(columns.net);
  const byScale = scaled === null ? null : wetAndDry(cropQuantity(scaled), "wet", moisture, crop.standardMoisture);
  // A scale weighs grain with its water, whatever the row says of bushels.
  if (net === null) return byScale;
  const typed = wetAndDry(cropQuantity(net.times(factor)), are, moisture, crop.standardMoisture);
  if (
    byScale !== null &&
    byScale[are]
      .minus(typed[are])
      .abs()
      .div(factor)
      .gt(rounding[unitOf(row, crop)] ?? otherRounding)
  ) {
    row.fault("load-disagrees", columns.net, { like: byScale[are].div(factor).toDecimalPlaces(2).toFixed() });
  }
  return typed;
}

/** The unit that Weight or bushels is in. */
const unitOf = (row: Row, crop: Crop): YieldUnit => scaleUnit(row.of(columns.unit), row.areaUnit) ?? crop.yieldUnit;

/** A weight that Unit names; `null` for bushels and where nothing is said. */
function scaleUnit(typed: string | null, areaUnit: AreaUnit): Exclude<YieldUnit, "bu"> | null {
  const measure = typed === null ? null : measureMeant(typed, areaUnit, null);
  const named = measure === null || measure === "ton-unclear" ? null : measure.name;
  return (["t", "lb", "cwt", "ton", "kg"] as const).find((unit) => unit === named) ?? null;
}

/** Gross less tare in the crop's yield unit; `null` where neither is typed. */
function scaleOf(row: Row, crop: Crop): Decimal | "fault" | null {
  const [gross, tare] = [row.of(columns.gross), row.of(columns.tare)];
  const isTyped = [columns.gross, columns.tare].some((column) => row.text(column) !== null);
  if (!isTyped) return null;
  if (gross === null || tare === null) {
    row.missing(gross === null ? columns.gross : columns.tare);
    return "fault";
  }
  if (tare.gt(gross)) {
    row.lose("tare-above-gross", columns.tare, { like: gross.toFixed() });
    return "fault";
  }
  const unit = scaleUnit(row.of(columns.unit), row.areaUnit) ?? (row.areaUnit === "ac" ? "lb" : "kg");
  const factor = cropFactor(unit, crop);
  if (factor === null) {
    row.lose("weight-missing", columns.gross, { found: unit });
    return "fault";
  }
  return gross.minus(tare).times(factor);
}

/**
 * Finds the ticket that is typed twice: both loads count, and the grower is told. One ticket may well be split between two
 * fields; so rows are alike only where the field or the weight is the same, and two buyers may use one number.
 */
class Tickets {
  private readonly seen = new Map<string, HarvestLoad[]>();
  constructor(private readonly table: TableReader) {}

  look(load: HarvestLoad): void {
    const { ticket, buyer, source } = load;
    if (ticket === null) return;
    const others = this.seen.get(plain(ticket)) ?? [];
    const first = others.find(
      (other) => (other.field === load.field || other.wet.eq(load.wet)) && (buyer === null || plain(other.buyer ?? buyer) === plain(buyer)),
    );
    this.seen.set(plain(ticket), [...others, load]);
    if (first === undefined) return;
    this.table.problems.push({
      code: "ticket-twice",
      at: { table: source.table, row: source.row, column: columns.ticket.heading },
      other: { table: first.source.table, row: first.source.row },
      found: ticket,
      touches: [{ of: "field", name: load.field }],
    });
  }
}
