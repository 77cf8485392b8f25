/** The tables Items and Applications. */
import { one, type Decimal } from "../../core/numbers/decimal";
import type { Named } from "../columns/column";
import { chargedAsUsed } from "../../core/kinds";
import type { Application, Item } from "../../core/season";
import { area, itemQuantity, itemRate, money, share, type AreaUnit } from "../../core/numbers/units";
import { namesIn, sitesIn } from "../../core/weeds/sites";
import { analysisOf, densityOf, packOf, rateAsTyped, type ItemConverter, type ItemUnits } from "../itemUnits";
import type { NumberStyle } from "../numbers";
import type { Subject } from "../problem";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";
import { itemColumns } from "../columns/items";
import { applicationColumns } from "../columns/applications";
import { needsTarget, targetOf, targetSubjects, type TargetPlaces } from "./targets";

const { columns } = itemColumns;

/** @param firstUnit the unit in which each item, by its plain name, is first bought or used */
export function readItems(
  table: TableReader,
  names: Names,
  areaUnit: AreaUnit,
  style: NumberStyle,
  firstUnit: ReadonlyMap<string, string>,
): readonly ItemUnits[] {
  if (!table.hasNeeded(itemColumns)) return [];
  return table.rows(
    (row): ItemUnits | null => {
      const name = names.define(row, columns.item);
      const kind = row.need(columns.kind);
      const pack = name === null ? null : packOf(row, firstUnit.get(plain(name)) ?? null, areaUnit);
      const price = row.of(columns.planPrice);
      const [density, analysis] = [densityOf(row, areaUnit, style), analysisOf(row)];
      if (name === null || kind === null || pack === null) return null;
      const charged = row.of(columns.charged) ?? (chargedAsUsed.has(kind) ? "as used" : "by acres");
      const item: Item = {
        name,
        kind,
        packName: pack.packName,
        packSize: itemQuantity(pack.packSize),
        unit: pack.unit,
        charged,
        planPricePerPack: price === null ? null : money(price),
        operatorCostShare: share(row.of(columns.operatorCostShare) ?? one),
        sitesOfAction: siteTextOf(row),
        ...controlsOf(row),
        source: row.source,
      };
      return { item, density, analysis };
    },
    (row) => itemSubjects(row, names),
  );
}

/** The weeds that a label names; "none" says that it is for no weed. */
function controlsOf(row: Row): Pick<Item, "controls"> {
  const typed = row.of(columns.controls);
  return typed === null ? {} : { controls: /^(none|no|-|–)$/i.test(typed) ? [] : namesIn(typed) };
}

/** Sites of action as typed; notes where no site can be made out, so that a product does not lose them unseen. */
function siteTextOf(row: Row): string | null {
  const typed = row.of(columns.sites);
  return typed !== null && sitesIn(typed).length === 0 && /\d/.test(typed) ? row.fault("not-sites", columns.sites, { like: typed }) : typed;
}

export const itemSubjects = (row: Row, items: Names): readonly Subject[] => {
  const name = items.spelled(String(row.cell(columns.item)));
  return name === null ? [{ of: "farm" }] : [{ of: "item", name }];
};

const { columns: used } = applicationColumns;

export type Units = ReadonlyMap<string, ItemUnits>;

export function readApplications(
  table: TableReader,
  places: TargetPlaces,
  items: Names,
  units: Units,
  converter: ItemConverter,
): readonly Application[] {
  if (!needsTarget(table) || !table.needs(used.item, used.rate, used.rateUnit, used.status)) return [];
  return table.rowsAlone(
    (row): Application | null => {
      const target = targetOf(row, table, places);
      const item = row.needName(used.item, items);
      const { value: rate, unit: typed } = row.measured(used.rate, used.rateUnit);
      const status = row.need(used.status);
      const acres = row.of(used.acres);
      if (target !== null && acres !== null) warnOfArea(row, used.acres, acres, target, places);
      const of = item === null ? undefined : units.get(item);
      const perUnit = of === undefined || typed === null ? null : converter.perRateUnit(row, used.rateUnit, of, typed);
      const date = row.of(used.date);
      const [carrier, tank] = [row.of(used.carrier), row.of(used.tankSize)];
      if (target === null || item === null || rate === null || status === null || perUnit === null) return null;
      return {
        target,
        item,
        rate: itemRate(perUnit === one ? rate : rate.times(perUnit)),
        area: acres === null ? null : area(acres),
        date,
        status,
        source: row.source,
        ...(carrier === null && tank === null ? {} : { tank: { carrierPerArea: carrier, size: tank } }),
        ...(of!.item.kind === "crop protection" || carrier !== null || tank !== null ? rateAsTyped(typed!, rate, row.areaUnit) : {}),
      };
    },
    (row) => [...targetSubjects(row, table, places), ...itemSubjects(row, items).filter(({ of }) => of === "item")],
  );
}

/** More acres than there are may be a slip, or one pass too many in a row. */
export function warnOfArea(row: Row, column: Named, acres: Decimal, target: Application["target"], places: TargetPlaces): void {
  const whole = places.areaOf(target);
  if (whole !== null && acres.gt(whole)) row.fault("area-too-large", column, { like: whole.toFixed() });
}
