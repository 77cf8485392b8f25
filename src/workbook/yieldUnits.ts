/** The units in which a crop's yields, prices and quantities are counted. */
import { measureNamed } from "../core/measure";
import type { YieldUnit } from "../core/units";
import { plain } from "./words";

export const yieldUnits = ["bu", "t", "lb", "cwt", "ton", "kg"] as const satisfies readonly YieldUnit[];

/** The unit that is typed, an area after it aside: "bu/ac" is bu. */
export function yieldUnitNamed(typed: string): YieldUnit | null {
  const written = typed.split(/\/| per /i)[0]!;
  if (/^(bu|bushels?|bus|bu\.)$/.test(plain(written))) return "bu";
  const measure = measureNamed(written);
  return yieldUnits.find((unit) => unit === measure?.name) ?? null;
}
