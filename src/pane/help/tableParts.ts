/** Help on the tables, made from the declarations of their columns. */
import { settingNames } from "../../workbook/columns/season";
import { settingHints } from "../../workbook/columns/settingHints";
import { hintWords, type InputTable } from "../../workbook/inputTable";
import type { matchesTable, TableName } from "../../workbook/tableNames";
import { inputTables } from "../../workbook/templates";
import { terms, words, type HelpPart } from "./part";

/** What one row is. */
const rowOf: Readonly<Record<TableName | typeof matchesTable, string>> = {
  Season: "one setting",
  Crops: "one crop",
  Fields: "one field",
  Budget: "one rough line of the plan",
  Items: "one thing that is bought",
  Purchases: "one line of an invoice",
  Applications: "one use of an item",
  Operations: "one pass",
  Machines: "one machine, or an implement with its tractor",
  "Other costs": "one cost that is no field work",
  Loans: "one loan",
  Insurance: "one policy",
  "Stand counts": "one spot that was counted",
  Weather: "one day at one place",
  Hybrids: "one hybrid on offer",
  "Hybrid trials": "one hybrid at one trial",
  Weeds: "one weed in one place",
  "Planter checks": "one part that was measured",
  Sales: "one sale or contract",
  Harvest: "one load, or a field's total",
  Changes: "one line of a change to compare",
  "Past seasons": "one field in one past year",
  Matches: "one heading of a range of your own",
};

/** The words of a list, unless it is a list of names that the page has anyway. */
const longestList = 12;
const oneOf = ({ heading, choices = [] }: InputTable["columns"][number]): string =>
  choices.length === 0 || choices.length > longestList || heading === "Kind" ? "" : ` One of: ${choices.join(", ")}.`;

const tablePart = (table: InputTable): HelpPart => ({
  id: `table-${table.name.toLowerCase().replaceAll("_", "-")}`,
  title: table.sheet,
  blocks: [
    words(`One entry is ${rowOf[table.sheet as TableName]}.`),
    terms(...table.columns.map((column) => [column.heading, `${hintWords(column)}${oneOf(column)}`] as const)),
    ...(table.sheet === "Season"
      ? [words("The settings:"), terms(...settingNames.map((name) => [name, settingHints[name]] as const))]
      : []),
  ],
});

export const tablesPart: HelpPart = {
  id: "tables",
  title: "The tables and their columns",
  blocks: [
    words(
      "Entries live in Excel tables on sheets that you can see, sort, print and share. Tables are found by name and columns by " +
        "heading, in any order; capitals, spaces and underscores do not matter. Columns of your own are left alone. Make one when you " +
        "have something to enter in it.",
    ),
    words("New tables hold no examples: nothing that you did not type is ever counted."),
  ],
  parts: inputTables.map(tablePart),
};
