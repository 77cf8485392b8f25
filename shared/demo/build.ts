/**
 * Makes the demo workbooks from the comma-separated tables: `npm run demo`. They are made by the product's own means,
 * as a grower would who lets the pane make the tables and pastes rows into them.
 */
import { writeFileSync } from "node:fs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { newWorkbook } from "../../src/host/embedded";
import { demoTables, withSlips, type DemoTable } from "./tables";

const about = [
  "Demo season: an invented farm in the middle of June 2026",
  "14 fields, 1,900 acres of corn, soybeans and winter wheat.",
  "Nothing in it is real: names, prices and counts are made up.",
  "",
  "Worth a look",
  "Fertilizer costs more than planned, because prices rose after the budget was set (Purchases, Items).",
  "Old Orchard North was planted three weeks late and stands thin (Stand counts).",
  "Corn pays its cash cost at the expected price, but not its full cost.",
  "Nitrogen, fungicide and spray oil for the rest of the plan are still to be bought.",
  "Wheat on Hollow Oak is harvested and on Thistle Draw half in; everything else is done so far and the rest of the plan.",
] as const;
const aboutSlips = "Two slips are in Purchases: a unit that nobody knows, and a price and an amount that do not agree.";

async function workbookOf(tables: readonly DemoTable[], lines: readonly string[]): Promise<Uint8Array> {
  const workbook = newWorkbook();
  workbook.setCells(
    "Notes",
    lines.map((value, row) => ({ row, column: 0, value })),
  );
  await workbook.makeTables(tables.map(({ template, rows: [first] }) => (first === undefined ? template : { ...template, rows: [first] })));
  for (const {
    template,
    rows: [, ...others],
  } of tables) {
    if (others.length === 0) continue;
    await workbook.addRows(
      template.name,
      others.map((row) => new Map(template.columns.map(({ heading }, index) => [heading, row[index] ?? ""]))),
    );
  }
  return named("About", workbook.save());
}

/** The same workbook with another name for the sheet that every new one has. No formula names it. */
function named(name: string, bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  const part = "xl/workbook.xml";
  const text = strFromU8(parts[part]!);
  if (!text.includes('name="Notes"')) throw new Error("A new workbook has no sheet Notes any more");
  parts[part] = strToU8(text.replace('name="Notes"', `name="${name}"`));
  // A fixed date of the parts, so that the same tables give the same bytes.
  return zipSync(parts, { mtime: new Date(1980, 0, 1) });
}

const demo = demoTables();
for (const [name, tables, lines] of [
  ["demo-season", demo, about],
  ["demo-season-with-problems", withSlips(demo), [...about, aboutSlips]],
] as const) {
  writeFileSync(new URL(`../${name}.xlsx`, import.meta.url), await workbookOf(tables, lines));
}
