/** What must be said beside a change: cautions where the work can hurt, by the ready layout that it came from, and what trials found. */
import { blankGainCaution, cautionsOf, planningCaution, works, worksNamed, type CautionedWork } from "../core/cautions";
import type { BreakEven } from "../core/partialBudget/breakEvenOfChange";
import { isGrain, netOfGrain, type Change, type ChangeLine, type Grain } from "../core/partialBudget/change";
import type { ChangeFigures } from "../core/partialBudget/changeFigures";
import { worksOfLayout, type LayoutName } from "../core/partialBudget/layouts/layout";
import type { SeasonChange } from "../core/partialBudget/seasonChange";
import type { Season } from "../core/season";
import { findingsOn, type TrialFinding, type TrialSubject } from "../core/tables/trialFindings";
import { shownMoney, shownYield } from "./shown";
import { plain } from "./words";

// For changes that somebody typed, without a layout: rather a caution too many than one too few.
const planterWork = /planter|row units?\b|closing wheel|opener|seed (tube|meter|firmer)|gauge wheel|down ?force|coulter|row cleaner/i;
const spraying = /herbicide|fungicide|insecticide|pesticide|crop protection|site of action|spray|seed treatment/i;
const reseeding = /re-?seed|re-?plant/i;
const onSubject: readonly (readonly [TrialSubject, RegExp])[] = [
  ["closing wheels", /closing wheel/i],
  ["down force", /down ?force/i],
  ["row unit wear", /row unit|opener/i],
  ["seeding rate", /seeding rate/i],
  ["hybrid", /hybrid/i],
  ["planting speed", /planting speed/i],
  ["planting depth", /planting depth/i],
  ["fungicide", /fungicide/i],
  ["wheel traffic", /wheel traffic|pinch row|compaction/i],
];

/** What is read for words: the lines, and the name too where no layout says what the change is. */
const wordsOf = ({ name, layout, lines }: SeasonChange): string =>
  [...(layout === null ? [name] : []), ...lines.map(({ item }) => item)].join("\n");

const worksByWords = (words: string): readonly CautionedWork[] =>
  (
    [
      ["planter", planterWork],
      ["tank", spraying],
      ["replant", reseeding],
    ] as const
  ).flatMap(([work, pattern]) => (pattern.test(words) ? [work] : []));

/** The cautions of a change, the one about a blank gain first. Its layout tells its work whatever its name; its lines may add to it. */
export function changeCautions(
  { change, gain }: Pick<ChangeFigures, "change" | "gain">,
  { items }: Pick<Season, "items">,
): readonly string[] {
  const words = wordsOf(change);
  const protection = new Set(items.filter(({ kind }) => kind === "crop protection").map(({ name }) => plain(name)));
  const sprays = change.lines.some(({ item }) => protection.has(plain(item)));
  const concerned = new Set<CautionedWork>([
    ...(change.layout === null ? worksByWords(words) : worksOfLayout[change.layout]),
    ...(sprays ? ["tank" as const] : []),
    ...worksNamed(words),
  ]);
  return [
    ...(gain !== null && gain.quantity === null ? [blankGainCaution] : []),
    ...works.filter((work) => concerned.has(work)).flatMap((work) => cautionsOf[work]),
    planningCaution,
  ];
}

const subjectOfLayout: { readonly [Name in LayoutName]?: TrialSubject } = {
  "Other closing wheels": "closing wheels",
  "Rebuild worn row units": "row unit wear",
  "Another hybrid": "hybrid",
  "Another seeding rate": "seeding rate",
};

/** What trials found on what the change is about, those that found no difference first. */
export const changeFindings = (change: SeasonChange): readonly TrialFinding[] =>
  onSubject
    .filter(([subject, pattern]) => (change.layout !== null && subjectOfLayout[change.layout] === subject) || pattern.test(wordsOf(change)))
    .flatMap(([subject]) => findingsOn(subject));

/** The mark beside a gain that is needed: how many of the trials known here found nothing. Empty where none did. */
export function findingsMark(findings: readonly TrialFinding[]): string {
  const none = findings.filter(({ noDifference }) => noDifference).length;
  return none === 0
    ? ""
    : `Of ${findings.length} ${findings.length === 1 ? "trial" : "trials and reports"} known here, ${none} found no difference.`;
}

const kindWords: Record<TrialFinding["kind"], string> = {
  replicated: "replicated trial",
  maker: "from those who sell or make it",
  report: "report",
};

/** A finding with its figure, what kind of trial it is, and where it was published. */
export function trialWords({ finding, difference, kind, source }: TrialFinding): string {
  const figure =
    difference === null
      ? ""
      : ` ${difference.low.eq(difference.high) ? difference.low.toFixed() : `${difference.low.toFixed()} to ${difference.high.toFixed()}`} ${difference.unit}.`;
  return `${finding}${figure} (${kindWords[kind]}: ${source.publisher}, ${source.year})`;
}

/** Of what the price of a line is: "USD per bu" where its unit is bu/ac. */
export const perUnitOf = ({ unit }: Pick<ChangeLine, "unit">, currency: string): string => {
  const [one = ""] = unit.split("/");
  return one === "" ? currency : `${currency} per ${one}`;
};

/** What a unit of the crop nets and how, in a sentence. @param perUnit "USD per bu" */
export const netsWords = (grain: Grain, perUnit: string, crop = "The crop"): string =>
  `${crop} nets ${shownMoney(netOfGrain(grain)).toFixed(2)} ${perUnit}: its price of ${shownMoney(grain.price).toFixed(2)}, less ` +
  `${shownMoney(grain.moving).toFixed(2)} for hauling, drying and selling, times the operator's share of ` +
  `${shownYield(grain.share.times("100")).toFixed()} %` +
  (grain.rentShare === undefined
    ? "."
    : `, less ${shownYield(grain.rentShare.times("100")).toFixed()} % of the price, which flexible rent takes at the projected yield.`);

/** How the price of grain came to be; none where no line sells, keeps or gives up grain. */
export function grainNotes({ lines }: Change, currency: string): readonly string[] {
  const line = lines.find(({ price }) => isGrain(price));
  return line !== undefined && isGrain(line.price) ? [netsWords(line.price, perUnitOf(line, currency))] : [];
}

/** Why a break-even has no value, as a sentence. */
export function whyNone(answer: Extract<BreakEven, { found: false }>): string {
  switch (answer.why) {
    case "another entry is blank":
      return "Another entry is blank.";
    case "makes no difference":
      return "It makes no difference.";
    case "pays at any value":
      return "The change pays at any value.";
    case "pays at no value":
      return "The change pays at no value.";
  }
}
