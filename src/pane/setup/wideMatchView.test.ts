import { describe, expect, it } from "vitest";
import { forEach } from "./nameChoice";
import { allOnBasis, firstWide, headingsOnce, onBasis, wideMatchView } from "./wideMatchView";

describe("matching a wide sheet", () => {
  const headings = ["Field name", "Acres", "Seed $/ac", "Herbicide", "Fungicide", "Total land rent", "Total"];
  it("begins with what the headings say, and leaves the rest out", () => {
    const { named, said } = firstWide(headings);
    expect([named, [...said.values()]]).toEqual([
      "Field name",
      ["left out", "left out", "seed", "crop protection", "crop protection", "cash rent, whole", "left out"],
    ]);
  });

  it("takes the field's name before the farm's, and the farm's before the crop's", () => {
    expect([["Crop", "Farm", "Field"], ["Crop", "Farm", "Seed"], ["Crop", "Seed"], ["Seed"]].map((of) => firstWide(of).named)).toEqual([
      "Field",
      "Farm",
      "Crop",
      "",
    ]);
  });

  it("names what is left out, and becomes an entry for each heading", () => {
    const { missing, leftOut, rows } = wideMatchView("Plan!A1:G9", firstWide(headings));
    expect([missing, leftOut]).toEqual(["", "Acres, Total"]);
    expect(rows.map((row) => [...row.values()].join(" | "))).toEqual([
      "Budget | Plan!A1:G9 | For | Field name",
      "Budget | Plan!A1:G9 | left out | Acres",
      "Budget | Plan!A1:G9 | seed | Seed $/ac",
      "Budget | Plan!A1:G9 | crop protection | Herbicide",
      "Budget | Plan!A1:G9 | crop protection | Fungicide",
      "Budget | Plan!A1:G9 | cash rent, whole | Total land rent",
      "Budget | Plan!A1:G9 | left out | Total",
    ]);
  });

  it("waits for what names the field, and for a cost", () => {
    const missing = (named: string, column = "seed") => wideMatchView("A", { named, said: new Map([["Seed", column]]) }).missing;
    expect([missing(""), missing("(cell B)"), missing("(cell B2)"), missing("(sheet name)"), missing("(sheet name)", "left out")]).toEqual([
      "Say what names the field or crop.",
      "Say which cell names the field or crop, such as B2.",
      "",
      "",
      "Say which heading holds a cost, and of which kind.",
    ]);
  });

  it("is kept for each sheet of one layout", () => {
    const { rows } = wideMatchView("A!A1:B9", { named: "(sheet name)", said: new Map([["Seed", "seed"]]) });
    expect(forEach(["A!A1:B9", "B!A1:B9"], rows).map((row) => [...row.values()].join(" | "))).toEqual([
      "Budget | A!A1:B9 | For | (sheet name)",
      "Budget | A!A1:B9 | seed | Seed",
      "Budget | B!A1:B9 | For | (sheet name)",
      "Budget | B!A1:B9 | seed | Seed",
    ]);
  });

  it("puts all money on the whole field at once, but not what its heading says is an acre's", () => {
    const said = new Map([
      ["Seed $", "seed"],
      ["Fuel $/ac", "fuel"],
      ["Acres", "left out"],
      ["Remark", "Note"],
      ["Total rent", "cash rent, whole"],
    ]);
    expect([...allOnBasis(said, true).values()]).toEqual(["seed, whole", "fuel", "left out", "Note", "cash rent, whole"]);
    expect([...allOnBasis(allOnBasis(said, true), false).values()]).toEqual(["seed", "fuel", "left out", "Note", "cash rent"]);
  });

  it("puts a cost on the whole field and back", () => {
    expect([onBasis("seed", true), onBasis("seed, whole", false), onBasis("left out", true)]).toEqual(["seed, whole", "seed", "left out"]);
  });

  it("takes a heading that stands there twice once", () => {
    expect(headingsOnce(["Seed", "seed ", "", "Seed (plan)"])).toEqual(["Seed", "Seed (plan)"]);
  });
});
