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

// Codes of ISO 4217, as the setting Currency and bank exports write them.
const codes = "USD CAD AUD NZD EUR GBP JPY CNY BRL ARS MXN UAH PLN CHF SEK NOK DKK INR ZAR".split(" ");
it.each(codes)("%s is its own currency and no other one, in small letters too", (code) => {
  expect(codes.filter((other) => !isOtherCurrency(other, code.toLowerCase()))).toEqual([code]);
});

it.each([
  ["US$", "USD"],
  ["C$", "CAD"],
  ["CA$", "CAD"],
  ["CAN$", "CAD"],
  ["A$", "AUD"],
  ["AU$", "AUD"],
  ["NZ$", "NZD"],
  ["R$", "BRL"],
  ["€", "EUR"],
  ["£", "GBP"],
  ["¥", "JPY"],
  ["₴", "UAH"],
  ["₹", "INR"],
])("%s stands for %s and for no currency of another country", (mark, code) => {
  expect(codes.filter((own) => own !== "CNY" && !isOtherCurrency(mark, own))).toEqual([code]);
});

it("₽ is none of the currencies that a workbook is kept in here", () => {
  expect(codes.filter((own) => !isOtherCurrency("₽", own))).toEqual([]);
});

it.each(["Dollar", "dollars"])("%s may be those of any country that has them", (setting) => {
  expect(["$", "US$", "C$", "€"].map((mark) => isOtherCurrency(mark, setting))).toEqual([false, false, false, true]);
});
