/** One small workbook for each thing that can be wrong in changes, machines' prices and a grower's own table of yields. */
import { describe, expect, it } from "vitest";
import { explain } from "../../src/workbook/explain";
import type { ProblemCode, Subject } from "../../src/workbook/problem";
import { seasonReport } from "../../src/workbook/report";
import { contentFromText } from "../support/tableFromText";

const farm = `
Crops
| Crop | Expected price | Low price | Per-unit selling cost |
| Corn | 4.40 | 3.80 | 0.40 |
| Oats | 3.00 | | |
Fields
| Field | Crop | Acres | Yield goal | Planned planting date | Planted date | Target stand |
| Alder | Corn | 120 | 200 | 2031-05-01 | 2031-05-01 | 32000 |
| Birch | Corn | 80 | 180 | | | |
Other costs
| Item | Kind | Amount | Basis |
| Office | overhead | 900 | whole farm |
`;
const headings =
  "| Change | Quadrant | Item | Quantity | Unit | Price | Basis | Years kept | Salvage | Field or Crop | Acres | Interest rate | " +
  "Counted in |";
const changes = (...rows: readonly string[]) => `${farm}Changes\n${headings}\n${rows.join("\n")}`;
const machine = (columns: string, cells: string) => `${farm}
Machines
| Machine | List price | Years kept | Width | Speed | ${columns} |
| Planter | 90000 | 10 | 40 | 5 | ${cells} |
Operations
| Field or Crop | Operation | Machine | Status |
| Alder | Planting | Planter | plan |`;
const ownTable = (rows: string, setting = "My stands") => `${farm}
Season
| Setting | Value |
| Stand response | ${setting} |
My_stands
${rows}
Stand_counts
| Field | Date | Row width | Length | Plants |
| Alder | 2031-05-25 | 30 | 17.424 | 30 |`;

/** Code, workbook, where, and what it touches. */
const cases: readonly (readonly [ProblemCode, string, string, readonly Subject[]])[] = [
  [
    "quantity-missing",
    changes("| A | added costs | Wheels | | row | 30 | | | | | | | |"),
    "Changes 1 Quantity",
    [{ of: "change", name: "A" }],
  ],
  [
    "price-missing",
    changes("| A | added returns | Yield gain | 2 | bu | | | | | | | | |"),
    "Changes 1 Price",
    [{ of: "change", name: "A" }],
  ],
  [
    "price-missing",
    changes("| A | added returns | Straw | 2 | bales | | | | | Corn | | | |"),
    "Changes 1 Price",
    [{ of: "change", name: "A" }],
  ],
  ["price-missing", changes("| A | added costs | Seed | 2 | bu | | | | | Corn | | | |"), "Changes 1 Price", [{ of: "change", name: "A" }]],
  [
    "years-on-yearly",
    changes("| A | added costs | Insurance | 1 | year | 90 | per year | 5 | | | | | |"),
    "Changes 1 Years kept",
    [{ of: "change", name: "A" }],
  ],
  [
    "salvage-unused",
    changes("| A | added costs | Wheels | 16 | row | 30 | lump sum | | 200 | | | | |"),
    "Changes 1 Salvage",
    [{ of: "change", name: "A" }],
  ],
  [
    "change-disagrees",
    changes("| A | added costs | One | 1 | ac | 3 | | | | | 40 | | |", "| a | added costs | Two | 1 | ac | 3 | | | | | 50 | | |"),
    "Changes 2 Acres",
    [{ of: "change", name: "A" }],
  ],
  [
    "change-disagrees",
    changes("| A | added costs | One | 1 | ac | 3 | | | | Alder | | | |", "| A | added costs | Two | 1 | ac | 3 | | | | Corn | | | |"),
    "Changes 2 Field or Crop",
    [{ of: "change", name: "A" }],
  ],
  [
    "change-disagrees",
    changes("| A | added costs | One | 1 | ac | 3 | | | | | | 5% | |", "| A | added costs | Two | 1 | ac | 3 | | | | | | 6% | |"),
    "Changes 2 Interest rate",
    [{ of: "change", name: "A" }],
  ],
  [
    "change-disagrees",
    changes("| A | added costs | One | 1 | ac | 3 | | | | | | | yes |", "| A | added costs | Two | 1 | ac | 3 | | | | | | | no |"),
    "Changes 2 Counted in",
    [{ of: "change", name: "A" }],
  ],
  [
    "rate-missing",
    changes("| A | added costs | Wheels | 16 | row | 30 | lump sum | 5 | | | | | |"),
    "Changes 1 Interest rate",
    [{ of: "change", name: "A" }],
  ],
  ["no-fields", changes("| A | added costs | Wheels | 1 | ac | 30 | | | | Oats | | | |"), "Changes 1", [{ of: "change", name: "A" }]],
  [
    "unknown-name",
    changes("| A | added costs | Wheels | 1 | ac | 30 | | | | Korn | | | |"),
    "Changes 1 Field or Crop",
    [{ of: "change", name: "A" }],
  ],
  [
    "area-too-large",
    changes("| A | added costs | Wheels | 1 | ac | 30 | | | | Corn | 500 | | |"),
    "Changes 1 Acres",
    [{ of: "change", name: "A" }],
  ],
  ["not-in-list", changes("| A | costs added | Wheels | 1 | ac | 30 | | | | | | | |"), "Changes 1 Quadrant", [{ of: "change", name: "A" }]],
  [
    "area-missing",
    `Crops\n| Crop | Expected price |\n| Corn | 4 |\nFields\n| Field | Crop | Acres | Yield goal |\nChanges\n${headings}\n| A | ` +
      "added costs | Wheels | 1 | ac | 30 | | | | | | | |",
    "Changes 1 Acres",
    [{ of: "change", name: "A" }],
  ],
  [
    "machine-zero",
    machine("Fuel price | Real interest rate | Power", "3 | 4% | 200"),
    "Machines 1 Labour per hour",
    [{ of: "machine", name: "Planter" }],
  ],
  [
    "machine-zero",
    machine("Labour per hour | Real interest rate | Power", "24 | 4% | 200"),
    "Machines 1 Fuel price",
    [{ of: "machine", name: "Planter" }],
  ],
  [
    "machine-zero",
    machine("Labour per hour | Real interest rate | Fuel per acre", "24 | 4% | 0.5"),
    "Machines 1 Fuel price",
    [{ of: "machine", name: "Planter" }],
  ],
  [
    "machine-zero",
    machine("Labour per hour | Fuel price | Power", "24 | 3 | 200"),
    "Machines 1 Real interest rate",
    [{ of: "machine", name: "Planter" }],
  ],
  ["stand-table-unknown", ownTable("| Corn | 28000 | 32000 |\n| May 1 | 95 | 100 |", "My stand"), "Season 1 Value", [{ of: "farm" }]],
  ["stand-table-crop", ownTable("| Date | 28000 | 32000 |\n| May 1 | 95 | 100 |"), "My_stands", [{ of: "farm" }]],
  [
    "stand-table-fault",
    ownTable("| Corn | 28000 | 28000 plants |\n| May 1 | 95 | 100 |"),
    "My_stands 28000 plants",
    [{ of: "crop", name: "Corn" }],
  ],
  ["stand-table-fault", ownTable("| Corn | 28000 | thick |\n| May 1 | 95 | 100 |"), "My_stands thick", [{ of: "crop", name: "Corn" }]],
  [
    "stand-table-fault",
    ownTable("| Corn | 28000 | 32000 |\n| May 1 | 95 | 100 |\n| April 28 | 95 | 100 |"),
    "My_stands 2",
    [{ of: "crop", name: "Corn" }],
  ],
  [
    "stand-table-fault",
    ownTable("| Corn | 28000 | 32000 |\n| May 1 | 95 | 100 |\n| | 95 | 100 |"),
    "My_stands 2 Corn",
    [{ of: "crop", name: "Corn" }],
  ],
  ["stand-table-fault", ownTable("| Corn | 28000 | 32000 |\n| May 1 | most | 100 |"), "My_stands 1 28000", [{ of: "crop", name: "Corn" }]],
  ["stand-table-fault", ownTable("| Corn | 28000 | 32000 |\n| May 1 | 95 | 130 |"), "My_stands 1", [{ of: "crop", name: "Corn" }]],
  ["stand-table-fault", ownTable("| Corn | 28000 | 32000 |\n| | | |"), "My_stands", [{ of: "crop", name: "Corn" }]],
];

describe("a workbook with one fault", () => {
  it.each(cases)("says %s, where, and whose figures it touches", (code, text, place, touches) => {
    const { problems, placeOf } = seasonReport(contentFromText(text));
    expect(
      problems.map(({ code: said, at }) => [said, [at.table, at.row, at.column].filter((part) => part !== undefined).join(" ")]),
    ).toEqual([[code, place]]);
    expect(problems[0]!.touches).toEqual(touches);
    expect(placeOf(problems[0]!.at)).not.toBeNull();
    const { what, remedy } = explain(problems[0]!);
    expect(what).toMatch(/^\S.*[.?]$/);
    expect(remedy).toMatch(/^\S.*\.$/);
  });

  it("leaves the farm whole where only a change is at fault", () => {
    const report = seasonReport(contentFromText(cases[0]![1]));
    expect(report.problemsOf({ of: "change", name: "A" })).toHaveLength(1);
    expect([report.problemsOf({ of: "farm" }), report.problemsOf({ of: "crop", name: "Corn" })]).toEqual([[], []]);
  });

  it("marks the fields that a machine works, and no others", () => {
    const report = seasonReport(contentFromText(cases.find(([code]) => code === "machine-zero")![1]));
    expect(report.problemsOf({ of: "field", name: "Alder" })).toHaveLength(1);
    expect(report.problemsOf({ of: "field", name: "Birch" })).toHaveLength(0);
  });

  it("marks a change that sells a crop with the problems of that crop", () => {
    const report = seasonReport(
      contentFromText(changes("| A | added returns | Yield gain | | bu | | | | | Corn | | | |").replace("| 3.80 |", "| low |")),
    );
    expect(report.problemsOf({ of: "change", name: "A" }).map(({ code }) => code)).toEqual(["not-a-number"]);
  });

  it("asks for no wage, fuel or interest where a zero is typed", () => {
    expect(
      seasonReport(contentFromText(machine("Labour per hour | Fuel price | Real interest rate | Power", "0 | 0 | 0 | 200"))).problems,
    ).toEqual([]);
  });
});
