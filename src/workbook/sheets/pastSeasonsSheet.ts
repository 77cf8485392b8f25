/** The result sheet *Past seasons by crop*: goal against harvest, cost, price needed against price got, and proven yields. */
import { cropYears, type CropYear } from "../../core/history/cropYears";
import { fieldHistory } from "../../core/history/provenYield";
import { grouped } from "../../core/grouped";
import type { Field } from "../../core/season";
import type { ChartModel, ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { historyWords } from "../historyWords";
import { areaCell, headings, moneyCell, note, priceNeededCell, section, text, title, yieldCell } from "./cells";
import { costRows, growthRows } from "./pastFieldRows";
import { areaName, caution, headingsInLines, incompleteRows, inLines, seasonName } from "./sheetWords";
import { chartHeight, yearCharts } from "./yearCharts";

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
