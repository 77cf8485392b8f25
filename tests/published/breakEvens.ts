/** Break-even prices and yields that are printed beside their costs, without the lines. Figures only; read in 2026. */
import type { Budget } from "./budget";

type Case = { readonly crop: string; readonly price: string; readonly yield: string; readonly selling?: string; readonly costs: string };

const workbook = ({ crop, price, yield: perAcre, selling, costs }: Case): string => `
    Crops
    | Crop    | Expected price | Per-unit selling cost |
    | ${crop} | ${price}       | ${selling ?? ""}      |
    Fields
    | Field | Crop    | Acres | Yield goal |
    | One   | ${crop} | 100   | ${perAcre} |
    Other costs
    | Item | Kind | Amount | Basis |
    ${costs}`;

const wheat2016 = {
  title: "Estimated costs and returns: hard red winter wheat, 200 acres, central Texas (district 8), 2016",
  year: "2016",
  publisher: "Texas Cooperative Extension / Texas A&M AgriLife Extension",
  address: "https://studylib.net/doc/11006199/",
  where: "whole table",
};
const illinois = {
  title: "2008 crop budget arithmetic, Illinois",
  publisher: "Illinois farm press summary of University of Illinois figures",
  year: "2008",
  address: "not kept when it was read",
  where: "text",
};

export const breakEvens: readonly Budget[] = [
  {
    id: "E01 break-evens in Michigan",
    source: {
      title: "Lessons learned from the 2019 season, part 3",
      publisher: "Michigan State University Extension",
      year: "not printed",
      address: "https://www.canr.msu.edu/news/lessons-learned-from-the-2019-season-part-3",
      where: "text",
    },
    workbook: workbook({
      crop: "Corn",
      price: "4.00",
      yield: "180",
      costs: `
    | Direct   | other operating | 350 | per acre |
    | Overhead | overhead        | 225 | per acre |`,
    }),
    printed: [
      { figure: "plan/costPerAcre/cash", prints: "575" },
      { figure: "plan/breakEvenPrice/cash", prints: "3.19" },
      { figure: "plan/breakEvenYield/cash", prints: "144" },
    ],
  },
  {
    id: "E11 wheat in Texas 2016",
    source: wheat2016,
    workbook: workbook({ crop: "Wheat", price: "5.10", yield: "45", costs: "| All costs | other operating | 325.10 | per acre |" }),
    // The yield is worked out from the printed figures, not printed: cost is held whatever the yield, as the source's price does.
    printed: [
      { figure: "plan/breakEvenPrice/operating", prints: "7.22" },
      { figure: "plan/breakEvenYield/operating", prints: "63.75" },
    ],
  },
  {
    id: "E11 wheat in Texas 2016, haul of 0.30 a bushel apart",
    source: wheat2016,
    workbook: workbook({
      crop: "Wheat",
      price: "5.10",
      yield: "45",
      selling: "0.30",
      costs: "| All costs but haul | other operating | 311.60 | per acre |",
    }),
    // 325.10 less 45 bushels at 0.30. The price is the same; the yield, worked out and not printed, is more.
    printed: [
      { figure: "plan/breakEvenPrice/operating", prints: "7.22" },
      { figure: "plan/breakEvenYield/operating", prints: "64.92" },
    ],
  },
  {
    id: "B18 corn in Illinois 2008",
    source: illinois,
    workbook: workbook({
      crop: "Corn",
      price: "4.00",
      yield: "180",
      costs: `
    | Cost without land | other operating | 370 | per acre |
    | Land              | land charge     | 180 | per acre |`,
    }),
    printed: [{ figure: "plan/breakEvenPrice/full", prints: "3.06" }],
  },
  {
    id: "B18 soybeans in Illinois 2008",
    source: illinois,
    workbook: workbook({ crop: "Soybeans", price: "10.00", yield: "54", costs: "| All costs | other operating | 400 | per acre |" }),
    printed: [{ figure: "plan/breakEvenPrice/operating", prints: "7.41" }],
  },
  {
    id: "B19 irrigated corn in Nebraska",
    source: {
      title: "Nebraska irrigated corn cost example",
      publisher: "Center for Agricultural Profitability, University of Nebraska-Lincoln",
      year: "not printed",
      address: "cap.unl.edu",
      where: "text",
    },
    workbook: workbook({ crop: "Corn", price: "4.00", yield: "195", costs: "| All costs | other operating | 607.66 | per acre |" }),
    printed: [{ figure: "plan/breakEvenPrice/operating", prints: "3.12" }],
  },
];
