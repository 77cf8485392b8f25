import type { Place } from "./problem";

/** "Purchases, entry 3, Unit". */
export const placeWords = ({ table, row, column }: Place): string =>
  [table, row === undefined ? null : `entry ${row}`, column ?? null].filter((part) => part !== null).join(", ");
