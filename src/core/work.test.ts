import { describe, expect, it } from "vitest";
import { field, operation, seasonOf } from "../../tests/support/season";
import { seasonFigures } from "./seasonFigures";
import type { Operation } from "./season";
import { area, money } from "./units";

const fields = [field("Home", "100", "200"), field("Hill", "50", "160")];
const outlookOf = (operations: readonly Operation[], name = "Home") =>
  seasonFigures(seasonOf({ fields, operations: operations.map((each, index) => ({ ...each, source: { table: "Operations", row: index + 1 } })) }))
    .crops[0]!.fields.find((each) => each.field === name)!.outlook.charges.map(({ amount, entries }) => `${amount} of ${entries.map(({ row }) => row).join("+")}`);

describe("a field", () => {
  it("has an area", () => {
    expect(() => seasonFigures(seasonOf({ fields: [field("Home", "0", "200")] }))).toThrow(/Home has no area/);
  });
});

describe("what is left of the plan", () => {
  it("leaves a row out that is done to the acre, and begins with the next", () => {
    const planned = ["2031-05-01", "2031-06-01"].map((date) => operation("Spraying", "Home", "9", "plan", { date, area: area("60") }));
    expect(outlookOf([...planned, operation("Spraying", "Home", "7", "done", { area: area("60") })])).toEqual(["960 of 3+2"]);
    expect(outlookOf([...planned, operation("Spraying", "Home", "7", "done", { area: area("120") })])).toEqual(["840 of 3"]);
    expect(outlookOf([...planned, operation("Spraying", "Home", "7", "done", { area: area("90") })])).toEqual(["900 of 3+2"]);
  });

  it("takes rows of one date in their order, and those without a date last", () => {
    const rows = [operation("Spraying", "Home", "1", "plan"), operation("Spraying", "Home", "10", "plan", { date: "2031-05-01" }), operation("Spraying", "Home", "100", "plan", { date: "2031-05-01" })];
    expect(outlookOf([...rows, operation("Spraying", "Home", "0", "done", { area: area("100") })])).toEqual(["10100 of 4+3+1"]);
    expect(outlookOf([...rows, operation("Spraying", "Home", "0", "done", { area: area("200") })])).toEqual(["100 of 4+1"]);
  });

  it("keeps of a lump sum for a crop the field's part of what is left", () => {
    const lump = operation("Tiling", "", "0", "plan", { target: { crop: "Corn" }, cost: { basis: "lump sum", rate: money("900") } });
    // 600 of it for Home, of which 25 of 100 acres are done for 100.
    expect(outlookOf([lump, operation("Tiling", "Home", "4", "done", { area: area("25") })])).toEqual(["550 of 2+1"]);
    expect(outlookOf([lump], "Hill")).toEqual(["300 of 1"]);
  });
});
