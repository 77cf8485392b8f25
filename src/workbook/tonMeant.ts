/** Which ton is meant: in acre workbooks the short ton of 2,000 lb, in hectare workbooks the tonne, as the trade there says. */
import { measureNamed, type Measure } from "../core/numbers/measure";
import type { AreaUnit } from "../core/numbers/units";
import { plain } from "./words";

/** Units of weight that go with a short ton and not with a tonne. */
const withShortTon: ReadonlySet<string> = new Set(["lb", "oz", "cwt", "ton"]);

/**
 * The measure of a typed unit. A bare *ton* of a hectare workbook is a tonne; beside a unit of pounds either may be meant.
 *
 * @param beside the unit that it will be counted in or with; `null` where there is none yet
 */
export function measureMeant(typed: string, areaUnit: AreaUnit, beside: string | null): Measure | "ton-unclear" | null {
  if (areaUnit === "ac" || !/^tons?$/.test(plain(typed))) return measureNamed(typed);
  return beside !== null && withShortTon.has(beside) ? "ton-unclear" : measureNamed("t");
}
