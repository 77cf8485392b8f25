import { blankGainCaution } from "../../cautions";
import { Decimal, hundred } from "../../numbers/decimal";
import { findingsOn } from "../../tables/trialFindings";
import { wearUsed, type PartSizes } from "../../planter/partWear";
import {
  money,
  yieldPerArea,
  type Hours,
  type Money,
  type MoneyPerHour,
  type MoneyPerYear,
  type Share,
  type Years,
  type Yield,
} from "../../numbers/units";
import { outlay, perYear } from "../change";
import { layout, lines, given, yieldGain, type Layout, type Circumstances } from "./layout";

/** Diameters of a disk opener, all in one unit of length. */
export type OpenerWear = PartSizes;

/** Common practice for an opener of 15 inches, in inches: replaced at 14.5. Common practice only; the manual rules. */
export const commonOpener = { whenNew: new Decimal("15"), replaceAt: new Decimal("14.5") } as const;

/**
 * How much of the allowed wear is used up: (new − measured) ÷ (new − replace at); 1 and above: due.
 *
 * @throws RangeError unless an opener may wear at all
 */
export function openerWear(sizes: OpenerWear): { readonly used: Decimal; readonly due: boolean } {
  if (sizes.whenNew.lte(sizes.replaceAt)) throw new RangeError("an opener is replaced below its diameter when new");
  const used = wearUsed(sizes);
  return { used, due: used.gte("1") };
}

/** Yield that bad rows take from the whole width: yield × bad rows ÷ rows × what a bad row loses. */
export const lossToBadRows = (yieldOfGoodRow: Yield, badRows: Decimal, rows: Decimal, lossOnRow: Share): Yield =>
  yieldPerArea(yieldOfGoodRow.times(badRows).div(rows).times(lossOnRow));

export type RebuildRowUnits = Circumstances & {
  readonly rows: Decimal;
  readonly rowsRebuilt: Decimal;
  readonly partsPerRow: Money;
  readonly shopHoursPerRow: Hours;
  readonly wage: MoneyPerHour;
  readonly yearsKept: Years;
  /** Repairs and stops in season that sound rows spare, a year; `null`: none. */
  readonly repairsSpared: MoneyPerYear | null;
  /** What was measured on the openers, to be read beside the parts; it moves no figure. `null`: nothing. */
  readonly wear: OpenerWear | null;
  /** The rows that plant badly, and the share of its yield that such a row loses; `null`: not known. */
  readonly badRows: { readonly rows: Decimal; readonly yield: Yield; readonly loss: Share } | null;
};

/** Worn row units: rebuild them, or run on. The loss that running on brings is blank until bad rows are told of. */
export function rebuildRowUnits(of: RebuildRowUnits): Layout {
  const { badRows, wear } = of;
  const kept = yieldGain(of, badRows === null ? null : lossToBadRows(badRows.yield, badRows.rows, of.rows, badRows.loss), "Yield kept");
  return layout(
    "Rebuild worn row units",
    of,
    lines(
      kept,
      given(of.repairsSpared, (spared) =>
        perYear("reduced costs", { item: "Repairs saved in season", unit: "year", quantity: new Decimal("1"), price: money(spared) }),
      ),
      outlay(
        "added costs",
        {
          item: wear === null ? "Parts" : `Parts (openers ${openerWear(wear).used.times(hundred).toDecimalPlaces(0).toFixed()}% worn)`,
          unit: "rows",
          quantity: of.rowsRebuilt,
          price: of.partsPerRow,
        },
        of.yearsKept,
      ),
      given(of.rowsRebuilt.times(of.shopHoursPerRow), (hours) =>
        outlay("added costs", { item: "Shop labour", unit: "h", quantity: hours, price: money(of.wage) }, of.yearsKept),
      ),
    ),
    { lead: { of: "quantity", line: kept }, findings: findingsOn("row unit wear"), cautions: [blankGainCaution] },
  );
}
