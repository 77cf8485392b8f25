/** What the seed of a hybrid costs on an area, at the rate that is planned for its crop. */
import { one, sum, type Decimal } from "../numbers/decimal";
import { seedsPerArea, moneyPerArea, type MoneyPerArea, type SeedsPerArea } from "../numbers/units";
import type { ItemFigures } from "../figures";
import type { Application, Field, Season } from "../season";
import type { Hybrid } from "./hybridEntries";

type Sown = Pick<Season, "fields" | "items" | "applications">;
const plain = (name: string): string => name.trim().toLowerCase();

/**
 * The seeds dropped on an area in the mean of a crop's fields, by their acres: Seeds dropped of each field, else its planned rows of
 * seed counted in seeds. One rate for all hybrids, so that they differ by the price of their seed alone.
 *
 * @returns `null` where nothing tells a rate
 */
export function plannedRate({ fields, items, applications }: Sown, crop: string): SeedsPerArea | null {
  const seed = new Map(items.filter(({ kind, unit }) => kind === "seed" && unit.dimension === "count").map((item) => [item.name, item]));
  const planned = applications.filter(({ item, status }) => status !== "done" && seed.has(item));
  const grown = fields.filter((field) => field.crop === crop);
  const whole = sum(grown.map(({ area }) => area));
  const rowsOf = (field: Field): readonly Application[] => {
    const own = planned.filter(({ target }) => "field" in target && target.field === field.name);
    return own.length > 0 ? own : planned.filter(({ target }) => "crop" in target && target.crop === crop);
  };
  // Rows of a field's parts weigh by their acres: two hybrids on two halves are one rate, not two.
  const appliedOn = (field: Field): Decimal | null => {
    const parts = rowsOf(field).map(({ item, rate, area, target }) => ({
      rate: rate.times(seed.get(item)!.unit.factor),
      part: area === null ? one : area.div("field" in target ? field.area : whole),
    }));
    const all = sum(parts.map(({ part }) => part));
    return all.isZero() ? null : sum(parts.map(({ rate, part }) => rate.times(part))).div(all);
  };
  const rated = grown.flatMap((field) => {
    const rate = field.seedsDropped ?? appliedOn(field);
    return rate === null ? [] : [{ area: field.area, rate }];
  });
  const all = sum(rated.map(({ area }) => area));
  return all.isZero() ? null : seedsPerArea(sum(rated.map(({ area, rate }) => rate.times(area))).div(all));
}

/** Price of a unit of seed and the seeds in it. */
export type SeedPrice = { readonly price: Decimal; readonly seeds: Decimal };

/** By the table Hybrids; else by the item of its name, at what was paid for it on average, or at the plan's price; `null`: not known. */
export function seedPrice(
  name: string,
  hybrid: Pick<Hybrid, "pricePerBag" | "seedsPerBag"> | null,
  items: Season["items"],
  figures: readonly ItemFigures[],
): SeedPrice | null {
  if (hybrid !== null && hybrid.pricePerBag !== null && hybrid.seedsPerBag !== null)
    return { price: hybrid.pricePerBag, seeds: hybrid.seedsPerBag };
  const item = items.find((each) => plain(each.name) === plain(name) && each.kind === "seed" && each.unit.dimension === "count");
  if (item === undefined) return null;
  const price = figures.find((each) => each.item === item.name)?.averagePrice ?? item.planPricePerPack;
  return price === null ? null : { price, seeds: item.packSize.times(item.unit.factor) };
}

/** Seeds on an area × price of a bag ÷ seeds in it. */
export const seedCost = (rate: SeedsPerArea, { price, seeds }: SeedPrice): MoneyPerArea => moneyPerArea(rate.times(price).div(seeds));
