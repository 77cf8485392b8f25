/** Whether a text can be a formula at all. A file with one that cannot is taken for damaged by Excel. */
import { formulaTokens, type FormulaToken } from "../recalculation/formulaTokens";

/** What is wrong with a formula, without its `=`, as a sentence; null if nothing is. Names and functions may be unknown. */
export function formulaFault(formula: string): string | null {
  const reader = new SyntaxReader(formulaTokens(formula).filter(({ text }) => text.trim() !== ""));
  try {
    reader.whole();
    return null;
  } catch (fault) {
    if (fault instanceof NoFormula) return fault.message;
    throw fault;
  }
}

class NoFormula extends Error {}

/** Excel takes no more brackets within brackets. */
const deepest = 64;
const operators = new Set(["+", "-", "*", "/", "^", "&", "=", "<", ">", "<=", ">=", "<>", ":"]);

class SyntaxReader {
  private at = 0;
  private depth = 0;

  constructor(private readonly tokens: readonly FormulaToken[]) {}

  whole(): void {
    this.expression();
    if (this.at < this.tokens.length) throw this.unexpected();
  }

  private get text(): string {
    return this.tokens[this.at]?.text ?? "";
  }

  private expression(): void {
    for (;;) {
      this.value();
      if (!operators.has(this.text)) return;
      this.take();
    }
  }

  private value(): void {
    while (/^[-+@]$/.test(this.text)) this.take();
    const token = this.tokens[this.at];
    if (token?.kind === "sheet") {
      this.take();
      if (!["area", "name", "error", "table"].includes(this.tokens[this.at]?.kind ?? "")) throw this.unexpected();
      this.take();
    } else if (token?.kind === "function") {
      this.take();
      this.brackets("(", ")", () => {
        if (this.text !== "," && this.text !== ")") this.expression();
      });
    } else if (this.text === "(") this.brackets("(", ")", () => this.expression());
    else if (this.text === "{") this.array();
    else if (token !== undefined && (token.kind !== "other" || /^[0-9.]/.test(token.text))) this.take();
    else throw this.unexpected();
    while (this.text === "%" || this.text === "#") this.take();
  }

  /** Parts between brackets, parted by commas. */
  private brackets(open: string, close: string, part: () => void): void {
    this.depth += 1;
    if (this.depth > deepest) throw new NoFormula("it has too many brackets within brackets.");
    if (this.take() !== open) throw this.unexpected();
    for (part(); this.text === ","; part()) this.take();
    if (this.text !== close)
      throw this.at < this.tokens.length ? this.unexpected() : new NoFormula(`the bracket "${close}" is missing at its end.`);
    this.take();
    this.depth -= 1;
  }

  /** Constants in braces: rows parted by semicolons. */
  private array(): void {
    this.take();
    for (;;) {
      if (/^[-+]$/.test(this.text)) this.take();
      const token = this.tokens[this.at];
      if (token === undefined || !(["text", "error", "name"].includes(token.kind) || /^[0-9.]/.test(token.text))) throw this.unexpected();
      this.take();
      const mark = this.text;
      if (mark !== "," && mark !== ";" && mark !== "}") throw this.unexpected();
      this.take();
      if (mark === "}") return;
    }
  }

  private take(): string {
    const { text } = this;
    this.at += 1;
    return text;
  }

  private unexpected(): NoFormula {
    const token = this.tokens[this.at];
    if (token === undefined) return new NoFormula("it breaks off.");
    return new NoFormula(
      token.kind === "other" && token.text.startsWith('"')
        ? "a text in it has no closing quote."
        : token.text === ";"
          ? "its parts are to be parted by commas, not semicolons."
          : `${token.text} cannot stand where it stands.`,
    );
  }
}
