/**
 * One size of season, in a process of its own so that its memory is its own: from cells to figures, and a workbook file from bytes
 * to cells and back. Writes what it measured as JSON.
 */
import type { WorkbookContent } from "../../src/workbook/cell";
import { fileOf } from "./fileOf";
import { seasonOf } from "./manySeasons";
import { timed, type Times } from "./measured";
import { plainLoop } from "./plainLoop";
import { product } from "./built";

export type FiguresMeasured = {
  readonly entries: number;
  readonly cells: number;
  readonly plain: Times;
  readonly first: Times;
  readonly figures: Times;
  readonly everyField: Times;
  /** A season whose Season year is wrong, so that every date is told. */
  readonly wrongYear: Times;
  readonly problems: number;
  readonly open: Times;
  readonly reread: Times;
  readonly save: Times;
  readonly fileBytes: number;
  /** Bytes that a report keeps beside the cells that it was read from. */
  readonly kept: number;
  readonly peakBytes: number;
};

const { openWorkbook, reportJson, seasonReport, toFix } = await product();

async function measure(entries: number): Promise<FiguresMeasured> {
  const content = seasonOf(entries);
  const cells = content.tables.reduce((sum, { headers, rows }) => sum + headers.length * rows.length, 0);
  const before = heldBytes();
  let report = seasonReport(content);
  const kept = heldBytes() - before;
  const unread = toFix(report.problems).filter(({ code }) => code !== "stand-outside-table");
  if (unread.length > 0) throw new Error(`The season of the benchmark has problems: ${JSON.stringify(unread.slice(0, 3))}`);
  const first = await timed(1, () => (report = seasonReport(seasonOf(entries))));
  const figures = await timed(12, () => (report = seasonReport(content)));
  // The season's figures of a field are worked out when a page opens it; the report for programs asks for all of them.
  const everyField = await timed(4, () => JSON.stringify(reportJson(seasonReport(content))));
  await timed(2, () => plainLoop(content));
  const plain = await timed(15, () => plainLoop(content));
  const wrong = withSetting(content, "Season year", 2011);
  const wrongYear = await timed(2, () => (report = seasonReport(wrong)));
  const problems = report.problems.length;
  return { entries, cells, plain, first, figures, everyField, wrongYear, problems, kept, ...(await file(content)) };
}

/** Bytes in use once everything that nobody holds is given back. */
function heldBytes(): number {
  const collect = (globalThis as { gc?: () => void }).gc;
  if (collect === undefined) throw new Error("start Node with --expose-gc");
  collect();
  return process.memoryUsage().heapUsed;
}

const withSetting = (content: WorkbookContent, setting: string, value: number): WorkbookContent => ({
  ...content,
  tables: content.tables.map((table) =>
    table.name === "Season" ? { ...table, rows: table.rows.map((row) => (row[0] === setting ? row.with(1, value) : row)) } : table,
  ),
});

async function file(content: WorkbookContent) {
  const bytes = await fileOf(content);
  const open = await timed(3, () => opened(bytes).read());
  const workbook = opened(bytes);
  await workbook.read();
  const { headers, rows } = content.tables.find(({ name }) => name === "Sales")!;
  const sale = new Map(headers.map((header, index) => [header, rows[0]![index]!]));
  let price = 4;
  const reread = await timed(5, async () => {
    await workbook.changeCells([{ table: "Sales", row: 1, column: "Price", value: (price += 0.01) }]);
    seasonReport(await workbook.read());
  });
  const save = await timed(3, async () => {
    await workbook.addRows("Sales", [sale]);
    workbook.save();
  });
  return { open, reread, save, fileBytes: bytes.length, peakBytes: process.resourceUsage().maxRSS * 1024 };
}

function opened(bytes: Uint8Array) {
  const result = openWorkbook(bytes);
  if (!result.ok) throw new Error(result.problems.map((fault) => fault.message).join("\n"));
  return result.value;
}

process.stdout.write(JSON.stringify(await measure(Number(process.argv[2]))));
