import type { OutlookRefusal } from "../core/stand/yieldOutlook";

/** Why a table of yields gives no answer, without a full stop. */
export function refusalWords({ of, reason, table, asked, from, to }: OutlookRefusal): string {
  const which = of === "planned" ? "planned" : "actual";
  switch (reason) {
    case "date outside":
      return `the ${which} planting date ${asked} is outside the table "${table}" (${from} to ${to})`;
    case "stand outside":
      return `the ${which} stand ${asked} is outside the table "${table}" (${from} to ${to})`;
    case "date missing":
      return `the ${which} planting date is not entered`;
    case "stand missing":
      return of === "planned" ? "the target stand is not entered" : "no stand is counted";
    case "row width missing":
      return `the row width is not entered, and the table "${table}" goes by it`;
    case "not printed":
      return `the table "${table}" prints nothing for ${asked}`;
  }
}
