/** What a season hands on to the next one, as rows of its tables: stock, and work done for it after the harvest. */
import type { Kind } from "../../core/kinds";
import type { Decimal } from "../../core/numbers/decimal";
import type { Cell } from "../cell";
import { otherCostColumns } from "../columns/otherCosts";
import { purchaseColumns } from "../columns/purchases";
import { serialOfDay } from "../daySerial";
import type { SeasonReport } from "../seasonReport";

const { columns } = purchaseColumns;
type Named = { readonly heading: string };
export type Cells = ReadonlyMap<string, Cell>;
const cellsOf = (...cells: readonly (readonly [Named, Cell])[]): Cells => new Map(cells.map(([{ heading }, cell]) => [heading, cell]));

/** At Excel's fifteen digits. */
const number = (value: Decimal): number => Number(value.toSignificantDigits(15).toFixed());
/** Money to the cent. */
const cents = (value: Decimal): number => Number(value.toDecimalPlaces(2).toFixed());

/** On the first day of the new season, so that an older bill of the same is found beside it. */
const begun = (year: string) => serialOfDay(`${year}-01-01`, "1900");

/** Items of which more is bought than was and will be used, at their average price. */
export const leftOver = ({ season, figures }: SeasonReport, next: string): readonly Cells[] =>
  figures.items
    .filter(({ left, averagePrice }) => left.gt("0") && averagePrice !== null)
    .map(({ item, unit, left, averagePrice }) =>
      cellsOf(
        [columns.date, begun(next)],
        [columns.item, item],
        [columns.quantity, number(left)],
        [columns.unit, unit],
        [columns.amount, cents(left.times(averagePrice!))],
        [columns.opening, "yes"],
        [columns.note, `Left over from season ${season.settings.seasonYear ?? ""}`],
      ),
    );

/** Kinds that machine rows compute, beside which no other cost of the kind may stand. */
const computed: readonly string[] = ["fuel", "repairs"] satisfies readonly Kind[];
const { columns: other } = otherCostColumns;

/**
 * Work after the last load, which this season paid and the next one is charged with: costs of their fields that are paid no more. No
 * bills, because a bill would be set against other work that is planned.
 */
export const workForNext = ({ figures }: SeasonReport, next: string): readonly Cells[] =>
  figures.crops
    .flatMap(({ fields }) => fields.flatMap(({ field, nextCrop }) => nextCrop.map((charge) => ({ field, charge }))))
    .filter(({ charge }) => !charge.amount.isZero())
    .map(({ field, charge: { kind, name, amount } }) =>
      cellsOf(
        [other.item, `${name}${computed.includes(kind) ? `, ${kind}` : ""}, before ${next}`],
        [other.kind, computed.includes(kind) ? "custom work" : kind],
        [other.amount, cents(amount)],
        [other.basis, "whole farm"],
        [other.sharedOver, field],
        [other.cash, "no"],
      ),
    );
