/**
 * A running total of many rows, exact until it is asked for.
 *
 * Adding decimals one by one makes a new decimal for each row, and a season may have a hundred thousand rows. A tally
 * adds the digits themselves, as decimal.js keeps them (documented there: `d` are whole numbers below ten million, the
 * first of them worth ten million to the power ⌊e ÷ 7⌋, and `s` is the sign). Every number in here is a whole number
 * below 2^53, so nothing is lost on the way, and the total is rounded once, to the digits of our decimals.
 */
import { decimalOfWords, one, zero, type Decimal } from "./decimal";

const base = 10_000_000;
const digitsInWord = 7;
/** So many additions keep every word below 2^53 before its carry is passed on: each adds less than 2^25 a few times. */
const additionsBeforeCarry = 4_000_000;

/** The digits of a decimal, and of each word of ours. */
type Words = Decimal["d"];
type Place = Decimal["e"];

export class Tally {
  /** Words from the least to the greatest; the first is worth ten million to the power `lowest`. */
  readonly #words: Words = [];
  #lowest: Place = 0;
  #additions = 0;

  /** Adds a value. @throws RangeError on one that is not finite. */
  add(value: Decimal): this {
    return this.#add(value, value.s);
  }

  /** Takes a value off. */
  subtract(value: Decimal): this {
    return this.#add(value, -value.s);
  }

  /** Adds a product, which is never rounded on its own. */
  addProduct(a: Decimal, b: Decimal, c: Decimal = one): this {
    return this.#addProduct(a, b, c, a.s * b.s * c.s);
  }

  /** Takes a product off. */
  subtractProduct(a: Decimal, b: Decimal): this {
    return this.#addProduct(a, b, one, -a.s * b.s);
  }

  /** The total, rounded once; zero where nothing was added. */
  total(): Decimal {
    this.#carry();
    const words = this.#words;
    let top = words.length - 1;
    while (top >= 0 && words[top] === 0) top -= 1;
    if (top < 0) return zero;
    // After carrying, all words but the greatest are positive; a total below zero is written by its distance from zero.
    const isNegative = words[top]! < 0;
    const magnitude = isNegative ? negated(words, top) : words;
    while (magnitude[top] === 0) top -= 1;
    let bottom = 0;
    while (magnitude[bottom] === 0) bottom += 1;
    return decimalOfWords(isNegative ? -1 : 1, magnitude.slice(bottom, top + 1).reverse(), this.#lowest + top);
  }

  #add(value: Decimal, sign: Place): this {
    // decimal.js has no digits for NaN and Infinity, whatever its types say.
    if (!value.isFinite()) throw new RangeError("a tally adds finite values only");
    const { d } = value;
    if (d[0] === 0) return this;
    const greatest = power(value);
    this.#reach(greatest - d.length + 1, greatest);
    const [words, first] = [this.#words, greatest - this.#lowest];
    for (let i = 0; i < d.length; i += 1) words[first - i]! += sign * d[i]!;
    return this.#counted(1);
  }

  #addProduct(a: Decimal, b: Decimal, c: Decimal, sign: Place): this {
    if (!a.isFinite() || !b.isFinite() || !c.isFinite()) throw new RangeError("a tally adds finite values only");
    const [d, f, g] = [a.d, b.d, c.d];
    if (d[0] === 0 || f[0] === 0 || g[0] === 0) return this;
    const greatest = power(a) + power(b) + power(c);
    this.#reach(greatest - (d.length + f.length + g.length) + 3, greatest + 2);
    const first = greatest - this.#lowest;
    for (let i = 0; i < d.length; i += 1) {
      for (let j = 0; j < f.length; j += 1) {
        const product = d[i]! * f[j]!;
        if (c === one) this.#put(first - i - j, product, sign);
        else this.#putTimes(first - i - j, product, g, sign);
      }
    }
    return this.#counted(d.length * f.length * g.length);
  }

  #counted(additions: Place): this {
    this.#additions += additions;
    if (this.#additions >= additionsBeforeCarry) this.#carry();
    return this;
  }

  /** Adds a product of two words at a place and the one above. */
  #put(at: Place, product: Place, sign: Place): void {
    const high = quotient(product);
    this.#words[at]! += sign * (product - high * base);
    if (high !== 0) this.#words[at + 1]! += sign * high;
  }

  /** The same of a product of two words times the words of a third value. */
  #putTimes(at: Place, product: Place, words: Words, sign: Place): void {
    const high = quotient(product);
    const low = product - high * base;
    for (let k = 0; k < words.length; k += 1) {
      this.#put(at - k, low * words[k]!, sign);
      if (high !== 0) this.#put(at - k + 1, high * words[k]!, sign);
    }
  }

  /** Makes room for the words from one power to another. */
  #reach(from: Place, to: Place): void {
    const words = this.#words;
    if (words.length === 0) this.#lowest = from;
    for (; this.#lowest > from; this.#lowest -= 1) words.unshift(0);
    while (words.length <= to - this.#lowest) words.push(0);
  }

  /** Brings every word but the greatest between zero and the base, and the greatest nearer to zero than the base. */
  #carry(): void {
    const words = this.#words;
    this.#additions = 0;
    let carried = 0;
    for (let at = 0; at < words.length; at += 1) {
      const word = words[at]! + carried;
      const isGreatest = at === words.length - 1;
      const rest = isGreatest && word < base && word > -base ? word : ((word % base) + base) % base;
      words[at] = rest;
      carried = (word - rest) / base;
      if (isGreatest && carried !== 0) words.push(0);
    }
  }
}

/** How often the base goes into a product of two words: below ten million, where dividing and cutting is exact. */
const quotient = (product: Place): Place => (product / base) | 0;

/** The sum of all, rounded once. */
export function tallied(values: readonly Decimal[]): Decimal {
  const tally = new Tally();
  for (const value of values) tally.add(value);
  return tally.total();
}

/**
 * The mean of some values, each with its weight. Values that are all alike are their own mean to the last digit: a price
 * that just pays a cost must not seem to fall short of it by a rounding.
 *
 * @returns zero where the weights add up to nothing
 */
export function weightedMean(values: readonly Decimal[], weights: readonly Decimal[]): Decimal {
  const whole = tallied(weights);
  const [first] = values;
  if (first === undefined || whole.isZero()) return zero;
  if (values.every((value) => value.eq(first))) return first;
  const tally = new Tally();
  values.forEach((value, index) => tally.addProduct(value, weights[index]!));
  return tally.total().div(whole);
}

/** The power of ten million that the first word of a decimal is worth: ⌊e ÷ 7⌋. */
const power = ({ e }: Decimal): Place => (e - (((e % digitsInWord) + digitsInWord) % digitsInWord)) / digitsInWord;

/** The words of a total below zero, counted from zero. */
function negated(words: Words, top: Place): Words {
  let borrowed = 0;
  return words.slice(0, top + 1).map((word) => {
    const value = -word - borrowed;
    borrowed = value < 0 ? 1 : 0;
    return value + borrowed * base;
  });
}
