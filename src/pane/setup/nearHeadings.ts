/** Which of the grower's headings may mean a column of ours: words that the trade uses alike, plurals, and slips of the pen. */
import type { InputTable } from "../../workbook/inputTable";
import { editDistance, plainHeading } from "../../workbook/words";
import type { Matching } from "./matchView";

/** Letters from which a word with a slip can be told from another word (`Rate` is no `Date`, `Yield` no `Field`), and for each slip. */
const shortestWithSlip = 6;
const lettersForASlip = 4;
const mostSlips = 2;

/**
 * Headings that may stand for the columns that have none yet. A column that several of them may stand for, and a heading
 * that may stand for several columns of the table, are left to the grower; so is everything else, because these are proposals only.
 */
export function nearHeadings(table: InputTable, headings: readonly string[], matching: Matching): Matching {
  const used = new Set(matching.values());
  const pairs = headings.filter((own) => !used.has(own)).flatMap((own) => mayMean(own, table.columns).map((heading) => ({ heading, own })));
  return new Map(
    pairs
      .filter(({ heading, own }) => pairs.every((other) => (other.heading === heading) === (other.own === own)))
      .filter(({ heading }) => (matching.get(heading) ?? "") === "")
      .map(({ heading, own }) => [heading, own]),
  );
}

/** The columns that a heading may mean. What is a word of the trade is not looked at for slips. */
function mayMean(own: string, columns: InputTable["columns"]): readonly string[] {
  const word = tradeWord(own);
  const called = columns.filter(
    ({ heading, words = [], was = [] }) => words.includes(word) || [heading, ...was].some((each) => word === tradeWord(each)),
  );
  return (called.length > 0 ? called : columns.filter(({ heading }) => isAlmost(word, tradeWord(heading)))).map(({ heading }) => heading);
}

/** A heading as it is compared with words of the trade: `Var.` is `var`, `U.O.M.` is `uom`, `$/bu` is `$perbu`. */
export const tradeWord = (heading: string): string =>
  plainHeading(
    heading
      .replace(/[.#'’-]/g, "")
      .replace(/\//g, " per ")
      .replace(/&/g, " and "),
  ).replace(/perac$/, "peracre");

function isAlmost(own: string, ours: string): boolean {
  if (own === `${ours}s` || ours === `${own}s`) return true;
  const letters = Math.min(own.length, ours.length);
  return letters >= shortestWithSlip && editDistance(own, ours) <= Math.min(mostSlips, Math.floor(letters / lettersForASlip));
}

/** What is proposed, in words: `“Qty” for Quantity, “Vendor” for Supplier`; empty where nothing is. */
export const proposalWords = (proposed: Matching): string => [...proposed].map(([heading, own]) => `“${own}” for ${heading}`).join(", ");
