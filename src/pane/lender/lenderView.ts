/** What the page Lender pages shows before anything is written: break-evens, the loan at its peak, the debt test. */
import type { CropFigures } from "../../core/figures";
import { layerCosts, type Layer } from "../../core/kinds";
import type { CashFlow } from "../../core/lender/cashFlow";
import { farmYear } from "../../core/lender/farmYear";
import { repayment } from "../../core/lender/repayment";
import type { ResultSheet } from "../../workbook/resultSheet";
import { breakEvenSheet } from "../../workbook/sheets/breakEven";
import { costPerAcreSheet } from "../../workbook/sheets/costPerAcre";
import { cashFlowSheet, farmCashFlow, noCashFlow } from "../../workbook/sheets/lender/cashFlowSheet";
import { lenderPages } from "../../workbook/sheets/lender/lenderPages";
import type { SeasonReport } from "../../workbook/seasonReport";
import type { Format } from "../format";
import type { FigureRow } from "../season/cropView";

/** The sheets that may go along with the lender pages. */
export const companions = ["Cash flow", "Cost per acre", "Break-even"] as const;
export type Companion = (typeof companions)[number];

export type LenderChoice = { readonly crops: readonly string[]; readonly layer: Layer; readonly companions: ReadonlySet<Companion> };

/** Every crop, the layer that a lender asks, and the cash flow beside the pages. */
export const firstChoice = ({ figures }: SeasonReport): LenderChoice =>
  ({ crops: figures.crops.map(({ crop }) => crop), layer: "cashNeed", companions: new Set(["Cash flow"]) });

/** The sheets of a choice, the lender pages first. */
export const sheetsOf = (report: SeasonReport, { crops, layer, companions: also }: LenderChoice, date: string): readonly ResultSheet[] => [
  lenderPages(report, { date, crops, layer }),
  ...(also.has("Cash flow") ? [cashFlowSheet(report)] : []),
  ...(also.has("Cost per acre") ? [costPerAcreSheet(report)] : []),
  ...(also.has("Break-even") ? [breakEvenSheet(report)] : []),
];

export type LenderPreview = {
  readonly crops: readonly { readonly crop: string; readonly caption: string; readonly rows: readonly FigureRow[] }[];
  readonly farm: readonly { readonly name: string; readonly says: string }[];
};

/** The figures that the pages lead with. */
export function lenderPreview(report: SeasonReport, { crops, layer }: LenderChoice, format: Format): LenderPreview {
  const shown = report.figures.crops.filter(({ crop }) => crops.includes(crop));
  return {
    crops: shown.map((crop) => ({ crop: crop.crop, caption: `${crop.crop}: ${layerCosts[layer]}, ${format.currency}`, rows: cropRows(crop, layer, format) })),
    farm: farmLines(report, format),
  };
}

function cropRows({ outlook, yieldUnit, sales }: CropFigures, layer: Layer, format: Format): readonly FigureRow[] {
  const { money, priceNeeded, yieldNeeded, areaName } = format;
  return [
    { name: `Cost per ${areaName}`, cells: [money(outlook.costPerArea.layers[layer])] },
    { name: `Break-even price, per ${yieldUnit}`, cells: [priceNeeded(outlook.breakEvenPrice[layer])] },
    { name: `Expected price, per ${yieldUnit}`, cells: [money(outlook.price)] },
    { name: `Break-even yield, ${yieldUnit} per ${areaName}`, cells: [yieldNeeded(outlook.breakEvenYield[layer])] },
    { name: `Yield outlook, ${yieldUnit} per ${areaName}`, cells: [format.yield(outlook.yields.used)] },
    { name: `Net return per ${areaName}, at the price entered`, cells: [money(outlook.netPerArea[layer])] },
    ...(sales.sold.isZero() ? [] : [{ name: `Net return per ${areaName}, with what is sold`, cells: [money(sales.withSold.outlook.netPerArea[layer])] }]),
    { name: `Price needed on the rest, per ${yieldUnit}`, cells: [priceNeeded(sales.priceNeeded[layer])] },
  ];
}

function farmLines(report: SeasonReport, format: Format): LenderPreview["farm"] {
  const flow = farmCashFlow(report);
  const { capacity, debtService, margin, termDebtCoverage } = repayment(farmYear(report.figures));
  return [
    ...(flow === null ? [{ name: "Operating loan", says: noCashFlow }] : operatingLoan(flow, format)),
    { name: "To pay term debt with", says: `${format.amount(capacity)} a year` },
    { name: "Interest and principal due", says: `${format.amount(debtService)} a year` },
    { name: "Margin", says: `${format.amount(margin)} a year` },
    { name: "Term-debt coverage", says: termDebtCoverage === null ? "no term debt" : format.money(termDebtCoverage) },
  ];
}

function operatingLoan({ peak, months }: CashFlow, format: Format): LenderPreview["farm"] {
  const last = months.at(-1)!;
  return [
    { name: "Operating loan at its peak", says: peak === null ? "none is needed in any month" : `${format.amount(peak.balance)}, end of ${format.month(peak.month)}` },
    { name: `End of ${format.month(last.month)}`, says: `${format.amount(last.loan)} owed, ${format.amount(last.cash)} in cash` },
  ];
}
