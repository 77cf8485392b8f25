/** Strange entries in the forms of the pane: a fault beside the box or an answer, and rows that the workbook can take. */
import { it } from "vitest";
import { emptyChange, changeDraftView } from "../../src/pane/change/changeDraft";
import { answerView } from "../../src/pane/change/answerView";
import { groundOf, targetChoices } from "../../src/pane/change/ground";
import { layoutForms } from "../../src/pane/change/layoutForms";
import { type EntryRow } from "../../src/pane/commands/entryRow";
import { rowsForTable } from "../../src/pane/commands/newRows";
import { formatOf } from "../../src/pane/format";
import { emptyDraft, purchaseView } from "../../src/pane/purchase/purchaseDraft";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { countedContent } from "../support/paneWorkbook";
import type { Habits } from "../exact/typing";
import { fuzz, longest, noValues } from "./cases";
import { strangeText } from "./strangeTexts";

const report = seasonReport(countedContent);
const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const items = report.season.items;

/** A sixth of the boxes filled with something strange. */
const filled = <Draft extends { readonly [box: string]: string }>(draft: Draft, habits: Habits): Draft =>
  Object.fromEntries(Object.entries(draft).map(([box, text]) => [box, habits.below(6) === 0 ? strangeText(habits) : text])) as Draft;

function changeFaults(habits: Habits): readonly string[] {
  const form = habits.pick(layoutForms[0]!, ...layoutForms.slice(1));
  const [first, ...targets] = targetChoices(report).map(({ value }) => value);
  const ground = groundOf(report, habits.pick(first!, ...targets))!;
  const draft = filled({ ...emptyChange(form, ground, habits.decimalComma), name: "Fuzz", ...tankRows(habits) }, habits);
  const view = changeDraftView(draft, form, ground, { decimalComma: habits.decimalComma, countedIn: habits.below(2) === 0 });
  const said = noValues(view.faults, `${form.name}: faults`);
  if (view.made === null) return said;
  const { layout, answer } = view.made;
  const words = answerView(layout.change, answer, ground.prices, layout.lead, format);
  return [
    ...said,
    ...noValues(words, `${form.name}: answer`),
    ...noValues(view.rows, `${form.name}: rows`),
    ...taken("Changes", view.rows ?? []),
  ];
}
const tankRows = (habits: Habits) => (habits.below(2) === 0 ? {} : { item1: "Partner", rate1: "3", unit1: "fl oz", price1: "2.5" });

function purchaseFaults(habits: Habits): readonly string[] {
  const sound = { ...emptyDraft("2031-05-01"), item: items[0]?.name ?? "", quantity: "10", price: "5" };
  const view = purchaseView(filled(sound, habits), { items, decimalComma: habits.decimalComma }, format);
  const row = view.row === null ? [] : [view.row];
  return [
    ...noValues(view.faults, "bill: faults"),
    ...noValues(view.says, "bill"),
    ...noValues(row, "bill: row"),
    ...taken("Purchases", row),
  ];
}

/** What is wrong with the report of the workbook once the rows stand in it. */
function taken(table: string, rows: readonly EntryRow[]): readonly string[] {
  if (rows.length === 0) return [];
  const placed = rowsForTable(countedContent, table, rows);
  if (!placed.ok) return [`${table} does not take its rows`];
  const tables = countedContent.tables.map((each) => {
    if (each.name !== placed.value.table.name) return each;
    const added = placed.value.rows.map((row) => each.headers.map((heading) => row.get(heading) ?? ""));
    return { ...each, rows: [...each.rows, ...added] };
  });
  return noValues(reportJson(seasonReport({ ...countedContent, tables })), `report with ${table}`);
}

it("entries in forms", { timeout: longest }, () =>
  fuzz("forms", 600, (habits) => Promise.resolve(habits.below(2) === 0 ? changeFaults(habits) : purchaseFaults(habits))),
);
