/** The live part of the lender pages: assumptions that may be changed, and the break-evens that follow from them. */
import { breakEvenPrice, breakEvenYield, costPerArea, costPerUnit, netPerArea, type Costs } from "../../../core/breakEven";
import type { Decimal } from "../../../core/numbers/decimal";
import type { CropFigures } from "../../../core/figures";
import { countsIn, layers, type Layer } from "../../../core/kinds";
import { costsOf } from "../../../core/lender/scenarios";
import { moneyPerArea } from "../../../core/numbers/units";
import type { CellStyle, ChartModel, SheetCell } from "../../resultSheet";
import { incompleteMark } from "../../incompleteMark";
import type { SeasonReport } from "../../seasonReport";
import { moneyCell, priceNeededCell, subtotal, text, yieldNeededCell } from "../cells";
import { areaName, layerTitle } from "../sheetWords";
import {
  breakEvenPriceFormula,
  breakEvenYieldFormula,
  costPerAreaFormula,
  costPerUnitFormula,
  netFormula,
  type BalanceCells,
} from "./lenderFormulas";
import { abreast, blockWidth, corner, range, reference, type LenderPage, type Spot } from "./printedPage";

/** Where the assumptions of a crop stand. */
export type CropBalance = {
  readonly crop: CropFigures;
  readonly cells: (layer: Layer) => BalanceCells;
  readonly breakEvenRow: number;
  /** Some of its lines are no formula, because one would be too long for a cell: they do not follow what is changed above them. */
  readonly isFixed: boolean;
  readonly column: number;
};

const input: CellStyle = { border: "box", italic: true, align: "right" };
const inputNumber = (value: Decimal, numberFormat: string): SheetCell => ({
  value: Number(value.toPrecision(15)),
  style: { ...input, numberFormat },
});

/** One live line for each layer: its words, the formula over the cells, and the figure that it gives now. */
type Line = {
  readonly label: string;
  /** `null`: too long for a cell. */
  readonly formula: (cells: BalanceCells) => string | null;
  readonly now: (costs: Costs, crop: CropFigures) => SheetCell;
};

export function breakEvenBand(page: LenderPage, report: SeasonReport, crops: readonly CropFigures[]): readonly CropBalance[] {
  const area = areaName(report);
  const unit = commonUnit(crops);
  const top = page.next;
  const rows = {
    facts: top + 1,
    yields: top + 2,
    price: top + 3,
    yieldHere: top + 4,
    share: top + 5,
    other: top + 6,
    layers: top + 7,
    fixed: top + 8,
    moving: top + 9,
    lines: top + 10,
  };
  const label = (row: number, words: string, style: CellStyle = {}) => page.put({ row, column: 0 }, text(words, style));
  label(top, "Try your own price and yield", { bold: true, fill: "heading" });
  label(rows.facts, `${area === "acre" ? "Acres" : "Hectares"} and yields entered`);
  label(rows.price, `Price per ${unit} (yours to change)`);
  label(rows.yieldHere, `Yield per ${area} (yours to change)`);
  label(rows.share, "Operator's share of the crop");
  label(rows.other, `Other income per ${area}`);
  label(rows.layers, "Costs of the layer", { bold: true });
  label(rows.fixed, `Cost per ${area} without hauling etc.`);
  label(rows.moving, `Hauling, drying, selling per ${unit}`);
  const lines = linesOf(area, unit);
  lines.forEach((line, index) => label(rows.lines + index, line.label, subtotal));
  return crops.map((crop, index) => {
    const column = 1 + index * blockWidth;
    const at = (row: number, offset = 0): Spot => ({ row, column: column + offset });
    const { outlook } = crop;
    const mark = incompleteMark(report.problemsOf({ of: "crop", name: crop.crop }));
    page.across(
      at(top),
      blockWidth,
      text(`${crop.crop}${mark === null ? "" : ` – ${mark.toUpperCase()}`}`, { bold: true, fill: "heading", align: "center" }),
    );
    const yields = outlook.yields;
    page.across(
      at(rows.facts),
      blockWidth,
      text(`${outlook.area.toFixed(1)} ${report.season.settings.areaUnit}; yields in ${crop.yieldUnit}:`, { align: "center" }),
    );
    page.across(
      at(rows.yields),
      blockWidth,
      text(`goal ${yields.goal.toFixed(1)}, projected ${yields.outlook.toFixed(1)}, proven ${yields.proven?.toFixed(1) ?? "not entered"}`, {
        align: "center",
      }),
    );
    page.put(at(rows.price), inputNumber(outlook.price, "#,##0.00"), text(`per ${crop.yieldUnit}`));
    // A dock for test weight stands beside the price that it comes off, where there is one.
    const isDocked = !outlook.dock.isZero();
    if (isDocked) page.put(at(rows.price, 2), text("less dock", { align: "right" }), inputNumber(outlook.dock, "#,##0.000"));
    page.put(at(rows.yieldHere), inputNumber(yields.used, "#,##0.0"), text(crop.yieldUnit));
    page.put(at(rows.share), inputNumber(outlook.operatorShare, "0.0%"));
    page.put(at(rows.other), inputNumber(outlook.otherIncomePerArea, "#,##0.00"));
    const cells = (layer: Layer): BalanceCells => {
      const offset = layers.indexOf(layer);
      return {
        price: reference(at(rows.price)),
        yieldHere: reference(at(rows.yieldHere)),
        share: reference(at(rows.share)),
        otherIncome: reference(at(rows.other)),
        fixed: reference(at(rows.fixed, offset)),
        moving: reference(at(rows.moving, offset)),
        ...(isDocked ? { dock: reference(at(rows.price, 3)) } : {}),
        ...(outlook.rent.length > 0 && countsIn("cash rent", layer) && { rent: outlook.rent }),
      };
    };
    let isFixed = false;
    layers.forEach((layer, offset) => {
      page.put(at(rows.layers, offset), text(layerTitle(layer).replace(" cost", ""), { bold: true, align: "right", border: "bottom" }));
      page.put(at(rows.fixed, offset), inputNumber(outlook.fixed.layers[layer], "#,##0.00"));
      page.put(at(rows.moving, offset), inputNumber(outlook.moving.layers[layer], "#,##0.00"));
      lines.forEach((line, row) => {
        const formula = line.formula(cells(layer));
        isFixed ||= formula === null;
        const now = line.now(costsOf(outlook, layer), crop);
        page.put(at(rows.lines + row, offset), formula === null ? now : { ...now, formula });
      });
    });
    return { crop, cells, column, isFixed, breakEvenRow: rows.lines + breakEvenLine };
  });
}

/** The unit in which all crops beside the labels are yielded; their own units stand in their columns. */
function commonUnit(crops: readonly CropFigures[]): string {
  const [unit, ...others] = new Set(crops.map(({ yieldUnit }) => yieldUnit));
  return unit === undefined || others.length > 0 ? "unit of yield" : unit;
}

/** The position of the break-even price among the lines. */
const breakEvenLine = 2;

const linesOf = (area: string, unit: string): readonly Line[] => [
  {
    label: `Cost per ${area}`,
    formula: costPerAreaFormula,
    now: (costs, { outlook }) => moneyCell(costPerArea(costs, outlook.yields.used, outlook.price), subtotal),
  },
  {
    label: `Cost per ${unit}`,
    formula: costPerUnitFormula,
    now: (costs, { outlook }) => moneyCell(costPerUnit(costs, outlook.yields.used, outlook.price)),
  },
  {
    label: "Break-even price",
    formula: breakEvenPriceFormula,
    now: (costs, { outlook }) => priceNeededCell(breakEvenPrice(costs, outlook.yields.used), { bold: true }),
  },
  {
    label: "Break-even yield",
    formula: breakEvenYieldFormula,
    now: (costs, { outlook }) => yieldNeededCell(breakEvenYield(costs, outlook.price), { bold: true }),
  },
  {
    label: `Net return per ${area}`,
    formula: netFormula,
    now: (costs, { outlook }) => moneyCell(netPerArea(costs, outlook.yields.used, outlook.price), subtotal),
  },
  {
    label: "Net return without other income",
    formula: (cells) => netFormula({ ...cells, otherIncome: "0" }),
    now: (costs, { outlook }) => moneyCell(netPerArea({ ...costs, otherIncome: moneyPerArea("0") }, outlook.yields.used, outlook.price)),
  },
  {
    label: "Break-even price without other income",
    formula: (cells) => breakEvenPriceFormula({ ...cells, otherIncome: "0" }),
    now: (costs, { outlook }) => priceNeededCell(breakEvenPrice({ ...costs, otherIncome: moneyPerArea("0") }, outlook.yields.used)),
  },
];

const chartHeight = 11;

/** Break-even price by layer against the price, one chart for each crop, live as the cells are. */
export function layerChart(page: LenderPage, balances: readonly CropBalance[]): readonly ChartModel[] {
  const priceRow = page.next;
  page.put({ row: priceRow, column: 0 }, text("Price, for the charts", { italic: true }));
  const charts = balances.map(({ crop, column, breakEvenRow, cells }): ChartModel => {
    layers.forEach((layer, offset) => {
      page.put(
        { row: priceRow, column: column + offset },
        { ...moneyCell(crop.outlook.price, { italic: true }), formula: `=${cells(layer).price}` },
      );
    });
    const line = (row: number) => range({ row, column }, { row, column: column + blockWidth - 1 });
    return {
      kind: "column",
      title: `${crop.crop}: break-even by layer`,
      categories: line(breakEvenRow - breakEvenLine - 3),
      series: [
        { name: "Break-even price", values: line(breakEvenRow) },
        { name: "Price", values: line(priceRow) },
      ],
      from: corner({ row: priceRow + 1, column }),
      to: corner({ row: priceRow + chartHeight, column: column + blockWidth - 1 }),
    };
  });
  page.skip(chartHeight);
  return charts.slice(0, abreast);
}
