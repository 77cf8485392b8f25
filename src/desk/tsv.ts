/**
 * Blocks of cells as the clipboard carries them between spreadsheets: fields parted by tabs, rows by line breaks, a
 * field in quotes where it holds a tab, a line break or a quote, and a quote inside quotes written twice.
 */

/** Rows of texts from the clipboard. A last line break ends the last row and begins no new one; rows are made equally long. */
export function parseTsv(text: string): string[][] {
  if (text === "") return [];
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  for (;;) {
    const field = text[at] === '"' ? (quotedField(text, at) ?? plainField(text, at)) : plainField(text, at);
    row.push(field.value);
    at = field.end;
    if (text[at] === "\t") {
      at += 1;
      continue;
    }
    rows.push(row);
    row = [];
    at += text.startsWith("\r\n", at) ? 2 : 1;
    if (at >= text.length) break;
  }
  const width = Math.max(...rows.map((each) => each.length));
  return rows.map((each) => [...each, ...Array<string>(width - each.length).fill("")]);
}

type Field = { readonly value: string; readonly end: number };

function plainField(text: string, start: number): Field {
  let end = start;
  while (end < text.length && text[end] !== "\t" && text[end] !== "\n" && text[end] !== "\r") end += 1;
  return { value: text.slice(start, end), end };
}

/** `null` where the quote is never closed, or something follows the closing quote: then it is an ordinary character, as in `"Big" bin`. */
function quotedField(text: string, start: number): Field | null {
  let value = "";
  for (let at = start + 1; at < text.length; at += 1) {
    if (text[at] !== '"') value += text[at];
    else if (text[at + 1] === '"') {
      value += '"';
      at += 1;
    } else {
      const end = at + 1;
      return end === text.length || /[\t\r\n]/.test(text[end] ?? "") ? { value, end } : null;
    }
  }
  return null;
}

/** Rows of texts for the clipboard, each row ended by a line break. */
export const writeTsv = (rows: readonly (readonly string[])[]): string => rows.map((row) => `${row.map(asField).join("\t")}\r\n`).join("");

const asField = (text: string): string => (/[\t\r\n"]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
