/** Lines of the Budget from several sheets of the grower's own that may be the same money again: a sheet a year, a plan and its copy. */
import type { BudgetLine } from "../core/season";
import type { Problem } from "./problem";
import type { TableReader } from "./tableReader";

type Placed = { readonly line: BudgetLine; readonly sheet: string };

/** The year that the name of a sheet says, as in `2025`, `Corn 2025`; `null` where it says none. */
export const yearOfSheet = (name: string): string | null => /(?:^|\D)((?:19|20)\d\d)(?!\d)/.exec(name)?.[1] ?? null;

/**
 * What is told of them: sheets of other years than the latest one are entries to fix, because a budget is of one season; one field
 * and kind on two sheets is to check, because it may be split in two on purpose.
 */
export function budgetSheets(table: TableReader | undefined, budget: readonly BudgetLine[]): readonly Problem[] {
  const origins = table?.raw.origins;
  if (origins === undefined) return [];
  const placed = budget.flatMap((line): readonly Placed[] => {
    const sheet = origins[line.source.row - 1]?.sheet;
    return sheet === undefined ? [] : [{ line, sheet }];
  });
  const years = [...new Set(placed.flatMap(({ sheet }) => yearOfSheet(sheet) ?? []))].sort();
  const latest = placed.find(({ sheet }) => yearOfSheet(sheet) === years.at(-1));
  const told = new Map<string, Problem>();
  const first = new Map<string, Placed>();
  for (const each of placed) {
    const {
      line: {
        source: { table: name, row },
        over,
        kind,
      },
      sheet,
    } = each;
    const year = yearOfSheet(sheet);
    const touches = [{ of: "farm" }] as const;
    if (years.length > 1 && year !== null && year !== years.at(-1)) {
      if (!told.has(sheet)) told.set(sheet, { code: "sheet-year", at: { table: name, row }, found: sheet, like: latest!.sheet, touches });
      continue;
    }
    const key = `${JSON.stringify(over)} ${kind}`;
    const before = first.get(key);
    if (before === undefined) first.set(key, each);
    else if (before.sheet !== sheet && !told.has(sheet))
      told.set(sheet, {
        code: "sheet-again",
        at: { table: name, row },
        other: before.line.source,
        found: sheet,
        like: before.sheet,
        touches,
      });
  }
  return [...told.values()];
}
