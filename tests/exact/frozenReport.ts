/** What a workbook's report says, in a few letters: the same report has the same letters. */
import { createHash } from "node:crypto";
import { Decimal } from "../../src/core/numbers/decimal";
import { reportJson } from "../../src/workbook/reportJson";
import type { SeasonReport } from "../../src/workbook/seasonReport";

/**
 * Keys that reports gained on purpose since the letters were frozen, by their path with lists left out: `fields.provenFrom`. They are
 * looked at by tests of their own. Whoever freezes anew empties the list.
 */
const gained: ReadonlySet<string> = new Set<string>(["hybrids.maturesByPlan"]);

/** The report's text with decimals at 28 digits, which is where another order of the same sum may differ. */
export function canonicalReport(report: SeasonReport): string {
  const plain = (value: unknown, at: string): unknown => {
    if (typeof value === "string") return /^-?\d+(\.\d+)?$/.test(value) ? new Decimal(value).toSignificantDigits(28).toFixed() : value;
    if (Array.isArray(value)) return value.map((each) => plain(each, at));
    if (typeof value !== "object" || value === null) return value;
    const entries = Object.entries(value).map(([key, each]) => [key, each, at === "" ? key : `${at}.${key}`] as const);
    return Object.fromEntries(entries.filter(([, , path]) => !gained.has(path)).map(([key, each, path]) => [key, plain(each, path)]));
  };
  return JSON.stringify(plain(reportJson(report), ""));
}

export const lettersOf = (report: SeasonReport): string => createHash("sha256").update(canonicalReport(report)).digest("hex").slice(0, 6);
