import { describe, expect, it } from "vitest";
import { weedLine } from "./weedLine";

const weed = (...sitesLeft: string[][]) => ({
  weed: "Waterhemp",
  resistantTo: [],
  sitesLeft,
  seenOn: null,
  source: { table: "Weeds", row: 1 },
});
const pass = (status: "plan" | "done", isOpen = false) => ({ date: null, status, isOpen, items: [], costPerArea: null, sites: [] });
const done = pass("done");
const line = (...sitesLeft: string[][]) => weedLine({ field: "Alder", passes: sitesLeft.map(() => done), weeds: [weed(...sitesLeft)] });

describe("the line of a field's weeds", () => {
  it("says its weakest passes", () => {
    expect(line(["14", "15"], [], ["27"])).toBe("Alder: Waterhemp, no site left in 1 of 3 passes");
    expect(line(["14", "15"], ["27"])).toBe("Alder: Waterhemp, one site left in 1 of 2 passes");
    expect(line(["14", "15"], ["9", "27"])).toBe("Alder: Waterhemp, two sites or more in all 2 passes");
    expect(line([])).toBe("Alder: Waterhemp, no site left in 1 of 1 pass");
    expect(line()).toBe("Alder: Waterhemp, no pass");
  });

  it("counts a planned pass that was done once, and one still to be done", () => {
    const passes = [pass("plan"), pass("done"), pass("plan", true)];
    expect(weedLine({ field: "Alder", passes, weeds: [weed(["9"], ["9", "14"], [])] })).toBe(
      "Alder: Waterhemp, no site left in 1 of 2 passes",
    );
  });

  it("names every weed that is listed", () => {
    expect(weedLine({ field: "Alder", passes: [done], weeds: [weed(["14"]), { ...weed(), weed: "Foxtail" }] })).toBe(
      "Alder: Waterhemp, one site left in 1 of 1 pass; Foxtail, no pass",
    );
  });
});
