/**
 * The result sheet *Stand*: what was counted in each field, what planting and counts let expect, which table says so, and how the
 * outlook came there.
 */
import { adjusterCaution, estimateCaution, planningCaution } from "../../core/cautions";
import type { Field } from "../../core/season";
import type { FieldOutlook } from "../../core/stand/fieldOutlook";
import type { FieldStand, PartStand } from "../../core/stand/fieldStand";
import { outlookSteps, type StepReason } from "../../core/stand/outlookSteps";
import type { CellUsed, RelativeYieldAt, StandTable } from "../../core/stand/standTable";
import { refusalWords } from "../standRefusal";
import type { ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { soFar, tableWords } from "../harvestNotes";
import { shownQuantity, shownStand, shownYield } from "../shown";
import { areaCell, headings, note, percentCell, quantityCell, section, standCell, text, title, yieldCell } from "./cells";
import { grouped } from "./amounts";
import { areaName, incompleteRows, inLines, seasonName } from "./sheetWords";

type Row = readonly SheetCell[];
const lineLength = 132;

export function standSheet(report: SeasonReport): ResultSheet {
  const { stands } = report.figures;
  const shown = report.figures.outlooks.filter(({ stand, byDate }) => stand !== null || byDate !== null);
  const { areaUnit } = report.season.settings;
  const tables = [...new Map(shown.flatMap(({ table }) => (table === null ? [] : [[table.name, table] as const]))).values()];
  return {
    name: "Stand",
    columns: [26, 12, 12, 12, 12, 12, 12, 12, 12],
    headingRows: 3,
    charts: [],
    rows: [
      title("Stand"),
      note(
        `${seasonName(report)}. Plants per ${areaName(report)} from the last round of counts of each field; the interval holds the ` +
          "mean 19 times in 20.",
      ),
      [],
      headings("Field", "Counted", "Spots", "Advised", "Plants", "From", "To", "Spread (CV)", "Emergence"),
      ...stands.flatMap((stand) => [countRow(stand), ...(isInParts(stand) ? stand.parts.map(partRow) : [])]),
      ...(stands.length === 0 ? [note("No stand is counted: the table Stand counts has no entries.")] : []),
      ...shown.flatMap((outlook) => fieldRows(report, outlook)),
      ...tables.flatMap(tableRows),
      [],
      ...[estimateCaution, adjusterCaution, planningCaution].map(note),
    ],
    page: { orientation: "portrait", paper: areaUnit === "ac" ? "letter" : "a4", pagesTall: 0, footer: `Stand, ${seasonName(report)}` },
  };
}

const countRow = ({ field, summary, emergence }: FieldStand): Row => [
  text(field.name),
  text(summary.to, { align: "right" }),
  quantityCell(summary.places),
  quantityCell(summary.placesAdvised),
  standCell(summary.mean),
  standCell(summary.interval?.low ?? null),
  standCell(summary.interval?.high ?? null),
  percentCell(summary.coefficientOfVariation),
  percentCell(emergence),
];

const isInParts = ({ parts }: FieldStand): boolean => parts.length > 1 || parts[0]!.name !== null;

/** A part under its field. */
const partRow = ({ name, summary }: PartStand): Row => [
  text(`   ${name ?? "rest of the field"}`),
  text(summary?.to ?? "not counted", { align: "right" }),
  quantityCell(summary?.places ?? null),
  quantityCell(summary?.placesAdvised ?? null),
  standCell(summary?.mean ?? null),
  standCell(summary?.interval?.low ?? null),
  standCell(summary?.interval?.high ?? null),
  percentCell(summary?.coefficientOfVariation ?? null),
];

/** Acres, stand and yield of every part; what nobody counted stands at the target. */
function yieldsOfParts(report: SeasonReport, { field, parts }: FieldStand): readonly Row[] {
  const area = report.season.settings.areaUnit;
  const unit = report.season.crops.find(({ name }) => name === field.crop)!.yieldUnit;
  return [
    headings("Parts of the field", area, "Plants", unit),
    ...parts.map(({ name, area: acres, summary, outlook }): Row => [
      text(`${name ?? "rest of the field"}${summary === null ? ", at the target" : ""}`),
      areaCell(acres),
      standCell(summary?.mean ?? field.targetStand),
      yieldCell(outlook),
    ]),
  ];
}

function fieldRows(report: SeasonReport, outlook: FieldOutlook): readonly Row[] {
  const { field } = outlook;
  const figures = report.figures.crops
    .flatMap(({ fields, yieldUnit }) => fields.map((each) => ({ ...each, yieldUnit })))
    .find((each) => each.field === field.name)!;
  return [
    [],
    section(`${field.name}, ${field.crop}`),
    ...incompleteRows(report, { of: "field", name: field.name }),
    ...outlookRows(report, outlook),
    ...(outlook.stand !== null && isInParts(outlook.stand) ? yieldsOfParts(report, outlook.stand) : []),
    ...(outlook.stand === null || outlook.stand.history.length === 0
      ? []
      : [note(`Left out, as counted before the planting: ${outlook.stand.history.length}.`)]),
    ...historyRows(report, field),
    ...(figures.weighed === null || figures.final !== null ? [] : inLines(soFar(figures, figures.yieldUnit), lineLength).map(note)),
  ];
}

function outlookRows(report: SeasonReport, { field, table, chosen, byDate, stand, yield: expected }: FieldOutlook): readonly Row[] {
  const unit = report.season.crops.find(({ name }) => name === field.crop)!.yieldUnit;
  const goal = [text(`Yield goal (${unit})`), yieldCell(field.yieldGoal)];
  if (table === null)
    return [
      goal,
      note(
        `No table of yield by date and stand is chosen for ${field.crop}, so the goal stays as the projected ` +
          `yield${field.uniformityLoss === null ? "" : ", less what is lost to unevenness as entered"}.`,
      ),
    ];
  const by = inLines(tableWords(table, chosen), lineLength).map(note);
  const refused = [...(stand?.outlook?.ok === false ? stand.outlook.problems : []), ...(byDate?.ok === false ? byDate.problems : [])];
  if (refused.length > 0) {
    const why = [
      ...new Set(refused.map((each) => `The projected yield stays at ${shownYield(expected).toFixed(1)}: ${refusalWords(each)}.`)),
    ];
    return [goal, ...by, ...why.flatMap((words) => inLines(words, lineLength)).map(note)];
  }
  const answer = stand?.outlook?.ok === true ? stand.outlook.value : byDate?.ok === true ? byDate.value : null;
  if (answer === null) return [goal, ...by];
  const loss = field.uniformityLoss;
  return [
    ...by,
    ...(stand === null ? [note("Nothing is counted: the planted date alone, the stand at its target.")] : []),
    headings("Read from the table", "Date", "Stand", "Percent", "Part", "Relative yield"),
    ...readRows("planned", answer.planned),
    ...readRows("actual", answer.real),
    goal,
    [text(`Goal × actual ÷ planned (${unit})`), yieldCell(answer.byDateAndStand)],
    ...(loss === null || loss.isZero() ? [] : [[text("Lost to unevenness, as entered"), percentCell(loss.div("100"))]]),
    [text(`Projected yield (${unit})`, { bold: true }), yieldCell(expected, { bold: true })],
  ];
}

/** The cells that an answer was read from, with what comes of them beside the first. */
const readRows = (name: string, { cells, relativeYield }: RelativeYieldAt): readonly Row[] =>
  cells
    .filter(({ part }) => !part.isZero())
    .map((cell, index): Row => [
      text(index === 0 ? name : ""),
      ...axes(cell),
      areaCell(cell.percent),
      percentCell(cell.part),
      index === 0 ? percentCell(relativeYield) : text(""),
    ]);

const axes = ({ date, stand }: CellUsed): readonly SheetCell[] => {
  const right = (words: string) => text(words, { align: "right" });
  const span = (from: string, to: string) => (from === to ? from : `${from} to ${to}`);
  return [
    right(date === null ? "any" : span(date.from, date.to)),
    right(stand === null ? "any" : span(grouped(shownQuantity(stand.from)), grouped(shownQuantity(stand.to)))),
  ];
};

/** What moved the yield outlook, and when. */
function historyRows({ season }: SeasonReport, field: Field): readonly Row[] {
  const steps = outlookSteps(season, field);
  if (steps.length === 0) return [];
  return [
    [],
    headings("Projected yield by date", "Date", "From", "To"),
    ...steps.map(({ date, reason, from, to }): Row => [
      text(reasonWords(reason)),
      text(date, { align: "right" }),
      yieldCell(from),
      yieldCell(to),
    ]),
  ];
}

function reasonWords(reason: StepReason): string {
  switch (reason.of) {
    case "planted":
      return reason.planned === null ? "planted" : `planted (plan ${reason.planned})`;
    case "counted":
      return `counted ${grouped(shownStand(reason.summary.mean))} plants`;
    case "uneven":
      return `${shownQuantity(reason.loss).toFixed()} % lost to unevenness`;
    case "weighed":
      return "more is weighed already; the harvest is not done";
    case "harvested":
      return "harvested";
  }
}

const tableRows = ({ name, region, source, limits, standUnit }: StandTable): readonly Row[] => [
  [],
  section(name),
  ...[
    `Region: ${region}. Stands in ${standUnit}. ${source.title}, ${source.publisher}, ${source.year}; ${source.where}.`,
    source.address,
    ...limits,
    "Between its cells it is read by straight lines; beyond them it says nothing.",
  ]
    .flatMap((words) => inLines(words, lineLength))
    .map(note),
];
