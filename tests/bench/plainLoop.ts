import type { WorkbookContent } from "../../src/workbook/cell";

/**
 * Multiplies and adds up the numbers of every row in binary floating point, by the row's first text: what the least careful
 * program would take. Each time of the bench is also told as a multiple of this one, taken in the same run.
 */
export function plainLoop({ tables }: Pick<WorkbookContent, "tables">): number {
  const totals = new Map<string, number>();
  for (const { rows } of tables) {
    for (const row of rows) {
      let name = "";
      let product = 1;
      for (const cell of row) {
        if (typeof cell === "number") product *= cell;
        else if (name === "" && typeof cell === "string") name = cell;
      }
      totals.set(name, (totals.get(name) ?? 0) + product);
    }
  }
  return totals.size;
}
