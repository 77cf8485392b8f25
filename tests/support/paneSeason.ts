/** A small season of an invented farm as the pane gets it, without a workbook: two crops, one half bought, one harvested. */
import { Decimal } from "../../src/core/numbers/decimal";
import { measureNamed } from "../../src/core/numbers/measure";
import type { Season } from "../../src/core/season";
import { seasonFigures } from "../../src/core/seasonFigures";
import { itemQuantity, money, moneyPerArea, moneyPerUnit, share, yieldPerArea } from "../../src/core/numbers/units";
import type { Problem, Subject } from "../../src/workbook/problem";
import type { SeasonReport } from "../../src/workbook/seasonReport";
import { application, corn, field, item, load, operation, otherCost, purchase, sale, seasonOf } from "./season";

const at = (table: string, row: number) => ({ source: { table, row } });

export const paneSeason: Season = seasonOf({
  crops: [
    { ...corn, price: moneyPerUnit("4.35"), lowPrice: moneyPerUnit("3.9"), sellingCostPerUnit: moneyPerUnit("0.22"), ...at("Crops", 1) },
    {
      ...corn,
      name: "Soybeans",
      price: moneyPerUnit("10.4"),
      sellingCostPerUnit: moneyPerUnit("0.25"),
      standardMoisture: null,
      ...at("Crops", 2),
    },
  ],
  fields: [
    field("Mill Road", "120", "195", {
      tenure: "cash rent",
      rentPerArea: moneyPerArea("235"),
      provenYield: yieldPerArea("182"),
      ...at("Fields", 1),
    }),
    field("Long Eighty", "78.5", "185", { landChargePerArea: moneyPerArea("210"), provenYield: yieldPerArea("178"), ...at("Fields", 2) }),
    field("Creek Bottom", "64", "58", {
      crop: "Soybeans",
      tenure: "crop share",
      operatorShare: share("0.6"),
      harvestDone: { on: "2031-10-10" },
      ...at("Fields", 3),
    }),
  ],
  items: [
    item("Corn seed A", "268", {
      kind: "seed",
      packName: "bag",
      packSize: itemQuantity("80000"),
      unit: measureNamed("seeds")!,
      ...at("Items", 1),
    }),
    item("Urea", "0.26", { ...at("Items", 2) }),
    item("Soybean seed B", "61", {
      kind: "seed",
      packName: "bag",
      packSize: itemQuantity("140000"),
      unit: measureNamed("seeds")!,
      ...at("Items", 3),
    }),
    item("Diesel", "3.4", { kind: "fuel", packName: "gal", unit: measureNamed("gal")!, charged: "by acres", ...at("Items", 4) }),
  ],
  purchases: [
    purchase("Corn seed A", "5600000", "18620", { date: "2031-02-11", freight: money("140"), ...at("Purchases", 1) }),
    purchase("Urea", "30000", "8550", { date: "2031-03-20", ...at("Purchases", 2) }),
    purchase("Soybean seed B", "9800000", "4340", { date: "2031-03-22", ...at("Purchases", 3) }),
    purchase("Diesel", "900", "3105", { date: "2031-04-02", ...at("Purchases", 4) }),
  ],
  applications: [
    application("Corn seed A", "Mill Road", "34000", "done", { date: "2031-05-01", ...at("Applications", 1) }),
    application("Corn seed A", "Long Eighty", "33000", "plan", { ...at("Applications", 2) }),
    application("Urea", "Mill Road", "160", "plan", { ...at("Applications", 3) }),
    application("Urea", "Long Eighty", "150", "plan", { ...at("Applications", 4) }),
    application("Soybean seed B", "Creek Bottom", "140000", "done", { ...at("Applications", 5) }),
    { ...application("Corn seed A", "Mill Road", "34000", "plan"), ...at("Applications", 6) },
    { ...application("Soybean seed B", "Creek Bottom", "140000", "plan"), ...at("Applications", 7) },
  ],
  operations: [
    operation("Planting", "Mill Road", "24", "plan", at("Operations", 1)),
    operation("Planting", "Mill Road", "26", "done", { date: "2031-05-01", ...at("Operations", 2) }),
    operation("Combining", "Mill Road", "41", "plan", at("Operations", 3)),
    operation("Combining", "Long Eighty", "41", "plan", at("Operations", 4)),
    operation("Combining", "Creek Bottom", "38", "done", { date: "2031-09-30", ...at("Operations", 5) }),
  ],
  otherCosts: [
    otherCost("Farm insurance", "4200", at("Other costs", 1)),
    otherCost("Income tax", "9000", { kind: "income tax", ...at("Other costs", 2) }),
    otherCost("Own labour", "30", { kind: "unpaid labour", basis: "per acre", cash: false, ...at("Other costs", 3) }),
  ],
  sales: [{ ...sale("12000", "4.62"), kind: "forward", ...at("Sales", 1) }],
  harvest: [{ ...load("Creek Bottom", "3520"), ...at("Harvest", 1) }],
});

/** A problem in the row of Purchases that is about Urea, and one in Fields. */
export const paneProblems: readonly Problem[] = [
  {
    code: "not-a-number",
    at: { table: "Purchases", row: 5, column: "Quantity" },
    found: "two loads",
    touches: [{ of: "item", name: "Urea" }],
  },
  { code: "unknown-name", at: { table: "Applications", row: 8, column: "Item" }, found: "Ureah", touches: [{ of: "crop", name: "Corn" }] },
];

/** The report of a season; a problem touches the subjects it names, and an item's also the crop Corn. */
export const reportOf = (season: Season = paneSeason, problems: readonly Problem[] = []): SeasonReport => ({
  season,
  problems,
  figures: seasonFigures(season),
  problemsOf: (subject: Subject) =>
    problems.filter(
      ({ touches }) =>
        subject.of === "farm" ||
        touches.some(
          (touched) =>
            "name" in touched &&
            "name" in subject &&
            ((touched.of === subject.of && touched.name === subject.name) ||
              (touched.of === "item" && subject.of === "crop" && subject.name === "Corn")),
        ),
    ),
  placeOf: ({ table, row }) => ({ sheet: table, row: row ?? 0, column: 0 }),
  tablesFound: new Set([
    "Season",
    "Crops",
    "Fields",
    "Items",
    "Purchases",
    "Applications",
    "Operations",
    "Other costs",
    "Sales",
    "Harvest",
  ]),
});

/** The same number by hand, for a test to compare with. */
export const decimal = (value: string) => new Decimal(value);
