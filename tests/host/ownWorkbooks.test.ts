/**
 * Workbooks as growers keep them, awkward in many ways, read whole through a real file: what each costs for an acre is worked out by
 * hand beside it, and what is left out is told. The farms are invented.
 */
import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/workbook/cell";
import { cellOf } from "../../src/workbook/cellName";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { fileOf } from "../support/xlsx/fixtureFile";
import { opened } from "../support/xlsx/opened";
import type { FixtureSheet } from "./fixture";

type Rows = readonly (readonly Cell[])[];
type Match = readonly [table: string, range: string, pairs: string];

const table = (name: string, cells: Rows): FixtureSheet => ({
  name,
  cells,
  tables: [{ name, range: `A1:${String.fromCharCode(64 + cells[0]!.length)}${cells.length}` }],
});
const crops = (...rows: Rows) => table("Crops", [["Crop", "Yield unit", "Expected price"], ...rows]);
const fields = (...rows: Rows) => table("Fields", [["Field", "Crop", "Acres", "Yield goal"], ...rows]);
/** The table Matches as the pane writes it; `pairs` are column = heading, parted by semicolons. */
const matches = (...all: readonly Match[]) =>
  table("Matches", [
    ["Table", "Range", "Column", "Heading"],
    ...all.flatMap(([name, range, pairs]) =>
      pairs.split("; ").map((pair) => {
        const at = pair.indexOf("=");
        return [name, range, pair.slice(0, at), pair.slice(at + 1)];
      }),
    ),
  ]);

async function read(...sheets: readonly FixtureSheet[]) {
  const report = seasonReport(await opened(fileOf({ sheets })).read());
  return {
    complete: reportJson(report).complete,
    told: report.problems.map((problem) => `${problem.code} ${cellOf(report, problem.at)}`),
    cost: report.figures.crops.map(
      ({
        outlook: {
          costPerArea: { layers },
        },
      }) => [layers.operating, layers.cash].map((each) => each.toDecimalPlaces(4).toNumber()),
    ),
  };
}

describe("a wide sheet under two rows of headings, with blocks, a blank column, totals and remarks", () => {
  const sheet = (...change: readonly ((cells: Cell[][]) => void)[]): FixtureSheet => {
    const cells: Cell[][] = [
      ["Dry Fork Farms - crop budget 2031"],
      ["dollars per acre unless noted"],
      [""],
      ["", "", "", "Inputs ($/ac)", "", "", "", "Machinery ($/ac)", "", "", "Other ($/ac)", "", "", ""],
      ["Field", "Crop", "Ac.", "Seed", "Fert", "Chem", "", "Fuel", "Rep", "Custom", "Ins", "Int", "Rent", "Total/ac"],
      ["CORN"],
      ["Home 80", "Corn", 78.5, "$118.00", 142.5, 61, "", 18, 22, 14, 21, 9.5, 240, 646],
      ["Creek bottom", "Corn", 120, "$118.00", "$155.25", 58, "", 18, 22, 14, 21, 9.5, 225, 640.75],
      ["Total corn", "", 198.5, 23423, 29816.25, 11748.5, "", 3573, 4367, 2779, 4168.5, 1885.75, 45840, ""],
      [""],
      ["BEANS"],
      ["East eighty", "Soybeans", 60, 62, 38, 54, "", 14, 20, 14, 17, 6, 230, 455],
      ["West forty", "Soybeans", 41.5, 62, 38, 54, "", 14, 20, 14, 17, 6, 230, 455],
      ["Total beans", "", 101.5, 6293, 3857, 5481, "", 1421, 2030, 1421, 1725.5, 609, 23345, ""],
      [""],
      ["Whole farm", "", 300, 29716, 33673.25, 17229.5, "", 4994, 6397, 4200, 5894, 2494.75, 69185, ""],
      [""],
      ["* fert on Creek incl. lime"],
    ];
    for (const each of change) each(cells);
    return { name: "2031 Budget", cells, formulas: { C9: "=SUM(C7:C8)", D9: "=SUMPRODUCT(C7:C8,E7:E8)" } };
  };
  const wide =
    "For=Field; left out=Crop; left out=Ac.; seed=Seed; fertilizer=Fert; crop protection=Chem; fuel=Fuel; repairs=Rep; custom " +
    "work=Custom; crop insurance=Ins; operating interest=Int; cash rent=Rent; left out=Total/ac";
  const farm = [
    crops(["Corn", "bu", 4.4], ["Soybeans", "bu", 10]),
    fields(
      ["Home 80", "Corn", 78.5, 190],
      ["Creek bottom", "Corn", 120, 200],
      ["East eighty", "Soybeans", 60, 55],
      ["West forty", "Soybeans", 41.5, 55],
    ),
  ];

  it("costs what its own totals say, and the totals count nowhere", async () => {
    // Corn (646 × 78.5 + 640.75 × 120) ÷ 198.5, and without rent (406 × 78.5 + 415.75 × 120) ÷ 198.5; beans 455 and 225.
    expect(
      await read(
        sheet(({ 8: total }) => total!.splice(3, 1, 23423)),
        ...farm,
        matches(["Budget", "'2031 Budget'!A5:N18", wide]),
      ),
    ).toEqual({
      complete: true,
      cost: [
        [411.8942, 642.8262],
        [225, 455],
      ],
      told: ["sum-left 2031 Budget!A9", "sum-left 2031 Budget!A14", "sum-left 2031 Budget!A16"],
    });
  });

  it("gives a field without rent none of the farm's total rent", async () => {
    const owned = sheet((cells) => {
      cells[6]![12] = "";
      cells[8]![12] = 27000;
      cells[15]![12] = 50345;
    });
    // Creek's rent alone, 225 × 120 ÷ 198.5, on top of the same operating cost.
    expect((await read(owned, ...farm, matches(["Budget", "'2031 Budget'!A5:N18", wide]))).cost[0]).toEqual([411.8942, 547.9144]);
  });

  it("tells a block that the range does not take in", async () => {
    const { complete, told } = await read(sheet(), ...farm, matches(["Budget", "'2031 Budget'!A5:N9", wide]));
    expect([complete, told.filter((each) => each.startsWith("rows-below"))]).toEqual([false, ["rows-below 2031 Budget!A12"]]);
  });
});

describe("a sheet a year, whole dollars of each farm", () => {
  const year = (name: string, part: number): FixtureSheet => ({
    name,
    cells: [
      [""],
      ["", `${name} crop expense by farm`],
      [""],
      ["", "Farm", "Crop", "Acres", "", "Seed $", "Fertilizer $", "Land $", "", "Total exp."],
      ["", "Home place", "Corn", 150, "", 17250 * part, 22500 * part, 0, "", 39750 * part],
      ["", "Aunt Vera's", "Corn", 75, "", 8700 * part, 11250 * part, 18000 * part, "", 37950 * part],
      ["", "", "", 225, "", 25950 * part, 33750 * part, 18000 * part, "", 77700 * part],
    ],
  });
  const sheets = [
    year("2030", 0.5),
    year("2031", 1),
    crops(["Corn", "bu", 4.4]),
    fields(["Home place", "Corn", 150, 190], ["Aunt Vera's", "Corn", 75, 190]),
  ];
  const of = (name: string, basis: string): Match => [
    "Budget",
    `'${name}'!B4:J7`,
    `For=Farm; left out=Crop; left out=Acres; seed${basis}=Seed $; fertilizer${basis}=Fertilizer $; cash rent${basis}=Land $; left ` +
      "out=Total exp.",
  ];

  it("costs what the farms add up to, its nameless sum left out", async () => {
    // (17,250 + 22,500 + 8,700 + 11,250) ÷ 225, and with 18,000 of rent.
    expect(await read(...sheets, matches(of("2031", ", whole")))).toEqual({
      complete: true,
      cost: [[265.3333, 345.3333]],
      told: ["sum-left 2031!B7"],
    });
  });

  it("is incomplete with the year before beside it, and as money for an acre", async () => {
    const both = await read(...sheets, matches(of("2030", ", whole"), of("2031", ", whole")));
    expect([both.complete, both.told]).toEqual([
      false,
      ["sheet-year 2030!B5", "budget-twice 2031!B5", "sum-left 2030!B7", "sum-left 2031!B7"],
    ]);
    const acre = await read(...sheets, matches(of("2031", "")));
    expect([acre.complete, acre.told.filter((each) => each.startsWith("per-acre-high")).length]).toEqual([false, 5]);
  });
});

describe("costs as rows by month, the whole farm's dollars and the operator's share", () => {
  it("are read by the column of the year, for all and as whole", async () => {
    const sheet: FixtureSheet = {
      name: "Cash flow",
      cells: [
        ["Projected expenses"],
        ["Item", "Jan", "Apr", "Nov", "Year", "Our share"],
        ["Seed", 12000, 9600, "", 21600, "100%"],
        ["Fert & lime", "", 24000, "$6,000", 30000, "50%"],
        ["Chemicals", "", 12000, "", 12000, 0.5],
        ["Total inputs:", 12000, 45600, 6000, 63600, ""],
        ["Gas, fuel, oil", "", 6000, "", 6000, 1],
        ["Crop ins. premium", "", "", 3000, 3000, 0.5],
        ["NOTES"],
        ["Total", 12000, 51600, 9000, 72600, ""],
      ],
    };
    const shared = table("Fields", [
      ["Field", "Crop", "Acres", "Yield goal", "Tenure", "Operator share of crop %"],
      ["East", "Corn", 110, 190, "crop share", 50],
      ["West", "Corn", 90, 185, "crop share", 50],
    ]);
    const match = "For=(always all); Kind=Item; Amount=Year; Basis=(always whole); Operator share of cost %=Our share";
    // (21,600 + half of 30,000 and of 12,000 + 6,000 + half of 3,000) ÷ 200.
    expect(await read(sheet, crops(["Corn", "bu", 4.4]), shared, matches(["Budget", "'Cash flow'!A2:F10", match]))).toMatchObject({
      cost: [[250.5, 250.5]],
    });
  });
});

describe("hectares with decimal commas, whole and per hectare side by side", () => {
  it("are read from three sheets of the grower's own", async () => {
    const sheets: readonly FixtureSheet[] = [
      {
        name: "Costs",
        cells: [
          ["Costs 2031", "", "EUR"],
          [
            "Crop",
            "Area (ha)",
            "Seed €/ha",
            "Fertiliser €/ha",
            "Diesel (total €)",
            "Contractor €/ha",
            "Insurance (€ total)",
            "Land rent €/ha",
          ],
          ["Corn", "24,5", "215,50", "1.180,00", "2 450,00", "385", "980", "850"],
          ["Wheat", "18,25", "95,00", "310,4", "1.460", "240", "365", "850"],
          ["Total", "42,75", "", "", "3 910,00", "", "1.345", ""],
        ],
      },
      {
        name: "Land",
        cells: [
          ["Field", "Crop", "ha", "Yield t/ha"],
          ["Dijk", "Corn", "14,5", "11,5"],
          ["Kamp", "Corn", "10", "12"],
          ["Lage weide", "Wheat", "18,25", "9,2"],
        ],
      },
      {
        name: "Prices",
        cells: [
          ["Crop", "Price €/t", "Unit"],
          ["Corn", "195,00", "t"],
          ["Wheat", "210,5", "t"],
        ],
      },
      table("Season", [
        ["Setting", "Value"],
        ["Area unit", "ha"],
        ["Decimal comma", "yes"],
        ["Currency", "EUR"],
      ]),
    ];
    const wide =
      "For=Crop; left out=Area (ha); seed=Seed €/ha; fertilizer=Fertiliser €/ha; fuel, whole=Diesel (total €); custom work=Contractor " +
      "€/ha; crop insurance, whole=Insurance (€ total); cash rent=Land rent €/ha";
    // Corn 215.5 + 1,180 + 2,450 ÷ 24.5 + 385 + 980 ÷ 24.5; wheat 95 + 310.4 + 1,460 ÷ 18.25 + 240 + 365 ÷ 18.25; rent 850 on both.
    expect(
      await read(
        ...sheets,
        matches(
          ["Budget", "Costs!A2:H5", wide],
          ["Fields", "Land!A1:D4", "Field=Field; Crop=Crop; Acres=ha; Yield goal=Yield t/ha"],
          ["Crops", "Prices!A1:C3", "Crop=Crop; Expected price=Price €/t; Yield unit=Unit"],
        ),
      ),
    ).toEqual({
      complete: true,
      cost: [
        [1920.5, 2770.5],
        [745.4, 1595.4],
      ],
      told: ["total-row Costs!A5"],
    });
  });
});

describe("a check register: hidden rows, a subtotal a month, a credit in brackets, a field spelled two ways", () => {
  const register = (spelled: string): FixtureSheet => ({
    name: "Register",
    hiddenRows: [6],
    cells: [
      ["Farm checking"],
      ["Date", "Ck #", "Paid to", "Category", "Field", "Amount", "Balance"],
      ["2031-01-15", 2201, "Coop", "Seed", "South", 7200, 42800],
      ["2031-02-03", 2202, "Coop", "Fert.", "South", "5,640.00", 37160],
      ["Feb. total", "", "", "", "", 12840, ""],
      ["2031-04-12", 2204, "Coop", "Chem", "south ", "$1,380.50", 35169.25],
      ["2031-04-20", "", "Coop", "Seed", "South", "(240.00)", 35409.25],
      ["2031-04-28", 2205, "Oil Co", "Fuel", "all", 1960, 33449.25],
      ["2031-05-22", 2207, "Air", "Custom hire", spelled, 540, 32096.85],
      ["", "", "", "TOTAL", "", 16480.5, ""],
    ],
  });
  const farm = [crops(["Corn", "bu", 4.4]), fields(["South", "Corn", 80, 190], ["North 60", "Corn", 60, 185])];
  const match = matches(["Purchases", "Register!A2:G10", "Date=Date; Amount=Amount; Kind=Category; For=Field; Supplier=Paid to"]);

  it("is read without items and quantities, hidden rows too", async () => {
    // (7,200 + 5,640 + 1,380.50 − 240 + 1,960 + 540) ÷ 140.
    expect(await read(register("North 60"), ...farm, match)).toEqual({
      complete: true,
      cost: [[117.7179, 117.7179]],
      told: ["total-row A5", "total-row A10"],
    });
  });

  it("asks one thing of a payment that says its kind and no field", async () => {
    expect((await read(register(""), ...farm, match)).told).toEqual(["total-row A5", "blank E9", "total-row A10"]);
  });

  it("tells the field that is spelled otherwise, whose bill is left out until then", async () => {
    const { complete, told } = await read(register("Nort 60"), ...farm, match);
    expect([complete, told]).toEqual([false, ["total-row A5", "unknown-name E9", "total-row A10"]]);
  });
});

describe("a sheet a field, its name in a cell, with sections, subtotals and a remark", () => {
  const sheet = (name: string, field: string, costs: Rows): FixtureSheet => ({
    name,
    cells: [
      ["Land Co", ""],
      ["Field:", field],
      [""],
      ["Expense", "$ / acre", "Notes"],
      ["INPUTS"],
      ...costs,
      ["TOTAL", costs.reduce((sum, [, amount]) => sum + Number(amount), 0), ""],
      [""],
      ["checked with the agronomist"],
    ],
  });
  const both = [
    sheet("N1", "Long Sixty", [
      ["Seed corn", 119, ""],
      ["Anhydrous", 92.4, ""],
      ["Starter 10-34-0", 28, ""],
      ["Herbicide pre", 31.5, ""],
      ["Herbicide post", 24, ""],
      ["Hail insurance", 11, ""],
      ["Cash rent", 210, ""],
    ]),
    sheet("N2", "Pond", [
      ["Seed corn", 115, ""],
      ["Fungicide", 27.5, "if needed"],
      ["Cash rent", 195, ""],
    ]),
  ];
  it("is one table, words alone between the costs being no entries", async () => {
    const layout = "For=(cell B2); Kind=Expense; Amount=$ / acre; Note=Notes";
    // Long Sixty 305.9 and 515.9 with rent on 60 acres, Pond 142.5 and 337.5 on 40.
    expect(
      await read(
        ...both,
        crops(["Corn", "bu", 4.4]),
        fields(["Long Sixty", "Corn", 60, 190], ["Pond", "Corn", 40, 185]),
        matches(["Budget", "'N1'!A4:C15", layout], ["Budget", "'N2'!A4:C15", layout]),
      ),
    ).toEqual({ complete: true, cost: [[240.54, 444.54]], told: ["total-row N1!A13", "total-row N2!A9"] });
  });
});
