/** One small workbook for each problem: what is wrong in it, where, and what stands there. */
import type { ProblemCode } from "../../src/workbook/problem";

export type ProblemCase = {
  readonly code: ProblemCode;
  /** What somebody did. */
  readonly slip: string;
  /** The workbook, as tests/support/tableFromText.ts reads it. */
  readonly workbook: string;
  /** Table, row and column, as the problem names them. */
  readonly at: readonly [table: string, row?: number | undefined, column?: string];
  readonly found?: string;
  /** The slip cannot be made without others: a crop without fields has no acres either. */
  readonly brings?: true;
};

const crops = `
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
`;
const fields = `
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
`;
const farm = crops + fields;
const items = `
Items
| Item | Kind | Pack name | Pack size | Pack unit | Plan price per pack |
| Urea | fertilizer | | | lb | 0.3 |
| Seed | seed | bag | 80000 | seeds | 280 |
`;
const purchase = (cells: string) => `${farm}${items}
Purchases
| Date | Item | Quantity | Unit | Unit price | Amount |
${cells}
`;
const application = (cells: string, table = items) => `${farm}${table}
Applications
| Field or Crop | Item | Rate | Rate unit | Acres | Date | Status |
${cells}
`;
const operation = (cells: string, before = farm) => `${before}
Operations
| Field or Crop | Operation | Acres | Rate | Basis | Machine | Date | Status |
${cells}
`;
const otherCost = (cells: string) => `${farm}
Other costs
| Item | Kind | Amount | Basis | Shared over | Cash | Month |
${cells}
`;
const parts = (cells: string) => `
Season
| Setting | Value |
| Stand response | none |
${farm}
Stand counts
| Field | Date | Plants | Latitude | Longitude | Part | Part acres | Part planted | Hoop diameter |
${cells.replaceAll(/\|(?=\n|$)/g, "| 30 |")}
`;
const season = (rows: string) => `
Season
| Setting | Value |
${rows}
${farm}`;
const planterCheck = (cells: string) => `${farm}
Items
| Item | Kind | Pack unit | Plan price per pack |
| Blade | repairs | each | 30 |
| Seal | repairs | each | |

Planter checks
| Machine | Row | Part | New | Replace at | Measured | Finding | Item | Hours |
${cells}
`;
const trialled = (rows: string, hybrids = "| Oak 1 | yes |", season = "") => `${season}
Crops
| Crop | Yield unit | Standard moisture | Expected price |
| Corn | bu | 15.5 | 4 |
${fields}
Hybrids
| Hybrid | Check |
${hybrids}

Hybrid trials
| Trial | Year | Hybrid | Yield | Moisture | Test weight |
${rows}
`;
const oakTrial = "| North | 2030 | Oak 1 | 200 | 18 | 56 |";
const loads = "\nHarvest\n| Field | Date | Weight or bushels | Moisture |\n| Alder | 2031-10-10 | 900 | 15 |\n";
const harvested = (done: string) =>
  `${crops}\nFields\n| Field | Crop | Acres | Yield goal | Harvest done |\n| Alder | Corn | 100 | 200 | ${done} |\n`;
const planted = (row: string) => `${crops}\nFields\n| Field | Crop | Acres | Yield goal | Planted date | Planned planting date |\n${row}`;
const twoCrops = (row: string) =>
  `${crops.trimEnd()}\n| Peas | bu | 6 |\n\nFields\n| Field | Crop | Acres | Yield goal | Same land as | Harvest done |\n| Alder | ` +
  `Corn | 100 | 200 | | |\n${row}\n`;
const land = (row: string) => `${crops}
Fields
| Field | Crop | Acres | Yield goal | Tenure | Rent per acre | Land charge per acre | Operator share of crop % |
${row}
`;
const flexible = (row: string, more = "") => `${crops}
Fields
| Field | Crop | Acres | Yield goal | Tenure | Rent per acre | Base gross per acre | Share above base % | Most rent | Same land as |
| Alder | Corn | 100 | 200 | flexible rent | 200 | ${row} | |
${more}`;
const change = (row: string) => `${farm}
Changes
| Change | Quadrant | Item | Quantity | Unit | Price | Basis | Years kept | Salvage | Acres | Interest rate |
${row}
`;
const planter = `
Machines
| Machine | List price | Years kept | Width | Speed | Fuel per acre | Fuel price | Labour per hour | Real interest rate |
| Planter | 100000 | 10 | 30 | 5 | 0.5 | 4 | 20 | 4% |
`;

/** Machines pulled by the tractors given as name, list price and years kept. */
const tractors = (...cells: readonly string[]) => `
Machines
| Machine | List price | Years kept | Width | Speed | Labour per hour | Real interest rate | Tractor | Tractor list price | Tractor years kept |
${cells.map((cell, index) => `| Implement ${index + 1} | 100000 | 10 | 30 | 5 | 20 | 4% ${cell}`).join("\n")}
`;

/** A farm whose machines are charged, and loans. */
const loans = (rows: string, also = "") => `Season
| Setting | Value |
| Season year | 2031 |
${farm}
Loans
| Name | Kind | Balance | Rate | Payment | Payments a year | Next due | First due | For |
${rows}
Other costs
| Item | Kind | Amount | Basis |
| Combine | machine ownership | 30 | per acre |
${also}`;

const scaled = (
  rows: string,
) => `${crops.replace("| Crop | Yield unit | Expected price |\n| Corn | bu | 4 |", "| Crop | Yield unit | Weight per bu | Expected price |\n| Corn | bu | 56 | 4 |")}${fields.replaceAll("Yield goal |", "Yield goal | Harvest done |").replace("200 |", "200 | |")}
Harvest
| Field | Date | Weight or bushels | Gross | Tare | Moisture | Ticket |
${rows}
`;
const docked = (
  line: string,
  testWeight: string,
) => `${season("| Test weight dock | Docks |").replaceAll("Yield goal |", "Yield goal | Harvest done |").replace("| Alder | Corn | 100 | 200 |", "| Alder | Corn | 100 | 200 | |")}
Docks
| Test weight | Dock |
| ${line} |
Harvest
| Field | Date | Weight or bushels | Moisture | Test weight |
| Alder | 2031-10-01 | 900 | 15 | ${testWeight} |
`;

const product = (cells: string) => `${farm}
Items
| Item | Kind | Pack unit | Plan price per pack | Sites of action | Controls |
| Spray A | crop protection | gal | 40 | ${cells} |
`;
const mixed = (rows: string) => `${product("4 | ")}
Applications
| Field or Crop | Item | Rate | Rate unit | Date | Status | Carrier per acre | Tank size |
${rows}
`;
const sprayed = (cells: string, weeds: string) => `${product(cells)}
Applications
| Field or Crop | Item | Rate | Rate unit | Status |
| Corn | Spray A | 1 | qt/ac | plan |
Weeds
| Field or Crop | Weed | Resistant to |
${weeds}
`;

const pastSeasons = (rows: string) => `${farm}
Past seasons
| Season | Field | Crop | Acres | Yield | Yield unit |
${rows}
`;

const recorded = (rows: string, place = "") => `${crops}
Fields
| Field | Crop | Acres | Yield goal | Planned planting date | Planted date | Weather place |
| Alder | Corn | 100 | 200 | 2031-05-05 | 2031-05-05 | ${place} |
Weather
| Date | High | Low | Place |
${rows}
`;

/** Two sheets of the grower's own with a line of the budget each, of one field and kind. */
const sheets = (...names: readonly string[]) =>
  `Matches\n| Table | Range | Column | Heading |\n` +
  `${names.flatMap((name) => ["For", "Kind", "Amount"].map((column) => `| Budget | ${name} | ${column} | ${column} |`)).join("\n")}\n${names.map((name, index) => `${name}\n| For | Kind | Amount |\n` + `| Alder | seed | ${110 + index} |`).join("\n")}`;

export const cases: readonly ProblemCase[] = [
  { code: "table-missing", slip: "has no fields at all", workbook: crops, at: ["Fields"] },
  {
    code: "column-missing",
    slip: "renamed a heading",
    workbook: farm.replace("Yield goal", "Target"),
    at: ["Fields", undefined, "Yield goal"],
  },
  {
    code: "column-unread",
    slip: "misspelled an optional heading",
    workbook: farm.replace("Yield goal |", "Yield goal | Rent per acer |").replace("| 200 |", "| 200 | 250 |"),
    at: ["Fields", undefined, "Rent per acer"],
    found: "Rent per acer",
  },
  {
    code: "column-twice",
    slip: "has two columns of acres",
    workbook: farm.replace("Acres |", "Acres | Acres (planted) |").replace("| 100 |", "| 100 | 98 |"),
    at: ["Fields", undefined, "Acres (planted)"],
    found: "Acres (planted)",
  },
  {
    code: "table-twice",
    slip: "copied a table",
    workbook: `${farm}\nFIELDS\n| Field | Crop | Acres | Yield goal |\n| Birch | Corn | 5 | 5 |`,
    at: ["Fields"],
    found: "FIELDS",
  },
  {
    code: "range-missing",
    slip: "deleted a matched sheet",
    workbook: `${farm}\nMatches\n| Table | Range | Column | Heading |\n| Sales | Gone!A1:B2 | Crop | What |`,
    at: ["Matches", 1, "Range"],
    found: "Gone!A1:B2",
  },
  {
    code: "wide-column-unsaid",
    slip: "added a column of costs to a sheet of one's own",
    at: ["Matches", 1, "Range"],
    found: "Hauling",
    workbook:
      `${farm}\nMatches\n| Table | Range | Column | Heading |\n| Budget | Costs by field | For | Field |\n| Budget | Costs by field | ` +
      "seed | Seed |\nCosts by field\n| Field | Seed | Hauling |\n| Alder | 110 | 12 |",
  },

  { code: "blank", slip: "left the acres out", workbook: farm.replace("| 100 |", "| |"), at: ["Fields", 1, "Acres"] },
  {
    code: "formula-error",
    slip: "has a broken formula",
    workbook: farm.replace("| 4 |", "| #DIV/0! |"),
    at: ["Crops", 1, "Expected price"],
    found: "#DIV/0!",
  },
  {
    code: "not-a-number",
    slip: "wrote words with a number",
    workbook: farm.replace("| 100 |", "| about 100 |"),
    at: ["Fields", 1, "Acres"],
    found: "about 100",
  },
  {
    code: "decimal-comma",
    slip: "typed a decimal comma",
    workbook: farm.replace("| 100 |", "| 100,5 |"),
    at: ["Fields", 1, "Acres"],
    found: "100,5",
  },
  {
    code: "negative",
    slip: "typed a minus too many",
    workbook: farm.replace("| 200 |", "| -200 |"),
    at: ["Fields", 1, "Yield goal"],
    found: "-200",
  },
  {
    code: "not-above-zero",
    slip: "entered a field of no acres",
    workbook: farm.replace("| 100 |", "| 0 |"),
    at: ["Fields", 1, "Acres"],
    found: "0",
  },
  {
    code: "not-a-date",
    slip: "wrote a season for a date",
    workbook: purchase("| early spring | Urea | 100 | lb | 0.3 | |"),
    at: ["Purchases", 1, "Date"],
    found: "early spring",
  },
  {
    code: "not-in-list",
    slip: "misspelled a kind",
    workbook: otherCost("| Office | ovrehead | 900 | whole farm | all | yes | |"),
    at: ["Other costs", 1, "Kind"],
    found: "ovrehead",
  },
  {
    code: "percent-range",
    slip: "entered a share above all",
    workbook: land("| Alder | Corn | 100 | 200 | crop share | | | 150 |"),
    at: ["Fields", 1, "Operator share of crop %"],
    found: "150",
  },
  {
    code: "rate-unclear",
    slip: "entered three quarters of a percent without its sign",
    workbook: loans("| Line | operating | 50000 | 0.75 | | | | | |"),
    at: ["Loans", 1, "Rate"],
    found: "0.75",
  },
  {
    code: "unknown-name",
    slip: "misspelled an item",
    workbook: purchase("| 2031-04-01 | Uera | 100 | lb | 0.3 | |"),
    at: ["Purchases", 1, "Item"],
    found: "Uera",
  },
  {
    code: "duplicate-name",
    slip: "entered a field twice",
    workbook: `${farm}| ALDER | Corn | 10 | 200 |`,
    at: ["Fields", 2, "Field"],
    found: "ALDER",
  },
  {
    code: "unknown-unit",
    slip: "bought by a unit of their own",
    workbook: purchase("| 2031-04-01 | Urea | 100 | scoops | 0.3 | |"),
    at: ["Purchases", 1, "Unit"],
    found: "scoops",
  },
  {
    code: "unit-not-convertible",
    slip: "bought a weight by the gallon",
    workbook: purchase("| 2031-04-01 | Urea | 100 | gal | 0.3 | |"),
    at: ["Purchases", 1, "Unit"],
    found: "gal",
  },
  {
    code: "analysis-missing",
    slip: "planned nitrogen of a product without an analysis",
    workbook: application("| Corn | Urea | 120 | lb N/ac | | 2031-05-01 | plan |"),
    at: ["Applications", 1, "Rate unit"],
    found: "lb N/ac",
  },

  {
    code: "not-an-analysis",
    slip: "let Excel make a date of an analysis",
    workbook: `${farm}\nItems\n| Item | Kind | Pack unit | Plan price per pack | Analysis N-P-K |\n| Starter | fertilizer | lb | 0.3 | 40278 |`,
    at: ["Items", 1, "Analysis N-P-K"],
    found: "40278",
  },

  {
    code: "target-missing",
    slip: "named no field",
    workbook: operation("| | Planting | | 20 | per acre | | 2031-05-01 | plan |"),
    at: ["Operations", 1],
  },
  { code: "amount-missing", slip: "entered no price", workbook: purchase("| 2031-04-01 | Urea | 100 | lb | | |"), at: ["Purchases", 1] },
  {
    code: "amount-disagrees",
    slip: "turned two figures round",
    workbook: purchase("| 2031-04-01 | Urea | 100 | lb | 0.3 | 300 |"),
    at: ["Purchases", 1, "Amount"],
    found: "300",
  },
  {
    code: "amount-sign",
    slip: "copied a payment with its minus",
    workbook: purchase("| 2031-04-01 | Urea | 100 | lb | | -30 |"),
    at: ["Purchases", 1, "Amount"],
    found: "-30",
  },
  {
    code: "rebate-sign",
    slip: "typed a rebate with a minus",
    workbook: purchase("| 2031-04-01 | Urea | 100 | lb | 0.3 | | -5 |").replace("| Amount |", "| Amount | Rebate |"),
    at: ["Purchases", 1, "Rebate"],
    found: "-5",
  },
  {
    code: "rebate-beyond",
    slip: "slipped a place in a rebate",
    workbook: purchase("| 2031-04-01 | Urea | 100 | lb | 0.3 | | 50 |").replace("| Amount |", "| Amount | Rebate |"),
    at: ["Purchases", 1, "Rebate"],
    found: "50",
  },
  {
    code: "pack-incomplete",
    slip: "gave a pack no unit",
    workbook: `${farm}${items.replace("| 80000 | seeds |", "| 80000 | |")}`,
    at: ["Items", 2],
  },
  {
    code: "cost-missing",
    slip: "entered no rate",
    workbook: operation("| Alder | Planting | | | | | 2031-05-01 | plan |"),
    at: ["Operations", 1],
  },
  {
    code: "hours-missing",
    slip: "paid by the hour without hours",
    workbook: operation("| Alder | Scouting | | 40 | per hour | | 2031-05-01 | plan |"),
    at: ["Operations", 1],
  },
  {
    code: "area-too-large",
    slip: "worked more acres than there are",
    workbook: operation("| Alder | Planting | 1000 | 20 | per acre | | 2031-05-01 | plan |"),
    at: ["Operations", 1, "Acres"],
    found: "1000",
  },
  {
    code: "tenure-conflict",
    slip: "pays rent on their own land",
    workbook: land("| Alder | Corn | 100 | 200 | owned | 250 | | |"),
    at: ["Fields", 1, "Rent per acre"],
    found: "250",
  },
  {
    code: "rent-missing",
    slip: "rents a field for no stated rent",
    workbook: land("| Alder | Corn | 100 | 200 | cash rent | | | |"),
    at: ["Fields", 1, "Rent per acre"],
  },
  {
    code: "rent-terms-missing",
    slip: "is on flexible rent without its base gross",
    workbook: flexible("| 40 | 400"),
    at: ["Fields", 1, "Base gross per acre"],
  },
  {
    code: "rent-terms-missing",
    slip: "is on flexible rent without the landlord's share",
    workbook: flexible("720 | |"),
    at: ["Fields", 1, "Share above base %"],
  },
  {
    code: "most-rent-low",
    slip: "took the most that may be added for the most rent",
    workbook: flexible("720 | 40 | 150"),
    at: ["Fields", 1, "Most rent"],
    found: "150",
  },
  {
    code: "flexible-rent-one-crop",
    slip: "grows two crops on land under flexible rent",
    workbook: flexible("720 | 40 | 400", "| Alder, second | Corn | 100 | 60 | | | | | | Alder |"),
    at: ["Fields", 1, "Tenure"],
  },
  {
    code: "share-missing",
    slip: "shares the crop without a share",
    workbook: land("| Alder | Corn | 100 | 200 | crop share | | | |"),
    at: ["Fields", 1, "Operator share of crop %"],
  },
  {
    code: "weight-missing",
    slip: "sold tonnes of a crop in bushels without a weight",
    workbook: `${farm}\nSales\n| Crop | Date | Quantity | Unit | Price |\n| Corn | 2031-03-01 | 100 | t | 160 |`,
    at: ["Sales", 1, "Unit"],
    found: "t",
  },
  {
    code: "place-missing",
    slip: "counted no length",
    workbook: `${farm}\nStand counts\n| Field | Date | Row width | Length | Plants |\n| Alder | 2031-06-01 | 30 | | 28 |`,
    at: ["Stand counts", 1],
  },
  {
    code: "part-unnamed",
    slip: "typed acres of a part without its name",
    workbook: parts("| Alder | 2031-06-01 | 28 | | | | 20 | |"),
    at: ["Stand counts", 1, "Part"],
    found: "20",
  },
  {
    code: "part-acres-missing",
    slip: "named a part and not its acres",
    workbook: parts("| Alder | 2031-06-01 | 28 | | | knoll | | |"),
    at: ["Stand counts", 1, "Part acres"],
    found: "knoll",
  },
  {
    code: "part-disagrees",
    slip: "gave one part two sizes",
    workbook: parts("| Alder | 2031-06-02 | 28 | | | knoll | 20 | |\n| Alder | 2031-06-01 | 27 | | | Knoll | 30 | |"),
    at: ["Stand counts", 2, "Part acres"],
    found: "30",
  },
  {
    code: "parts-exceed",
    slip: "made the parts larger than the field",
    workbook: parts("| Alder | 2031-06-01 | 28 | | | knoll | 60 | |\n| Alder | 2031-06-01 | 27 | | | flat | 60 | |"),
    at: ["Stand counts", 2, "Part acres"],
    found: "120",
  },
  {
    code: "part-needed",
    slip: "counted a spot in no part of a field that is all in parts",
    workbook: parts(
      "| Alder | 2031-06-01 | 28 | | | knoll | 40 | |\n| Alder | 2031-06-01 | 27 | | | flat | 60 | |\n| Alder | 2031-06-01 | 9 | | | | | |",
    ),
    at: ["Stand counts", 3, "Part"],
    found: "Alder",
  },
  {
    code: "part-unsaid",
    slip: "counted the whole field anew after its parts",
    workbook: parts("| Alder | 2031-06-01 | 28 | | | knoll | 40 | |\n| Alder | 2031-06-20 | 20 | | | | | |"),
    at: ["Stand counts", 2, "Part"],
    found: "2031-06-20",
  },
  {
    code: "counted-before-planting",
    slip: "dated a count before the planting",
    workbook: parts("| Alder | 2031-05-01 | 28 | | | knoll | 40 | 2031-05-20 |\n| Alder | 2031-06-20 | 20 | | | knoll | | |"),
    at: ["Stand counts", 1, "Date"],
    found: "2031-05-01",
  },
  {
    code: "coordinate-alone",
    slip: "typed a latitude without a longitude",
    workbook: parts("| Alder | 2031-06-01 | 28 | 41.5 | | | | |"),
    at: ["Stand counts", 1, "Longitude"],
    found: "",
  },
  {
    code: "coordinates-impossible",
    slip: "lost the point of a longitude",
    workbook: parts("| Alder | 2031-06-01 | 28 | 41.5 | -9362 | | | |"),
    at: ["Stand counts", 1, "Longitude"],
    found: "-9362",
  },
  {
    code: "coordinates-swapped",
    slip: "typed longitude and latitude the wrong way round",
    workbook: parts("| Alder | 2031-06-01 | 28 | -93.62 | 41.5 | | | |"),
    at: ["Stand counts", 1, "Latitude"],
    found: "-93.62, 41.5",
  },
  {
    code: "coordinates-far",
    slip: "mistyped a degree",
    workbook: parts(
      "| Alder | 2031-06-01 | 28 | 41.501 | -93.5 | | | |\n| Alder | 2031-06-01 | 27 | 42.502 | -93.5 | | | |\n" +
        "| Alder | 2031-06-01 | 26 | 41.503 | -93.5 | | | |",
    ),
    at: ["Stand counts", 2, "Latitude"],
    found: "69 miles",
  },
  {
    code: "coordinates-east",
    slip: "left the sign of a western longitude out",
    workbook: parts("| Alder | 2031-06-01 | 28 | 41.5 | 93.62 | | | |"),
    at: ["Stand counts", 1, "Longitude"],
    found: "93.62",
  },
  {
    code: "payment-missing",
    slip: "entered a term loan without its payment",
    workbook: loans("| Land note | term | 90000 | 6% | | | | | |"),
    at: ["Loans", 1],
  },
  {
    code: "payment-low",
    slip: "entered a payment below the interest",
    workbook: loans("| Land note | term | 90000 | 8% | 5000 | 1 | 2031-12-01 | | |"),
    at: ["Loans", 1, "Payment"],
    found: "5000.00",
  },
  {
    code: "payment-unread",
    slip: "entered a payment on the operating loan",
    workbook: loans("| Line | operating | 90000 | 8% | 5000 | 1 | 2031-12-01 | | |"),
    at: ["Loans", 1, "Payment"],
    found: "5000",
  },
  {
    code: "first-due-late",
    slip: "let a loan begin after its next payment",
    workbook: loans("| Land note | term | 90000 | 8% | 9000 | 1 | 2031-12-01 | 2032-12-01 | |"),
    at: ["Loans", 1, "First due"],
  },
  {
    code: "capital-not-charged",
    slip: "entered a loan and neither machines nor land",
    workbook: loans("| Land note | term | 90000 | 8% | 9000 | 1 | 2031-12-01 | | |").replace(/Other costs[^]*$/, ""),
    at: ["Loans", 1],
    found: "Alder",
  },

  {
    code: "quantity-missing",
    slip: "left a cost's quantity blank",
    workbook: change("| Wheels | added costs | Wheel pairs | | pair | 300 | lump sum | 5 | | 100 | 5% |"),
    at: ["Changes", 1, "Quantity"],
  },
  {
    code: "price-missing",
    slip: "priced nothing",
    workbook: change("| Wheels | added costs | Wheel pairs | 16 | pair | | lump sum | 5 | | 100 | 5% |"),
    at: ["Changes", 1, "Price"],
  },
  {
    code: "years-on-yearly",
    slip: "kept a yearly cost for years",
    workbook: change("| Wheels | added costs | Licence | 1 | year | 300 | per year | 5 | | 100 | 5% |"),
    at: ["Changes", 1, "Years kept"],
    found: "5",
  },
  {
    code: "salvage-unused",
    slip: "entered a salvage value without years",
    workbook: change("| Wheels | added costs | Wheel pairs | 16 | pair | 300 | lump sum | | 400 | 100 | 5% |"),
    at: ["Changes", 1, "Salvage"],
    found: "400",
  },
  {
    code: "change-disagrees",
    slip: "gave one change two areas",
    workbook: change(
      "| Wheels | added costs | Wheel pairs | 16 | pair | 300 | lump sum | 5 | | 100 | 5% |\n| Wheels | reduced costs | Labour | 1 " +
        "| h | 30 | per acre | | | 90 | |",
    ),
    at: ["Changes", 2, "Acres"],
    found: "90",
  },
  {
    code: "rate-missing",
    slip: "spread a price over years without a rate",
    workbook: change("| Wheels | added costs | Wheel pairs | 16 | pair | 300 | lump sum | 5 | | 100 | |"),
    at: ["Changes", 1, "Interest rate"],
  },
  {
    code: "area-missing",
    slip: "weighs a change on no land at all",
    workbook: change("| Wheels | added costs | Wheel pairs | 16 | pair | 300 | lump sum | 5 | | | 5% |").replace(
      "| Alder | Corn | 100 | 200 |",
      "",
    ),
    at: ["Changes", 1, "Acres"],
  },
  {
    code: "no-fields",
    slip: "changed a crop without fields",
    workbook:
      `${farm.replace("| Corn | bu | 4 |", "| Corn | bu | 4 |\n| Oats | bu | 3 |")}\nChanges\n| Change | Quadrant | Item | Quantity | ` +
      "Unit | Price | Basis | Acres | Crop |\n| Oat seed | added returns | Yield gain | | bu | | per acre | 50 | Oats |",
    at: ["Changes", 1],
    found: "Oats",
    brings: true,
  },

  {
    code: "setting-unknown",
    slip: "misspelled a setting",
    workbook: season("| Currrency | USD |"),
    at: ["Season", 1, "Setting"],
    found: "Currrency",
  },
  {
    code: "interest-incomplete",
    slip: "entered a rate without a repayment date",
    workbook: season("| Operating interest rate | 8% |"),
    at: ["Season", 1, "Value"],
  },
  {
    code: "no-price",
    slip: "used something that was never bought and has no price",
    workbook: application("| Corn | Urea | 100 | lb/ac | | 2031-05-01 | plan |", items.replace("| 0.3 |", "| |")),
    at: ["Items", 1, "Plan price per pack"],
    found: "Urea",
  },
  {
    code: "no-plan-price",
    slip: "planned something with only its paid price",
    workbook:
      `${application("| Corn | Urea | 100 | lb/ac | | 2031-05-01 | plan |", items.replace("| 0.3 |", "| |"))}\nPurchases\n| Date | ` +
      "Item | Quantity | Unit | Unit price |\n| 2031-04-01 | Urea | 10 | lb | 1 |",
    at: ["Items", 1, "Plan price per pack"],
    found: "Urea",
  },
  {
    code: "nothing-bought",
    slip: "sent back more than was bought",
    workbook: purchase("| 2031-04-01 | Urea | 100 | lb | 0.3 | |\n| 2031-06-01 | Urea | -110 | lb | 0.3 | |"),
    at: ["Purchases", 2, "Quantity"],
    found: "Urea",
  },
  {
    code: "year-missing",
    slip: "named a month of no year",
    workbook: otherCost("| Office | overhead | 900 | whole farm | all | yes | March |"),
    at: ["Other costs", 1, "Month"],
    found: "March",
  },
  {
    code: "crop-year-later",
    slip: "contracted grain of the next crop",
    workbook:
      `${season("| Season year | 2031 |")}\nSales\n| Crop | Date | Quantity | Price | Crop year |\n| Corn | 2031-06-01 | 5000 | 4.5 | ` +
      "2032 |",
    at: ["Sales", 1, "Crop year"],
    found: "2032",
  },
  {
    code: "season-year-missing",
    slip: "entered days of two years and no season year",
    workbook:
      `${purchase("| 2031-04-01 | Urea | 100 | lb | 0.3 | |")}\nApplications\n| Field or Crop | Item | Rate | Rate unit | Date | ` +
      "Status |\n| Alder | Urea | 1 | lb | 2030-10-20 | done |\n| Alder | Urea | 1 | lb | 2031-05-20 | plan |",
    at: ["Season"],
    found: "2030, 2031",
  },
  {
    code: "date-far",
    slip: "turned two figures of a year round",
    workbook: `${purchase("| 2013-04-01 | Urea | 100 | lb | 0.3 | |")}\nSeason\n| Setting | Value |\n| Season year | 2031 |`,
    at: ["Purchases", 1, "Date"],
    found: "2013-04-01",
  },
  {
    code: "date-missing",
    slip: "charges interest by date on work without one and plans no planting",
    workbook:
      `${season("| Operating interest rate | 8% |\n| Repayment date | 2031-12-01 |")}\nOperations\n| Field or Crop | Operation | ` +
      "Rate | Basis | Date | Status |\n| Alder | Planting | 20 | per acre | | plan |",
    at: ["Fields", 1, "Planned planting date"],
    found: "Alder",
  },
  {
    code: "fuel-twice",
    slip: "charges fuel by machine and by acres",
    workbook:
      `${operation("| Alder | Planting | | | | Planter | 2031-05-01 | plan |", farm + planter)}\nItems\n| Item | Kind | Pack unit |\n` +
      "| Diesel | fuel | gal |\nPurchases\n| Date | Item | Quantity | Unit | Unit price |\n| 2031-04-01 | Diesel | 500 | gal | 3 |",
    at: ["Items", 1, "Charged"],
    found: "Diesel",
  },
  {
    code: "stand-outside-table",
    slip: "counted a stand that no table knows",
    workbook:
      `${crops}\nFields\n| Field | Crop | Acres | Yield goal | Planted date | Planned planting date | Target stand | Row width |\n| ` +
      "Alder | Corn | 100 | 200 | 2031-07-20 | 2031-05-01 | 32000 | 30 |\nStand counts\n| Field | Date | Length | Plants |\n| Alder | " +
      "2031-08-01 | 17.42 | 28 |",
    at: ["Fields", 1, "Planted date"],
    found: "Alder",
  },
  {
    code: "planned-date-missing",
    slip: "planted a field whose goal is set for no day",
    workbook: planted("| Alder | Corn | 100 | 200 | 2031-05-20 | |"),
    at: ["Fields", 1, "Planned planting date"],
    found: "Alder",
  },
  {
    code: "harvest-open",
    slip: "weighed loads in a workbook that does not ask whether the harvest is done",
    workbook: `${farm}${loads}`,
    at: ["Fields", undefined, "Harvest done"],
    found: "Alder",
  },
  {
    code: "harvest-without-load",
    slip: "said that the harvest is done and weighed nothing",
    workbook: harvested("yes"),
    at: ["Fields", 1, "Harvest done"],
    found: "Alder",
  },
  {
    code: "load-after-done",
    slip: "weighed a load after the harvest was done",
    workbook: harvested("2031-10-01") + loads,
    at: ["Fields", 1, "Harvest done"],
    found: "Alder",
  },
  {
    code: "load-disagrees",
    slip: "typed a net weight that the scale ticket does not come to",
    workbook: scaled("| Alder | 2031-10-01 | 1010 | 84000 | 28000 | 15 | |"),
    at: ["Harvest", 1, "Weight or bushels"],
    found: "1010",
  },
  {
    code: "tare-above-gross",
    slip: "typed the truck empty where it was full",
    workbook: scaled("| Alder | 2031-10-01 | | 28000 | 84000 | 15 | |"),
    at: ["Harvest", 1, "Tare"],
    found: "84000",
  },
  {
    code: "ticket-twice",
    slip: "entered one scale ticket twice",
    workbook: scaled("| Alder | 2031-10-01 | 900 | | | 15 | 4711 |\n| Alder | 2031-10-01 | 900 | | | 15 | 4711 |"),
    at: ["Harvest", 2, "Ticket"],
    found: "4711",
  },
  {
    code: "dock-table-unknown",
    slip: "named a dock table that is not there",
    workbook: season("| Test weight dock | Docks |"),
    at: ["Season", 1, "Value"],
    found: "Docks",
  },
  {
    code: "dock-table-fault",
    slip: "has a dock table that never says from where nothing is docked",
    workbook: docked("53 | 0.02", "56"),
    at: ["Docks"],
    found: "Docks",
  },
  {
    code: "dock-outside",
    slip: "weighed a load lighter than the dock table goes",
    workbook: docked("53 | 0", "51"),
    at: ["Harvest", 1, "Test weight"],
    found: "51",
  },
  {
    code: "test-weight-beyond",
    slip: "typed the test weight of a load in kilograms a hectolitre",
    workbook: docked("53 | 0", "72"),
    at: ["Harvest", 1, "Test weight"],
    found: "72",
  },
  {
    code: "test-weight-missing",
    slip: "left a test weight out beside a dock table",
    workbook: docked("53 | 0", ""),
    at: ["Harvest", 1, "Test weight"],
    found: "Alder",
  },
  {
    code: "opening-beside",
    slip: "entered a bill of last year that is in the opening stock",
    workbook: `${season("| Season year | 2031 |")}${items}
Purchases
| Date | Item | Quantity | Unit | Amount | Opening stock |
| 2031-01-01 | Urea | 2000 | lb | 600 | yes |
| 2030-11-20 | Urea | 2000 | lb | 600 | |
`,
    at: ["Purchases", 2, "Date"],
    found: "Urea",
  },
  {
    code: "past-twice",
    slip: "kept a season twice by hand",
    workbook: pastSeasons("| 2030 | Alder | Corn | 100 | 190 | |\n| 2030 | alder | corn | 100 | 191 | |"),
    at: ["Past seasons", 2, "Field"],
    found: "2030 Alder",
  },
  {
    code: "past-unit",
    slip: "pasted years that were counted in tonnes",
    workbook: pastSeasons("| 2030 | Alder | Corn | 100 | 12.1 | t |"),
    at: ["Past seasons", 1, "Yield unit"],
    found: "t",
  },
  {
    code: "past-later",
    slip: "typed a year that is still to come",
    workbook: `Season\n| Setting | Value |\n| Season year | 2031 |\n${pastSeasons("| 2032 | Alder | Corn | 100 | 190 | |")}`,
    at: ["Past seasons", 1, "Season"],
    found: "2032",
  },
  {
    code: "past-unlike",
    slip: "spelled a field in another way",
    workbook: pastSeasons("| 2030 | Aldr | Corn | 100 | 190 | |"),
    at: ["Past seasons", 1, "Field"],
    found: "Aldr",
  },
  {
    code: "weed-twice",
    slip: "listed a weed twice in one field",
    workbook: sprayed("4 | Waterhemp", "| Alder | Waterhemp | 9 |\n| Alder | water hemp | |"),
    at: ["Weeds", 2, "Weed"],
    found: "water hemp",
  },
  {
    code: "not-sites",
    slip: "typed sites that Excel made a date of",
    workbook: sprayed("4 | Waterhemp", "| Alder | Waterhemp | 46279 |"),
    at: ["Weeds", 1, "Resistant to"],
    found: "46279",
  },
  {
    code: "controls-missing",
    slip: "sprays where weeds are listed and tells no weed of the product",
    workbook: sprayed("4 | ", "| Alder | Waterhemp | |"),
    at: ["Items", 1, "Controls"],
    found: "Spray A",
  },
  {
    code: "sites-missing",
    slip: "tells the weeds of a product and not its sites",
    workbook: sprayed(" | Waterhemp", "| Alder | Waterhemp | |"),
    at: ["Items", 1, "Sites of action"],
    found: "Spray A",
  },
  {
    code: "weed-unlike",
    slip: "spelled a weed in another way",
    workbook: sprayed("4 | Watrhemp, Velvetleaf", "| Alder | Waterhemp | |"),
    at: ["Items", 1, "Controls"],
    found: "Watrhemp",
  },
  {
    code: "mix-disagrees",
    slip: "typed two carriers for one mix",
    workbook: mixed(
      "| Corn | Spray A | 1 | qt/ac | 2031-05-01 | plan | 15 | 500 |\n| Corn | Spray A | 2 | pt/ac | 2031-05-01 | plan | 20 | |",
    ),
    at: ["Applications", 2, "Carrier per acre"],
    found: "20",
  },
  {
    code: "tank-missing",
    slip: "typed a carrier and no tank",
    workbook: mixed("| Corn | Spray A | 1 | qt/ac | 2031-05-01 | plan | 15 | |"),
    at: ["Applications", 1, "Tank size"],
    found: "Corn",
  },
  {
    code: "day-twice",
    slip: "pasted a day twice",
    workbook: recorded("| 2031-05-06 | 70 | 50 | |\n| 2031-05-06 | 71 | 50 | |"),
    at: ["Weather", 2, "Date"],
    found: "2031-05-06",
  },
  {
    code: "low-above-high",
    slip: "typed high and low the wrong way round",
    workbook: recorded("| 2031-05-06 | 50 | 70 | |"),
    at: ["Weather", 1, "Low"],
    found: "70",
  },
  {
    code: "temperature-unlike",
    slip: "pasted tenths of a degree",
    workbook: recorded("| 2031-05-06 | 289 | 50 | |"),
    at: ["Weather", 1, "High"],
    found: "289",
  },
  {
    code: "weather-place-missing",
    slip: "has two places and says for no field which",
    workbook: recorded("| 2031-05-06 | 70 | 50 | North |\n| 2031-05-06 | 70 | 50 | South |"),
    at: ["Fields", 1, "Weather place"],
    found: "Alder",
  },
  {
    code: "weather-place-unknown",
    slip: "named a place that has no days",
    workbook: recorded("| 2031-05-06 | 70 | 50 | North |", "Nroth"),
    at: ["Fields", 1, "Weather place"],
    found: "Nroth",
  },
  {
    code: "day-later",
    slip: "typed a day of the next year",
    workbook: `${recorded("| 2032-05-06 | 70 | 50 | |\n| 2031-05-06 | 70 | 50 | |")}\nSeason\n| Setting | Value |\n| Season year | 2031 |`,
    at: ["Weather", 1, "Date"],
    found: "2032-05-06",
  },
  {
    code: "same-land",
    slip: "grew more of a second crop than there is land",
    workbook: twoCrops("| Alder peas | Peas | 120 | 40 | Alder | |"),
    at: ["Fields", 2, "Acres"],
    found: "120",
  },
  {
    code: "next-crop-here",
    slip: "entered a pass for the second crop under the first",
    workbook: `${twoCrops("| Alder peas | Peas | 100 | 40 | Alder | |").replace("| Alder | Corn | 100 | 200 | | |", "| Alder | Corn | 100 | 200 | | yes |")}${loads}Operations\n| Field or Crop | Operation | Rate | Date | Status |\n| Alder | Drilling | 20 | 2031-10-12 | done |`,
    at: ["Operations", 1],
    found: "Alder",
  },
  {
    code: "machine-zero",
    slip: "runs a machine whose hours cost nothing",
    workbook: operation("| Alder | Planting | | | | Planter | 2031-05-01 | plan |", farm + planter.replace("| 20 |", "| |")),
    at: ["Machines", 1, "Labour per hour"],
  },
  {
    code: "stand-table-unknown",
    slip: "named a table of yields that is not there",
    workbook: season("| Stand response | My own counts |"),
    at: ["Season", 1, "Value"],
    found: "My own counts",
  },
  {
    code: "stand-table-crop",
    slip: "has a table of yields that names no crop",
    workbook: `${season("| Stand response | Own_yields |").replace("| Corn | bu | 4 |", "| Corn | bu | 4 |\n| Oats | bu | 3 |")}\nOwn_yields\n| Planted | 20000 | 30000 |\n| 2031-05-01 | 80 | 100 |`,
    at: ["Own_yields"],
    found: "Own_yields",
  },
  {
    code: "stand-table-fault",
    slip: "has words in a table of yields",
    workbook: `${season("| Stand response | Own_yields |")}\nOwn_yields\n| Planted | 20000 | 30000 |\n| 2031-05-01 | poor | 100 |`,
    at: ["Own_yields", 1, "20000"],
    found: "poor",
  },
  {
    code: "done-twice",
    slip: "marked a planned row as done and entered the pass as well",
    workbook: operation(
      "| Alder | Spraying | | 9 | per acre | | 2031-06-01 | done as planned |\n| Corn | spraying | | 9 | per acre | | 2031-06-01 | done |",
    ),
    at: ["Operations", 2, "Status"],
    found: "spraying",
  },
  {
    code: "sum-row",
    slip: "added the fields up in a row that does not say so",
    workbook: `${farm}| Birch | Corn | 42 | 190 |\n| All corn | Corn | 142 | 190 |`,
    at: ["Fields", 3, "Acres"],
    found: "142",
  },
  {
    code: "sum-maybe",
    slip: "paid as much as three other costs came to",
    workbook: otherCost(
      "| Office | overhead | 500 | whole farm | | | |\n| Phone | overhead | 200 | whole farm | | | |\n| Post | overhead | 100 | " +
        "whole farm | | | |\n| Books | overhead | 800 | whole farm | | | |",
    ),
    at: ["Other costs", 4, "Amount"],
    found: "800",
  },
  {
    code: "total-row",
    slip: "typed a total under the fields",
    workbook: `${crops}${fields}| Total | | 100 | |`,
    at: ["Fields", 2],
    found: "Total",
  },
  {
    code: "table-almost",
    slip: "named a table almost as ours",
    workbook: `${farm}\ntblOperations\n| Field | Operation | Status | Rate |\n| Alder | Planting | plan | 20 |`,
    at: ["Operations"],
    found: "tblOperations",
  },
  {
    code: "table-beside",
    slip: "copied a table and went on in the copy",
    workbook:
      `${purchase("| 2031-04-01 | Urea | 100 | lb | 0.3 | |")}\nPurchases2\n| Date | Item | Quantity | Unit | Unit price |\n| ` +
      "2031-05-01 | Urea | 100 | lb | 0.3 |",
    at: ["Purchases"],
    found: "Purchases2",
  },
  {
    code: "heading-unit",
    slip: "named hectares in a heading of a season in acres",
    workbook: `${crops}\nFields\n| Field | Crop | Area (ha) | Yield goal |\n| Alder | Corn | 100 | 200 |`,
    at: ["Fields", undefined, "Area (ha)"],
    found: "Area (ha)",
  },
  {
    code: "rows-below",
    slip: "typed rows right under a table that did not grow",
    workbook: `${farm}\n> | Birch | Corn | 42 | 190 |\n> | Total | | 142 | |`,
    at: ["Fields", 2],
    found: "1",
  },
  {
    code: "rows-near",
    slip: "reckons something below a table",
    workbook: `${farm}\n> | | | | |\n> | acres left | | 42 | |`,
    at: ["Fields", 3],
    found: "1",
  },
  {
    code: "example-row",
    slip: "left a row that the table came with",
    workbook: otherCost("| Example: replace | overhead | 2500 | whole farm | all | yes | March |"),
    at: ["Other costs", 1, "Item"],
    found: "Example: replace",
  },
  {
    code: "line-twice",
    slip: "entered an invoice line twice",
    workbook: purchase("| 2031-04-01 | Urea | 100 | lb | 0.3 | |\n| 2031-04-01 | Urea | 100 | lb | | 30 |"),
    at: ["Purchases", 2],
    found: "Urea",
  },
  {
    code: "price-unlike",
    slip: "typed a price of a ton for a pound",
    workbook: purchase("| 2031-04-01 | Urea | 100 | lb | 0.3 | |\n| 2031-04-02 | Urea | 100 | lb | 600 | |"),
    at: ["Purchases", 2, "Unit price"],
    found: "600 per lb",
  },
  {
    code: "year-unlike",
    slip: "let Excel put the year to a date",
    workbook: purchase(
      "| 2031-04-01 | Urea | 100 | lb | 0.3 | |\n| 2032-04-20 | Urea | 110 | lb | 0.3 | |\n| 2031-05-02 | Urea | 100 | lb | 0.3 | |",
    ).replace("Crops", "Season\n| Setting | Value |\n| Season year | 2031 |\nCrops"),
    at: ["Purchases", 2, "Date"],
    found: "2032-04-20",
  },
  {
    code: "quantity-zero",
    slip: "entered a unit price for none",
    workbook: purchase("| 2031-04-01 | Urea | 0 | lb | 0.3 | |"),
    at: ["Purchases", 1, "Quantity"],
    found: "0",
  },
  {
    code: "money-alone",
    slip: "entered a credit of no quantity",
    workbook: purchase("| 2031-04-01 | Urea | 100 | lb | 0.3 | |\n| 2031-06-01 | Urea | 0 | lb | | -5 |"),
    at: ["Purchases", 2, "Quantity"],
    found: "0",
  },
  { code: "cost-none", slip: "entered no cost", workbook: farm, at: ["Fields", 1], found: "Alder" },
  {
    code: "entry-beside",
    slip: "typed a rate beside a machine",
    workbook: operation("| Alder | Planting | | 22 | | Planter | 2031-05-01 | plan |", farm + planter),
    at: ["Operations", 1, "Rate"],
    found: "22",
  },
  {
    code: "budget-twice",
    slip: "budgeted the same line twice",
    workbook: `${farm}\nBudget\n| For | Kind | Amount |\n| Corn | seed | 120 |\n| Corn | seed | 120 |`,
    at: ["Budget", 2],
    found: "seed",
  },
  {
    code: "per-acre-high",
    slip: "budgeted the seed of the whole crop as if for an acre",
    workbook: `${farm}\nBudget\n| For | Kind | Amount |\n| Corn | seed | 12000 |`,
    at: ["Budget", 1, "Amount"],
    found: "12000.00",
  },
  {
    code: "kind-sum",
    slip: "budgeted two fertilizers and what they come to",
    workbook: `${farm}\nBudget\n| For | Kind | Amount |\n| Corn | Anhydrous | 92.4 |\n| Corn | Starter | 28 |\n| Corn | fertilizer | 120.4 |`,
    at: ["Budget", 3, "Amount"],
    found: "120.40",
  },
  {
    code: "sheet-year",
    slip: "matched the sheets of two years",
    workbook: `${farm}\n${sheets("Costs 2030", "Costs 2031")}`,
    at: ["Budget", 1],
    found: "Costs 2030",
  },
  {
    code: "sheet-again",
    slip: "matched a plan and its copy",
    workbook: `${farm}\n${sheets("Costs", "Costs (2)")}`,
    at: ["Budget", 2],
    found: "Costs (2)",
  },
  {
    code: "sum-left",
    slip: "added up two fields without saying so",
    at: ["Budget", 5],
    found: "Both",
    workbook:
      `${farm}| Birch | Corn | 50 | 200 |\nMatches\n| Table | Range | Column | Heading |\n| Budget | Costs by field | For | Field |\n` +
      "| Budget | Costs by field | seed, whole | Seed |\n| Budget | Costs by field | fuel, whole | Fuel |\nCosts by field\n| Field | " +
      "Seed | Fuel |\n| Alder | 110 | 12 |\n| Birch | 100 | 14 |\n| Both | 210 | 26 |",
  },
  {
    code: "bill-of-used",
    slip: "charged an item directly that Applications uses",
    workbook:
      `${application("| Alder | Urea | 100 | lb/ac | | 2031-05-01 | plan |")}\nPurchases\n| Date | Item | Quantity | Unit | Amount | ` +
      "For |\n| 2031-04-01 | Urea | 100 | lb | 30 | Corn |",
    at: ["Purchases", 1, "For"],
    found: "Corn",
  },
  {
    code: "kind-alone",
    slip: "gave a line another kind than its item",
    workbook:
      `${farm}${items}\nPurchases\n| Date | Item | Quantity | Unit | Amount | Kind | For |\n| 2031-04-01 | Urea | 100 | lb | 30 | ` +
      "supplies | |",
    at: ["Purchases", 1, "Kind"],
    found: "supplies",
  },
  {
    code: "bill-beside-done",
    slip: "entered the bill of work that a row counts",
    workbook:
      `${operation("| Alder | Spraying | | 9 | per acre | | 2031-05-01 | done |")}\nPurchases\n| Date | Amount | Kind | For |\n| ` +
      "2031-06-01 | 900 | custom work | Alder |",
    at: ["Purchases", 1],
    found: "custom work",
  },
  {
    code: "all-in-disagrees",
    slip: "marked one of two lines",
    workbook: `${farm}\nBudget\n| For | Kind | Amount | All in |\n| Corn | seed | 120 | yes |\n| Corn | seed | 20 | |`,
    at: ["Budget", 2, "All in"],
  },
  {
    code: "cost-twice",
    slip: "entered fuel as another cost beside machines that burn it",
    workbook:
      `${operation("| Alder | Planting | | | | Planter | 2031-05-01 | plan |", farm + planter)}\nOther costs\n| Item | Kind | Amount ` +
      "| Basis |\n| Diesel | fuel | 20 | per acre |",
    at: ["Other costs", 1, "Kind"],
    found: "fuel",
  },
  {
    code: "cost-twice",
    slip: "budgeted haul beside a selling cost",
    workbook:
      `Crops\n| Crop | Expected price | Per-unit selling cost |\n| Corn | 4 | 0.2 |${fields}\nBudget\n| For | Kind | Amount |\n| Corn ` +
      "| haul | 30 |",
    at: ["Budget", 1, "Kind"],
    found: "haul",
  },
  {
    code: "tractor-disagrees",
    slip: "gave one tractor two list prices",
    workbook: farm + tractors("| Big one | 200000 | 10 |", "| Big one | 210000 | 10 |"),
    at: ["Machines", 2, "Tractor list price"],
    found: "210000",
  },
  {
    code: "tractor-unnamed",
    slip: "left the tractor's name out",
    workbook: farm + tractors("| | 200000 | |"),
    at: ["Machines", 1, "Tractor list price"],
    found: "200000",
  },
  {
    code: "other-currency",
    slip: "typed a price in euros into a workbook in dollars",
    workbook: farm.replace("| 4 |", "| €4.00 |"),
    at: ["Crops", 1, "Expected price"],
    found: "€4.00",
  },
  {
    code: "number-beyond",
    slip: "leant on a key in a price",
    workbook: farm.replace("| 4 |", "| 1e9000000 |"),
    at: ["Crops", 1, "Expected price"],
    found: "1e9000000",
  },
  {
    code: "crop-unplanted",
    slip: "sold a crop that grows in no field",
    workbook:
      `${farm.replace("| Corn | bu | 4 |", "| Corn | bu | 4 |\n| Oats | bu | 3 |")}\nSales\n| Crop | Date | Quantity | Price |\n| ` +
      "Oats | 2031-06-01 | 10000 | 5 |",
    at: ["Sales", 1],
    found: "Oats",
  },
  {
    code: "sizes-incomplete",
    slip: "measured a disc and left its size when new out",
    workbook: planterCheck("| Planter | 1 | Opener disc | | 14.5 | 14.6 | | | |"),
    at: ["Planter checks", 1, "New"],
  },
  {
    code: "no-wear",
    slip: "typed one size twice",
    workbook: planterCheck("| Planter | 1 | Opener disc | 15 | 15 | 14.6 | | | |"),
    at: ["Planter checks", 1, "Replace at"],
    found: "15",
  },
  {
    code: "part-unpriced",
    slip: "has no price of a part that is due",
    workbook: planterCheck("| Planter | 3 | Meter | | | | replace | Seal | |"),
    at: ["Planter checks", 1, "Item"],
    found: "Seal",
  },
  {
    code: "wage-missing",
    slip: "has no wage for the hours in the shop",
    workbook: planterCheck("| Planter | 3 | Meter | | | | replace | | 2 |"),
    at: ["Planter checks", 1, "Hours"],
    found: "2",
  },
  {
    code: "beyond-new",
    slip: "left the point out of a size",
    workbook: planterCheck("| Planter | 1 | Opener disc | 15 | 14.5 | 146 | | | |"),
    at: ["Planter checks", 1, "Measured"],
    found: "146",
  },
  {
    code: "part-twice",
    slip: "an opener measured in March and again in April",
    workbook: planterCheck(
      "| Planter | 1 | Opener disc | 15 | 14.5 | 14.4 | | | |\n| Planter | 1 | opener disc | 15 | 14.5 | 14.3 | | | |",
    ),
    at: ["Planter checks", 2, "Part"],
    found: "opener disc",
  },
  {
    code: "finding-unlike",
    slip: "found good what is worn out",
    workbook: planterCheck("| Planter | 1 | Opener disc | 15 | 14.5 | 14.4 | good | | |"),
    at: ["Planter checks", 1, "Finding"],
    found: "good",
  },
  {
    code: "basis-area",
    slip: "paid by the acre in a season of hectares",
    workbook: `Season\n| Setting | Value |\n| Area unit | ha |\n${otherCost("| Premium | crop insurance | 18 | per acre | | | |")}`,
    at: ["Other costs", 1, "Basis"],
    found: "per acre",
  },
  {
    code: "ton-unclear",
    slip: "buys by the ton what is counted in pounds, on hectares",
    workbook: purchase("| 2031-04-01 | Urea | 100 | ton | 0.3 | |").replace(
      "Crops",
      "Season\n| Setting | Value |\n| Area unit | ha |\nCrops",
    ),
    at: ["Purchases", 1, "Unit"],
    found: "ton",
  },
  {
    code: "hybrid-twice",
    slip: "typed two plots of one hybrid in a trial",
    workbook: trialled(`${oakTrial}\n| North | 2030 | oak 1 | 204 | 18 | 56 |`),
    at: ["Hybrid trials", 2, "Hybrid"],
    found: "oak 1",
  },
  {
    code: "hybrid-unlike",
    slip: "spelled a hybrid in another way in a trial",
    workbook: trialled(`${oakTrial}\n| South | 2030 | Oak-1 | 204 | 18 | 56 |`),
    at: ["Hybrid trials", 2, "Hybrid"],
    found: "Oak-1",
  },
  {
    code: "hybrid-crop-missing",
    slip: "has two crops and does not say of which a hybrid is",
    workbook: `${crops.trimEnd()}\n| Peas | bu | 6 |\n${fields}\nHybrid trials\n| Trial | Hybrid | Yield |\n| North | Oak 1 | 200 |\n`,
    at: ["Hybrid trials", 1, "Hybrid"],
    found: "Oak 1",
  },
  {
    code: "trial-yield-unlike",
    slip: "typed a trial in tonnes a hectare",
    workbook: trialled(`${oakTrial}\n| South | 2030 | Oak 1 | 12.6 | 18 | 56 |`),
    at: ["Hybrid trials", 2, "Yield"],
    found: "12.6",
  },
  {
    code: "trial-twice",
    slip: "pasted a trial again under another name",
    workbook: trialled(
      ["North", "Plot 2"].map((name) => `${oakTrial.replace("North", name)}\n| ${name} | 2030 | Ash 2 | 204 | 18 | 56 |`).join("\n"),
    ),
    at: ["Hybrid trials", 3, "Trial"],
    found: "Plot 2 2030",
  },
  {
    code: "trial-moisture-missing",
    slip: "left the moisture of a trial out where drying is charged",
    workbook: trialled(
      oakTrial.replace("| 18 |", "| |"),
      "| Oak 1 | yes |",
      "\nSeason\n| Setting | Value |\n| Drying charge per point | 0.05 |\n",
    ),
    at: ["Hybrid trials", 1, "Moisture"],
    found: "Corn",
  },
  {
    code: "trial-weight-missing",
    slip: "left the test weight of a trial out beside a dock table",
    workbook: trialled(
      oakTrial.replace("| 56 |", "| |"),
      "| Oak 1 | yes |",
      "\nSeason\n| Setting | Value |\n| Test weight dock | Docks |\n\nDocks\n| Test weight | Dock |\n| 54 | 0 |\n",
    ),
    at: ["Hybrid trials", 1, "Test weight"],
    found: "Corn",
  },
  {
    code: "check-twice",
    slip: "marked two checks of one crop",
    workbook: trialled(oakTrial, "| Oak 1 | yes |\n| Ash 2 | yes |"),
    at: ["Hybrids", 2, "Check"],
    found: "Ash 2",
  },
  {
    code: "check-without-trial",
    slip: "marked a check that stands in no trial",
    workbook: trialled(oakTrial, "| Ash 2 | yes |"),
    at: ["Hybrids", 1, "Check"],
    found: "Ash 2",
  },
];
