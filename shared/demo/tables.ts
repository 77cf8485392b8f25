/** The demo season as its tables: read from the comma-separated files beside this one, which are its source. */
import { readFileSync } from "node:fs";
import type { Cell } from "../../src/workbook/cell";
import type { InputTable } from "../../src/workbook/inputTable";
import { inputTables } from "../../src/workbook/templates";

export type DemoTable = { readonly template: InputTable; readonly rows: readonly (readonly Cell[])[] };

/** A table of the farm's own that a setting names. */
const dockSteps: InputTable = {
  name: "Dock_steps",
  sheet: "Dock steps",
  columns: ["Crop", "Test weight", "Dock"].map((heading) => ({
    heading,
    hint: "",
    required: true,
    width: 16,
    ...(heading === "Dock" ? { numberFormat: "#,##0.00" } : {}),
  })),
};

/** Every table that the demo has, its rows in the order of the template's columns. */
export const demoTables = (): readonly DemoTable[] =>
  [...inputTables.filter(({ name }) => name !== "Matches"), dockSteps].map((template) => {
    const [headings = [], ...lines] = parse(readFileSync(new URL(`${template.sheet}.csv`, import.meta.url), "utf8"));
    const unknown = headings.filter((heading) => !template.columns.some((column) => column.heading === heading));
    if (unknown.length > 0) throw new Error(`${template.sheet}.csv has headings that the table has not: ${unknown.join(", ")}`);
    const rows = lines.map((line) =>
      template.columns.map(({ heading, numberFormat }) => cellOf(line[headings.indexOf(heading)] ?? "", numberFormat)),
    );
    return { template, rows };
  });

/** Lines of fields; a field in double quotes may hold commas. */
const parse = (text: string): readonly (readonly string[])[] =>
  text
    .trimEnd()
    .split("\n")
    .map((line) => [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^",]*))/g)].map(([, quoted, plain]) => quoted ?? plain ?? ""));

const firstDay = Date.UTC(1899, 11, 30);
const millisecondsInDay = 86_400_000;

/** What Excel makes of a text that is typed: a number, a date's serial, a percentage's fraction; else the text. */
function cellOf(text: string, numberFormat = "General"): Cell {
  if (/^-?\d+(\.\d+)?$/.test(text)) return Number(text);
  if (numberFormat.endsWith("%") && /^\d+(\.\d+)?%$/.test(text)) return Number(`${text.slice(0, -1)}e-2`);
  if (numberFormat.startsWith("yyyy") && /^\d{4}-\d{2}-\d{2}$/.test(text)) return (Date.parse(text) - firstDay) / millisecondsInDay;
  return text;
}

/** The tables with the slips of `problems.csv` in them: each replaces one cell, by table, row from 1 and heading. */
export function withSlips(tables: readonly DemoTable[]): readonly DemoTable[] {
  const [, ...slips] = parse(readFileSync(new URL("problems.csv", import.meta.url), "utf8"));
  return slips.reduce<readonly DemoTable[]>(
    (before, [name, row, heading, text = ""]) =>
      before.map((table) => {
        if (table.template.sheet !== name) return table;
        const at = table.template.columns.findIndex((column) => column.heading === heading);
        const column = table.template.columns[at];
        if (column === undefined || table.rows[Number(row) - 1] === undefined)
          throw new Error(`problems.csv names a cell that is not there: ${name}, ${row}, ${heading}`);
        const rows = table.rows.map((cells, index) =>
          index === Number(row) - 1 ? cells.with(at, cellOf(text, column.numberFormat)) : cells,
        );
        return { ...table, rows };
      }),
    tables,
  );
}
