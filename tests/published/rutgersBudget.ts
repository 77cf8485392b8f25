/**
 * Organic grain corn in the north-eastern United States, 1996: lines of quantity and price. Figures only; read in 2026.
 *
 * Each line of quantity and price is an item with one invoice for one acre, whose amount is the printed extension; the
 * operator's hours are work by the hour; six points are dried off 109 bushels. What the source calls variable is our
 * operating layer, all of it with its management fee our full one. The price of the corn was not kept; none of the
 * figures here rests on it. The moistures are ours: the source prints the six points between them.
 */
import type { Budget } from "./budget";

export const rutgersBudget: Budget = {
  id: "B06 organic corn 1996",
  source: {
    title: "Table 63: costs and returns for corn for grain per acre (organic practices), northeastern United States",
    publisher: "Rutgers Cooperative Extension",
    year: "1996",
    where: "whole table",
    address: "https://farmmgmt.rutgers.edu/table-63-costs-and-returns-for-corn-for-grain-per-acre/",
  },
  workbook: `
    Season
    | Setting                 | Value |
    | Drying charge per point | 0.05  |
    Crops
    | Crop | Expected price | Standard moisture | Expected harvest moisture |
    | Corn | 1              | 15.5              | 21.5                      |
    Fields
    | Field    | Crop | Acres | Yield goal | Tenure | Land charge per acre |
    | One acre | Corn | 1     | 109        | owned  | 50.00                |
    Items
    | Item        | Kind            | Pack unit | Charged |
    | Manure      | fertilizer      | ton       | as used |
    | Hairy vetch | seed            | unit      | as used |
    | Pesticides  | crop protection | acre      | as used |
    | Seed        | seed            | unit      | as used |
    | Diesel      | fuel            | gal       | as used |
    Purchases
    | Date       | Item        | Quantity | Unit | Unit price | Amount |
    | 1996-05-01 | Manure      | 4.5      | ton  | 31.00      | 139.50 |
    | 1996-05-01 | Hairy vetch | 0.8      | unit | 95.75      | 76.60  |
    | 1996-05-01 | Pesticides  | 1        | acre | 95.00      | 95.00  |
    | 1996-05-01 | Seed        | 25       | unit | 1.05       | 26.25  |
    | 1996-05-01 | Diesel      | 11.2     | gal  | 0.969      | 10.85  |
    Applications
    | Field    | Item        | Rate | Rate unit | Status |
    | One acre | Manure      | 4.5  | ton/ac    | done   |
    | One acre | Hairy vetch | 0.8  | unit/ac   | done   |
    | One acre | Pesticides  | 1    | acre      | done   |
    | One acre | Seed        | 25   | unit/ac   | done   |
    | One acre | Diesel      | 11.2 | gal/ac    | done   |
    Operations
    | Field    | Operation       | Rate  | Basis    | Hours | Status | Kind         |
    | One acre | Operator labour | 14.48 | per hour | 2.88  | done   | hired labour |
    Other costs
    | Part       | Item                       | Kind               | Amount | Basis    |
    | variable   | Machinery, variable        | repairs            | 88.59  | per acre |
    | interest   | Operating interest         | operating interest | 14.82  | per acre |
    | fixed      | Machinery, fixed           | machine ownership  | 40.78  | per acre |
    | management | Management, 7 per cent     | management         | 43.18  | per acre |`,
  printed: [
    { figure: "outlook/costPerAcre/byKind/drying", prints: "32.70" },
    { figure: "outlook/costPerAcre/byKind/fertilizer", prints: "139.50" },
    { figure: "outlook/costPerAcre/byKind/fuel", prints: "10.85" },
    { figure: "outlook/costPerAcre/byKind/hired labour", prints: "41.70" },
    { figure: "outlook/costPerAcre/operating", parts: ["variable"], prints: "511.19" },
    { figure: "outlook/costPerAcre/operating", prints: "526.01" },
    { figure: "outlook/costPerAcre/full", parts: ["variable", "interest", "fixed"], prints: "616.79" },
    // The parts that are printed, 616.79 and 43.18, add up to ours. The printed total lacks the 40.78 of fixed machinery.
    { figure: "outlook/costPerAcre/full", prints: "619.19", ours: "659.97" },
  ],
};
