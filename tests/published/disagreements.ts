/**
 * Where a published figure and ours differ, figure by figure: what the source prints, what we get at its digits, and the likely
 * reason. None of them is made to pass by a wider tolerance. docs/checks.md shows each with the range that rounding in print leaves.
 */

/** What kind of reason it is; those in the first line are held by the tests, the others are judged by the reader. */
export type Why =
  | "rounding in print"
  | "cut"
  | "rounded up"
  | "rounded to ten"
  | "misprint"
  | "coefficients of more digits"
  | "rounded on the way"
  | "another method"
  | "another table";

type Pair = readonly [prints: string, ours: string];
type Disagreement = { readonly source: string; readonly figures: readonly Pair[]; readonly why: Why; readonly reason: string };

const of = (source: string, why: Why, reason: string, ...figures: readonly Pair[]): Disagreement => ({ source, figures, why, reason });
const rounded = (source: string, reason: string, ...figures: readonly Pair[]): Disagreement =>
  of(source, "rounding in print", reason, ...figures);

const line = "averages rounded line by line";
const lines = "lines rounded to the cent";
const unrounded = "totals come from unrounded lines";

export const disagreements: readonly Disagreement[] = [
  of(
    "PM 710 table 1a",
    "coefficients of more digits",
    "the table's coefficients had more digits than the four we have",
    ["24", "23"],
    ["27", "26"],
  ),
  of("Ontario repairs", "rounded on the way", "read off a curve, it seems; its 25 % at 6,000 h agrees", ["6.2", "6.3"]),
  of(
    "Growing Produce",
    "another method",
    "the article applies the factor to the price paid; PM 710 and the standard to the list price, as we do",
    ["27,750", "29600"],
  ),
  rounded("Maryland ENCE420", "factors of four digits; the two yearly parts agree to the dollar", ["26.354", "26.358"]),
  of("Tennessee 2011", "rounded up", "another source prints 26 ft 1 in", ["314", "313.6"]),
  of("Ohio soybean replant", "rounded up", "to the inch", ["837", "836.4"]),
  of("list of hoop factors", "rounded on the way", "a rounded area", ["6165", "6162"]),
  of("list of hoop factors", "cut", "the others of the list are rounded", ["13865", "13866"]),
  of("Farm Progress soybeans", "rounded on the way", "the guide appears to use 8,900 a plant", ["107,000", "106488"]),
  of("Kentucky wheat", "misprint", "every other cell agrees", ["150", "152"]),
  of("North Dakota seeding", "rounded to ten", "where ours is 108.98", ["110", "109"]),
  of("Crop Chatter flax", "another method", "the rule divides by 10 where 10.41 is exact", ["43", "40.9"]),
  of("Michigan State 2011", "rounded up", "from 1.228", ["1.3", "1.23"]),
  of("Penn State 29 May", "another method", "the source takes the nearest row, we read between two", ["81", "82.2"]),
  of("Nebraska 2009", "misprint", "a slip in the reprint; both tables are kept as printed", ["96", "99"]),
  of(
    "Minnesota stands",
    "another table",
    "another place and another trial: the table in use is named on every page",
    ["88", "95"],
    ["88", "91"],
  ),
  of("No-Till Farmer 8919", "misprint", "20 ÷ 3.50 is 5.7", ["5.1", "5.7"]),
  of("Southeast Farm Press", "misprint", "in the closing sentence; its net of -4,500 agrees with 152,500", ["152,000", "152500"]),
  of("accounting problem", "misprint", "does not follow from the problem's own factor, which gives -927.40", ["-1,197.40", "-923.15"]),
  of(
    "textbook paybacks",
    "another method",
    "a straight line in the last year; a change shows the closed form",
    ["8.09", "8.085"],
    ["8.17", "8.160"],
  ),
  rounded("B01 barley on cash rent 2002", "the price is printed as 3.00; the product return of 138.37 over 46.07 bu is 3.0035", [
    "162.32",
    "162.16",
  ]),
  rounded("B01 barley on cash rent 2002", "averages rounded line by line: 18 lines to the cent", ["157.44", "157.43"]),
  rounded("B01 barley on cash rent 2002", "price and lines are rounded", ["30.99", "30.83"], ["4.88", "4.73"], ["-8.29", "-8.43"]),
  rounded("B01 barley on cash rent 2002 with government payments", "price and lines are rounded", ["4.83", "4.69"]),
  rounded("B02 soybeans on share rent 2004", "price, yield and the share of 66.7 % are rounded", ["134.42", "134.53"]),
  rounded("B02 soybeans on share rent 2004", line, ["91.21", "91.22"], ["33.65", "33.64"], ["124.85", "124.86"]),
  rounded("B02 soybeans on share rent 2004", "price and lines are rounded", ["43.22", "43.31"], ["9.57", "9.67"], ["-12.58", "-12.49"]),
  rounded("B02 soybeans on share rent 2004 with government payments", "price and lines are rounded", ["-3.44", "-3.35"]),
  rounded("B03 soybeans on owned land 2000, all farms", "the price is rounded", ["182.02", "181.98"]),
  rounded("B03 soybeans on owned land 2000, all farms", line, ["71.80", "71.81"], ["82.83", "82.82"]),
  rounded(
    "B03 soybeans on owned land 2000, all farms",
    "price and lines are rounded",
    ["110.22", "110.17"],
    ["27.38", "27.35"],
    ["11.86", "11.82"],
  ),
  rounded("B03 soybeans on owned land 2000, all farms with government payments", "price and lines are rounded", ["39.81", "39.77"]),
  rounded("B03 soybeans on owned land 2000, low fifth", "the price is rounded", ["172.34", "172.27"]),
  rounded("B03 soybeans on owned land 2000, low fifth", line, ["81.84", "81.86"], ["187.92", "187.95"]),
  rounded(
    "B03 soybeans on owned land 2000, low fifth",
    "price and lines are rounded",
    ["90.51", "90.41"],
    ["-15.58", "-15.68"],
    ["-30.35", "-30.44"],
  ),
  rounded("B03 soybeans on owned land 2000, low fifth with government payments", "price and lines are rounded", ["-1.98", "-2.07"]),
  rounded("B03 soybeans on owned land 2000, high fifth", "the price is rounded", ["217.85", "217.87"]),
  rounded("B03 soybeans on owned land 2000, high fifth", line, ["58.00", "57.99"], ["55.04", "55.05"], ["113.03", "113.04"]),
  rounded(
    "B03 soybeans on owned land 2000, high fifth",
    "price and lines are rounded",
    ["159.85", "159.88"],
    ["104.81", "104.83"],
    ["84.49", "84.50"],
  ),
  rounded("B03 soybeans on owned land 2000, high fifth with government payments", "price and lines are rounded", ["111.16", "111.17"]),
  rounded(
    "B05 soybeans in Iowa 2007",
    "lines rounded to the cent; the yield is printed to 0.01 t, worth up to 1.43",
    ["417.45", "417.44"],
    ["73.27", "73.26"],
    ["597.78", "597.77"],
    ["1190.66", "1191.87"],
    ["592.88", "594.10"],
  ),
  rounded("B05 corn in Iowa 2008", "the yield is rounded, worth up to 0.94", ["2065.23", "2064.44"], ["1002.63", "1001.84"]),
  rounded(
    "B05 soybeans in Iowa 2009",
    "lines rounded; the yield is worth up to 1.85",
    ["666.21", "666.20"],
    ["855.48", "855.47"],
    ["1564.43", "1563.32"],
    ["708.94", "707.85"],
  ),
  rounded(
    "B05 soybeans in Iowa 2011",
    "lines rounded; the yield is worth up to 2.29",
    ["95.97", "95.98"],
    ["713.03", "713.04"],
    ["1788.16", "1789.52"],
    ["1075.13", "1076.48"],
  ),
  rounded(
    "B05 corn in Iowa 2012",
    "lines rounded; the yield is worth up to 1.31",
    ["974.51", "974.50"],
    ["1379.41", "1379.40"],
    ["2354.86", "2355.52"],
    ["975.45", "976.12"],
  ),
  rounded(
    "B05 soybeans in Iowa 2013",
    "lines rounded; the yield is worth up to 2.60",
    ["546.31", "546.32"],
    ["763.61", "763.62"],
    ["1081.24", "1079.73"],
    ["317.62", "316.11"],
  ),
  rounded("B05 soybeans in Iowa 2015", "the yield is rounded, worth up to 1.72", ["1156.45", "1156.61"], ["404.47", "404.64"]),
  of("B06 organic corn 1996", "misprint", "its parts are printed as 616.79 and 43.18; what is missing is the 40.78 of fixed machinery", [
    "619.19",
    "659.97",
  ]),
  rounded(
    "B07 dryland corn 2004",
    `${unrounded}; diesel prints 8.33 where 7.6489 gal at 1.09 are 8.34`,
    ["142.32", "142.30"],
    ["22.67", "22.70"],
    ["35.62", "35.61"],
    ["-37.94", "-37.91"],
  ),
  rounded(
    "B08 wheat 2002",
    `${unrounded}; 2.9441 gal at 1.28 are 3.77`,
    ["3.78", "3.77"],
    ["61.73", "61.72"],
    ["0.76", "0.78"],
    ["-39.65", "-39.63"],
  ),
  rounded(
    "B09 irrigated wheat with grazing 2013",
    `${unrounded}; repairs of irrigation print 69.35 where 17.5 at 3.96 are 69.30`,
    ["431.65", "431.58"],
    ["192.34", "192.42"],
    ["39.36", "39.35"],
    ["471.01", "470.93"],
    ["152.98", "153.07"],
  ),
  rounded(
    "B11 wheat with grazing 2016",
    "acres × a cost of an acre with more digits than its 211.74",
    ["33877.68", "33878.40"],
    ["-12597.68", "-12598.40"],
  ),
  rounded("B15 azuki beans 2010-11", lines, ["1760.61", "1760.62"], ["832.59", "832.58"]),
  rounded(
    "B16 winter crops 2017-18",
    "yields are rounded to 0.1 t, worth up to 7 (rape 16); the margins do not follow from the printed outputs",
    ["757", "753"],
    ["590", "588"],
    ["757", "754"],
    ["575", "573"],
    ["667", "668"],
  ),
  rounded("B16 winter crops 2017-18", "the yield is rounded, worth up to 5.75, and 7.3 t at 115 are 839.5", ["834", "840"]),
  of(
    "B16 winter crops 2017-18",
    "misprint",
    "printed output less printed cost is 759, 463 and 542: a premium or a misprint",
    ["819", "759"],
    ["523", "469"],
    ["555", "542"],
  ),
  of("I06", "rounded on the way", "the source cuts the average to 18.52; we carry value and quantity", ["518.56", "518.82"]),
  rounded("I08", "the price of a unit is printed to the dollar", ["113.50", "113.48"]),
  of("G01", "cut", "the other rows are rounded", ["57.70", "57.71"], ["60.66", "60.67"], ["63.51", "63.52"]),
  of("G02", "misprint", "60 × 87 ÷ 81", ["64.64", "64.44"]),
  of("G04", "misprint", "100 ÷ 89; every other row agrees", ["1.13", "1.12"]),
  of("G06", "another method", "the page adds moisture to the dry matter; on the wet basis 8,000 lb of it are 84.5 %", ["9240", "9467"]),
  of(
    "Slow-maturing corn may be slow to dry",
    "another method",
    "dated moistures of one year; Iowa's points a week for October are a mean",
    ["23.4", "21.4"],
  ),
  of(
    "High-moisture corn again expected at harvest",
    "another method",
    "its own 2.5 and 1 points a week give what we get",
    ["27", "27.5"],
    ["22", "23.2"],
  ),
];

/** Figures that were read and that nothing of ours can be held against. */
export const notCompared: readonly string[] = [
  "PM 710, capital recovery of the 180 hp tractor: not readable in the copy; a four-digit factor gives 7,833, which is what the bulletin " +
    "prints from memory, and ours is 7,835.54 a year.",
  "Texas, remaining value 0.68 × 0.92^n, 0.38 of list at 7 years: an older form of the curve, which we do not offer.",
];

/**
 * The reason for a disagreement.
 *
 * @throws Error where none is listed for just this figure of this source
 */
export function reasonOf(source: string, prints: string, ours: string): Disagreement {
  const found = disagreements.find(
    (each) => each.source === source && each.figures.some(([printed, got]) => printed === prints && got === ours),
  );
  if (found === undefined) throw new Error(`no disagreement is listed for ${source}: ${prints} printed, ${ours} ours`);
  return found;
}
