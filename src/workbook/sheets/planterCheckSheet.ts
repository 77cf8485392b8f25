/** The result sheet *Planter check*: what was measured and found, what is due, and what it costs. */
import { cautionsOf, planningCaution } from "../../core/cautions";
import type { PartState, PlanterPart, PlanterRepair } from "../../core/planter/planterRepair";
import type { ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { areaCell, headings, moneyCell, moneyOrDash, note, percentCell, quantityCell, section, subtotal, text, title } from "./cells";
import { areaName, inLines, incompleteRows, seasonName } from "./sheetWords";

type Row = readonly SheetCell[];
const lineLength = 128;

/** The words for what is to be done with a part. */
const stateWords: Readonly<Record<PartState, string>> = {
  due: "due",
  soon: "soon",
  adjust: "adjust",
  good: "good",
  done: "done",
  "not judged": "not judged",
};

export function planterCheckSheet(report: SeasonReport): ResultSheet {
  const { areaUnit } = report.season.settings;
  return {
    name: "Planter check",
    columns: [8, 26, 9, 11, 10, 7, 9, 11, 22, 9, 8, 12],
    headingRows: 3,
    charts: [],
    rows: [
      title("Planter check"),
      note(`${seasonName(report)}. What is due is no cost of the season until it is planned, bought or done.`),
      [],
      ...incompleteRows(report, { of: "planter" }),
      ...report.figures.planters.flatMap((planter) => planterRows(planter, areaName(report))),
      [],
      ...[...cautionsOf.planter, planningCaution].flatMap((words) => inLines(words, lineLength)).map(note),
    ],
    page: {
      orientation: "landscape",
      paper: areaUnit === "ac" ? "letter" : "a4",
      pagesTall: 0,
      footer: `Planter check, ${seasonName(report)}`,
    },
  };
}

const planterRows = ({ machine, parts, cost, soonCost, area, costPerArea }: PlanterRepair, perArea: string): readonly Row[] => [
  section(machine),
  headings("Row", "Part", "New", "Replace at", "Measured", "Unit", "Worn", "State", "Item", "Quantity", "Hours", "Cost"),
  ...parts.map(partRow),
  summed("Due and to adjust", moneyCell(cost, subtotal)),
  ...(soonCost.isZero() ? [] : [summed("Due soon, not among it", moneyCell(soonCost, { ...subtotal, bold: false }))]),
  ...(costPerArea === null
    ? [note(`Per ${perArea}: no entry of Operations names this machine, so there are no ${perArea}s to share it.`)]
    : [
        [
          ...Array<SheetCell>(8).fill(text("")),
          text(`Per ${perArea} of this planter, over`, { align: "right" }),
          areaCell(area),
          text(""),
          moneyCell(costPerArea),
        ],
      ]),
  [],
];

const summed = (words: string, amount: SheetCell): Row => [text(words, subtotal), ...Array<SheetCell>(10).fill(text("", subtotal)), amount];

function partRow({ check, state, wear, cost }: PlanterPart): Row {
  const right = { align: "right" } as const;
  return [
    text(check.row ?? "all"),
    text(check.part),
    quantityCell(check.whenNew),
    quantityCell(check.replaceAt),
    quantityCell(check.measured),
    text(check.unit ?? "", right),
    percentCell(wear),
    text(check.doneOn === null ? stateWords[state] : check.doneOn, { ...right, bold: state === "due" }),
    text(check.item ?? "", right),
    check.item === null ? text("") : quantityCell(check.quantity),
    quantityCell(check.hours),
    cost === null ? text("no price", right) : moneyOrDash(cost),
  ];
}
