/** The parts of a field as its counts name them: whose acres they are, and which of the counts still say anything of them. */
import { larger, sum, zero, type Decimal } from "../numbers/decimal";
import { area as areaOf, type Area } from "../numbers/units";
import type { IsoDate } from "../row";
import type { StandCount } from "./standCount";

/** A part with its acres; the last of a field may be what lies in no part that has a name. */
export type FieldPart = {
  /** `null`: the field, or what of it lies outside of its parts. */
  readonly name: string | null;
  /** Above zero; the parts of a field add up to its own. */
  readonly area: Area;
  /** When it was planted, or planted again; `null`: as the field. */
  readonly planted: IsoDate | null;
  /** All counts of the part since it was planted; none: nobody counted there. */
  readonly counts: readonly StandCount[];
};

export type FieldParts = {
  readonly parts: readonly FieldPart[];
  /** Counts of a stand that is gone: from before the field, or the part, was planted. */
  readonly history: readonly StandCount[];
  /** Counts that lie in no acre: they name no part, and the parts that have a name take up all of the field. */
  readonly homeless: readonly StandCount[];
};

/** What the newest of the counts that say it say; `null` where none does. */
export function newest<Value>(counts: readonly StandCount[], said: (count: StandCount) => Value | null): Value | null {
  let found: { readonly date: IsoDate; readonly value: Value } | null = null;
  for (const count of counts) {
    const value = said(count);
    if (value !== null && (found === null || count.date > found.date)) found = { date: count.date, value };
  }
  return found?.value ?? null;
}

/** The counts of a field by the name of their part; those without acres anywhere go with the ones that name none. */
export function byPart(counts: readonly StandCount[]): ReadonlyMap<string | null, readonly StandCount[]> {
  const named = new Map<string | null, StandCount[]>();
  for (const count of counts) {
    const name = count.part?.name ?? null;
    const there = named.get(name);
    if (there === undefined) named.set(name, [count]);
    else there.push(count);
  }
  const without = [...named].filter(([name, of]) => name !== null && newest(of, ({ part }) => part?.area ?? null) === null);
  if (without.length === 0) return named;
  for (const [name] of without) named.delete(name);
  named.set(null, [...(named.get(null) ?? []), ...without.flatMap(([, of]) => of)]);
  return named;
}

/**
 * A field by its parts. Each part that has a name and was counted since it was planted has the acres that its newest entry says; the
 * acres left over are the rest. Where the parts say more acres than there are they weigh by what they say, and there is no rest.
 */
export function fieldParts(field: { readonly area: Area; readonly planted: IsoDate | null }, counts: readonly StandCount[]): FieldParts {
  const [all, history, now] = [byPart(counts), [] as StandCount[], [] as (FieldPart & { readonly said: Decimal })[]];
  const since = (of: readonly StandCount[], planted: IsoDate | null) => {
    const isGone = ({ date }: StandCount) => planted !== null && date < planted;
    history.push(...of.filter(isGone));
    return of.filter((count) => !isGone(count));
  };
  for (const [name, of] of all) {
    if (name === null) continue;
    const planted = newest(of, ({ part }) => part?.planted ?? null);
    const standing = since(of, planted ?? field.planted);
    const said = newest(of, ({ part }) => part?.area ?? null)!;
    if (standing.length > 0) now.push({ name, area: said, said, planted, counts: standing });
  }
  const others = since(all.get(null) ?? [], field.planted);
  const said: Decimal = sum(now.map((part) => part.said));
  const rest = larger(field.area.minus(said), zero);
  const named = now.map(({ said: own, ...part }) =>
    said.gt(field.area) ? { ...part, area: areaOf(own.times(field.area).div(said)) } : part,
  );
  return {
    parts: rest.isZero() ? named : [...named, { name: null, area: areaOf(rest), planted: null, counts: others }],
    history,
    homeless: rest.isZero() ? others : [],
  };
}
