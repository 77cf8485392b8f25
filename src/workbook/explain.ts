/** The words for each problem: one sentence on what is wrong, one on what to do. */
import { cellOf, type Places } from "./cellName";
import { placeWords } from "./placeWords";
import { gradeOf, type Place, type Problem, type ProblemCode } from "./problem";

export type Explanation = { readonly what: string; readonly remedy: string };

/** One sentence on what is wrong and one on what to do. */
export const explain = (problem: Problem): Explanation => explanations[problem.code](problem);

/** A problem as plain data for other programs. */
export function describe(problem: Problem) {
  return {
    code: problem.code,
    grade: gradeOf(problem),
    ...placeData(problem.at),
    found: problem.found,
    other: problem.other === undefined ? null : placeData(problem.other),
    ...explain(problem),
  };
}

const placeData = ({ table, row, column }: Place) => ({ table, row: row ?? null, column: column ?? null });

/** What is wrong and where, for a page without links: "Purchases, entry 3, Unit (D4) is blank." */
export function placed(problem: Problem, places: Places): string {
  const { what } = explain(problem);
  const place = placeWords(problem.at);
  const cell = cellOf(places, problem.at);
  const after = what.startsWith(place) ? what.slice(place.length) : `: ${what}`;
  const { other } = problem;
  const otherCell = other === undefined ? "" : cellOf(places, other);
  const named = other === undefined || otherCell === "" ? after : after.replace(placeWords(other), `${placeWords(other)} (${otherCell})`);
  return `${place}${cell === "" ? "" : ` (${cell})`}${named}`;
}

const cell = (problem: Problem): string => placeWords(problem.at);
/** The other of two places, in words. */
const second = ({ other }: Problem): string => (other === undefined ? "another entry" : placeWords(other));
const quoted = (text: string): string => `"${text.length > 40 ? `${text.slice(0, 39)}…` : text}"`;
const shortened = (text: string): string => (text.length > 60 ? `${text.slice(0, 59)}…` : text);
const choose = ({ choices = [] }: Problem): string =>
  choices.length === 0 ? "Enter another value." : `Use one of: ${choices.join(", ")}.`;
const meant = ({ like }: Problem): string => (like === undefined ? "" : ` Did you mean ${quoted(like)}?`);

/** The tables that have the names of a column: "table Items"; "tables Fields and Crops" of a column that takes either. */
function tablesOfNames({ column = "" }: Place): string {
  const table = { Item: "Items", Field: "Fields", Crop: "Crops", Machine: "Machines" }[column];
  return table === undefined ? "tables Fields and Crops" : `table ${table}`;
}

const explanations: Record<ProblemCode, (problem: Problem) => Explanation> = {
  "table-missing": ({ at }) => ({
    what: `There is no table named ${at.table}.`,
    remedy: "Make it from the pane, name your own table so, or match a range of yours to it.",
  }),
  "column-missing": ({ at }) => ({
    what: `The table ${at.table} has no column ${at.column}.`,
    remedy: "Add a column with this heading; the order of columns is free.",
  }),
  "column-unread": (problem) => ({
    what: `The table ${problem.at.table} has a column ${quoted(problem.found)}, which is not read.${meant(problem)}`,
    remedy: "Correct the heading, or give a column of your own a name that is less like ours.",
  }),
  "column-twice": ({ at, found, like }) => ({
    what: `The table ${at.table} has more than one column that reads as ${like ?? found}; ${quoted(found)} is ignored.`,
    remedy: "Rename or delete one of them.",
  }),
  "table-twice": ({ at, found }) => ({
    what: `More than one table or range stands for ${at.table}; ${quoted(found)} is ignored.`,
    remedy: "Rename, join or unmatch one of them.",
  }),
  "table-unreadable": ({ at, found }) => ({
    what: `The table ${at.table} could not be read. ${found}`,
    remedy: "Set that right, or move the table's cells to a new table; all else was read.",
  }),
  "range-missing": (problem) => ({
    what: `${cell(problem)}: the workbook has no range ${quoted(problem.found)}.`,
    remedy: "Match the range again, or correct its address.",
  }),
  "match-missing": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is not there, so this match has no effect.${meant(problem)}`,
    remedy: "Match the range again, or correct the heading.",
  }),
  "wide-column-unsaid": (problem) => ({
    what:
      `${cell(problem)}: the column ${quoted(problem.found)} of that range holds numbers, and nothing says what they are; they are ` +
      "not counted.",
    remedy: `Add a row to Matches that gives the heading its kind of cost, or the words left out.`,
  }),
  "rows-below": (problem) => ({
    what:
      `${cell(problem)}: ${problem.found === "1" ? "an entry stands" : `${problem.found} entries stand, the first`} ` +
      `${problem.like ?? "right under"} the last entry of ${problem.at.table}, ${problem.found === "1" ? "which is" : "which are"} ` +
      "not part of it and not counted.",
    remedy: "Take them in: drag the corner of the table (or the range in Matches) down over them, or delete them if they are no entries.",
  }),
  "rows-near": (problem) => ({
    what:
      `${cell(problem)}: ` +
      `${problem.found === "1" ? "a line with a number stands" : `${problem.found} lines with numbers stand, the first`} ` +
      `${problem.like ?? "right under"} the last entry of ${problem.at.table}, and nothing there is counted.`,
    remedy: "Nothing, if it is no entry; else drag the corner of the table down over it and fill it.",
  }),
  "table-almost": ({ at, found }) => ({
    what: `The workbook has no table ${at.table}, but one named ${quoted(found)}, which is not read.`,
    remedy: `Name it ${at.table.replaceAll(" ", "_")}, or match it to ${at.table} under Tables.`,
  }),
  "table-beside": ({ at, found }) => ({
    what: `The table ${quoted(found)} stands beside ${at.table} and is not read.`,
    remedy: `If its entries belong to this season, move them into ${at.table}; if not, another name settles it.`,
  }),
  "heading-unit": ({ at, found, like }) => ({
    what: `${at.table}: the heading ${quoted(found)} says ${like ?? "another unit"}.`,
    remedy: "Change the heading and its numbers to what the season counts in, or the setting Area unit.",
  }),
  "total-row": (problem) => ({
    what: `${cell(problem)}: this entry says ${quoted(problem.found)} and is left out, because it adds up others.`,
    remedy: "Delete it, or use a totals row of the table; if it is an entry, begin it with another word.",
  }),
  "sum-row": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is the sum of ${problem.like} other entries, so what they say seems to be counted twice.`,
    remedy:
      "Begin the entry with the word Total, or delete it, if it adds up others; if it is an entry of its own, move it between the others.",
  }),
  "sum-maybe": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is the sum of ${problem.like} other entries. It is counted as an entry of its own.`,
    remedy: "Nothing, if it is one; begin the entry with the word Total, or delete it, if it adds up others.",
  }),
  "sum-left": (problem) => ({
    what:
      `${cell(problem)}: the entry that begins with ${quoted(problem.found)} is left out, because its numbers add up those of ` +
      `${problem.like} others.`,
    remedy: "Nothing, if it is their total; if it is an entry of its own, move it above the others.",
  }),
  "value-differs": (problem) => ({
    what:
      `${cell(problem)}: the value that the file stores for this formula is not what it works out to. ${quoted(problem.found)} is ` +
      `counted, not ${quoted(problem.like ?? "")}.`,
    remedy: "Open and save the workbook in Excel, so that it is worked out there, or enter the value itself.",
  }),
  "example-row": (problem) => ({
    what: `${cell(problem)}: this entry came with the table (${quoted(problem.found)}) and is left out.`,
    remedy: "Delete it, or type your own over the whole of it.",
  }),
  "row-open": (problem) => ({
    what: `${cell(problem)} is being entered (${shortened(problem.found)}) and not counted yet.`,
    remedy: `${problem.like === "" ? "Fill what is still blank" : `Fill ${problem.like ?? "what is blank"}`}, or delete the entry.`,
  }),
  blank: (problem) => ({ what: `${cell(problem)} is blank.`, remedy: "Enter a value, or delete the entry." }),
  "formula-error": (problem) => ({
    what: `${cell(problem)} shows the error ${problem.found}.`,
    remedy: "Repair the formula of this cell.",
  }),
  "not-a-number": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is not a number.`,
    remedy: "Enter a number alone, without words.",
  }),
  "other-currency": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is in another currency than the workbook.`,
    remedy: "Enter what it came to in the workbook's currency, or set Currency in the table Season.",
  }),
  "number-beyond": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is beyond what money or a quantity can be.`,
    remedy: "Enter a number below 1,000,000,000,000,000, without a power of ten.",
  }),
  "decimal-comma": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} has a decimal comma.`,
    remedy: "Enter it with a point, or set Decimal comma to yes in the table Season.",
  }),
  negative: (problem) => ({ what: `${cell(problem)}: ${problem.found} is below zero.`, remedy: "Enter zero or more." }),
  "not-above-zero": (problem) => ({ what: `${cell(problem)}: ${problem.found} is not above zero.`, remedy: "Enter a number above zero." }),
  "not-a-date": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is not a date that we can read.`,
    remedy: "Enter a date, for instance 2031-05-14.",
  }),
  "not-in-list": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is not a word that we know here.${meant(problem)}`,
    remedy: choose(problem),
  }),
  "percent-range": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is not a share between 0 and 100 %.`,
    remedy: "Enter 60, 60% or 0.6 for sixty percent.",
  }),
  "rate-unclear": (problem) => ({
    what: `${cell(problem)}: ${problem.found} may be a part of one or percent.`,
    remedy: `Enter it with its sign: ${problem.found}% if it is less than one percent, else the percent that it stands for.`,
  }),
  "basis-area": (problem) => ({
    what:
      `${cell(problem)}: ${quoted(problem.found)} is not the area unit of this season. The money is counted per ` +
      `${problem.like ?? "area"}.`,
    remedy: `Enter per ${problem.like ?? "area"} with the money for one, or correct the setting Area unit.`,
  }),
  "unknown-name": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is not in the ${tablesOfNames(problem.at)}.${meant(problem)}`,
    remedy: "Correct the name, or add an entry for it there.",
  }),
  "duplicate-name": (problem) => ({
    what: `${cell(problem)}: the name ${quoted(problem.found)} is there already; only its first entry is read.`,
    remedy: "Give each entry a name of its own, or delete one.",
  }),
  "stale-value": (problem) => ({
    what:
      `${cell(problem)}: the formula could not be worked ` +
      `out${problem.found === "" ? ", so the cell counts as blank" : ` again, so ${quoted(problem.found)} may be old`}.`,
    remedy: "Open and save the workbook in Excel, or enter the value itself.",
  }),
  "unknown-unit": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is not a unit that we know.${meant(problem)}`,
    remedy: "Use the item's pack name, or a unit such as lb, ton, gal, fl oz, seeds, kg or L.",
  }),
  "ton-unclear": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} may be a tonne or a short ton here, beside a unit of pounds.`,
    remedy: "Enter t for tonnes of 1,000 kg, or short ton for 2,000 lb.",
  }),
  "unit-not-convertible": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} cannot be turned into ${problem.like ?? "the item's unit"}.`,
    remedy:
      "Use a unit of the same kind, or tell more of the item: its Pack size and Pack unit, or its Density to go between weight and volume.",
  }),
  "analysis-missing": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is a rate of a nutrient, and the item has no such nutrient in its analysis.`,
    remedy: "Enter the item's Analysis N-P-K, such as 46-0-0, or give the rate of the product.",
  }),
  "not-an-analysis": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is not an analysis.`,
    remedy: "Enter three numbers, such as 46-0-0, as text: Excel makes a date of some of them.",
  }),
  "target-missing": (problem) => ({
    what: `${cell(problem)} names neither a field nor a crop.`,
    remedy: "Enter a name from the table Fields or Crops.",
  }),
  "amount-missing": (problem) => ({ what: `${cell(problem)} has neither a unit price nor an amount.`, remedy: "Enter one of the two." }),
  "amount-disagrees": (problem) => ({
    what: `${cell(problem)}: the amount ${problem.found} is not quantity × unit price, which is ${problem.like}. The amount is used.`,
    remedy: "Correct one of the three, or leave the unit price or the amount blank.",
  }),
  "amount-sign": (problem) => ({
    what: `${cell(problem)}: the amount ${problem.found} is below nothing and the quantity is not, so that the line takes money off the cost.`,
    remedy: "Enter the amount without its minus. A return has a minus before its quantity.",
  }),
  "rebate-sign": (problem) => ({
    what: `${cell(problem)}: a rebate of ${problem.found} adds to the cost instead of taking it off.`,
    remedy: "Enter money given back without a minus. What came on top of the bill stands in Freight.",
  }),
  "rebate-beyond": (problem) => ({
    what: `${cell(problem)}: a rebate of ${problem.found} on a bill of ${problem.like}, so that the line takes money off the cost.`,
    remedy: "Look at both. A credit for other bills stands on an entry of its own, with a Note.",
  }),
  "pack-incomplete": (problem) => ({
    what: `${cell(problem)}: the pack needs a size and a unit.`,
    remedy: "Enter both Pack size and Pack unit, or neither.",
  }),
  "cost-missing": (problem) => ({
    what: `${cell(problem)} has neither a rate nor a machine.`,
    remedy: "Enter a rate and its basis, or name a machine.",
  }),
  "hours-missing": (problem) => ({
    what: `${cell(problem)} is paid by the hour and has no hours.`,
    remedy: "Enter the hours in a column Hours, or another basis.",
  }),
  "area-too-large": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is more than there is, ${problem.like}. It is counted as entered.`,
    remedy: "Correct the area, or enter several passes as passes.",
  }),
  "tenure-conflict": (problem) => ({
    what: `${cell(problem)}: ${problem.like}.`,
    remedy: "Correct the tenure, or clear the cell that does not belong to it.",
  }),
  "rent-missing": (problem) => ({
    what: `${cell(problem)}: the field is rented for cash and no rent is entered, so its land costs nothing yet.`,
    remedy: "Enter Rent per acre; 0 if it is free.",
  }),
  "rent-terms-missing": (problem) => ({
    what: `${cell(problem)}: the field is on flexible rent and this is not entered, so only its base rent is counted.`,
    remedy: "Enter Base gross per acre and Share above base %, or the tenure cash rent.",
  }),
  "most-rent-low": (problem) => ({
    what: `${cell(problem)}: the most rent, ${problem.found}, is below the base rent of ${problem.like}, which counts alone.`,
    remedy: "Enter the most that is paid in all, the base included, or clear it.",
  }),
  "flexible-rent-one-crop": (problem) => ({
    what: `${cell(problem)}: two crops grow on this land, and its flexible rent goes by ${problem.like} alone.`,
    remedy: "If the lease counts both crops, lower the base gross by what the other one brings.",
  }),
  "share-missing": (problem) => ({
    what: `${cell(problem)}: the field is on crop share and has no share. All of the crop is counted as the operator's.`,
    remedy: "Enter the operator's share of the crop.",
  }),
  "same-land": (problem) => ({
    what: `${cell(problem)}: ${problem.like}.`,
    remedy: "Name the field whose acres this crop uses a second time, and enter the rent or land charge on one of the two.",
  }),
  "weight-missing": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} cannot be turned into the crop's yield unit.`,
    remedy: "Enter Weight per bu in the table Crops, or the quantity in the yield unit.",
  }),
  "place-missing": (problem) => ({
    what: `${cell(problem)} has neither a length of row with its row width nor a hoop.`,
    remedy: "Enter Length and Row width, or Hoop diameter.",
  }),
  "part-unnamed": (problem) => ({
    what: `${cell(problem)} is blank, and the entry says acres or planting of a part (${problem.found}), which count for none.`,
    remedy: "Name the part, or clear its acres and date.",
  }),
  "part-acres-missing": (problem) => ({
    what: `${cell(problem)}: the part ${quoted(problem.found)} has no acres. Its spots are taken with those that name no part.`,
    remedy: "Enter the acres of the whole part at one of its spots.",
  }),
  "part-disagrees": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is not what ${second(problem)} says of the same part, ${problem.like}, which counts.`,
    remedy: "Correct one, or leave it blank: the newest entry that says it suffices.",
  }),
  "parts-exceed": (problem) => ({
    what: `${cell(problem)}: the parts of the field add up to ${problem.found}, and it has ${problem.like}. They weigh by what they say.`,
    remedy: "Correct Part acres, or the field's Acres; spots of a part that is no longer counted apart need its name taken out.",
  }),
  "part-needed": (problem) => ({
    what: `${cell(problem)} is blank, and parts that have a name take up all of ${problem.found}: the spot counts for no acre.`,
    remedy: "Name the part in which it lies, or correct Part acres.",
  }),
  "part-unsaid": (problem) => ({
    what:
      `${cell(problem)} is blank, and the spot was counted on ${problem.found}, after all parts of the field that have a name ` +
      `(${problem.like}). It counts for the acres outside of them.`,
    remedy: "Nothing, if it lies there; if the whole field was counted anew, give each spot the part in which it lies.",
  }),
  "counted-before-planting": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is before the planting on ${problem.like}. Counts of a stand that is gone do not count.`,
    remedy: "Nothing, if it was planted again since; else correct the date, or the planted date.",
  }),
  "coordinate-alone": (problem) => ({
    what: `${cell(problem)} is blank, and ${problem.like} is not, so the spot is not on the map.`,
    remedy: "Enter both, or neither.",
  }),
  "coordinates-impossible": (problem) => ({
    what: `${cell(problem)}: no field lies at ${problem.found}, so the spot is not on the map.`,
    remedy: "Latitude runs from -75 to 75 where crops grow, longitude from -180 to 180; 0 and 0 is a phone that had no fix.",
  }),
  "coordinates-swapped": (problem) => ({
    what: `${cell(problem)}: ${problem.found} looks like latitude and longitude the wrong way round, so the spot is not on the map.`,
    remedy: "Enter the degrees north under Latitude, and those east (below zero: west) under Longitude.",
  }),
  "coordinates-far": (problem) => ({
    what: `${cell(problem)}: the spot lies ${problem.found} from the middle of the other spots of ${problem.like}.`,
    remedy: "Nothing, if the field is so long; else correct its latitude and longitude, or the field.",
  }),
  "coordinates-east": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is in the eastern half of the globe, so west and east of the field are the wrong way round.`,
    remedy: "Enter longitudes of North America below zero: -93.62, not 93.62.",
  }),
  "payment-missing": (problem) => ({
    what: `${cell(problem)}: a term loan needs its payment and the next due date.`,
    remedy: "Enter Payment and Next due; until then its interest of the year counts, and no principal.",
  }),
  "payment-low": (problem) => ({
    what: `${cell(problem)}: ${problem.found} does not cover the interest, so the balance grows by ${problem.like} in the year.`,
    remedy: "Nothing, if the loan is paid so; else correct Payment, Rate or Payments a year.",
  }),
  "payment-unread": (problem) => ({
    what:
      `${cell(problem)}: ${problem.found} is entered on an operating loan, which is paid back as money comes in: its payments and ` +
      "their days are not counted.",
    remedy: "Clear them; the day of repayment is the setting Repayment date. Make it a term loan if it is paid off by the year.",
  }),
  "first-due-late": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is after the next payment, ${problem.like}.`,
    remedy: "Correct First due or Next due; until then Next due counts.",
  }),
  "crop-unplanted": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} grows in no field. ${problem.like ?? ""} in no figure of a crop.`,
    remedy:
      "Enter the crop's fields in the table Fields, or correct the name; a sale of older grain takes its year in the column Crop year.",
  }),
  "sizes-incomplete": (problem) => ({
    what: `${cell(problem)} is blank beside a measured size, so nothing says how far the part is worn.`,
    remedy: "Enter its size when new and the size at which it is replaced; the operator's manual has both.",
  }),
  "no-wear": (problem) => ({
    what: `${cell(problem)}: the part is replaced at the size that it has when new.`,
    remedy: "Correct one of the two sizes.",
  }),
  "part-unpriced": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is needed and has no price, so it counts as nothing in the repair.`,
    remedy: "Enter its plan price in Items, or its bill in Purchases.",
  }),
  "wage-missing": (problem) => ({
    what: `${cell(problem)}: ${problem.found} h have no wage, so they count as nothing in the repair.`,
    remedy: "Enter the setting Labour per hour in the table Season.",
  }),
  "beyond-new": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is a size that the part does not even have when new.`,
    remedy: "Correct it, unless a larger part was fitted: then correct New as well.",
  }),
  "part-twice": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} of this row is looked at twice, and both count: the first is entry ${problem.like!}.`,
    remedy: "Fill Done on at the older one, or delete it, so that its repair counts once.",
  }),
  "finding-unlike": (problem) => ({
    what: `${cell(problem)} says ${quoted(problem.found)}, but the part is worn to the size at which it is replaced, so it counts as due.`,
    remedy: "Correct the size or the finding; this one settles it: replace.",
  }),
  "quantity-missing": (problem) => ({
    what: `${cell(problem)} is blank, so the change cannot be added up.`,
    remedy: "Enter how many; 1 where the price is the whole amount.",
  }),
  "price-missing": (problem) => ({
    what: `${cell(problem)} is blank, so the change cannot be added up.`,
    remedy: "Enter the money for one unit. Grain that is counted in its yield unit needs none where the change names its crop.",
  }),
  "years-on-yearly": (problem) => ({
    what: `${cell(problem)}: a cost or return of every year cannot be kept ${problem.found} years. The years are ignored.`,
    remedy: "Clear Years kept, or set Basis to lump sum.",
  }),
  "salvage-unused": (problem) => ({
    what: `${cell(problem)}: the line has a salvage value and no years. The ${problem.found} are ignored.`,
    remedy: "Enter Years kept, or clear Salvage.",
  }),
  "change-disagrees": (problem) => ({
    what:
      `${cell(problem)}: ${quoted(problem.found)} is not what another line of the same change says, ${quoted(problem.like ?? "")}. ` +
      "The first is used.",
    remedy: "Enter the same on every line of a change, or on its first line alone.",
  }),
  "rate-missing": (problem) => ({
    what: `${cell(problem)} is blank and no operating interest rate is entered, so equipment kept more than a year bears no interest.`,
    remedy: "Enter Interest rate, 0 for none, or the setting Operating interest rate.",
  }),
  "area-missing": (problem) => ({
    what: `${cell(problem)}: the change has no acres, so nothing says how much land it is about.`,
    remedy: "Enter Acres, or the fields of the season.",
  }),
  "no-fields": (problem) => ({
    what:
      `${cell(problem)}: no field of this season grows ${quoted(problem.found)}, so ` +
      `${problem.at.table === "Loans" ? "all land bears the loan" : "it has no figures of its own"}.`,
    remedy:
      problem.at.table === "Loans"
        ? "Name another field or crop, or leave the cell blank."
        : "Name another crop, or leave the cell blank and enter Price and Acres.",
  }),
  "setting-unknown": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is not a setting that we know.${meant(problem)}`,
    remedy: choose(problem),
  }),
  "interest-incomplete": (problem) => ({
    what: `An operating interest rate is entered, and ${problem.like} is not. No operating interest is charged.`,
    remedy: "Enter it in the table Season, or clear the rate.",
  }),
  "no-price": (problem) => ({
    what: `${quoted(problem.found)} is used, has no plan price and was never bought, so it costs nothing yet.`,
    remedy: "Enter Plan price per pack in the table Items, or its purchases.",
  }),
  "no-plan-price": (problem) => ({
    what: `${quoted(problem.found)} is planned without a plan price; the plan takes the price that was paid.`,
    remedy: "Enter Plan price per pack in the table Items.",
  }),
  "nothing-bought": (problem) => ({
    what:
      `More ${quoted(problem.found)} is sent back than was bought, or none is bought, so the ${problem.like ?? "money"} of its ` +
      "purchases is charged nowhere.",
    remedy: "Correct the quantities; a credit needs a purchase of the same item that it belongs to.",
  }),
  "date-missing": (problem) => ({
    what:
      `${cell(problem)}: ${problem.found} has no date, so what it costs without a date is counted as paid six months before ` +
      `repayment, on ${problem.like ?? ""}.`,
    remedy: "Enter the planned planting date of the field, or the dates of its costs.",
  }),
  "year-missing": (problem) => ({
    what: `${cell(problem)}: the month ${quoted(problem.found)} has no year.`,
    remedy: "Enter Season year in the table Season, or a whole date here.",
  }),
  "season-year-missing": ({ found }) => ({
    what:
      found === ""
        ? "Nothing tells the year of the season, so there is no cash flow yet."
        : `The dates entered are of several years (${found}) and the setting Season year is blank, so there is no cash flow yet.`,
    remedy: "Enter Season year in the table Season.",
  }),
  "past-twice": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is entered already, ${second(problem)}; this entry is left out.`,
    remedy: "Delete one of the two; two hybrids of a field in one year are told apart by the column Hybrid or variety.",
  }),
  "past-unit": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is not how yields are counted today (${problem.like ?? ""}); the entry is left out.`,
    remedy: "Enter goal, yield and price of that year in the unit of today, and the unit with them.",
  }),
  "past-later": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is later than the season ${problem.like ?? ""}, so it is no past season; the entry is left out.`,
    remedy: "Correct the year, or the Season year in the table Season.",
  }),
  "opening-beside": (problem) => ({
    what: `${cell(problem)}: this bill of ${quoted(problem.found)} is older than the opening stock of the same, ${second(problem)}; both are counted.`,
    remedy:
      "Delete the bill if the opening stock has it already; if it has not, give the opening stock the day of this bill or an earlier one.",
  }),
  "past-unlike": (problem) => ({
    what: `${cell(problem)}: no field of today is called ${quoted(problem.found)}, and one is called ${quoted(problem.like ?? "")}.`,
    remedy: "Give it the name of today if it is the same land; if it is another field, nothing.",
  }),
  "crop-year-later": (problem) => ({
    what: `${cell(problem)}: grain of ${problem.found} is not of the season ${problem.like ?? ""}, and the sale is left out here.`,
    remedy: "Keep it for the workbook of that season, or correct the crop year.",
  }),
  "date-far": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is years away from the season ${problem.like ?? ""}.`,
    remedy: "Correct the date, or the Season year in the table Season.",
  }),
  "fuel-twice": (problem) => ({
    what:
      `${cell(problem)}: ${quoted(problem.found)} ${problem.like}, and ${second(problem)} computes the same kind for its work. The ` +
      "machine counts; this is shown and not charged.",
    remedy:
      'Set Charged to "as used" and enter no application of it; or give it another kind, such as irrigation, if it is for something else.',
  }),
  "stand-outside-table": (problem) => ({
    what: `${cell(problem)}: ${problem.like}. The projected yield stays as it was.`,
    remedy: "Name another table under Stand response in the table Season, enter your own, or name none to keep the goal.",
  }),
  "planned-date-missing": (problem) => ({
    what:
      `${cell(problem)}: ${quoted(problem.found)} was planted on ${problem.like}, and no planned date tells what its yield goal was ` +
      "set for, so the planting moves no yield.",
    remedy: "Enter Planned planting date; the planted date again if the goal was set for it.",
  }),
  "harvest-without-load": (problem) => ({
    what:
      `${cell(problem)}: the harvest of ${quoted(problem.found)} is said to be done, and no load of it is entered, so its projected ` +
      "yield stays.",
    remedy: "Enter its loads in the table Harvest, one of 0 for a crop that was lost, or clear the cell.",
  }),
  "harvest-open": (problem) => ({
    what: `${cell(problem)}: is the harvest of ${problem.found} done? Until this says so the loads are counted as the harvest so far.`,
    remedy: "In the table Fields, enter yes or the day of the last load for each field whose last load is in, in a column Harvest done.",
  }),
  "load-after-done": (problem) => ({
    what:
      `${cell(problem)}: the harvest of ${quoted(problem.found)} is said to be done before its last load on ${problem.like}. The last ` +
      "load is the end of its harvest.",
    remedy: "Correct the day, or the date of the load; a load out of the bin has the day on which it came off the field.",
  }),
  "load-disagrees": (problem) => ({
    what:
      `${cell(problem)}: ${problem.found} is not what Gross less Tare comes to, which is ${problem.like}. The weight or bushels as ` +
      "typed are counted.",
    remedy: "Correct one of the three, or leave Weight or bushels blank.",
  }),
  "tare-above-gross": (problem) => ({
    what: `${cell(problem)}: the truck empty, ${problem.found}, weighs more than full, ${problem.like}. The load is left out.`,
    remedy: "Correct Gross or Tare from the scale ticket.",
  }),
  "ticket-twice": (problem) => ({
    what: `${cell(problem)}: ticket ${quoted(problem.found)} stands in ${second(problem)} too. Both loads are counted.`,
    remedy: "Delete one if it is one load, or correct the number.",
  }),
  "dock-table-unknown": (problem) => ({
    what: `${cell(problem)}: this workbook has no table ${quoted(problem.found)}, so no test weight is docked.${meant(problem)}`,
    remedy: "Name a table of your own with the columns Test weight and Dock, or clear the setting.",
  }),
  "dock-table-fault": (problem) => ({
    what: `${placeWords(problem.at)}: ${problem.like}. The table is not used, so no test weight is docked.`,
    remedy:
      "One line for each step: Crop, the lowest Test weight that it covers, and Dock, money a unit; the highest line with a dock of 0.",
  }),
  "dock-outside": (problem) => ({
    what:
      `${cell(problem)}: ${problem.found} is below the lowest line of the dock table, ${problem.like}, so nothing is taken off for ` +
      "this load.",
    remedy: "Add the line to the table that the setting Test weight dock names, or correct the test weight.",
  }),
  "test-weight-beyond": (problem) => ({
    what: `${cell(problem)}: no grain weighs ${problem.found} lb a bushel, so this test weight is left out and docks nothing.`,
    remedy: `Kilograms a hectolitre × 0.777 are pounds a bushel: ${problem.like} if that is what it is. Or correct it.`,
  }),
  "day-twice": (problem) => ({
    what: `${cell(problem)}: ${problem.found} stands in ${second(problem)} already, and the first counts.`,
    remedy: "Delete one, or name two places in the column Place.",
  }),
  "low-above-high": (problem) => ({
    what: `${cell(problem)}: the low ${problem.found} is above the high ${problem.like}, so the day counts as missing.`,
    remedy: "Correct the two; they may be the wrong way round.",
  }),
  "temperature-unlike": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is no temperature in °${problem.like}, so the day counts as missing.`,
    remedy: "Correct it, or the setting Temperature unit; some stations give tenths of a degree.",
  }),
  "weather-place-missing": (problem) => ({
    what: `${cell(problem)} is blank, and the table Weather has several places, so ${quoted(problem.found)} has no weather.`,
    remedy: choose(problem),
  }),
  "weather-place-unknown": (problem) => ({
    what: `${cell(problem)}: the table Weather has no place ${quoted(problem.found)}.${meant(problem)}`,
    remedy: "Correct it, or enter the days of that place.",
  }),
  "day-later": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is after the season ${problem.like} and counts nowhere.`,
    remedy: "Correct the date, or the setting Season year.",
  }),
  "hybrid-twice": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} stands in this trial in ${second(problem)} too. The trial counts once, by their mean.`,
    remedy: "Nothing, if they are plots of one trial; delete one if it is the same plot.",
  }),
  "hybrid-unlike": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} counts as another hybrid than ${quoted(problem.like ?? "")}.`,
    remedy: "Spell both alike, if they are the same hybrid.",
  }),
  "hybrid-crop-missing": (problem) => ({
    what: `${cell(problem)}: nothing says of which crop ${quoted(problem.found)} is, so this entry counts nowhere.`,
    remedy: "Enter it and its crop in the table Hybrids.",
  }),
  "trial-yield-unlike": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is no yield in ${problem.like}, by the yield goals, so this entry counts nowhere.`,
    remedy: "Enter it in the crop's yield unit per area, as the yield goals are.",
  }),
  "trial-twice": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} has the yields of ${quoted(problem.like ?? "")}, and both count.`,
    remedy: "Delete one if it is the same trial under another name, so that it counts once.",
  }),
  "trial-moisture-missing": (problem) => ({
    what: `${cell(problem)}: ${problem.like === "1" ? "an entry has" : `${problem.like} entries have`} no moisture, so no drying is known there and ${problem.like === "1" ? "its trial is" : "their trials are"} left out of what hybrids net.`,
    remedy: "Enter the moisture at harvest; the yields are compared all the same.",
  }),
  "trial-weight-missing": (problem) => ({
    what: `${cell(problem)}: ${problem.like === "1" ? "an entry has" : `${problem.like} entries have`} no test weight, so nothing is taken off any hybrid ${problem.like === "1" ? "beside it" : "beside them"} in that trial.`,
    remedy: "Enter it if your buyer docks by it.",
  }),
  "check-twice": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is marked as a check, and so is ${second(problem)}, which counts.`,
    remedy: "Leave one yes for each crop.",
  }),
  "check-without-trial": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is the check and stands in no trial, so nothing is held against it.`,
    remedy: "Enter its trials, or mark another hybrid.",
  }),
  "weed-twice": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is listed in ${second(problem)} too. Both are taken together.`,
    remedy: "Delete one, or leave both if each says something of its own.",
  }),
  "not-sites": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.like ?? problem.found)} is no number of a site of action.`,
    remedy: "Enter the numbers from the label, with commas and as text: 2, 9. Excel makes a date of 9/14.",
  }),
  "controls-missing": (problem) => ({
    what: `${cell(problem)} is blank: ${quoted(problem.found)} is sprayed where weeds are listed, and counts against none of them.`,
    remedy: "Enter the weeds that its label says it controls, named as in the table Weeds; none for a product that is for no weed.",
  }),
  "sites-missing": (problem) => ({
    what: `${cell(problem)} is blank: ${quoted(problem.found)} controls weeds that are listed, and no site of it is counted.`,
    remedy: "Enter its sites of action from the label.",
  }),
  "weed-unlike": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is not listed in the table Weeds.${meant(problem)}`,
    remedy: "Spell it as there, if it is the same weed.",
  }),
  "mix-disagrees": (problem) => ({
    what:
      `${cell(problem)}: ${problem.found} beside ${problem.like} in ${second(problem)}, for the same field or crop and day. The first ` +
      "counts for the mix.",
    remedy: "Enter one of them, or another date if it is another mix.",
  }),
  "tank-missing": (problem) => ({
    what: `${cell(problem)} is blank, so nothing says how many loads the mix for ${quoted(problem.found)} is.`,
    remedy: "Enter what the tank takes on one entry of the mix, or once in Machines where one sprayer does them all.",
  }),
  "test-weight-missing": (problem) => ({
    what:
      `${cell(problem)}: ${problem.like === "1" ? "a load" : `${problem.like} loads`} of ${quoted(problem.found)} ` +
      `${problem.like === "1" ? "has" : "have"} no test weight, so nothing is taken off for ${problem.like === "1" ? "it" : "them"}.`,
    remedy: "Enter it from the ticket if the buyer docks by it.",
  }),
  "next-crop-here": (problem) => ({
    what:
      `${cell(problem)}: this pass is after the last load of ${quoted(problem.found)}, whose land ${quoted(problem.like ?? "")} uses ` +
      "next, so it is in the cost of neither.",
    remedy: `Enter it for ${problem.like ?? "the second crop"}, or correct its date.`,
  }),
  "machine-zero": (problem) => ({
    what: `${cell(problem)} is blank, so the machine is counted without ${problem.like}.`,
    remedy: `Enter ${problem.at.column ?? "it"}, or 0 where there is none.`,
  }),
  "done-twice": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is done here, and ${second(problem)} says that it was done as planned; both are counted.`,
    remedy: "Delete one if they are the same pass, or set the planned entry back to plan.",
  }),
  "line-twice": (problem) => ({
    what: `${cell(problem)}: the line is like ${second(problem)} (${problem.found}), and both are counted.`,
    remedy: "Delete one if it is the same invoice line; if not, a different Note on each settles it.",
  }),
  "bill-of-used": (problem) => ({
    what: `${cell(problem)}: ${problem.like ?? ""} stands in Applications and is charged as it is used, so For is ignored here.`,
    remedy: "Clear For, or take the item out of Applications if this bill is all that is to be charged for it.",
  }),
  "kind-alone": (problem) => ({
    what: `${cell(problem)}: the item is of the kind ${problem.like ?? ""} and is charged as that; Kind alone is ignored.`,
    remedy: "Fill For as well to charge this line directly to a field, a crop or all; or clear Kind.",
  }),
  "bill-beside-done": (problem) => ({
    what: `${cell(problem)}: this bill of ${problem.found} is added to what ${second(problem)} counts as done there.`,
    remedy: "If it is the bill for that work, delete one of the two; if not, a Note on this line settles it.",
  }),
  "budget-twice": (problem) => ({
    what: `${cell(problem)}: the line is like ${second(problem)} (${problem.found}), and both are counted.`,
    remedy: "Delete one if it is the same line; if not, a different Note on each settles it.",
  }),
  "per-acre-high": (problem) => ({
    what:
      `${cell(problem)}: ${problem.found} is counted for each acre, and that is more than an acre there is expected to earn ` +
      `(${problem.like ?? ""}).`,
    remedy:
      "Enter whole as its Basis if it is the money for all of the land, or per acre if it is right; of a sheet of your own, match it " +
      "again for the whole field.",
  }),
  "kind-sum": (problem) => ({
    what:
      `${cell(problem)}: ${problem.found} is the sum of the ${problem.like} for the same land, so that money seems to be counted ` +
      "twice.",
    remedy:
      "Delete the entry if it adds up the others, or match its column of your own sheet as left out; if it is a cost of its own, move " +
      "it between the others.",
  }),
  "sheet-year": (problem) => ({
    what:
      `${cell(problem)}: the sheet ${quoted(problem.found)} is named after another year than ${quoted(problem.like ?? "")}, and the ` +
      "lines of both are counted together.",
    remedy: "Delete the rows of Matches with the sheet that is not of this season, or rename the sheet if it is.",
  }),
  "sheet-again": (problem) => ({
    what:
      `${cell(problem)}: the sheet ${quoted(problem.found)} has a cost of the same land and kind as ${quoted(problem.like ?? "")} ` +
      `(${second(problem)}), and both are counted.`,
    remedy: "Nothing, if they are two parts of the cost; if one is a copy or an older plan, delete its rows of Matches.",
  }),
  "all-in-disagrees": (problem) => ({
    what:
      `${cell(problem)} says of ${problem.found} for the same fields another thing than ${second(problem)}; what is left of both ` +
      "lines is counted still.",
    remedy: "Say yes on all of these lines once nothing more will come, or on none.",
  }),
  "price-unlike": (problem) => ({
    what: `${cell(problem)}: the line costs ${problem.found}, and ${second(problem)} costs ${problem.like}. Both are counted.`,
    remedy: "Correct the quantity, the unit or the price; if the price is right, a Note on the line settles it.",
  }),
  "year-unlike": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is of another year than the dates beside it, such as ${second(problem)}, ${problem.like}.`,
    remedy: "Correct the year if it is a slip: Excel gives a date typed without one the year of the day on which it is typed.",
  }),
  "quantity-zero": (problem) => ({
    what: `${cell(problem)} is 0, so the ${problem.like} entered for each comes to nothing.`,
    remedy: "Enter how many, or delete the entry.",
  }),
  "money-alone": (problem) => ({
    what: `${cell(problem)} is 0, so the money of this line goes on what else is bought of the same item.`,
    remedy: "Enter how many; if it is a charge or a credit alone, a Note on the line settles it.",
  }),
  "cost-none": (problem) => ({
    what: `${cell(problem)}: no cost at all is entered for ${shortened(problem.found)}, so it would cost nothing.`,
    remedy: "Enter what it costs; 0 in one of the costs if there is truly none.",
  }),
  "entry-beside": (problem) => ({
    what:
      `${cell(problem)}: ${quoted(problem.found)} is entered beside ${problem.other?.column ?? "another entry"}, which counts; this ` +
      "is ignored.",
    remedy: `Clear ${problem.at.column ?? "it"}, or the other of the two.`,
  }),
  "cost-twice": (problem) => ({
    what: `${cell(problem)}: ${problem.found} is entered here and counted by ${second(problem)} as well. ${problem.like ?? ""}`.trim(),
    remedy: "Delete one of the two, or give this cost another kind if it is for something else.",
  }),
  "capital-not-charged": (problem) => ({
    what:
      `${cell(problem)}: neither machine ownership nor a land charge is entered for ${shortened(problem.found)}, so the full cost ` +
      "there keeps the term interest and may lack capital that nobody has lent.",
    remedy: "Enter the work by machine, a cost of the kind machine ownership, or Land charge per acre; 0 where there is none to charge.",
  }),
  "tractor-disagrees": (problem) => ({
    what:
      `${cell(problem)}: ${quoted(problem.found)} is not what ${second(problem)} says of the same tractor, ` +
      `${quoted(problem.like ?? "")}. The first counts.`,
    remedy: "Enter the same on both entries, or on the first alone; another tractor needs a name of its own.",
  }),
  "tractor-unnamed": (problem) => ({
    what: `${cell(problem)}: ${quoted(problem.found)} is entered for a tractor that has no name, so it is ignored.`,
    remedy: "Enter the tractor's name in the column Tractor, or clear the cells of a tractor.",
  }),
  "stand-table-unknown": (problem) => ({
    what: `${cell(problem)}: there is no table of yields ${quoted(problem.found)}, neither ours nor in this workbook.${meant(problem)}`,
    remedy: "Correct the name; several are separated by semicolons.",
  }),
  "stand-table-crop": (problem) => ({
    what: `${cell(problem)}: nothing tells the crop of the table ${quoted(problem.found)}.`,
    remedy: "Enter the crop's name in its first heading, above the dates.",
  }),
  "stand-table-fault": (problem) => ({
    what: `${cell(problem)}: ${problem.like}. The table is not used.`,
    remedy:
      "Head the columns with plants per area in rising order, begin the rows with planting dates in rising order, and enter percent " +
      "of full yield.",
  }),
};
