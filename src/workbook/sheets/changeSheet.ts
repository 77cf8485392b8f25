/** The result sheet *Change – name*: what a change must bring to pay, what it comes to, and what that rests on. */
import { breakEven, type BreakEven } from "../../core/partialBudget/breakEvenOfChange";
import { isCapital, isGrain, priceOf, quadrants, type ChangeLine, type Quadrant } from "../../core/partialBudget/change";
import type { ChangeFigures } from "../../core/partialBudget/changeFigures";
import type { LineAmount, NetChange } from "../../core/partialBudget/netChange";
import type { Strip } from "../../core/partialBudget/strip";
import type { Decimal } from "../../core/numbers/decimal";
import { changeCautions, changeFindings, findingsMark, grainNotes, perUnitOf, trialWords, whyNone } from "../changeWords";
import type { CellStyle, ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { shownQuantity, shownYield } from "../shown";
import { blank, headings, moneyCell, note, quantityCell, section, subtotal, text, title, yieldNeededCell } from "./cells";
import { neededCell } from "./needed";
import { areaName, incompleteRows, inLines, seasonName } from "./sheetWords";

type Row = readonly SheetCell[];
/** Words to the right of a figure, kept off it: a figure stands at the right edge of its column. */
const beside = (words: string, style: CellStyle = {}): SheetCell => text(words === "" ? "" : `  ${words}`, style);
const lineLength = 132;

export function changeSheet(report: SeasonReport, figures: ChangeFigures): ResultSheet {
  const { change } = figures;
  const { currency, areaUnit } = report.season.settings;
  const about = change.target === null ? "the whole farm" : "field" in change.target ? change.target.field : change.target.crop;
  const heading = `Change – ${change.name}`;
  return {
    name: heading,
    columns: [34, 12, 12, 12, 26, 14, 12],
    headingRows: 3,
    charts: [],
    rows: [
      title(heading),
      note(
        `${seasonName(report)}. ${currency} a year, on ${change.area.toFixed()} ${areaUnit} (${about}); interest on equipment kept ` +
          `more than a year ${change.rate.times("100").toFixed()} %.`,
      ),
      ...incompleteRows(report, { of: "change", name: change.name }),
      ...payRows(figures, report),
      ...netRows(figures, report),
      ...stripRows(figures, report),
      ...overlayRows(figures, report),
      ...restRows(figures, report),
    ],
    page: {
      orientation: "portrait",
      paper: areaUnit === "ac" ? "letter" : "a4",
      pagesTall: 0,
      footer: `${heading}, ${seasonName(report)}`,
    },
  };
}

/** What a single entry must be, all others as they are. */
function payRows({ change, gain, net, breakEven: solved, payback }: ChangeFigures, report: SeasonReport): readonly Row[] {
  const { areaUnit, currency } = report.season.settings;
  const row = (name: string, answer: BreakEven | null, unit: string, places: 1 | 2): readonly Row[] => {
    if (answer === null) return [];
    if (!answer.found) return answer.why === "another entry is blank" ? [] : [[text(name), blank, beside(whyNone(answer))]];
    return [[text(name), neededCell(answer, places), beside(`${unit}, or ${answer.pays === "above" ? "more" : "less"}`)]];
  };
  const sold = change.lines.find(({ price }) => isGrain(price));
  const priced = sold ?? gain;
  const priceName = sold === undefined ? `Price of: ${gain?.item ?? ""}` : "Price of the crop";
  const others = change.lines.filter((line) => line !== gain && isGrain(line.price));
  const open = net.blank.map(({ item }) => item);
  // Beside the gain that it must bring, where a reader looks first.
  const mark = findingsMark(changeFindings(change));
  const solvedAll = [
    ...row(gain?.item ?? "", solved.yieldGain, gain?.unit ?? "", 1),
    ...others.flatMap((line) => row(line.item, breakEven(change, { of: "quantity", line }), line.unit, 1)),
    ...row(priceName, solved.price, priced === null ? currency : perUnitOf(priced, currency), 2),
    ...row("Area of the change", solved.area, areaUnit, 1),
    ...change.lines
      .filter(isCapital)
      .flatMap((line) => row(`Years kept: ${line.item}`, breakEven(change, { of: "years kept", line }), "years", 1)),
    ...(open.length === 0 && change.lines.some(isCapital) ? [paybackRow(payback)] : []),
  ];
  return [
    [],
    section("Pays from"),
    ...solvedAll,
    ...(mark === "" ? [] : [note(mark)]),
    ...(open.length === 0
      ? []
      : [note(`What else it pays from is known once every entry is: ${open.join(", ")} ${open.length === 1 ? "is" : "are"} blank.`)]),
  ];
}

function paybackRow(payback: ChangeFigures["payback"]): Row {
  if (payback === null) return [text("Payback"), blank, beside("Nothing is laid out on balance, or nothing comes back.")];
  const { simple, withInterest } = payback;
  return [
    text("Payback"),
    neededCell({ value: simple, pays: "above" }, 1),
    beside(`years without interest, ${withInterest === null ? "never" : shownYield(withInterest).toFixed(1)} with it`),
  ];
}

function netRows({ net }: ChangeFigures, report: SeasonReport): readonly Row[] {
  const area = areaName(report);
  return [
    [],
    headings("Net change", "Quantity", "Unit", "Price", "Basis", "In all, a year", `Per ${area}`).map((cell) =>
      ["Unit", "Basis"].includes(String(cell.value)) ? { ...cell, ...beside(String(cell.value), { ...cell.style, align: "left" }) } : cell,
    ),
    ...quadrants.flatMap((quadrant) => quadrantRows(quadrant, net)),
    [
      text("Net change", subtotal),
      ...[1, 2, 3, 4].map(() => text("", subtotal)),
      moneyCell(net.net.perYear, subtotal),
      moneyCell(net.net.perArea, subtotal),
    ],
    ...(net.blank.length === 0
      ? []
      : [
          [
            text("Net change of what is entered"),
            blank,
            blank,
            blank,
            blank,
            moneyCell(net.netOfKnown.perYear),
            moneyCell(net.netOfKnown.perArea),
          ],
          note(`Not known yet: ${net.blank.map(({ item }) => item).join(", ")}.`),
        ]),
    ...grainNotes(net.change, report.season.settings.currency).map(note),
  ];
}

function quadrantRows(quadrant: Quadrant, net: NetChange): readonly Row[] {
  const { lines, perYear, perArea } = net.quadrants[quadrant];
  const name = `${quadrant.charAt(0).toUpperCase()}${quadrant.slice(1)}`;
  return [
    [text(name, { bold: true }), blank, blank, blank, blank, moneyCell(perYear, { bold: true }), moneyCell(perArea, { bold: true })],
    ...lines.map(({ line, perYear: inAll, perArea: perOne }: LineAmount): Row => [
      text(`   ${line.item}`),
      quantityCell(line.quantity),
      beside(line.unit),
      moneyCell(priceOf(line)),
      beside(basisWords(line)),
      moneyCell(inAll),
      moneyCell(perOne),
    ]),
  ];
}

const basisWords = ({ basis, yearsKept, salvage }: ChangeLine): string =>
  `${basis}${yearsKept === null ? "" : `, ${yearsKept.toFixed()} years`}${salvage === null || salvage.isZero() ? "" : `, salvage value ${salvage.toFixed()}`}`;

function stripRows({ strip, gainNeeded, gain, grid, net: { net } }: ChangeFigures, report: SeasonReport): readonly Row[] {
  if (strip === null) return gridRows(grid, report);
  const across = <Of>(of: Strip<Of>, cell: (value: Of) => SheetCell): Row => [cell(of.low), cell(of.expected), cell(of.high)];
  const needed = (answer: BreakEven) => (answer.found ? yieldNeededCell(answer.value) : text("–", { align: "right" }));
  const price = ({ change }: NetChange): Decimal | null => {
    const grain = change.lines.map((line) => line.price).find(isGrain);
    return grain?.price ?? null;
  };
  return [
    [],
    headings("By the price of the crop", "Low", "Expected", "High"),
    [text("Price"), ...across(strip, (net) => moneyCell(price(net)))],
    ...(gainNeeded === null ? [] : [[text(`${gain!.item} needed (${gain!.unit})`), ...across(gainNeeded, needed)]]),
    ...(net.perYear === null
      ? []
      : [
          [text(`Net change per ${areaName(report)}`), ...across(strip, (each) => moneyCell(each.net.perArea))],
          [text("Net change in all"), ...across(strip, (each) => moneyCell(each.net.perYear))],
        ]),
    ...gridRows(grid, report),
  ];
}

/** Price and yield moved together. A season that has one price shows it three times, as the strip does. */
function gridRows(grid: ChangeFigures["grid"], report: SeasonReport): readonly Row[] {
  if (grid === null) return [];
  const { line, quantities, net } = grid;
  return [
    [],
    section(`Net change per ${areaName(report)} by ${line.item.toLowerCase()} and price`),
    headings(`${line.item} (${line.unit})`, "Low price", "Expected", "High price"),
    ...(["low", "expected", "high"] as const).map((of): Row => [
      text(`   ${shownQuantity(quantities[of]).toFixed()}${words[of]}`),
      ...(["low", "expected", "high"] as const).map((price) => moneyCell(net[of][price].net.perArea)),
    ]),
  ];
}
const words = { low: ", none at all", expected: ", as entered", high: ", half as much again" } as const;

/** The outlook of the crops that a change that is counted in is about, as it is and with all of those. */
function overlayRows({ change }: ChangeFigures, report: SeasonReport): readonly Row[] {
  const { figures, season } = report;
  if (!change.countedIn) return [];
  const overlays = figures.overlays.filter(({ added }) => added.some((each) => each.change === change.name));
  return overlays.flatMap(({ crop, area, outlook, added, withChanges }): readonly Row[] => [
    [],
    headings(`${crop}, ${area.toFixed(1)} ${season.settings.areaUnit}: net return, full cost`, `Per ${areaName(report)}`, "In all"),
    [text("Projected"), moneyCell(outlook.perArea), moneyCell(outlook.inAll)],
    ...added.map((each): Row => [text(`   ${each.change}`), moneyCell(each.perArea), moneyCell(each.inAll)]),
    [
      text("Projected with the changes counted in", subtotal),
      moneyCell(withChanges?.perArea ?? null, subtotal),
      moneyCell(withChanges?.inAll ?? null, subtotal),
    ],
  ]);
}

function restRows(figures: ChangeFigures, { season }: SeasonReport): readonly Row[] {
  const findings = changeFindings(figures.change);
  const lines = (words: readonly string[]) => words.flatMap((each) => inLines(each, lineLength)).map(note);
  const rests = [
    "Only what the change adds or takes away is counted. Equipment kept more than a year costs its capital recovery: the outlay " +
      "less its salvage value, spread with interest.",
    "All entries are in the table Changes. Nothing is assumed of a product or a part.",
  ];
  return [
    [],
    section("What it rests on"),
    ...lines(rests),
    ...(findings.length === 0
      ? []
      : [
          [],
          section("What trials found"),
          ...lines(findings.map((each) => `${each.noDifference ? "No difference: " : ""}${trialWords(each)}`)),
        ]),
    [],
    ...lines(changeCautions(figures, season)),
  ];
}
