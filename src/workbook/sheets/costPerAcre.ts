/** The result sheet *Cost per acre*: what each crop costs by kind and layer, plan against outlook, and field by field. */
import { zero } from "../../core/numbers/decimal";
import type { Budget, CropFigures } from "../../core/figures";
import { cashKinds, cashNeedKinds, fullKinds, operatingKinds, type Kind, type Layer } from "../../core/kinds";
import { notPlanned } from "../../core/notPlanned";
import { costCautions } from "../costCautions";
import { kindMarker, uncheckedNotes } from "../uncheckedCoefficients";
import type { ResultSheet, SheetCell } from "../resultSheet";
import { harvestNotes, tableNotes } from "../harvestNotes";
import { rentNotes } from "../rentNotes";
import type { SeasonReport } from "../seasonReport";
import { areaCell, changeOf, headings, moneyCell, note, section, subtotal, text, title, yieldCell } from "./cells";
import {
  areaName,
  caution,
  fieldMark,
  incompleteRows,
  inLines,
  interestLeaving,
  interestNote,
  layerNotes,
  layerTitle,
  seasonName,
} from "./sheetWords";

/** Characters of a note that fit across the page. */
const lineLength = 120;
/**
 * Percent at which the columns fit the width of a letter or A4 page and a crop with all notes below it one page; each crop begins
 * a page.
 */
const usualScale = 78;

type Row = readonly SheetCell[];
type KindMarker = ReturnType<typeof kindMarker>;

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
  const columns = stageColumns(crop);
  const marked = kindMarker(report.season);
  const line = (name: string, value: (budget: Budget) => SheetCell): Row => [text(name), ...columns.map(({ budget }) => value(budget))];
  return [
    [],
    section(`${crop.crop}, ${crop.area.toFixed(1)} ${report.season.settings.areaUnit}`),
    ...incompleteRows(report, { of: "crop", name: crop.crop }),
    ...[...tableNotes(report, crop.crop), ...harvestNotes(report, crop), ...rentNotes(report, crop)]
      .flatMap((words) => inLines(words, lineLength))
      .map(note),
    headings("", ...columns.map(({ name }) => name), "Change"),
    line(`Yield that this rests on (${crop.yieldUnit})`, (budget) => yieldCell(budget.yields.used)),
    ...kindRows(crop, operatingKinds, marked),
    layerRow(crop, "operating"),
    ...kindRows(crop, cashKinds, marked),
    layerRow(crop, "cash"),
    ...fullRows(crop, marked),
    layerRow(crop, "full"),
    ...kindRows(crop, cashNeedKinds, marked),
    layerRow(crop, "cashNeed"),
    ...notPlannedRows(crop),
    ...fieldRows(report, crop),
  ];
}

const stageColumns = ({ plan, outlook, final }: CropFigures): readonly { name: string; budget: Budget }[] => [
  { name: "Plan", budget: plan },
  { name: "Projected", budget: outlook },
  ...(final === null ? [] : [{ name: "Final", budget: final }]),
];

const interestWords = {
  all: "Full cost leaves out term interest: it charges interest on all capital instead.",
  some: "Full cost leaves out term interest where it charges interest on all capital instead, and keeps it in the other fields.",
  none: "Full cost keeps term interest: neither machine ownership nor a land charge is entered that would stand for it.",
};

/** Full cost starts again from cash cost and says before it adds what becomes of term interest. */
function fullRows(crop: CropFigures, marked: KindMarker): readonly Row[] {
  const interest = kindRows(crop, ["term interest"], marked).length > 0 ? [note(interestWords[interestLeaving([crop])])] : [];
  return [...interest, ...kindRows(crop, fullKinds, marked)];
}

/** One row for each kind that costs something at any stage. */
function kindRows(crop: CropFigures, kinds: readonly Kind[], marked: KindMarker): readonly Row[] {
  const columns = stageColumns(crop);
  return kinds
    .filter((kind) => columns.some(({ budget }) => budget.costPerArea.byKind.has(kind)))
    .map((kind) => {
      const of = (budget: Budget) => budget.costPerArea.byKind.get(kind) ?? null;
      return [
        text(`   ${marked(kind)}`),
        ...columns.map(({ budget }) => moneyCell(of(budget))),
        moneyCell(changeOf(of(crop.plan) ?? zero, of(crop.outlook) ?? zero)),
      ];
    });
}

function layerRow(crop: CropFigures, layer: Layer): Row {
  const of = (budget: Budget) => budget.costPerArea.layers[layer];
  return [
    text(layerTitle(layer), subtotal),
    ...stageColumns(crop).map(({ budget }) => moneyCell(of(budget), subtotal)),
    moneyCell(changeOf(of(crop.plan), of(crop.outlook)), subtotal),
  ];
}

/** What is in the change although the plan has nothing of it. */
function notPlannedRows(crop: CropFigures): readonly Row[] {
  const all = notPlanned(crop, "cashNeed");
  if (all.length === 0) return [];
  return [
    note("In the change, done or bought without a plan:"),
    ...all.map(({ kind, name, amount }): Row => {
      const [label, perArea] = [name.toLowerCase() === kind ? name : `${name} (${kind})`, amount.div(crop.area)];
      const inStages = stageColumns(crop).map((column) => moneyCell(column.name === "Projected" ? perArea : null));
      return [text(`   ${label}`), ...inStages, moneyCell(changeOf(zero, perArea))];
    }),
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
