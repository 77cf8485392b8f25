/** What is wrong between weeds, products and what goes into a tank: no money rests on any of it. */
import type { Application, Season } from "../core/season";
import { plainWeed, sitesIn } from "../core/weeds/sites";
import { mixRows, onlyTank } from "../core/weeds/tankMix";
import { applicationColumns } from "./columns/applications";
import type { Named } from "./columns/column";
import { itemColumns } from "./columns/items";
import type { Place, Problem, Subject } from "./problem";
import { nearest } from "./words";

const touches: readonly Subject[] = [{ of: "weeds" }];
const { columns: entered } = applicationColumns;
const at = ({ source }: Pick<Application, "source">, { heading: column }: Named): Place => ({ ...source, column });

/**
 * Products on land with listed weeds that tell only one of what they control and their sites, and names that are nearly a listed
 * weed's.
 */
export function weedProblems({ applications, fields, items, weeds }: Season): readonly Problem[] {
  if (weeds.length === 0) return [];
  const cropOf = new Map(fields.map(({ name, crop }) => [name, crop]));
  // A row and a weed meet on a field, or where one of them speaks of the field's crop.
  const meets = (row: Application["target"], weed: Application["target"]) =>
    "field" in row
      ? "field" in weed
        ? row.field === weed.field
        : cropOf.get(row.field) === weed.crop
      : "field" in weed
        ? cropOf.get(weed.field) === row.crop
        : row.crop === weed.crop;
  const used = new Set(applications.filter(({ target }) => weeds.some((weed) => meets(target, weed.target))).map(({ item }) => item));
  const names = [...new Set(weeds.map(({ weed }) => weed))];
  const known = new Set(names.map(plainWeed));
  return items
    .filter(({ name, kind }) => kind === "crop protection" && used.has(name))
    .flatMap((item): readonly Problem[] => {
      const controls = item.controls ?? [];
      const hasSites = sitesIn(item.sitesOfAction).length > 0;
      const unlike = controls.flatMap((found): readonly Problem[] => {
        const like = known.has(plainWeed(found)) ? null : nearest(found, names);
        return like === null ? [] : [{ code: "weed-unlike", at: at(item, itemColumns.columns.controls), found, like, touches }];
      });
      return [
        ...(hasSites && item.controls === undefined
          ? [{ code: "controls-missing", at: at(item, itemColumns.columns.controls), found: item.name, touches } as const]
          : []),
        ...(!hasSites && controls.some((name) => known.has(plainWeed(name)))
          ? [{ code: "sites-missing", at: at(item, itemColumns.columns.sites), found: item.name, touches } as const]
          : []),
        ...unlike,
      ];
    });
}

/** Rows of one mix that do not agree on carrier, tank or acres, and mixes without a tank. */
export function mixProblems(season: Season): readonly Problem[] {
  return mixRows(season).flatMap((rows): readonly Problem[] => {
    const where = "field" in rows[0]!.target ? rows[0]!.target.field : rows[0]!.target.crop;
    const carriers = rows.filter(({ tank }) => (tank?.carrierPerArea ?? null) !== null);
    const tanks = rows.filter(({ tank }) => (tank?.size ?? null) !== null);
    return [
      ...unlike(carriers, entered.carrier, (row) => row.tank!.carrierPerArea!.toFixed()),
      ...unlike(tanks, entered.tankSize, (row) => row.tank!.size!.toFixed()),
      ...unlike(rows, entered.acres, (row) => row.area?.toFixed() ?? "all"),
      ...(carriers.length > 0 && tanks.length === 0 && onlyTank(season) === null
        ? [{ code: "tank-missing", at: at(rows[0]!, entered.tankSize), found: where, touches } as const]
        : []),
      ...(carriers.length === 0 ? [{ code: "blank", at: at(rows[0]!, entered.carrier), found: "", touches } as const] : []),
    ];
  });
}

function unlike(rows: readonly Application[], column: Named, value: (row: Application) => string): readonly Problem[] {
  const [first, ...others] = rows;
  return first === undefined
    ? []
    : others
        .filter((row) => value(row) !== value(first))
        .map((row) => ({
          code: "mix-disagrees",
          at: at(row, column),
          other: at(first, column),
          found: value(row),
          like: value(first),
          touches,
        }));
}
