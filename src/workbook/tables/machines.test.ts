import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { readSeason } from "../readSeason";

const headings = (
  "Machine, List price, Purchase price, Age, Years kept, Width, Speed, Power, Labour per hour, Fuel price, Real interest rate, " +
  "Tractor, Tractor list price, Tractor years kept"
).split(", ");
const read = (settings: string, ...machines: readonly string[]) =>
  readSeason(
    contentFromText(`Season
| Setting | Value |
${settings}
Crops
| Crop | Expected price |
| Corn | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
Machines
| ${headings.join(" | ")} |
${machines.join("\n")}`),
  );
const sprayer = "| Sprayer | 90000 | | | 10 | 60 | 6 | 150 | 22 | | 4% | | | |";

describe("the table Machines", () => {
  it("is told where a machine burns fuel that has no price, and not where nothing says that it burns any", () => {
    const told = (settings: string, machine: string) =>
      read(settings, machine)
        .problems.filter(({ at }) => at.column === "Fuel price")
        .map(({ code, like }) => [code, like]);
    expect(told("", sprayer)).toEqual([["machine-zero", "fuel"]]);
    expect(told("| Fuel per gallon | 3.50 |", sprayer)).toEqual([]);
    expect(told("", sprayer.replace("| 150 |", "| |"))).toEqual([]);
  });

  it("takes common practice, and the list price of a new machine, where nothing is said", () => {
    const [machine] = read("| Fuel per gallon | 3.50 |", sprayer).season.machines!;
    const { main, tractor, fieldEfficiency, taxesInsuranceHousing, labour, fuelPrice, realRate } = machine!;
    expect([fieldEfficiency, taxesInsuranceHousing, labour, fuelPrice, realRate, main.purchasePrice, main.age].map(String)).toEqual([
      "0.7",
      "0.01",
      "unpaid labour",
      "3.5",
      "0.04",
      "90000",
      "0",
    ]);
    expect([tractor, main.salvage, main.repairClass, main.hoursAYear]).toEqual([null, null, null, null]);
  });

  it("turns the price of a gallon into that of a litre where areas are hectares", () => {
    // 3.785411784 litres in a gallon.
    const [machine] = read("| Area unit | ha |\n| Fuel per gallon | 3.785411784 |", sprayer).season.machines!;
    expect(machine!.fuelPrice.toFixed(20)).toBe("1.00000000000000000000");
  });

  it("reads the tractor from its own columns, and leaves the machine out without its price", () => {
    const planter = (tractor: string) => read("", `| Planter | 80000 | 60000 | 2 | 10 | 30 | 5.5 | 200 | 22 | 3 | 4% | ${tractor} |`);
    const [machine] = planter("Blue one | 200000 | 8").season.machines!;
    expect(
      [machine!.main, machine!.tractor!].map(({ name, listPrice, purchasePrice, age, yearsKept }) => [
        name,
        ...[listPrice, purchasePrice, age, yearsKept].map(String),
      ]),
    ).toEqual([
      ["Planter", "80000", "60000", "2", "10"],
      ["Blue one", "200000", "200000", "0", "8"],
    ]);
    const { season, problems } = planter("Blue one | | 8");
    expect(season.machines).toEqual([]);
    expect(problems.filter(({ at }) => at.table === "Machines").map(({ at }) => at.column)).toEqual(["Tractor list price"]);
  });

  it("tells of a price that cannot be read once, and not also that nobody entered it", () => {
    const told = (labour: string) =>
      read("", `| Sprayer | 90000 | | | 10 | 60 | 6 | 150 | ${labour} | 3 | 4% | | | |`)
        .problems.filter(({ at }) => at.table === "Machines")
        .map(({ code, at }) => `${code} ${at.column}`);
    expect([told("22"), told(""), told("much")]).toEqual([[], ["machine-zero Labour per hour"], ["not-a-number Labour per hour"]]);
  });

  it("leaves a machine out without what its hours or its value need", () => {
    const { season, problems } = read(
      "",
      "| | 90000 | | | 10 | 60 | 6 | 150 | 22 | 3 | 4% | | | |",
      "| A | | | | 10 | 60 | 6 | 150 | 22 | 3 | 4% | | | |",
      "| B | 90000 | | | | 60 | 6 | 150 | 22 | 3 | 4% | | | |",
      "| C | 90000 | | | 10 | | 6 | 150 | 22 | 3 | 4% | | | |",
      "| D | 90000 | | | 10 | 60 | | 150 | 22 | 3 | 4% | | | |",
    );
    expect(season.machines).toEqual([]);
    expect(problems.filter(({ at }) => at.table === "Machines").map(({ at }) => at.column)).toEqual([
      "Machine",
      "List price",
      "Years kept",
      "Width",
      "Speed",
    ]);
  });
});
