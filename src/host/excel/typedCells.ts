import type { Cell } from "../../workbook/cell";

/**
 * A cell as it must be handed to Excel to arrive as it is. Excel takes what it is given as if it were typed: `1-2` becomes
 * a date, `00123` a number, `=A1`, `+A1` and `@A1` formulas. An apostrophe in front keeps any text as text and is not part
 * of the value; every text gets one, because no rule of ours could be sure what Excel makes of a word in each language.
 */
export const asTyped = (cell: Cell): Cell => (typeof cell === "string" && cell !== "" ? `'${cell}` : cell);
