/**
 * Makes the demo workbooks from the comma-separated tables: `npm run demo`. They are made by the product's own means,
 * as a grower would who lets the pane make the tables and pastes rows into them.
 */
import { writeFileSync } from "node:fs";
import { newWorkbook } from "../../src/host/embedded";
import { demoTables, withSlips, type DemoTable } from "./tables";

async function workbookOf(tables: readonly DemoTable[]): Promise<Uint8Array> {
  const workbook = newWorkbook();
  // The first row takes the place of the template's example.
  await workbook.makeTables(tables.map(({ template, rows: [first = []] }) => ({ ...template, example: first })));
  for (const { template, rows: [, ...others] } of tables) {
    if (others.length === 0) continue;
    await workbook.addRows(template.name, others.map((row) => new Map(template.columns.map(({ heading }, index) => [heading, row[index] ?? ""]))));
  }
  return workbook.save();
}

for (const [name, tables] of [["demo-season", demoTables()], ["demo-season-with-problems", withSlips(demoTables())]] as const) {
  writeFileSync(new URL(`../${name}.xlsx`, import.meta.url), await workbookOf(tables));
}
