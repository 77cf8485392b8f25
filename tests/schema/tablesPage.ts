/** docs/tables.md: every table and column as they are declared, for people who read without the program. */
import { columnsAlsoRead } from "../../src/workbook/headings";
import { oldHeadings } from "../../src/workbook/oldHeadings";
import { inputTables } from "../../src/workbook/templates";
import { settingNames } from "../../src/workbook/columns/season";
import { settingHints } from "../../src/workbook/columns/settingHints";
import { tableNames } from "../../src/workbook/tableNames";
import { movesNothing, type MovesNothing } from "../support/movesNothing";

const cell = (text: string): string => text.replaceAll("|", "\\|");
const list = (words: readonly string[]): string => words.map(cell).join(", ");

/** The whole page. */
export function tablesPage(): string {
  const sections = inputTables.flatMap(({ sheet, columns }) => [
    `## ${sheet}`,
    "",
    "| Column | | What stands there |",
    "|---|---|---|",
    ...columns.map(
      ({ heading, required, hint, choices = [] }) =>
        `| ${cell(heading)} | ${required ? "needed" : ""} | ` +
        `${cell(hint)}${choices.length > 0 && !isTable(choices) ? ` One of: ${list(choices)}.` : ""} |`,
    ),
    "",
    ...alsoRead(sheet),
    ...stillOnes(sheet),
  ]);
  return [
    "# The tables of a season workbook",
    "",
    "Made from the declarations of the columns by `npm run docs`; do not edit it by hand.",
    "",
    "Tables are found by name and columns by heading, in any order; case, spaces and underscores do not matter, and a unit in brackets",
    "after a heading is read with it. Columns of your own are left alone. What each figure makes of them is in [counting.md](counting.md).",
    "",
    ...sections,
    "## Settings of the table Season",
    "",
    "| Setting | What it says |",
    "|---|---|",
    ...settingNames.map((name) => `| ${cell(name)} | ${cell(settingHints[name])} |`),
    "",
  ].join("\n");
}

/** A list of our own tables or settings says nothing here that the page does not say itself. */
const isTable = (choices: readonly string[]): boolean => choices === tableNames || choices === settingNames;

function alsoRead(sheet: string): readonly string[] {
  const more = columnsAlsoRead(sheet);
  const old = oldHeadings(sheet).map(({ heading, was }) => `${list(was)} (today ${cell(heading)})`);
  return [
    ...(more.length === 0 ? [] : [`Read as well where a table has them: ${list(more)}.`, ""]),
    ...(old.length === 0
      ? []
      : [
          `Headings of older workbooks, read and written to as well: ${old.join("; ")}. Beside the one of today each is an entry to fix.`,
          "",
        ]),
  ];
}

/** The columns that move no figure in some rows, with the reason. */
function stillOnes(sheet: string): readonly string[] {
  const still = movesNothing.filter(({ table }) => table === sheet);
  const rows = ({ where }: MovesNothing) =>
    where === undefined
      ? ""
      : ` (where ${where.column} ${where.says === "filled" ? "is filled" : where.says === "" ? "is blank" : `says ${where.says}`})`;
  return still.length === 0
    ? []
    : ["Moves no figure by itself:", ...still.map((each) => `- ${cell(each.column)}${rows(each)}: ${cell(each.why)}`), ""];
}
