/** What a field's past years say of its proven yield, in words. */
import { fewestYears, type FieldHistory } from "../core/history/provenYield";
import type { Field } from "../core/season";

/** "Mean of 5 years, 2026 to 2030; nothing is entered for 2025, so older years do not count." */
export function historyWords({ years, proven, endsBefore }: FieldHistory, field: Pick<Field, "provenYield" | "provenYears">): string {
  const counted =
    years.length === 0
      ? "No year counts"
      : `${years.length} ${years.length === 1 ? "year" : "years"}, ${years.length === 1 ? years[0]!.season : `${years.at(-1)!.season} to ${years[0]!.season}`}`;
  const use =
    field.provenYears.length > 0
      ? `Mean of ${counted}`
      : field.provenYield !== null
        ? `${counted}; the proven yield is your own entry`
        : proven === null && years.length > 0
          ? `${counted}: ${fewestYears} make a proven yield`
          : counted;
  const ends =
    endsBefore === null
      ? ""
      : endsBefore.why === "no entry"
        ? `; nothing is entered for ${endsBefore.season}, so older years do not count`
        : `; the yield of ${endsBefore.season} is blank, so older years do not count`;
  return `${use}${ends}.`;
}
