import type { Decimal } from "./decimal";

/** More than a season asks of any of them; beyond it everything is forgotten and begins again. */
const most = 2_000;

/**
 * A function that gives its last answers again. For one of few decimals that takes long, such as a power or a cosine, and is asked
 * the same at each reading of a workbook.
 */
export function remembered<Given extends readonly Decimal[], Value>(work: (...given: Given) => Value): (...given: Given) => Value {
  const known = new Map<string, { readonly value: Value }>();
  return (...given) => {
    const key = given.join(" ");
    let found = known.get(key);
    if (found === undefined) {
      if (known.size >= most) known.clear();
      known.set(key, (found = { value: work(...given) }));
    }
    return found.value;
  };
}
