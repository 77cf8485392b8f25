import type { InputTable } from "../../../workbook/inputTable";
import { newWorkbook } from "./open";

/**
 * The bytes of a new workbook with tables and their rows, the same for the same tables.
 *
 * @param notes lines for the sheet Notes that every new workbook begins with
 */
export async function filledWorkbook(tables: readonly InputTable[], notes: readonly string[]): Promise<Uint8Array> {
  const workbook = newWorkbook();
  workbook.setCells(
    "Notes",
    notes.map((value, row) => ({ row, column: 0, value })),
  );
  await workbook.makeTables(tables);
  return workbook.save();
}
