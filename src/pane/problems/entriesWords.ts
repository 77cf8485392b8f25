import type { Format } from "../format";

/** "3 entries to fix, 2 to check"; empty where there is nothing to look at. */
export function entriesLine(fix: number, check: number, { count }: Pick<Format, "count">): string {
  const toFixWords = fix === 0 ? "" : `${count(fix)} ${fix === 1 ? "entry" : "entries"} to fix`;
  if (check === 0) return toFixWords;
  return fix === 0 ? `${count(check)} ${check === 1 ? "entry" : "entries"} to check` : `${toFixWords}, ${count(check)} to check`;
}
