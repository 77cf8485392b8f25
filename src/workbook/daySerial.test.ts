import { expect, it } from "vitest";
import { daysBetweenSystems, momentOfSerial, serialOfDay } from "./daySerial";

// ECMA-376 part 1, 18.17.4.1: 1 January 2000 is 36526 in the 1900 system and 35064 in the 1904 system (from memory).
it("counts days as both date systems do", () => {
  expect([serialOfDay("2000-01-01", "1900"), serialOfDay("2000-01-01", "1904"), daysBetweenSystems]).toEqual([36526, 35064, 1462]);
  expect(momentOfSerial(36526.75, "1900").toISOString()).toBe("2000-01-01T00:00:00.000Z");
});
