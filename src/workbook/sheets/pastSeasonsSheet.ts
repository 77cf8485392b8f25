/** The result sheet *Past seasons by crop*: goal against harvest, cost, price needed against price got, and proven yields. */
import { cropYears, type CropYear } from "../../core/history/cropYears";
import { fieldHistory } from "../../core/history/provenYield";
import type { PastField } from "../../core/history/pastField";
import { grouped } from "../../core/grouped";
import type { Decimal } from "../../core/numbers/decimal";
import type { Field } from "../../core/season";
import type { ChartModel, ResultSheet, SheetCell } from "../resultSheet";
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
import { areaName, caution, headingsInLines, incompleteRows, inLines, seasonName } from "./sheetWords";

type Row = readonly SheetCell[];
const lineLength = 150;
const right = { align: "right" } as const;

export function pastSeasonsSheet(report: SeasonReport): ResultSheet {
  const { pastSeasons, settings } = report.season;
  const area = areaName(report);
  // A year to the right of the one before it in the charts.
  const byCrop = grouped([...cropYears(pastSeasons)].reverse(), ({ crop }) => crop);
  const rows: Row[] = [
    title("Past seasons by crop"),
    note(`${seasonName(report)}. ${settings.currency} per ${area}, prices per unit of yield; means of the fields by ${area}.`),
    ...incompleteRows(report, { of: "years" }),
  ];
  const charts: ChartModel[] = [];
  for (const [crop, years] of [...byCrop].sort(([a], [b]) => a.localeCompare(b))) {
    rows.push(...cropRows(crop, years, area));
    const drawn = yearCharts(crop, years, rows.length);
    charts.push(...drawn);
    if (drawn.length > 0) rows.push(...Array.from({ length: chartHeight + 1 }, (): Row => []));
  }
  return {
    name: "Past seasons by crop",
    columns: [26, 13, 13, 11, 11, 11, 11, 11, 11, 11, 11, 11],
    headingRows: 2,
    charts,
    rows: [
      ...rows,
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
    ...headingsInLines(
      [26, 11],
      "Season",
      `${area === "acre" ? "Acres" : "Hectares"}`,
      "Goal",
      "Yield",
      "Difference",
      "Cash cost",
      "Full cost",
      "Full cost planned",
      "Needed, cash",
      "Needed, full",
      "Price got",
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

const chartHeight = 11;

/**
 * Goal against harvest, and the price needed against the price got, side by side below the rows of the years, of which the last is
 * row `last`. None of what is not known of every year: a blank would be drawn as nothing.
 */
function yearCharts(crop: string, years: readonly CropYear[], last: number): readonly ChartModel[] {
  if (years.length < 2) return [];
  const rows = (column: string) => `${column}${last - years.length + 1}:${column}${last}`;
  const chart = (
    title: string,
    columns: readonly [string, string],
    series: readonly [readonly [string, string], readonly [string, string]],
  ) => ({
    kind: "column" as const,
    title: `${crop}: ${title}`,
    categories: rows("A"),
    // A yield is never negative, and a price needed is in none of the years drawn.
    startsAtZero: years.every(({ priceNeeded }) => priceNeeded.full?.isNegative() !== true),
    series: series.map(([name, column]) => ({ name, values: rows(column) })),
    from: `${columns[0]}${last + 2}`,
    to: `${columns[1]}${last + 1 + chartHeight}`,
  });
  const isKnown = (of: (year: CropYear) => readonly (Decimal | null)[]) => years.every((year) => of(year).every((value) => value !== null));
  return [
    ...(isKnown(({ goal, yield: harvested }) => [goal, harvested])
      ? [
          chart(
            "yield, goal against harvest",
            ["A", "E"],
            [
              ["Goal", "C"],
              ["Yield", "D"],
            ],
          ),
        ]
      : []),
    ...(isKnown(({ priceNeeded, price }) => [priceNeeded.full, price])
      ? [
          chart(
            "price needed for full cost against price got",
            ["F", "L"],
            [
              ["Needed, full", "J"],
              ["Price got", "K"],
            ],
          ),
        ]
      : []),
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
