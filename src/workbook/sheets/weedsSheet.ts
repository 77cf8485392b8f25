/** The result sheets *Weeds*, what is sprayed against which weed, and *Mixing card*, what goes into a tank. */
import { cautionsOf, planningCaution } from "../../core/cautions";
import type { Decimal } from "../../core/numbers/decimal";
import { programmes, type Pass, type Programme } from "../../core/weeds/programme";
import { areaPerTank, mixes, type Mix } from "../../core/weeds/tankMix";
import type { ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import { grouped } from "./amounts";
import { areaCell, headings, moneyCell, note, quantityCell, section, subtotal, text, title } from "./cells";
import { areaName, incompleteRows, inLines, seasonName } from "./sheetWords";

type Row = readonly SheetCell[];
const lineLength = 120;
/** Characters of products in a line. */
const productsWidth = 44;
const right = { align: "right" } as const;
const paperOf = ({
  season: {
    settings: { areaUnit },
  },
}: SeasonReport) => (areaUnit === "ac" ? "letter" : "a4");

/** Sites that control a weed and that it does not resist, in words. */
export const sitesWords = (sites: readonly string[]): string => (sites.length === 0 ? "none" : sites.length === 1 ? "one" : "two or more");
const statusWords = { plan: "planned", done: "done" } as const;
const listed = (all: readonly string[]): string => (all.length === 0 ? "–" : all.join(", "));
const dateWords = (date: string | null): string => date ?? "no date";

export const programmesOf = ({ season, figures }: SeasonReport): readonly Programme[] => programmes(season, figures.items);

export function weedsSheet(report: SeasonReport): ResultSheet {
  const of = programmesOf(report);
  const area = areaName(report);
  return {
    name: "Weeds by field",
    columns: [24, 12, 11, 46, 14, 16],
    headingRows: 2,
    charts: [],
    rows: [
      title("Weeds and sites of action"),
      note(`${seasonName(report)}. Sites and weeds as you typed them from the labels, in Items, Applications and Weeds.`),
      ...incompleteRows(report, { of: "weeds" }),
      ...of.flatMap((each) => fieldRows(each, area, report.season.settings.currency)),
      [],
      ...[
        "A site counts against a weed where the product's Controls name the weed and the weed is not listed as resistant to it: two " +
          "or more, one, none. A count says nothing of how well or how long they work.",
        "Cost is that of the products, landlord's part included, on the whole field: planned at plan prices, done at what was paid.",
        ...cautionsOf.tank,
        planningCaution,
      ]
        .flatMap((words) => inLines(words, lineLength))
        .map(note),
    ],
    page: { orientation: "portrait", paper: paperOf(report), pagesTall: 0, footer: `Weeds, ${seasonName(report)}` },
  };
}

function fieldRows({ field, passes, weeds, cost, inEveryPass, sinceLastYear }: Programme, area: string, currency: string): readonly Row[] {
  const total = (status: Pass["status"]): readonly Row[] =>
    passes.some((pass) => pass.status === status)
      ? [[text(`All ${statusWords[status]}`, subtotal), ...Array<SheetCell>(4).fill(text("", subtotal)), moneyCell(cost[status], subtotal)]]
      : [];
  return [
    [],
    section(field),
    headings("Pass", "", "", "Products", "Sites", `${currency} per ${area}`).map((cell, index) =>
      index === 3 ? { ...cell, style: { ...cell.style, align: "left" } } : cell,
    ),
    ...passes.flatMap(({ date, status, items, sites, costPerArea }): readonly Row[] => {
      // Lines of their own, because no row grows with what is in it.
      const [first = "", ...others] = inLines(items.join(", "), productsWidth);
      return [
        [
          text(dateWords(date)),
          text(statusWords[status], right),
          text(""),
          text(first),
          text(listed(sites), right),
          moneyCell(costPerArea),
        ],
        ...others.map((line) => [text(""), text(""), text(""), text(line)]),
      ];
    }),
    ...total("plan"),
    ...total("done"),
    ...(inEveryPass.length === 0
      ? []
      : [note(`In every pass: ${inEveryPass.join(", ")}. What is used in every pass is what weeds learn to live with.`)]),
    ...(sinceLastYear.length === 0 ? [] : [note(`Used here last year too: ${sinceLastYear.join(", ")}.`)]),
    ...weedRows({ passes, weeds }),
  ];
}

function weedRows({ passes, weeds }: Pick<Programme, "passes" | "weeds">): readonly Row[] {
  if (weeds.length === 0) return [];
  return [
    headings("Weed", "Resistant to", "Pass", "", "Sites left", "Is that"),
    ...weeds.flatMap(({ weed, resistantTo, sitesLeft }) =>
      passes.length === 0
        ? [[text(weed), text(listed(resistantTo), right), text("no pass", right)]]
        : passes.map(({ date, status }, index): Row => [
            text(index === 0 ? weed : ""),
            text(index === 0 ? listed(resistantTo) : "", right),
            text(dateWords(date), right),
            text(statusWords[status]),
            text(listed(sitesLeft[index]!), right),
            text(sitesWords(sitesLeft[index]!), { ...right, bold: sitesLeft[index]!.length < 2 }),
          ]),
    ),
  ];
}

/** One card for each mix, a page each; `null` where no mix is entered. */
export function mixingCard(report: SeasonReport): ResultSheet | null {
  const all = mixes(report.season);
  if (all.length === 0) return null;
  const { areaUnit } = report.season.settings;
  const rows: Row[] = [
    title("Mixing card"),
    note(`${seasonName(report)}. Amounts follow from acres, carrier, tank and the rates as you typed them.`),
    ...incompleteRows(report, { of: "weeds" }),
  ];
  const breakAfter: number[] = [];
  for (const mix of all) {
    if (mix !== all[0]) breakAfter.push(rows.length);
    rows.push(...cardRows(mix, areaUnit));
  }
  return {
    name: "Mixing card",
    columns: [30, 14, 12, 16, 16, 16],
    headingRows: 2,
    rows,
    charts: [],
    page: {
      orientation: "portrait",
      paper: paperOf(report),
      pagesTall: 0,
      scale: 80,
      breakAfter,
      footer: `Mixing card, ${seasonName(report)}`,
    },
  };
}

/** Sizes of a mix in words: what a tank covers, how many loads, and how much the last one takes. */
export function loadWords({ area, carrierPerArea, tank, loads }: Mix, areaUnit: "ac" | "ha"): string {
  const volume = areaUnit === "ac" ? "gal" : "L";
  const head =
    `${number(area)} ${areaUnit} at ${number(carrierPerArea)} ${volume} per ${areaUnit}: ${number(area.times(carrierPerArea))} ` +
    `${volume} in all`;
  if (tank === null || loads === null) return `${head}. No tank size is entered, so there are no loads.`;
  const last = loads.last.isZero()
    ? "no part load"
    : `a last load of ${number(loads.last)} ${volume} for ${number(loads.last.div(carrierPerArea))} ${areaUnit}`;
  return (
    `${head}; a tank of ${number(tank)} ${volume} covers ${number(areaPerTank(tank, carrierPerArea))} ${areaUnit}; ` +
    `${loads.full.toFixed()} full ${loads.full.eq("1") ? "load" : "loads"} and ${last}.`
  );
}

const number = (value: Decimal): string => grouped(value.toDecimalPlaces(2));

function cardRows(mix: Mix, areaUnit: "ac" | "ha"): readonly Row[] {
  const { target, date, isDone, items } = mix;
  return [
    [],
    section(`${"field" in target ? target.field : target.crop}, ${dateWords(date)}, ${isDone ? "done" : "planned"}`),
    ...inLines(loadWords(mix, areaUnit), 105).map((words) => [text(words)]),
    headings("Product", `Rate per ${areaUnit}`, "Unit", "In a full load", "In the last load", "In all"),
    ...items.map(({ item, rate, unit, perLoad, inLastLoad, total }): Row => [
      text(item),
      quantityCell(rate),
      text(unit, right),
      quantityCell(perLoad),
      quantityCell(inLastLoad),
      quantityCell(total),
    ]),
    [
      text("Filled up to", subtotal),
      text("", subtotal),
      text(areaUnit === "ac" ? "gal" : "L", { ...subtotal, ...right }),
      quantityCell(mix.tank, subtotal),
      quantityCell(mix.loads?.last ?? null, subtotal),
      quantityCell(mix.area.times(mix.carrierPerArea), subtotal),
    ],
    [
      text("Area covered"),
      text(""),
      text(areaUnit, right),
      areaCell(mix.tank === null ? null : areaPerTank(mix.tank, mix.carrierPerArea)),
      areaCell(mix.loads?.last.div(mix.carrierPerArea) ?? null),
      areaCell(mix.area),
    ],
    [],
    ...[...cautionsOf.tank, planningCaution].flatMap((words) => inLines(words, 105)).map((words) => [text(words, { bold: true })]),
  ];
}
