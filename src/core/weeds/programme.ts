/**
 * What is sprayed on a field pass by pass: its cost, its sites of action, and for each weed listed there the sites that still
 * control it.
 */
import { sum, zero, type Decimal } from "../numbers/decimal";
import { yearBefore } from "../history/provenYield";
import type { ItemFigures } from "../figures";
import type { IsoDate, Target } from "../row";
import type { Application, Field, Item, Season } from "../season";
import { moneyPerArea, type MoneyPerArea } from "../numbers/units";
import { inOrder, plainWeed, sitesIn } from "./sites";
import { together } from "./tankMix";
import type { WeedEntry } from "./weedEntry";

/** What goes over a field at once: rows of one day, planned or done. */
export type Pass = {
  readonly date: IsoDate | null;
  readonly status: "plan" | "done";
  /** Whether some of a planned pass is still to be done: its products went over less of the field by done rows, and the crop stands. */
  readonly isOpen: boolean;
  readonly items: readonly string[];
  /** What its crop protection costs per area of the whole field, landlord's part included; `null` where a price is not known. */
  readonly costPerArea: MoneyPerArea | null;
  readonly sites: readonly string[];
};

type WeedOutlook = {
  readonly weed: string;
  readonly resistantTo: readonly string[];
  /** For each pass, in its order: sites of products whose *Controls* name the weed, less those that it resists. */
  readonly sitesLeft: readonly (readonly string[])[];
  readonly seenOn: IsoDate | null;
};

export type Programme = {
  readonly field: string;
  readonly passes: readonly Pass[];
  readonly weeds: readonly WeedOutlook[];
  /** Cost of all passes planned and of all done, each by itself. */
  readonly cost: Readonly<Record<Pass["status"], MoneyPerArea | null>>;
  /** Sites that every pass of at least two has, planned or done: what is used so is what weeds learn. */
  readonly inEveryPass: readonly string[];
  /** Sites of these passes that Past seasons has for the field in the year before this season. */
  readonly sinceLastYear: readonly string[];
};

/** Every field that is sprayed or has a weed listed, in the order of the table. */
export function programmes(
  season: Pick<Season, "applications" | "fields" | "items" | "weeds" | "settings" | "pastSeasons">,
  figures: readonly ItemFigures[],
): readonly Programme[] {
  const { fields, weeds } = season;
  const items = new Map(season.items.filter(({ kind }) => kind === "crop protection").map((item) => [item.name, item]));
  const rows = season.applications.filter(({ item }) => items.has(item));
  const prices = new Map(figures.map((each) => [each.item, each]));
  return fields.flatMap((field): readonly Programme[] => {
    const isHere = (target: Target) => ("field" in target ? target.field === field.name : target.crop === field.crop);
    // What a crop's row and a field's row say for one day goes over this field together.
    const here = rows.filter(({ target }) => isHere(target)).map((row) => ({ ...row, target: { field: field.name } }));
    const listed = weeds.filter(({ target }) => isHere(target));
    if (here.length === 0 && listed.length === 0) return [];
    const groups = [...together(here)].sort((a, b) => (a[0]!.date ?? "9").localeCompare(b[0]!.date ?? "9"));
    const byRow = new Map(rows.map((row) => [row.source, row]));
    const open = openGroups(groups, (row) => partOfField(byRow.get(row.source)!, field, fields));
    const passes = groups.map((group): Pass => ({
      date: group[0]!.date,
      status: group[0]!.status === "plan" ? "plan" : "done",
      isOpen: field.harvestDone === null && open.has(group),
      items: [...new Set(group.map(({ item }) => item))],
      costPerArea: costOf(
        group.map(({ source }) => byRow.get(source)!),
        field,
        fields,
        items,
        prices,
      ),
      sites: inOrder(group.flatMap(({ item }) => weedSites(items.get(item)!))),
    }));
    const controls = (item: Item, weed: string) => (item.controls ?? []).some((name) => plainWeed(name) === plainWeed(weed));
    const outlook = merged(listed).map(({ weed, resistantTo, seenOn }): WeedOutlook => ({
      weed,
      resistantTo,
      seenOn,
      sitesLeft: passes.map((pass) =>
        inOrder(
          pass.items
            .map((name) => items.get(name)!)
            .filter((item) => controls(item, weed))
            .flatMap((item) => sitesIn(item.sitesOfAction)),
        ).filter((site) => !resistantTo.includes(site)),
      ),
    }));
    const cost = (status: Pass["status"]) => allOf(passes.filter((pass) => pass.status === status).map(({ costPerArea }) => costPerArea));
    return [
      {
        field: field.name,
        passes,
        weeds: outlook,
        cost: { plan: cost("plan"), done: cost("done") },
        inEveryPass: inOrder([...everyPass(passes, "plan"), ...everyPass(passes, "done")]),
        sinceLastYear: sinceLastYear(season, field, passes),
      },
    ];
  });
}

/** Planned passes of which a product has gone over less of the field than was planned up to there, oldest first. */
function openGroups(groups: readonly (readonly Application[])[], part: (row: Application) => Decimal): ReadonlySet<unknown> {
  const done = new Map<string, Decimal>();
  for (const row of groups.flat()) if (row.status !== "plan") done.set(row.item, (done.get(row.item) ?? zero).plus(part(row)));
  const planned = new Map<string, Decimal>();
  return new Set(
    groups.filter((group) => {
      const rows = group.filter(({ status }) => status === "plan");
      for (const row of rows) planned.set(row.item, (planned.get(row.item) ?? zero).plus(part(row)));
      return rows.some(({ item }) => planned.get(item)!.gt(done.get(item) ?? zero));
    }),
  );
}

/** The sites of a product against weeds: of one that is for no weed, as a fungicide, none. */
const weedSites = ({ sitesOfAction, controls }: Item): readonly string[] => (controls?.length === 0 ? [] : sitesIn(sitesOfAction));

const allOf = (costs: readonly (MoneyPerArea | null)[]): MoneyPerArea | null =>
  costs.some((cost) => cost === null) ? null : moneyPerArea(sum(costs.map((cost) => cost!)));

/** Price of the plan for what is planned, of what was bought for what is done; each falls back on the other. */
function costOf(
  rows: readonly Application[],
  field: Field,
  fields: readonly Field[],
  items: ReadonlyMap<string, Item>,
  prices: ReadonlyMap<string, ItemFigures>,
): MoneyPerArea | null {
  const costs = rows.map((row): Decimal | null => {
    const [figures, item] = [prices.get(row.item), items.get(row.item)!];
    const pack = row.status === "plan" ? (figures?.planPrice ?? figures?.averagePrice) : (figures?.averagePrice ?? figures?.planPrice);
    return pack === undefined || pack === null
      ? null
      : row.rate
          .times(pack)
          .div(item.packSize)
          .times(partOfField(row, field, fields));
  });
  return costs.some((cost) => cost === null) ? null : moneyPerArea(costs.reduce<Decimal>((all, cost) => all.plus(cost!), zero));
}

/** How much of the field the row goes over: the whole where it tells no area; an area for a crop falls on its fields by theirs. */
function partOfField({ area, target }: Application, field: Field, fields: readonly Field[]): Decimal {
  const whole = "field" in target ? field.area : sum(fields.filter(({ crop }) => crop === target.crop).map((each) => each.area));
  return area === null ? whole.div(whole) : area.div(whole);
}

/** A weed that the field and its crop both list is one, with what either says of it. */
function merged(listed: readonly WeedEntry[]): readonly WeedEntry[] {
  const byName = new Map<string, WeedEntry>();
  for (const entry of listed) {
    const key = plainWeed(entry.weed);
    const known = byName.get(key);
    byName.set(
      key,
      known === undefined
        ? entry
        : { ...known, resistantTo: inOrder([...known.resistantTo, ...entry.resistantTo]), seenOn: known.seenOn ?? entry.seenOn },
    );
  }
  return [...byName.values()];
}

function sinceLastYear(
  { settings: { seasonYear }, pastSeasons }: Pick<Season, "settings" | "pastSeasons">,
  { name }: Field,
  passes: readonly Pass[],
): readonly string[] {
  if (seasonYear === null) return [];
  const before = yearBefore(seasonYear);
  const used = new Set(
    pastSeasons.filter(({ field, season }) => field === name && season === before).flatMap(({ sitesUsed }) => sitesUsed),
  );
  return inOrder(passes.flatMap(({ sites }) => sites)).filter((site) => used.has(site));
}

function everyPass(passes: readonly Pass[], status: Pass["status"]): readonly string[] {
  const own = passes.filter((pass) => pass.status === status && pass.sites.length > 0);
  return own.length < 2 ? [] : own[0]!.sites.filter((site) => own.every(({ sites }) => sites.includes(site)));
}
