import { describe, expect, it } from "vitest";
import { readDegrees } from "./degrees";

describe("degrees", () => {
  it.each([
    ["41.5868", "41.5868"],
    ["-93.62", "-93.62"],
    ["N 41.5868", "41.5868"],
    ["93.62W", "-93.62"],
    ["33,5 S", "-33.5"],
    ["41° 30' N", "41.5"],
    ["41° 35.22' N", "41.587"],
    // 37 minutes and 12 seconds are 0.62 of a degree.
    ["93° 37' 12\" W", "-93.62"],
    ["93°37′12″W", "-93.62"],
    ["0° 30' W", "-0.5"],
  ])("reads %s as %s", (typed, read) => expect(readDegrees(typed)?.toString()).toBe(read));

  it.each(["", "north", "-93.62 W", "93° 61' W", "93.5° 30' W", "93° 30.5' 10\" W", "41 35 12", "41.58.68"])(
    "has no degrees in %s",
    (typed) => expect(readDegrees(typed)).toBeNull(),
  );
});
