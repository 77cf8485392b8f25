/** What the rough lines of the plan come to in each field. */
import { sum, type Decimal } from "../numbers/decimal";
import { isOver } from "../over";
import type { FieldFacts } from "../fieldFacts";
import { fullKinds, type Kind } from "../kinds";
import { landWeights } from "../land";
import type { DaysOut } from "../operatingInterest";
import type { BudgetLine } from "../season";
import { splitToTheCent } from "../numbers/split";
import { money } from "../numbers/units";
import { nearestLines } from "./nearestLines";
import { partsByMoney, type FieldLine, type LinePart } from "./fieldLine";

/** By field and kind. */
export type FieldLines = ReadonlyMap<string, ReadonlyMap<Kind, FieldLine>>;

/** Kinds that are no cash. */
const isNoCash: ReadonlySet<Kind> = new Set<Kind>(fullKinds);

/**
 * The lines that count in each field: of a kind those of the field itself, else those of its crop, else those of all fields.
 *
 * A line is shared by acres of land over all the fields that it names, an acre under two crops half to each; a whole amount to
 * the cent. The part of a field that has a line of its own counts nowhere.
 */
export function fieldLines(lines: readonly BudgetLine[], facts: readonly FieldFacts[], days: DaysOut): FieldLines {
  const byField = new Map<string, Map<Kind, FieldLine>>();
  for (const [kind, ofKind] of grouped(lines)) {
    const shares = new Map(ofKind.map((line) => [line, sharesOf(line, facts)]));
    for (const each of facts) {
      const own = nearestLines(ofKind, each.field);
      if (own.length === 0) continue;
      const lineHere = inField(kind, own, (line) => shares.get(line)!.get(each)!, each, days);
      const others = byField.get(each.field.name);
      if (others === undefined) byField.set(each.field.name, new Map([[kind, lineHere]]));
      else others.set(kind, lineHere);
    }
  }
  return byField;
}

function grouped(lines: readonly BudgetLine[]): ReadonlyMap<Kind, readonly BudgetLine[]> {
  const byKind = new Map<Kind, BudgetLine[]>();
  for (const line of lines) byKind.set(line.kind, [...(byKind.get(line.kind) ?? []), line]);
  return byKind;
}

/** What falls to each of the fields that a line names. */
function sharesOf({ amount, basis, ...line }: BudgetLine, facts: readonly FieldFacts[]): ReadonlyMap<FieldFacts, Decimal> {
  const named = facts.filter(({ field }) => isOver(line.over, field));
  if (named.length === 0) return new Map();
  const land = landWeights(named.map(({ field }) => field));
  const shares: readonly Decimal[] = basis === "whole" ? splitToTheCent(money(amount), land) : land.map((acres) => amount.times(acres));
  return new Map(named.map((each, index) => [each, shares[index]!]));
}

function inField(
  kind: Kind,
  lines: readonly BudgetLine[],
  shareOf: (line: BudgetLine) => Decimal,
  { field }: FieldFacts,
  days: DaysOut,
): FieldLine {
  const parts = lines.map((line): LinePart => {
    const whole = shareOf(line);
    return { whole, ours: field.tenure === "crop share" ? whole.times(line.operatorCostShare) : whole, paidOn: line.paidOn };
  });
  return {
    kind,
    parts,
    ours: sum(parts.map(({ ours }) => ours)),
    whole: sum(parts.map(({ whole }) => whole)),
    days: sum(partsByMoney(parts).map(({ fraction, paidOn }) => fraction.times(days.of(kind, paidOn, field)))),
    // Nothing more comes only where every line says so.
    allIn: lines.every(({ allIn }) => allIn),
    cash: !isNoCash.has(kind),
    entries: lines.map(({ source }) => source),
  };
}
