import type { WorkbookContent } from "../../src/workbook/cell";
import { product } from "./built";

/** A season as the bytes of a workbook file; tables that are none of ours are left out. */
export async function fileOf({ tables }: WorkbookContent): Promise<Uint8Array> {
  const { inputTables, newWorkbook } = await product();
  const workbook = newWorkbook();
  await workbook.makeTables(inputTables.filter(({ name }) => tables.some((table) => table.name === name)));
  for (const { name, headers, rows } of tables.filter((table) => inputTables.some((each) => each.name === table.name)))
    await workbook.addRows(
      name,
      rows.map((row) => new Map(headers.map((header, index) => [header, row[index]!]))),
    );
  return workbook.save();
}
