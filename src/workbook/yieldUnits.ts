/** The units in which a crop's yields, prices and quantities are counted. */
import type { AreaUnit, YieldUnit } from "../core/numbers/units";
import { measureMeant } from "./tonMeant";
import { plain } from "./words";

export const yieldUnits = ["bu", "t", "lb", "cwt", "ton", "kg"] as const satisfies readonly YieldUnit[];

/**
 * The unit that is typed, an area after it aside: "bu/ac" is bu.
 *
 * @param beside the unit that the crop's yields are in; `null` where that is what is read
 */
export function yieldUnitNamed(typed: string, areaUnit: AreaUnit, beside: YieldUnit | null): YieldUnit | "ton-unclear" | null {
  const written = typed.split(/\/| per /i)[0]!;
  if (/^(bu|bushels?|bus|bu\.)$/.test(plain(written))) return "bu";
  const measure = measureMeant(written, areaUnit, beside);
  return measure === "ton-unclear" ? measure : (yieldUnits.find((unit) => unit === measure?.name) ?? null);
}
