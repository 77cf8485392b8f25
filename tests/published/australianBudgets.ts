/** Two Australian budgets by the hectare and the tonne. Figures only; read in 2026. */
import type { Budget } from "./budget";

/** Whole-enterprise lines on 1,500 ha. The cartage of 13 a tonne on both fertilizers is the freight of their invoices. */
const wheat: Budget = {
  id: "B14 wheat on 1,500 ha",
  source: {
    title: "Gross margin analysis example 1: wheat",
    publisher: "training material posted on Scribd (Australian farm-management course example)",
    year: "not printed",
    address: "https://scribd.com/document/662731965/Gross-margin-analysis-Example-1-Wheat-1",
    where: "whole table",
  },
  workbook: `
    Season
    | Setting   | Value |
    | Currency  | AUD   |
    | Area unit | ha    |
    Crops
    | Crop  | Yield unit | Expected price |
    | Wheat | t          | 247            |
    Fields
    | Field | Crop  | Hectares | Yield goal |
    | All   | Wheat | 1500     | 2.7        |
    Items
    | Item               | Kind       | Pack unit |
    | Seed               | seed       | t         |
    | Starter fertilizer | fertilizer | t         |
    | Urea               | fertilizer | t         |
    Purchases
    | Date       | Item               | Quantity | Unit | Unit price | Freight |
    | 2020-04-01 | Seed               | 150      | t    | 247        |         |
    | 2020-04-01 | Starter fertilizer | 165      | t    | 820        | 2145    |
    | 2020-04-01 | Urea               | 300      | t    | 534        | 3900    |
    Applications
    | Crop  | Item               | Rate | Rate unit | Status |
    | Wheat | Seed               | 100  | kg/ha     | done   |
    | Wheat | Starter fertilizer | 110  | kg/ha     | done   |
    | Wheat | Urea               | 200  | kg/ha     | done   |
    Operations
    | Crop  | Operation | Rate  | Basis    | Status |
    | Wheat | Spraying  | 18000 | lump sum | done   |
    | Wheat | Harvest   | 37500 | lump sum | done   |
    Other costs
    | Item                 | Kind            | Amount | Basis      |
    | Seed treatment       | seed            | 24750  | whole farm |
    | Herbicide, first     | crop protection | 33000  | whole farm |
    | Herbicide, second    | crop protection | 12075  | whole farm |
    | Herbicide, third     | crop protection | 6750   | whole farm |
    | Herbicide, fourth    | crop protection | 19350  | whole farm |
    | Herbicide, fifth     | crop protection | 24960  | whole farm |
    | Fungicide            | crop protection | 15075  | whole farm |
    | Herbicide, sixth     | crop protection | 37800  | whole farm |
    | Fuel                 | fuel            | 57000  | whole farm |
    | Repairs              | repairs         | 45000  | whole farm |
    | Casual labour        | hired labour    | 8000   | whole farm |
    | Crop insurance       | crop insurance  | 7410   | whole farm |`,
  printed: [
    { figure: "outlook/incomePerAcre", times: "1500", prints: "1000350" },
    { figure: "outlook/costPerAcre/operating", times: "1500", prints: "685265" },
    { figure: "outlook/netPerAcre/operating", times: "1500", prints: "315085" },
    { figure: "outlook/costPerAcre/byKind/fertilizer", times: "1500", prints: "301545" }, // 135,300, 160,200 and 6,045
    { figure: "outlook/incomePerAcre", prints: "667" },
    { figure: "outlook/costPerAcre/operating", prints: "457" },
    { figure: "outlook/netPerAcre/operating", prints: "210" },
  ],
};

/** Four grades in one yield: the price is their income over all tonnes, 2,593.20 ÷ 2.4. Grading and cartage move with yield. */
const azuki: Budget = {
  id: "B15 azuki beans 2010-11",
  source: {
    title: "Azuki beans, surface irrigated, summer gross margin budget 2010-11",
    publisher: "NSW Department of Primary Industries (Australia)",
    year: "2010",
    address: "https://scribd.com/document/652432664/",
    where: "income and cost tables",
  },
  workbook: `
    Season
    | Setting   | Value |
    | Currency  | AUD   |
    | Area unit | ha    |
    Crops
    | Crop        | Yield unit | Expected price |
    | Azuki beans | t          | 1080.50        |
    Fields
    | Field | Crop        | Hectares | Yield goal |
    | One   | Azuki beans | 1        | 2.4        |
    Operations
    | Field | Operation | Rate   | Status |
    | One   | Harvest   | 99.94  | plan   |
    Other costs
    | Item                | Kind            | Amount | Basis       |
    | Sowing              | seed            | 275    | per hectare |
    | Fertilizer          | fertilizer      | 126    | per hectare |
    | Herbicide           | crop protection | 133.17 | per hectare |
    | Insecticide         | crop protection | 160.96 | per hectare |
    | Fungicide           | crop protection | 149.25 | per hectare |
    | Irrigation          | irrigation      | 507.50 | per hectare |
    | Consultant          | other operating | 40     | per hectare |
    | Grading and bagging | haul            | 90     | per t       |
    | Cartage             | haul            | 22     | per t       |`,
  printed: [
    { figure: "plan/incomePerAcre", prints: "2593.20" },
    { figure: "plan/costPerAcre/byKind/haul", prints: "268.80" }, // 216 and 52.80
    { figure: "plan/costPerAcre/operating", prints: "1760.61", ours: "1760.62" },
    { figure: "plan/netPerAcre/operating", prints: "832.59", ours: "832.58" },
  ],
};

export const australianBudgets: readonly Budget[] = [wheat, azuki];
