/**
 * Published yield of corn by planting date and stand, percent of the best, digits as printed. Which to use is for the
 * grower and the adviser to say; the one in use is named on every page.
 */
import { standTable, window } from "./standTableData";

/** Complete and finely stepped; the replant tables of Ohio and Pennsylvania print the same numbers. */
export const centralCornBelt = standTable({
  name: "Corn, central Corn Belt (Purdue 2012)", crop: "corn", region: "Indiana, Illinois, Ohio, southern Iowa, Missouri, Pennsylvania",
  source: {
    title: "Expected grain yield due to various planting dates and final plant populations (Pest & Crop newsletter, 2012 issue 15, table 1; after J. Prod. Agric. 7:59-62, 1994)",
    publisher: "Purdue University Extension", year: "2012", address: "http://extension.entm.purdue.edu/pestcrop/2012/issue15/table1.html", where: "table 1",
  },
  limits: [
    "Dates after 25 May are an extrapolation by the source.",
    "It holds above about 125 bu/ac; below about 100 bu/ac there is little response above about 24,000 plants per acre.",
    "It rests on one study of 1994.",
  ],
  dates: ["04-10", "04-15", "04-20", "04-25", "04-30", "05-05", "05-10", "05-15", "05-20", "05-25", "05-30", "06-04", "06-09"],
  stands: ["10000", "12000", "14000", "16000", "18000", "20000", "22000", "24000", "26000", "28000", "30000", "32000", "34000", "36000"],
  percent: [
    ["62", "68", "73", "78", "82", "85", "88", "91", "92", "93", "94", "94", "93", "91"],
    ["65", "71", "76", "81", "85", "88", "91", "94", "95", "96", "97", "96", "96", "94"],
    ["67", "73", "78", "83", "87", "90", "93", "96", "97", "98", "99", "98", "98", "96"],
    ["68", "74", "79", "84", "88", "92", "94", "97", "98", "99", "100", "100", "99", "97"],
    ["68", "74", "79", "84", "88", "92", "95", "97", "99", "100", "100", "100", "99", "97"],
    ["67", "73", "79", "83", "87", "91", "94", "96", "98", "99", "99", "99", "98", "97"],
    ["65", "71", "77", "82", "86", "89", "92", "94", "96", "97", "97", "97", "96", "95"],
    ["63", "69", "74", "79", "83", "87", "89", "92", "93", "94", "95", "95", "94", "92"],
    ["59", "65", "71", "75", "80", "83", "86", "88", "90", "91", "91", "91", "90", "89"],
    ["55", "61", "66", "71", "75", "79", "81", "84", "85", "86", "87", "87", "86", "84"],
    ["49", "55", "61", "65", "70", "73", "76", "78", "80", "81", "81", "81", "80", "79"],
    ["43", "49", "54", "59", "63", "67", "70", "72", "74", "75", "75", "75", "74", "73"],
    ["36", "42", "47", "52", "56", "60", "62", "65", "66", "67", "68", "68", "67", "65"],
  ],
});

/** Kinder to thin stands and harder on late dates than the table of 2001; only a part of it could be read. */
export const iowa2010 = standTable({
  name: "Corn, Iowa (Iowa State 2010, part)", crop: "corn", region: "Iowa",
  source: { title: "Stand Evaluations (East-Central and Southeast Iowa Crop Information, 3 May 2010)", publisher: "Iowa State University Extension", year: "2010", address: "http://www.extension.iastate.edu/Pages/eccrops/jfcu100503.html", where: "table; the rows below 25,000 plants were not readable" },
  limits: ["Only a part of the table could be read: nothing below 25,000 plants per acre.", "Planting windows have one value all through; a day on which two meet has the earlier one's."],
  dates: [window("04-20", "05-05"), window("05-05", "05-15"), window("05-15", "05-25"), window("05-25", "06-05"), window("06-05", "06-15")],
  stands: ["25000", "30000", "35000"],
  percent: [
    ["95", "99", "100"],
    ["91", "95", "96"],
    ["83", "86", "87"],
    [null, "69", "70"],
    [null, "53", "54"],
  ],
});

/** For comparison: hard on 20,000 plants and soft on late dates. */
export const iowa2001 = standTable({
  name: "Corn, Iowa (Iowa State PM 1885, 2001)", crop: "corn", region: "Iowa",
  source: { title: "Corn Planting Guide (PM 1885) table, as printed in East-Central and Southeast Iowa Crop Information, 24 May 2004", publisher: "Iowa State University Extension", year: "2004", address: "http://www.extension.iastate.edu/Pages/eccrops/cu040524.html", where: "table" },
  limits: ["An older table, replaced by its publisher in 2010.", "Between its planting windows we read by straight lines.", "A further 2 % is lost to small gaps of 1 to 3 ft, 4 to 6 % to many gaps of 4 to 6 ft (same source)."],
  dates: [window("04-20", "05-05"), window("05-13", "05-19"), window("05-26", "06-01"), window("06-10", "06-16"), window("06-24", "06-28")],
  stands: ["12000", "16000", "20000", "24000", window("28000", "32000")],
  percent: [
    ["68", "74", "81", "94", "100"],
    ["67", "73", "80", "93", "99"],
    ["61", "67", "73", "85", "90"],
    ["46", "50", "55", "64", "68"],
    ["35", "38", "42", "49", "52"],
  ],
});

/** A reprint of the Iowa table that differs in one cell. */
export const nebraska2009 = standTable({
  name: "Corn, Nebraska (reprint of Iowa State 2001)", crop: "corn", region: "Nebraska",
  source: { title: "Evaluating Corn Stands (CropWatch, 22 May 2009)", publisher: "University of Nebraska-Lincoln Extension", year: "2009", address: "https://cropwatch.unl.edu/evaluating-corn-stands", where: "table 2" },
  limits: ["Prints 96 where Iowa's own copies have 99 (full stand, 13 to 19 May); the rest of the column fits 99.", "The source says that it may overstate late dates, and advises 10 % off the yield of a reseeded area.", "On rainfed land under about 115 bu/ac thinner stands yielded no less."],
  dates: [window("04-20", "05-05"), window("05-13", "05-19"), window("05-26", "06-01"), window("06-10", "06-16"), window("06-24", "06-28")],
  stands: ["12000", "16000", "20000", "24000", window("28000", "32000")],
  percent: [
    ["68", "74", "81", "94", "100"],
    ["67", "73", "80", "93", "96"],
    ["61", "67", "73", "85", "90"],
    ["46", "50", "55", "64", "68"],
    ["35", "38", "42", "49", "52"],
  ],
});

export const wisconsinFullSeason = standTable({
  name: "Corn, southern Wisconsin, full-season hybrid (2003, part)", crop: "corn", region: "south and south-central Wisconsin, 95 to 115 days",
  source: { title: "Evaluation of Corn Stands (Wisconsin Crop Manager 10(7):56-57)", publisher: "University of Wisconsin Extension", year: "2003", address: "https://corn.agronomy.wisc.edu/WCM/W120.aspx", where: "first table; rows below 32,000 plants were not readable" },
  limits: ["Only a part of the table could be read: 32,000 to 36,000 plants per acre.", "From about 20 May the short-season hybrid yields more."],
  dates: ["04-20", "05-01", "05-10", "05-20", "06-01", "06-10", "06-20"],
  stands: ["32000", "34000", "36000"],
  percent: [
    ["97", "97", "96"],
    ["100", "100", "99"],
    ["96", "96", "95"],
    ["86", "85", "85"],
    ["63", "63", "63"],
    ["40", "40", "40"],
    ["8", "8", "8"],
  ],
});

export const wisconsinShortSeason = standTable({
  name: "Corn, southern Wisconsin, short-season hybrid (2003, part)", crop: "corn", region: "south and south-central Wisconsin, 95 to 115 days",
  source: { title: "Evaluation of Corn Stands (Wisconsin Crop Manager 10(7):56-57)", publisher: "University of Wisconsin Extension", year: "2003", address: "https://corn.agronomy.wisc.edu/WCM/W120.aspx", where: "first table; rows below 32,000 plants were not readable" },
  limits: ["Only a part of the table could be read: 32,000 to 36,000 plants per acre.", "From about 20 May the short-season hybrid yields more."],
  dates: ["04-20", "05-01", "05-10", "05-20", "06-01", "06-10", "06-20"],
  stands: ["32000", "34000", "36000"],
  percent: [
    ["92", "92", "91"],
    ["96", "96", "95"],
    ["94", "94", "93"],
    ["87", "87", "87"],
    ["72", "72", "71"],
    ["56", "56", "55"],
    ["32", "32", "32"],
  ],
});

export const northernMissouri = standTable({
  name: "Corn, northern Missouri, by date only (2013)", crop: "corn", region: "northern Missouri",
  source: { title: "MU Extension evaluates corn replanting", publisher: "University of Missouri Extension, in Bowling Green Times", year: "2013", address: "http://www.bowlinggreentimes.com/mu-extension-evaluates-corn-replanting/", where: "text" },
  limits: ["Four years of trials to 2011.", "It says nothing of the stand: its percentages are for a normal one."],
  dates: ["05-11", "05-16", "05-21", "05-31", "06-05"],
  stands: null,
  percent: [
    ["89"],
    ["86"],
    ["83"],
    ["77"],
    ["75"],
  ],
});
