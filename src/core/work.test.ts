import { describe, expect, it } from "vitest";
import { application, field, item, load, operation, seasonOf } from "../../tests/support/season";
import { seasonFigures } from "./seasonFigures";
import type { Application, Operation } from "./season";
import { area, money } from "./numbers/units";

const fields = [field("Home", "100", "200"), field("Hill", "50", "160")];
const outlookOf = (operations: readonly Operation[], name = "Home") =>
  seasonFigures(
    seasonOf({ fields, operations: operations.map((each, index) => ({ ...each, source: { table: "Operations", row: index + 1 } })) }),
  )
    .crops[0]!.fields.find((each) => each.field === name)!
    .outlook.charges.map(({ amount, entries }) => `${amount} of ${entries.map(({ row }) => row).join("+")}`);

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
    const rows = [
      operation("Spraying", "Home", "1", "plan"),
      operation("Spraying", "Home", "10", "plan", { date: "2031-05-01" }),
      operation("Spraying", "Home", "100", "plan", { date: "2031-05-01" }),
    ];
    expect(outlookOf([...rows, operation("Spraying", "Home", "0", "done", { area: area("100") })])).toEqual(["10100 of 4+3+1"]);
    expect(outlookOf([...rows, operation("Spraying", "Home", "0", "done", { area: area("200") })])).toEqual(["100 of 4+1"]);
  });

  it("keeps of a lump sum for a crop the field's part of what is left", () => {
    const lump = operation("Tiling", "", "0", "plan", { target: { crop: "Corn" }, cost: { basis: "lump sum", rate: money("900") } });
    // 600 of it for Home, of which 25 of 100 acres are done for 100.
    expect(outlookOf([lump, operation("Tiling", "Home", "4", "done", { area: area("25") })])).toEqual(["550 of 2+1"]);
    expect(outlookOf([lump], "Hill")).toEqual(["300 of 1"]);
  });

  describe("of a split rate", () => {
    /** Pounds an acre that the outlook takes of an item, of which 60 lb are planned in April and 120 in June. */
    const poundsOf = (rows: readonly Application[]) => {
      const urea = item("Urea", "1");
      const { outlook, plan } = seasonFigures(seasonOf({ fields: [field("Home", "100", "200")], items: [urea], applications: rows }))
        .crops[0]!.fields[0]!;
      return [plan, outlook].map(({ budget }) => budget.costPerArea.layers.operating.toFixed()).join(" then ");
    };
    const first = application("Urea", "Home", "60", "plan", { date: "2031-04-10" });
    const second = application("Urea", "Home", "120", "plan", { date: "2031-06-15" });
    const done = (rate: string, more: Partial<Application> = {}) =>
      application("Urea", "Home", rate, "done", { date: "2031-05-20", ...more });

    it("takes the done rate off the planned row of the same rate, although an older one is still open", () => {
      // 120 done and 60 to come: 180 as planned, and not 120 and once more 120.
      expect(poundsOf([first, second, done("120")])).toBe("180 then 180");
      // Half of the field at 120: the other half of that row and all of the first are to come.
      expect(poundsOf([first, second, done("120", { area: area("50") })])).toBe("180 then 180");
      expect(poundsOf([first, second, done("120"), done("60")])).toBe("180 then 180");
    });

    it("takes another rate than any planned off the oldest row", () => {
      // 70 instead of the 60, and 120 to come.
      expect(poundsOf([first, second, done("70")])).toBe("180 then 190");
      // 120 on all and 70 on half: the 60 are to come on the other half.
      expect(poundsOf([first, second, done("120"), done("70", { area: area("50") })])).toBe("180 then 185");
      // 60 twice: one is the row of that rate, the second comes off what is left, the 120.
      expect(poundsOf([first, second, done("60"), done("60")])).toBe("180 then 120");
    });

    it("leaves what other rows plan where one was done as planned, and counts that one in the plan too", () => {
      expect(poundsOf([first, { ...second, status: "done as planned" }])).toBe("180 then 180");
      expect(
        poundsOf([
          { ...first, status: "done as planned" },
          { ...second, status: "done as planned" },
        ]),
      ).toBe("180 then 180");
      // A rate that nobody planned is taken off the row still open, never off the one that is done.
      expect(poundsOf([first, { ...second, status: "done as planned" }, done("50")])).toBe("180 then 170");
      expect(poundsOf([{ ...second, status: "done as planned" }, done("50")])).toBe("120 then 170");
    });
  });

  it("takes a pass at the planned price of one row off that row", () => {
    const rows = [
      operation("Spraying", "Home", "9", "plan", { date: "2031-05-01" }),
      operation("Spraying", "Home", "14", "plan", { date: "2031-07-20" }),
    ];
    // By plane for 14 before the first pass by land: 900 are to come.
    expect(outlookOf([...rows, operation("Spraying", "Home", "14", "done", { date: "2031-04-28" })])).toEqual(["2300 of 3+1"]);
    expect(outlookOf([...rows, operation("Spraying", "Home", "11", "done", { date: "2031-04-28" })])).toEqual(["2500 of 3+2"]);
  });

  it("is no pass that never was where a row without a date was done as planned before the harvest", () => {
    const row = operation("Planting", "Home", "20", "done as planned");
    const season = (status: Operation["status"]) =>
      seasonFigures(
        seasonOf({
          fields: [field("Home", "100", "200", { harvestDone: { on: null } })],
          harvest: [load("Home", "19000")],
          operations: [{ ...row, status }],
        }),
      ).crops[0]!.fields[0]!;
    expect([season("done as planned").final!.budget.costPerArea.layers.operating.toFixed(), season("done as planned").neverDone]).toEqual([
      "20",
      [],
    ]);
    expect([season("plan").final!.budget.costPerArea.layers.operating.toFixed(), season("plan").neverDone.length]).toEqual(["0", 1]);
  });

  it("has nothing left of a row that was done as planned, whose cost is in the plan and in the outlook", () => {
    const row = operation("Planting", "Home", "20", "done as planned", { date: "2031-05-01" });
    const { plan, outlook } = seasonFigures(seasonOf({ fields, operations: [row] })).crops[0]!.fields[0]!;
    expect([plan, outlook].map(({ charges }) => charges.map(({ amount }) => amount.toFixed()))).toEqual([["2000"], ["2000"]]);
    // Typed over with "done", the plan knows nothing of it and the cost per acre seems to have risen by 20.
    const over = seasonFigures(seasonOf({ fields, operations: [{ ...row, status: "done" }] })).crops[0]!.fields[0]!;
    expect([over.plan, over.outlook].map(({ budget }) => budget.costPerArea.layers.operating.toFixed())).toEqual(["0", "20"]);
  });
});
