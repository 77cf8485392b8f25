/** A workbook host over plain tables in memory, for tests of the pane. What was asked of it can be looked at. */
import { HostError, type WorkbookHost } from "../../src/host/workbookHost";
import type { Cell, RawTable, SheetPlace, WorkbookContent } from "../../src/workbook/cell";
import { rowsMade } from "../../src/workbook/inputTable";
import type { ResultSheet } from "../../src/workbook/resultSheet";

export type MemoryHost = WorkbookHost & {
  readonly selected: SheetPlace[];
  readonly added: { readonly table: string; readonly rows: readonly ReadonlyMap<string, Cell>[] }[];
  /** The result sheets of each writing, in order. */
  readonly written: (readonly ResultSheet[])[];
  /** Errors that the next calls reject with, by method; used up one by one. */
  readonly refusals: {
    read: Error[];
    write: Error[];
    enterRows: Error[];
    addRows: Error[];
    growTable: Error[];
    changeCells: Error[];
    addColumn: Error[];
    select: Error[];
    makeTables: Error[];
  };
  readonly reads: () => number;
  /** The rows of a table as they are now. */
  readonly table: (name: string) => RawTable["rows"];
  read: WorkbookHost["read"];
};

export function memoryHost(
  start: WorkbookContent,
  selection: Awaited<ReturnType<WorkbookHost["selection"]>> = { address: "Sheet1!A1", headings: [] },
  sheetsAlike: readonly string[] = [],
): MemoryHost {
  let tables: readonly RawTable[] = start.tables;
  let reads = 0;
  const listeners = new Set<() => void>();
  const taken = new Set(start.tables.map(({ body }) => body.sheet));
  const host: MemoryHost = {
    selected: [],
    added: [],
    written: [],
    refusals: {
      read: [],
      write: [],
      enterRows: [],
      addRows: [],
      growTable: [],
      changeCells: [],
      addColumn: [],
      select: [],
      makeTables: [],
    },
    reads: () => reads,
    table: (name) => tables.find((table) => table.name === name)?.rows ?? [],
    read: async () => {
      reads += 1;
      refuse("read");
      return { ...start, tables };
    },
    write: async (sheets) => {
      refuse("write");
      host.written.push(sheets);
      return sheets.map(({ name }) => (taken.has(name) ? `${name} (2)` : name));
    },
    makeTables: async (wanted) => {
      refuse("makeTables");
      const made = wanted.filter(({ name }) => !tables.some((table) => table.name === name));
      tables = [
        ...tables,
        ...made.map((model) => ({
          name: model.name,
          headers: model.columns.map(({ heading }) => heading),
          rows: rowsMade(model),
          body: { sheet: model.sheet, row: 1, column: 0 },
        })),
      ];
      changed();
      return made.map(({ name }) => name);
    },
    enterRows: async (entries) => {
      refuse("enterRows");
      for (const { table, rows } of entries) {
        const headers = table.columns.map(({ heading }) => heading);
        host.added.push({ table: table.name, rows });
        if (!tables.some(({ name }) => name === table.name))
          tables = [...tables, { name: table.name, headers, rows: [], body: { sheet: table.sheet, row: 1, column: 0 } }];
        tables = tables.map((each) =>
          each.name !== table.name
            ? each
            : { ...each, rows: [...each.rows, ...rows.map((row) => each.headers.map((heading) => row.get(heading) ?? ""))] },
        );
      }
      changed();
    },
    addRows: async (name, rows) => {
      refuse("addRows");
      host.added.push({ table: name, rows });
      tables = tables.map((table) =>
        table.name !== name
          ? table
          : { ...table, rows: [...table.rows, ...rows.map((row) => table.headers.map((heading) => row.get(heading) ?? ""))] },
      );
      changed();
    },
    growTable: async (name, count) => {
      refuse("growTable");
      tables = tables.map((table) => {
        if (table.name !== name) return table;
        const below = table.below ?? [];
        const rows = Array.from(
          { length: count },
          (_, index) => below.find(({ by }) => by === index + 1)?.cells ?? table.headers.map(() => ""),
        );
        return {
          ...table,
          rows: [...table.rows, ...rows],
          below: below.flatMap(({ by, cells }) => (by > count ? [{ by: by - count, cells }] : [])),
        };
      });
      changed();
    },
    changeCells: async (changes) => {
      refuse("changeCells");
      for (const { table: name, row, column, value } of changes) {
        const table = tables.find((each) => each.name === name);
        const index = table?.headers.indexOf(column) ?? -1;
        if (table === undefined || index < 0 || table.rows[row - 1] === undefined)
          throw new HostError("missing", `There is no ${name}, row ${row}, ${column}.`);
        const rows = table.rows.map((cells, at) => (at === row - 1 ? cells.map((cell, each) => (each === index ? value : cell)) : cells));
        tables = tables.map((each) => (each === table ? { ...table, rows } : each));
      }
      changed();
    },
    addColumn: async ({ table: name, heading, cells }) => {
      refuse("addColumn");
      tables = tables.map((table) =>
        table.name !== name
          ? table
          : {
              ...table,
              headers: [...table.headers, heading],
              rows: table.rows.map((row, at) => [...table.headers.map((_, index) => row[index] ?? ""), cells.get(at + 1) ?? ""]),
            },
      );
      changed();
    },
    select: async (place) => {
      refuse("select");
      host.selected.push(place);
    },
    selection: () => Promise.resolve(selection),
    alike: () => Promise.resolve(sheetsAlike),
    onChanged: (listener) => {
      listeners.add(listener);
      return Promise.resolve(async () => void listeners.delete(listener));
    },
  };
  const changed = () => listeners.forEach((listener) => listener());
  const refuse = (method: keyof MemoryHost["refusals"]) => {
    const error = host.refusals[method].shift();
    if (error !== undefined) throw error;
  };
  return host;
}
