/** Net return by yield and price, live: two crops abreast. */
import { Decimal } from "../../../core/numbers/decimal";
import type { Layer } from "../../../core/kinds";
import { priceYieldGrid } from "../../../core/lender/priceYieldGrid";
import { costsOf } from "../../../core/lender/scenarios";
import { moneyPerUnit, yieldPerArea } from "../../../core/numbers/units";
import type { SheetCell } from "../../resultSheet";
import type { SeasonReport } from "../../seasonReport";
import { moneyCell, text, yieldCell } from "../cells";
import { areaName, layerTitle } from "../sheetWords";
import type { CropBalance } from "./breakEvenBand";
import { netFormula, partFormula } from "./lenderFormulas";
import { reference, type LenderPage } from "./printedPage";

/** The tested parts of the price and of the yield. */
const parts = ["0.8", "0.9", "1", "1.1", "1.2"] as const;
/** Columns from one grid to the next: the yields, five prices, and one to breathe. */
const step = 7;

export function gridBands(page: LenderPage, report: SeasonReport, balances: readonly CropBalance[], layer: Layer): void {
  for (let first = 0; first < balances.length; first += 2) {
    const row = page.next;
    balances.slice(first, first + 2).forEach((balance, index) => {
      grid(page, report, balance, layer, row, index * step);
    });
    page.skip(1);
  }
}

/** Prices to try are whole cents and yields whole tenths; the middle is what it is, so that it comes to the net return beside the table. */
const partOf = (whole: Decimal, part: string, places: 1 | 2): Decimal =>
  part === "1" ? whole : whole.times(part).toDecimalPlaces(places, Decimal.ROUND_HALF_UP);
/** A price or yield of the grid, with every digit that a cell holds. */
const exactly = (cell: SheetCell, value: Decimal): SheetCell => ({ ...cell, value: Number(value.toPrecision(15)) });

function grid(page: LenderPage, report: SeasonReport, { crop, cells }: CropBalance, layer: Layer, top: number, column: number): void {
  const { outlook } = crop;
  const balance = cells(layer);
  const prices = parts.map((part) => moneyPerUnit(partOf(outlook.price, part, 2)));
  const yields = parts.map((part) => yieldPerArea(partOf(outlook.yields.used, part, 1)));
  const figures = priceYieldGrid(costsOf(outlook, layer), yields, prices);
  const words = `${crop.crop}: net per ${areaName(report)}, ${layerTitle(layer).toLowerCase()}; yield down, price across`;
  page.across({ row: top, column }, 6, text(words, { bold: true, fill: "heading" }));
  page.put(
    { row: top + 1, column },
    text(`${crop.yieldUnit} per ${areaName(report)}`, { align: "right", border: "bottom" }),
    ...prices.map((price, index) => ({
      ...exactly(moneyCell(price, { bold: true, border: "bottom" }), price),
      formula: partFormula(balance.price, parts[index]!, 2),
    })),
  );
  figures.rows.forEach(({ yield: at, net }, index) => {
    const row = top + 2 + index;
    page.put({ row, column }, { ...exactly(yieldCell(at, { bold: true }), at), formula: partFormula(balance.yieldHere, parts[index]!, 1) });
    page.put(
      { row, column: column + 1 },
      ...net.map((value, across) => ({
        ...moneyCell(value),
        formula: netFormula({
          ...balance,
          yieldHere: reference({ row, column }),
          price: reference({ row: top + 1, column: column + 1 + across }),
        }),
      })),
    );
  });
}
