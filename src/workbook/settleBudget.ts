/** Budget lines of what another table counts already give way to it: they are in no stage and no cash flow. */
import { isOver } from "../core/over";
import type { EntryRef } from "../core/row";
import type { BudgetLine, Field, Season } from "../core/season";
import { budgetColumns } from "./columns/budget";
import type { Named } from "./columns/column";
import { cropColumns } from "./columns/crops";
import { fieldColumns } from "./columns/fields";
import { operationColumns } from "./columns/operations";
import type { Place, Problem } from "./problem";
import type { Settled } from "./settle";
import { loanOfKind } from "./settleLoans";

const { columns: field } = fieldColumns;

/** @param setting the cell of a setting */
export function budgetSettled(season: Season, setting: (name: string) => Place): Settled {
  const problems: Problem[] = [];
  const budget = season.budget.filter((line) => {
    const other = line.amount.isZero() ? null : countedBy(season, line, setting);
    if (other === null) return true;
    const {
      source: { table, row },
      kind,
    } = line;
    problems.push({
      code: "cost-twice",
      at: { table, row, column: budgetColumns.columns.kind.heading },
      other,
      found: kind,
      like: "That counts, and this is left out.",
      touches: [{ of: "farm" }],
    });
    return false;
  });
  return { season: problems.length === 0 ? season : { ...season, budget }, problems };
}

/** The entry that counts the kind of a line already; `null` where none does. */
function countedBy(season: Season, { kind, over }: BudgetLine, setting: (name: string) => Place): Place | null {
  const named = season.fields.filter((field) => isOver(over, field));
  const land = (column: Named, of: "rentPerArea" | "landChargePerArea") =>
    placeOf(
      named.find((field: Field) => field[of]?.isZero() === false),
      column,
    );
  const { settings } = season;
  switch (kind) {
    case "cash rent":
      return land(field.rent, "rentPerArea");
    case "land charge":
      return land(field.landCharge, "landChargePerArea");
    case "term interest":
    case "term principal":
      return placeOf(loanOfKind(season.loans, kind) ?? undefined);
    case "operating interest":
      return settings.operatingInterest === null ? null : setting("Operating interest rate");
    case "drying":
      return settings.dryingChargePerPoint?.isZero() === false ? setting("Drying charge per point") : null;
    case "haul":
      return placeOf(
        season.crops.find(({ name, sellingCostPerUnit }) => !sellingCostPerUnit.isZero() && named.some(({ crop }) => crop === name)),
        cropColumns.columns.sellingCost,
      );
    case "machine ownership":
      return placeOf(
        season.operations.find(({ cost, target }) => cost.basis === "machine" && named.some((field) => isOver(target, field))),
        operationColumns.columns.machine,
      );
    default:
      return null;
  }
}

const placeOf = (entry: { readonly source: EntryRef } | undefined, column?: Named): Place | null =>
  entry === undefined
    ? null
    : { table: entry.source.table, row: entry.source.row, ...(column === undefined ? {} : { column: column.heading }) };
