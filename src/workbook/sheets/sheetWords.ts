/** What every result sheet says about itself: of which farm year, in which units, how complete. */
import type { Budget, CropFigures } from "../../core/figures";
import type { Layer } from "../../core/kinds";
import { layerCosts } from "../../core/kinds";
import type { Subject } from "../problem";
import { placed } from "../explain";
import { incompleteMark } from "../incompleteMark";
import type { SeasonReport } from "../seasonReport";
import { note, text } from "./cells";
import type { SheetCell } from "../resultSheet";

export const areaName = (report: SeasonReport): "acre" | "hectare" => (report.season.settings.areaUnit === "ac" ? "acre" : "hectare");

export const seasonName = ({ season }: SeasonReport): string =>
  season.settings.seasonYear === null ? "Season" : `Season ${season.settings.seasonYear}`;

/** "Operating cost", "Cash cost" … */
export const layerTitle = (layer: Layer): string => `${layerCosts[layer].charAt(0).toUpperCase()}${layerCosts[layer].slice(1)}`;

/** How much of the term interest leaves the full layer of these crops: it stays in fields for which no capital is charged. */
export function interestLeaving(crops: readonly CropFigures[]): "all" | "some" | "none" {
  const outlooks = crops
    .map(({ outlook }) => outlook)
    .filter(({ costPerArea }) => costPerArea.byKind.get("term interest")?.isZero() === false);
  const stays = (outlook: Budget) => outlook.interestInFull.minus(outlook.costPerArea.byKind.get("term interest")!).abs().lt("0.000001");
  if (outlooks.every(({ interestInFull }) => interestInFull.isZero())) return "all";
  return outlooks.every(stays) ? "none" : "some";
}

/** A sentence cut between words into lines, because a cell does not grow over its neighbours. */
export function inLines(words: string, length: number): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const last = lines.at(-1);
    if (last === undefined || last.length + word.length + 1 > length) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}

/**
 * A row of column headings over as many rows as the longest needs, because a printed row does not grow with its words.
 *
 * @param lengths characters that fit the first column and each of the others
 */
export function headingsInLines(
  [first, others]: readonly [number, number],
  ...names: readonly string[]
): readonly (readonly SheetCell[])[] {
  const lines = names.map((name, index) => inLines(name, index === 0 ? first : others));
  const height = Math.max(...lines.map(({ length }) => length));
  return Array.from({ length: height }, (_, row) =>
    lines.map((words, index) =>
      text(words[row - height + words.length] ?? "", {
        bold: true,
        fill: "heading",
        align: index === 0 ? "left" : "right",
        ...(row === height - 1 && { border: "bottom" }),
      }),
    ),
  );
}

/** What each layer adds, for the foot of a page. */
export const layerNotes: readonly string[] = [
  "Operating: seed, fertilizer, crop protection, fuel, repairs, custom work, hired labour, drying, haul, crop insurance, supplies, " +
    "irrigation, other operating and operating interest.",
  "Cash: operating, and cash rent, land tax, overhead and term interest.",
  "Full: cash without term interest, and machine ownership, land charge, unpaid labour and management; with it if neither of the first " +
    "two is entered.",
  "Cash need: cash, and term principal, family living and income tax.",
];

/** How operating interest is charged, for the foot of a page. */
export function interestNote({
  season: {
    settings: { operatingInterest: interest },
  },
}: SeasonReport): string {
  if (interest === null) return "Operating interest: none, since no rate is entered.";
  const rate = `${interest.rate.times("100").toFixed()} % a year`;
  return interest.method === "months"
    ? `Operating interest: ${rate} on operating costs paid in cash, for ${interest.months.toFixed()} months.`
    : `Operating interest: ${rate} from each payment to ${interest.repaymentDate}, days over 365; from its planned use on what is ` +
        "still to be bought. Costs without a date: field work and inputs at planned planting, drying and haul at repayment, the rest " +
        "evenly over the year.";
}

/** What every result sheet says at its foot. */
export { planningCaution as caution } from "../../core/cautions";

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** What stands behind a field's name where its figures are not complete. */
export function fieldMark(report: SeasonReport, field: string): string {
  const mark = incompleteMark(report.problemsOf({ of: "field", name: field }));
  return mark === null ? "" : ` (${mark})`;
}

/** A line that marks figures of a subject as incomplete, with what is wrong; none where they are complete. */
export function incompleteRows(report: SeasonReport, subject: Subject): readonly (readonly SheetCell[])[] {
  const problems = report.problemsOf(subject);
  if (problems.length === 0) return [];
  const most = 3;
  const more = problems.length > most ? [note(`… and ${problems.length - most} more under Entries to fix.`)] : [];
  return [
    [
      text(
        `${capital(incompleteMark(problems)!)}: ${problems.length} ${problems.length === 1 ? "entry needs" : "entries need"} attention.`,
        { bold: true },
      ),
    ],
    ...problems.slice(0, most).map((problem) => note(placed(problem, report))),
    ...more,
  ];
}
