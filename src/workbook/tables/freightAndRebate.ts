import { zero } from "../../core/numbers/decimal";
import { money, type Money } from "../../core/numbers/units";
import { purchaseColumns } from "../columns/purchases";
import type { Row } from "../tableRow";

const { columns } = purchaseColumns;

/**
 * Freight and rebate of a bill, nothing where they are blank. A rebate takes off: typed below zero on what is bought it would add, and
 * one of more than bill and freight would make a cost that is paid to the buyer.
 *
 * @param amount what the line comes to before them; below zero for a return
 */
export function freightAndRebate(row: Row, amount: Money | null): { readonly freight: Money; readonly rebate: Money } {
  const [freight, rebate] = [row.of(columns.freight) ?? zero, row.of(columns.rebate) ?? zero];
  if (amount?.gt("0") === true && rebate.lt("0")) row.fault("rebate-sign", columns.rebate);
  if (amount?.gt("0") === true && rebate.gt(amount.plus(freight)))
    row.fault("rebate-beyond", columns.rebate, { like: amount.plus(freight).toFixed() });
  return { freight: money(freight), rebate: money(rebate) };
}
