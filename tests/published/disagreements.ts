import { readFileSync } from "node:fs";

const lines = readFileSync(new URL("disagreements.md", import.meta.url), "utf8").split("\n");

/** Whether disagreements.md has a line that names the source, what it prints and what we get. */
export const isListed = (source: string, prints: string, ours: string): boolean =>
  lines.some((line) => {
    const [, of = "", printed = "", got = ""] = line.split("|");
    const holds = (cell: string, figure: string) => cell.trim().split(", ").includes(figure);
    return of.includes(source) && holds(printed, prints) && holds(got, ours);
  });
