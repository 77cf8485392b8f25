/** What Excel makes of a value that is handed to a cell: the same as if it were typed. From common knowledge of Excel. */
import type { Cell } from "../../../src/workbook/cell";

export type Content = { readonly value: Cell; readonly formula?: string };

const errors = new Set(["#N/A", "#VALUE!", "#REF!", "#DIV/0!", "#NUM!", "#NAME?", "#NULL!"]);
const months = "jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec";

/** An apostrophe keeps text as text; everything else that looks like something becomes that. */
export function contentOf(typed: Cell): Content {
  if (typeof typed !== "string") return { value: typed };
  if (typed.startsWith("'")) return { value: typed.slice(1) };
  const text = typed.trim();
  if (/^(TRUE|FALSE)$/i.test(text)) return { value: text.toUpperCase() === "TRUE" };
  if (errors.has(text.toUpperCase())) return { value: text.toUpperCase() };
  if (/^[-+]?\$?\d[\d,]*(\.\d*)?(e[-+]?\d+)?%?$/i.test(text)) {
    const number = Number(text.replace(/[$,%]/g, ""));
    return { value: text.endsWith("%") ? number / 100 : number };
  }
  if (/^\d{1,4}[-/]\d{1,2}([-/]\d{1,4})?$/.test(text) || new RegExp(`^(${months})[a-z]* ?-?\\d{1,4}$`, "i").test(text)) {
    return { value: 46000 }; // some date; which one does not matter, only that the text is lost
  }
  if (/^[=+\-@]./.test(typed)) return { value: 0, formula: typed.startsWith("=") ? typed : `=${typed}` };
  return { value: typed };
}
