import { describe, expect, it } from "vitest";
import { besideOwnSheets } from "../../tests/support/ownSheets";
import type { WorkbookContent } from "./cell";
import { cellOf } from "./cellName";
import { seasonReport } from "./report";
import { wideColumnMeant, wideColumnSaid, wideColumnWords } from "./wideColumns";

/** A season whose sheet "My costs" is a range of the grower's own, matched as `matches` say. */
function content(range: string, matches: string): WorkbookContent {
  const { content: ours, own } = besideOwnSheets(matches, `My costs\n${range}`);
  return { ...ours, ranges: new Map([["My costs!A1:G9", own[0]!]]) };
}
const match = (...pairs: readonly (readonly [string, string])[]) =>
  pairs.map(([column, heading]) => `| Budget | My costs!A1:G9 | ${column} | ${heading} |`).join("\n");
const usual = match(
  ["For", "Field"],
  ["seed", "Seed"],
  ["crop protection", "Herbicide"],
  ["crop protection", "Fungicide"],
  ["cash rent, whole", "Rent"],
);
const lines = (of: WorkbookContent) =>
  seasonReport(of).season.budget!.map(({ over, kind, amount, basis }) => `${Object.values(over)[0]} ${kind} ${amount.toFixed()} ${basis}`);
const codes = (of: WorkbookContent) => seasonReport(of).problems.map(({ code }) => code);

describe("a wide sheet", () => {
  it("is a line of the Budget for each cell that is filled, two columns of one kind told apart by their headings", () => {
    const of = content(
      "| Field | Seed | Herbicide | Fungicide | Rent |\n| Alder | 110 | 40 | 40 | 20000 |\n| Birch | 115 | | '$38.50 | |",
      usual,
    );
    expect(lines(of)).toEqual([
      "Alder seed 110 per acre",
      "Alder crop protection 40 per acre",
      "Alder crop protection 40 per acre",
      "Alder cash rent 20000 whole",
      "Birch seed 115 per acre",
      "Birch crop protection 38.5 per acre",
    ]);
    expect(codes(of)).toEqual([]);
  });

  it("places a fault and an entry in the cell that it stands in", () => {
    const report = seasonReport(
      content("| Field | Seed | Herbicide | Fungicide | Rent |\n| Alder | 110 | 40 | 41 | |\n| Birch | 115 | call Pat | | |", usual),
    );
    const [fault] = report.problems;
    expect(fault).toMatchObject({ code: "not-a-number", at: { table: "Budget", column: "Amount" }, found: "call Pat" });
    expect(report.placeOf(fault!.at)).toMatchObject({ sheet: "My costs", row: 2, column: 2 });
    expect(cellOf(report, fault!.at)).toBe("My costs!C3");
    expect(cellOf(report, report.season.budget![2]!.source)).toBe("My costs!A2");
  });

  it("tells a name that is no field once, whatever the number of its columns", () => {
    expect(
      codes(content("| Field | Seed | Herbicide | Fungicide | Rent |\n| Alder | 110 | 40 | 41 | |\n| Cedar | 115 | 3 | 4 | 5 |", usual)),
    ).toEqual(["unknown-name"]);
  });

  it("tells a column with numbers of which nobody said what they are, until they are left out", () => {
    const sheet = "| Field | Seed | Herbicide | Fungicide | Rent | Hauling | Remark |\n| Alder | 110 | 40 | 41 | | 12 | early |";
    const report = seasonReport(content(sheet, usual));
    expect(report.problems).toMatchObject([{ code: "wide-column-unsaid", found: "Hauling", at: { table: "Matches", row: 1 } }]);
    expect(codes(content(sheet, `${usual}\n${match(["left out", "Hauling"])}`))).toEqual([]);
    // The same heading twice: the second is none that was spoken of.
    expect(codes(content("| Field | Seed | Herbicide | Fungicide | Rent | Seed |\n| Alder | 110 | 40 | 41 | | 12 |", usual))).toEqual([
      "wide-column-unsaid",
    ]);
    // Brackets tell plan and paid apart; only one of them is matched.
    const two = content(
      "| Field | Seed (plan) | Seed (paid) |\n| Alder | 110 | 97 |",
      match(["For", "Field"], ["seed", "Seed (plan)"], ["left out", "Seed (paid)"]),
    );
    expect([lines(two), codes(two)]).toEqual([["Alder seed 110 per acre"], []]);
  });

  it("takes the unit of area from the heading, and asks where the season counts in another", () => {
    const of = content("| Field | Seed $/ha |\n| Alder | 110 |", match(["For", "Field"], ["seed", "Seed $/ha"]));
    expect(codes(of)).toEqual(["basis-area"]);
  });

  it("grows with the rows typed right under it, and tells those after a gap or a total", () => {
    const sheet = "| Field | Seed | Herbicide | Fungicide | Rent |\n| Alder | 110 | 40 | 41 | |\n> | Birch | 115 | 3 | 4 | 5 |";
    expect([lines(content(sheet, usual)).at(-1), codes(content(sheet, usual))]).toEqual(["Birch cash rent 5 whole", []]);
    // One kind of cost is an entry too.
    expect(lines(content(sheet.replace("| 115 | 3 | 4 | 5 |", "| 115 | | | |"), usual)).at(-1)).toMatch(/^Birch seed 115 /);
    const apart = seasonReport(
      content(
        "| Field | Seed | Herbicide | Fungicide | Rent |\n| Alder | 110 | 40 | 41 | |\n> | Total | 110 | 40 | 41 | |\n> | Birch | " +
          "115 | 3 | 4 | 5 |\n> | prices of March | | | | |",
        usual,
      ),
    );
    expect(apart.problems).toMatchObject([{ code: "rows-below", found: "1" }]);
    expect(cellOf(apart, apart.problems[0]!.at)).toBe("My costs!A4");
  });

  it("leaves rows that say they are totals aside, and tells it", () => {
    expect(
      codes(
        content("| Field | Seed | Herbicide | Fungicide | Rent |\n| Alder | 110 | 40 | 41 | |\n| Corn total | 110 | 40 | 41 | |", usual),
      ),
    ).toEqual(["total-row"]);
  });
});

describe("rows of a wide sheet that add up others, whatever they are called", () => {
  const both = match(["For", "Field"], ["left out", "Ac."], ["seed", "Seed"], ["crop protection", "Chem"], ["cash rent", "Rent"]);
  const sheet = (...rows: readonly string[]) => `| Field | Ac. | Seed | Chem | Rent |\n${rows.map((row) => `| ${row} |`).join("\n")}`;

  it("are left out and told, where they add up money an acre times the acres: a field without a kind gets no farm's total", () => {
    const of = content(
      sheet("Alder | 100 | 110 | 40 | ", "Birch | 50 | 115 | 42.5 | 200", "Whole farm | 150 | 16750 | 6125 | 10000"),
      both,
    );
    expect(lines(of).length).toBe(5);
    const report = seasonReport(of);
    expect(report.problems).toMatchObject([{ code: "sum-left", found: "Whole farm", like: "2" }]);
    expect(cellOf(report, report.problems[0]!.at)).toBe("My costs!A4");
    // 100 × (110 + 40) + 50 × (115 + 42.5 + 200), and 300 of the office, over 150 acres.
    expect(report.figures.crops[0]!.outlook.costPerArea.layers.cash.times(150).toFixed(8)).toBe("33175.00000000");
  });

  it("are left out between blocks and without a name, and end a range that grows", () => {
    expect(
      codes(
        content(
          sheet(
            "Alder | 100 | 110 | 40 | ",
            "Birch | 50 | 115 | 42.5 | 200",
            "Total corn | 150 | 16750 | 6125 | 10000",
            " | 300 | 225 | 82.5 | 200",
          ),
          both,
        ),
      ),
    ).toEqual(["sum-left", "sum-left"]);
    expect(
      codes(
        content(
          `${sheet("Alder | 100 | 110 | 40 | ", "Birch | 50 | 115 | 42.5 | 200")}\n> | Total corn | 150 | 16750 | 6125 | 10000 |`,
          both,
        ),
      ),
    ).toEqual([]);
  });

  it("are none by one number alone, by text or by other numbers", () => {
    for (const last of ["Corn | 150 | 225 | 80 | 9", "Corn | 150 | 225 | | ", "Corn | 150 | 225 | | call"])
      expect(codes(content(sheet("Alder | 100 | 110 | 40 | ", "Birch | 50 | 115 | 42.5 | 200", last), both))).not.toContain("sum-left");
  });
});

describe("a column that adds up others of its kind", () => {
  const of = (total: number, said = "crop protection") =>
    codes(
      content(
        `| Field | Herb | Fung | Total chem |\n| Alder | 30 | 12 | ${total} |`,
        match(["For", "Field"], ["crop protection", "Herb"], ["crop protection", "Fung"], [said, "Total chem"]),
      ),
    );
  it("is told, until it is left out, on whichever side it stands", () => {
    expect([of(42), of(41), of(42, "left out")]).toEqual([["kind-sum"], [], []]);
    expect(
      codes(
        content(
          "| Field | Total chem | Herb | Fung |\n| Alder | 42 | 30 | 12 |",
          match(["For", "Field"], ["crop protection", "Herb"], ["crop protection", "Fung"], ["crop protection", "Total chem"]),
        ),
      ),
    ).toEqual(["kind-sum"]);
  });
});

describe("money of a whole field that is read as an acre's", () => {
  it("is an entry to fix, until the match says of either", () => {
    const sheet = "| Field | Seed $ |\n| Alder | 11000 |";
    expect(codes(content(sheet, match(["For", "Field"], ["seed", "Seed $"])))).toEqual(["per-acre-high"]);
    expect(codes(content(sheet, match(["For", "Field"], ["seed, whole", "Seed $"])))).toEqual([]);
    expect(codes(content(sheet, match(["For", "Field"], ["seed, per acre", "Seed $"])))).toEqual([]);
    expect(codes(content(sheet.replace("11000", "800"), match(["For", "Field"], ["seed", "Seed $"])))).toEqual([]);
  });
});

describe("a column of a wide sheet", () => {
  it("is said and read back as the same", () => {
    for (const words of ["seed", "seed, per acre", "cash rent, whole", "left out"])
      expect(wideColumnWords(wideColumnSaid(words)!)).toBe(words);
    expect([
      wideColumnSaid("Hired labor, per acre"),
      wideColumnSaid("seed, by the bag"),
      wideColumnSaid("seed, whole, twice"),
      wideColumnSaid("Amount"),
    ]).toEqual([{ kind: "hired labour", basis: "per acre", isSaid: true }, null, null, null]);
  });

  it("is meant by short headings too", () => {
    expect(
      [
        "Fert",
        "Fert.",
        "Chem",
        "Ins",
        "Crop Ins. $",
        "Int",
        "Rep",
        "Seed $",
        "Fert & lime",
        "Gas, fuel, oil",
        "Contractor €/ha",
        "Insurance (€ total)",
        "Land $",
      ]
        .map((heading) => wideColumnMeant(heading))
        .map((column) => (column === null ? "" : wideColumnWords(column))),
    ).toEqual([
      "fertilizer",
      "fertilizer",
      "crop protection",
      "crop insurance",
      "crop insurance",
      "operating interest",
      "repairs",
      "seed",
      "fertilizer",
      "fuel",
      "custom work",
      "crop insurance, whole",
      "cash rent",
    ]);
  });

  it("is meant by headings as people write them", () => {
    const meant = (heading: string) => {
      const column = wideColumnMeant(heading);
      return column === null ? "" : wideColumnWords(column);
    };
    expect(
      [
        "Seed",
        "Seed $/ac",
        "Fert. ($/ac)",
        "Herbicide cost",
        "Total land rent",
        "Fuel cost per acre",
        "Hail insurance",
        "Trucking",
        "Yield",
        "Total",
        "Acres",
        "Total cost/ac",
      ].map(meant),
    ).toEqual(["seed", "seed", "fertilizer", "crop protection", "cash rent, whole", "fuel", "crop insurance", "haul", "", "", "", ""]);
  });
});
