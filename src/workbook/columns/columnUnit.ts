/** What the numbers of a column are counted in, said once with the column. */

/**
 * `across` is short lengths, inches or centimetres; `along` long ones, feet or metres. `yield` is the crop's own unit per area, and
 * `price` money per unit of the crop.
 */
export type ColumnUnit =
  | "area"
  | "yield"
  | "price"
  | "money"
  | "money per area"
  | "money per hour"
  | "across"
  | "along"
  | "speed"
  | "power"
  | "fuel volume"
  | "hours"
  | "years"
  | "passes"
  | "plants"
  | "plants per area"
  | "seeds per area"
  | "rate of interest";

type Words = readonly string[];
type OfUnit = {
  /** What may stand behind the number in a cell, in plain spelling, with acres and with hectares. */
  readonly typed?: readonly [acres: Words, hectares: Words];
  /** What a heading may name, and what it is read in; `under`: what stands below the stroke. */
  readonly headed?: {
    readonly over: "area" | "crop" | "money" | "length" | "speed" | "power" | "volume" | "time" | "count";
    readonly under?: "crop";
    readonly in?: readonly [acres: string, hectares: string];
  };
};
const both = (...words: Words) => [words, words] as const;

export const columnUnits: Readonly<Record<ColumnUnit, OfUnit>> = {
  area: {
    typed: [
      ["ac", "acre", "acres", "ac."],
      ["ha", "hectare", "hectares"],
    ],
    headed: { over: "area" },
  },
  yield: { headed: { over: "crop" } },
  price: { headed: { over: "money", under: "crop" } },
  money: { headed: { over: "money" } },
  "money per area": {
    typed: [
      ["/ac", "/acre", "perac", "peracre", "anacre", "ac", "acre"],
      ["/ha", "/hectare", "perha", "perhectare", "ahectare"],
    ],
    headed: { over: "money" },
  },
  "money per hour": { typed: both("/h", "/hr", "/hour", "perhour", "anhour"), headed: { over: "money" } },
  across: {
    typed: [
      ['"', "”", "″", "''", "in", "in.", "inch", "inches"],
      ["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
    ],
    headed: { over: "length", in: ["inches", "centimetres"] },
  },
  along: {
    typed: [
      ["'", "’", "′", "ft", "ft.", "foot", "feet"],
      ["m", "metre", "metres", "meter", "meters"],
    ],
    headed: { over: "length", in: ["feet", "metres"] },
  },
  speed: {
    typed: [
      ["mph", "mi/h", "milesperhour"],
      ["km/h", "kph", "kmh"],
    ],
    headed: { over: "speed", in: ["miles an hour", "kilometres an hour"] },
  },
  power: { typed: [["hp", "ptohp"], ["kw"]], headed: { over: "power", in: ["horsepower", "kilowatts"] } },
  "fuel volume": { headed: { over: "volume", in: ["gallons", "litres"] } },
  hours: { typed: both("h", "hr", "hrs", "hr.", "hour", "hours"), headed: { over: "time", in: ["hours", "hours"] } },
  years: { typed: both("y", "yr", "yrs", "year", "years") },
  passes: { typed: both("x", "×", "pass", "passes", "time", "times") },
  plants: { typed: both("plant", "plants") },
  "plants per area": {
    typed: both("plants", "plants/ac", "plants/acre", "plantsperacre", "/ac", "/ha", "plants/ha"),
    headed: { over: "count" },
  },
  "seeds per area": { typed: both("seeds", "seeds/ac", "seeds/acre", "seedsperacre", "/ac", "/ha", "seeds/ha"), headed: { over: "count" } },
  "rate of interest": {},
};
