/** The charts on a sheet, ours and the grower's own, with what their cells say now: enough to draw them plainly. */
import type { Cell } from "../../../workbook/cell";
import { parseArea, splitSheet, type Block } from "../../address";
import { bookOf } from "../book";
import { Damaged } from "../package/fault";
import { isOfType, relationshipsOf } from "../package/packageParts";
import { dataOf, sheetNamed, valueIn, type State } from "../state";
import { sameName } from "../../sheetNames";
import { ParseError } from "@xmldom/xmldom";
import { children, documentOf, elements, first, type Element } from "../package/xml";

type ChartSeries = { readonly name: string; readonly values: readonly (number | null)[] };
export type SheetChart = {
  readonly title: string;
  /** How its series are drawn; `other` is a kind that is not drawn here, such as a pie. */
  readonly kind: "column" | "bar" | "line" | "other";
  readonly categories: readonly string[];
  readonly series: readonly ChartSeries[];
};

/** In the order of the sheet's rows. */
export function sheetCharts(state: State, sheet: string): readonly SheetChart[] {
  const { parts } = state;
  const related = (part: string, type: string) =>
    relationshipsOf(parts, part).filter((each) => isOfType(each, type) && parts.has(each.target));
  return related(sheetNamed(state, sheet).part, "drawing").flatMap(({ target: drawing }) =>
    readable(() => {
      const anchored = elements(documentOf(parts.get(drawing)!), "chart").map((each) => ({ id: idOf(each), row: rowOf(each) }));
      return related(drawing, "chart")
        .map((each) => ({ ...each, row: anchored.find(({ id }) => id === each.id)?.row ?? 0 }))
        .sort((a, b) => a.row - b.row)
        .flatMap(({ target }) => readable(() => [chartOf(state, documentOf(parts.get(target)!).documentElement as Element)]));
    }),
  );
}

/** A chart that is damaged keeps nobody from the cells of its sheet: it is shown as one that is not drawn here. */
function readable(read: () => readonly SheetChart[]): readonly SheetChart[] {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof Damaged || error instanceof ParseError)) throw error;
    return [{ title: "", kind: "other", categories: [], series: [] }];
  }
}

const idOf = (chart: Element): string =>
  chart.getAttribute("r:id") ?? chart.getAttributeNS("http://schemas.openxmlformats.org/officeDocument/2006/relationships", "id") ?? "";

/** The row of the sheet at which the anchor around a chart begins. */
function rowOf(chart: Element): number {
  for (let at: Element | null = chart; at !== null; at = at.parentNode as Element | null) {
    const from = at.localName?.endsWith("Anchor") === true ? first(at, "from") : null;
    if (from !== null) return Number(first(from, "row")?.textContent ?? 0);
  }
  return 0;
}

function chartOf(state: State, chart: Element): SheetChart {
  const plot = first(chart, "plotArea");
  const drawn =
    plot === null ? undefined : ["barChart", "lineChart", "areaChart", "scatterChart"].flatMap((name) => children(plot, name))[0];
  const [title] = children(first(chart, "chart") ?? chart, "title");
  const all = plot === null ? [] : elements(plot, "ser");
  const categories = all.map((series) => textsOf(state, first(series, "cat") ?? first(series, "xVal")))[0] ?? [];
  return {
    title:
      title === undefined
        ? ""
        : elements(title, "t")
            .map(({ textContent }) => textContent ?? "")
            .join(""),
    kind:
      drawn === undefined
        ? "other"
        : drawn.localName !== "barChart"
          ? "line"
          : first(drawn, "barDir")?.getAttribute("val") === "bar"
            ? "bar"
            : "column",
    categories,
    series: all.map((series, index) => ({
      name: textsOf(state, first(series, "tx"))[0] ?? `Series ${index + 1}`,
      values: cellsOf(state, first(series, "val") ?? first(series, "yVal")).map((cell) => (typeof cell === "number" ? cell : null)),
    })),
  };
}

const textsOf = (state: State, of: Element | null): readonly string[] => cellsOf(state, of).map(String);

/** What the cells that a part of a chart points at say now; where they are not to be had, what was stored with it. */
function cellsOf(state: State, of: Element | null): readonly Cell[] {
  if (of === null) return [];
  const { sheet, area } = splitSheet((first(of, "f")?.textContent ?? "").replaceAll("$", ""));
  const cells = sheet === null ? null : parseArea(area);
  const there = bookOf(state.parts).sheets.find(({ name }) => sheet !== null && sameName(name, sheet));
  if (cells !== null && there !== undefined && isSmall(cells)) {
    const data = dataOf(state, there.part);
    return placesOf(cells).map((at) => valueIn(data, at));
  }
  const points = elements(of, "pt");
  if (points.length === 0)
    return elements(of, "v")
      .slice(0, 1)
      .map(({ textContent }) => textContent ?? "");
  const isNumbers = first(of, "numCache") !== null || first(of, "numLit") !== null;
  const stored: Cell[] = [];
  for (const point of points)
    stored[Number(point.getAttribute("idx") ?? stored.length)] = isNumbers
      ? Number(first(point, "v")?.textContent)
      : (first(point, "v")?.textContent ?? "");
  return Array.from(stored, (cell) => cell ?? "");
}

const mostPoints = 2_000;
const isSmall = ({ top, left, bottom, right }: Block): boolean => (bottom - top + 1) * (right - left + 1) <= mostPoints;
const placesOf = ({ top, left, bottom, right }: Block) =>
  Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (_each, across) => ({ row: top + down, column: left + across })),
  ).flat();
