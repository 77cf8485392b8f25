/** The rows that a finished season leaves in the table Past seasons: finals only. */
import { zero, type Decimal } from "../../core/numbers/decimal";
import type { CropFigures, FieldFigures } from "../../core/figures";
import { accounts } from "../../core/accounts";
import { inOrder } from "../../core/weeds/sites";
import { programmes } from "../../core/weeds/programme";
import type { Cell } from "../cell";
import { pastSeasonColumns } from "../columns/pastSeasons";
import { serialOfDay } from "../daySerial";
import type { SeasonReport } from "../seasonReport";

export type KeptSeason = {
  /** Cells by heading, one row a field whose harvest is done. */
  readonly rows: readonly ReadonlyMap<string, Cell>[];
  /** Fields whose harvest is not done, so that nothing of them is kept. */
  readonly open: readonly string[];
};

const { columns } = pastSeasonColumns;
type Named = { readonly heading: string };

/** A number as a cell keeps it: a record of what was, to the hundredth. */
const cellOf = (value: Decimal | null): Cell => (value === null ? "" : Number(value.toDecimalPlaces(2).toFixed()));

/**
 * What this season leaves, each field at its final figures.
 *
 * @returns `null` where nothing tells the season's year
 */
export function keptSeason(report: SeasonReport): KeptSeason | null {
  const { season, figures } = report;
  const year = season.settings.seasonYear;
  if (year === null) return null;
  const all = figures.crops.flatMap((crop) => crop.fields.map((field) => ({ crop, field })));
  return {
    rows: all.filter(({ field }) => field.final !== null).map((each) => rowOf(report, year, each)),
    open: all.filter(({ field }) => field.final === null).map(({ field }) => field.field),
  };
}

function rowOf(report: SeasonReport, year: string, { crop, field }: { crop: CropFigures; field: FieldFigures }): ReadonlyMap<string, Cell> {
  const { season, figures } = report;
  const { budget } = field.final!;
  const entered = season.fields.find(({ name }) => name === field.field)!;
  const stand = figures.stands.find((each) => each.field.name === field.field);
  const weather = accounts(season).weather.find((each) => each.field === field.field);
  const sprayed = programmes(season, figures.items).find((each) => each.field === field.field)?.passes ?? [];
  const price = priceGot(crop);
  // The field's grain went with the crop's: each unit at the crop's mean.
  const ours = budget.yields.used.times(budget.operatorShare);
  const net = budget.netPerArea.full.plus(ours.times(price.minus(budget.price)));
  const cells: readonly (readonly [Named, Cell])[] = [
    [columns.season, Number(year)],
    [columns.field, field.field],
    [columns.crop, crop.crop],
    [columns.hybrid, entered.variety ?? ""],
    [columns.acres, Number(field.area.toFixed())],
    [columns.yieldUnit, crop.yieldUnit],
    [columns.goal, Number(entered.yieldGoal.toFixed())],
    [columns.yield, cellOf(budget.yields.used)],
    [columns.operating, cellOf(budget.costPerArea.layers.operating)],
    [columns.cash, cellOf(budget.costPerArea.layers.cash)],
    [columns.full, cellOf(budget.costPerArea.layers.full)],
    [columns.cashNeed, cellOf(budget.costPerArea.layers.cashNeed)],
    [columns.planned, cellOf(field.plan.budget.costPerArea.layers.full)],
    [columns.price, cellOf(price)],
    [columns.net, cellOf(net)],
    [columns.operatorShare, entered.operatorShare.eq("1") ? "" : Number(entered.operatorShare.toFixed())],
    [columns.planted, entered.planted === null ? "" : serialOfDay(entered.planted, "1900")],
    [columns.stand, cellOf(stand?.summary.mean.toDecimalPlaces(0) ?? null)],
    [columns.heatUnits, cellOf(weather?.heatUnits ?? null)],
    [columns.rain, cellOf(weather?.rain ?? null)],
    [columns.sitesUsed, inOrder(sprayed.filter(({ status }) => status === "done").flatMap(({ sites }) => sites)).join(", ")],
  ];
  return new Map(cells.map(([{ heading }, cell]) => [heading, cell]));
}

/** What a unit of the operator's crop brought: what is sold at its own price, the rest at the price entered. */
function priceGot({ outlook, sales }: CropFigures): Decimal {
  const unsold = sales.unsold.gt("0") ? sales.unsold : zero;
  const whole = sales.sold.plus(unsold);
  return whole.isZero() ? outlook.price : sales.received.plus(unsold.times(outlook.price)).div(whole);
}
