/** What was measured, as the tables that the bench prints and docs/performance.md holds. */
import type { CommandMeasured } from "./commandLine";
import type { DeskMeasured } from "./desk";
import type { FiguresMeasured } from "./figures";
import type { FormulasMeasured } from "./formulas";

type Cell = string | number;

const ms = (time: number): string => (time < 10 ? time.toFixed(1) : Math.round(time).toLocaleString("en-US"));
const times = (time: number, plain: number): string => (plain === 0 ? "" : (time / plain).toFixed(1));
const whole = (count: number): string => count.toLocaleString("en-US");
const megabytes = (bytes: number): string => (bytes / 1024 / 1024).toFixed(1);

function table(head: readonly Cell[], rows: readonly (readonly Cell[])[]): readonly string[] {
  const line = (cells: readonly Cell[]) => `| ${cells.join(" | ")} |`;
  return [line(head), line(head.map((_, index) => (index === 0 ? "---" : "--:"))), ...rows.map(line)];
}

/** One size as soon as it is measured, for whoever waits for the rest. */
export const figuresLine = ({ entries, plain, figures, everyField, wrongYear, open, reread, save }: FiguresMeasured): string =>
  `${whole(entries)} entries: plain loop ${ms(plain.processor)}, figures ${ms(figures.processor)}, ` +
  `every field ${ms(everyField.processor)}, wrong year ${ms(wrongYear.processor)}, open ${ms(open.processor)}, ` +
  `edit ${ms(reread.processor)}, save ${ms(save.processor)}`;

export const figuresPart = (sizes: readonly FiguresMeasured[]): readonly string[] => [
  "## From cells to figures",
  "",
  "Milliseconds of the processor, the least of several runs (all threads of the process, garbage collection too). *Figures* is from",
  "cells to what the page Season shows; *every field* the report for programs, every figure of every field asked for; *wrong year* a",
  "season whose Season year is wrong, so that every date is told.",
  "",
  ...table(
    [
      "entries",
      "cells",
      "plain loop",
      "figures",
      "× plain loop",
      "by the clock",
      "first call",
      "every field",
      "wrong year",
      "problems then",
      "memory kept, MB",
    ],
    sizes.map(({ entries, cells, plain, first, figures, everyField, wrongYear, problems, kept }) => [
      whole(entries),
      whole(cells),
      ms(plain.processor),
      ms(figures.processor),
      times(figures.processor, plain.processor),
      ms(figures.median),
      ms(first.processor),
      ms(everyField.processor),
      ms(wrongYear.processor),
      whole(problems),
      megabytes(kept),
    ]),
  ),
  "",
  "The same season as a workbook file. *Open* is from bytes to cells; *edit* one cell changed, all read again and worked out; *save* one",
  "entry added and the file packed.",
  "",
  ...table(
    ["entries", "file, MB", "open", "edit", "× plain loop", "save", "peak memory, MB"],
    sizes.map(({ entries, fileBytes, open, reread, plain, save, peakBytes }) => [
      whole(entries),
      megabytes(fileBytes),
      ms(open.processor),
      ms(reread.processor),
      times(reread.processor, plain.processor),
      ms(save.processor),
      megabytes(peakBytes),
    ]),
  ),
];

/** What a spreadsheet's own engine takes for less of the same season. */
export const formulasPart = ({ entries, formulas, recalculation, figures, plain }: FormulasMeasured): readonly string[] => [
  "## Beside the same season as formulas",
  "",
  "The heart of the season as a spreadsheet would have it, worked out by LibreOffice: bills, average prices, what each application and",
  "pass costs, and what that comes to in every field and crop. Its average prices are compared with ours, to twelve digits. Budget lines,",
  "interest, stands, loans, drying, sharing to the cent, three stages and all checks are left out there, and it counts in binary floating",
  "point. Milliseconds of the processor; of LibreOffice what opening the file takes longer where every formula is worked out.",
  "",
  ...table(
    ["entries", "formulas", "LibreOffice", "figures", "× LibreOffice", "plain loop", "× plain loop"],
    [
      [
        whole(entries),
        whole(formulas),
        ms(recalculation),
        ms(figures.processor),
        times(figures.processor, recalculation),
        ms(plain.processor),
        times(figures.processor, plain.processor),
      ],
    ],
  ),
];

export const deskPart = ({ edits, firstFigure, firstFigureSlowed, open, scrolling, pane }: DeskMeasured): readonly string[] => [
  "## On the desk, in Chromium",
  "",
  "An edit: another unit price typed into a purchase, from Enter until the farm's figure has changed and is painted. *Processor* is the",
  "least that the page's main thread took for one; *longest task* is by the clock.",
  "",
  ...table(
    ["season", "edits", "p50", "p95", "longest task", "processor", "plain loop there"],
    edits.map(({ what, edits: count, p50, p95, longest, processor, plain }) => [
      what,
      count,
      ms(p50),
      ms(p95),
      ms(longest),
      ms(processor),
      plain === 0 ? "" : ms(plain),
    ]),
  ),
  "",
  ...table(
    ["what", "by the clock", "processor", "longest task"],
    [
      ["first figure of the demo, from asking for the page", ms(firstFigure), "", ""],
      ["the same, processor slowed four times", ms(firstFigureSlowed), "", ""],
      [
        `a file of ${whole(open.rows)} purchases opened, until its figure stands there`,
        ms(open.clock),
        ms(open.processor),
        ms(open.longest),
      ],
      [`fast scrolling through ${whole(scrolling.rows)} purchases`, "", "", ms(scrolling.longest)],
      ["first figure of the demo in the pane, beside a workbook under Office.js", ms(pane.start), "", ""],
      ["the same, processor slowed four times", ms(pane.startSlowed), "", ""],
    ],
  ),
  "",
  `What the pane asks its server for until then: ${pane.requests} files, ${whole(Math.round(pane.packedBytes / 1024))} KB as a server`,
  "packs them, Office.js aside, which comes from Microsoft.",
];

export const commandPart = (commands: readonly CommandMeasured[]): readonly string[] => [
  "## The command line",
  "",
  ...table(
    ["what", "by the clock", "processor"],
    commands.map(({ what, clock, processor }) => [what, ms(clock), ms(processor)]),
  ),
];

export const page = (machine: string, told: readonly string[]): string =>
  [
    "# How long it takes",
    "",
    `Written by \`npm run bench -- --write\` (${machine}). Milliseconds, unless it says otherwise. Times say little without their`,
    "machine and its load, so each stands beside a plain loop over the same cells in the same run: every number of a row multiplied and",
    "added up by its first text, in binary floating point, which is what the least careful program would take.",
    "",
    ...told,
  ].join("\n");
