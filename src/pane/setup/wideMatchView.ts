/** Matching a wide sheet of the grower's own, a column for each kind of cost, to the Budget. */
import { kinds } from "../../core/kinds";
import { budgetColumns } from "../../workbook/columns/budget";
import { fieldColumns } from "../../workbook/columns/fields";
import { areaNamed, leftOutWord, ownHeading, wideColumnMeant, wideColumnSaid, wideColumnWords } from "../../workbook/wideColumns";
import { matchRow } from "./matchView";
import { nameMissing } from "./nameChoice";
import { tradeWord } from "./nearHeadings";

const over = budgetColumns.columns.over.heading;
const note = budgetColumns.columns.note.heading;

export type WideMatching = {
  /** The heading that names the field or crop, or what else on the sheet does; `""` for none. */
  readonly named: string;
  /** What each heading of the range stands for, as the table Matches says it: `Note`, `seed`, `seed, whole` or `left out`. */
  readonly said: ReadonlyMap<string, string>;
};

/** What a heading can be said to hold. */
export const wideChoices: readonly string[] = [leftOutWord, ...kinds, note];

const { field, crop } = fieldColumns.columns;
/** What names the land, the closest word first: a sheet may have the farm and the crop of each field beside it. */
const names: readonly ReadonlySet<string>[] = [
  new Set(["field", "fieldorcrop", "for", ...(field.words ?? [])]),
  new Set(["farm", "tract"]),
  new Set(["crop", ...(crop.words ?? [])]),
];

/** What the headings say by themselves: the one that names fields, farms or crops, and kinds of cost; all else is left out. */
export const firstWide = (headings: readonly string[]): WideMatching => ({
  named: names.flatMap((words) => headings.filter((heading) => words.has(tradeWord(heading))))[0] ?? "",
  said: new Map(
    headings.map((heading) => {
      const meant = wideColumnMeant(heading);
      return [heading, meant === null ? leftOutWord : wideColumnWords(meant)];
    }),
  ),
});

export type WideMatchView = {
  /** Why the match cannot be kept yet; empty where it can. */
  readonly missing: string;
  /** The headings that no line is made of, by name. */
  readonly leftOut: string;
  readonly rows: readonly ReadonlyMap<string, string>[];
};

export function wideMatchView(address: string, { named, said }: WideMatching): WideMatchView {
  const all = [...said].filter(([heading]) => heading !== named);
  const row = (column: string, heading: string) => matchRow(budgetColumns.table, address, column, heading);
  return {
    missing:
      named === ""
        ? "Say what names the field or crop."
        : nameMissing(named) !== ""
          ? nameMissing(named)
          : all.some(([, column]) => isMoney(column))
            ? ""
            : "Say which heading holds a cost, and of which kind.",
    leftOut: all
      .filter(([, column]) => column === leftOutWord)
      .map(([heading]) => heading)
      .join(", "),
    rows: [row(over, named), ...all.map(([heading, column]) => row(column, heading))],
  };
}

/** Whether a heading was said to hold a cost. */
export const isMoney = (said: string): boolean => {
  const column = wideColumnSaid(said);
  return column !== null && column !== "left out";
};

/** The same kind on the other basis, or another kind on the same. */
export const onBasis = (said: string, isWhole: boolean): string => {
  const column = wideColumnSaid(said);
  return column === null || column === "left out" ? said : wideColumnWords({ ...column, basis: isWhole ? "whole" : "per acre" });
};

/** All money whose heading does not say itself that it is an acre's, for the whole field or back. */
export const allOnBasis = (said: WideMatching["said"], isWhole: boolean): WideMatching["said"] =>
  new Map([...said].map(([heading, column]) => [heading, areaNamed(heading) === null ? onBasis(column, isWhole) : column]));

/** Headings once each, as they stand: two alike are one that has to be renamed. */
export const headingsOnce = (headings: readonly string[]): readonly string[] =>
  headings.filter(
    (heading, index) => heading.trim() !== "" && headings.findIndex((other) => ownHeading(other) === ownHeading(heading)) === index,
  );
