/** Cells of ours as XML. */
import type { Cell } from "../../../workbook/cell";
import { cellName } from "../../address";
import type { StoredCell } from "./sheetRow";
import { escapeText } from "../package/xml";

/** One cell. A text is written into the cell itself, so that the shared strings stay as they are. */
export function cellXml(
  prefix: string,
  row: number,
  { column, value, formula, style, isError, isUnknown, notes = "" }: StoredCell,
): string {
  const p = prefix;
  const attributes = ` r="${cellName({ row, column })}"${style === 0 ? "" : ` s="${style}"`}${notes}`;
  const type = isError ? ' t="e"' : typeof value === "boolean" ? ' t="b"' : "";
  if (formula !== undefined) {
    const shown = isUnknown ? "" : `<${p}v>${valueText(value)}</${p}v>`;
    return (
      `<${p}c${attributes}${type === "" && typeof value === "string" && !isUnknown ? ' t="str"' : type}>` +
      `<${p}f${formula.tag ?? ""}>${escapeText(formula.text)}</${p}f>${shown}</${p}c>`
    );
  }
  if (value === "") return `<${p}c${attributes}/>`;
  if (typeof value === "string" && !isError) {
    return `<${p}c${attributes} t="inlineStr"><${p}is><${p}t xml:space="preserve">${escapeText(value)}</${p}t></${p}is></${p}c>`;
  }
  return `<${p}c${attributes}${type}><${p}v>${valueText(value)}</${p}v></${p}c>`;
}

const valueText = (value: Cell): string => (typeof value === "boolean" ? (value ? "1" : "0") : escapeText(String(value)));
