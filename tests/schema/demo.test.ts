/** The demo season: free of problems as it is, and with just its two slips in the other workbook. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { demoTables, withSlips, type DemoTable } from "../../shared/demo/tables";
import { openWorkbook } from "../../src/host/embedded";
import { describe as inWords } from "../../src/workbook/explain";
import { seasonReport } from "../../src/workbook/report";

const reportOf = async (name: string) => {
  const opened = openWorkbook(readFileSync(`shared/${name}.xlsx`));
  if (!opened.ok) throw new Error(opened.problems.map((fault) => fault.message).join("\n"));
  const content = await opened.value.read();
  return { content, report: seasonReport(content) };
};
const asRead = (tables: readonly DemoTable[]) =>
  tables.map(({ template, rows }) =>
    // A table has one row at least, which is blank where nothing is entered.
    ({
      name: template.name,
      headers: template.columns.map(({ heading }) => heading),
      rows: rows.length === 0 ? [template.columns.map(() => "")] : rows,
    }),
  );

describe("the demo season", () => {
  it("has no problems, and all that the pages show: stages apart, a thin stand, items still to buy, a harvest", async () => {
    const { report } = await reportOf("demo-season");
    expect(report.problems.map(inWords)).toEqual([]);
    const { crops, items, stands } = report.figures;
    expect(crops.map(({ crop }) => crop)).toEqual(["Corn", "Soybeans", "Winter wheat"]);
    expect(crops.flatMap(({ fields }) => fields)).toHaveLength(14);
    const [corn] = crops;
    expect(corn!.outlook.costPerArea.byKind.get("fertilizer")!.gt(corn!.plan.costPerArea.byKind.get("fertilizer")!)).toBe(true);
    expect(corn!.outlook.breakEvenPrice.cash!.lt(corn!.outlook.price)).toBe(true);
    expect(corn!.outlook.breakEvenPrice.full!.gt(corn!.outlook.price)).toBe(true);
    expect(items.filter(({ short }) => short.gt("0")).length).toBeGreaterThan(2);
    expect(stands.find(({ field }) => field.name === "Old Orchard North")!.summary.mean.lt("23000")).toBe(true);
    expect(crops[2]!.fields.map(({ final }) => final !== null)).toEqual([true, false]);
    // The rent of one field follows price and yield: at the expected price it is its base, at the high one it is more.
    const [gander] = report.season.fields.filter(({ flexibleRent }) => flexibleRent);
    expect(gander!.name).toBe("Gander Slough");
    expect(crops[1]!.outlook.rentAboveBase.isZero()).toBe(true);
    expect(gander!.yieldGoal.times(report.season.crops[1]!.highPrice!).gt(gander!.flexibleRent!.baseGross)).toBe(true);
  });

  it("names the unit that nobody knows and the amount that disagrees, and marks what they touch", async () => {
    const { report } = await reportOf("demo-season-with-problems");
    expect(report.problems.map(({ code, at }) => `${code} ${at.table} ${at.column}`)).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^unknown-unit Purchases Unit$/),
        expect.stringMatching(/^amount-disagrees Purchases/),
      ]),
    );
    expect(report.problems).toHaveLength(2);
    expect(report.problemsOf({ of: "crop", name: "Corn" })).toHaveLength(2);
  });

  it("has room for every text in its column, so that none is cut off on paper", () => {
    const cutOff = demoTables().flatMap(({ template, rows }) =>
      template.columns.flatMap(({ heading, width }, index) =>
        rows
          .map((row) => String(row[index] ?? ""))
          .filter((text) => text.length > width)
          .map((text) => `${template.sheet}, ${heading}: ${text}`),
      ),
    );
    expect(cutOff).toEqual([]);
  });

  it("stands in the committed workbooks as in the comma-separated tables", async () => {
    for (const [name, tables] of [
      ["demo-season", demoTables()],
      ["demo-season-with-problems", withSlips(demoTables())],
    ] as const) {
      const { content } = await reportOf(name);
      expect(
        content.tables.map(({ name: table, headers, rows }) => ({ name: table, headers, rows })),
        name,
      ).toEqual(asRead(tables));
    }
  });
});
