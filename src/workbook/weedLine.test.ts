import { describe, expect, it } from "vitest";
import { weedLine } from "./weedLine";

const weed = (...sitesLeft: string[][]) => ({
  weed: "Waterhemp",
  resistantTo: [],
  sitesLeft,
  seenOn: null,
  source: { table: "Weeds", row: 1 },
});
const line = (...sitesLeft: string[][]) => weedLine({ field: "Alder", weeds: [weed(...sitesLeft)] });

describe("the line of a field's weeds", () => {
  it("says its weakest passes", () => {
    expect(line(["14", "15"], [], ["27"])).toBe("Alder: Waterhemp, no site left in 1 of 3 passes");
    expect(line(["14", "15"], ["27"])).toBe("Alder: Waterhemp, one site left in 1 of 2 passes");
    expect(line(["14", "15"], ["9", "27"])).toBe("Alder: Waterhemp, two sites or more in all 2 passes");
    expect(line([])).toBe("Alder: Waterhemp, no site left in 1 of 1 pass");
    expect(line()).toBe("Alder: Waterhemp, no pass");
  });

  it("names every weed that is listed", () => {
    expect(weedLine({ field: "Alder", weeds: [weed(["14"]), { ...weed(), weed: "Foxtail" }] })).toBe(
      "Alder: Waterhemp, one site left in 1 of 1 pass; Foxtail, no pass",
    );
  });
});
