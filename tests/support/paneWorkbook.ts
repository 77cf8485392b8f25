/** The tables of a small season of an invented farm, as a host would read them; what they cost is worked out beside `paneSeason`. */
import type { Cell, RawTable, WorkbookContent } from "../../src/workbook/cell";

const table = (name: string, headers: readonly string[], rows: readonly (readonly Cell[])[]): RawTable => ({
  name,
  headers,
  rows: rows.map((row) => headers.map((_, index) => row[index] ?? "")),
  body: { sheet: name.replaceAll("_", " "), row: 1, column: 0 },
});

export const paneTables: readonly RawTable[] = [
  table(
    "Season",
    ["Setting", "Value", "Note"],
    [
      ["Season year", 2031],
      ["Currency", "USD"],
      ["Area unit", "ac"],
    ],
  ),
  table(
    "Crops",
    ["Crop", "Yield unit", "Weight per bu", "Standard moisture", "Expected price", "Low price", "Per-unit selling cost"],
    [
      ["Corn", "bu", 56, 15.5, 4.35, 3.9, 0.22],
      ["Soybeans", "bu", 60, 13, 10.4, "", 0.25],
    ],
  ),
  table(
    "Fields",
    [
      "Field",
      "Crop",
      "Acres",
      "Yield goal",
      "Tenure",
      "Rent per acre",
      "Land charge per acre",
      "Operator share of crop %",
      "Proven yield",
      "Harvest done",
    ],
    [
      ["Mill Road", "Corn", 120, 195, "cash rent", 235, "", "", 182],
      ["Long Eighty", "Corn", 78.5, 185, "owned", "", 210, "", 178, ""],
      ["Creek Bottom", "Soybeans", 64, 58, "crop share", "", "", 60, "", "2031-10-10"],
    ],
  ),
  table(
    "Items",
    ["Item", "Kind", "Pack name", "Pack size", "Pack unit", "Plan price per pack", "Charged"],
    [
      ["Corn seed A", "seed", "bag", 80000, "seeds", 268],
      ["Urea", "fertilizer", "lb", 1, "lb", 0.26],
      ["Soybean seed B", "seed", "bag", 140000, "seeds", 61],
      ["Diesel", "fuel", "gal", 1, "gal", 3.4, "by acres"],
    ],
  ),
  table(
    "Purchases",
    ["Date", "Item", "Quantity", "Unit", "Unit price", "Amount", "Freight", "Rebate", "Supplier", "Paid on", "Note"],
    [
      ["2031-02-11", "Corn seed A", 70, "bag", 266, "", 140],
      ["2031-03-20", "Urea", 30000, "lb", "", 8550],
      ["2031-03-22", "Soybean seed B", 70, "bag", 62],
      ["2031-04-02", "Diesel", 900, "gal", 3.45],
    ],
  ),
  table(
    "Applications",
    ["Field or Crop", "Item", "Rate", "Rate unit", "Acres", "Date", "Status"],
    [
      ["Mill Road", "Corn seed A", 34000, "seeds/ac", "", "2031-05-01", "done"],
      ["Long Eighty", "Corn seed A", 33000, "seeds/ac", "", "", "plan"],
      ["Mill Road", "Urea", 160, "lb/ac", "", "", "plan"],
      ["Long Eighty", "Urea", 150, "lb/ac", "", "", "plan"],
      ["Creek Bottom", "Soybean seed B", 140000, "seeds/ac", "", "2031-05-10", "done"],
      ["Mill Road", "Corn seed A", 34000, "seeds/ac", "", "", "plan"],
      ["Creek Bottom", "Soybean seed B", 140000, "seeds/ac", "", "", "plan"],
    ],
  ),
  table(
    "Operations",
    ["Field or Crop", "Operation", "Rate", "Basis", "Date", "Status"],
    [
      ["Mill Road", "Planting", 24, "per acre", "", "plan"],
      ["Mill Road", "Planting", 26, "per acre", "2031-05-01", "done"],
      ["Mill Road", "Combining", 41, "per acre", "", "plan"],
      ["Long Eighty", "Combining", 41, "per acre", "", "plan"],
      ["Creek Bottom", "Combining", 38, "per acre", "2031-09-30", "done"],
    ],
  ),
  table(
    "Other_costs",
    ["Item", "Kind", "Amount", "Basis", "Shared over", "Cash"],
    [
      ["Farm insurance", "overhead", 4200, "whole farm", "all", "yes"],
      ["Income tax", "income tax", 9000, "whole farm", "all", "yes"],
      ["Own labour", "unpaid labour", 30, "per acre", "all", "no"],
    ],
  ),
  table("Sales", ["Crop", "Date", "Quantity", "Price", "Kind"], [["Corn", "2031-06-01", 12000, 4.62, "forward"]]),
  table("Harvest", ["Field", "Date", "Weight or bushels", "Moisture"], [["Creek Bottom", "2031-10-10", 3520, 13]]),
];

export const paneContent: WorkbookContent = { dateSystem: "1900", tables: paneTables, ranges: new Map() };

/** The same season with two faulty entries: a quantity in words, and an application of an item that there is not. */
export const faultyContent: WorkbookContent = {
  ...paneContent,
  tables: paneTables.map((each) => {
    if (each.name === "Purchases")
      return { ...each, rows: [...each.rows, ["2031-04-10", "Urea", "two loads", "lb", 0.3, "", "", "", "", "", ""]] };
    if (each.name === "Applications") return { ...each, rows: [...each.rows, ["Mill Road", "Ureah", 20, "lb/ac", "", "", "plan"]] };
    return each;
  }),
};

/** The same season with the fields' planting, a round of counts in two fields, a count outside the table of yields, and two changes. */
export const countedContent: WorkbookContent = {
  ...paneContent,
  tables: [
    ...paneTables.map((each) =>
      each.name !== "Fields"
        ? each
        : table(
            "Fields",
            [...each.headers, "Planned planting date", "Planted date", "Seeds dropped", "Target stand", "Row width", "Uniformity loss %"],
            [
              [...each.rows[0]!, "2031-04-28", "2031-05-12", 34000, 32000, 30],
              [...each.rows[1]!, "2031-04-30", "2031-05-02", 34000, 32000, 30],
              [...each.rows[2]!, "2031-05-08", "2031-05-15", 140000, 115000, 15],
            ],
          ),
    ),
    table(
      "Stand_counts",
      ["Field", "Date", "Row width", "Length", "Hoop diameter", "Plants", "Weak plants", "Remark"],
      [
        ["Mill Road", "2031-06-02", 30, 17.424, "", 19, 2, "Crusted"],
        ["Mill Road", "2031-06-02", 30, 17.424, "", 22, 0],
        ["Mill Road", "2031-06-02", 30, 17.424, "", 24, 1],
        ["Mill Road", "2031-06-02", 30, 17.424, "", 20, 0],
        ["Long Eighty", "2031-05-30", 30, 17.424, "", 7, 0],
      ],
    ),
    table(
      "Loans",
      ["Name", "Kind", "Balance", "Rate", "Payment", "Payments a year", "Next due"],
      [
        ["Season line", "operating", 40000, "8%", "", "", ""],
        ["Land note", "term", 180000, "6%", 17000, 1, "2031-12-10"],
      ],
    ),
    table(
      "Changes",
      [
        "Change",
        "Quadrant",
        "Item",
        "Quantity",
        "Unit",
        "Price",
        "Basis",
        "Years kept",
        "Salvage",
        "Field or Crop",
        "Acres",
        "Interest rate",
        "Counted in",
      ],
      [
        ["Closing wheels, spiked", "added returns", "Yield gain", "", "bu", "", "per acre", "", "", "Corn", "", "6%", "no"],
        ["Closing wheels, spiked", "added costs", "Wheels", 8, "row", 320, "lump sum", 5],
        ["Fewer soybean seeds", "reduced costs", "Seed not dropped", 0.2, "bag", 61, "per acre", "", "", "Soybeans", "", "", "yes"],
        ["Fewer soybean seeds", "reduced returns", "Yield given up", 0.5, "bu", "", "per acre"],
      ],
    ),
  ],
};
