import { expect, it } from "vitest";
import { isOtherCurrency } from "./currency";

it.each([
  ["€", "USD", true],
  ["CAD", "USD", true],
  ["US$", "CAD", true],
  ["C$", "US dollars", true],
  ["$", "USD", false],
  ["$", "Canadian dollars", false],
  ["US$", "$", false],
  ["USD", "usd", false],
  ["€", "EUR", false],
  ["€", "grain credits", false],
  ["TON", "USD", false],
  ["", "USD", false],
])("%j typed in a workbook in %j is another currency: %j", (mark, setting, isOther) => {
  expect(isOtherCurrency(mark, setting)).toBe(isOther);
});
