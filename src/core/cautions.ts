/** What must be said where the work can hurt, word for word the same everywhere. */

/** Said wherever figures leave the screen: on every result sheet, by the command line, in the report as data. */
export const planningCaution =
  "Figures are for planning, from the grower's own entries, not audited or verified; not financial, tax or legal advice.";
/** Under the three cases of the lender pages. */
export const worseYears =
  "Low, expected and high are the grower's own figures, not the limits of what can happen: a drought or hail year can be far worse.";

export const blankGainCaution =
  "The yield gain starts blank: replicated trials often find no difference. Enter one that you can stand behind.";
export const estimateCaution = "Yields by date and stand are averages of trials, not a promise for this field.";
export const adjusterCaution =
  "Ask your insurer's adjuster before you destroy a stand. Ask your landlord or lender too, where they share in it.";
export const labelCaution =
  "The label is the law: read every label in the mix and keep to the strictest rule; wear what it says. No product or rate is " +
  "suggested here.";
export const underPlanterCaution =
  "Under a planter: lower it, or use its lift locks or stands, never the hydraulics alone; engine off, key out, all parts stopped.";
const mixCaution = "Before you mix: compatibility, drift, re-entry, and days before harvest.";
const planterPartsCaution = "Discs are sharp and springs are loaded; handle the dust of treated seed as its tag says.";
const roadCaution = "Before the road: lights, flashers and the slow-moving emblem.";
const manualCaution = "The operator's manual gives the maker's limits; where it differs, it rules.";
const policyCaution = "Your policy may ask for check strips and has final dates; ask before you replant (reseed).";
const afterSpraysCaution = "The labels of what was sprayed limit what may follow, and when.";

/** Work at which somebody can be hurt or lose a right. */
export const works = ["planter", "tank", "replant", "ammonia", "dryer", "bin", "long hours"] as const;
export type CautionedWork = (typeof works)[number];

/** What is said of each, in the order in which it is read. */
export const cautionsOf: Readonly<Record<CautionedWork, readonly string[]>> = {
  planter: [underPlanterCaution, planterPartsCaution, roadCaution, manualCaution],
  tank: [labelCaution, mixCaution],
  replant: [adjusterCaution, policyCaution, afterSpraysCaution],
  ammonia: ["Ammonia: goggles, gloves and water at hand, upwind; bleed every line before you open it."],
  dryer: ["Dryer: gas, flame and moving parts; watch it, keep it clean, and shut it off before you reach in."],
  bin: ["Bin: nobody goes in while grain flows, is crusted or unloads; unloader locked out, harness on, a second person outside."],
  "long hours": ["Long hours: tired people get hurt; rest, and let somebody know where you work."],
};

const words: readonly (readonly [CautionedWork, RegExp])[] = [
  ["ammonia", /ammonia|\bnh3\b|\banhydrous\b/i],
  ["dryer", /\bdry(er|ing|down)\b|\bdrier\b/i],
  ["bin", /\b(bins?|silos?|grain storage)\b/i],
  ["long hours", /\b(labou?r|own time|hours|overtime|night)\b/i],
];

/** Which of the works that are known by what an entry is called concern one: ammonia, dryer, bin and long hours. */
export const worksNamed = (entry: string): readonly CautionedWork[] =>
  words.filter(([, pattern]) => pattern.test(entry)).map(([work]) => work);
