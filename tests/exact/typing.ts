/** How people type: the same number, date, word or name in one of many ways that all mean it. */
import type { Decimal } from "../../src/core/numbers/decimal";
import type { IsoDate } from "../../src/core/row";
import type { Cell, DateSystem } from "../../src/workbook/cell";

/** Numbers that look random and are the same for one seed: a failing workbook can be typed again. */
export class Habits {
  private state: number;
  constructor(
    seed: number,
    readonly decimalComma: boolean,
    readonly dateSystem: DateSystem,
  ) {
    this.state = (seed % 2147483646) + 1;
  }

  /** One of the ways, any as likely as another. */
  pick<Way>(...ways: readonly [Way, ...Way[]]): Way {
    return ways[this.below(ways.length)]!;
  }

  /** A whole number from 0 to below `count` (the minimal standard generator of Park and Miller, 1988, from memory). */
  below(count: number): number {
    this.state = (this.state * 48271) % 2147483647;
    return this.state % count;
  }

  shuffled<Each>(all: readonly Each[]): readonly Each[] {
    return all
      .map((each) => ({ each, at: this.below(1_000_000) }))
      .sort((a, b) => a.at - b.at)
      .map(({ each }) => each);
  }

  /** A number cell, or text with groups and blanks. */
  number(value: Decimal | null): Cell {
    return value === null
      ? this.blank()
      : this.pick<() => Cell>(
          () => Number(value.toString()),
          () => Number(value.toString()),
          () => this.text(value),
          () => ` ${this.text(value)}  `,
        )();
  }

  /** The same with a currency sign or code, and brackets for a minus. */
  money(value: Decimal | null): Cell {
    if (value === null) return this.blank();
    const [size, minus] = [this.text(value.abs()), value.isNegative() && !value.isZero()];
    const marked = this.pick(`$${size}`, `$ ${size}`, `${size} USD`, size);
    return this.pick<Cell>(Number(value.toString()), minus ? `(${marked})` : marked, minus ? `-${marked}` : marked);
  }

  /** A fraction: as such, in percent, with the sign. */
  share(value: Decimal | null): Cell {
    if (value === null) return this.blank();
    const percent = value.times("100");
    const ways: Cell[] = [`${this.text(percent)}%`, `${this.text(percent)} %`, Number(value.toString())];
    if (percent.gt("1")) ways.push(Number(percent.toString()));
    return ways[this.below(ways.length)]!;
  }

  /** A rate of interest, for which a bare number between 0.4 and 1 says too little. */
  rate(value: Decimal): Cell {
    const percent = value.times("100");
    const ways: Cell[] = [`${this.text(percent)}%`];
    if (value.lte("0.4")) ways.push(Number(value.toString()));
    if (percent.gt("1")) ways.push(Number(percent.toString()));
    return ways[this.below(ways.length)]!;
  }

  date(day: IsoDate | null): Cell {
    if (day === null) return this.blank();
    const [year, month, inMonth] = day.split("-") as [string, string, string];
    const serial = Date.parse(day) / 86_400_000 + (this.dateSystem === "1904" ? 24107 : 25569);
    const named = new Date(day).toLocaleString("en-US", { month: this.pick("short", "long"), timeZone: "UTC" });
    return this.pick<Cell>(
      serial,
      serial,
      day,
      `${inMonth}.${month}.${year}`,
      `${named} ${Number(inMonth)}, ${year}`,
      `${Number(inMonth)} ${named} ${year}`,
    );
  }

  /** A name or a word of a list, in other capitals and with spaces around it. */
  word(text: string | null): Cell {
    return text === null ? this.blank() : this.pick(text, text, text.toUpperCase(), text.toLowerCase(), ` ${text} `);
  }

  blank(): Cell {
    return this.pick("", "", "", "  ");
  }

  private text(value: Decimal): string {
    const [whole = "0", places] = value.abs().toFixed().split(".");
    const group = this.pick("", "", this.decimalComma ? "." : ",", " ");
    const grouped = whole.replace(/\B(?=(\d{3})+$)/g, group);
    const written = places === undefined ? grouped : `${grouped}${this.decimalComma ? "," : "."}${places}`;
    return value.isNegative() && !value.isZero() ? `-${written}` : written;
  }
}
