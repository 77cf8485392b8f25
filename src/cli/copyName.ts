/** Under which names a copy may be written. */
import { readFile } from "node:fs/promises";
import { extname } from "node:path";
import type { WorkbookKind } from "../host/embedded/package/workbookKind";
import { Refusal } from "./arguments";
import { isMarked } from "./madeByUs";
import { onOneLine } from "./terminalText";
import { isMissing } from "./writtenBeside";

/**
 * Refuses a name whose ending says something else than the workbook is, since Excel opens no such file.
 *
 * @param kind what the copied workbook holds
 */
export function refuseOtherEnding(copy: string, kind: WorkbookKind): void {
  const ending = extname(copy).toLowerCase();
  const name = onOneLine(copy);
  if (kind === "macros" && ending !== ".xlsm") {
    throw new Refusal(
      `${name}: the workbook has macros, and Excel opens a copy with them only if its name ends in .xlsm. Name the copy so.`,
    );
  }
  if (kind === "template")
    throw new Refusal(`${name}: the workbook is a template. Open it in Excel, save it as a workbook (.xlsx), and use that.`);
  if (kind === "plain" && ending === ".xlsm") {
    throw new Refusal(
      `${name}: the workbook has no macros, and Excel opens a copy of it only if its name ends in .xlsx. Name the copy so.`,
    );
  }
  if (kind === "plain" && ending !== ".xlsx") throw new Refusal(`${name} is no name of a workbook: let it end in .xlsx.`);
}

/** Refuses to replace a file that is there and was not written by us. */
export async function refuseReplacing(copy: string): Promise<void> {
  const there = await readFile(copy).catch((cause: unknown) => {
    if (isMissing(cause)) return null;
    throw new Refusal(`${onOneLine(copy)} cannot be written: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
  });
  if (there !== null && !isMarked(there)) {
    throw new Refusal(
      `${onOneLine(copy)} is there already and is no copy that Pennyacre wrote: name another file, or replace it with --force.`,
    );
  }
}
