/**
 * Costs of soybeans and of corn after soybeans in Iowa, dollars of 2016 per hectare, seven years of one table. Figures
 * only, as printed; read in 2026. The table's revenue was formed from yields with more digits than it prints.
 */
import type { Budget, Printed } from "./budget";

const source = {
  title: "Annual production costs of low-till corn following soybeans, and soybeans, Iowa, 2007-2015 (supporting Table S1)",
  publisher: "Proceedings of the National Academy of Sciences (US)",
  year: "not printed",
  address: "https://www.pnas.org/highwire/markup/538632/expansion",
  where: "Table S1, US$ of 2016 per hectare",
};

/** Line, kind, and the columns soybeans 2007, corn 2008, soybeans 2009, 2011, corn 2012, soybeans 2013, 2015. */
const lines = `
  | before harvest | Machinery      | machine ownership  | 50.73  | 65.88  | 53.69  | 56.04  | 80.43  | 59.82  | 60.49  |
  | before harvest | Seed           | seed               | 106.99 | 151.10 | 174.35 | 135.91 | 264.64 | 145.32 | 158.54 |
  | before harvest | Nitrogen       | fertilizer         | 0      | 152.76 | 0      | 0      | 207.59 | 0      | 0      |
  | before harvest | Phosphate      | fertilizer         | 42.43  | 83.03  | 99.63  | 62.39  | 112.92 | 48.88  | 48.38  |
  | before harvest | Potash         | fertilizer         | 49.44  | 37.36  | 149.45 | 93.21  | 77.07  | 95.45  | 77.52  |
  | before harvest | Lime           | fertilizer         | 20.06  | 19.37  | 19.37  | 25.57  | 25.08  | 24.61  | 25.20  |
  | before harvest | Herbicide      | crop protection    | 83.69  | 101.01 | 84.78  | 63.46  | 90.81  | 93.53  | 100.32 |
  | before harvest | Crop insurance | crop insurance     | 18.63  | 41.51  | 34.59  | 27.23  | 58.39  | 38.18  | 22.44  |
  | before harvest | Miscellaneous  | other operating    | 25.80  | 24.91  | 24.91  | 23.80  | 23.35  | 22.91  | 25.20  |
  | before harvest | Interest       | operating interest | 19.67  | 34.27  | 25.43  | 18.33  | 34.22  | 17.62  | 16.26  |
  | harvest        | Combine        | machine ownership  | 52.73  | 69.46  | 53.97  | 58.44  | 83.03  | 64.39  | 59.48  |
  | harvest        | Grain cart     | machine ownership  | 12.03  | 18.83  | 18.53  | 23.01  | 23.35  | 22.91  | 25.45  |
  | harvest        | Hauling        | haul               | 6.20   | 21.25  | 6.92   | 9.91   | 37.36  | 10.18  | 9.96   |
  | harvest        | Drying         | drying             | 0      | 110.70 | 0      | 0      | 113.02 | 0      | 0      |
  | harvest        | Handling       | haul               | 2.30   | 6.77   | 2.22   | 4.62   | 19.62  | 5.34   | 4.84   |
  | rest           | Labour         | unpaid labour      | 55.18  | 70.03  | 53.27  | 53.67  | 69.83  | 54.56  | 57.35  |
  | rest           | Property tax   | land tax           | 51.89  | 54.36  | 54.36  | 57.45  | 58.69  | 59.92  | 60.54  |`;

type Prints = readonly [prints: string, ours?: string];
type Year = {
  readonly crop: "Soybeans" | "Corn";
  readonly year: string;
  readonly yield: string;
  readonly price: string;
  readonly prints: readonly [before: Prints, harvest: Prints, total: Prints, revenue: Prints, net: Prints];
};

const years: readonly Year[] = [
  {
    crop: "Soybeans",
    year: "2007",
    yield: "4.17",
    price: "285.82",
    prints: [
      ["417.45", "417.44"],
      ["73.27", "73.26"],
      ["597.78", "597.77"],
      ["1190.66", "1191.87"],
      ["592.88", "594.10"],
    ],
  },
  {
    crop: "Corn",
    year: "2008",
    yield: "10.97",
    price: "188.19",
    prints: [["711.20"], ["227.01"], ["1062.60"], ["2065.23", "2064.44"], ["1002.63", "1001.84"]],
  },
  {
    crop: "Soybeans",
    year: "2009",
    yield: "4.23",
    price: "369.58",
    prints: [["666.21", "666.20"], ["81.64"], ["855.48", "855.47"], ["1564.43", "1563.32"], ["708.94", "707.85"]],
  },
  {
    crop: "Soybeans",
    year: "2011",
    yield: "3.90",
    price: "458.85",
    prints: [["505.94"], ["95.97", "95.98"], ["713.03", "713.04"], ["1788.16", "1789.52"], ["1075.13", "1076.48"]],
  },
  {
    crop: "Corn",
    year: "2012",
    yield: "8.97",
    price: "262.60",
    prints: [["974.51", "974.50"], ["276.38"], ["1379.41", "1379.40"], ["2354.86", "2355.52"], ["975.45", "976.12"]],
  },
  {
    crop: "Soybeans",
    year: "2013",
    yield: "2.08",
    price: "519.10",
    prints: [["546.31", "546.32"], ["102.82"], ["763.61", "763.62"], ["1081.24", "1079.73"], ["317.62", "316.11"]],
  },
  {
    crop: "Soybeans",
    year: "2015",
    yield: "3.36",
    price: "344.23",
    prints: [["534.35"], ["99.73"], ["751.97"], ["1156.45", "1156.61"], ["404.47", "404.64"]],
  },
];

const figures: readonly Omit<Printed, "prints">[] = [
  { figure: "plan/costPerAcre/full", parts: ["before harvest"] },
  { figure: "plan/costPerAcre/full", parts: ["harvest"] },
  { figure: "plan/costPerAcre/full" },
  { figure: "plan/incomePerAcre" },
  { figure: "plan/netPerAcre/full" },
];

export const iowaBudgets: readonly Budget[] = years.map(({ crop, year, yield: perHectare, price, prints }, column) => ({
  id: `B05 ${crop.toLowerCase()} in Iowa ${year}`,
  source,
  workbook: `
    Season
    | Setting   | Value |
    | Area unit | ha    |
    Crops
    | Crop    | Yield unit | Expected price |
    | ${crop} | t          | ${price}       |
    Fields
    | Field     | Crop    | Hectares | Yield goal    |
    | One field | ${crop} | 1        | ${perHectare} |
    Other costs
    | Part | Item | Kind | Amount | Basis |
    ${lines
      .trim()
      .split("\n")
      .map((line) => {
        const [, part, item, kind, ...amounts] = line.split("|");
        return `|${part}|${item}|${kind}|${amounts[column]}| per hectare |`;
      })
      .join("\n")}`,
  printed: prints.map(([printed, ours], index) => ({ ...figures[index]!, prints: printed, ...(ours === undefined ? {} : { ours }) })),
}));
