import { describe, expect, it } from "vitest";
import { readToo, withSheet } from "./sheetsToo";

describe("the other sheets of one layout", () => {
  it("are read too, but not those of other years", () => {
    expect([...readToo("Creek!A4:B6", ["'North forty'!A4:B6", "Blank!A4:B6"])]).toEqual(["'North forty'!A4:B6", "Blank!A4:B6"]);
    expect([...readToo("'Corn 2026'!A4:B6", ["'Corn 2025'!A4:B6", "'Beans 2026'!A4:B6", "Notes!A4:B6"])]).toEqual(["'Beans 2026'!A4:B6"]);
    expect([...readToo("Creek!A4:B6", ["'2025'!A4:B6"])]).toEqual([]);
  });

  it("can be left out and taken in one by one", () => {
    const all = readToo("Creek!A1:B2", ["East!A1:B2", "Blank!A1:B2"]);
    expect([...withSheet(all, "Blank!A1:B2", false)]).toEqual(["East!A1:B2"]);
    expect([...withSheet(withSheet(all, "Blank!A1:B2", false), "Blank!A1:B2", true)]).toEqual(["East!A1:B2", "Blank!A1:B2"]);
  });
});
