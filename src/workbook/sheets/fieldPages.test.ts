import { beforeAll, describe, expect, it } from "vitest";
import { demo } from "../../../tests/support/demoReport";
import { everyColumn } from "../../../tests/support/everyColumn";
import { sheetLines } from "../../../tests/support/sheetLines";
import { seasonReport } from "../report";
import type { SeasonReport } from "../seasonReport";
import { shownMoney } from "../shown";
import { fieldPagesSheet } from "./fieldPages";

let report: SeasonReport;
beforeAll(async () => {
  ({ report } = await demo());
});

describe("the sheet of field pages", () => {
  it("lists every field once, the one that leaves least first, and gives each a page of its own", () => {
    const sheet = fieldPagesSheet(report);
    const all = report.figures.crops.flatMap(({ fields }) => fields);
    const list = sheet.rows.slice(0, sheet.page.breakAfter![0]).filter(([name]) => / (Corn|Soybeans|Winter wheat)$/.test(`${name?.value}`));
    expect(list.length).toBe(all.length);
    const nets = list.map((row) => Number(row[7]!.value));
    expect(nets).toEqual([...nets].sort((a, b) => a - b));
    expect(sheet.page.breakAfter!.length).toBe(all.length);
    const heads = sheet.page.breakAfter!.map((row) => `${sheet.rows[row]![0]!.value}`);
    expect(sheet.rows[0]![0]!.value).toBe("Fields, one by one");
    expect(heads).toEqual(all.map(({ field, crop, area }) => `${field}, ${crop}, ${area.toFixed(1)} ac`));
  });

  it("begins each page with the net return of the plan and of now, layer by layer", () => {
    const { rows, page } = fieldPagesSheet(report);
    for (const [index, field] of report.figures.crops.flatMap(({ fields }) => fields).entries()) {
      const net = rows.slice(page.breakAfter![index]).find(([name]) => name?.value === "Full cost")!;
      const now = (field.final ?? field.outlook).budget;
      expect([net[0]!.value, net[3]!.value, net[4]!.value], field.field).toEqual([
        "Full cost",
        shownMoney(field.plan.budget.netPerArea.full).toNumber(),
        shownMoney(now.netPerArea.full).toNumber(),
      ]);
    }
  });

  it("marks a field whose figures are not complete, in the list and on its page", () => {
    const content = everyColumn();
    const tables = content.tables.map((table) =>
      table.name !== "Fields"
        ? table
        : {
            ...table,
            rows: table.rows.map((row, index) => (index === 0 ? row.map((cell) => (cell === "2031-05-05" ? "soon" : cell)) : row)),
          },
    );
    const lines = sheetLines(fieldPagesSheet(seasonReport({ ...content, tables })));
    expect(lines.some((line) => line.startsWith("Alder, Corn (incomplete)"))).toBe(true);
    expect(lines.slice(lines.indexOf("Alder, Corn, 120.0 ac"))[1]).toMatch(/^Incomplete/);
  });
});
