import { describe, expect, it } from "vitest";
import { firstWide, headingsOnce, onBasis, wideMatchView } from "./wideMatchView";

describe("matching a wide sheet", () => {
  const headings = ["Field name", "Acres", "Seed $/ac", "Herbicide", "Fungicide", "Total land rent", "Total"];
  it("begins with what the headings say, and leaves the rest out", () => {
    expect([...firstWide(headings).values()]).toEqual(["For", "left out", "seed", "crop protection", "crop protection", "cash rent, whole", "left out"]);
  });

  it("names what is left out, and becomes a row for each heading", () => {
    const { missing, leftOut, rows } = wideMatchView("Plan!A1:G9", firstWide(headings));
    expect([missing, leftOut]).toEqual(["", "Acres, Total"]);
    expect(rows.map((row) => [...row.values()].join(" | "))).toContain("Budget | Plan!A1:G9 | cash rent, whole | Total land rent");
    expect(rows).toHaveLength(7);
  });

  it("waits for the heading that names fields, one alone, and for a cost", () => {
    expect(wideMatchView("A", new Map([["Seed", "seed"]])).missing).toBe("Say which heading names the field or crop.");
    expect(wideMatchView("A", new Map([["Field", "For"], ["Farm", "For"], ["Seed", "seed"]])).missing).toBe("“Field” and “Farm” both name the field or crop: keep one.");
    expect(wideMatchView("A", new Map([["Field", "For"], ["Acres", "left out"]])).missing).toBe("Say which heading holds a cost, and of which kind.");
  });

  it("puts a cost on the whole field and back", () => {
    expect([onBasis("seed", true), onBasis("seed, whole", false), onBasis("left out", true)]).toEqual(["seed, whole", "seed", "left out"]);
  });

  it("takes a heading that stands there twice once", () => {
    expect(headingsOnce(["Seed", "seed ", "", "Seed (plan)"])).toEqual(["Seed", "Seed (plan)"]);
  });
});
