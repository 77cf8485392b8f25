/** The table Budget: rough lines of the plan. */
import { one } from "../../core/numbers/decimal";
import type { BudgetLine } from "../../core/season";
import { share } from "../../core/numbers/units";
import { budgetColumns } from "../columns/budget";
import type { Subject } from "../problem";
import type { TableReader } from "../tableReader";
import { plain } from "../words";
import { namedSubjects, namedTarget } from "./namedTarget";
import { monthOf } from "./operations";
import type { TargetPlaces } from "./targets";

const { over, kind, amount, basis, month, operatorCostShare, allIn, note } = budgetColumns.columns;

/** What every line of one target and kind says of it, beside the line. */
type Read = { readonly line: BudgetLine; readonly note: string; readonly subjects: readonly Subject[] };

export function readBudget(table: TableReader, places: TargetPlaces, seasonYear: string | null): readonly BudgetLine[] {
  if (!table.needs(over.heading, kind.heading, amount.heading)) return [];
  const all: Read[] = [];
  const lines = table.rows(
    (row): BudgetLine | null => {
      const target = namedTarget(row, over, places);
      const [of, money] = [row.need(kind), row.need(amount)];
      const said = plain(row.of(note) ?? "");
      const counted = row.text(basis) === null ? "per acre" : row.of(basis);
      const [paidOn, part, done] = [monthOf(row, month, seasonYear), row.of(operatorCostShare) ?? one, row.of(allIn) === "yes"];
      if (counted === null) row.lost = true;
      if (target === null || of === null || money === null || counted === null) return null;
      const line: BudgetLine = {
        over: target,
        kind: of,
        amount: money,
        basis: counted,
        paidOn,
        operatorCostShare: share(part),
        allIn: done,
        source: row.source,
      };
      all.push({ line, note: said, subjects: namedSubjects(row, over, places) });
      return line;
    },
    (row) => namedSubjects(row, over, places),
  );
  tellAlike(table, all);
  return lines;
}

const keyOf = ({ line: { over: named, kind: of } }: Read): string => `${JSON.stringify(named)} ${of}`;

/** Lines of one target and kind add: identical ones are told, and ones of which but some are all in. */
function tellAlike(table: TableReader, all: readonly Read[]): void {
  all.forEach((each, index) => {
    const before = all.slice(0, index).filter((other) => keyOf(other) === keyOf(each));
    const {
      line: { source },
      subjects: touches,
    } = each;
    const same = before.find(
      ({ line, note: said }) =>
        said === each.note && line.amount.eq(each.line.amount) && line.basis === each.line.basis && line.paidOn === each.line.paidOn,
    );
    const at = { table: source.table, row: source.row };
    if (same !== undefined) table.problems.push({ code: "budget-twice", at, other: same.line.source, found: each.line.kind, touches });
    const unlike = before.find(({ line }) => line.allIn !== each.line.allIn);
    if (unlike !== undefined)
      table.problems.push({
        code: "all-in-disagrees",
        at: { ...at, column: allIn.heading },
        other: unlike.line.source,
        found: each.line.kind,
        touches,
      });
  });
}
