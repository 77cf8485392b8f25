/**
 * How words of ours are spelled where they leave, on screen, on sheets and as text: as in Canada, and in US dollars as in the
 * United States. Entries, their kinds and the JSON keep one spelling; both are read.
 */
import type { ResultSheet } from "./resultSheet";
import type { SeasonReport } from "./seasonReport";

/** The parts of words in which the two differ, as far as the product says such words. */
export const spelledPairs: readonly (readonly [canadian: string, american: string])[] = [
  ["labour", "labor"],
  ["metre", "meter"],
  ["litre", "liter"],
  ["centred", "centered"],
  ["centre", "center"],
  ["colour", "color"],
  ["cheque", "check"],
];

const isAmerican = (currency: string): boolean => /^(USD|US\$|\$|US dollars?|dollars?)$/i.test(currency.trim());

/** The yield that an insurer goes by, with the short name that American growers call it by. */
export const provenYield = (currency: string): string => (isAmerican(currency) ? "Proven yield (APH)" : "Proven yield");

const anyCanadian = new RegExp(spelledPairs.map(([canadian]) => canadian).join("|"), "gi");
const americanOf: ReadonlyMap<string, string> = new Map(spelledPairs);

function asTyped(found: string): string {
  const american = americanOf.get(found.toLowerCase())!;
  if (found === found.toUpperCase()) return american.toUpperCase();
  return found.charAt(0) === found.charAt(0).toUpperCase() ? `${american.charAt(0).toUpperCase()}${american.slice(1)}` : american;
}

/** Words of ours, with nothing of the grower's in them. */
export const spelled = (words: string, currency: string): string => (isAmerican(currency) ? words.replace(anyCanadian, asTyped) : words);

type WithSeason = Pick<SeasonReport, "season">;

/** Words of ours around something that the grower typed, which stays. @param typed blank for nothing */
export const around = (words: string, typed: string, spell: (ours: string) => string): string =>
  typed === "" ? spell(words) : words.split(typed).map(spell).join(typed);

/** Words of ours among which names of the grower's may stand: those stay as they were typed. */
export function spelledText(words: string, report: WithSeason): string {
  const { currency } = report.season.settings;
  if (!isAmerican(currency) || words.search(anyCanadian) < 0) return words;
  return apart(words, ownWords(report))
    .map(({ text, isOwn }) => (isOwn ? text : spelled(text, currency)))
    .join("");
}

/** A result sheet as it is written. Its name stays, by which it is found again. */
export function spelledSheet(sheet: ResultSheet, report: WithSeason): ResultSheet {
  const say = (words: string) => spelledText(words, report);
  return {
    ...sheet,
    rows: sheet.rows.map((row) => row.map((cell) => (typeof cell.value === "string" ? { ...cell, value: say(cell.value) } : cell))),
    page: { ...sheet.page, footer: say(sheet.page.footer) },
    charts: sheet.charts.map((chart) => ({
      ...chart,
      title: say(chart.title),
      series: chart.series.map((each) => ({ ...each, name: say(each.name) })),
    })),
  };
}

const kindsOfOurs: ReadonlySet<string> = new Set(["hired labour", "unpaid labour"]);
const known = new WeakMap<SeasonReport["season"], readonly string[]>();

/** Texts of the grower's that hold such a word, the longest first: few or none, and looked for once in a season. */
function ownWords(report: WithSeason): readonly string[] {
  const before = known.get(report.season);
  if (before !== undefined) return before;
  const found = new Set<string>();
  const look = (value: unknown): void => {
    if (typeof value === "string") {
      if (value.search(anyCanadian) >= 0 && !kindsOfOurs.has(value)) found.add(value);
    } else if (Array.isArray(value) || value instanceof Map || value instanceof Set) for (const each of value) look(each);
    else if (typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype)
      for (const each of Object.values(value)) look(each);
  };
  look(report.season);
  const own = [...found].sort((one, other) => other.length - one.length);
  known.set(report.season, own);
  return own;
}

/** The words cut into those that are the grower's and the rest. A name that is such a word alone is known only where it stands alone. */
function apart(words: string, own: readonly string[]): readonly { readonly text: string; readonly isOwn: boolean }[] {
  const name = own.find((each) => (americanOf.has(each.toLowerCase()) ? words.trim() === each : words.includes(each)));
  if (name === undefined) return [{ text: words, isOwn: false }];
  const at = words.indexOf(name);
  return [...apart(words.slice(0, at), own), { text: name, isOwn: true }, ...apart(words.slice(at + name.length), own)];
}
