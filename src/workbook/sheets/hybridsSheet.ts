/** The result sheet *Hybrids compared*: yields and nets against the check, the farm's acres by hybrid, and its own fields. */
import { planningCaution } from "../../core/cautions";
import { hybridComparisons, type HybridComparison } from "../../core/hybrids/comparison";
import { sharesOfAcres, type HybridShare } from "../../core/hybrids/shareOfAcres";
import { hundred, type Decimal } from "../../core/numbers/decimal";
import type { Crop } from "../../core/season";
import { accounts } from "../../core/accounts";
import { checkWords, hybridBasis, hybridGaps, netWords, ownFieldsWords, ranked, showsWords, spreadWords } from "../hybridWords";
import { ownFields, type OwnField } from "../ownFields";
import type { ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import {
  areaCell,
  headings,
  moneyCell,
  note,
  percentCell,
  quantityCell,
  section,
  standCell,
  text,
  title,
  wholeQuantityCell,
  yieldCell,
} from "./cells";
import { incompleteRows, inLines, seasonName } from "./sheetWords";

type Row = readonly SheetCell[];
const lineLength = 150;
const right = { align: "right" } as const;

export const comparisonsOf = ({ season, figures }: SeasonReport): readonly HybridComparison[] => hybridComparisons(season, figures.items);

export function hybridsSheet(report: SeasonReport): ResultSheet {
  const { season } = report;
  const all = comparisonsOf(report);
  const shares = sharesOfAcres(season, accounts(season).maturing);
  const crops = season.crops.filter(({ name }) => all.some(({ crop }) => crop === name));
  return {
    name: "Hybrids compared",
    columns: [28, 8, 11, 11, 12, 12, 16, 10, 11, 10, 10, 10],
    headingRows: 2,
    charts: [],
    rows: [
      title("Hybrids compared"),
      note(`${seasonName(report)}. Yields dry, at the crop's standard moisture. Trials as you entered them.`),
      ...incompleteRows(report, { of: "hybrids" }),
      ...crops.flatMap((crop) =>
        cropRows(
          report,
          crop,
          ranked(all.filter((each) => each.crop === crop.name)),
          shares.filter((each) => each.crop === crop.name),
        ),
      ),
      [],
      section("What it rests on"),
      ...[...hybridBasis, planningCaution].flatMap((words) => inLines(words, lineLength)).map(note),
    ],
    page: {
      orientation: "landscape",
      paper: season.settings.areaUnit === "ac" ? "letter" : "a4",
      pagesTall: 0,
      footer: `Hybrids, ${seasonName(report)}`,
    },
  };
}

function cropRows(report: SeasonReport, crop: Crop, all: readonly HybridComparison[], shares: readonly HybridShare[]): readonly Row[] {
  const { currency, areaUnit } = report.season.settings;
  const tried = all.filter(({ trials }) => !trials.isZero());
  const own = ownFields(report, crop.name);
  return [
    [],
    section(checkWords(crop.name, all)),
    ...(tried.length === 0
      ? []
      : [
          headings(
            `Yield, ${crop.yieldUnit} per ${areaUnit}`,
            "Trials",
            "Yield",
            "Difference",
            "Low",
            "High",
            "These show",
            "Moisture",
            "Test weight",
            "Stand",
            "Lodged",
            "LSD",
          ),
          ...tried.map(yieldRow),
          [],
          headings(`Money, ${currency} per ${areaUnit}`, "Trials", "Seed, fees", "Nets", "Difference", "Low", "High"),
          ...tried.map(netRow),
        ]),
    ...[...hybridGaps(all), netWords(report.season, crop)].flatMap((words) => inLines(words, lineLength)).map(note),
    ...(shares.length === 0
      ? []
      : [
          [],
          headings("Acres by hybrid", areaUnit === "ac" ? "Acres" : "Hectares", "Share", "Days", "Matures", "To"),
          ...shares.map(shareRow),
          ...spreadWords(shares, (day) => day).map(note),
        ]),
    ...(own.length === 0
      ? []
      : [
          [],
          headings("Own fields, no trial", "", "", "Planted", "Stand", "Yield", "", "Moisture"),
          ...own.map(ownRow),
          note(ownFieldsWords),
        ]),
  ];
}

const points = (value: Decimal | null): SheetCell => percentCell(value === null ? null : value.div(hundred));

const yieldRow = (each: HybridComparison): Row => [
  text(each.hybrid, { bold: each.isCheck }),
  wholeQuantityCell(each.trials),
  yieldCell(each.yield),
  yieldCell(each.yieldDifference?.mean ?? null),
  yieldCell(each.yieldDifference?.low ?? null),
  yieldCell(each.yieldDifference?.high ?? null),
  text(showsWords(each), right),
  points(each.moisture),
  areaCell(each.testWeight),
  standCell(each.stand),
  percentCell(each.lodged),
  quantityCell(each.lsd),
];

const netRow = (each: HybridComparison): Row => [
  text(each.hybrid, { bold: each.isCheck }),
  wholeQuantityCell(each.netTrials),
  moneyCell(each.seedCost),
  moneyCell(each.netPerArea),
  moneyCell(each.netDifference?.mean ?? null),
  moneyCell(each.netDifference?.low ?? null),
  moneyCell(each.netDifference?.high ?? null),
];

const shareRow = ({ hybrid, area, share, days, matures, notProjected }: HybridShare): Row => [
  text(hybrid ?? "No hybrid named"),
  areaCell(area),
  percentCell(share),
  wholeQuantityCell(days),
  text(matures?.first ?? "–", right),
  text(matures?.last ?? "–", right),
  ...(notProjected.length === 0 ? [] : [text(""), text(`not projected: ${notProjected.join(", ")}`)]),
];

const ownRow = ({ field, hybrid, planted, stand, yield: yields, isHarvested, moisture }: OwnField): Row => [
  text(`${field}, ${hybrid}`),
  text(""),
  text(""),
  text(planted ?? "–", right),
  standCell(stand),
  yieldCell(yields),
  text(isHarvested ? "harvested" : "projected", right),
  points(moisture),
];
