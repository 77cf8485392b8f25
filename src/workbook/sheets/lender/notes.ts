/** What the lender pages contain and leave out, and what would embarrass in front of a lender. */
import { unbilledKinds } from "../../../core/budgetLines/unbilled";
import { planningCaution } from "../../../core/cautions";
import type { CropFigures } from "../../../core/figures";
import type { Kind, Layer } from "../../../core/kinds";
import { toCheck, toFix } from "../../problem";
import { uncheckedInShort } from "../../uncheckedCoefficients";
import { harvestNotes, tableNotes } from "../../harvestNotes";
import { rentNotes } from "../../rentNotes";
import type { SeasonReport } from "../../seasonReport";
import { areaName, interestNote, layerNotes, layerTitle } from "../sheetWords";
import { farmCashFlow, grainMonth } from "./farmCashFlow";

/** The lines at the foot of the pages. */
export const lenderNotes = (report: SeasonReport, layer: Layer, crops: readonly CropFigures[]): readonly string[] => [
  ...layerNotes,
  interestNote(report),
  "Price: the expected price of the table Crops, before selling costs. Break-evens are rounded up. Yields: goal and proven yield of " +
    "the table Fields; projected is the harvest once a field is done. Grain not sold yet is counted at the expected price in " +
    `${grainMonth(report) ?? "November"}.`,
  ...crops.flatMap((crop) =>
    [...tableNotes(report, crop.crop), ...harvestNotes(report, crop), ...rentNotes(report, crop)].map((words) => `${crop.crop}: ${words}`),
  ),
  `Tables of net return: on the layer ${layerTitle(layer).toLowerCase()}; hauling, drying and selling follow the yield in ` +
    `them${crops.some(({ outlook }) => outlook.rent.length > 0) ? ", flexible rent the price too" : ""}, everything else stays.`,
  "Low: each field at its lowest of goal, projected and proven yield, at the low price; high: the highest, at the high price; " +
    "without one, the expected.",
  "Insurance: guarantee and payment are the operator's share, shown apart from the net; a payment is worked out at the policy's " +
    "harvest price, or at its projected price while no harvest price is entered. The policy rules.",
  `Left out of the cost per ${areaName(report)}: whatever is not entered. ${omitted(report)}`,
  ...uncheckedInShort(report.season),
  planningCaution,
];

const entered = (report: SeasonReport, ...kinds: readonly Kind[]): boolean =>
  report.figures.crops.some(({ outlook }) => kinds.some((kind) => outlook.costPerArea.byKind.has(kind)));

function omitted(report: SeasonReport): string {
  const usual: readonly Kind[] = [
    "crop insurance",
    "overhead",
    "machine ownership",
    "unpaid labour",
    "family living",
    "income tax",
    "term principal",
  ];
  const missing = usual.filter((kind) => !entered(report, kind));
  return missing.length === 0 ? "Every usual kind has an entry." : `No entry for: ${missing.join(", ")}.`;
}

/** Something that a lender would ask about first. */
export type LenderNotice = { readonly code: string; readonly words: string };

/** What to look at before the pages are shown to anybody. */
export function lenderNotices(report: SeasonReport): readonly LenderNotice[] {
  const { season, figures } = report;
  const problems = toFix(report.problems);
  const loans = season.loans;
  const notices: LenderNotice[] = [];
  const say = (when: boolean, code: string, words: string) => {
    if (when) notices.push({ code, words });
  };
  say(
    problems.length > 0,
    "incomplete",
    `${problems.length} ${problems.length === 1 ? "entry needs" : "entries need"} attention, so some figures are incomplete.`,
  );
  const checks = toCheck(report.problems).length;
  say(checks > 0, "to-check", `${checks} ${checks === 1 ? "entry is" : "entries are"} to check: counted as entered, and perhaps right.`);
  say(season.settings.farm === null, "no-farm", "No farm name is entered, so the pages carry none: enter Farm in the table Season.");
  say(
    report.season.settings.seasonYear === null,
    "no-year",
    "No season year is entered and the dates do not tell one, so there is no cash flow.",
  );
  say(
    loans.length === 0 && !entered(report, "term principal", "term interest"),
    "no-debt",
    "No debt is entered: neither loans nor term interest and principal among the other costs.",
  );
  say(!entered(report, "overhead"), "no-overhead", "No overhead is entered (utilities, insurance, accounting, dues).");
  say(
    !entered(report, "cash rent", "land tax", "land charge"),
    "no-land",
    "No land cost is entered: neither rent nor land tax nor a land charge.",
  );
  say(!entered(report, "family living"), "no-living", "No family living is entered, so cash need is too low.");
  const unbilled = unbilledKinds(figures.crops.flatMap(({ fields }) => fields)).size > 0;
  say(
    unbilled,
    "budget-unbilled",
    "No bill yet: what is left of budget lines is in the figures of harvested fields too. A line's All in takes it out.",
  );
  say(
    farmCashFlow(report)?.spread.isZero() === false,
    "no-month",
    "Some costs have no date; the cash flow takes field costs at planned planting and spreads the rest evenly.",
  );
  for (const { crop, outlook, yieldUnit, sales } of figures.crops) {
    const entry = season.crops.find((each) => each.name === crop)!;
    say(
      entry.highPrice !== null && outlook.price.gt(entry.highPrice),
      "price-high",
      `${crop}: the expected price is above the high price entered.`,
    );
    say(
      sales.averagePrice !== null && outlook.price.gt(sales.averagePrice.times("1.1")),
      "price-above-sales",
      `${crop}: the expected price is more than a tenth above the average of what is sold (${sales.averagePrice?.toFixed(2)} per ` +
        `${yieldUnit}).`,
    );
    say(
      entry.lowPrice === null || entry.highPrice === null,
      "no-price-range",
      `${crop}: no ${entry.lowPrice === null ? "low" : "high"} price is entered, so that case is at the expected price.`,
    );
    say(
      sales.unsold.lt("0"),
      "sold-beyond",
      `${crop}: more is sold than the projected yield gives (${sales.unsold.neg().toFixed(0)} ${yieldUnit} beyond it).`,
    );
    const proven = outlook.yields.proven;
    say(
      proven !== null && outlook.yields.used.gt(proven),
      "yield-above-proven",
      `${crop}: the projected yield is above the proven yield of ${proven?.toFixed(1)} ${yieldUnit}.`,
    );
    say(proven === null, "no-proven", `${crop}: not every field has a proven yield.`);
    say(!season.insurance.some((policy) => policy.crop === crop), "no-insurance", `${crop}: no insurance policy is entered.`);
  }
  say(
    figures.outlooks.some(({ chosen, table, byDate, stand }) => !chosen && table !== null && (byDate !== null || stand !== null)),
    "table-not-chosen",
    "A projected yield rests on a table that you did not choose: name one under Stand response in the table Season.",
  );
  return notices;
}
