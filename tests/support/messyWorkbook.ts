/** Workbooks as they come when people have worked in them: any number of small damages to one that was sound. */
import type { Cell, RawTable, WorkbookContent } from "../../src/workbook/cell";
import type { Habits } from "../exact/typing";

const strange: readonly [Cell, ...Cell[]] = [
  "",
  " ",
  "abc",
  "#N/A",
  "#DIV/0!",
  "-5",
  -5,
  0,
  "0",
  1,
  0.5,
  0.7,
  1.5,
  150,
  "12%",
  "150%",
  "1,234.50",
  "1.234,50",
  "$5",
  "(12)",
  "1e3",
  "yes",
  "no",
  true,
  "n/a",
  "?",
  "2031-13-40",
  "2030-05-01",
  "2031-06-15",
  "May",
  "May 2031",
  "5/3",
  48000,
  "per acre",
  "per hectare",
  "per hour",
  "lump sum",
  "plan",
  "done",
  "done as planned",
  "Corn",
  "Corm",
  "Soybeans",
  "all",
  "all by revenue",
  "2 jugs",
  "ton",
  "lb N/ac",
  "lbs",
  "kg/ha",
  "seed",
  "fuel",
  "drying",
  "term interest",
  "hired labor",
  "Example: replace",
  "Total",
];

/** Damages some cells, rows, headings and tables. */
export function damaged(content: WorkbookContent, habits: Habits, damages: number): WorkbookContent {
  let tables = content.tables;
  for (let count = 0; count < damages && tables.length > 0; count += 1) {
    const at = habits.below(tables.length);
    const after = damagedTable(tables[at]!, habits);
    tables = tables.flatMap((table, index) => (index === at ? after : [table]));
  }
  return { ...content, tables };
}

function damagedTable(table: RawTable, habits: Habits): readonly RawTable[] {
  if (table.rows.length === 0 || table.headers.length === 0) return [table];
  const [row, column] = [habits.below(table.rows.length), habits.below(table.headers.length)];
  const put = (value: Cell) => [
    {
      ...table,
      rows: table.rows.map((cells, index) => (index === row ? cells.map((cell, place) => (place === column ? value : cell)) : cells)),
    },
  ];
  const called = (heading: string) => [{ ...table, headers: table.headers.map((each, index) => (index === column ? heading : each)) }];
  const heading = table.headers[column]!;
  switch (habits.below(20)) {
    case 0:
      return [{ ...table, rows: table.rows.filter((_, index) => index !== row) }];
    case 1:
      return [{ ...table, rows: [...table.rows, table.rows[row]!] }];
    case 2:
      return [{ ...table, rows: [...table.rows.slice(0, row), table.headers.map(() => ""), ...table.rows.slice(row)] }];
    case 3:
      return called(
        habits.pick(
          `${heading}s`,
          heading.slice(1),
          `${heading} (ha)`,
          `${heading} (cents)`,
          heading.toUpperCase(),
          `${heading} *`,
          "Mine",
        ),
      );
    case 4:
      return called(habits.pick(...(table.headers as [string, ...string[]])));
    case 5:
      return [{ ...table, below: [{ by: habits.pick(1, 2, 5), cells: table.rows[row]! }] }];
    case 6:
      return [{ ...table, stale: [{ row, column }] }];
    case 7:
      return [{ ...table, differing: [{ row, column, notCounted: "7" }] }];
    case 8:
      return habits.below(4) === 0 ? [] : put("");
    case 9:
      return [
        {
          ...table,
          headers: table.headers.filter((_, index) => index !== column),
          rows: table.rows.map((cells) => cells.filter((_, index) => index !== column)),
        },
      ];
    case 10:
    case 11:
      return put(habits.pick(...(table.rows.map((cells) => cells[column]!) as [Cell, ...Cell[]])));
    case 12:
      return put(habits.pick(...(table.rows[row] as [Cell, ...Cell[]])));
    default:
      return put(habits.pick(...strange));
  }
}
