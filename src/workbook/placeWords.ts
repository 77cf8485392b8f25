import type { Place } from "./problem";

/** "Purchases, row 3, Unit". */
export const placeWords = ({ table, row, column }: Place): string =>
  [table, row === undefined ? null : `row ${row}`, column ?? null].filter((part) => part !== null).join(", ");
