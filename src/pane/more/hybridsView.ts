/** A hybrid as one line of the list: what it nets beside the check, and what its trials show. */
import type { HybridComparison } from "../../core/hybrids/comparison";
import type { OwnField } from "../../workbook/ownFields";
import { noFigure, type Format } from "../format";
import { moreWords, wetterWords } from "./hybridPlot";

export type HybridLine = {
  /** "1. Corn hybrid P-110" */
  readonly label: string;
  /** "6.9 bu/ac more in 4 trials (−1.9 to 15.8): no difference shown by these trials" */
  readonly about: string;
  /** What it nets more or less than the check per area, signed. */
  readonly aside: string;
};

export function hybridLine(of: HybridComparison, number: number, unit: string, format: Format): HybridLine {
  return {
    label: `${number}. ${of.hybrid}`,
    about: aboutWords(of, unit, format),
    aside: of.netDifference === null ? noFigure : format.signed(of.netDifference.mean),
  };
}

const trialsWords = ({ trials }: HybridComparison): string => (trials.eq("1") ? "1 trial" : `${trials.toFixed()} trials`);

function aboutWords(of: HybridComparison, unit: string, format: Format): string {
  const { yieldDifference: more, moistureDifference: wetter, showsNone } = of;
  if (more === null) return `${trialsWords(of)}, none beside ${of.check?.name ?? "a check"}`;
  const range = more.low === null || more.high === null ? "" : ` (${format.yield(more.low)} to ${format.yield(more.high)})`;
  const shown =
    showsNone === true
      ? ": no difference shown by these trials"
      : more.low === null
        ? ": one trial says nothing of how far it may be off"
        : "";
  const water = wetter === null ? "" : `, ${wetterWords(wetter, format)}`;
  return `${moreWords(more.mean, unit, format)}${range} in ${trialsWords(of)}${water}${shown}`;
}

/** What it nets in sentences, the check's over the same trials beside it. */
export function netSays(of: HybridComparison, format: Format): readonly string[] {
  const { netPerArea, netDifference, netTrials, seedCost } = of;
  if (netPerArea === null) return [];
  const beside =
    netDifference === null
      ? ""
      : `, ${format.signed(netDifference.mean)} beside ${of.check!.name}` +
        (netDifference.low === null ? "" : ` (${format.signed(netDifference.low)} to ${format.signed(netDifference.high!)})`);
  return [
    `Nets ${format.money(netPerArea)} ${format.perArea} over ${netTrials.eq("1") ? "1 trial" : `${netTrials.toFixed()} trials`}${beside}.`,
    `Seed and fees ${format.money(seedCost)} ${format.perArea}.`,
  ];
}

/** The check by itself, over all of its trials: a sentence, or none where it stood in no trial. */
export const checkSays = (of: HybridComparison, unit: string, format: Format): readonly string[] =>
  of.yield === null ? [] : [`${of.hybrid} by itself: ${format.yield(of.yield)} ${unit} in ${trialsWords(of)}.`, ...netSays(of, format)];

/** "Corn hybrid L-112, projected, planted Apr 27, 32,100 plants, harvested at 18.5 %" */
export function ownSays({ hybrid, planted, stand, isHarvested, moisture }: OwnField, format: Format): string {
  return [
    hybrid,
    isHarvested ? "harvested" : "projected",
    ...(planted === null ? [] : [`planted ${format.day(planted.slice(5))}`]),
    ...(stand === null ? [] : [`${format.plants(stand)} plants per ${format.areaName}`]),
    ...(moisture === null ? [] : [`${format.quantity(moisture)} % moisture`]),
  ].join(", ");
}
