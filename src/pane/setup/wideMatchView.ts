/** Matching a wide sheet of the grower's own, a column for each kind of cost, to the Budget. */
import { kinds } from "../../core/kinds";
import { budgetColumns } from "../../workbook/columns/budget";
import { leftOutWord, ownHeading, wideColumnMeant, wideColumnSaid, wideColumnWords } from "../../workbook/wideColumns";
import { tradeWord } from "./nearHeadings";
import { tradeHeadings } from "./tradeHeadings";

const over = budgetColumns.columns.over.heading;
const note = budgetColumns.columns.note.heading;

/** What each heading of the range stands for, as the table Matches says it: `For`, `Note`, `seed`, `seed, whole` or `left out`. */
export type WideMatching = ReadonlyMap<string, string>;

/** What a heading can be said to hold, with the words for it. */
export const wideChoices: readonly (readonly [said: string, words: string])[] = [
  [leftOutWord, leftOutWord], [over, "field or crop"], ...kinds.map((kind) => [kind, kind] as const), [note, "a note"],
];

const names: ReadonlySet<string> = new Set(["field", "crop", "for", "fieldorcrop", ...(tradeHeadings["Field"] ?? []), ...(tradeHeadings["Crop"] ?? [])]);

/** What the headings say by themselves: the first that names fields or crops, and kinds of cost; all else is left out. */
export function firstWide(headings: readonly string[]): WideMatching {
  const named = headings.find((heading) => names.has(tradeWord(heading))) ?? null;
  return new Map(headings.map((heading) => {
    const meant = wideColumnMeant(heading);
    return [heading, heading === named ? over : meant === null ? leftOutWord : wideColumnWords(meant)];
  }));
}

export type WideMatchView = {
  /** Why the match cannot be kept yet; empty where it can. */
  readonly missing: string;
  /** The headings that no line is made of, by name. */
  readonly leftOut: string;
  readonly rows: readonly ReadonlyMap<string, string>[];
};

export function wideMatchView(address: string, matching: WideMatching): WideMatchView {
  const all = [...matching];
  const [named, money] = [all.filter(([, said]) => said === over), all.filter(([, said]) => isMoney(said))];
  return {
    missing: named.length === 0 ? "Say which heading names the field or crop."
      : named.length > 1 ? `${named.map(([heading]) => `“${heading}”`).join(" and ")} both name the field or crop: keep one.`
        : money.length === 0 ? "Say which heading holds a cost, and of which kind." : "",
    leftOut: all.filter(([, said]) => said === leftOutWord).map(([heading]) => heading).join(", "),
    rows: all.map(([heading, said]) => new Map([["Table", "Budget"], ["Range", address], ["Column", said], ["Heading", heading]])),
  };
}

/** Whether a heading was said to hold a cost. */
export const isMoney = (said: string): boolean => { const column = wideColumnSaid(said); return column !== null && column !== "left out"; };

/** The same kind on the other basis, or another kind on the same. */
export const onBasis = (said: string, isWhole: boolean): string => {
  const column = wideColumnSaid(said);
  return column === null || column === "left out" ? said : wideColumnWords({ ...column, basis: isWhole ? "whole" : "per acre" });
};

/** Headings once each, as they stand: two alike are one that has to be renamed. */
export const headingsOnce = (headings: readonly string[]): readonly string[] =>
  headings.filter((heading, index) => heading.trim() !== "" && headings.findIndex((other) => ownHeading(other) === ownHeading(heading)) === index);
