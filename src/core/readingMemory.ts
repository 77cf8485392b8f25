/** What was worked out last under a name, and what it was worked out from. */
type Last<Value> = { readonly given: readonly unknown[]; readonly value: Value };

/**
 * What one reading of a workbook keeps for the next: after an edit, what rests on nothing that was touched is not read again. The
 * figures are those of a reading that knows nothing; only the time differs. A reading that keeps nothing has one of its own.
 */
export class ReadingMemory {
  private readonly known = new Map<string, Last<unknown>>();

  /**
   * What `work` makes of what is given, or what it made last under this name where it was given the very same things.
   *
   * @param work is told of the last time, to take over what it can of it
   */
  of<Value>(name: string, given: readonly unknown[], work: (last: Last<Value> | null) => Value): Value {
    const last = (this.known.get(name) ?? null) as Last<Value> | null;
    if (last !== null && areTheSame(last.given, given)) return last.value;
    const value = work(last);
    this.known.set(name, { given, value });
    return value;
  }

  /** Something plain as it was last under this name, where it says the same, so that what rests on it is seen to be untouched. */
  as<Value>(name: string, value: Value): Value {
    const last = this.known.get(name) as Last<Value> | undefined;
    if (last !== undefined && saysTheSame(last.value, value)) return last.value;
    this.known.set(name, { given: [], value });
    return value;
  }
}

/** Whether each is the very same thing as its counterpart, from one place on. */
export const areTheSame = (some: readonly unknown[], others: readonly unknown[], from = 0): boolean =>
  some.length === others.length && some.every((each, index) => index < from || each === others[index]);

/** Whether two plain values say the same: texts, numbers, lists, sets, maps and objects of them. */
export function saysTheSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a)) return Array.isArray(b) && a.length === b.length && a.every((each, index) => saysTheSame(each, b[index]));
  if (a instanceof Set) return b instanceof Set && a.size === b.size && [...a].every((each) => b.has(each));
  if (a instanceof Map)
    return b instanceof Map && a.size === b.size && [...a].every(([key, value]) => b.has(key) && saysTheSame(value, b.get(key)));
  const [of, others] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = Object.keys(of);
  return (
    Object.getPrototypeOf(a) === Object.getPrototypeOf(b) &&
    keys.length === Object.keys(others).length &&
    keys.every((key) => key in others && saysTheSame(of[key], others[key]))
  );
}
