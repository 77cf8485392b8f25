/** The report as a page of plain text for a terminal. */
import { planningCaution } from "../core/cautions";
import type { Decimal } from "../core/numbers/decimal";
import type { CropFigures, ItemFigures, PerLayer } from "../core/figures";
import { layerCosts, layerNames, layers } from "../core/kinds";
import { incompleteMark } from "../workbook/incompleteMark";
import { toFix } from "../workbook/problem";
import { harvestNotes } from "../workbook/harvestNotes";
import { rentNotes } from "../workbook/rentNotes";
import type { SeasonReport } from "../workbook/seasonReport";
import { shownMoney, shownPriceNeeded, shownQuantity, shownYield, shownYieldNeeded } from "../workbook/shown";

const wide = 12;
const first = 26;
const dash = "–";
const row = (name: string, cells: readonly string[]): string =>
  (name.padEnd(first) + cells.map((cell) => cell.padStart(wide)).join("")).trimEnd();
const shown = (value: Decimal | null, how: (value: Decimal) => Decimal, places: 0 | 1 | 2): string =>
  value === null ? dash : grouped(how(value).toFixed(places));
/** 60,000.50 for 60000.50. */
const grouped = (digits: string): string => {
  const [whole = "", ...places] = digits.split(".");
  return [whole.replace(/\B(?=(\d{3})+$)/g, ","), ...places].join(".");
};
const moneyText = (value: Decimal | null): string => shown(value, shownMoney, 2);

/** A page for people: every crop, then what is still to be bought. Problems are told apart from it. */
export function summary(report: SeasonReport): string {
  const { seasonYear, currency, areaUnit } = report.season.settings;
  return [
    `Season ${seasonYear ?? "(no year entered)"}, ` +
      `${currency}${toFix(report.problems).length === 0 ? "" : ", INCOMPLETE: see the entries to fix"}`,
    ...report.figures.crops.flatMap((crop) => [
      "",
      ...cropLines(crop, areaUnit, incompleteMark(report.problemsOf({ of: "crop", name: crop.crop }))),
      ...harvestNotes(report, crop),
      ...rentNotes(report, crop),
    ]),
    ...shortLines(report.figures.items, currency),
    "",
    planningCaution,
  ].join("\n");
}

function cropLines(crop: CropFigures, areaUnit: string, mark: string | null): readonly string[] {
  const { plan, outlook, final, sales } = crop;
  const stages = [plan, outlook, ...(final === null ? [] : [final])];
  const perLayer = (name: string, values: PerLayer<Decimal | null>, text: (value: Decimal | null) => string) =>
    row(
      name,
      layers.map((layer) => text(values[layer])),
    );
  const price = (value: Decimal | null) => shown(value, shownPriceNeeded, 2);
  return [
    `${crop.crop}, ${crop.area.toFixed(1)} ${areaUnit}${mark === null ? "" : ` (${mark})`}`,
    row("", ["plan", "projected", ...(final === null ? [] : ["final"])]),
    row(
      `yield, ${crop.yieldUnit}/${areaUnit}`,
      stages.map((stage) => shown(stage.yields.used, shownYield, 1)),
    ),
    ...layers.map((layer) =>
      row(
        `${layerCosts[layer]}/${areaUnit}`,
        stages.map((stage) => moneyText(stage.costPerArea.layers[layer])),
      ),
    ),
    row(
      "projected",
      layers.map((layer) => layerNames[layer]),
    ),
    perLayer(`break-even price/${crop.yieldUnit}`, outlook.breakEvenPrice, price),
    perLayer(`break-even yield at ${moneyText(outlook.price)}`, outlook.breakEvenYield, (value) => shown(value, shownYieldNeeded, 1)),
    perLayer(`net return/${areaUnit}`, outlook.netPerArea, moneyText),
    ...(sales.sold.isZero() ? [] : [perLayer("  with what is sold", sales.withSold.outlook.netPerArea, moneyText)]),
    ...(sales.sold.isZero()
      ? []
      : [
          `sold ${shown(sales.sold, shownQuantity, 0)} ${crop.yieldUnit} at ${moneyText(sales.averagePrice)}, unsold ` +
            `${shown(sales.unsold, shownQuantity, 0)}`,
          perLayer("price needed, unsold", sales.priceNeeded, price),
        ]),
  ];
}

function shortLines(items: readonly ItemFigures[], currency: string): readonly string[] {
  const short = items.filter((item) => item.short.gt("0"));
  if (short.length === 0) return [];
  return [
    "",
    row("Still to buy", ["quantity", "unit", currency]),
    ...short.map((item) =>
      row(item.item.slice(0, first - 1), [shown(item.short, shownQuantity, 2), item.unit.slice(0, wide - 1), moneyText(item.shortCost)]),
    ),
  ];
}
