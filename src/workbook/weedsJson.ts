/** Weeds, sites of action and tank mixes as JSON. */
import type { Decimal } from "../core/numbers/decimal";
import { programmes } from "../core/weeds/programme";
import { mixes } from "../core/weeds/tankMix";
import type { SeasonReport } from "./seasonReport";

type Digits = (value: Decimal | null) => string | null;

/** Fields that are sprayed or have a weed listed; `sitesLeft` has a list for each pass, in the order of `passes`. */
export const weedsJson = ({ season, figures }: SeasonReport, digits: Digits) =>
  programmes(season, figures.items).map(({ field, passes, weeds, inEveryPass, sinceLastYear }) => ({
    field,
    inEveryPass,
    sinceLastYear,
    passes: passes.map(({ date, status, costPerArea, sites }) => ({ date, status, costPerAcre: digits(costPerArea), sites })),
    weeds: weeds.map(({ weed, resistantTo, sitesLeft }) => ({ weed, resistantTo, sitesLeft })),
  }));

/** `loads` are full ones, `lastLoad` the volume of the last; amounts are in the unit of the rate. */
export const mixesJson = ({ season }: SeasonReport, digits: Digits) =>
  mixes(season).map(({ target, date, area, carrierPerArea, tank, loads, items }) => ({
    fieldOrCrop: "field" in target ? target.field : target.crop,
    date,
    acres: digits(area),
    carrierPerAcre: digits(carrierPerArea),
    tank: digits(tank),
    loads: digits(loads?.full ?? null),
    lastLoad: digits(loads?.last ?? null),
    items: items.map(({ item, unit, perLoad, inLastLoad, total }) => ({
      item,
      unit,
      perLoad: digits(perLoad),
      inLastLoad: digits(inLastLoad),
      total: digits(total),
    })),
  }));
