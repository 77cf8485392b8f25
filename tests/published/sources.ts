/**
 * Every source of a figure that the tests check against, beside the budgets, which bring their own. Figures only were taken; read in 2026.
 * Where no address is given, only the publisher was kept when the figure was read.
 */

/** How far what is checked is what the source itself says. */
export type Standing =
  | "printed"
  /** Not printed there: worked out, apart from our formulas, from figures that are. */
  | "worked out from print"
  /** A published rule with figures of our own, or an example of our own worked out apart. */
  | "own example"
  | "reference library"
  | "from memory";

export type Source = {
  /** What docs/checks.md calls it in a row. */
  readonly id: string;
  readonly title: string;
  readonly publisher?: string;
  readonly year?: string;
  readonly address?: string;
  readonly where?: string;
  /** `printed` where it is left out. */
  readonly standing?: Standing;
};

/** The source in one line. */
export const citation = ({ title, publisher, year, where, address }: Omit<Source, "id">): string =>
  [publisher, title, year === "not printed" ? undefined : year, where, address].filter((part) => part !== undefined).join("; ");

type Listed = Omit<Source, "id">;
const named = <Key extends string>(all: Readonly<Record<Key, Listed>>): Readonly<Record<Key, Source>> =>
  Object.fromEntries(Object.entries<Listed>(all).map(([id, source]) => [id, { id, ...source }])) as Record<Key, Source>;

const own = (title: string): Listed => ({ title, standing: "own example" });
const texas = "Texas Cooperative Extension / Texas A&M AgriLife Extension";
const iowaState = "Iowa State University Extension";
const purdueAgronomy = "Purdue University Agronomy";
const ohioState = "Ohio State University Extension";

export const sources = named({
  // Heat, stages and maturity
  "Waushara 2018": { title: "Calculating Growing Degree Days", publisher: "Waushara County Extension, Wisconsin", year: "2018" },
  "Ohio AGF-101": {
    title: "Growing Degree Days as a Method of Rating the Maturity of Corn Hybrids, AGF-101",
    publisher: ohioState,
    year: "2017",
  },
  "Ohio degree days 2023": { title: "Corn Growing Degree Days", publisher: ohioState, year: "2023" },
  "Purdue crop growing 2016": {
    title: "5 steps to determine if your corn crop is growing",
    publisher: "Purdue, through Farm Progress",
    year: "2016",
  },
  "Iowa Agronomy 541": { title: "Agronomy 541 lesson 2b", publisher: "Iowa State University" },
  "Canada heat units 2017": {
    title: "Crop (Corn) Heat Units: the formula is printed, the days are ours",
    publisher: "Agriculture and Agri-Food Canada",
    year: "2017",
    standing: "worked out from print",
  },
  "Ontario adviser 2010": { title: "newsletter of an Ontario crop adviser", year: "2010" },
  "NOAA daily summaries 2018": {
    title: "daily summaries export, Climate Data Online: the days are printed, the sum is ours",
    publisher: "NOAA NCEI",
    year: "2018",
    standing: "worked out from print",
  },
  "Ohio leaf stages 2018": { title: "785 heat units since planting, 120 to come up, 82 a leaf", publisher: ohioState, year: "2018" },
  "Purdue delayed planting": {
    title: "Hybrid maturities for delayed planting: it prints less than 2500",
    publisher: "Purdue",
    year: "about 2013",
    standing: "worked out from print",
  },
  "Purdue frost 1996": { title: "Frost-mongering updates for corn", publisher: purdueAgronomy, year: "1996" },

  // Loads, drying and shrink
  "Iowa wet corn 2019": {
    title: "Options for selling wet corn (TeBockhorst, Shouse)",
    publisher: "Iowa State University, through Ohio State University Extension, Allen County",
    year: "2019",
    address: "https://u.osu.edu/allenag/tag/grain-handling",
  },
  "Purdue wet weight 2020": {
    title: "Converting wet corn weight to dry corn weight (read in a quotation)",
    publisher: purdueAgronomy,
    year: "2020",
    address: "https://agry.purdue.edu/ext/corn/news/timeless/WaterShrink.html",
  },
  "Purdue dry bushels": {
    title: "Count dry bushels not wet (Purdue Field Guide)",
    publisher: "Farm Progress",
    year: "about 2013",
    address: "http://farmprogress.com/story-count-dry-bushels-wet-15-102446-printversion",
  },
  "Purdue overdrying 2024": {
    title: "Don't dry away your profits",
    publisher: "Purdue Extension, through Farm Progress",
    year: "2024",
    address: "https://www.farmprogress.com/corn/don-t-dry-your-profits-away",
  },
  "North Dakota drying": { title: "propane of 0.022 gal a point and bushel, at 1.90", publisher: "North Dakota State University" },
  "South Dakota drying": { title: "propane of 0.02 gal a point and bushel, at 1.60", publisher: "South Dakota State University" },
  "Propane council 2019": { title: "cost of propane for drying", publisher: "Propane Education & Research Council", year: "2019" },
  "farmdoc shrink 2009": { title: "wet bushels of 190 dry ones", publisher: "farmdoc, University of Illinois", year: "2009" },
  "Purdue shrink": { title: "Corn & Soybean Field Guide", publisher: "Purdue University" },
  "Iowa shrink factors": { title: "shrink factors by standard moisture", publisher: "Iowa State University" },

  // Rules of a season
  D05: { title: "Irrigated winter wheat with grazing, 1982 crop budget", publisher: texas, address: "https://studylib.net/doc/11000725/" },
  D06: {
    title: "Table 63: costs and returns for corn for grain per acre (organic practices), 1996",
    publisher: "Rutgers Cooperative Extension",
    address: "https://farmmgmt.rutgers.edu/table-63-costs-and-returns-for-corn-for-grain-per-acre/",
  },
  D07: { title: "Hard red winter wheat, 200 acres, central Texas, 2016", publisher: texas, address: "https://studylib.net/doc/11006199/" },
  D08: {
    title: "Dryland wheat with grazing, 160 acres, South Plains, 2016",
    publisher: texas,
    address: "https://studylib.net/doc/11004506/",
  },
  D09: {
    title: "Furrow-irrigated grain sorghum, 100 acres, lower Rio Grande, 2016",
    publisher: texas,
    address: "https://studylib.net/doc/11004299/",
  },
  "I05 average cost": { title: "accounting course problem: 625 units cost 11,450, 500 are used" },
  I06: { title: "accounting course problem: two lots, 28 units used" },
  "nutrient prices": { title: "extension and farm-press worked examples: dollars a pound of a nutrient" },
  I08: { title: "farm press: a unit of 80,000 seeds; 34,000 at 267 a unit" },
  G01: {
    title: "Corn and soybean weights at equal dry matter (University of Missouri moisture tables)",
    address: "grainweightconversion.com",
    where: "corn",
  },
  G02: {
    title: "Corn and soybean weights at equal dry matter (University of Missouri moisture tables)",
    address: "grainweightconversion.com",
    where: "soybeans",
  },
  G04: {
    title: "Corn grain moisture discount: why and how much?",
    publisher: "South Dakota State University Extension",
    year: "2020",
    address: "https://extension.sdstate.edu/corn-grain-moisture-discount-why-and-how-much",
    where: "text and table 1",
  },
  G06: { title: "EDIS AG442: 10,000 lb at 20 %", publisher: "University of Florida IFAS" },
  "bushels in a tonne": { title: "farm conversion tables: bushels in a tonne" },
  "drying a bushel": { title: "drying of ten points at a charge a point", publisher: "North Dakota State University, MWPS and farm press" },
  "AgWeb 2010": { title: "a tenth sold at 4.30 and the rest at 5.20", publisher: "AgWeb", year: "2010" },

  // Machinery
  "PM 710": {
    title: "Estimating Farm Machinery Costs (PM 710, an older edition), copy held by the National Ag Risk Education Library",
    publisher: iowaState,
    address: "https://www.yumpu.com/en/document/view/27603461/estimating-farm-machinery-costs-national-ag-risk-education-library/3",
    where: "pages 3 and 6 of the copy",
  },
  "PM 710, worked out": {
    title: "worked out from PM 710's printed inputs by its method, with the factor unrounded; the page with its results was not readable",
    standing: "worked out from print",
  },
  "PM 710 table 3": { title: "PM 710 (1996), read in a public copy of the table", publisher: iowaState, where: "table 3" },
  "PM 710 table 1a": { title: "PM 710, read in a public copy of the table", publisher: iowaState, where: "table 1a" },
  "Growing Produce": { title: "How much will that tractor cost?", publisher: "Growing Produce", address: "growingproduce.com" },
  "farmdoc machines 2019": {
    title: "Machinery operation costs",
    publisher: "farmdoc, University of Illinois",
    year: "2019",
    address: "farmdoc.illinois.edu",
  },
  "Ontario repairs": { title: "accumulated repairs of a two-wheel-drive tractor", publisher: "Ontario farm press" },
  "Engineers Edge": { title: "Capital recovery factors, table 15667", publisher: "Engineers Edge", address: "www.engineersedge.com" },
  "Decker Lateral": {
    title: "Decker Lateral loan amortisation schedule",
    publisher: "Colorado Water Conservation Board",
    address: "dnrweblink.state.co.us/CWCB/0/doc/69405/Page16.aspx",
    where: "full 30-line schedule",
  },
  "60-month loan": { title: "farm-finance text: 50,000 over 60 months at 5 % a year" },
  "Maryland ENCE420": {
    title: "ENCE420 course notes, equipment ownership example",
    publisher: "University of Maryland",
    address: "https://studylib.net/doc/8433104/",
  },
  "Michigan State capacity": {
    title: "ANR course pages, effective field capacity notes",
    publisher: "Michigan State University",
    address: "web5.anr.msu.edu",
  },
  "farmdoc tractors": { title: "Machinery cost estimates: tractors", publisher: "farmdoc, University of Illinois" },
  "own or hire": own("1,000 a year against 17 an acre"),

  // Stand counts and seed
  "Tennessee 2011": {
    title: "Checking corn populations",
    publisher: "University of Tennessee Crops News",
    year: "2011",
    address: "https://news.utcrops.com/2011/04/checking-corn-populations",
  },
  "Corn+Soybean Digest 2004": {
    title: "Replanting decisions",
    publisher: "Corn+Soybean Digest",
    year: "2004",
    address: "http://cornandsoybeandigest.com/print/replanting-decisions",
  },
  "Ohio soybean replant": { title: "Soybean replant decisions (Times Bulletin)", publisher: ohioState },
  "Virginia soybean stand": {
    title: "Soybean stand",
    publisher: "Virginia Tech Extension",
    where: "table 1",
    address: "https://blogs.ext.vt.edu/ag-pest-advisory/tag/stand",
  },
  "list of hoop factors": { title: "published list of plants an acre for one plant in a hoop" },
  "28 1/4 in hoop": { title: "the hoop that makes a plant 10,000 an acre" },
  "wheel method": { title: "copy of a bulletin, method of the Illinois Agronomy Handbook p. 31" },
  "Farm Progress 2023": {
    title: "Test your soybean replant decisions (Purdue Corn & Soybean Field Guide table)",
    publisher: "Farm Progress",
    year: "2023",
  },
  "Farm Progress soybeans": { title: "Should You Replant Soybeans? (Purdue guide)", publisher: "Farm Progress" },
  "Penn State 2016": {
    title: "Replanting Corn Fields",
    publisher: "Penn State Extension",
    year: "2016",
    address: "http://www.farms.com/commentaries/replanting-corn-fields-108067.aspx",
  },
  "Penn State wheat": {
    title: "Wheat Stand Assessment",
    publisher: "Penn State Extension",
    address: "https://extension.psu.edu/wheat-stand-assessment",
  },
  "five counts": own("five counts; no published worked interval was found"),
  "Purdue spacing 2015": { title: "Corn & Soybean Field Guide", publisher: "Purdue, in Farm Progress", year: "2015" },
  "Kentucky wheat": {
    title: "Seeding rate for wheat",
    publisher: "University of Kentucky",
    where: "tables 1 and 2",
    address: "http://www.uky.edu/Ag/Wheat/seedrate.html",
  },
  "North Dakota seeding": { title: "Optimal Seeding Rates", publisher: "North Dakota State University Extension" },
  "Crop Chatter flax": {
    title: "flax, 45 plants a square foot, 5 g, 88 % germination, 40 % mortality",
    publisher: "Crop Chatter (Manitoba)",
  },
  "flax, worked out": { title: "the rule's exact form on Crop Chatter's flax", standing: "worked out from print" },
  "growwinterwheat.ca": { title: "Seed heavy: the formula and the survival are printed, the 32 g ours", standing: "own example" },
  "Michigan State 2025": { title: "seed cost of 34,000 at 250 a unit", publisher: "Michigan State University Extension", year: "2025" },
  "Michigan State 2011": { title: "seed cost of 2,000 more at 275 a unit", publisher: "Michigan State University Extension", year: "2011" },
  "Illinois seed": { title: "seeds that a bushel buys", publisher: "Illinois, in Corn+Soybean Digest" },
  "Manitoba Pulse 2021": { title: "seed cost of soybeans", publisher: "Manitoba Pulse & Soybean Growers", year: "2021" },
  "seeding rule": { title: "140,000 ÷ (0.90 × 0.95), the rule as notes of extension print it" },
  "unit from acre": { title: "farm press: 113.50 an acre at 34,000 seeds" },
  "North Dakota skips 2016": {
    title: "North Dakota Corn: a tenth skipped of 200 bu",
    publisher: "North Dakota State University",
    year: "2016",
  },

  // Tables by date and stand
  "Purdue 2012": {
    title: "Pest & Crop newsletter 2012 no. 15, table 1",
    publisher: "Purdue University Extension",
    address: "http://extension.entm.purdue.edu/pestcrop/2012/issue15/table1.html",
  },
  "Purdue 2012, by hand": { title: "worked out by hand between the cells of Purdue 2012", standing: "worked out from print" },
  "Penn State 29 May": { title: "reading of the Purdue table for 29 May at a full stand", publisher: "Penn State Extension" },
  "Farm Progress 2018": { title: "Purdue Field Guide p. 56", publisher: "Farm Progress", year: "2018" },
  "Farm Progress hard decisions": {
    title: "Help For Those Difficult Corn Replant Decisions (174 bu worked out: cut off)",
    publisher: "Farm Progress",
  },
  "Iowa PM 1885": {
    title: "PM 1885, as printed 24 May 2004",
    publisher: iowaState,
    address: "http://www.extension.iastate.edu/Pages/eccrops/cu040524.html",
  },
  "Iowa 2010": {
    title: "Stand Evaluations, 3 May 2010",
    publisher: iowaState,
    address: "http://www.extension.iastate.edu/Pages/eccrops/jfcu100503.html",
  },
  "Nebraska 2009": {
    title: "CropWatch 22 May 2009, table 2, a reprint of the Iowa table",
    publisher: "University of Nebraska-Lincoln",
    address: "https://cropwatch.unl.edu/evaluating-corn-stands",
  },
  "Wisconsin 2003": {
    title: "Wisconsin Crop Manager 10(7):56-57",
    publisher: "University of Wisconsin Extension",
    year: "2003",
    address: "https://corn.agronomy.wisc.edu/WCM/W120.aspx",
  },
  "Missouri 2013": {
    title: "corn by planting date, northern Missouri, in Bowling Green Times",
    publisher: "University of Missouri Extension",
    year: "2013",
  },
  "Penn State soybeans 2012": { title: "soybeans by planting date, Lebanon County", publisher: "Penn State Extension", year: "2012" },
  "Ontario wheat 2012": { title: "Field Crop News, table 1", publisher: "Ontario Ministry of Agriculture", year: "2012" },
  "Minnesota stands": { title: "22,000 plants; a full stand of 20 May", publisher: "Minnesota" },

  // Changes
  "Southeast Farm Press": {
    title: "Partial budget a simple, useful financial tool, worked example, second page",
    publisher: "Southeast Farm Press / Delta Farm Press",
  },
  "ISRN Agronomy 2012": {
    title: "maize in Kenya, table 10",
    publisher: "ISRN Agronomy",
    year: "2012",
    address: "https://doi.org/10.5402/2012/153412",
  },
  "ISRN Agronomy 2012, worked out": { title: "(33,604 − 18,556) ÷ (15,693 − 8,640)", standing: "worked out from print" },
  "attachment at 5,000": { title: "farm press article by an equipment specialist: 5,000 at 5 an acre is paid by 1,000 acres" },
  "attachment on 800 acres": own("an attachment on 800 acres, worked out apart"),
  "accounting problem": { title: "accounting course problem set: 113,800 against 43,800 a year" },
  "accounting problem, worked out": {
    title: "net present value from that problem's printed flows and factor",
    standing: "worked out from print",
  },
  "textbook combine": { title: "management-accounting textbook problem: 487,000 over four years" },
  "textbook paybacks": { title: "management-accounting textbook problems: level yearly amounts" },
  "closing wheels on 12 rows": own("closing wheels on 12 rows; only the zero-gain evidence is printed (doi 10.13031/aea.13957)"),
  "Messenger-Inquirer 2020": {
    title: "Corn planter maintenance (Kentucky extension column)",
    publisher: "Messenger-Inquirer",
    year: "2020",
  },
  "Messenger-Inquirer 2020, worked out": {
    title: "the steps between the printed figures of that column, and its loss at 3.90",
    standing: "worked out from print",
  },
  "No-Till Farmer 8919": { title: "article 8919: response that pays for a treatment", publisher: "No-Till Farmer" },
  "strip trial": { title: "farm press report of a strip trial: 19 an acre more, 9 lost" },

  // Replanting
  "Purdue 2012, money ours": { title: "decisions on cells of Purdue 2012, with money of our own", standing: "own example" },
  "Arkansas 2006": {
    title: "reduced yield that equals replanting: the yield is printed, cost and price ours",
    publisher: "Delta Farm Press (University of Arkansas)",
    year: "2006",
    standing: "own example",
  },
  "Iowa replant 2006": {
    title: "Corn replant decisions: the parts are printed, the sum is ours",
    publisher: iowaState,
    year: "2006",
    standing: "worked out from print",
  },
  "Iowa ICM 1998": { title: "ICM 27 July 1998, and the lesson of agedge.net (example 4)", publisher: iowaState, year: "1998" },

  // Lender
  "Purdue repayment 2025": { title: "Repayment capacity example", publisher: "Purdue University Extension", year: "2025" },
  "Purdue repayment 2025, worked out": {
    title: "coverage, and replacement at 1.15 times depreciation, from the printed figures",
    standing: "worked out from print",
  },
  "crop insurance illustrations": { title: "United States crop insurance illustrations in the farm press" },
  "crop insurance illustrations, worked out": {
    title: "the guarantee of yield unrounded: the source rounds it to 100 bu first",
    standing: "worked out from print",
  },
  "harvest price option": { title: "the rule is published, the numbers are ours", standing: "own example" },
  "Manitoba insurance": {
    title: "rule of the Manitoba Agricultural Services Corporation with a dollar value of our own",
    standing: "own example",
  },
  "NSW azuki 2010": {
    title: "Azuki beans, surface irrigated, summer gross margin budget 2010-11",
    publisher: "NSW Department of Primary Industries",
    year: "2010",
    address: "https://scribd.com/document/652432664/",
  },
  "Texas sorghum 2016": {
    title: "Estimated costs and returns: furrow-irrigated grain sorghum, district 12 (only 7.28 is legible; the rest follows its rule)",
    publisher: "Texas A&M AgriLife Extension",
    year: "2016",
    address: "https://studylib.net/doc/11004299/",
    standing: "worked out from print",
  },
  "unsold grain": own("price needed on unsold grain; no published example was found"),

  // Student's t
  "scipy 1.17.1": { title: "scipy.stats.t.ppf(0.5 + confidence / 2, freedom)", standing: "reference library" },
  "t table": { title: "2.776 at 4 degrees of freedom, as every printed table has it", standing: "from memory" },

  // Tanks and weeds
  "Montana MT 2000-14": {
    title: "Calibration of Sprayer, MT 2000-14",
    publisher: "Montana State University Extension (by its series number)",
    year: "2000",
    where: "examples 4 and 7b",
  },
  "Oklahoma 2013": {
    title: "Calibrating application equipment",
    publisher: "Oklahoma State University (Oklahoma City)",
    year: "2013",
    where: "slides",
  },
  "safety handbook": {
    title: "Agrochemical and pesticide safety handbook, examples 4 and 5",
    publisher: "copy of a textbook",
    address: "http://what-when-how.com/Tutorial/topic-166581h5j/Agrochemical-and-Pesticide-Safety-128.html",
  },
  "Iowa groups 2016": { title: "Herbicide program development: using effective herbicide groups", publisher: iowaState, year: "2016" },

  // Hybrids
  "Student 1908": {
    title: "The probable error of a mean, Biometrika 6; results as R's documentation of t.test prints them for the data set sleep, paired",
    standing: "from memory",
  },
  "hybrid moisture": { title: "Expected harvest moisture in corn seed selection", publisher: "farm press, North Dakota" },
  "Minnesota elevator 2023": {
    title: "Discount Schedule",
    publisher: "farmers elevator, Minnesota",
    year: "2023",
    address: "https://www.fsemn.com/index.cfm?show=10&mid=9",
  },

  // Units
  "Hong Kong appendices": {
    title: "Appendices, part 5 of a text in a Hong Kong collection whose title its page does not show",
    address: "https://hkintexts.histsyn.com/page/1733983",
  },
});

/** A source that its data file has in words: its title up to the first comma is what the page calls it. */
export const sourceSaid = (words: string): Source => ({ id: words.split(",")[0]!, title: words });
