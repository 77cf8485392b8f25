import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { past } from "../../../tests/support/past";
import { fieldHistory } from "./provenYield";

const proven = (rows: Parameters<typeof fieldHistory>[0], before: string | null = "2031") => {
  const { proven: mean, years, endsBefore } = fieldHistory(rows, "Home", "Corn", before);
  return `${mean?.toDecimalPlaces(4).toFixed() ?? "none"} of ${years.map(({ season }) => season).join(" ")}${endsBefore === null ? "" : `; ${endsBefore.why} ${endsBefore.season}`}`;
};
const run = (first: number, yields: readonly string[]) => yields.map((bushels, index) => past(String(first + index), "Home", bushels));

describe("a proven yield", () => {
  it("is the plain mean of four to ten years (Iowa State University Extension, A1-55, 2017), and none of fewer", () => {
    expect(proven(run(2028, ["180", "200", "190"]))).toBe("none of 2030 2029 2028");
    expect(proven(run(2027, ["180", "200", "190", "150"]))).toBe("180 of 2030 2029 2028 2027");
    // The five yields of University of Minnesota Extension's example of another average, 2014; their plain mean by hand.
    expect(proven(run(2026, ["122", "142", "110", "67", "138"]))).toBe("115.8 of 2030 2029 2028 2027 2026");
    expect(proven(run(2019, ["0", "0", ...Array<string>(10).fill("200")]))).toMatch(/^200 of 2030 .* 2021$/);
  });

  it("keeps a lost crop: 0 is a year", () => {
    expect(proven(run(2027, ["200", "200", "0", "200"]))).toBe("150 of 2030 2029 2028 2027");
  });

  it("passes over years of other crops, and ends before a year of which nothing is entered", () => {
    const rotated = [
      ...["2024", "2026", "2028", "2030"].map((season) => past(season, "Home", "200")),
      ...["2025", "2027", "2029"].map((season) => past(season, "Home", "60", { crop: "Soybeans" })),
    ];
    expect(proven(rotated)).toBe("200 of 2030 2028 2026 2024");
    expect(proven(rotated.filter(({ season }) => season !== "2027"))).toBe("none of 2030 2028; no entry 2027");
  });

  it("ends before a year whose yield is blank, so that nobody leaves out a bad one", () => {
    const rows = [past("2026", "Home", null), ...run(2027, ["180", "200", "190", "150"]), past("2025", "Home", "250")];
    expect(proven(rows)).toBe("180 of 2030 2029 2028 2027; no yield 2026");
  });

  it("takes no year from the season on, and no other field's", () => {
    const rows = [...run(2027, ["180", "200", "190", "150"]), past("2031", "Home", "300"), past("2030", "Hill", "10")];
    expect(proven(rows)).toBe("180 of 2030 2029 2028 2027");
    expect(proven(rows, null)).toBe("204 of 2031 2030 2029 2028 2027");
  });

  it("has one figure a year, by area where two hybrids stood in the field", () => {
    const parts = [past("2030", "Home", "210", { acres: "60" }), past("2030", "Home", "180", { acres: "40" })];
    expect(proven([...run(2027, ["200", "200", "200"]), ...parts])).toBe("199.5 of 2030 2029 2028 2027");
    expect(proven([...run(2027, ["200", "200", "200"]), parts[0]!, past("2030", "Home", null)])).toBe("none of ; no yield 2030");
  });

  it("lies between the least and the best of its years, in any order of the rows", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 4, maxLength: 10 }), fc.integer(), (yields, seed) => {
        const rows = run(
          2031 - yields.length,
          yields.map((bushels) => String(bushels)),
        );
        const { proven: mean } = fieldHistory(rows, "Home", "Corn", "2031");
        const turned = [...rows].sort((a, b) => ((Number(a.season) * seed) % 7) - ((Number(b.season) * seed) % 7));
        expect(fieldHistory(turned, "Home", "Corn", "2031").proven!.toFixed()).toBe(mean!.toFixed());
        expect(mean!.gte(String(Math.min(...yields))) && mean!.lte(String(Math.max(...yields)))).toBe(true);
      }),
    );
  });
});
