/**
 * What trials found, to stand beside a yield gain that is left blank. Nothing here is ever filled in: replicated trials
 * often found no difference, and many of the larger figures come from those who sell the part.
 */
import { Decimal } from "../numbers/decimal";
import type { Source } from "./source";

const trialSubjects = [
  "closing wheels",
  "down force",
  "row unit wear",
  "seeding rate",
  "hybrid",
  "planting speed",
  "planting depth",
  "fungicide",
  "wheel traffic",
] as const;
export type TrialSubject = (typeof trialSubjects)[number];

export type TrialFinding = {
  readonly subject: TrialSubject;
  readonly finding: string;
  /** Yield difference that was reported, from and to; `null` where no figure was. */
  readonly difference: { readonly low: Decimal; readonly high: Decimal; readonly unit: string } | null;
  /** Whether the source says that the difference was not significant, or that there was none. */
  readonly noDifference: boolean;
  /** "replicated": a trial with repetitions and statistics; "maker": from those who sell or make; "report": neither is told. */
  readonly kind: "replicated" | "maker" | "report";
  readonly source: Source;
};

const bushels = (low: string, high = low) => ({ low: new Decimal(low), high: new Decimal(high), unit: "bu/ac" });
const press = (title: string, publisher: string, year: string, address: string): Source => ({
  title,
  publisher,
  year,
  address,
  where: "text",
});

const plotReport = press(
  "Aggressive closing wheel programs outshine industry standard systems",
  "Farm Progress",
  "2018 to 2021",
  "https://www.farmprogress.com/corn/aggressive-closing-wheel-programs-outshine-industry-standard-systems",
);

export const trialFindings: readonly TrialFinding[] = [
  {
    subject: "closing wheels",
    kind: "replicated",
    noDifference: true,
    difference: null,
    finding: "No-till, three sites in Wisconsin: about 2 % more emergence than rubber wheels, no difference in yield.",
    source: {
      title: "Impact of Planter Closing Wheels on Corn Emergence in No-Till Systems (Applied Engineering in Agriculture 36(5):727-732)",
      publisher: "American Society of Agricultural and Biological Engineers",
      year: "2020",
      address: "https://doi.org/10.13031/aea.13957",
      where: "abstract",
    },
  },
  {
    subject: "closing wheels",
    kind: "replicated",
    noDifference: true,
    difference: null,
    finding: "No-till in Wisconsin: rubber wheels with high down force emerged worst; no difference in yield.",
    source: {
      title: "Closing wheel type and row unit downforce (Agronomy Journal)",
      publisher: "American Society of Agronomy",
      year: "2021",
      address: "https://doi.org/10.1002/agj2.20774",
      where: "abstract",
    },
  },
  {
    subject: "closing wheels",
    kind: "maker",
    noDifference: false,
    difference: bushels("2.0", "2.7"),
    finding: "A seed company's strips in Ohio, three years, no statistics shown.",
    source: plotReport,
  },
  {
    subject: "closing wheels",
    kind: "maker",
    noDifference: false,
    difference: bushels("12", "15"),
    finding: "A maker's plots, planted wet on purpose.",
    source: press(
      "Closing in on high corn yields",
      "Successful Farming",
      "2018",
      "https://www.agriculture.com/crops/corn/closing-in-on-high-corn-yields",
    ),
  },
  {
    subject: "down force",
    kind: "maker",
    noDifference: false,
    difference: bushels("22", "23"),
    finding: "Ohio 2018, automatic against light or heavy: ear estimates in August, not combine yields (179 against 156 and 157).",
    source: press(
      "Get planting downforce right",
      "Farm Progress",
      "2018",
      "https://www.farmprogress.com/equipment/get-planting-downforce-right-boost-yields",
    ),
  },
  {
    subject: "down force",
    kind: "replicated",
    noDifference: true,
    difference: null,
    finding: "Soybeans in Indiana 2013, four levels at two depths: not significant at 0.1.",
    source: press(
      "How Downforce Can Affect Planting",
      "Farm Progress",
      "2013",
      "https://farmprogress.com/corn/how-to-set-your-planter-for-top-yields",
    ),
  },
  {
    subject: "row unit wear",
    kind: "report",
    noDifference: false,
    difference: bushels("3.87"),
    finding: "Worked example, not a trial: one row of 16 with 30 % fewer ears.",
    source: press(
      "Corn planter maintenance",
      "Messenger-Inquirer (Kentucky extension column)",
      "2020",
      "https://www.messenger-inquirer.com/features/corn-planter-maintenance/article_dc944340-56c5-5e3f-aafc-f4c2429038f0.html",
    ),
  },
  {
    subject: "seeding rate",
    kind: "replicated",
    noDifference: false,
    difference: null,
    finding: "Michigan: best return at 32,000 seeds (194 bu), yield flat to 38,000.",
    source: press(
      "Maximizing returns on seed corn investments",
      "Michigan State University Extension",
      "2011",
      "https://www.canr.msu.edu/news/maximizing_returns_on_seed_corn_investments",
    ),
  },
  {
    subject: "hybrid",
    kind: "report",
    noDifference: true,
    difference: bushels("2.2"),
    finding: "Two hybrids 2.2 bu apart (193.0 and 195.2): within the error of the trial.",
    source: press(
      "Check revenue vs. seed cost when picking corn hybrids",
      "Farm Progress",
      "2015",
      "https://www.farmprogress.com/story-check-revenue-vs-seed-cost-picking-corn-hybrids-9-133986",
    ),
  },
  {
    subject: "planting speed",
    kind: "replicated",
    noDifference: true,
    difference: null,
    finding: "Indiana 2011, 4 to 6 miles an hour: spacing worse with speed, yield not.",
    source: press(
      "Scratch head over speed of planting results",
      "Indiana Prairie Farmer, Purdue farm trial",
      "2011",
      "http://farmprogress.com/library.aspx?plc=33&lc=36&ls=1649&pv=1",
    ),
  },
  {
    subject: "planting depth",
    kind: "replicated",
    noDifference: false,
    difference: null,
    finding:
      "Plants up within three days of the first lost nothing; after that 5 % of kernel weight a day (Ohio). Between 1.5 and 3 in, " +
      "trials in Indiana, Illinois and Missouri found no difference.",
    source: press(
      "Seeding depth affects corn plant emergence uniformity and grain yield",
      "University of Wisconsin",
      "2022",
      "https://wisccorn.blogspot.com/2022/04/B117.html",
    ),
  },
  {
    subject: "fungicide",
    kind: "report",
    noDifference: false,
    difference: null,
    finding: "Indiana strips: 19 $/ac more corn, 28 $/ac more cost, a loss of 9 $/ac.",
    source: {
      title: "Fungicide strip trial economics",
      publisher: "farm press report, West Lafayette",
      year: "year not printed",
      address: "not kept",
      where: "text",
    },
  },
  {
    subject: "wheel traffic",
    kind: "report",
    noDifference: true,
    difference: null,
    finding: "Ontario 2023: no difference between rows driven on and not at Niagara; a difference at Oxford.",
    source: press(
      "Corn School: How planter tire compaction impacts yield",
      "RealAgriculture",
      "2023",
      "https://www.realagriculture.com/2023/05/corn-school-how-planter-tire-compaction-impacts-yield/",
    ),
  },
];

/** What trials of a subject found, those that found no difference first. */
export const findingsOn = (subject: TrialSubject): readonly TrialFinding[] => {
  const on = trialFindings.filter((each) => each.subject === subject);
  return [...on.filter((each) => each.noDifference), ...on.filter((each) => !each.noDifference)];
};
