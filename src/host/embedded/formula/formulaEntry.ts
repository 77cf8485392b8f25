/** Formulas as people type them and as files have them. */
import { HostError } from "../../workbookHost";
import { formulaFault } from "./formulaSyntax";
import { formulaTokens, type FormulaToken } from "../recalculation/formulaTokens";
import { tableReference } from "../recalculation/tableReference";

/** Excel takes no longer one. */
const longestFormula = 8192;

/**
 * Functions younger than the file format, which files write with a mark in front. From memory of Excel's own list of them; a
 * function that is missing here is written as typed, and Excel asks for it to be entered again.
 */
const young = new Set(
  (
    "ACOT ARABIC BASE BINOM.DIST BITAND BITOR CEILING.MATH CHISQ.DIST COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COVARIANCE.P " +
    "COVARIANCE.S DAYS DECIMAL EXPON.DIST F.DIST F.INV FLOOR.MATH FORECAST.LINEAR FORMULATEXT GAMMA.DIST IFNA IFS ISFORMULA " +
    "ISOWEEKNUM LET MAXIFS MINIFS MODE.SNGL NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV NUMBERVALUE PDURATION PERCENTILE.EXC " +
    "PERCENTILE.INC PERCENTRANK.INC POISSON.DIST QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ RRI SEQUENCE SHEET SHEETS " +
    "SORTBY STDEV.P STDEV.S SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TEXTJOIN UNIQUE VAR.P VAR.S XLOOKUP XMATCH XOR " +
    "Z.TEST"
  ).split(" "),
);
/** Two of them have another mark as well. */
const sheetFunctions = new Set(["FILTER", "SORT"]);

/**
 * A typed formula, without its `=`, as files have it: functions and cells in capitals, young functions with their mark,
 * `[@Acres]` with its table and its row spelled out.
 *
 * @param ownTable the table that the cell is in
 * @throws HostError where Excel would take the file for damaged because of it
 */
export function asFiled(typed: string, ownTable: string | null): string {
  const formula = typed.trim();
  if (formula.length > longestFormula) throw new HostError("failed", `A formula has at most ${longestFormula} characters.`);
  const fault = formulaFault(formula);
  if (fault !== null) throw new HostError("failed", `This is no formula: ${fault} To enter it as a text, put an apostrophe (') in front.`);
  return formulaTokens(formula)
    .map((token) => filed(token, ownTable))
    .join("");
}

function filed({ kind, text }: FormulaToken, ownTable: string | null): string {
  if (kind === "area") return text.toUpperCase();
  if (kind === "table") return filedTable(text, ownTable);
  if (kind !== "function") return text;
  const name = text.toUpperCase();
  if (sheetFunctions.has(name)) return `_xlfn._xlws.${name}`;
  return young.has(name) ? `_xlfn.${name}` : name.startsWith("_XL") ? text : name;
}

function filedTable(text: string, ownTable: string | null): string {
  if (!text.startsWith("[") && !text.includes("@")) return text;
  const { table, rows, columns } = tableReference(text);
  const name = table ?? ownTable;
  if (name === null)
    throw new HostError("failed", `${text} names a column alone, which only a cell of its table can. Put the table's name in front.`);
  const guarded = columns.map((column) => `[${column.replace(/[[\]#'@]/g, "'$&")}]`);
  const rowWords = [...rows].map((word) => `[${specials[word]}]`);
  if (rowWords.length === 0 && guarded.length === 1) return `${name}${guarded[0]!}`;
  return `${name}[${[...rowWords, ...(guarded.length > 0 ? [guarded.join(":")] : [])].join(",")}]`;
}

const specials = { "#all": "#All", "#data": "#Data", "#headers": "#Headers", "#totals": "#Totals", "#this row": "#This Row" } as const;

/** A formula of a file as people type it: without the marks of young functions. */
export const asTyped = (formula: string): string =>
  !/_xl(fn|pm)\./i.test(formula)
    ? formula
    : formulaTokens(formula)
        .map(({ kind, text }) => {
          if (kind === "name") return text.replace(/^_xlpm\./i, "");
          const plain = kind === "function" ? text.replace(/^_xlfn\.(?:_xlws\.)?/i, "") : text;
          return young.has(plain) || sheetFunctions.has(plain) ? plain : text;
        })
        .join("");
