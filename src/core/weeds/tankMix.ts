/**
 * What goes into a sprayer's tank, from the area, the carrier and the rates as the grower typed them. No product or rate is ever
 * proposed.
 */
import { sum, zero, type Decimal } from "../numbers/decimal";
import type { EntryRef, IsoDate, Target } from "../row";
import type { Application, Season } from "../season";

/** A whole number of full tanks, and what is left for a last one; all in the unit of carrier and tank (gallons, litres with hectares). */
export type Loads = { readonly full: Decimal; readonly last: Decimal };

/** Full tanks and the partial last one for an area: none partial where it comes out even. */
export function loadsOf(area: Decimal, carrierPerArea: Decimal, tank: Decimal): Loads {
  const volume = area.times(carrierPerArea);
  const full = volume.div(tank).floor();
  return { full, last: volume.minus(full.times(tank)) };
}

/** The area that a tank covers. */
export const areaPerTank = (tank: Decimal, carrierPerArea: Decimal): Decimal => tank.div(carrierPerArea);

type MixItem = {
  readonly item: string;
  /** The unit of the rate as it was typed; the item's own where the rate is one of a nutrient. */
  readonly unit: string;
  /** Of that unit, on an area. */
  readonly rate: Decimal;
  /** `null` where no tank is entered. */
  readonly perLoad: Decimal | null;
  readonly inLastLoad: Decimal | null;
  /** On the whole area. */
  readonly total: Decimal;
  readonly source: EntryRef;
};

/** What goes out together: rows of one field or crop and one day that tell a carrier or a tank, and the crop protection beside them. */
export type Mix = {
  readonly target: Target;
  readonly date: IsoDate | null;
  readonly isDone: boolean;
  readonly area: Decimal;
  readonly carrierPerArea: Decimal;
  readonly tank: Decimal | null;
  readonly loads: Loads | null;
  readonly items: readonly MixItem[];
};

const nameOf = (target: Target): string => ("field" in target ? `field ${target.field}` : `crop ${target.crop}`);

/** Rows that may go out together: of one field or crop, one day, and both planned or both done, in the order of the table. */
export function together(applications: readonly Application[]): readonly (readonly Application[])[] {
  const groups = new Map<string, Application[]>();
  for (const row of applications) {
    const key = `${nameOf(row.target)}\n${row.date ?? ""}\n${row.status === "plan"}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
  }
  return [...groups.values()];
}

/**
 * The rows of each mix: of those that may go out together, all that tell a carrier or a tank and all crop protection, where
 * any of them does. Seed drilled on the day of a spray is in no tank.
 */
export function mixRows({ applications, items }: Pick<Season, "applications" | "items">): readonly (readonly Application[])[] {
  const sprayed = new Set(items.filter(({ kind }) => kind === "crop protection").map(({ name }) => name));
  return together(applications.filter(({ tank, item }) => tank !== undefined || sprayed.has(item))).filter((rows) =>
    rows.some(({ tank }) => tank !== undefined),
  );
}

/** The tank of the only machine that has one; `null` where none or several have. */
export function onlyTank({ machines }: Pick<Season, "machines">): Decimal | null {
  const [tank, another] = machines.flatMap(({ tankSize }) => tankSize ?? []);
  return another === undefined ? (tank ?? null) : null;
}

/** The mixes that tell a carrier, by date, those without one last. A mix that tells no tank goes into that of the only machine with one. */
export function mixes(season: Pick<Season, "applications" | "fields" | "items" | "machines">): readonly Mix[] {
  const { applications, fields, items } = season;
  const units = new Map(items.map((item) => [item.name, item.unit.name]));
  const areaOf = (target: Target) =>
    sum(fields.filter((field) => ("field" in target ? field.name === target.field : field.crop === target.crop)).map(({ area }) => area));
  return mixRows({ applications, items })
    .flatMap((rows): readonly Mix[] => {
      const [first] = rows as readonly [Application, ...Application[]];
      const carrierPerArea = rows.map((row) => row.tank?.carrierPerArea ?? null).find((carrier) => carrier !== null) ?? null;
      if (carrierPerArea === null) return [];
      const tank = rows.map((row) => row.tank?.size ?? null).find((size) => size !== null) ?? onlyTank(season);
      const area = first.area ?? areaOf(first.target);
      const loads = tank === null ? null : loadsOf(area, carrierPerArea, tank);
      const inTank = rows.map((row): MixItem => {
        const { unit, perArea } = row.asTyped ?? { unit: units.get(row.item)!, perArea: row.rate };
        const of = (volume: Decimal | null) => (volume === null ? null : volume.div(carrierPerArea).times(perArea));
        return {
          item: row.item,
          unit,
          rate: perArea,
          perLoad: of(tank),
          inLastLoad: loads === null ? null : loads.last.isZero() ? zero : of(loads.last),
          total: area.times(perArea),
          source: row.source,
        };
      });
      return [
        { target: first.target, date: first.date, isDone: first.status !== "plan", area, carrierPerArea, tank, loads, items: inTank },
      ];
    })
    .sort((a, b) => (a.date ?? "9").localeCompare(b.date ?? "9"));
}
