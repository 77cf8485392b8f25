/** The columns of the table Crops. */
import type { AreaUnit, YieldUnit } from "../../core/numbers/units";
import { yieldUnitNamed, yieldUnits } from "../yieldUnits";
import { declared, moisture, money, quantity, text, word } from "./column";

/** Of the crop's own unit there is none beside it that a ton could be unclear with. */
const ownUnit = (typed: string, areaUnit: AreaUnit): YieldUnit | null => {
  const unit = yieldUnitNamed(typed, areaUnit, null);
  return unit === "ton-unclear" ? null : unit;
};

export const cropColumns = declared("Crops", {
  crop: text("Crop", { required: true, hint: "The crop's name, as fields and entries use it.", width: 16, words: ["commodity"] }),
  yieldUnit: word("Yield unit", yieldUnits, ownUnit, { hint: "What yields and prices are counted in.", words: ["uom", "unit"] }),
  weightPerBushel: quantity("Weight per bu", {
    range: "above zero",
    hint: "Pounds in a bushel.",
    words: ["lbperbu", "lbsperbu", "lbperbushel", "bushelweight", "testweight"],
  }),
  standardMoisture: moisture("Standard moisture", {
    hint: "Moisture at which the crop is paid, percent.",
    words: ["stdmoisture", "basemoisture"],
  }),
  price: money("Expected price", {
    unit: "price",
    required: true,
    hint: "Money per unit of yield, before selling costs.",
    words: ["price", "budgetprice", "planprice", "estprice"],
  }),
  lowPrice: money("Low price", { unit: "price", hint: "Money per unit in a poor market." }),
  highPrice: money("High price", { unit: "price", hint: "Money per unit in a good market." }),
  sellingCost: money("Per-unit selling cost", {
    unit: "price",
    hint: "Haul, checkoff, storage: money per unit sold.",
    words: ["sellingcost", "marketingcost"],
  }),
  harvestMoisture: moisture("Expected harvest moisture", {
    hint: "Percent; drying is charged on the points above standard.",
    words: ["harvestmoisture", "expectedmoisture"],
  }),
  otherIncome: money("Other income per acre", {
    unit: "money per area",
    range: "any",
    hint: "Program payments, straw, grazing: money per area.",
    words: ["otherincome", "programpayments"],
  }),
});
