/** Words that people type for a word of a list. Each is taken only where the column's list has just one of what it may mean. */
import { plainWord } from "./words";

const meanings: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    // Kinds of cost.
    herbicide: ["crop protection"],
    herbicides: ["crop protection"],
    fungicide: ["crop protection"],
    fungicides: ["crop protection"],
    insecticide: ["crop protection"],
    insecticides: ["crop protection"],
    pesticide: ["crop protection"],
    pesticides: ["crop protection"],
    chem: ["crop protection"],
    chems: ["crop protection"],
    burndown: ["crop protection"],
    adjuvant: ["crop protection"],
    chemical: ["crop protection"],
    chemicals: ["crop protection"],
    spray: ["crop protection"],
    "seed corn": ["seed"],
    "seed cost": ["seed"],
    anhydrous: ["fertilizer"],
    "anhydrous ammonia": ["fertilizer"],
    urea: ["fertilizer"],
    uan: ["fertilizer"],
    potash: ["fertilizer"],
    lime: ["fertilizer"],
    "fert and lime": ["fertilizer"],
    "fertilizer and lime": ["fertilizer"],
    starter: ["fertilizer"],
    "starter fertilizer": ["fertilizer"],
    "fuel and oil": ["fuel"],
    "gas and oil": ["fuel"],
    "gas fuel oil": ["fuel"],
    "gas fuel and oil": ["fuel"],
    "repairs and maintenance": ["repairs"],
    maintenance: ["repairs"],
    "crop ins": ["crop insurance"],
    "crop ins premium": ["crop insurance"],
    "crop insurance premium": ["crop insurance"],
    "custom spraying": ["custom work"],
    "custom harvest": ["custom work"],
    "custom combining": ["custom work"],
    fert: ["fertilizer"],
    fertiliser: ["fertilizer"],
    diesel: ["fuel"],
    gasoline: ["fuel"],
    custom: ["custom work"],
    "custom hire": ["custom work"],
    "custom application": ["custom work"],
    wages: ["hired labour"],
    "labour hired": ["hired labour"],
    "hired help": ["hired labour"],
    trucking: ["haul"],
    hauling: ["haul"],
    "dryer gas": ["drying"],
    "hail insurance": ["crop insurance"],
    rent: ["cash rent"],
    "land rent": ["cash rent"],
    "property tax": ["land tax"],
    "real estate tax": ["land tax"],
    principal: ["term principal"],
    "own labour": ["unpaid labour"],
    "operator labour": ["unpaid labour"],
    living: ["family living"],
    other: ["other operating"],
    misc: ["other operating"],
    // Status.
    planned: ["plan"],
    "to do": ["plan"],
    todo: ["plan"],
    completed: ["done"],
    complete: ["done"],
    finished: ["done"],
    applied: ["done"],
    // Basis, tenure, yes and no.
    acre: ["per acre"],
    "/ac": ["per acre"],
    "/acre": ["per acre"],
    hour: ["per hour"],
    hourly: ["per hour"],
    "/hr": ["per hour"],
    "/h": ["per hour"],
    total: ["lump sum", "whole farm"],
    flat: ["lump sum"],
    lump: ["lump sum"],
    once: ["lump sum"],
    farm: ["whole farm"],
    "in all": ["lump sum", "whole farm"],
    own: ["owned"],
    cash: ["cash rent"],
    share: ["crop share"],
    "share rent": ["crop share"],
    sharecrop: ["crop share"],
    y: ["yes"],
    true: ["yes"],
    1: ["yes"],
    comma: ["yes"],
    n: ["no"],
    false: ["no"],
    0: ["no"],
    point: ["no"],
  }).map(([typed, words]) => [plainWord(typed), words] as const),
);

/**
 * Words that name what is bought, whatever stands beside them: `Herbicide pre`, `Starter 10-34-0`, `Seed corn, bags`. All are
 * operating kinds.
 */
const bought: ReadonlyMap<string, string> = new Map(
  Object.entries({
    seed: ["seed"],
    "crop protection": [
      "herbicide",
      "herbicides",
      "fungicide",
      "fungicides",
      "insecticide",
      "insecticides",
      "chem",
      "chemical",
      "chemicals",
    ],
    fertilizer: ["fertilizer", "fertiliser", "fert", "starter", "anhydrous", "urea", "uan", "potash", "lime"],
    fuel: ["fuel", "diesel"],
    repairs: ["repair", "repairs"],
    haul: ["trucking", "hauling"],
    drying: ["drying"],
  }).flatMap(([kind, words]) => words.map((word) => [word, kind] as const)),
);
/** Words beside which it may be work, land, money or something else. */
const otherwise =
  /\b(appl\w*|spread\w*|custom|hired?|labou?r|wages|tax\w*|rent\w*|leases?|refunds?|credits?|rebates?|returns?|sold|sales?|income|claims?|insurance|interest|loans?|totals?|shares?|inputs?|equipment|drill|not?|without|excl\w*)\b/i;

/**
 * The kind of cost that an entry means by what is bought; `null` where two are named, and of lists without these kinds. Only for
 * entries: a heading such as Seed rate may be no money.
 */
export function wordBought<Word extends string>(typed: string, words: readonly Word[]): Word | null {
  if (otherwise.test(typed)) return null;
  const kinds = new Set(
    typed
      .toLowerCase()
      .split(/[^a-z]+/)
      .flatMap((word) => bought.get(word) ?? []),
  );
  return kinds.size === 1 ? (words.find((word) => kinds.has(word)) ?? null) : null;
}

/** Whether a cell says yes, in one of the words that mean it. */
export const isYes = (typed: string): boolean => plainWord(typed) === "yes" || wordMeant(typed, ["yes", "no"]) === "yes";

/**
 * The word of the list that is meant: by another word, with points and commas or without (`Fert.`), or in the other number
 * (`repair`, `added cost`); `null` where none or more than one may be.
 */
export function wordMeant<Word extends string>(typed: string, words: readonly Word[]): Word | null {
  const key = plainWord(typed.replace(/[.,]/g, " ").replace(/&/g, " and "));
  const meant = words.filter(
    (word) => (meanings.get(key) ?? []).includes(word) || plainWord(word) === `${key}s` || `${plainWord(word)}s` === key,
  );
  return meant.length === 1 ? meant[0]! : null;
}
