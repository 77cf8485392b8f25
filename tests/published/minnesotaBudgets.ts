/**
 * Averages of farm-business records in Minnesota, with their ladder of four costs per bushel: direct; direct and
 * overhead; labour and management with them; and that less government payments and other crop income. Figures only, to
 * the cent as printed; read in 2026.
 *
 * Each level is entered as the lines that it holds. Interest and depreciation of the overhead are what machines cost
 * (on owned land what land and machines cost), so they are entered under the kinds of the full layer.
 */
import type { Budget, Printed } from "./budget";

type Column = {
  readonly id: string;
  readonly source: Budget["source"];
  readonly crop: string;
  readonly acres: string;
  readonly yield: string;
  readonly price: string;
  readonly tenure: "owned" | "cash rent" | "crop share";
  readonly rent?: string;
  readonly share?: string;
  readonly otherIncome: string;
  /** The same with government payments. */
  readonly withPayments: string;
  /** Part, line, kind and dollars per acre. */
  readonly lines: string;
  readonly printed: readonly Printed[];
  readonly printedWithPayments: readonly Printed[];
};

const publisher = "Northland Community & Technical College Farm Business Management, Moorhead (Minnesota)";

const workbook = (of: Column, otherIncome: string): string => `
  Crops
  | Crop       | Yield unit | Expected price | Other income per acre |
  | ${of.crop} | bu         | ${of.price}    | ${otherIncome}        |
  Fields
  | Field   | Crop       | Acres       | Yield goal  | Tenure       | Rent per acre       | Operator share of crop % |
  | Average | ${of.crop} | ${of.acres} | ${of.yield} | ${of.tenure} | ${of.rent ?? ""}    | ${of.share ?? ""}        |
  Other costs
  | Part | Item | Kind | Amount | Basis |
  ${of.lines
    .trim()
    .split("\n")
    .map((line) => `${line.trim()} per acre |`)
    .join("\n")}
`;

const budgetsOf = (column: Column): readonly Budget[] => [
  { id: column.id, source: column.source, workbook: workbook(column, column.otherIncome), printed: column.printed },
  {
    id: `${column.id} with government payments`,
    source: column.source,
    workbook: workbook(column, column.withPayments),
    printed: column.printedWithPayments,
  },
];

const direct = ["direct"];
const overhead = ["overhead"];
const both = ["direct", "overhead"];

const barley: Column = {
  id: "B01 barley on cash rent 2002",
  source: {
    title: "Crop enterprise analysis: barley on cash rent, by net return",
    publisher,
    year: "2002",
    where: "average column",
    address: "http://northlandfbm-moorhead.com/Old%20Website/2002Averages/Barley%20on%20Cash%20Rent%20by%20Net%20Return.HTML",
  },
  crop: "Barley",
  acres: "246.02",
  yield: "46.07",
  price: "3.00",
  tenure: "cash rent",
  rent: "61.49",
  otherIncome: "23.95",
  withPayments: "37.07",
  lines: `
    | direct   | Seed                 | seed               | 7.33  |
    | direct   | Fertilizer           | fertilizer         | 17.26 |
    | direct   | Crop chemicals       | crop protection    | 19.01 |
    | direct   | Crop insurance       | crop insurance     | 6.58  |
    | direct   | Fuel and oil         | fuel               | 6.64  |
    | direct   | Repairs              | repairs            | 10.72 |
    | direct   | Custom hire          | custom work        | 0.53  |
    | direct   | Operating interest   | operating interest | 1.77  |
    | overhead | Custom hire          | custom work        | 1.14  |
    | overhead | Hired labour         | hired labour       | 7.27  |
    | overhead | Leases               | overhead           | 0.47  |
    | overhead | Farm insurance       | overhead           | 3.21  |
    | overhead | Utilities            | overhead           | 2.40  |
    | overhead | Dues                 | overhead           | 2.02  |
    | overhead | Interest             | machine ownership  | 2.04  |
    | overhead | Depreciation         | machine ownership  | 6.14  |
    | overhead | Miscellaneous        | overhead           | 1.41  |
    | labour   | Labour and management | unpaid labour     | 13.16 |`,
  printed: [
    { figure: "plan/incomePerAcre", prints: "162.32", ours: "162.16" },
    { figure: "plan/costPerAcre/cash", parts: direct, prints: "131.33" },
    { figure: "plan/netPerAcre/cash", parts: direct, prints: "30.99", ours: "30.83" },
    { figure: "plan/costPerAcre/full", parts: both, prints: "157.44", ours: "157.43" },
    { figure: "plan/netPerAcre/full", parts: both, prints: "4.88", ours: "4.73" },
    { figure: "plan/netPerAcre/full", prints: "-8.29", ours: "-8.43" },
    { figure: "plan/costPerUnit/cash", parts: direct, prints: "2.85" },
    { figure: "plan/costPerUnit/full", parts: both, prints: "3.42" },
    { figure: "plan/costPerUnit/full", prints: "3.70" },
  ],
  printedWithPayments: [
    { figure: "plan/netPerAcre/full", prints: "4.83", ours: "4.69" },
    { figure: "plan/breakEvenPrice/full", prints: "2.90" },
  ],
};

/** On share rent the operator has 66.7 % of the crop, and a bushel's cost is that of the operator's bushels. */
const sharedSoybeans: Column = {
  id: "B02 soybeans on share rent 2004",
  source: {
    title: "Crop enterprise analysis: soybeans on share rent, by herbicide-tolerance class",
    publisher,
    year: "2004",
    where: "average column",
    address: "http://www.northlandfbm-moorhead.com (2004 averages, soybeans on share rent)",
  },
  crop: "Soybeans",
  acres: "90.33",
  yield: "24.85",
  price: "6.44",
  tenure: "crop share",
  share: "66.7",
  otherIncome: "27.79",
  withPayments: "36.93",
  lines: `
    | direct   | Seed               | seed               | 35.20 |
    | direct   | Fertilizer         | fertilizer         | 2.82  |
    | direct   | Crop chemicals     | crop protection    | 12.86 |
    | direct   | Crop insurance     | crop insurance     | 12.23 |
    | direct   | Fuel and oil       | fuel               | 8.07  |
    | direct   | Repairs            | repairs            | 16.44 |
    | direct   | Operating interest | operating interest | 3.47  |
    | direct   | Miscellaneous      | other operating    | 0.13  |
    | overhead | Custom hire        | custom work        | 3.22  |
    | overhead | Hired labour       | hired labour       | 0.67  |
    | overhead | Farm insurance     | overhead           | 4.23  |
    | overhead | Utilities          | overhead           | 2.63  |
    | overhead | Dues               | overhead           | 1.84  |
    | overhead | Interest           | machine ownership  | 3.42  |
    | overhead | Depreciation       | machine ownership  | 10.80 |
    | overhead | Miscellaneous      | overhead           | 6.83  |
    | labour   | Labour and management | unpaid labour   | 22.16 |`,
  printed: [
    { figure: "plan/incomePerAcre", prints: "134.42", ours: "134.53" },
    { figure: "plan/costPerAcre/cash", parts: direct, prints: "91.21", ours: "91.22" },
    { figure: "plan/netPerAcre/cash", parts: direct, prints: "43.22", ours: "43.31" },
    { figure: "plan/costPerAcre/full", parts: overhead, prints: "33.65", ours: "33.64" },
    { figure: "plan/costPerAcre/full", parts: both, prints: "124.85", ours: "124.86" },
    { figure: "plan/netPerAcre/full", parts: both, prints: "9.57", ours: "9.67" },
    { figure: "plan/netPerAcre/full", prints: "-12.58", ours: "-12.49" },
    { figure: "plan/costPerUnit/cash", parts: direct, prints: "5.50" },
    { figure: "plan/costPerUnit/full", parts: both, prints: "7.53" },
    { figure: "plan/costPerUnit/full", prints: "8.87" },
  ],
  printedWithPayments: [
    { figure: "plan/netPerAcre/full", prints: "-3.44", ours: "-3.35" },
    { figure: "plan/breakEvenPrice/full", prints: "6.64" },
  ],
};

/** Three columns of one table: the line, its kind, and dollars per acre of all farms, the low and the high fifth. */
const ownedLines = `
  | direct   | Seed                  | seed               | 18.00 | 25.66 | 10.03 |
  | direct   | Fertilizer            | fertilizer         | 3.26  | 2.12  | 3.17  |
  | direct   | Crop chemicals        | crop protection    | 17.66 | 20.32 | 16.73 |
  | direct   | Crop insurance        | crop insurance     | 10.20 | 11.85 | 6.36  |
  | direct   | Fuel and oil          | fuel               | 6.66  | 5.70  | 6.18  |
  | direct   | Repairs               | repairs            | 10.36 | 9.21  | 10.11 |
  | direct   | Custom hire           | custom work        | 1.34  | 0.32  | 4.75  |
  | direct   | Hired labour          | hired labour       | 0.19  | 0.65  | 0     |
  | direct   | Operating interest    | operating interest | 3.82  | 5.47  | 0.57  |
  | direct   | Miscellaneous         | other operating    | 0.32  | 0.56  | 0.09  |
  | overhead | Custom hire           | custom work        | 1.69  | 3.08  | 0.50  |
  | overhead | Hired labour          | hired labour       | 4.45  | 2.30  | 0.88  |
  | overhead | Leases                | overhead           | 2.42  | 5.07  | 1.30  |
  | overhead | Real estate taxes     | land tax           | 12.26 | 15.97 | 10.82 |
  | overhead | Farm insurance        | overhead           | 3.30  | 3.49  | 2.95  |
  | overhead | Utilities             | overhead           | 1.96  | 1.35  | 2.27  |
  | overhead | Dues                  | overhead           | 1.59  | 1.37  | 1.99  |
  | overhead | Interest              | land charge        | 43.06 | 64.91 | 23.54 |
  | overhead | Depreciation          | machine ownership  | 8.77  | 6.75  | 8.88  |
  | overhead | Miscellaneous         | overhead           | 3.32  | 1.80  | 1.92  |
  | labour   | Labour and management | unpaid labour      | 15.53 | 14.76 | 20.33 |`;

const columnOf = (index: 0 | 1 | 2): string =>
  ownedLines
    .trim()
    .split("\n")
    .map((line) => {
      const [, part, item, kind, ...amounts] = line.split("|");
      return `|${part}|${item}|${kind}|${amounts[index]}|`;
    })
    .join("\n");

const owned = (
  name: string,
  index: 0 | 1 | 2,
  rest: Pick<Column, "acres" | "yield" | "price" | "otherIncome" | "withPayments" | "printed" | "printedWithPayments">,
): Column => ({
  id: `B03 soybeans on owned land 2000, ${name}`,
  source: {
    title: "Crop enterprise analysis: soybeans on owned land, by net return",
    publisher,
    year: "2000",
    where: `column ${name}`,
    address: "http://www.northlandfbm-moorhead.com/Old%20Website/2000Averages/OwnSoybeans.HTML",
  },
  crop: "Soybeans",
  tenure: "owned",
  lines: columnOf(index),
  ...rest,
});

export const minnesotaBudgets: readonly Budget[] = [
  barley,
  sharedSoybeans,
  owned("all farms", 0, {
    acres: "204.38",
    yield: "32.43",
    price: "5.28",
    otherIncome: "10.75",
    withPayments: "38.70",
    printed: [
      { figure: "plan/incomePerAcre", prints: "182.02", ours: "181.98" },
      { figure: "plan/costPerAcre/cash", parts: direct, prints: "71.80", ours: "71.81" },
      { figure: "plan/netPerAcre/cash", parts: direct, prints: "110.22", ours: "110.17" },
      { figure: "plan/costPerAcre/full", parts: overhead, prints: "82.83", ours: "82.82" },
      { figure: "plan/costPerAcre/full", parts: both, prints: "154.63" },
      { figure: "plan/netPerAcre/full", parts: both, prints: "27.38", ours: "27.35" },
      { figure: "plan/netPerAcre/full", prints: "11.86", ours: "11.82" },
      { figure: "plan/costPerUnit/cash", parts: direct, prints: "2.21" },
      { figure: "plan/costPerUnit/full", parts: both, prints: "4.77" },
      { figure: "plan/costPerUnit/full", prints: "5.25" },
    ],
    printedWithPayments: [
      { figure: "plan/netPerAcre/full", prints: "39.81", ours: "39.77" },
      { figure: "plan/breakEvenPrice/full", prints: "4.05" },
    ],
  }),
  owned("low fifth", 1, {
    acres: "327.67",
    yield: "29.52",
    price: "5.05",
    otherIncome: "23.19",
    withPayments: "51.56",
    printed: [
      { figure: "plan/incomePerAcre", prints: "172.34", ours: "172.27" },
      { figure: "plan/costPerAcre/cash", parts: direct, prints: "81.84", ours: "81.86" },
      { figure: "plan/netPerAcre/cash", parts: direct, prints: "90.51", ours: "90.41" },
      { figure: "plan/costPerAcre/full", parts: overhead, prints: "106.09" },
      { figure: "plan/costPerAcre/full", parts: both, prints: "187.92", ours: "187.95" },
      { figure: "plan/netPerAcre/full", parts: both, prints: "-15.58", ours: "-15.68" },
      { figure: "plan/netPerAcre/full", prints: "-30.35", ours: "-30.44" },
      { figure: "plan/costPerUnit/cash", parts: direct, prints: "2.77" },
      { figure: "plan/costPerUnit/full", parts: both, prints: "6.37" },
      { figure: "plan/costPerUnit/full", prints: "6.87" },
    ],
    printedWithPayments: [
      { figure: "plan/netPerAcre/full", prints: "-1.98", ours: "-2.07" },
      { figure: "plan/breakEvenPrice/full", prints: "5.12" },
    ],
  }),
  owned("high fifth", 2, {
    acres: "118.46",
    yield: "36.09",
    price: "5.47",
    otherIncome: "20.46",
    withPayments: "47.13",
    printed: [
      { figure: "plan/incomePerAcre", prints: "217.85", ours: "217.87" },
      { figure: "plan/costPerAcre/cash", parts: direct, prints: "58.00", ours: "57.99" },
      { figure: "plan/netPerAcre/cash", parts: direct, prints: "159.85", ours: "159.88" },
      { figure: "plan/costPerAcre/full", parts: overhead, prints: "55.04", ours: "55.05" },
      { figure: "plan/costPerAcre/full", parts: both, prints: "113.03", ours: "113.04" },
      { figure: "plan/netPerAcre/full", parts: both, prints: "104.81", ours: "104.83" },
      { figure: "plan/netPerAcre/full", prints: "84.49", ours: "84.50" },
      { figure: "plan/costPerUnit/cash", parts: direct, prints: "1.61" },
      { figure: "plan/costPerUnit/full", parts: both, prints: "3.13" },
      { figure: "plan/costPerUnit/full", prints: "3.70" },
    ],
    printedWithPayments: [
      { figure: "plan/netPerAcre/full", prints: "111.16", ours: "111.17" },
      { figure: "plan/breakEvenPrice/full", prints: "2.39" },
    ],
  }),
].flatMap(budgetsOf);
