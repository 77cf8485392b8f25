/** What the page Lender shows before anything is written: the debt test first, then break-evens and the loan. */
import type { CropFigures } from "../../core/figures";
import { layerCosts, type Layer } from "../../core/kinds";
import type { CashFlow } from "../../core/lender/cashFlow";
import { farmYear } from "../../core/lender/farmYear";
import { repayment, type Repayment } from "../../core/lender/repayment";
import type { ResultSheet } from "../../workbook/resultSheet";
import { breakEvenSheet } from "../../workbook/sheets/breakEvenSheet";
import { costPerAcreSheet } from "../../workbook/sheets/costPerAcre";
import { cashFlowSheet } from "../../workbook/sheets/lender/cashFlowSheet";
import { farmCashFlow, noCashFlow } from "../../workbook/sheets/lender/farmCashFlow";
import { lenderPages } from "../../workbook/sheets/lender/lenderPages";
import type { SeasonReport } from "../../workbook/seasonReport";
import { shownMoney, shownPriceNeeded } from "../../workbook/shown";
import { priceNeededOnUnsold } from "../../workbook/unsold";
import type { Format } from "../format";
import type { FigureRow } from "../season/cropView";

/** The sheets that may go along with the lender pages. */
export const companions = ["Cash flow", "Cost per acre", "Break-even"] as const;
type Companion = (typeof companions)[number];

export type LenderChoice = { readonly crops: readonly string[]; readonly layer: Layer; readonly companions: ReadonlySet<Companion> };

/** Every crop, the layer that a lender asks, and the cash flow beside the pages. */
export const firstChoice = ({ figures }: SeasonReport): LenderChoice => ({
  crops: figures.crops.map(({ crop }) => crop),
  layer: "cashNeed",
  companions: new Set(["Cash flow"]),
});

/** The sheets of a choice, the lender pages first. */
export const sheetsOf = (report: SeasonReport, { crops, layer, companions: also }: LenderChoice, date: string): readonly ResultSheet[] => [
  lenderPages(report, { date, crops, layer }),
  ...(also.has("Cash flow") ? [cashFlowSheet(report)] : []),
  ...(also.has("Cost per acre") ? [costPerAcreSheet(report)] : []),
  ...(also.has("Break-even") ? [breakEvenSheet(report)] : []),
];

export type LenderPreview = {
  /** What a lender asks first: whether the debt can be paid; without term debt, what the operating loan comes to. */
  readonly main: { readonly figure: string; readonly unit: string; readonly isShort: boolean };
  /** The crops whose expected price does not cover the layer; empty where all do. */
  readonly short: string;
  /** Tables of the key figures, three crops beside each other in each. */
  readonly crops: readonly { readonly columns: readonly string[]; readonly rows: readonly FigureRow[] }[];
  readonly farm: readonly { readonly name: string; readonly says: string }[];
};

/** So many crops stand beside each other in a pane of 320 pixels. */
const across = 3;

/** The figures that the pages lead with. */
export function lenderPreview(report: SeasonReport, { crops, layer }: LenderChoice, format: Format): LenderPreview {
  const shown = report.figures.crops.filter(({ crop }) => crops.includes(crop));
  const groups = shown.flatMap((_, index) => (index % across === 0 ? [shown.slice(index, index + across)] : []));
  const flow = farmCashFlow(report);
  const paid = repayment(farmYear(report.figures));
  return {
    main: mainOf(paid, flow, format),
    short: shortOf(shown, layer, format),
    crops: groups.map((group) => ({ columns: group.map(({ crop }) => crop), rows: cropRows(group, layer, format) })),
    farm: [
      ...(flow === null ? [{ name: "Operating loan", says: noCashFlow }] : operatingLoan(flow, format)),
      { name: "Repayment capacity", says: `${format.amount(paid.capacity)} a year` },
      {
        name: "Interest and principal due",
        says: paid.termDebtCoverage === null ? "no term debt" : `${format.amount(paid.debtService)} a year`,
      },
      { name: "Left after them", says: `${format.amount(paid.margin)} a year` },
    ],
  };
}

function mainOf({ capacity, debtService, termDebtCoverage }: Repayment, flow: CashFlow | null, format: Format): LenderPreview["main"] {
  if (termDebtCoverage !== null) {
    return {
      figure: `${format.quantity(termDebtCoverage)} times`,
      isShort: termDebtCoverage.lt("1"),
      unit: `term-debt coverage: ${format.amount(capacity)} a year against ${format.amount(debtService)} of interest and principal`,
    };
  }
  if (flow === null) return { figure: "No loan to show", unit: noCashFlow, isShort: false };
  return flow.peak === null
    ? { figure: "No loan", unit: "is needed in any month, and no term debt is entered", isShort: false }
    : {
        figure: format.amount(flow.peak.balance),
        unit: `operating loan at its peak, end of ${format.month(flow.peak.month)}; no term debt is entered`,
        isShort: false,
      };
}

/** "Winter wheat needs 6.27 a bu for cash need: 0.62 more than expected." */
function shortOf(crops: readonly CropFigures[], layer: Layer, format: Format): string {
  return crops
    .flatMap(({ crop, outlook, yieldUnit }) => {
      const needed = outlook.breakEvenPrice[layer];
      if (needed === null) return [`${crop} has no yield projected, so that no price covers ${layerCosts[layer]}.`];
      const [asked, expected] = [shownPriceNeeded(needed), shownMoney(outlook.price)];
      return asked.lte(expected)
        ? []
        : [
            `${crop} needs ${format.priceNeeded(needed)} a ${yieldUnit} for ${layerCosts[layer]}: ` +
              `${format.money(asked.minus(expected))} more than its expected price.`,
          ];
    })
    .join(" ");
}

function cropRows(crops: readonly CropFigures[], layer: Layer, format: Format): readonly FigureRow[] {
  const { money, priceNeeded, yieldNeeded, areaName } = format;
  const row = (name: string, cell: (crop: CropFigures) => string): FigureRow => ({ name, cells: crops.map(cell) });
  return [
    row(`Cost per ${areaName}`, ({ outlook }) => money(outlook.costPerArea.layers[layer])),
    row("Price needed", ({ outlook }) => priceNeeded(outlook.breakEvenPrice[layer])),
    row("Expected price", ({ outlook }) => money(outlook.price)),
    row("Yield needed", ({ outlook }) => yieldNeeded(outlook.breakEvenYield[layer])),
    row("Projected yield", ({ outlook }) => format.yield(outlook.yields.used)),
    row(`Net per ${areaName}`, ({ outlook }) => money(outlook.netPerArea[layer])),
    ...(crops.every(({ sales }) => sales.sold.isZero())
      ? []
      : [
          row("with what is sold", ({ sales }) => money(sales.withSold.outlook.netPerArea[layer])),
          row(priceNeededOnUnsold(crops.map(({ yieldUnit }) => yieldUnit)), ({ sales }) => priceNeeded(sales.priceNeeded[layer])),
        ]),
  ];
}

function operatingLoan({ peak, months }: CashFlow, format: Format): LenderPreview["farm"] {
  const last = months.at(-1)!;
  return [
    {
      name: "Operating loan at its peak",
      says: peak === null ? "none is needed in any month" : `${format.amount(peak.balance)}, end of ${format.month(peak.month)}`,
    },
    { name: `End of ${format.month(last.month)}`, says: `${format.amount(last.loan)} owed, ${format.amount(last.cash)} in cash` },
  ];
}
