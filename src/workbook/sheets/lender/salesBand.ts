/** Grain sold, the price that the rest must bring, and what insurance guarantees. */
import { hundred, zero, type Decimal } from "../../../core/numbers/decimal";
import type { CropFigures } from "../../../core/figures";
import { layers } from "../../../core/kinds";
import { guarantee } from "../../../core/lender/guarantee";
import { isOfSeason } from "../../../core/salesFigures";
import type { SeasonReport } from "../../seasonReport";
import { moneyCell, priceNeededCell, text, wholeQuantityCell, yieldCell } from "../cells";
import { priceNeededOnUnsold } from "../../unsold";
import { areaName, layerTitle } from "../sheetWords";
import { blockWidth, type LenderPage } from "./printedPage";

export function salesBand(page: LenderPage, report: SeasonReport, crops: readonly CropFigures[]): void {
  const top = page.next;
  const area = areaName(report);
  page.put({ row: top, column: 0 }, text("Grain sold and insured", { bold: true, fill: "heading" }));
  [
    "Sold and contracted",
    "   part of your crop, average price",
    "Unsold of the projected crop",
    priceNeededOnUnsold(crops.map(({ yieldUnit }) => yieldUnit)),
    "",
    `Net per ${area}, at the price entered`,
    "   with what is sold",
    `Insurance guarantee per ${area}`,
  ].forEach((words, index) => {
    page.put({ row: top + 1 + index, column: 0 }, text(words));
  });
  crops.forEach((crop, index) => {
    const column = 1 + index * blockWidth;
    const { sales } = crop;
    const whole = sales.sold.plus(sales.unsold);
    page.across({ row: top, column }, blockWidth, text(crop.crop, { bold: true, fill: "heading", align: "center" }));
    page.put({ row: top + 1, column }, wholeQuantityCell(sales.sold), text(crop.yieldUnit));
    page.across({ row: top + 1, column: column + 2 }, blockWidth - 2, text(soldByKind(report, crop), { size: 8, align: "right" }));
    page.put(
      { row: top + 2, column },
      text(whole.lte("0") ? "–" : `${sales.sold.div(whole).times(hundred).toFixed(0)} %`, { align: "right" }),
      moneyCell(sales.averagePrice),
      text(`per ${crop.yieldUnit}`),
    );
    page.put({ row: top + 3, column }, wholeQuantityCell(sales.unsold), text(crop.yieldUnit));
    page.put(
      { row: top + 4, column },
      ...layers.map((layer) => text(layerTitle(layer).replace(" cost", ""), { align: "right", italic: true })),
    );
    page.put({ row: top + 5, column }, ...layers.map((layer) => priceNeededCell(sales.priceNeeded[layer], { bold: true })));
    page.put({ row: top + 6, column }, ...layers.map((layer) => moneyCell(crop.outlook.netPerArea[layer])));
    page.put({ row: top + 7, column }, ...layers.map((layer) => moneyCell(sales.withSold.outlook.netPerArea[layer], { bold: true })));
    const policy = report.season.insurance?.find((each) => each.crop === crop.crop);
    if (policy === undefined) page.put({ row: top + 8, column }, text("no policy entered"));
    else {
      const share = crop.outlook.operatorShare;
      const { yield: guaranteed, price, perArea } = guarantee(policy);
      page.put(
        { row: top + 8, column },
        moneyCell(perArea.times(share)),
        text(`${policy.form}:`, { align: "right" }),
        yieldCell(guaranteed.times(share)),
        moneyCell(price),
      );
    }
  });
}

/** Kinds that fit beside the quantity; what is sold by any more is *other*. */
const kindsShown = 2;

/**
 * By which kinds grain is sold, the most first: a lender tells a forward contract from grain that is paid. Nothing where none is
 * entered.
 */
function soldByKind({ season }: SeasonReport, { crop, sales: { sold } }: CropFigures): string {
  const byKind = new Map<string, Decimal>();
  const add = (kind: string, quantity: Decimal) => byKind.set(kind, quantity.plus(byKind.get(kind) ?? zero));
  for (const sale of season.sales) {
    if (sale.crop === crop && isOfSeason(sale, season.settings.seasonYear)) add(sale.kind?.toLowerCase() ?? "", sale.quantity);
  }
  const named = [...byKind]
    .filter(([kind]) => kind !== "")
    .sort(([, a], [, b]) => b.comparedTo(a))
    .slice(0, kindsShown);
  if (named.length === 0 || sold.isZero()) return "";
  const rest = named.reduce((left, [, quantity]) => left.minus(quantity), sold as Decimal);
  const all = rest.isZero() ? named : [...named, ["other", rest] as const];
  return all.map(([kind, quantity]) => `${kind} ${quantity.div(sold).times(hundred).toFixed(0)} %`).join(", ");
}
