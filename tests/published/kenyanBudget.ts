/**
 * Four treatments of maize in Kenya, in shillings a hectare. Figures only; read in 2026. Each treatment is a field of the
 * season. The price is not printed: gross income over yield is 1,200 a bag of 90 kg in all four.
 */
import type { Budget } from "./budget";

export const kenyanBudget: Budget = {
  id: "P03 maize treatments",
  source: {
    title: "Economic analysis of improved and local maize with and without fertilizer, Kenya",
    publisher: "ISRN Agronomy (Hindawi)",
    year: "2012",
    address: "https://doi.org/10.5402/2012/153412",
    where: "Table 10",
  },
  workbook: `
    Season
    | Setting   | Value |
    | Currency  | KES   |
    | Area unit | ha    |
    Crops
    | Crop                        | Yield unit | Expected price   |
    | Improved with fertilizer    | kg         | 13.3333333333333 |
    | Improved without fertilizer | kg         | 13.3333333333333 |
    | Local with fertilizer       | kg         | 13.3333333333333 |
    | Local without fertilizer    | kg         | 13.3333333333333 |
    Fields
    | Field | Crop                        | Hectares | Yield goal |
    | A     | Improved with fertilizer    | 1        | 3697.3     |
    | B     | Improved without fertilizer | 1        | 2039.73    |
    | C     | Local with fertilizer       | 1        | 3461.62    |
    | D     | Local without fertilizer    | 1        | 1805.05    |
    Operations
    | Field | Operation        | Rate | Status |
    | A     | Land preparation | 3600 | plan   |
    | B     | Land preparation | 3600 | plan   |
    | C     | Land preparation | 3600 | plan   |
    | D     | Land preparation | 3600 | plan   |
    | A     | Weeding          | 3840 | plan   |
    | B     | Weeding          | 3840 | plan   |
    | C     | Weeding          | 3840 | plan   |
    | D     | Weeding          | 3840 | plan   |
    Other costs
    | Item       | Kind       | Amount | Basis       | Shared over |
    | Seed       | seed       | 600    | per hectare | A           |
    | Seed       | seed       | 600    | per hectare | B           |
    | Seed       | seed       | 1200   | per hectare | C           |
    | Seed       | seed       | 1200   | per hectare | D           |
    | Fertilizer | fertilizer | 6503   | per hectare | A           |
    | Fertilizer | fertilizer | 6503   | per hectare | C           |
    | Bags       | supplies   | 1150   | per hectare | A           |
    | Bags       | supplies   | 600    | per hectare | B           |
    | Bags       | supplies   | 1100   | per hectare | C           |
    | Bags       | supplies   | 525    | per hectare | D           |`,
  printed: (
    [
      ["Improved with fertilizer", "49297", "15693", "33604"],
      ["Improved without fertilizer", "27196", "8640", "18556"],
      ["Local with fertilizer", "46155", "16243", "29912"],
      ["Local without fertilizer", "24067", "9165", "14902"],
    ] as const
  ).flatMap(([crop, gross, cost, net]) => [
    { crop, figure: "plan/incomePerAcre", prints: gross },
    { crop, figure: "plan/costPerAcre/operating", prints: cost },
    { crop, figure: "plan/netPerAcre/operating", prints: net },
  ]),
};
