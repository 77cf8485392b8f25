/** The result sheet *Break-even*: prices and yields that pay the cost, at every yield and price that is known. */
import type { CropFigures, PerLayer } from "../../core/figures";
import type { Decimal } from "../../core/numbers/decimal";
import { layers } from "../../core/kinds";
import type { ChartModel, ResultSheet, SheetCell } from "../resultSheet";
import { rentNotes } from "../rentNotes";
import type { SeasonReport } from "../seasonReport";
import { provenYield } from "../spelling";
import { priceNeededOnUnsold } from "../unsold";
import { headings, moneyCell, note, priceNeededCell, quantityCell, section, text, title, yieldCell, yieldNeededCell } from "./cells";
import { areaName, caution, fieldMark, incompleteRows, inLines, layerNotes, layerTitle, seasonName } from "./sheetWords";

/** Characters of a note that fit across the page. */
const lineLength = 92;
/** Percent at which a crop and the notes fit on a page; each crop begins one. */
const usualScale = 90;

type Row = readonly SheetCell[];
const yieldNames = (currency: string) => ({
  goal: "yield goal",
  outlook: "projected yield",
  proven: provenYield(currency).replace("P", "p"),
  harvested: "harvested yield",
});

export function breakEvenSheet(report: SeasonReport): ResultSheet {
  const area = areaName(report);
  const rows: Row[] = [
    title("Break-even"),
    note(`${seasonName(report)}, projected.`),
    ...inLines(
      "A price needed is rounded up to the cent, a yield needed to the tenth. Hauling, drying and selling follow the yield here too.",
      lineLength,
    ).map(note),
    ...incompleteRows(report, { of: "farm" }),
  ];
  const charts: ChartModel[] = [];
  const breakAfter: number[] = [];
  for (const crop of report.figures.crops) {
    if (crop !== report.figures.crops[0]) breakAfter.push(rows.length);
    rows.push(
      [],
      section(`${crop.crop}, expected price ${moneyText(crop.outlook.price)} ${report.season.settings.currency} per ${crop.yieldUnit}`),
      ...incompleteRows(report, { of: "crop", name: crop.crop }),
      ...rentNotes(report, crop)
        .flatMap((words) => inLines(words, lineLength))
        .map(note),
    );
    rows.push(
      ...breakEvenRows(crop, area, yieldNames(report.season.settings.currency)),
      [],
      ...fieldRows(report, crop, area),
      [],
      ...salesRows(crop),
    );
    charts.push(layerChart(crop, rows));
  }
  rows.push([], ...[...layerNotes, caution].flatMap((words) => inLines(words, lineLength)).map(note));
  return {
    name: "Break-even",
    columns: [34, 13, 13, 13, 13],
    headingRows: 2,
    rows,
    charts,
    page: {
      orientation: "portrait",
      paper: report.season.settings.areaUnit === "ac" ? "letter" : "a4",
      pagesTall: 0,
      scale: usualScale,
      breakAfter,
      footer: `Break-even, ${seasonName(report)}`,
    },
  };
}

const moneyText = (value: Decimal): string => value.toFixed(2);
const layerHeadings = (first: string): Row => headings(first, ...layers.map(layerTitle));
const perLayer = (name: string, values: PerLayer<Decimal | null>, cell: (value: Decimal | null) => SheetCell): Row => [
  text(name),
  ...layers.map((layer) => cell(values[layer])),
];

function breakEvenRows(crop: CropFigures, area: string, names: ReturnType<typeof yieldNames>): readonly Row[] {
  const { breakEvens } = crop.outlook;
  const byYield = breakEvens.filter((each) => each.priceOf === "expected");
  const byPrice = breakEvens.filter((each, index) => breakEvens.findIndex((other) => other.priceOf === each.priceOf) === index);
  return [
    layerHeadings(`Price needed per ${crop.yieldUnit}`),
    ...byYield.map((each) =>
      perLayer(`at ${names[each.yieldOf]} ${each.yield.toFixed(1)} ${crop.yieldUnit}`, each.breakEvenPrice, priceNeededCell),
    ),
    layerHeadings(`Yield needed, ${crop.yieldUnit} per ${area}`),
    ...byPrice.map((each) => perLayer(`at ${each.priceOf} price ${moneyText(each.price)}`, each.breakEvenYield, yieldNeededCell)),
    layerHeadings(`Net return per ${area}`),
    ...breakEvens.map((each) => perLayer(`at ${names[each.yieldOf]}, ${each.priceOf} price`, each.netPerArea, moneyCell)),
    ...withSoldRows(crop),
  ];
}

/** Net return with what is sold at its own price, stage by stage; none where nothing is sold. */
function withSoldRows({
  sales: {
    sold,
    withSold: { plan, outlook, final },
  },
}: CropFigures): readonly Row[] {
  if (sold.isZero()) return [];
  return [
    perLayer("plan, with what is sold", plan.netPerArea, moneyCell),
    perLayer("projected, with what is sold", outlook.netPerArea, moneyCell),
    ...(final === null ? [] : [perLayer("final, with what is sold", final.netPerArea, moneyCell)]),
  ];
}

/** The break-evens of each field, at its own yield outlook and the crop's expected price. */
function fieldRows(report: SeasonReport, { fields, yieldUnit, outlook }: CropFigures, area: string): readonly Row[] {
  const mark = (field: string) => fieldMark(report, field);
  return [
    layerHeadings(`Each field: price needed per ${yieldUnit}`),
    ...fields.map(({ field, outlook: { budget } }) =>
      perLayer(`${field}${mark(field)}, at ${budget.yields.used.toFixed(1)} ${yieldUnit}`, budget.breakEvenPrice, priceNeededCell),
    ),
    layerHeadings(`Each field: ${yieldUnit} per ${area} needed at ${moneyText(outlook.price)}`),
    ...fields.map(({ field, area: land, outlook: { budget } }) =>
      perLayer(`${field}${mark(field)}, ${land.toFixed(1)} ${report.season.settings.areaUnit}`, budget.breakEvenYield, yieldNeededCell),
    ),
  ];
}

const salesRows = (crop: CropFigures): readonly Row[] => [
  headings("Grain sold and to sell", `Sold (${crop.yieldUnit})`, "Average price", `Unsold (${crop.yieldUnit})`, ""),
  [text("sales and contracts"), quantityCell(crop.sales.sold), moneyCell(crop.sales.averagePrice), yieldCell(crop.sales.unsold)],
  layerHeadings(priceNeededOnUnsold([crop.yieldUnit])),
  perLayer(`per ${crop.yieldUnit} unsold`, crop.sales.priceNeeded, priceNeededCell),
];

/** Break-even price by layer against the expected price; its cells stand in two rows under the crop's tables. */
function layerChart(crop: CropFigures, rows: Row[]): ChartModel {
  rows.push([], layerHeadings("For the chart"));
  const heading = rows.length;
  rows.push(perLayer("Break-even price", crop.outlook.breakEvenPrice, priceNeededCell));
  rows.push([text("Expected price"), ...layers.map(() => moneyCell(crop.outlook.price))]);
  const top = rows.length + 1;
  const height = 14;
  for (let line = 0; line < height; line += 1) rows.push([]);
  return {
    kind: "column",
    title: `${crop.crop}: break-even price against expected price`,
    categories: `B${heading}:E${heading}`,
    startsAtZero: layers.every((layer) => crop.outlook.breakEvenPrice[layer]?.isNegative() !== true),
    series: [
      { name: "Break-even price", values: `B${heading + 1}:E${heading + 1}` },
      { name: "Expected price", values: `B${heading + 2}:E${heading + 2}` },
    ],
    from: `A${top}`,
    to: `E${top + height - 1}`,
  };
}
