/**
 * Times a season from its cells to its figures, and a workbook file from bytes to cells and back.
 *
 * A machine's speed says little, so each time is also given as a multiple of a plain loop over the same cells in
 * binary floating point, run in the same process: what the least careful program would take. Every size runs in a
 * process of its own, so that its peak memory is its own.
 *
 * The product is built first, by the tool that builds the pane: run from its sources, every small function would also
 * be given its name each time it is made, which no user's program does.
 */
import { spawnSync } from "node:child_process";
import { fileURLToPath, pathToFileURL } from "node:url";
import { buildSync } from "esbuild";
import type { WorkbookContent } from "../../src/workbook/cell";
import { seasonOf } from "./manySeasons";
import type * as Product from "./product";

const built = fileURLToPath(new URL("../../.tmp/bench/product.mjs", import.meta.url));
const asked = process.argv[2];
if (asked === undefined) {
  buildSync({
    entryPoints: [fileURLToPath(new URL("product.ts", import.meta.url))],
    outfile: built,
    logLevel: "warning",
    bundle: true,
    platform: "node",
    format: "esm",
    target: "es2022",
    minify: true,
  });
}
const { inputTables, newWorkbook, openWorkbook, reportJson, seasonReport } = (await import(pathToFileURL(built).href)) as typeof Product;

const sizes = [1_000, 10_000, 100_000];
const heading = [
  "entry rows",
  "cells",
  "figures ms",
  "(least-most)",
  "with every field ms",
  "rows/s",
  "plain loop ms",
  "times",
  "open ms",
  "reread ms",
  "save ms",
  "file KB",
  "peak MB",
];
const line = (cells: readonly (string | number)[]) =>
  console.log(cells.map((cell, index) => String(cell).padStart(Math.max(8, heading[index]!.length) + 2)).join(""));

/** Multiplies and adds up the numbers of every row, by its first text. */
function plainLoop({ tables }: WorkbookContent): number {
  const totals = new Map<string, number>();
  for (const { rows } of tables) {
    for (const row of rows) {
      let name = "";
      let product = 1;
      for (const cell of row) {
        if (typeof cell === "number") product *= cell;
        else if (name === "" && typeof cell === "string") name = cell;
      }
      totals.set(name, (totals.get(name) ?? 0) + product);
    }
  }
  return totals.size;
}

function timed(runs: number, work: () => unknown): { readonly least: number; readonly median: number; readonly most: number } {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return { least: times[0]!, median: times[Math.floor(runs / 2)]!, most: times.at(-1)! };
}

async function measure(entries: number): Promise<void> {
  const content = seasonOf(entries);
  const cells = content.tables.reduce((sum, { headers, rows }) => sum + headers.length * rows.length, 0);
  const runs = entries >= 100_000 ? 3 : 7;
  timed(2, () => plainLoop(content));
  const plain = timed(9, () => plainLoop(content));
  const { problems } = seasonReport(content);
  const unread = problems.filter(({ code }) => code !== "area-too-large" && code !== "stand-outside-table" && code !== "line-twice");
  if (unread.length > 0) throw new Error(`The season of the benchmark has problems: ${JSON.stringify(unread.slice(0, 3))}`);
  const figures = timed(runs, () => seasonReport(content));
  // The season's figures of a field are worked out when a page opens it; the report for programs asks for all of them.
  const all = timed(runs, () => JSON.stringify(reportJson(seasonReport(content))));
  const bytes = await fileOf(content);
  const open = await timedAsync(3, async () => {
    await opened(bytes).read();
  });
  const workbook = opened(bytes);
  await workbook.read();
  const one = new Map(
    content.tables
      .find(({ name }) => name === "Sales")!
      .headers.map((header, index) => [header, content.tables.find(({ name }) => name === "Sales")!.rows[0]![index]!]),
  );
  const reread = await timedAsync(5, async () => {
    await workbook.changeCells([{ table: "Sales", row: 1, column: "Price", value: 4 }]);
    await workbook.read();
  });
  const save = await timedAsync(3, async () => {
    await workbook.addRows("Sales", [one]);
    workbook.save();
  });
  const whole = (ms: number) => (ms < 10 ? ms.toFixed(2) : ms.toFixed(0));
  line([
    entries,
    cells,
    whole(figures.median),
    `(${whole(figures.least)}-${whole(figures.most)})`,
    whole(all.median),
    Math.round(entries / (figures.median / 1000)),
    plain.median.toFixed(2),
    (figures.median / plain.median).toFixed(0),
    whole(open),
    whole(reread),
    whole(save),
    Math.round(bytes.length / 1024),
    Math.round(process.resourceUsage().maxRSS / 1024),
  ]);
}

/** The median time of asynchronous work. */
async function timedAsync(runs: number, work: () => Promise<void>): Promise<number> {
  const times: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now();
    await work();
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)]!;
}

function opened(bytes: Uint8Array) {
  const result = openWorkbook(bytes);
  if (!result.ok) throw new Error(result.problems.map((fault) => fault.message).join("\n"));
  return result.value;
}

async function fileOf({ tables }: WorkbookContent): Promise<Uint8Array> {
  const workbook = newWorkbook();
  await workbook.makeTables(inputTables.filter(({ name }) => tables.some((table) => table.name === name)));
  for (const { name, headers, rows } of tables)
    await workbook.addRows(
      name,
      rows.map((row) => new Map(headers.map((header, index) => [header, row[index]!]))),
    );
  return workbook.save();
}

if (asked !== undefined) await measure(Number(asked));
else {
  console.log(
    `Node ${process.version}. "figures" is cells to what the page Season shows; "with every field" to the report for programs; ` +
      '"times" is figures ÷ plain loop; "open" is bytes to cells; "reread" is one cell changed and all cells read again; ' +
      '"save" is one row added and the file packed.',
  );
  line(heading);
  for (const size of sizes) {
    const { status } = spawnSync(process.execPath, [...process.execArgv, fileURLToPath(import.meta.url), String(size)], {
      stdio: "inherit",
    });
    if (status !== 0) process.exit(1);
  }
}
