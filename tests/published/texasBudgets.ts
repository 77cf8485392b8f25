/**
 * Crop budgets of Texas from 1981 to 2016: lines of quantity and price, wheat with grazing as a second product, and a
 * share rent entered both ways. Figures only; read in 2026. Their totals come from lines with more digits than are printed.
 */
import type { Budget } from "./budget";

const publisher = "Texas Cooperative Extension / Texas A&M AgriLife Extension";

const corn2004: Budget = {
  id: "B07 dryland corn 2004",
  source: {
    title: "Projected costs and returns per acre: corn, dryland, 2004 (bulletin B-1241, district C10)",
    publisher,
    year: "2004",
    address: "https://studylib.net/doc/11003321/",
    where: "Table 9.A",
  },
  workbook: `
    Crops
    | Crop | Expected price | Per-unit selling cost (haul) |
    | Corn | 3.00           | 0.14                         |
    Fields
    | Field    | Crop | Acres | Yield goal | Tenure    | Rent per acre |
    | One acre | Corn | 1     | 55         | cash rent | 25.00         |
    Items
    | Item      | Kind       | Pack unit      | Plan price per pack | Charged |
    | Seed      | seed       | thousand seeds | 1.45                |         |
    | Nitrogen  | fertilizer | lb             | 0.25                |         |
    | Phosphate | fertilizer | lb             | 0.32                |         |
    | Diesel    | fuel       | gal            | 1.09                | as used |
    | Gasoline  | fuel       | gal            | 1.75                | as used |
    Applications
    | Field    | Item      | Rate   | Rate unit         | Status |
    | One acre | Seed      | 15     | thousand seeds/ac | plan   |
    | One acre | Nitrogen  | 60     | lb/ac             | plan   |
    | One acre | Phosphate | 40     | lb/ac             | plan   |
    | One acre | Diesel    | 7.6489 | gal/ac            | plan   |
    | One acre | Gasoline  | 0.91   | gal/ac            | plan   |
    Operations
    | Field    | Operation       | Rate  | Basis    | Hours  | Status | Kind         |
    | One acre | Custom harvest  | 13.75 | per acre |        | plan   | custom work  |
    | One acre | Operator labour | 8.90  | per hour | 1.0316 | plan   | hired labour |
    | One acre | Administration  | 16.00 | per hour | 0.5    | plan   | hired labour |
    Other costs
    | Part   | Item                  | Kind               | Amount | Basis    |
    | direct | Crop insurance        | crop insurance     | 10.14  | per acre |
    | direct | Herbicide             | crop protection    | 10.00  | per acre |
    | direct | Repairs of implements | repairs            | 6.27   | per acre |
    | direct | Repairs of tractors   | repairs            | 11.68  | per acre |
    | direct | Repairs of pickup     | repairs            | 1.00   | per acre |
    | direct | Operating interest    | operating interest | 5.10   | per acre |
    | fixed  | Implements            | machine ownership  | 12.65  | per acre |
    | fixed  | Tractors              | machine ownership  | 19.96  | per acre |
    | fixed  | Pickup                | machine ownership  | 3.00   | per acre |`,
  printed: [
    { figure: "plan/incomePerAcre", prints: "165.00" },
    { figure: "plan/costPerAcre/byKind/seed", prints: "21.75" },
    { figure: "plan/costPerAcre/byKind/haul", prints: "7.70" },
    { figure: "plan/costPerAcre/operating", prints: "142.32", ours: "142.30" },
    { figure: "plan/netPerAcre/operating", prints: "22.67", ours: "22.70" },
    { figure: "plan/costPerAcre/byKind/machine ownership", prints: "35.62", ours: "35.61" },
    { figure: "plan/netPerAcre/full", prints: "-37.94", ours: "-37.91" },
  ],
};

/** Only the amounts of the lines were kept, with what the nitrogen, the labour and the diesel are made of. */
const wheat2002: Budget = {
  id: "B08 wheat 2002",
  source: {
    title: "Projected costs and returns per acre: wheat, high input, north Texas, 2002",
    publisher,
    year: "2002",
    address: "https://studylib.net/doc/11004872/",
    where: "whole table",
  },
  workbook: `
    Crops
    | Crop  | Expected price |
    | Wheat | 2.50           |
    Fields
    | Field    | Crop  | Acres | Yield goal | Tenure    | Rent per acre |
    | One acre | Wheat | 1     | 25         | cash rent | 25            |
    Items
    | Item     | Kind       | Pack unit | Plan price per pack | Charged |
    | Nitrogen | fertilizer | lb        | 0.15                |         |
    | Diesel   | fuel       | gal       | 1.28                | as used |
    Applications
    | Field    | Item     | Rate   | Rate unit | Status |
    | One acre | Nitrogen | 90     | lb/ac     | plan   |
    | One acre | Diesel   | 2.9441 | gal/ac    | plan   |
    Operations
    | Field    | Operation      | Rate | Basis    | Hours  | Status | Kind         |
    | One acre | Labour, first  | 6.50 | per hour | 0.1586 | plan   | hired labour |
    | One acre | Labour, second | 6.50 | per hour | 0.6472 | plan   | hired labour |
    Other costs
    | Part   | Item       | Kind              | Amount | Basis    |
    | direct | Line 1     | other operating   | 4.50   | per acre |
    | direct | Line 2     | other operating   | 3.00   | per acre |
    | direct | Line 4     | other operating   | 14.00  | per acre |
    | direct | Line 5     | other operating   | 3.50   | per acre |
    | direct | Line 6     | other operating   | 4.91   | per acre |
    | direct | Line 10    | other operating   | 4.43   | per acre |
    | direct | Line 11    | other operating   | 4.87   | per acre |
    | fixed  | Fixed 1    | machine ownership | 7.28   | per acre |
    | fixed  | Fixed 2    | machine ownership | 8.13   | per acre |`,
  printed: [
    { figure: "plan/incomePerAcre", prints: "62.50" },
    { figure: "plan/costPerAcre/byKind/fertilizer", prints: "13.50" },
    { figure: "plan/costPerAcre/byKind/fuel", prints: "3.78", ours: "3.77" },
    { figure: "plan/costPerAcre/operating", prints: "61.73", ours: "61.72" },
    { figure: "plan/netPerAcre/operating", prints: "0.76", ours: "0.78" },
    { figure: "plan/costPerAcre/byKind/machine ownership", prints: "15.41" },
    { figure: "plan/netPerAcre/full", prints: "-39.65", ours: "-39.63" },
  ],
};

/** 136 lb of gain from grazing at 0.75 are the other income. */
const irrigatedWheat2013: Budget = {
  id: "B09 irrigated wheat with grazing 2013",
  source: {
    title: "Projected costs and returns per acre: irrigated wheat with grazing, 2013",
    publisher,
    year: "2013",
    address: "https://studylib.net/doc/11007589/",
    where: "Table 22.A",
  },
  workbook: `
    Crops
    | Crop  | Expected price | Per-unit selling cost (haul) | Other income per acre |
    | Wheat | 8.70           | 0.77                         | 102.00                |
    Fields
    | Field    | Crop  | Acres | Yield goal |
    | One acre | Wheat | 1     | 60         |
    Items
    | Item                   | Kind       | Pack unit | Plan price per pack | Charged |
    | Seed                   | seed       | bu        | 23.11               |         |
    | Nitrogen, anhydrous    | fertilizer | lb        | 0.50                |         |
    | Phosphate              | fertilizer | lb        | 0.91                |         |
    | Nitrogen, liquid       | fertilizer | lb        | 0.68                |         |
    | Diesel                 | fuel       | gal       | 3.95                | as used |
    | Gasoline               | fuel       | gal       | 3.52                | as used |
    | Gas for irrigation     | irrigation | inch      | 4.40                | as used |
    | Repairs for irrigation | irrigation | inch      | 3.96                | as used |
    Applications
    | Field    | Item                   | Rate  | Rate unit | Status |
    | One acre | Seed                   | 1.2   | bu/ac     | plan   |
    | One acre | Nitrogen, anhydrous    | 60    | lb/ac     | plan   |
    | One acre | Phosphate              | 40    | lb/ac     | plan   |
    | One acre | Nitrogen, liquid       | 30    | lb/ac     | plan   |
    | One acre | Diesel                 | 2.903 | gal/ac    | plan   |
    | One acre | Gasoline               | 2.01  | gal/ac    | plan   |
    | One acre | Gas for irrigation     | 17.5  | inch/ac   | plan   |
    | One acre | Repairs for irrigation | 17.5  | inch/ac   | plan   |
    Operations
    | Field    | Operation              | Rate  | Basis    | Hours  | Status | Kind         |
    | One acre | Fertilizer application | 10.00 | per acre |        | plan   | custom work  |
    | One acre | Labour, first          | 10.70 | per hour | 0.4322 | plan   | hired labour |
    | One acre | Labour, second         | 10.70 | per hour | 0.5723 | plan   | hired labour |
    | One acre | Labour, third          | 10.70 | per hour | 0.2121 | plan   | hired labour |
    | One acre | Labour, fourth         | 10.70 | per hour | 2.4587 | plan   | hired labour |
    Other costs
    | Part   | Item               | Kind               | Amount | Basis    |
    | direct | Insecticide        | crop protection    | 8.76   | per acre |
    | direct | Crop insurance     | crop insurance     | 23.90  | per acre |
    | direct | Repairs, first     | repairs            | 4.91   | per acre |
    | direct | Repairs, second    | repairs            | 6.21   | per acre |
    | direct | Repairs, third     | repairs            | 0.16   | per acre |
    | direct | Operating interest | operating interest | 12.74  | per acre |
    | fixed  | Fixed, first       | machine ownership  | 7.67   | per acre |
    | fixed  | Fixed, second      | machine ownership  | 8.86   | per acre |
    | fixed  | Fixed, third       | machine ownership  | 0.24   | per acre |
    | fixed  | Fixed, fourth      | machine ownership  | 22.58  | per acre |`,
  printed: [
    { figure: "plan/incomePerAcre", prints: "624.00" },
    { figure: "plan/costPerAcre/operating", prints: "431.65", ours: "431.58" },
    { figure: "plan/netPerAcre/operating", prints: "192.34", ours: "192.42" },
    { figure: "plan/costPerAcre/byKind/machine ownership", prints: "39.36", ours: "39.35" },
    { figure: "plan/costPerAcre/full", prints: "471.01", ours: "470.93" },
    { figure: "plan/netPerAcre/full", prints: "152.98", ours: "153.07" },
  ],
};

/** 68 lb of gain from grazing at 0.50 are the other income, and come off before a break-even is taken. */
const wheat2016: Budget = {
  id: "B11 wheat with grazing 2016",
  source: {
    title: "Estimated costs and returns: dryland wheat with grazing, 160 acres, South Plains (district 2), 2016",
    publisher,
    year: "2016",
    address: "https://studylib.net/doc/11004506/",
    where: "whole table",
  },
  workbook: `
    Crops
    | Crop  | Expected price | Per-unit selling cost (haul) | Other income per acre |
    | Wheat | 5.50           | 0.14                         | 34.00                 |
    Fields
    | Field | Crop  | Acres | Yield goal | Tenure    | Rent per acre |
    | All   | Wheat | 160   | 18         | cash rent | 30            |
    Operations
    | Field | Operation              | Rate  | Status |
    | All   | Harvest                | 14.00 | plan   |
    | All   | Fertilizer application | 4.75  | plan   |
    Other costs
    | Item               | Kind              | Amount | Basis    |
    | Herbicide          | crop protection   | 16.75  | per acre |
    | Seed               | seed              | 25.00  | per acre |
    | Nitrogen           | fertilizer        | 17.34  | per acre |
    | Crop insurance     | crop insurance    | 19.00  | per acre |
    | Insecticide        | crop protection   | 5.50   | per acre |
    | Labour             | hired labour      | 10.80  | per acre |
    | Diesel             | fuel              | 6.60   | per acre |
    | Gasoline           | fuel              | 4.50   | per acre |
    | Repairs, first     | repairs           | 0.50   | per acre |
    | Repairs, second    | repairs           | 6.00   | per acre |
    | Repairs, third     | repairs           | 3.00   | per acre |
    | Operating interest | operating interest | 5.23  | per acre |
    | Fixed, first       | machine ownership | 1.25   | per acre |
    | Fixed, second      | machine ownership | 12.00  | per acre |
    | Fixed, third       | machine ownership | 10.00  | per acre |
    | Management         | management        | 15.00  | per acre |
    | Fixed, sixth       | machine ownership | 2.00   | per acre |`,
  printed: [
    { figure: "plan/incomePerAcre", prints: "133.00" },
    { figure: "plan/costPerAcre/operating", prints: "141.49" },
    { figure: "plan/netPerAcre/operating", prints: "-8.49" },
    { figure: "plan/breakEvenPrice/operating", prints: "5.97" },
    { figure: "plan/costPerAcre/full", prints: "211.74" },
    { figure: "plan/netPerAcre/full", prints: "-78.74" },
    { figure: "plan/breakEvenPrice/full", prints: "9.87" },
    { figure: "plan/incomePerAcre", times: "160", prints: "21280.00" },
    { figure: "plan/costPerAcre/full", times: "160", prints: "33877.68", ours: "33878.40" },
    { figure: "plan/netPerAcre/full", times: "160", prints: "-12597.68", ours: "-12598.40" },
  ],
};

/** Only totals are legible. The price is the grain's part of the printed income over its bushels: (176.25 − 45) ÷ 35. */
const wheat1982: Budget = {
  id: "B13 irrigated wheat with grazing 1982",
  source: {
    title: "Irrigated winter wheat with grazing, 1982 crop budget",
    publisher,
    year: "1982",
    address: "https://studylib.net/doc/11000725/",
    where: "whole table; only totals are legible",
  },
  workbook: `
    Crops
    | Crop  | Expected price | Other income per acre |
    | Wheat | 3.75           | 45.00                 |
    Fields
    | Field    | Crop  | Acres | Yield goal |
    | One acre | Wheat | 1     | 35         |
    Other costs
    | Item             | Kind              | Amount | Basis    |
    | Variable, first  | other operating   | 124.12 | per acre |
    | Variable, second | other operating   | 11.55  | per acre |
    | Fixed            | machine ownership | 89.32  | per acre |`,
  printed: [
    { figure: "plan/incomePerAcre", prints: "176.25" },
    { figure: "plan/costPerAcre/operating", prints: "135.67" },
    { figure: "plan/netPerAcre/operating", prints: "40.58" },
    { figure: "plan/costPerAcre/full", prints: "224.99" },
    { figure: "plan/netPerAcre/full", prints: "-48.74" },
    { figure: "plan/breakEvenPrice/operating", prints: "2.59" },
    { figure: "plan/breakEvenPrice/full", prints: "5.14" },
  ],
};

const soybeans1981 = {
  title: "Irrigated soybeans, share-rented land, 1981 crop budget",
  publisher,
  year: "1981",
  address: "https://studylib.net/doc/11000495/",
  where: "whole table",
};
const fixedOf1981 = `
    | Fixed, first  | machine ownership | 43.31 | per acre |
    | Fixed, second | machine ownership | 12.94 | per acre |
    | Fixed, third  | machine ownership | 45.78 | per acre |`;

/** The source's way: the whole crop, and the landlord's net share (33 % of it less 33 % of the shared inputs) as a rent. */
const rentAsCost: Budget = {
  id: "B17 soybeans 1981, share rent as a cost",
  source: soybeans1981,
  workbook: `
    Crops
    | Crop     | Expected price |
    | Soybeans | 10.00          |
    Fields
    | Field    | Crop     | Acres | Yield goal | Tenure    | Rent per acre |
    | One acre | Soybeans | 1     | 40         | cash rent | 87.95         |
    Other costs
    | Item             | Kind            | Amount | Basis    |
    | Variable, first  | other operating | 137.91 | per acre |
    | Variable, second | other operating | 14.00  | per acre |
    ${fixedOf1981}`,
  printed: [
    { figure: "plan/incomePerAcre", prints: "400.00" },
    { figure: "plan/costPerAcre/operating", prints: "151.91" },
    { figure: "plan/netPerAcre/operating", prints: "248.09" },
    { figure: "plan/costPerAcre/full", prints: "341.89" },
    { figure: "plan/netPerAcre/full", prints: "58.11" },
  ],
};

/**
 * Our way: 67 % of the crop and of the shared inputs. These come to 133.48 of the 151.91, worked out from the printed
 * net share of 87.95: (33 % of 400.00 less 87.95) ÷ 33 %. The lease is the same, so the net return has to be.
 */
const rentAsShare: Budget = {
  id: "B17 soybeans 1981, share of crop and inputs",
  source: soybeans1981,
  workbook: `
    Crops
    | Crop     | Expected price |
    | Soybeans | 10.00          |
    Fields
    | Field    | Crop     | Acres | Yield goal | Tenure     | Operator share of crop % |
    | One acre | Soybeans | 1     | 40         | crop share | 67                       |
    Items
    | Item          | Kind       | Pack unit | Plan price per pack | Operator share of cost % |
    | Shared inputs | fertilizer | set       | 133.48              | 67                       |
    Applications
    | Field    | Item          | Rate | Rate unit | Status |
    | One acre | Shared inputs | 1    | set/ac    | plan   |
    Other costs
    | Item         | Kind            | Amount | Basis    |
    | Other inputs | other operating | 18.43  | per acre |
    ${fixedOf1981}`,
  printed: [{ figure: "plan/netPerAcre/full", prints: "58.11" }],
};

export const texasBudgets: readonly Budget[] = [corn2004, wheat2002, irrigatedWheat2013, wheat2016, wheat1982, rentAsCost, rentAsShare];
