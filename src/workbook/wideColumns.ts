/**
 * Columns of a wide sheet of the grower's own, which hold a kind of cost each: how the table Matches says so, and what a heading
 * may mean.
 */
import { kinds, type Kind } from "../core/kinds";
import { budgetBases } from "./columns/budget";
import { wordMeant } from "./synonyms";
import { plain, plainHeading, plainWord } from "./words";

/**
 * What a column of a wide sheet holds: money of a kind, or something that no line is made of. `isSaid`: that it is an acre's was
 * said in so many words.
 */
export type WideColumn = { readonly kind: Kind; readonly basis: (typeof budgetBases)[number]; readonly isSaid?: true } | "left out";

export const leftOutWord = "left out";

/**
 * What the table Matches says of a wide column: `seed`, `seed, whole`, `seed, per acre`, `left out`; `null` where it says none of
 * these.
 */
export function wideColumnSaid(typed: string): WideColumn | null {
  const [first = "", second, ...more] = typed.split(",").map((part) => part.trim());
  if (plain(typed) === plain(leftOutWord)) return "left out";
  const kind = kinds.find((each) => plainWord(each) === plainWord(first));
  const basis = second === undefined ? "per acre" : budgetBases.find((each) => plainHeading(each) === plainHeading(second));
  return kind === undefined || basis === undefined || more.length > 0
    ? null
    : { kind, basis, ...(second !== undefined && basis === "per acre" && { isSaid: true }) };
}

/** How the table Matches says it. */
export const wideColumnWords = (column: WideColumn): string =>
  column === "left out"
    ? leftOutWord
    : column.basis === "whole" || column.isSaid === true
      ? `${column.kind}, ${column.basis}`
      : column.kind;

/** Short words above a column that are not clear enough in an entry: common practice, from memory. They are proposed and can be changed. */
const shortHeadings: ReadonlyMap<string, Kind> = new Map([
  ["ins", "crop insurance"],
  ["insurance", "crop insurance"],
  ["int", "operating interest"],
  ["op int", "operating interest"],
  ["interest", "operating interest"],
  ["rep", "repairs"],
  ["contractor", "custom work"],
  ["harvest", "custom work"],
  ["scouting", "custom work"],
  ["land", "cash rent"],
  ["labor", "hired labour"],
  ["labour", "hired labour"],
]);

/** What a heading such as `Seed $/ac`, `Herbicide` or `Total rent` may hold; `null` where it names no kind of cost. */
export function wideColumnMeant(heading: string): WideColumn | null {
  const bare = heading
    .replace(/[([].*?[)\]]/g, " ")
    .replace(/(\p{Sc}|\b(usd|cad|dollars?))? ?(\/|\bper\b) ?(ac(re)?s?|ha|hectares?)\b\.?/giu, " ")
    .replace(/\p{Sc}|\b(cost|costs|expense|total|whole|exp\.?)\b|[.:#]/giu, " ");
  const words = bare.replace(/\s+/g, " ").trim();
  const kind =
    kinds.find((each) => plainWord(each) === plainWord(words)) ?? wordMeant(words, kinds) ?? shortHeadings.get(words.toLowerCase()) ?? null;
  if (words === "" || kind === null) return null;
  return { kind, basis: /\b(total|whole)\b/i.test(heading) && areaNamed(heading) === null ? "whole" : "per acre" };
}

/** The basis that a heading names itself, `Seed $/ha`; `null` where it names none. */
export const areaNamed = (heading: string): "per acre" | "per hectare" | null => {
  const unit = /(?:\/|\bper\b)\s*(ac(?:re)?s?|ha|hectares?)\b/i.exec(heading)?.[1];
  return unit === undefined ? null : /^h/i.test(unit) ? "per hectare" : "per acre";
};

/** A heading of a wide sheet as it is looked up: its brackets tell columns apart, such as `Seed (plan)` and `Seed (paid)`. */
export const ownHeading = (heading: string): string => plain(heading);
