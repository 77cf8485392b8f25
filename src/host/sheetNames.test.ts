import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allowedSheetName, sameName, sheetNameChoices } from "./sheetNames";

/** As Excel's own message on renaming a sheet states it: 1 to 31 characters, none of : \ / ? * [ ], no apostrophe at either end. */
const isAllowed = (name: string) => name.length >= 1 && name.length <= 31 && !/[:\\/?*[\]]/.test(name) && !/^'|'$/.test(name);

describe("allowedSheetName", () => {
  it("leaves a good name as it is", () => {
    expect(allowedSheetName("Change – closing wheels")).toBe("Change – closing wheels");
  });

  it("makes something that Excel takes of anything", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 60 }), (text) => {
        expect(allowedSheetName(text)).toSatisfy(isAllowed);
      }),
    );
    expect(allowedSheetName("it''s ' ")).toBe("it''s");
    expect(allowedSheetName("''?")).toBe("Sheet");
  });
});

describe("sheetNameChoices", () => {
  it("counts on within what Excel takes", () => {
    const names = sheetNameChoices("Change – closing wheels, spiked");
    expect([names.next().value, names.next().value, names.next().value]).toEqual([
      "Change – closing wheels, spiked",
      "Change – closing wheels, sp (2)",
      "Change – closing wheels, sp (3)",
    ]);
  });
});

describe("sameName", () => {
  it.each([
    ["Other_costs", "other costs"],
    ["OtherCosts", "OTHER COSTS"],
  ])("takes %s and %s for one", (one, other) => {
    expect(sameName(one, other)).toBe(true);
  });
  it("tells other names apart", () => expect(sameName("Sales", "Sale")).toBe(false));
});
