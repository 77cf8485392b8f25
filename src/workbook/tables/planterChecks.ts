/** The table Planter checks: one part that was measured or looked at a row. */
import { one } from "../../core/numbers/decimal";
import type { PlanterCheck } from "../../core/planter/planterCheck";
import { hours, itemQuantity } from "../../core/numbers/units";
import { planterCheckColumns } from "../columns/planterChecks";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { nearest } from "../words";

const { columns } = planterCheckColumns;

export function readPlanterChecks(table: TableReader, machines: Names, items: Names): readonly PlanterCheck[] {
  if (!table.needs(columns.machine.heading, columns.part.heading)) return [];
  return table.rows(
    (row): PlanterCheck | null => {
      const machine = machineOf(row, machines);
      const part = row.need(columns.part);
      const item = row.of(columns.item) === null ? null : row.needName(columns.item.heading, items);
      const worked = row.of(columns.hours);
      const [whenNew, replaceAt, measured] = [row.of(columns.whenNew), row.of(columns.replaceAt), row.of(columns.measured)];
      // Three sizes judge together, and a part must wear by something.
      if (measured !== null && (whenNew === null || replaceAt === null))
        row.fault("sizes-incomplete", (whenNew === null ? columns.whenNew : columns.replaceAt).heading);
      const isWorn = whenNew === null || replaceAt === null || !whenNew.eq(replaceAt);
      if (!isWorn) row.fault("no-wear", columns.replaceAt.heading);
      if (machine === null || part === null) return null;
      return {
        machine,
        row: row.of(columns.row),
        part,
        whenNew,
        replaceAt: isWorn ? replaceAt : null,
        measured,
        unit: row.of(columns.unit),
        finding: row.of(columns.finding),
        item,
        quantity: itemQuantity(row.of(columns.quantity) ?? one),
        hours: worked === null ? null : hours(worked),
        doneOn: row.of(columns.doneOn),
        source: row.source,
      };
    },
    () => [{ of: "planter" }],
  );
}

/** A planter need not be among the machines whose cost is computed; a name that is nearly one of them is a slip. */
function machineOf(row: Row, machines: Names): string | null {
  const typed = row.need(columns.machine);
  if (typed === null || machines.isLost(typed)) return typed;
  const known = machines.spelled(typed);
  if (known !== null) return known;
  const like = nearest(typed, machines.all);
  return like === null ? typed : row.lose("unknown-name", columns.machine.heading, { like });
}
