/** Text in columns, as files of stations and phones have it: lines, and the cells of a line. */

/** A line with its number in the file. */
export type TextLine = { readonly line: number; readonly text: string };

/** The lines of a text; a cell in quotes may run over several of them, which are then one. */
export function linesOf(text: string): readonly TextLine[] {
  const lines: TextLine[] = [];
  let open: TextLine | null = null;
  for (const [index, each] of text
    .replace(/^\uFEFF/, "")
    .split(/\r?\n/)
    .entries()) {
    const now: TextLine = open === null ? { line: index + 1, text: each } : { line: open.line, text: `${open.text}\n${each}` };
    const isOpen: boolean = (now.text.match(/"/g) ?? []).length % 2 === 1;
    if (!isOpen) lines.push(now);
    open = isOpen ? now : null;
  }
  return open === null ? lines : [...lines, open];
}

/** The cells of a line; a cell in quotes may hold the mark that parts them, and two quotes for one. */
export function cellsOf(line: string, mark: string): readonly string[] {
  const cells: string[] = [];
  let [cell, isQuoted] = ["", false];
  for (let at = 0; at < line.length; at += 1) {
    const sign = line[at]!;
    if (isQuoted && sign === '"' && line[at + 1] === '"') {
      cell += '"';
      at += 1;
    } else if (sign === '"') isQuoted = !isQuoted;
    else if (sign === mark && !isQuoted) {
      cells.push(cell.trim());
      cell = "";
    } else cell += sign;
  }
  return [...cells, cell.trim()];
}
