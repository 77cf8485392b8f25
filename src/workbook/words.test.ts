import { describe, expect, it } from "vitest";
import { nearest } from "./words";

describe("the name that is most like a text", () => {
  it("is the one of which the fewest letters differ, in whatever order they are listed", () => {
    const known = ["Repayment dale", "Repayment date", "Repayment data sheet"];
    for (const names of [known, [...known].reverse()])
      expect(nearest("repayment dat", names)).toBe(names.find((each) => each.startsWith("Repayment dat")));
    expect(nearest("Corm", ["Corn", "Form", "Barley"])).toBe("Corn");
    expect(nearest("Cornn", ["Cornell", "Corn"])).toBe("Corn");
    expect(nearest("Cornn", ["Corn", "Cornell"])).toBe("Corn");
  });
  it("is none where more than a third of the letters differ", () => {
    expect(nearest("Wheat", ["Barley", "Oats"])).toBeNull();
    expect(nearest("", ["Oats"])).toBeNull();
  });
});
