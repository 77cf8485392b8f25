/** The table Hybrids: one hybrid on offer a row. */
import type { Hybrid } from "../../core/hybrids/hybridEntries";
import { money, moneyPerArea } from "../../core/numbers/units";
import type { Crop, Field } from "../../core/season";
import { hybridColumns } from "../columns/hybrids";
import type { Names } from "../names";
import type { Subject } from "../problem";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";

const { columns } = hybridColumns;

/** Heat units move maturity alone; a price or a fee moves what a hybrid nets. */
const touches = (): readonly Subject[] => [{ of: "weather" }, { of: "hybrids" }];

export function readHybrids(table: TableReader, crops: readonly Crop[], fields: readonly Field[], names: Names): readonly Hybrid[] {
  if (!table.hasNeeded(hybridColumns)) return [];
  const seen = new Set<string>();
  const checks = new Map<string, Row>();
  return table.rows((row): Hybrid | null => {
    const name = row.need(columns.hybrid);
    const [pricePerBag, seedsPerBag, traitFee] = [row.of(columns.pricePerBag), row.of(columns.seedsPerBag), row.of(columns.traitFee)];
    const [heatUnits, days] = [row.of(columns.heatUnits), row.of(columns.days)];
    const isCheck = row.of(columns.check) === "yes";
    if (pricePerBag !== null && seedsPerBag === null && !row.isFaulty(columns.seedsPerBag)) row.fault("blank", columns.seedsPerBag);
    const typed = row.text(columns.crop);
    const named = typed === null ? null : row.needName(columns.crop, names);
    if (name === null || row.lost) return null;
    if (seen.has(plain(name))) return row.lose("duplicate-name", columns.hybrid);
    seen.add(plain(name));
    const crop = typed === null ? cropGrown(name, crops, fields) : named;
    // One that grows nowhere yet would be compared without its price.
    if (crop === null && typed === null && crops.length > 1) row.fault("hybrid-crop-missing", columns.crop, { found: name });
    const first = checks.get(crop ?? "");
    if (isCheck && first === undefined) checks.set(crop ?? "", row);
    else if (isCheck) row.fault("check-twice", columns.check, { found: name, other: first!.source });
    return {
      name,
      crop,
      pricePerBag: pricePerBag === null ? null : money(pricePerBag),
      seedsPerBag,
      traitFee: traitFee === null ? null : moneyPerArea(traitFee),
      heatUnits,
      days,
      isCheck,
      source: row.source,
    };
  }, touches);
}

/** The crop of the fields on which a hybrid grows, the first where they are of two; else the only crop. */
export function cropGrown(name: string, crops: readonly Crop[], fields: readonly Field[]): string | null {
  const grown = fields.find(({ variety }) => plain(variety ?? "") === plain(name));
  return grown?.crop ?? (crops.length === 1 ? crops[0]!.name : null);
}
