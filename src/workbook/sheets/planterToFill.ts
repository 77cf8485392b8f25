/** A sheet to print and take to the shed: every part of a planter with a blank box for each of its rows. */
import { cautionsOf } from "../../core/cautions";
import { planterParts, type PartToCheck } from "../planterParts";
import type { ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { headings, note, section, text, title } from "./cells";
import { inLines, seasonName } from "./sheetWords";

type Row = readonly SheetCell[];
/** Boxes beside one another on a page. */
const across = 8;
const lineLength = 120;

/** The most rows for which a sheet is made: no planter has more. */
export const mostRows = 72;

/**
 * The sheet for a planter of so many rows.
 *
 * @throws RangeError for no rows, or more than any planter has: the form turns those away
 */
export function planterToFill(report: SeasonReport, machine: string, rows: number): ResultSheet {
  if (!Number.isInteger(rows) || rows < 1 || rows > mostRows) throw new RangeError(`a planter has from 1 to ${mostRows} rows`);
  const starts = Array.from({ length: Math.ceil(rows / across) }, (_, block) => block * across + 1);
  return {
    name: "Planter check to fill",
    columns: [26, 46, ...Array<number>(across).fill(8)],
    headingRows: 3,
    charts: [],
    rows: [
      title(`Planter check: ${machine}`),
      note(
        `${seasonName(report)}. Measure or look, write it in the box, then type it into the table Planter checks. Checked by:       ` +
          "                   Date:",
      ),
      [],
      ...cautionsOf.planter.flatMap((words) => inLines(words, lineLength)).map(note),
      [],
      section("The whole planter"),
      headings("Part", "What to look for", "Good", "Adjust", "Replace", "Note"),
      ...planterParts.filter(({ of }) => of === "whole").map((part) => boxes(part, 4)),
      ...starts.flatMap((first) => rowBlock(first, Math.min(across, rows - first + 1))),
    ],
    page: {
      orientation: "landscape",
      paper: report.season.settings.areaUnit === "ac" ? "letter" : "a4",
      pagesTall: 0,
      footer: `Planter check, ${seasonName(report)}`,
    },
  };
}

const rowBlock = (first: number, count: number): readonly Row[] => [
  [],
  section(count === 1 ? `Row ${first}` : `Rows ${first} to ${first + count - 1}`),
  headings("Part", "What to look for", ...Array.from({ length: count }, (_, index) => `Row ${first + index}`)),
  ...planterParts.filter(({ of }) => of === "each").map((part) => boxes(part, count)),
];

const boxes = ({ part, look }: PartToCheck, count: number): Row => [
  text(part),
  text(look, { wrap: true }),
  ...Array<SheetCell>(count).fill({ value: "", style: { border: "box" } }),
];
