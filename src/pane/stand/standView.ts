/** What the page Stand says of one field, as plain text. */
import { Decimal } from "../../core/numbers/decimal";
import type { CropFigures } from "../../core/figures";
import { layerCosts, type Layer } from "../../core/kinds";
import type { Field, Season } from "../../core/season";
import { seasonFigures } from "../../core/seasonFigures";
import { lessLoss, type FieldOutlook } from "../../core/stand/fieldOutlook";
import type { FieldStand, PartStand } from "../../core/stand/fieldStand";
import { outlookSteps, type OutlookStep } from "../../core/stand/outlookSteps";
import type { StandSummary } from "../../core/stand/standSummary";
import type { CellUsed, RelativeYieldAt, StandTable } from "../../core/stand/standTable";
import { tableWords } from "../../workbook/harvestNotes";
import { refusalWords } from "../../workbook/standRefusal";
import type { SeasonReport } from "../../workbook/seasonReport";
import type { Format } from "../format";
import type { FigureRow } from "../season/cropView";

/** The fields as a list to choose from, those with counts first, each with the number of places of its last round. */
export function fieldChoices({ season, figures }: SeasonReport): readonly { readonly field: string; readonly words: string }[] {
  const counted = new Map(figures.stands.map(({ field, summary }) => [field.name, summary]));
  const words = ({ name, crop }: Field) => {
    const summary = counted.get(name);
    return summary === undefined ? `${name}, ${crop}` : `${name}, ${crop}: ${placesWords(summary.places)} counted`;
  };
  return [...season.fields.filter(({ name }) => counted.has(name)), ...season.fields.filter(({ name }) => !counted.has(name))].map(
    (field) => ({ field: field.name, words: words(field) }),
  );
}

const placesWords = (places: Decimal): string => `${places.toFixed()} ${places.eq("1") ? "spot" : "spots"}`;

export type StandView = {
  /** "20,900" and "plants per acre". */
  readonly figure: string;
  readonly unit: string;
  /** "likely between 19,200 and 22,700 (19 times in 20)". */
  readonly likely: string;
  readonly lines: readonly { readonly name: string; readonly says: string }[];
  /** What the spots counted lack; empty where they are enough. */
  readonly advice: string;
  /** The parts of the field with their acres, spots, stand and yield; none where it is counted as one. */
  readonly parts: readonly FigureRow[];
};

/** What the counts say of the stand itself. */
export function standView(stand: FieldStand, format: Format): StandView {
  const { field, summary, parts, history, emergence } = stand;
  const { plants, percent, areaName, day } = format;
  const { places, interval, coefficientOfVariation: spread, from, to } = summary;
  return {
    figure: plants(summary.mean),
    unit: `plants per ${areaName}`,
    likely:
      interval === null
        ? `One spot${places.eq("1") ? "" : " in a part"} says nothing of the spread. Count more.`
        : `likely between ${plants(interval.low)} and ${plants(interval.high)} (19 times in 20)`,
    lines: [
      { name: "Counted", says: `${placesWords(places)}, ${from === to ? day(to) : `${day(from)} to ${day(to)}`}` },
      { name: "Counts range", says: `${plants(summary.lowest)} to ${plants(summary.highest)}` },
      { name: "Coefficient of variation", says: percent(spread) },
      { name: "Target stand", says: plants(field.targetStand) },
      {
        name: "Emergence",
        says:
          emergence === null
            ? "seeds dropped are not entered"
            : `${percent(emergence)} of ${plants(field.seedsDropped)} seeds ` +
              `dropped${emergence.gt("1") ? ": more than were dropped; look at the counts and the rate" : ""}`,
      },
      ...(history.length === 0
        ? []
        : [{ name: "Left out", says: `${placesWords(new Decimal(String(history.length)))} counted before the planting` }]),
    ],
    advice: adviceWords(stand, format),
    parts: parts.length === 1 && parts[0]!.name === null ? [] : parts.map((part) => partRow(part, field, format)),
  };
}

/** A part as the pane and the sheet name it. */
const partName = ({ name }: PartStand): string => name ?? "rest of the field";

/** Headings over the rows of the parts. */
export const partColumns = ({ areaUnit }: Format): readonly string[] => [areaUnit, "spots", "plants", "yield"];

const partRow = (part: PartStand, { targetStand }: Field, { quantity, plants, yield: yields }: Format): FigureRow => ({
  name: partName(part),
  cells: [
    quantity(part.area),
    part.summary === null ? "none" : `${part.summary.places.toFixed()} of ${part.summary.placesAdvised.toFixed()}`,
    part.summary === null ? `target ${plants(targetStand)}` : plants(part.summary.mean),
    yields(part.outlook),
  ],
});

/** Spots that are still to be counted, part by part, and acres in which nobody counted. */
function adviceWords({ parts }: FieldStand, { quantity, areaUnit }: Format): string {
  const more = parts.flatMap(({ name, area: land, summary }) =>
    summary === null || summary.enough
      ? []
      : [{ name, land, advised: summary.placesAdvised, more: summary.placesAdvised.minus(summary.places) }],
  );
  const [only] = more;
  const inParts = more.map((each) => `${each.more.toFixed()} in ${each.name ?? "the rest"}`).join(", ");
  const toCount =
    only === undefined
      ? []
      : parts.length === 1 && only.name === null
        ? [`${placesWords(only.advised)} are advised for ${quantity(only.land)} ${areaUnit}: count ${only.more.toFixed()} more.`]
        : [`Count more spots: ${inParts}.`];
  const uncounted = parts
    .filter(({ summary }) => summary === null)
    .map(({ area: land }) => `Nobody counted the other ${quantity(land)} ${areaUnit}: taken at the target stand.`);
  return [...toCount, ...uncounted].join(" ");
}

export type OutlookView =
  | { readonly known: false; readonly why: string }
  | {
      readonly known: true;
      readonly figure: string;
      readonly unit: string;
      /** "goal 210.0, −38.6". */
      readonly againstGoal: string;
      /** The table that says so, its region, and whether it was chosen. */
      readonly table: string;
      readonly how: readonly string[];
    };

/** The yield that date and stand let expect, with the road from the goal; or why there is none, in words. */
export function outlookView(
  { field, table, chosen, byDate, stand, yield: expected }: FieldOutlook,
  crop: Pick<CropFigures, "yieldUnit">,
  format: Format,
): OutlookView {
  const counted = stand?.outlook ?? null;
  const answer = counted?.ok === true ? counted.value : byDate?.ok === true ? byDate.value : null;
  const stays = `The projected yield stays at ${format.yield(expected)}.`;
  if (table === null) {
    return {
      known: false,
      why:
        `No table of yield by date and stand is chosen for ${field.crop}. ${stays} Name one in the table Season, setting Stand ` +
        "response.",
    };
  }
  const refused = [...(counted?.ok === false ? counted.problems : []), ...(byDate?.ok === false ? byDate.problems : [])];
  const why = refused.length === 0 ? [] : [...new Set(refused.map((each) => sentence(refusalWords(each)))), "The table goes no further."];
  if (answer === null || why.length > 0) return { known: false, why: [...why, stays].join(" ") };
  const { planned, real, byDateAndStand } = answer;
  const loss = field.uniformityLoss;
  return {
    known: true,
    figure: format.yield(expected),
    unit: `${crop.yieldUnit} per ${format.areaName}`,
    againstGoal: `goal ${format.yield(field.yieldGoal)}, ${format.yieldChange(field.yieldGoal, expected)}`,
    table: tableWords(table, chosen),
    how: [
      ...(counted === null ? ["By the planted date alone: nothing is counted yet, and the stand is taken as its target."] : []),
      `Actual: ${relative(real, format)}. Planned: ${relative(planned, format)}.`,
      `${format.yield(field.yieldGoal)} × ${format.percent(real.relativeYield)} ÷ ${format.percent(planned.relativeYield)} = ` +
        `${format.yield(byDateAndStand)}.`,
      ...(loss === null || loss.isZero()
        ? []
        : [`Less ${format.quantity(loss)}% for unevenness, as entered in Fields: ${format.yield(expected)}.`]),
    ],
  };
}

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
const relative = ({ relativeYield, table }: RelativeYieldAt, { percent }: Format): string =>
  `${percent(relativeYield)} of the best${table.dates === null ? " stand" : table.stands === null ? " date" : " date and stand"}`;

export type TableView = {
  readonly name: string;
  readonly region: string;
  readonly source: string;
  readonly address: string;
  readonly limits: readonly string[];
  readonly cells: readonly { readonly name: string; readonly cells: readonly string[] }[];
};

/** The table in use: where it is from, what limits it, and the cells that the answer was read from. */
export function tableView(table: StandTable, outlook: FieldOutlook["byDate"], format: Format): TableView {
  const { name, region, source, limits } = table;
  const rows = (of: string, { cells }: RelativeYieldAt) =>
    cells
      .filter(({ part }) => !part.isZero())
      .map((cell) => ({
        name: of,
        cells: [cellWords(cell, table, format), `${format.quantity(cell.percent)}%`, format.percent(cell.part)],
      }));
  return {
    name,
    region,
    limits,
    source: `${source.title}. ${source.publisher}, ${source.year}; ${source.where}.`,
    address: source.address,
    cells: outlook?.ok === true ? [...rows("actual", outlook.value.real), ...rows("planned", outlook.value.planned)] : [],
  };
}

function cellWords({ date, stand }: CellUsed, table: StandTable, { day, quantity }: Format): string {
  const days = date === null ? [] : [date.from === date.to ? day(date.from) : `${day(date.from)} to ${day(date.to)}`];
  const stands =
    stand === null
      ? []
      : [
          `${stand.from.eq(stand.to) ? quantity(stand.from) : `${quantity(stand.from)} to ${quantity(stand.to)}`}${table.standUnit === "plants per acre" ? "" : ` ${table.standUnit}`}`,
        ];
  return [...days, ...stands].join(", ");
}

/** A step of the outlook as a line: what it looked at, and the yield before and after. */
export type HistoryLine = { readonly date: string; readonly reason: string; readonly from: string; readonly to: string };

/** What moved the yield outlook of a field and when, from the goal on. */
export const historyView = (season: Season, field: Field, format: Format): readonly HistoryLine[] =>
  outlookSteps(season, field).map(({ date, reason, from, to }) => ({
    date: format.day(date),
    reason: reasonWords(reason, format),
    from: format.yield(from),
    to: format.yield(to),
  }));

function reasonWords(reason: OutlookStep["reason"], { day, plants, quantity }: Format): string {
  switch (reason.of) {
    case "planted":
      return reason.planned === null ? "planted" : `planted, planned for ${day(reason.planned)}`;
    case "counted":
      return `counted ${plants(reason.summary.mean)} at ${placesWords(reason.summary.places)}`;
    case "uneven":
      return `${quantity(reason.loss)}% lost to unevenness, as entered`;
    case "weighed":
      return "more is weighed already; the harvest is not done";
    case "harvested":
      return "harvested";
  }
}

/** What the counts of one field do to the net return of its crop; empty where nothing can be said. */
export function netEffect(report: SeasonReport, field: Field, layer: Layer, format: Format): string {
  const { season, figures } = report;
  const without = seasonFigures({ ...season, standCounts: season.standCounts.filter((count) => count.field !== field.name) });
  const netOf = (from: SeasonReport["figures"]) => from.crops.find(({ crop }) => crop === field.crop)?.outlook.netPerArea[layer] ?? null;
  const [now, before] = [netOf(figures), netOf(without)];
  if (now === null || before === null) return "";
  if (figures.crops.some(({ fields }) => fields.some((each) => each.field === field.name && each.final !== null)))
    return `${field.name} is harvested: its counts no longer move the projected yield.`;
  return (
    `${field.crop} nets ${format.money(now)} ${format.perArea} after ${layerCosts[layer]}, ${format.money(before)} without these ` +
    `counts (${format.change(before, now)}).`
  );
}

/** Whether reseeding is worth a thought: the stand of the field, or of a part of it, is under its target and costs yield. */
export function isThin(stand: FieldStand): boolean {
  const { field, summary, outlook, parts } = stand;
  const isUnder = (mean: Decimal) => field.targetStand !== null && mean.lt(field.targetStand);
  const asPlanned = lessLoss(field, field.yieldGoal);
  return (
    (isUnder(summary.mean) && (outlook?.ok !== true || outlook.value.ratio.lt("1"))) ||
    (parts.length > 1 && parts.some((part) => part.summary !== null && isUnder(part.summary.mean) && part.outlook?.gte(asPlanned) !== true))
  );
}

/** The part with the thinnest stand, about which to ask first; `null` where the field is counted as one. */
export const thinnestPart = ({ parts }: FieldStand): PartStand | null =>
  parts.length === 1
    ? null
    : parts.reduce<PartStand | null>(
        (thinnest, part) =>
          part.summary !== null && (thinnest === null || part.summary.mean.lt(thinnest.summary!.mean)) ? part : thinnest,
        null,
      );

/** What a screen reader and the drawing both say of the places of a round. */
export const plotWords = (summary: StandSummary, target: Decimal | null, { plants, areaName }: Format): string =>
  `${placesWords(summary.places)} from ${plants(summary.lowest)} to ${plants(summary.highest)} plants per ${areaName}, mean ` +
  `${plants(summary.mean)}${summary.interval === null ? "" : `, likely between ${plants(summary.interval.low)} and ${plants(summary.interval.high)}`}${target === null ? ", no target entered" : `, target ${plants(target)}`}.`;
