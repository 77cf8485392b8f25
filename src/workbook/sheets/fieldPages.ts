/**
 * The result sheet *Field pages*: every field in a list, the one that leaves least first, and a page each with what was planned,
 * what happened, what it costs and what it leaves.
 */
import type { CropFigures, FieldFigures } from "../../core/figures";
import { layers } from "../../core/kinds";
import { asCrop } from "../asCrop";
import { fieldStories, type StoryPart } from "../story/fieldStory";
import type { ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { uncheckedNotes } from "../uncheckedCoefficients";
import { areaCell, headings, moneyCell, note, priceNeededCell, section, standCell, text, title, yieldCell, yieldNeededCell } from "./cells";
import { costTable } from "./costTable";
import { areaName, caution, fieldMark, incompleteRows, inLines, layerNotes, layerTitle, seasonName } from "./sheetWords";

type Row = readonly SheetCell[];
type FieldOfCrop = { readonly crop: CropFigures; readonly field: FieldFigures };
/** Characters of a sentence that fit across the page. */
const lineLength = 142;
/** Percent at which a field with all its kinds of cost fits on a page. */
const usualScale = 70;
const right = { align: "right" } as const;

/** Figures of the harvest where it is done, else projected ones. */
const now = ({ final, outlook }: FieldFigures) => (final ?? outlook).budget;

export function fieldPagesSheet(report: SeasonReport): ResultSheet {
  const { areaUnit, currency } = report.season.settings;
  const area = areaName(report);
  const all = report.figures.crops.flatMap((crop) => crop.fields.map((field): FieldOfCrop => ({ crop, field })));
  const stories = fieldStories(report);
  const rows: Row[] = [
    title("Fields, one by one"),
    note(`${seasonName(report)}. ${currency} per ${area}.`),
    ...incompleteRows(report, { of: "farm" }),
    [],
    ...listRows(report, all),
    [],
    ...[...layerNotes, ...uncheckedNotes(report.season), caution].flatMap((words) => inLines(words, lineLength)).map(note),
  ];
  const breakAfter: number[] = [];
  for (const each of all) {
    breakAfter.push(rows.length);
    rows.push(...pageRows(report, each, stories(each.field, each.crop)));
  }
  return {
    name: "Field pages",
    columns: [34, 12, 12, 12, 12, 12, 12, 12],
    headingRows: 2,
    rows,
    charts: [],
    page: {
      orientation: "portrait",
      paper: areaUnit === "ac" ? "letter" : "a4",
      pagesTall: 0,
      scale: usualScale,
      breakAfter,
      footer: `Fields, ${seasonName(report)}`,
    },
  };
}

/** By net return after full cost, the lowest first. */
function listRows(report: SeasonReport, all: readonly FieldOfCrop[]): readonly Row[] {
  const entries = new Map(report.season.fields.map((field) => [field.name, field]));
  const stands = new Map(report.figures.stands.map(({ field, summary }) => [field.name, summary.mean]));
  const ranked = [...all].sort((a, b) => now(a.field).netPerArea.full.comparedTo(now(b.field).netPerArea.full));
  return [
    section("All fields, the one that leaves least first"),
    headings(
      "Field",
      report.season.settings.areaUnit === "ac" ? "Acres" : "Hectares",
      "Planted",
      "Stand",
      "Goal",
      "Yield",
      "Full cost",
      "Net, full",
    ),
    ...ranked.map(({ crop, field }): Row => {
      const { yields, costPerArea, netPerArea } = now(field);
      return [
        text(`${field.field}, ${crop.crop}${fieldMark(report, field.field)}`),
        areaCell(field.area),
        text(entries.get(field.field)?.planted ?? "–", right),
        standCell(stands.get(field.field) ?? null),
        yieldCell(yields.goal),
        yieldCell(yields.used),
        moneyCell(costPerArea.layers.full),
        moneyCell(netPerArea.full),
      ];
    }),
  ];
}

function pageRows(report: SeasonReport, { crop, field }: FieldOfCrop, story: readonly StoryPart[]): readonly Row[] {
  const { netPerArea, breakEvenPrice, breakEvenYield, price } = now(field);
  const isDone = field.final !== null;
  return [
    section(`${field.field}, ${crop.crop}, ${field.area.toFixed(1)} ${report.season.settings.areaUnit}`),
    ...incompleteRows(report, { of: "field", name: field.field }),
    headings(
      `${isDone ? "Harvested" : "Projected"}, at ${price.toFixed(2)} per ${crop.yieldUnit}`,
      "Price needed",
      "Yield needed",
      "Planned net",
      isDone ? "Net" : "Projected net",
    ),
    ...layers.map((layer): Row => [
      text(layerTitle(layer)),
      priceNeededCell(breakEvenPrice[layer]),
      yieldNeededCell(breakEvenYield[layer]),
      moneyCell(field.plan.budget.netPerArea[layer]),
      moneyCell(netPerArea[layer]),
    ]),
    [],
    ...story.flatMap(({ name, lines }): readonly Row[] => [
      [text(name, { bold: true })],
      ...lines.flatMap((words) => inLines(words, lineLength)).map((line) => [text(line)]),
    ]),
    [],
    ...costTable(report, asCrop(crop, field)),
  ];
}
