import { Decimal } from "../../core/decimal";

/**
 * The number that a person means by what they typed in the form; `null` where it is none.
 *
 * Spaces and a leading or trailing currency sign are passed over. Of two different marks the last is the decimal mark. A single
 * comma before exactly three digits separates thousands ("1,250"), any other is a decimal mark ("12,5"); a single point
 * is always a decimal mark.
 */
export function typedNumber(text: string): Decimal | null {
  const plain = text.trim().replace(/[\s\u00a0\u202f'’]/g, "").replace(/^(-?)\p{Sc}|\p{Sc}$/gu, "$1").replace("−", "-");
  if (!/^-?[\d.,]*\d[\d.,]*$/.test(plain)) return null;
  const digits = withPoint(plain);
  return digits !== null && /^-?(\d+\.?\d*|\.\d+)$/.test(digits) ? new Decimal(digits) : null;
}

function withPoint(text: string): string | null {
  const [comma, point] = [text.lastIndexOf(","), text.lastIndexOf(".")];
  if (comma < 0) return text;
  if (point < 0) return /^-?\d{1,3}(,\d{3})+$/.test(text) ? text.replaceAll(",", "") : text.replace(",", ".");
  const [thousands, decimal] = comma < point ? [",", "."] : [".", ","];
  const [whole = "", part = ""] = [text.slice(0, text.lastIndexOf(decimal)), text.slice(text.lastIndexOf(decimal) + 1)];
  const grouped = new RegExp(`^-?\\d{1,3}(\\${thousands}\\d{3})+$`);
  return grouped.test(whole) ? `${whole.replaceAll(thousands, "")}.${part}` : null;
}
