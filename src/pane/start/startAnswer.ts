/** What the entries of Start come to, by the reading and arithmetic that the workbook will get. */
import type { SeasonReport } from "../../workbook/seasonReport";
import { seasonReport } from "../../workbook/report";
import { inputTables } from "../../workbook/templates";
import { cellOf } from "../commands/newRows";
import { noFigure, type Format } from "../format";
import type { StartEntries, StartView } from "./startDraft";

export function startReport(entries: StartEntries): SeasonReport {
  const tables = entries.map(({ table, rows }) => {
    const { name, sheet, columns } = inputTables.find((each) => each.name === table)!;
    return {
      name,
      headers: columns.map(({ heading }) => heading),
      body: { sheet, row: 1, column: 0 },
      rows: rows.map((row) =>
        columns.map(({ heading }) => {
          const value = row.get(heading);
          return value === undefined ? "" : cellOf(value, "1900");
        }),
      ),
    };
  });
  return seasonReport({ dateSystem: "1900", ranges: new Map(), tables });
}

export type StartAnswer = { readonly crop: string; readonly cost: string; readonly price: string; readonly yield: string };

/** Cash cost of an acre and both break-evens of each crop that has its acres, goal and price; no figure where it bears no cost yet. */
export const startAnswers = ({ figures }: SeasonReport, format: Format): readonly StartAnswer[] =>
  figures.crops.map(({ crop, yieldUnit, plan }) => {
    const cost = plan.costPerArea.layers.cash;
    if (cost.isZero()) return { crop, cost: noFigure, price: noFigure, yield: noFigure };
    return {
      crop,
      cost: format.money(cost),
      price: `${format.priceNeeded(plan.breakEvenPrice.cash)} a ${yieldUnit}`,
      yield: `${format.yieldNeeded(plan.breakEvenYield.cash)} ${yieldUnit}`,
    };
  });

/** What the figures do not have yet: "before rent and loans; 2 kinds of cost blank". */
export function startLacks({ hasLand, hasLoans, blankKinds }: Pick<StartView, "hasLand" | "hasLoans" | "blankKinds">): string {
  const before = [...(hasLand ? [] : ["rent"]), ...(hasLoans ? [] : ["loans"])].join(" and ");
  const blank = blankKinds === 0 ? "" : `${blankKinds} ${blankKinds === 1 ? "kind" : "kinds"} of cost blank`;
  return [before === "" ? "" : `before ${before}`, blank].filter((part) => part !== "").join("; ");
}
