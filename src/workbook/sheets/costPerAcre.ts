/** The result sheet *Cost per acre*: what each crop costs by kind and layer, plan against outlook, and field by field. */
import type { CropFigures } from "../../core/figures";
import { costCautions } from "../costCautions";
import { uncheckedNotes } from "../uncheckedCoefficients";
import type { ResultSheet, SheetCell } from "../resultSheet";
import { harvestNotes, tableNotes } from "../harvestNotes";
import { rentNotes } from "../rentNotes";
import type { SeasonReport } from "../seasonReport";
import { areaCell, headings, moneyCell, note, section, text, title, yieldCell } from "./cells";
import { costTable } from "./costTable";
import { areaName, caution, fieldMark, incompleteRows, inLines, interestNote, layerNotes, seasonName } from "./sheetWords";

/** Characters of a note that fit across the page. */
const lineLength = 120;
/**
 * Percent at which the columns fit the width of a letter or A4 page and a crop with all notes below it one page; each crop begins
 * a page.
 */
const usualScale = 78;

type Row = readonly SheetCell[];

export function costPerAcreSheet(report: SeasonReport): ResultSheet {
  const { currency } = report.season.settings;
  const area = areaName(report);
  const rows: Row[] = [
    title(`Cost per ${area}`),
    note(`${seasonName(report)}. ${currency} per ${area}, at the yield stated.`),
    ...inLines(
      "Plan: set before spring. Projected: done and bought so far at actual cost, the rest as planned. Change: projected less plan.",
      lineLength,
    ).map(note),
    ...incompleteRows(report, { of: "farm" }),
  ];
  const breakAfter: number[] = [];
  for (const crop of report.figures.crops) {
    if (crop !== report.figures.crops[0]) breakAfter.push(rows.length);
    rows.push(...cropRows(report, crop));
  }
  rows.push(
    [],
    ...[...layerNotes, interestNote(report), ...uncheckedNotes(report.season), ...costCautions(report.season), caution]
      .flatMap((words) => inLines(words, lineLength))
      .map(note),
  );
  return {
    name: "Cost per acre",
    columns: [30, 12, 12, 12, 12, 12, 12, 12],
    headingRows: 2,
    rows,
    page: {
      orientation: "portrait",
      paper: report.season.settings.areaUnit === "ac" ? "letter" : "a4",
      pagesTall: 0,
      scale: usualScale,
      breakAfter,
      footer: `Cost per ${area}, ${seasonName(report)}`,
    },
    charts: [],
  };
}

function cropRows(report: SeasonReport, crop: CropFigures): readonly Row[] {
  return [
    [],
    section(`${crop.crop}, ${crop.area.toFixed(1)} ${report.season.settings.areaUnit}`),
    ...incompleteRows(report, { of: "crop", name: crop.crop }),
    ...[...tableNotes(report, crop.crop), ...harvestNotes(report, crop), ...rentNotes(report, crop)]
      .flatMap((words) => inLines(words, lineLength))
      .map(note),
    ...costTable(report, crop),
    ...fieldRows(report, crop),
  ];
}

function fieldRows(report: SeasonReport, crop: CropFigures): readonly Row[] {
  return [
    [],
    headings(
      "Field, projected",
      `Area (${report.season.settings.areaUnit})`,
      `Yield (${crop.yieldUnit})`,
      "Operating",
      "Cash",
      "Full",
      "Cash need",
      "Net, full",
    ),
    ...crop.fields.map(({ field, outlook: { budget } }): Row => {
      const { layers } = budget.costPerArea;
      const mark = fieldMark(report, field);
      return [
        text(`${field}${mark}`),
        areaCell(budget.area),
        yieldCell(budget.yields.used),
        moneyCell(layers.operating),
        moneyCell(layers.cash),
        moneyCell(layers.full),
        moneyCell(layers.cashNeed),
        moneyCell(budget.netPerArea.full),
      ];
    }),
  ];
}
