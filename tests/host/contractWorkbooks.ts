/** The small invented workbooks of the contract test. */
import type { RawTable } from "../../src/workbook/cell";
import type { Fixture } from "./fixture";

/** Two tables: one at A1, one lower down with hidden rows and a totals row on a sheet whose name wants quotes. */
export const farm: Fixture = {
  sheets: [
    {
      name: "Fields",
      cells: [
        ["Field", "Crop", "Acres"],
        ["North forty", "Corn", 38.5],
        ["Creek", "Soybeans", 81],
      ],
      tables: [{ name: "Fields", range: "A1:C3" }],
    },
    {
      name: "Grower's bills",
      cells: [
        ["Bills of the year"],
        [],
        ["", "Date", "Item", "Quantity", "Paid"],
        ["", 46117, "Seed, early", "1,200.50", true],
        ["", 46120.5, "Urea", "#N/A", false],
        ["", 46121, "Diesel", 0.1, ""],
        ["", "", "", "", ""],
        ["", "Total", "", 3, ""],
      ],
      tables: [{ name: "Purchases", range: "B3:E8", totalsRow: true }],
      hiddenRows: [5],
    },
  ],
};

export const fields: RawTable = {
  name: "Fields",
  headers: ["Field", "Crop", "Acres"],
  rows: [
    ["North forty", "Corn", 38.5],
    ["Creek", "Soybeans", 81],
  ],
  body: { sheet: "Fields", row: 1, column: 0 },
};

/** A grower's own sheet, matched by the table Matches; one match points at a sheet that has gone, one at no address. */
export const ownCounts: Fixture = {
  sheets: [
    { name: "My counts", cells: [[], ["", "Where", "Plants"], ["", "North forty", 28], ["", "Creek", "31"]] },
    {
      name: "Matches",
      cells: [
        ["Table", "Range", "Column", "Heading"],
        ["Stand counts", "'My counts'!B2:C4", "Field", "Where"],
        ["Stand counts", "'My counts'!B2:C4", "Plants", "Plants"],
        ["Stand counts", "'My counts'!B:C", "Plants", "Plants"],
        ["Stand counts", "'Last year'!A1:B9", "Field", "Where"],
        ["Stand counts", "somewhere", "Field", "Where"],
        ["Stand counts", "", "Field", "Where"],
      ],
      tables: [{ name: "Matches", range: "A1:D7" }],
    },
  ],
};

/**
 * A sheet for each field under a title, of one layout; another of another layout, and one that is hidden. The field stands in B2,
 * as Matches says.
 */
export const aSheetAField: Fixture = {
  sheets: [
    ...["North forty", "Creek", "Hill"].map((field) => ({
      name: field,
      cells: [["Costs of the year"], ["Field", field.toUpperCase()], [], ["Cost of", "$/ac"], ["Seed", 110], ["Spray", 40]],
      hidden: field === "Hill",
    })),
    { name: "Notes", cells: [["Costs of the year"], [], [], ["Cost of", "$"], ["Seed", 110]] },
    {
      name: "Matches",
      cells: [
        ["Table", "Range", "Column", "Heading"],
        ["Budget", "'North forty'!A4:B6", "For", "(cell B2)"],
        ["Budget", "Creek!A4:B6", "For", "(cell B2)"],
        ["Budget", "Creek!A4:B6", "Kind", "Cost of"],
      ],
      tables: [{ name: "Matches", range: "A1:D4" }],
    },
  ],
};

/** Rows below tables and matched ranges, which these do not take in: right under, after a gap, below a totals row, before another table. */
export const untaken: Fixture = {
  sheets: [
    {
      name: "Fields",
      cells: [
        ["Field", "Crop", "Acres"],
        ["Creek", "Soybeans", 81],
        ["West", "Corn", 40],
        [],
        ["East", "", "22"],
        [],
        ["Name", "Balance"],
        ["Tractor note", 125000],
      ],
      tables: [
        { name: "Fields", range: "A1:C2" },
        { name: "Loans", range: "A7:B8" },
      ],
    },
    {
      name: "Bills",
      cells: [
        ["Item", "Quantity"],
        ["Urea", 12],
        ["Total", 12],
        ["Oil", 3],
      ],
      tables: [{ name: "Purchases", range: "A1:B3", totalsRow: true }],
    },
    { name: "Counts", cells: [["Where", "Plants"], ["Creek", 28], ["Hill", 31], [], ["Where", "Plants"], ["Alder", 30]] },
    {
      name: "Matches",
      cells: [
        ["Table", "Range", "Column", "Heading"],
        ["Stand counts", "Counts!A1:B2", "Field", "Where"],
        ["Stand counts", "Counts!A5:B6", "Field", "Where"],
      ],
      tables: [{ name: "Matches", range: "A1:D3" }],
    },
  ],
};

/** A rate that a plain number does not tell. */
export const rates: Fixture = {
  sheets: [
    {
      name: "Changes",
      cells: [
        ["Change", "Interest rate"],
        ["Wheels", 0.5],
      ],
      tables: [{ name: "Changes", range: "A1:B2" }],
    },
  ],
};
