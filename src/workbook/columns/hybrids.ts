/** The columns of the tables Hybrids and Hybrid trials. */
import { choice, count, declared, moisture, money, quantity, rate, text, yesOrNo } from "./column";
import { wetnesses } from "./harvest";

const nameWords = ["variety", "brand", "product", "hybridvariety", "entry"];

export const hybridColumns = declared("Hybrids", {
  hybrid: text("Hybrid", {
    required: true,
    hint: "Its name, as Hybrid or variety in the table Fields has it.",
    width: 24,
    words: nameWords,
  }),
  crop: text("Crop", {
    hint: "A name from the table Crops. Blank: the crop of the fields that it grows on, or the only crop.",
    width: 16,
    words: ["commodity"],
  }),
  pricePerBag: money("Price per bag", {
    hint: "As offered. Blank: the price of the item of this name, as paid on average or as planned.",
    words: ["bagprice", "priceperunit", "seedprice", "unitprice", "price", "costperbag"],
  }),
  seedsPerBag: count("Seeds per bag", {
    range: "above zero",
    hint: "80,000 is usual for corn; the tag says it.",
    words: ["seedsperunit", "bagsize", "kernelsperbag", "unitsize"],
  }),
  traitFee: money("Trait fee per acre", {
    unit: "money per area",
    hint: "What is paid beside the bag. Blank: nothing.",
    words: ["traitfee", "techfee", "technologyfee", "royalty"],
  }),
  heatUnits: quantity("Heat units to maturity", {
    range: "above zero",
    hint: "From planting to black layer, by its seller, in the units of the setting Heat units.",
    width: 24,
    words: ["gdd", "gddtoblacklayer", "gddtomaturity", "chu", "heatunits"],
  }),
  days: count("Days", {
    range: "above zero",
    hint: "Its rating in days, by its seller.",
    words: ["rm", "crm", "relativematurity", "maturity", "daystomaturity", "comparativerelativematurity"],
    movesNothing: [{ why: "It is printed beside the acres; sellers rate days in ways of their own, so no date is made of it." }],
  }),
  check: yesOrNo("Check", {
    hint: "yes: the others of its crop are held against it. Blank everywhere: the one on most of your acres that stood in a trial.",
    words: ["standard", "checkhybrid", "control"],
  }),
});

export const hybridTrialColumns = declared("Hybrid trials", {
  trial: text("Trial", {
    required: true,
    hint: "One place of one year. A mean over several places is no trial of its own beside them.",
    width: 24,
    words: ["location", "site", "plot", "testsite", "trialname"],
  }),
  year: text("Year", {
    hint: "The year it was harvested: 2025. The same trial in two years is two trials.",
    width: 8,
    words: ["season", "harvestyear", "cropyear"],
  }),
  hybrid: text("Hybrid", {
    required: true,
    hint: "Its name, as in the table Hybrids. Several plots of it in one trial count as one, by their mean.",
    width: 24,
    words: nameWords,
  }),
  yield: quantity("Yield", {
    unit: "yield",
    required: true,
    hint: "In the crop's yield unit per area, at its standard moisture.",
    words: ["dryyield", "grainyield", "yieldperacre", "buperacre", "adjustedyield"],
  }),
  are: choice("Yield is", wetnesses, {
    hint: "Dry: at the standard moisture, as trials print it. Wet: as weighed; the moisture is needed then. Blank: dry.",
    words: ["yieldbasis"],
  }),
  moisture: moisture("Moisture", {
    hint: "At harvest, percent. Without it a trial is in no net where drying is charged.",
    words: ["moist", "mst", "h2o", "harvestmoisture"],
  }),
  testWeight: quantity("Test weight", { range: "above zero", hint: "Pounds in a bushel.", words: ["tw", "testwt"] }),
  stand: count("Stand", {
    unit: "plants per area",
    hint: "Plants per area at harvest.",
    words: ["finalstand", "population", "harvestpopulation", "plantsperacre"],
    movesNothing: [{ why: "Its mean is printed beside the yield; a trial's yield has its stand in it." }],
  }),
  // Read as a rate is: 1 is one percent, which is common, and not all of them.
  lodged: rate("Lodged %", {
    hint: "Plants lodged or broken at harvest, percent: 3, or 3%.",
    words: ["lodging", "lodged", "stalklodging"],
    movesNothing: [{ why: "Its mean is printed beside the yield." }],
  }),
  lsd: quantity("Trial LSD", {
    unit: "yield",
    hint: "The least significant difference that the trial prints, in the unit of the yield.",
    words: ["lsd", "lsd005", "lsd010"],
    movesNothing: [
      { why: "Of a single trial it says whether there is a difference; with more the interval is that of the trials themselves." },
    ],
  }),
  source: text("Source", { hint: "Who ran the trial.", width: 24, words: ["runby", "organization", "sponsor"] }),
});
