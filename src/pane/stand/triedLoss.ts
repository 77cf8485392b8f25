/** A loss to an uneven stand: tried on the outlook, and what publications found. */
import { hundred, one, type Decimal } from "../../core/numbers/decimal";
import type { FieldStand } from "../../core/stand/fieldStand";
import type { UniformityFinding } from "../../core/tables/uniformityFindings";
import { Typed } from "../parts/typed";
import type { Format } from "../format";

export type TriedLoss = {
  readonly says: string;
  readonly fault?: string;
  /** The loss as a share of the yield, to enter; "" takes an entered one away; `null`: nothing else than is entered, or no percentage. */
  readonly toKeep: Decimal | "" | null;
};

/** What the outlook would be with that loss instead of the one entered. */
export function tryLoss(
  typed: string,
  { field, outlook }: FieldStand,
  yieldUnit: string,
  decimalComma: boolean,
  format: Format,
): TriedLoss {
  const entered = field.uniformityLoss;
  if (typed.trim() === "") return { says: "", toKeep: entered === null ? null : "" };
  const loss = new Typed({ loss: typed }, decimalComma).number("loss", { isPercent: true });
  if (loss === null || loss.gt(hundred)) return { says: "", fault: "Enter a percentage from 0 to 100.", toKeep: null };
  const toKeep = entered?.eq(loss) === true ? null : loss.div(hundred);
  if (outlook?.ok !== true) return { says: "There is no yield by date and stand to take it from.", toKeep };
  const { byDateAndStand } = outlook.value;
  const left = byDateAndStand.times(one.minus(loss.div(hundred)));
  return {
    says: `${format.yield(byDateAndStand)} less ${format.quantity(loss)}% is ${format.yield(left)} ${yieldUnit} per ${format.areaName}.`,
    toKeep,
  };
}

/** A finding with its figure and source. */
export function findingWords({ finding, low, high, unit, source }: UniformityFinding): string {
  const figure = low.eq(high) ? low.toFixed() : `${low.toFixed()} to ${high.toFixed()}`;
  return `${finding}: ${figure}${unit.startsWith("%") ? "" : " "}${unit} (${source.publisher}, ${source.year}).`;
}
