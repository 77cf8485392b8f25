import { expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { sheetLines } from "../../../tests/support/sheetLines";
import { seasonReport } from "../report";
import { resultSheets } from "./resultSheets";

const report = (trials: string) =>
  seasonReport(
    contentFromText(`
Crops
| Crop | Yield unit | Standard moisture | Expected price |
| Corn | bu | 15 | 4 |
Fields
| Field | Crop | Acres | Yield goal | Hybrid or variety | Seeds dropped | Planted date |
| Home | Corn | 100 | 200 | Oak | 32000 | 2031-05-01 |
Budget
| For | Kind | Amount | Basis |
| Corn | supplies | 10 | per acre |
Hybrids
| Hybrid | Price per bag | Seeds per bag |
| Oak | 250 | 80000 |
| Ash | 300 | 80000 |
| Yew | | |
Hybrid trials
| Trial | Year | Hybrid | Yield | Moisture | Test weight | Stand | Lodged % | Trial LSD |
${trials}`),
  );
const trials = `| North | 2030 | Oak | 200 | 18 | 56 | 31000 | 1 | 9 |
| North | 2030 | Ash | 212 | 20 | 55 | 32000 | 3 | 9 |
| South | 2030 | Oak | 180 | 17 | 56 | 31000 | 1 | |
| South | 2030 | Ash | 192 | 19 | 55 | 32000 | 3 | |
| Far | 2030 | Yew | 199 | 18 | 56 | 31000 | 1 | |`;
const sheet = (of: string) => resultSheets(report(of)).find(({ name }) => name === "Hybrids compared");

it("the sheet Hybrids compared has yields and nets against the check, what is left out, acres, and own fields marked as no trial", () => {
  const lines = sheetLines(sheet(trials)!);
  expect(lines.slice(2, 20)).toEqual([
    "Corn, held against Oak, the one on most of your acres (not chosen by you: mark a check in the table Hybrids).",
    "Yield, bu per ac | Trials | Yield | Difference | Low | High | These show | Moisture | Test weight | Stand | Lodged | LSD",
    "Oak | 2 | 190 | – | – | – | the check | 0.175 | 56 | 31000 | 0.01 | 9",
    "Ash | 2 | 202 | 12 | 12 | 12 | more yield | 0.195 | 55 | 32000 | 0.03 | 9",
    "Yew | 1 | 199 | – | – | – | never beside it | 0.18 | 56 | 31000 | 0.01 | –",
    "Money, USD per ac | Trials | Seed, fees | Nets | Difference | Low | High",
    "Oak | 2 | 100 | 660 | – | – | –",
    "Ash | 2 | 120 | 688 | 28 | 28 | 28",
    "Yew | 1 | – | – | – | – | –",
    "Trials without the check, in no difference: Far 2030.",
    "No net, because the price of seed or the planned rate is not known: Yew.",
    "Nets, USD per ac: dry yield at 4, less no drying (no charge or no standard moisture is entered), test-weight dock, seed at " +
      "32,000 seeds per ac and",
    "fees. Before trucking, land and all other cost; the landlord's part is not taken off.",
    "Acres by hybrid | Acres | Share | Days | Matures | To",
    "Oak | 100 | 1 | – | – | – |  | not projected: Home",
    "Own fields, no trial |  |  | Planted | Stand | Yield |  | Moisture",
    "Home, Oak |  |  | 2031-05-01 | – | 200 | projected | –",
    "Your own fields side by side are no trial: soil, date, stand and history differ with the hybrid, and the difference is not its own.",
  ]);
});

it("is there where a trial is entered, and marks what is incomplete", () => {
  expect(sheet("")).toBeUndefined();
  expect(sheetLines(sheet(trials.replace("| 212 |", "| |"))!).slice(2, 4)).toEqual([
    "Incomplete: 1 entry needs attention.",
    "Hybrid trials, entry 2, Yield (D3) is blank.",
  ]);
});
