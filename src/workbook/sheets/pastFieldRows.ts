/** Past years field by field: their money, and what they grew like. */
import type { PastField } from "../../core/history/pastField";
import type { SheetCell } from "../resultSheet";
import { areaCell, headings, moneyCell, percentCell, quantityCell, section, standCell, text, yieldCell } from "./cells";

type Row = readonly SheetCell[];
const right = { align: "right" } as const;

/** What each field came to in each year, as entered. */
export const costRows = (past: readonly PastField[], area: string): readonly Row[] => [
  [],
  section("Field by field: yield and money"),
  headings(
    "Field",
    "Season",
    "Crop",
    `${area === "acre" ? "Acres" : "Hectares"}`,
    "Goal",
    "Yield",
    "Operating",
    "Cash",
    "Full",
    "Cash need",
    "Price",
    "Net",
  ),
  ...inOrder(past).map((row): Row => [
    text(row.field),
    text(row.season, right),
    text(row.crop, right),
    areaCell(row.area),
    yieldCell(row.goal),
    yieldCell(row.yield),
    moneyCell(row.costs.operating),
    moneyCell(row.costs.cash),
    moneyCell(row.costs.full),
    moneyCell(row.costs.cashNeed),
    moneyCell(row.price),
    moneyCell(row.net),
  ]),
];

/** What it grew like: only rows of which anything is entered. */
export function growthRows(past: readonly PastField[]): readonly Row[] {
  const told = inOrder(past).filter(
    ({ hybrid, planted, stand, heatUnits, rain, sitesUsed, operatorShare }) =>
      [hybrid, planted, stand, heatUnits, rain].some((each) => each !== null) || sitesUsed.length > 0 || operatorShare.lt("1"),
  );
  if (told.length === 0) return [];
  return [
    [],
    section("Field by field: the season"),
    headings("Field", "Season", "Planted", "Stand", "Heat units", "Rain", "Your part", "Yield", "Sites", "", "Hybrid"),
    ...told.map((row): Row => [
      text(row.field),
      text(row.season, right),
      text(row.planted ?? "–", right),
      standCell(row.stand),
      quantityCell(row.heatUnits),
      quantityCell(row.rain),
      percentCell(row.operatorShare),
      yieldCell(row.yield),
      text(row.sitesUsed.join(", "), right),
      text(""),
      text(row.hybrid ?? ""),
    ]),
  ];
}

/** By field, the newest year first. */
const inOrder = (past: readonly PastField[]): readonly PastField[] => {
  const places = new Map([...new Set(past.map(({ field }) => field))].map((field, index) => [field, index]));
  return [...past].sort((a, b) => places.get(a.field)! - places.get(b.field)! || b.season.localeCompare(a.season));
};
