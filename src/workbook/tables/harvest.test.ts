import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { readSeason } from "../readSeason";

const farm = (settings = "", more = "") => `
Season
| Setting | Value |
| Season year | 2031 |
${settings}Crops
| Crop | Yield unit | Weight per bu | Standard moisture | Expected price |
| Corn | bu | 56 | 15.5 | 4 |
| Wheat | bu | 60 | 13.5 | 6 |
Fields
| Field | Crop | Acres | Yield goal | Harvest done |
| Alder | Corn | 100 | 200 | |
| Birch | Wheat | 50 | 80 | |
${more}`;
const docks = "Docks\n| Crop | Test weight | Dock |\n| Corn | 54 | 0 |\n| Corn | 52 | 0.02 |\n| Corn | 49 | 0.10 |\n";
const read = (headings: string, rows: readonly string[], before = farm()) =>
  readSeason(contentFromText(`${before}Harvest\n| Field | Date | ${headings} |\n${rows.map((row) => `| ${row} |`).join("\n")}\n`));
const told = (headings: string, rows: readonly string[], before = farm()) =>
  read(headings, rows, before).problems.map(
    ({ code, at: { row, column }, found, like }) => `${code} ${row} ${column}: ${found}${like === undefined ? "" : ` ~ ${like}`}`,
  );

describe("a load by its scale ticket", () => {
  const headings = "Weight or bushels | Unit | Gross | Tare | Moisture";
  const wet = (row: string, before = farm()) => read(headings, [`Alder | 2031-10-01 | ${row}`], before).season.harvest[0]?.wet.toFixed(4);

  it("is gross less tare: pounds where nothing is said, else the weight that Unit names", () => {
    // 84,000 − 28,000 = 56,000 lb = 1,000 bu. 25.4 t = 25,400 ÷ (56 × 0.45359237) = 999.9538 bu.
    expect([wet(" | | 84000 | 28000 | 15"), wet(" | bu | 84000 | 28000 | 15"), wet(" | t | 38.1 | 12.7 | 15")]).toEqual([
      "1000.0000",
      "1000.0000",
      "999.9538",
    ]);
  });

  it("is kilograms where areas are hectares and nothing is said", () => {
    // 38,100 − 12,700 = 25,400 kg, the 25.4 t of above.
    expect(wet(" | | 38100 | 12700 | 15", farm("| Area unit | ha |\n"))).toBe("999.9538");
  });

  it("stands beside a net that agrees with it, dry bushels too", () => {
    expect(
      told(headings, [
        "Alder | 2031-10-01 | 1000 | | 84000 | 28000 | 15",
        "Alder | 2031-10-01 | 56000 | lb | 84000 | 28000 | 15",
        "Alder | 2031-10-01 | 999.95 | | 84000 | 28000 | 15",
      ]),
    ).toEqual([]);
    // 1,000 wet at 20 % are 946.7456 dry.
    expect(told(`Bushels are | ${headings}`, ["Alder | 2031-10-01 | dry | 946.7 | | 84000 | 28000 | 20"])).toEqual([]);
  });

  it("is told where the two disagree, and what is typed counts", () => {
    expect(
      told(headings, ["Alder | 2031-10-01 | 1010 | | 84000 | 28000 | 15", "Alder | 2031-10-01 | 56002 | lb | 84000 | 28000 | 15"]),
    ).toEqual(["load-disagrees 1 Weight or bushels: 1010 ~ 1000", "load-disagrees 2 Weight or bushels: 56002 ~ 56000"]);
    expect(wet("1010 | | 84000 | 28000 | 15")).toBe("1010.0000");
  });

  it("is lost, and that is told, with half of a ticket or an empty truck that outweighs the full one", () => {
    expect(
      told(headings, [
        "Alder | 2031-10-01 | | | 84000 | | 15",
        "Alder | 2031-10-01 | | | 28000 | 84000 | 15",
        "Alder | 2031-10-01 | | | | | 15",
      ]),
    ).toEqual(["blank 1 Tare: ", "tare-above-gross 2 Tare: 84000 ~ 28000", "blank 3 Weight or bushels: "]);
  });

  it("needs no column of net weights", () => {
    const { season, problems } = read("Gross | Tare | Moisture", ["Alder | 2031-10-01 | 84000 | 28000 | 15"]);
    expect([season.harvest[0]!.quantity.toFixed(), problems.length]).toEqual(["1000", 0]);
  });
});

describe("a ticket number", () => {
  const headings = "Weight or bushels | Moisture | Ticket | Buyer";
  it("that comes twice is told, but not one that two buyers use, nor a load split between two fields", () => {
    expect(told(headings, ["Alder | 2031-10-01 | 900 | 15 | 4711 | Co-op", "Alder | 2031-10-02 | 950 | 15 | 4711 | Co-op"])).toEqual([
      "ticket-twice 2 Ticket: 4711",
    ]);
    expect(told(headings, ["Alder | 2031-10-01 | 900 | 15 | 4711 |", "Birch | 2031-10-02 | 900 | 13 | 4711 | Co-op"])).toEqual([
      "ticket-twice 2 Ticket: 4711",
    ]);
    expect(
      told(headings, [
        "Alder | 2031-10-01 | 900 | 15 | 4711 | Co-op",
        "Alder | 2031-10-02 | 950 | 15 | 4711 | Mill",
        "Birch | 2031-10-01 | 400 | 13 | 4711 | Co-op",
      ]),
    ).toEqual([]);
  });
});

describe("a dock by the grower's own table", () => {
  const headings = "Weight or bushels | Moisture | Test weight";
  const setting = "| Test weight dock | Docks |\n";
  const off = (row: string, before: string) => read(headings, [row], before).season.harvest[0]!.dock?.toFixed() ?? null;

  it("is taken of each load by its test weight, of the crops that the table speaks of", () => {
    const before = farm(setting, docks);
    expect([
      off("Alder | 2031-10-01 | 900 | 15 | 51.4", before),
      off("Alder | 2031-10-01 | 900 | 15 | 56", before),
      off("Birch | 2031-10-01 | 900 | 13 | 51.4", before),
    ]).toEqual(["0.1", "0", null]);
  });

  it("is not taken where no setting names it", () => {
    expect(off("Alder | 2031-10-01 | 900 | 15 | 51.4", farm("", docks))).toBeNull();
  });

  it("is told where the table is not there, has no columns, or leaves good grain docked", () => {
    const rows = ["Alder | 2031-10-01 | 900 | 15 | 51.4"];
    expect(told(headings, rows, farm("| Test weight dock | Dockage |\n", docks))).toEqual(["dock-table-unknown 2 Value: Dockage"]);
    const withTable = (table: string) => told(headings, rows, farm(setting, table));
    expect(withTable("Docks\n| Crop | Step |\n| Corn | 54 |\n")).toEqual([
      "dock-table-fault undefined undefined: Docks ~ it has no column Test weight",
    ]);
    expect(withTable("Docks\n| Test weight | Dock |\n| 54 | 0 |\n")).toEqual([
      "dock-table-fault undefined undefined: Docks ~ it has no column Crop, and the season has more than one crop",
    ]);
    expect(withTable("Docks\n| Crop | Test weight | Dock |\n| Corn | 53 | 0.01 |\n")).toEqual([
      "dock-table-fault undefined undefined: Docks ~ its highest line for Corn takes 0.01 off, so that nothing says from which test " +
        "weight nothing is taken",
    ]);
    expect(withTable("Docks\n| Crop | Test weight | Dock |\n| Corn | 50 | 0 |\n| Corn | 50 | 0 |\n")).toEqual([
      "dock-table-fault undefined undefined: Docks ~ two lines for Corn begin at one test weight",
    ]);
    expect(withTable("Docks\n| Crop | Test weight | Dock |\n| Rye | 50 | 0 |\n")).toEqual(["not-in-list 1 Crop: Rye"]);
  });

  it("takes no kilograms a hectolitre for pounds, by which light grain would pass for heavy, unless the table is in them too", () => {
    const at = (weight: string, table = docks) => told(headings, [`Alder | 2031-10-01 | 900 | 15 | ${weight}`], farm(setting, table));
    // Corn of 56 lb a bushel weighs 72.1 kg a hectolitre (1 lb a bushel = 1.2872 kg/hl, by definition).
    expect(at("70.5")).toEqual(["test-weight-beyond 1 Test weight: 70.5 ~ 54.8"]);
    expect([at("66"), at("72.1", "Docks\n| Crop | Test weight | Dock |\n| Corn | 72 | 0 |\n| Corn | 66 | 0.02 |\n")]).toEqual([[], []]);
  });

  it("is told where a load is lighter than the table goes, and once a field where loads have no test weight", () => {
    expect(
      told(
        headings,
        [
          "Alder | 2031-10-01 | 900 | 15 | 48",
          "Alder | 2031-10-01 | 900 | 15 | ",
          "Alder | 2031-10-02 | 900 | 15 | ",
          "Birch | 2031-07-01 | 900 | 13 | ",
        ],
        farm(setting, docks),
      ),
    ).toEqual(["dock-outside 1 Test weight: 48 ~ 49", "test-weight-missing 2 Test weight: Alder ~ 2"]);
  });
});
