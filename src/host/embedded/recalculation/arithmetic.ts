import { parseArea } from "../../address";
import type { CalculatedValue, FormulaBook } from "./formulaBook";
import { formulaTokens, type FormulaToken } from "./formulaTokens";
import type { KnownFormula } from "./understood";

/** Functions that add and multiply numbers and have no second way of doing it. */
const plainFunctions = new Set(["SUM", "PRODUCT", "MIN", "MAX"]);

/**
 * Whether a formula is bare arithmetic of numbers: `+ - * /`, brackets and sums of single cells and areas, or one cell
 * alone. Of such a formula there is one value only, so a file that stores another has not worked it out.
 */
export function isArithmetic({ cell: { formula }, understood: { reads, engineFormula } }: KnownFormula, book: FormulaBook): boolean {
  if (engineFormula === null) return false;
  const tokens = formulaTokens(formula).filter(({ text }) => text.trim() !== "");
  const isOneCell = (token: FormulaToken) =>
    token.kind === "table" ? /^[^[]*\[(@|\[#This Row\],)/i.test(token.text) && !token.text.includes(":") : isSingle(token.text);
  const isAllowed = (token: FormulaToken, index: number) => {
    switch (token.kind) {
      case "sheet":
        return true;
      case "area":
      case "table":
        return isOneCell(token) || isWholeArgument(tokens, index);
      case "function":
        return plainFunctions.has(token.text.toUpperCase());
      case "other":
        return /^([0-9.]+(e[+-]?[0-9]+)?|[-+*/(),])$/i.test(token.text);
      default:
        return false;
    }
  };
  if (!tokens.every(isAllowed)) return false;
  if (tokens.filter(({ kind }) => kind !== "sheet").length === 1) return true;
  // Of texts and of yes and no, one program makes numbers where another does not.
  return reads.every(
    ({ sheet, area }) =>
      area.top !== area.bottom || area.left !== area.right || isNumeric(book.valueAt({ sheet, row: area.top, column: area.left })),
  );
}

const isSingle = (text: string): boolean => {
  const area = parseArea(text);
  return area !== null && area.top === area.bottom && area.left === area.right;
};

/** Whether a reference stands alone between the brackets or commas of a function: an area in arithmetic would mean one of its cells. */
function isWholeArgument(tokens: readonly FormulaToken[], index: number): boolean {
  const before = tokens[index - 1]?.kind === "sheet" ? index - 2 : index - 1;
  if (!/^[(,]$/.test(tokens[before]?.text ?? "") || !/^[),]$/.test(tokens[index + 1]?.text ?? "")) return false;
  let depth = 0;
  for (let at = before; at >= 0; at -= 1) {
    const { text } = tokens[at]!;
    if (text === ")") depth += 1;
    if (text === "(" && depth === 0) return tokens[at - 1]?.kind === "function";
    if (text === "(") depth -= 1;
  }
  return false;
}

const isNumeric = (value: CalculatedValue): boolean => value === "" || typeof value === "number";
