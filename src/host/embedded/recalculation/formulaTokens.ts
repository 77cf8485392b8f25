/** The words of a formula, as far as moving, rewriting and tracing need to know them. */

/**
 * `sheet`: a sheet's name before a reference, its `!` included. `area`: cells, whole columns or whole rows, with or
 * without `$`. `table`: a structured reference, its table's name and brackets included. `name`: a defined name, or TRUE and
 * FALSE. `function`: a function's name, without its bracket. `other`: numbers, operators, brackets and blanks.
 */
export type FormulaToken = {
  readonly kind: "text" | "error" | "sheet" | "area" | "table" | "name" | "function" | "other";
  readonly text: string;
};

const word = String.raw`[\p{L}_\\][\p{L}\p{N}_.\\?]*`;
const cell = String.raw`\$?[A-Za-z]{1,3}\$?[0-9]{1,7}`;
/** No reference ends in the middle of a word or before a bracket. */
const end = String.raw`(?![\p{L}\p{N}_.(!\[])`;
const patterns: readonly (readonly [FormulaToken["kind"], RegExp])[] = [
  ["text", /"(?:[^"]|"")*"/uy],
  ["error", /#(?:N\/A|NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|SPILL!|CALC!|GETTING_DATA)/uy],
  ["sheet", new RegExp(String.raw`(?:'(?:[^']|'')+'|(?:\[[^\]]*\])?[\p{L}\p{N}_.]+(?::[\p{L}\p{N}_.]+)?)!`, "uy")],
  [
    "area",
    new RegExp(`(?:${cell}:${cell}|${String.raw`\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}|\$?[0-9]{1,7}:\$?[0-9]{1,7}`}|${cell})${end}`, "uy"),
  ],
  ["table", new RegExp(String.raw`(?:${word})?\[(?:'.|[^\[\]']|\[(?:'.|[^\[\]'])*\])*\]`, "uy")],
  ["function", new RegExp(String.raw`${word}(?=\()`, "uy")],
  ["name", new RegExp(word, "uy")],
  ["other", /[0-9]+(?:\.[0-9]*)?(?:[eE][+-]?[0-9]+)?|\.[0-9]+(?:[eE][+-]?[0-9]+)?|\s+|./suy],
];

/** The formula, without its `=`, as a row of tokens that together are its text again. */
export function formulaTokens(formula: string): FormulaToken[] {
  const tokens: FormulaToken[] = [];
  for (let at = 0; at < formula.length;) {
    const token = tokenAt(formula, at);
    tokens.push(token);
    at += token.text.length;
  }
  return tokens;
}

function tokenAt(formula: string, at: number): FormulaToken {
  for (const [kind, pattern] of patterns) {
    pattern.lastIndex = at;
    const text = pattern.exec(formula)?.[0];
    if (text !== undefined) return { kind, text };
  }
  throw new Error(`Nothing can be read at ${at} of the formula ${formula}`);
}
