/** The result sheet *Past seasons by crop*: goal against harvest, cost, price needed against price got, and proven yields. */
import { cropYears, type CropYear } from "../../core/history/cropYears";
import { fieldHistory } from "../../core/history/provenYield";
import type { PastField } from "../../core/history/pastField";
import { grouped } from "../../core/grouped";
import type { Field } from "../../core/season";
import type { ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { historyWords } from "../historyWords";
import {
  areaCell,
  headings,
  moneyCell,
  note,
  percentCell,
  priceNeededCell,
  quantityCell,
  section,
  standCell,
  text,
  title,
  yieldCell,
} from "./cells";
import { areaName, caution, incompleteRows, inLines, seasonName } from "./sheetWords";

type Row = readonly SheetCell[];
const lineLength = 150;
const right = { align: "right" } as const;

export function pastSeasonsSheet(report: SeasonReport): ResultSheet {
  const { pastSeasons, settings } = report.season;
  const area = areaName(report);
  const byCrop = grouped(cropYears(pastSeasons), ({ crop }) => crop);
  return {
    name: "Past seasons by crop",
    columns: [26, 11, 11, 11, 11, 11, 11, 11, 11, 11, 11, 11],
    headingRows: 2,
    charts: [],
    rows: [
      title("Past seasons by crop"),
      note(`${seasonName(report)}. ${settings.currency} per ${area}, prices per unit of yield; means of the fields by ${area}.`),
      ...incompleteRows(report, { of: "years" }),
      ...[...byCrop].flatMap(([crop, years]) => cropRows(crop, years, area)),
      ...provenRows(report),
      ...costRows(pastSeasons, area),
      ...growthRows(pastSeasons),
      [],
      ...[
        "Net is after full cost. Price needed is the price at which nothing would have been left, for the operator's part of " +
          "the crop. A dash: not entered for every field of the crop in that year.",
        "Proven yield is your own count of the years in Past seasons, not your insurer's. A year may not be left out because it was bad.",
        caution,
      ]
        .flatMap((words) => inLines(words, lineLength))
        .map(note),
    ],
    page: {
      orientation: "landscape",
      paper: settings.areaUnit === "ac" ? "letter" : "a4",
      pagesTall: 0,
      footer: `Past seasons, ${seasonName(report)}`,
    },
  };
}

function cropRows(crop: string, years: readonly CropYear[], area: string): readonly Row[] {
  return [
    [],
    section(crop),
    headings(
      "Season",
      `${area === "acre" ? "Acres" : "Hectares"}`,
      "Goal",
      "Yield",
      "Difference",
      "Cash cost",
      "Full cost",
      "Planned full cost",
      "Price needed, cash",
      "Price needed, full",
      "Price",
      "Net",
    ),
    ...years.map(({ season, area: acres, goal, yield: harvested, costs, planned, priceNeeded, price, net }): Row => [
      text(season),
      areaCell(acres),
      yieldCell(goal),
      yieldCell(harvested),
      yieldCell(goal === null || harvested === null ? null : harvested.minus(goal)),
      moneyCell(costs.cash),
      moneyCell(costs.full),
      moneyCell(planned),
      priceNeededCell(priceNeeded.cash),
      priceNeededCell(priceNeeded.full),
      moneyCell(price),
      moneyCell(net),
    ]),
  ];
}

/** The fields of today with their crop's years: goal and proven yield side by side, and how far the years lie apart. */
function provenRows({ season: { fields, pastSeasons, settings } }: SeasonReport): readonly Row[] {
  const rows = fields.flatMap((field: Field): readonly Row[] => {
    const history = fieldHistory(pastSeasons, field.name, field.crop, settings.seasonYear);
    if (history.years.length === 0 && history.endsBefore === null) return [];
    const yields = [...history.years].sort((a, b) => a.yield.comparedTo(b.yield));
    const [least, best] = [yields[0]?.yield ?? null, yields.at(-1)?.yield ?? null];
    return [
      [
        text(field.name),
        text(field.crop, right),
        yieldCell(field.yieldGoal),
        yieldCell(field.provenYield),
        yieldCell(least),
        yieldCell(best),
        { value: history.years.length, style: { align: "right" } },
        text(""),
        text(historyWords(history, field)),
      ],
    ];
  });
  return rows.length === 0
    ? []
    : [
        [],
        section("Proven yield of the fields of today"),
        headings("Field", "Crop", "Goal", "Proven", "Least year", "Best year", "Years"),
        ...rows,
      ];
}

/** What each field came to in each year, as entered. */
const costRows = (past: readonly PastField[], area: string): readonly Row[] => [
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
function growthRows(past: readonly PastField[]): readonly Row[] {
  const told = inOrder(past).filter(
    ({ hybrid, planted, stand, heatUnits, rain, sitesUsed, operatorShare }) =>
      [hybrid, planted, stand, heatUnits, rain].some((each) => each !== null) || sitesUsed.length > 0 || operatorShare.lt("1"),
  );
  if (told.length === 0) return [];
  return [
    [],
    section("Field by field: the season"),
    headings("Field", "Season", "Planted", "Stand", "Heat units", "Rain", "Operator's part", "Yield", "Sites", "", "Hybrid or variety"),
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
