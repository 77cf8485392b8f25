import { describe, expect, it } from "vitest";
import { areaName, parseArea } from "../../address";
import { tableArea, tableReference, type FormulaTable } from "./tableReference";

const bills: FormulaTable = {
  name: "Bills",
  sheet: 1,
  area: parseArea("B3:E9")!,
  headerRows: 1,
  totalsRows: 1,
  columns: ["Item", "Rate (per ac)", "Odd '#' [name]", "Line\nbreak"],
};
const area = (reference: string, cell = "C5", sheet = 1) => {
  const { top, left } = parseArea(cell)!;
  const found = tableArea(tableReference(reference), { sheet, row: top, column: left }, [bills]);
  return found === null ? null : areaName(found.area);
};

describe("tableArea", () => {
  it.each([
    ["Bills", "B4:E8"],
    ["Bills[]", "B4:E8"],
    ["bills[item]", "B4:B8"],
    ["Bills[Rate (per ac)]", "C4:C8"],
    ["Bills[[Item]:[Rate (per ac)]]", "B4:C8"],
    ["Bills[#All]", "B3:E9"],
    ["Bills[[#All],[Item]]", "B3:B9"],
    ["Bills[#Headers]", "B3:E3"],
    ["Bills[[#Headers],[Item]]", "B3"],
    ["Bills[[#Totals],[Item]]", "B9"],
    ["Bills[[#Headers],[#Data],[Item]]", "B3:B8"],
    ["Bills[[#Data],[#Totals],[Item]]", "B4:B9"],
    ["Bills[[#This Row],[Item]]", "B5"],
    ["Bills[@Item]", "B5"],
    ["[@Item]", "B5"],
    ["[@[Rate (per ac)]]", "C5"],
    ["[Item]", "B4:B8"],
    ["Bills[@]", "B5:E5"],
    ["Bills[Odd '''#'' '[name']]", "D4:D8"],
    ["Bills[Line break]", "E4:E8"],
  ])("of %s is %s", (reference, expected) => expect(area(reference.includes("[") ? reference : `${reference}[]`)).toBe(expected));

  it("is none for another table, another column, or a row outside the body", () => {
    expect(area("Sales[Item]")).toBeNull();
    expect(area("Bills[Colour]")).toBeNull();
    expect(area("Bills[@Item]", "C3")).toBeNull();
    expect(area("Bills[@Item]", "C9")).toBeNull();
    expect(area("Bills[@Item]", "C5", 0)).toBeNull();
    expect(area("[Item]", "G5")).toBeNull();
  });

  it("has neither headings nor totals where the table has none", () => {
    const bare = { ...bills, headerRows: 0, totalsRows: 0 };
    const of = (reference: string) => tableArea(tableReference(reference), { sheet: 1, row: 4, column: 2 }, [bare]);
    expect(areaName(of("Bills[Item]")!.area)).toBe("B3:B9");
    expect(of("Bills[#Headers]")).toBeNull();
    expect(of("Bills[#Totals]")).toBeNull();
  });
});
