import { describe, expect, it } from "vitest";
import { check, checksPage } from "../../../tests/published/checks";
import { sources } from "../../../tests/published/sources";
import { Decimal } from "./decimal";
import { conversion, measureNamed, measureNames, namedMeasure } from "./measure";

/** How many of the second unit are one of the first. */
function per(from: string, to: string, density: string | null = null): Decimal | null {
  return conversion(measureNamed(from)!, measureNamed(to)!, density === null ? null : new Decimal(density));
}

describe("conversion", () => {
  /**
   * Tables of United States and imperial units beside the metric ones, in the digits printed: "Appendices", part 5 of a
   * text in a Hong Kong collection whose title its page does not show (https://hkintexts.histsyn.com/page/1733983).
   */
  it.each([
    ["gal", "L", "3.78541"],
    ["qt", "L", "0.946353"],
    ["pt", "L", "0.473176"],
    ["fl oz", "mL", "29.5735"],
    ["imp gal", "L", "4.54609"],
    ["gal", "imp gal", "0.832674"],
    ["lb", "kg", "0.45359237"],
    ["oz", "g", "28.3495"],
    ["kg", "lb", "2.20462"],
    ["t", "kg", "1000"],
  ])("makes one %s %s of %s", (from, to, printed) => {
    check(per(from, to), printed, sources["Hong Kong appendices"], conversion);
  });

  it.each([
    ["gal", "qt", "4"],
    ["qt", "pt", "2"],
    ["gal", "fl oz", "128"],
    ["lb", "oz", "16"],
    ["cwt", "lb", "100"],
    ["ton", "lb", "2000"],
    ["kg", "g", "1000"],
    ["L", "mL", "1000"],
    ["hL", "L", "100"],
    ["thousand seeds", "seeds", "1000"],
  ])("counts in one %s so many %s: %s", (from, to, count) => {
    expect(per(from, to)!.toFixed(25)).toBe(new Decimal(count).toFixed(25));
  });

  it("goes between weight and volume by the density alone", () => {
    // Water: a litre is a kilogram.
    expect(
      [per("L", "kg", "1"), per("kg", "L", "1"), per("L", "kg", "1.28"), per("kg", "L", "0.5"), per("L", "g", "0.5")].map(String),
    ).toEqual(["1", "1", "1.28", "2", "500"]);
    expect([
      per("L", "kg"),
      per("L", "kg", "0"),
      per("kg", "L"),
      per("seeds", "kg", "1"),
      per("kg", "seeds", "1"),
      per("L", "seeds", "1"),
    ]).toEqual([null, null, null, null, null, null]);
  });

  it("takes a pack that has only a name for itself and nothing else", () => {
    expect(conversion(namedMeasure("load"), namedMeasure("load"), null)!.toString()).toBe("1");
    expect(namedMeasure("load").factor.toString()).toBe("1");
    expect(conversion(namedMeasure("load"), namedMeasure("jug"), null)).toBeNull();
    expect(conversion(namedMeasure("lb"), measureNamed("lb")!, null)).toBeNull();
  });
});

describe("measureNamed", () => {
  it.each(measureNames.map((name) => [name]))("knows %s in any case", (name) => {
    expect(measureNamed(` ${name.toUpperCase()} `)!.name).toBe(name);
  });
  it.each([
    ["lb", "lbs, pound, pounds, #"],
    ["oz", "ounce, ounces, dry oz"],
    ["cwt", "hundredweight"],
    ["ton", "tons, short ton, short tons"],
    ["t", "tonne, tonnes, metric ton, metric tons, MT"],
    ["kg", "kgs, kilogram, kilograms, kilo, kilos"],
    ["g", "gram, grams"],
    ["gal", "gals, gallon, gallons, US gal"],
    ["qt", "qts, quart, quarts"],
    ["pt", "pts, pint, pints"],
    ["fl oz", "floz, fluid oz, fluid ounce, fluid ounces, fl. oz, fl. oz."],
    ["L", "l, litre, litres, liter, liters, lt"],
    ["mL", "millilitre, millilitres, milliliter, milliliters, cc"],
    ["hL", "hectolitre, hectolitres, hectoliter, hectoliters"],
    ["imp gal", "imperial gal, imperial gallon, imperial  gallons"],
    ["seeds", "seed, kernel, kernels"],
    ["thousand seeds", "1000 seeds, k seeds, thousand"],
    ["each", "ea, piece, pieces, pc, pcs, unit, units, count"],
  ])("takes for %s: %s", (name, spellings) => {
    expect(spellings.split(", ").filter((spelling) => measureNamed(spelling)?.name !== name)).toEqual([]);
  });
  it("does not guess", () => {
    expect([measureNamed("bag"), measureNamed("")]).toEqual([null, null]);
  });
});

checksPage("Units of measure");
