import { unzipSync } from "fflate";
import { openWorkbook, type EmbeddedWorkbook } from "../../../src/host/embedded";
import type { Options } from "../../../src/host/embedded/embeddedWorkbook";
import { parseArea } from "../../../src/host/address";
import type { Cell } from "../../../src/workbook/cell";
import { packageFaults } from "./packageFaults";

/** @throws Error with the fault's words where the file cannot be opened */
export function opened(bytes: Uint8Array, options: Options = {}): EmbeddedWorkbook {
  const result = openWorkbook(bytes, options);
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join(" "));
  return result.value;
}

/** The place of a cell such as `B2`, counted from 0. */
export const place = (cell: string) => {
  const { top, left } = parseArea(cell)!;
  return { row: top, column: left };
};

/** What is typed into cells of a sheet: a value, or a formula with its `=`. */
export const entries = (cells: Readonly<Record<string, Cell>>) =>
  Object.entries(cells).map(([cell, value]) =>
    typeof value === "string" && value.startsWith("=") ? { ...place(cell), formula: value.slice(1) } : { ...place(cell), value },
  );

/** The parts of a file as text. */
export const partsOf = (bytes: Uint8Array): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, content]) => [name, Buffer.from(content).toString("latin1")]));

/** Parts that are not the same in both files, or in one of them only. */
export function differingParts(before: Uint8Array, after: Uint8Array): string[] {
  const [one, other] = [partsOf(before), partsOf(after)];
  return [...new Set([...Object.keys(one), ...Object.keys(other)])].filter((name) => one[name] !== other[name]).sort();
}

/** The file as it would be saved. @throws Error where it breaks a rule of its format */
export function sound(workbook: EmbeddedWorkbook): Uint8Array {
  const bytes = workbook.save();
  const faults = packageFaults(bytes);
  if (faults.length > 0) throw new Error(faults.join("; "));
  return bytes;
}
