/** The sheet *Cash flow*: month by month what comes in and goes out, and the operating loan beneath it. */
import { sum, zero, type Decimal } from "../../../core/numbers/decimal";
import type { CashFlow, CashMonth } from "../../../core/lender/cashFlow";
import { differenceReasons, type DifferenceReason } from "../../../core/lender/differences";
import { paidAndCharged } from "../../../core/lender/paidAndCharged";
import { columnName } from "../../cellName";
import type { ResultSheet, SheetCell } from "../../resultSheet";
import { leftOutNotes } from "../../harvestNotes";
import type { SeasonReport } from "../../seasonReport";
import { farmCashFlow, grainMonth, noCashFlow } from "./farmCashFlow";
import { headings, note, subtotal, text, title, wholeMoneyCell } from "../cells";
import { amountWords, wholeAmounts } from "../amounts";
import { caution, headingsInLines, incompleteRows, inLines, seasonName } from "../sheetWords";

type Row = readonly SheetCell[];

export function cashFlowSheet(report: SeasonReport): ResultSheet {
  const flow = farmCashFlow(report);
  return flow === null ? noFlowSheet(report) : flowSheet(report, flow);
}

const pageOf = (report: SeasonReport): ResultSheet["page"] => ({
  orientation: "landscape",
  paper: report.season.settings.areaUnit === "ac" ? "letter" : "a4",
  pagesTall: 1,
  footer: `Cash flow, ${seasonName(report)}`,
});

function noFlowSheet(report: SeasonReport): ResultSheet {
  const rows: Row[] = [
    title("Cash flow"),
    note(`${seasonName(report)}, whole farm.`),
    ...incompleteRows(report, { of: "cash flow" }),
    [],
    [text(noCashFlow, { bold: true })],
    note(caution),
  ];
  return { name: "Cash flow", columns: [40], headingRows: 2, rows, charts: [], page: pageOf(report) };
}

/** Characters of a note that fit across the months of a year. */
const lineLength = 150;

function flowSheet(report: SeasonReport, flow: CashFlow): ResultSheet {
  const { currency } = report.season.settings;
  const columns = flow.months.length;
  const whole = (value: Decimal) => wholeMoneyCell(value);
  const line = (name: string, of: (month: CashMonth) => Decimal, total: boolean, style = {}): Row => [
    text(name, style),
    ...flow.months.map((month) => ({ ...whole(of(month)), style: { ...whole(of(month)).style, ...style } })),
    ...(total ? [{ ...whole(sum(flow.months.map(of))), style: { ...whole(zero).style, ...style } }] : []),
  ];
  const rows: Row[] = [
    title("Cash flow"),
    note(`${seasonName(report)}, whole farm, ${currency} to the nearest whole.`),
    ...inLines(notes(report, flow), 180).map(note),
    ...incompleteRows(report, { of: "cash flow" }),
    [],
    headings("", ...flow.months.map(({ month }) => month), "All"),
    ...flow.groups.map((group) => line(`   ${group}`, ({ flows }) => flows.get(group) ?? zero, true)),
    line("Money in", ({ moneyIn }) => moneyIn, true, subtotal),
    line("Money out", ({ moneyOut }) => moneyOut.neg(), true, subtotal),
    line("Drawn on the operating loan", ({ draw }) => draw, true),
    line("Interest added to it", ({ interest }) => interest, true),
    line("Paid back", ({ repaid }) => repaid, true),
    line("Operating loan at the end of the month", ({ loan }) => loan, false, subtotal),
    line("Cash at the end of the month", ({ cash }) => cash, false, subtotal),
  ];
  const loanRow = rows.length - 1;
  const between = reconciledRows(report, flow);
  const headingRow = rows.findIndex((row) => row.at(-1)?.value === "All") + 1;
  const last = columnName(columns);
  const chartTop = rows.length + 2;
  const leftOut = report.figures.crops.flatMap((crop) =>
    leftOutNotes(report, crop)
      .flatMap((words) => inLines(`${crop.crop}: ${words}`, lineLength))
      .map(note),
  );
  rows.push([], ...Array.from({ length: 15 }, () => []), ...between, [], ...leftOut, note(caution));
  return {
    name: "Cash flow",
    columns: [40, ...Array.from({ length: columns + 1 }, () => 10)],
    headingRows: 2,
    rows,
    page: pageOf(report),
    charts: [
      {
        kind: "line",
        title: "Operating loan and cash at the end of each month",
        categories: `B${headingRow}:${last}${headingRow}`,
        series: [
          { name: "Operating loan", values: `B${loanRow}:${last}${loanRow}` },
          { name: "Cash", values: `B${loanRow + 1}:${last}${loanRow + 1}` },
        ],
        from: `A${chartTop}`,
        to: `${last}${chartTop + 13}`,
      },
    ],
  };
}

const reasonTitles: Readonly<Record<DifferenceReason, string>> = {
  stock: "Stock bought",
  "opening stock": "Paid last season",
  "other season": "For another season",
  landlord: "Landlord's part",
  "next crop": "For the next crop",
  "machine work": "Machine work and its bills",
  "no field": "Borne by no field",
  "beyond yield": "Grain beyond the projected crop",
  "interest by balance": "Interest by balance",
};

/**
 * What the costs charge and what these months pay for it, group by group, with every reason for a difference; each row adds up as
 * shown.
 */
function reconciledRows(report: SeasonReport, flow: CashFlow): readonly Row[] {
  const groups = paidAndCharged(report.season, report.figures, flow);
  const reasons = differenceReasons.filter((reason) => groups.some(({ differences }) => !(differences[reason] ?? zero).isZero()));
  const line = (name: string, amounts: readonly Decimal[], style = {}): Row => {
    const shown = wholeAmounts(amounts.slice(0, -1));
    return [
      text(name, style),
      ...[...shown, sum(shown)].map((amount) => ({ ...wholeMoneyCell(amount), style: { ...wholeMoneyCell(amount).style, ...style } })),
    ];
  };
  const amountsOf = ({ charged, differences, paid }: (typeof groups)[number]) => [
    charged,
    ...reasons.map((reason) => differences[reason] ?? zero),
    paid,
  ];
  const all = groups.map(amountsOf);
  return [
    ...headingsInLines(
      [40, 10],
      "What the fields are charged, and what these months pay",
      "Charged",
      ...reasons.map((reason) => reasonTitles[reason]),
      "Paid",
    ),
    ...groups.map((group) => line(`   ${group.group}`, amountsOf(group))),
    line(
      "All",
      (all[0] ?? []).map((_, index) => sum(all.map((amounts) => amounts[index]!))),
      subtotal,
    ),
  ];
}

const isFlexible = ({ figures }: SeasonReport): boolean => figures.crops.some(({ outlook }) => !outlook.rentAboveBase.isZero());

function notes(report: SeasonReport, flow: CashFlow): string {
  const spread = flow.spread.isZero()
    ? ""
    : ` ${amountWords(flow.spread.abs())} without a date falls by rule: field costs at planned planting, the rest evenly.`;
  return (
    "Invoices as they are paid, the rest of the plan in its planned month, cash rent half in March and half in November" +
    `${isFlexible(report) ? " (what is above a base rent with the grain)" : ""}, grain not ` +
    `sold yet at the expected price in ${grainMonth(report)}. Opening cash is taken as nothing; the operating loan begins with the ` +
    `balance entered.${spread}`
  );
}
