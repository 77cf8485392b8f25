/** Fields in parts, typed into a workbook, against exact fractions: mean stand and projected yield of the whole and of each part. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { reportJson } from "../../src/workbook/reportJson";
import { seasonReport } from "../../src/workbook/report";
import { contentFromText } from "../support/tableFromText";
import { percentAt } from "./exactPlanting";
import { agree, divided, fraction, minus, plus, read, times, total, type Fraction } from "./fraction";

type Typed = {
  readonly part: string;
  readonly acres: string;
  readonly plants: readonly (readonly [plants: number, weak: number])[];
  readonly planted: string;
};

const field = { acres: "97.3", goal: "207", target: "31500", planted: "2031-05-07", planned: "2031-04-28", width: "30", length: "17.42" };
const workbook = (parts: readonly Typed[]) => `
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Fields
| Field | Crop | Acres | Yield goal | Planned planting date | Planted date | Target stand | Row width |
| Mill | Corn | ${field.acres} | ${field.goal} | ${field.planned} | ${field.planted} | ${field.target} | ${field.width} |
Stand counts
| Field | Date | Length | Plants | Weak plants | Part | Part acres | Part planted |
${parts.flatMap(({ part, acres, plants, planted }) => plants.map(([living, weak]) => `| Mill | 2031-06-12 | ${field.length} | ${living} | ${weak} | ${part} | ${acres} | ${planted} |`)).join("\n")}
`;

/** Plants an acre: 43,560 square feet of 12 × 12 square inches, on width times length. */
const standOf = ([plants, weak]: readonly [number, number]): Fraction =>
  divided(
    times(plus(fraction(BigInt(plants)), fraction(BigInt(weak), 2n)), fraction(43560n * 12n)),
    times(read(field.width), read(field.length)),
  );

function exact(parts: readonly Typed[]) {
  const named = parts.filter(({ part, plants }) => part !== "" && plants.length > 0);
  const rest = minus(read(field.acres), total(named.map(({ acres }) => read(acres))));
  const others = parts.filter(({ part }) => part === "").flatMap(({ plants }) => plants);
  const planned = percentAt(field.planned, read(field.target))!;
  const all = [...named.map((part) => ({ ...part, land: read(part.acres) })), { plants: others, planted: "", land: rest }].map(
    ({ plants, planted, land }) => {
      const mean = plants.length === 0 ? read(field.target) : divided(total(plants.map(standOf)), fraction(BigInt(plants.length)));
      const percent = percentAt(planted === "" ? field.planted : planted, mean);
      const outlook = percent === null ? null : divided(times(read(field.goal), percent), planned);
      return { land, mean, isCounted: plants.length > 0, outlook };
    },
  );
  const counted = all.filter(({ isCounted }) => isCounted);
  const byAcres = (of: readonly { readonly land: Fraction; readonly value: Fraction }[]) =>
    divided(total(of.map(({ land, value }) => times(land, value))), total(of.map(({ land }) => land)));
  return {
    all,
    mean: byAcres(counted.map(({ land, mean }) => ({ land, value: mean }))),
    outlook: all.some(({ outlook }) => outlook === null) ? null : byAcres(all.map(({ land, outlook }) => ({ land, value: outlook! }))),
  };
}

const spots = fc.array(fc.tuple(fc.integer({ min: 8, max: 38 }), fc.integer({ min: 0, max: 3 })), { maxLength: 4 });
const part = (name: string) =>
  fc.record({
    part: fc.constant(name),
    acres:
      name === "" ? fc.constant("") : fc.integer({ min: 1, max: 480 }).map((tenths) => new Decimal(String(tenths)).div("10").toString()),
    plants: spots,
    planted: name === "" ? fc.constant("") : fc.constantFrom("", "2031-05-19", "2031-06-03"),
  });

it("a field in parts is what exact fractions give, part by part and as a whole", { timeout: 900_000 }, () => {
  let refused = 0;
  fc.assert(
    fc.property(part("knoll"), part("low ground"), part(""), (...parts) => {
      fc.pre(parts.some(({ plants }) => plants.length > 0));
      const [stand] = reportJson(seasonReport(contentFromText(workbook(parts)))).stands;
      const { all, mean, outlook } = exact(parts);
      expect(agree(new Decimal(stand!.plantsPerAcre!), mean)).toBe(true);
      expect(stand!.parts.map(({ acres }) => acres)).toEqual(
        all.map(({ land }) => new Decimal(String(land.over)).div(String(land.under)).toFixed()),
      );
      if (outlook === null) {
        refused += 1;
        expect([stand!.yieldOutlook, ...stand!.parts.map(({ yieldOutlook }) => yieldOutlook)].every((each) => each === null)).toBe(true);
        return;
      }
      expect(agree(new Decimal(stand!.yieldOutlook!), outlook)).toBe(true);
      for (const [index, of] of all.entries()) {
        expect(agree(new Decimal(stand!.parts[index]!.yieldOutlook!), of.outlook!)).toBe(true);
        expect(agree(new Decimal(stand!.parts[index]!.plantsPerAcre!), of.mean)).toBe(true);
      }
    }),
    { numRuns: 300 },
  );
  // Stands beyond the table are refused, and not all of them are.
  expect(refused).toBeLessThan(200);
});
