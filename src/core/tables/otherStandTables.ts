/** Published yield of soybeans and winter wheat by stand or by planting date, percent of the best. */
import { standTable, window } from "./standTableData";

const penn = { title: "Soybean Replanting Decisions", publisher: "Penn State Extension, Lebanon County", year: "2012", address: "http://cmegicmlebanon.blogspot.com/2012/05/soybean-replanting-decisions.html" };
const ohio = {
  title: "Soybean replant decisions", publisher: "Ohio State University Extension, in Times Bulletin", year: "year not printed",
  address: "http://www.timesbulletin.com/Content/News/News/Article/Soybean-replant-decisions/2/4/188338", where: "text",
};

export const soybeanDates = standTable({
  name: "Soybeans, Pennsylvania, by date only (2012)", crop: "soybeans", region: "Pennsylvania", source: { ...penn, where: "list" },
  limits: ["It says nothing of the stand."],
  dates: ["05-10", "05-20", "05-30", "06-10", "06-20"], stands: null,
  percent: [["100"], ["98"], ["95"], ["88"], ["76"]],
});

const soybeanLimit = "The source prints 13 to 15 % less for 50,000 to 55,000 plants; 86 is our middle of it. Between the windows we read by straight lines.";
/** The fullest stand of the Purdue trials that Penn State quotes: 66 bu at 46,000 plants against 79 bu at 171,000. */
const fullestSoybeans = "171000";
const extended = "Full yield up to 171,000 plants, the fullest stand in trials that Penn State quotes (2012), is our extension.";

export const soybeanNarrowRows = standTable({
  name: "Soybeans, Ohio, rows of 7.5 to 15 in, by stand only", crop: "soybeans", region: "Ohio", source: ohio,
  limits: [soybeanLimit, extended, "It says nothing of the date: it is for planting by the middle of May."],
  dates: null, stands: [window("50000", "55000"), window("100000", fullestSoybeans)], percent: [["86", "100"]],
});

export const soybeanWideRows = standTable({
  name: "Soybeans, Ohio, rows of 30 in, by stand only", crop: "soybeans", region: "Ohio", source: ohio,
  limits: [soybeanLimit, extended, "It says nothing of the date: it is for planting by the middle of May."],
  dates: null, stands: [window("50000", "55000"), window("80000", fullestSoybeans)], percent: [["86", "100"]],
});

export const wheatOntario = standTable({
  name: "Winter wheat, Ontario, by stand only (2012)", crop: "wheat", region: "Ontario (Ridgetown 1986-90)", standUnit: "plants per metre of row",
  source: {
    title: "Evaluating Winter Wheat Plant Stands (Field Crop News)", publisher: "Ontario Ministry of Agriculture, Food and Rural Affairs", year: "2012",
    address: "http://fieldcropnews.com/2012/03/evaluating-winter-wheat-plant-stands/", where: "table 1",
  },
  limits: ["Counted in plants per metre of row, so that the row width of the field must be known."],
  dates: null, stands: ["16", "20", "23", "33", "66"], percent: [["80", "85", "90", "95", "100"]],
});

export const wheatPennsylvania = standTable({
  name: "Winter wheat, Pennsylvania, by stand only", crop: "wheat", region: "Pennsylvania", standUnit: "plants per square foot",
  source: { title: "Wheat Stand Assessment", publisher: "Penn State Extension", year: "year not printed", address: "https://extension.psu.edu/wheat-stand-assessment", where: "table" },
  limits: ["The source prints ranges (60-70, 75-80, 90-95 %); the values here are our middles of them."],
  dates: null,
  stands: [window("12", "14"), window("15", "18"), window("18", "21"), window("22", "28"), window("30", "35")],
  percent: [["65", "77.5", "92.5", "100", "100"]],
});
