/** What the pane answers on keeping or reseeding, as plain text. */
import { zero, type Decimal } from "../../core/numbers/decimal";
import { fieldOutlook, grainsOf, reseed, type ReseedAnswer, type ReseedQuestion } from "../../core/reseed";
import { lastDatePaying, netOverInterval, reseedGrid, thinnestWorthKeeping } from "../../core/reseedLimits";
import type { IsoDate } from "../../core/row";
import { dayOfYear, monthDayOf, type MonthDay } from "../../core/stand/monthDay";
import { standFrom } from "../../core/stand/standUnit";
import type { StandSummary } from "../../core/stand/standSummary";
import { area, yieldPerArea, type Area, type PlantsPerArea, type Yield } from "../../core/numbers/units";
import { netsWords } from "../../workbook/changeWords";
import { refusalWords } from "../../workbook/standRefusal";
import type { Format } from "../format";

type LandWithYield = { readonly area: Area; readonly yield: Yield };

/** What the answer is shown against: the counts, the field in its parts and their outlook, the crop's unit. */
export type ReseedGround = {
  readonly summary: StandSummary;
  /** The field, or the part of it that is asked about; and the other parts. */
  readonly concerned: LandWithYield;
  readonly others: readonly LandWithYield[];
  readonly yieldUnit: string;
  /** The day on which it is asked. */ readonly today: IsoDate;
};

export type ReseedView =
  | { readonly known: false; readonly why: string }
  | {
      readonly known: true;
      readonly answer: ReseedAnswer;
      readonly decision: string;
      readonly figure: string;
      readonly inAll: string;
      /** What was not entered and so counted as nothing, as a sentence; empty where everything was. */
      readonly notEntered: string;
      readonly lines: readonly { readonly name: string; readonly says: string }[];
      /** What a unit of the crop nets: said of each where drying sets the two apart. */
      readonly home: readonly string[];
      readonly grid: {
        readonly columns: readonly string[];
        readonly rows: readonly { readonly name: string; readonly cells: readonly string[] }[];
      };
    };

export function reseedView(question: ReseedQuestion, ground: ReseedGround, format: Format): ReseedView {
  const result = reseed(question);
  if (!result.ok) {
    const words = result.problems.map((refusal) =>
      refusalWords({ ...refusal, of: refusal.of === "planned" ? "planned" : "real" }).replace(
        "the actual",
        refusal.of === "kept" ? "the kept" : "the new",
      ),
    );
    return {
      known: false,
      why: `${[...new Set(words)].map((each) => `${each.charAt(0).toUpperCase()}${each.slice(1)}.`).join(" ")} The table goes no further.`,
    };
  }
  const answer = result.value;
  const reseeds = answer.decision === "reseed";
  return {
    known: true,
    answer,
    decision: reseeds ? "Replanting pays by these figures." : "Keeping the stand is better by these figures.",
    figure: `${reseeds ? "+" : ""}${format.money(answer.net)}`,
    inAll: `${format.perArea} from replanting, ${format.amount(answer.netInAll)} on ${format.quantity(question.area)} ${format.areaUnit}`,
    notEntered: notEnteredWords(question),
    lines: lines(question, answer, ground, format),
    home: homeWords(question, `${format.currency} per ${ground.yieldUnit}`),
    grid: grid(question, format),
  };
}

function lines(question: ReseedQuestion, answer: ReseedAnswer, ground: ReseedGround, format: Format) {
  const { yieldUnit, summary, concerned, others } = ground;
  const unit = `${yieldUnit} per ${format.areaName}`;
  const part = others.length > 0 || question.area.lt(concerned.area);
  const whole = fieldOutlook([
    { area: question.area, yield: answer.reseededYield },
    { ...concerned, area: area(concerned.area.minus(question.area)) },
    ...others,
  ]);
  const ends = summary.interval === null ? null : netOverInterval(question, summary.interval.low, summary.interval.high);
  return [
    { name: "Yield kept", says: `${format.yield(answer.keptYield)} ${unit}` },
    { name: "Yield after replanting", says: `${format.yield(answer.reseededYield)} ${unit}` },
    ...(part && whole !== null ? [{ name: "Whole field with the part replanted", says: `${format.yield(whole)} ${unit}` }] : []),
    {
      name: "Extra yield needed",
      says: answer.gapNeeded === null ? "no yield covers it" : `${format.yieldNeeded(answer.gapNeeded)} ${unit}`,
    },
    { name: "Extra yield from replanting", says: `${format.yieldChange(yieldPerArea(zero), answer.gap)} ${unit}` },
    { name: "Cost of replanting", says: `${format.money(answer.cost)} ${format.perArea}` },
    { name: "Break-even price", says: breakEvenWords(answer, `${format.currency} per ${yieldUnit}`, format) },
    { name: "Thinnest stand worth keeping", says: thinnestWords(question, format) },
    { name: "Last date on which replanting pays", says: lastDateWords(question, ground.today, format) },
    ...(ends === null ? [] : [{ name: "At the ends of the likely stand", says: endsWords(ends, summary, format) }]),
  ];
}

function homeWords(question: ReseedQuestion, perUnit: string): readonly string[] {
  const { kept, reseeded } = grainsOf(question);
  return kept.moving.eq(reseeded.moving)
    ? [netsWords(kept, perUnit, "The crop, kept or replanted,")]
    : [netsWords(kept, perUnit, "The crop kept"), netsWords(reseeded, perUnit, "The crop replanted")];
}

function breakEvenWords({ breakEvenPrice, gap }: ReseedAnswer, perUnit: string, { priceNeeded, priceAtMost }: Format): string {
  if (breakEvenPrice === null) return "the price makes no difference";
  if (breakEvenPrice.isNegative()) return gap.gt("0") ? "replanting pays at any price" : "replanting pays at no price";
  return `replanting pays ${gap.gt("0") ? `above ${priceNeeded(breakEvenPrice)}` : `below ${priceAtMost(breakEvenPrice)}`} ${perUnit}`;
}

function thinnestWords(question: ReseedQuestion, format: Format): string {
  const thinnest = thinnestWorthKeeping(question);
  return thinnest.found ? `${format.plants(thinnest.stand)} plants per ${format.areaName}` : thinnest.why;
}

/** The year in which the stand was planted decides whether today lies in its season, before it or after it. */
function notBefore({ kept, reseeded }: ReseedQuestion, today: IsoDate): MonthDay | null {
  const year = (kept.date ?? reseeded.date ?? today).slice(0, 4);
  if (today.slice(0, 4) < year) return null;
  return today.slice(0, 4) > year ? "12-31" : today.slice(5);
}

const boxNames = {
  endOldStand: "ending the old stand",
  seed: "seed",
  seedCredit: "the seller's credit",
  pass: "the planting pass",
  treatment: "treatment",
  herbicide: "herbicide",
  other: "other costs",
} as const;

function notEnteredWords({ costs, insurance, reseedAllowance, dryingPerPoint }: ReseedQuestion): string {
  const blank = [
    ...(Object.keys(boxNames) as (keyof typeof boxNames)[]).filter((of) => costs[of] === null).map((of) => boxNames[of]),
    ...(insurance === null ? ["the insurance payment"] : []),
    ...(reseedAllowance === null ? ["an allowance off the new yield"] : []),
    ...(dryingPerPoint.isZero() ? ["drying"] : []),
  ];
  return blank.length === 0 ? "" : `Not entered, and so counted as nothing: ${blank.join(", ")}.`;
}

function lastDateWords(question: ReseedQuestion, today: IsoDate, { day }: Format): string {
  const last = lastDatePaying(question, notBefore(question, today));
  if (last !== null) return day(last);
  return question.table.dates === null ? "the table has no dates" : "none that is still to come, or after the planting";
}

function endsWords(
  { atLow, atHigh }: ReturnType<typeof netOverInterval>,
  { interval }: StandSummary,
  { plants, money, currency }: Format,
): string {
  const end = (stand: PlantsPerArea, net: Decimal | null) =>
    `${net === null ? "outside the table" : `${money(net)} ${currency}`} at ${plants(stand)}`;
  return `${end(interval!.low, atLow)}, ${end(interval!.high, atHigh)}`;
}

const weeks = ["-7", "0", "7", "14"];
const mostStands = 6;

/** Gain of reseeding around the question: stands of the table up to the new stand, a week before to two weeks after. */
function grid(question: ReseedQuestion, format: Format) {
  const { table, kept, reseeded } = question;
  const knots = (table.stands ?? [])
    .map(({ from }) => standFrom(table.standUnit, from, kept.areaUnit, kept.rowWidth))
    .filter((stand) => stand !== null);
  const upTo = knots.filter((stand) => reseeded.stand === null || stand.lte(reseeded.stand));
  const step = Math.max(1, Math.ceil(upTo.length / mostStands));
  const stands = upTo.filter((_, index) => (upTo.length - 1 - index) % step === 0);
  const dates =
    reseeded.date === null
      ? []
      : table.dates === null
        ? [reseeded.date]
        : weeks.map((days) => monthDayOf(dayOfYear(reseeded.date!).plus(days)));
  const { net } = reseedGrid(question, stands, dates);
  return {
    columns: dates.map((date) => format.day(date.slice(-5))),
    rows: stands.map((stand, row) => ({ name: format.plants(stand), cells: net[row]!.map((each) => format.whole(each)) })),
  };
}
