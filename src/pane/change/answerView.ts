/** What the pane says of a change: first what it must bring to pay, then what it comes to. */
import { hundred } from "../../core/numbers/decimal";
import { breakEven, type BreakEven } from "../../core/partialBudget/breakEvenOfChange";
import { isCapital, isGrain, priceOf, quadrants, type Change, type ChangeLine } from "../../core/partialBudget/change";
import type { ChangeAnswer, PriceRange } from "../../core/partialBudget/changeAnswer";
import { withEntries, type ChangeEntry } from "../../core/partialBudget/changeEntry";
import type { EntryRef } from "../../core/row";
import { moneyPerArea } from "../../core/numbers/units";
import { perUnitOf } from "../../workbook/changeWords";
import type { Format } from "../format";

type LineView = {
  readonly name: string;
  readonly detail: string;
  readonly cells: readonly string[];
  /** Its row of the table Changes; `null` for a line that is not saved yet. */
  readonly source: EntryRef | null;
};

export type AnswerView = {
  /** The gain needed, or what may be given up, as the one figure; `null` where that is no plain figure: then `lead` says why. */
  readonly main: { readonly figure: string; readonly unit: string } | null;
  /** What it takes to pay. */
  readonly lead: string;
  /** Signed, with its unit, and what that is in all; empty while an entry is blank. */
  readonly net: string;
  readonly netUnit: string;
  /** Every line in plain words, per area, as it adds to the net change or takes from it. */
  readonly known: readonly { readonly words: string; readonly amount: string; readonly isLoss: boolean }[];
  /** The same where an entry is blank: what is known, and what is not. */
  readonly open: string;
  readonly quadrants: readonly { readonly name: string; readonly lines: readonly LineView[]; readonly cells: readonly string[] }[];
  readonly facts: readonly { readonly name: string; readonly says: string }[];
  /** At the low, expected and high price: the net change, or while the gain is blank the gain needed. */
  readonly strip: readonly { readonly name: string; readonly cells: readonly string[] }[];
  readonly stripOf: "net change" | "needed";
  /** Price and yield moved together, where both matter: it then stands instead of the strip of net change. */
  readonly grid: GridView | null;
};

/** Net change per area: yields across, prices down. */
type GridView = {
  readonly item: string;
  readonly columns: readonly string[];
  readonly rows: readonly { readonly name: string; readonly cells: readonly string[] }[];
};

/** The entry whose break-even comes first: the yield gain, else the grain that is given up, else the area. */
export function leadOf({ lines }: Change, { gain }: ChangeAnswer): ChangeEntry {
  const line = gain ?? lines.find(({ quadrant, price }) => quadrant === "reduced returns" && isGrain(price));
  return line === undefined ? { of: "area" } : { of: "quantity", line };
}

export function answerView(change: Change, answer: ChangeAnswer, prices: PriceRange | null, lead: ChangeEntry, format: Format): AnswerView {
  const { net, netOfKnown, blank } = answer.net;
  const onArea = `on ${format.quantity(change.area)} ${format.areaUnit}`;
  const costs = netOfKnown.perYear.isNegative();
  return {
    main: mainOf(change, lead, format),
    lead: leadWords(change, lead, format),
    net: net.perArea === null ? "" : `${format.signed(net.perArea)} ${format.perArea}`,
    netUnit: net.perYear === null ? "" : `a year, ${format.amount(net.perYear)} ${onArea}`,
    open:
      blank.length === 0
        ? ""
        : `${namesOf(blank)} ${blank.length === 1 ? "is" : "are"} blank. The rest ${costs ? "costs" : "nets"} ` +
          `${format.amount(netOfKnown.perArea.abs())} per ${format.areaName} a year, ${format.amount(netOfKnown.perYear.abs())} ${onArea}.`,
    known: quadrants.flatMap((quadrant) =>
      answer.net.quadrants[quadrant].lines.map(({ line, perArea }) => ({
        words:
          quadrant === "added returns"
            ? line.item
            : `${quadrantWords[quadrant]}: ${line.item.charAt(0).toLowerCase()}${line.item.slice(1)}`,
        amount:
          perArea === null
            ? "open"
            : format.signed(quadrant === "added returns" || quadrant === "reduced costs" ? perArea : moneyPerArea(perArea.neg())),
        isLoss: quadrant === "added costs" || quadrant === "reduced returns",
      })),
    ),
    quadrants: quadrants.map((quadrant) => {
      const { lines, perArea, perYear } = answer.net.quadrants[quadrant];
      return {
        name: quadrant,
        cells: [format.money(perArea), format.money(perYear)],
        lines: lines.map(({ line, ...amount }) => ({
          name: line.item,
          source: line.source,
          detail: detail(line, format),
          cells: [format.money(amount.perArea), format.money(amount.perYear)],
        })),
      };
    }),
    facts: facts(change, answer, lead, format),
    ...stripView(change, answer, prices, lead, format),
    grid: gridView(answer, prices, format),
  };
}

/** What each quadrant does, as a grower says it. */
const quadrantWords: Readonly<Record<Exclude<(typeof quadrants)[number], "added returns">, string>> = {
  "reduced costs": "saved",
  "added costs": "cost",
  "reduced returns": "given up",
};

/**
 * What the change must bring, or may cost, where it is a figure of zero or more; changes count at full cost, what serves for
 * years by the year.
 */
function mainOf(change: Change, lead: ChangeEntry, format: Format): AnswerView["main"] {
  const solved = lead.of === "quantity" && !nothingEntered(change, lead.line) ? breakEven(change, lead) : null;
  if (lead.of !== "quantity" || solved?.found !== true || solved.value.isNegative()) return null;
  const item = `${lead.line.item.charAt(0).toLowerCase()}${lead.line.item.slice(1)}`;
  return solved.pays === "above"
    ? { figure: format.yieldNeeded(solved.value), unit: `${lead.line.unit} ${item} needed to pay, at full cost` }
    : { figure: format.yieldAtMost(solved.value), unit: `${lead.line.unit} ${item} at most, to pay at full cost` };
}

/** A form of which nothing is filled would else be said to pay, whatever it brings. */
const nothingEntered = ({ lines }: Change, besides: ChangeLine): boolean =>
  lines.every(
    (line) => line === besides || (line.quantity !== null && priceOf(line) !== null && (line.quantity.isZero() || priceOf(line)!.isZero())),
  );

const namesOf = (lines: readonly ChangeLine[]): string => lines.map(({ item }) => item).join(", ");
const priceNames = ["low", "expected", "high"] as const;

/** A price that is not entered has no row of its own. */
function gridView({ grid }: ChangeAnswer, prices: PriceRange | null, format: Format): GridView | null {
  if (grid === null || prices === null) return null;
  const { line, quantities, net } = grid;
  return {
    item: line.item,
    columns: priceNames.map((name) => `${format.quantity(quantities[name])} ${line.unit}`),
    rows: priceNames.flatMap((name) => {
      const price = prices[name];
      return price === null
        ? []
        : [
            {
              name: `${name}, ${format.money(price)}`,
              cells: priceNames.map((yieldName) => format.money(net[yieldName][name].net.perArea)),
            },
          ];
    }),
  };
}

function stripView(
  change: Change,
  { strip, net }: ChangeAnswer,
  prices: PriceRange | null,
  lead: ChangeEntry,
  format: Format,
): Pick<AnswerView, "strip" | "stripOf"> {
  if (strip === null || prices === null) return { strip: [], stripOf: "net change" };
  if (net.net.perArea !== null) {
    return {
      stripOf: "net change",
      strip: priceNames.map((name) => ({
        name: `${name} price`,
        cells: [format.money(strip[name].net.perArea), format.money(strip[name].net.perYear)],
      })),
    };
  }
  if (lead.of !== "quantity") return { strip: [], stripOf: "needed" };
  return {
    stripOf: "needed",
    strip: priceNames.map((name) => {
      const price = prices[name] ?? prices.expected;
      const at = withEntries(change, [{ entry: { of: "grain price" }, value: price }]);
      const solved = breakEven(at, { of: "quantity", line: at.lines[change.lines.indexOf(lead.line)]! });
      return {
        name: `${name} price, ${format.money(price)}`,
        cells: [solved.found ? (solved.pays === "above" ? format.yieldNeeded(solved.value) : format.yieldAtMost(solved.value)) : "–"],
      };
    }),
  };
}

function detail(line: ChangeLine, format: Format): string {
  const price = priceOf(line);
  const quantity = line.quantity === null ? "not entered" : `${format.quantity(line.quantity)} ${line.unit}`;
  const kept = isCapital(line)
    ? `, over ${format.quantity(line.yearsKept)} ` +
      `years${line.salvage?.isZero() === false ? `, salvage value ${format.amount(line.salvage)}` : ""}`
    : "";
  return `${quantity} at ${format.amount(price)}${isGrain(line.price) ? " net" : ""}, ${line.basis}${kept}`;
}

/** What an entry must be for the change to pay, in a sentence. */
export function leadWords(change: Change, entry: ChangeEntry, format: Format): string {
  if ("line" in entry && nothingEntered(change, entry.line)) {
    return "Enter what it costs or saves, and what it takes to pay shows here.";
  }
  const answer = breakEven(change, entry);
  const subject = entry.of === "area" ? "area" : entry.of === "grain price" ? "price" : "line" in entry ? entry.line.item : "";
  if (!answer.found) {
    switch (answer.why) {
      case "another entry is blank":
        return `What it takes to pay is not known yet. Still blank: ${namesOf(blankBeside(change, entry))}.`;
      case "makes no difference":
        return entry.of === "area"
          ? "More acres make no difference: nothing here is paid once for all of them."
          : `${subject} makes no difference to the answer.`;
      case "pays at any value":
        return `It pays at any ${subject}.`;
      case "pays at no value":
        return `It pays at no ${subject}.`;
    }
  }
  return neededWords(change, entry, answer, subject, format);
}

const blankBeside = ({ lines }: Change, entry: ChangeEntry): readonly ChangeLine[] =>
  lines.filter((line) => (line.quantity === null || priceOf(line) === null) && !("line" in entry && entry.line === line));

function neededWords(
  change: Change,
  entry: ChangeEntry,
  { value, pays }: Extract<BreakEven, { found: true }>,
  subject: string,
  format: Format,
): string {
  const above = pays === "above";
  if (entry.of === "area") return `It pays on ${above ? "more" : "less"} than ${format.quantity(value)} ${format.areaUnit} a year.`;
  if (entry.of === "grain price")
    return value.isNegative()
      ? `It pays at ${above ? "any price" : "no price"} of grain.`
      : `It pays at a grain price ${priceWords({ value, pays }, change, null, format)}.`;
  if (entry.of === "price")
    return `It pays with ${subject} at ${above ? `more than ${format.priceNeeded(value)}` : `less than ${format.priceAtMost(value)}`}.`;
  if (entry.of !== "quantity") return `It pays with ${entry.of} ${above ? "above" : "below"} ${format.quantity(value)}.`;
  const { unit } = entry.line;
  if (value.isNegative())
    return above
      ? `It pays even with a ${subject.toLowerCase()} of nothing, and could stand a loss of ${format.yieldAtMost(value.neg())} ${unit}.`
      : `It does not pay even with ${subject.toLowerCase()} of nothing.`;
  return above
    ? `${subject} needed to pay: ${format.yieldNeeded(value)} ${unit}.`
    : `It pays as long as ${subject.toLowerCase()} is no more than ${format.yieldAtMost(value)} ${unit}.`;
}

/** "above 1.69 USD per bu": of grain where a line sells it, else of `gain`. */
function priceWords(
  { value, pays }: Pick<Extract<BreakEven, { found: true }>, "value" | "pays">,
  { lines }: Change,
  gain: ChangeLine | null,
  { priceNeeded, priceAtMost, currency }: Format,
): string {
  const priced = lines.find(({ price }) => isGrain(price)) ?? gain;
  return `${pays} ${pays === "above" ? priceNeeded(value) : priceAtMost(value)} ${priced === null ? currency : perUnitOf(priced, currency)}`;
}

function facts(change: Change, { breakEven: solved, payback, gain }: ChangeAnswer, lead: ChangeEntry, format: Format): AnswerView["facts"] {
  const { price, area } = solved;
  return [
    ...(lead.of !== "grain price" && price?.found === true && !price.value.isNegative()
      ? [{ name: "Pays at a price", says: priceWords(price, change, gain, format) }]
      : []),
    ...(lead.of !== "area" && area.found
      ? [{ name: "Pays on an area", says: `${area.pays} ${format.quantity(area.value)} ${format.areaUnit}` }]
      : []),
    ...(payback === null
      ? []
      : [
          {
            name: "Payback",
            says:
              `${format.quantity(payback.simple)} years; ` +
              `${payback.withInterest === null ? "never with interest" : `${format.quantity(payback.withInterest)} with interest`}`,
          },
        ]),
    ...(change.lines.some(isCapital)
      ? [{ name: "Interest on capital", says: `${format.quantity(change.rate.times(hundred))}% a year` }]
      : []),
  ];
}
