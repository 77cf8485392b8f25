/** Which currency an amount was typed in, where it says one: another than the workbook's is no number of its money. */

const dollars = ["USD", "CAD", "AUD", "NZD"] as const;
/** What each mark may stand for; a mark that is not here says nothing. */
const marks: ReadonlyMap<string, readonly string[]> = new Map<string, readonly string[]>([
  ["$", dollars],
  ["US$", ["USD"]],
  ["C$", ["CAD"]],
  ["CA$", ["CAD"]],
  ["CAN$", ["CAD"]],
  ["A$", ["AUD"]],
  ["AU$", ["AUD"]],
  ["NZ$", ["NZD"]],
  ["R$", ["BRL"]],
  ["€", ["EUR"]],
  ["£", ["GBP"]],
  ["¥", ["JPY", "CNY"]],
  ["₴", ["UAH"]],
  ["₹", ["INR"]],
  ["₽", ["RUB"]],
  ...[
    "USD",
    "CAD",
    "AUD",
    "NZD",
    "EUR",
    "GBP",
    "JPY",
    "CNY",
    "BRL",
    "ARS",
    "MXN",
    "UAH",
    "PLN",
    "CHF",
    "SEK",
    "NOK",
    "DKK",
    "INR",
    "ZAR",
  ].map((code): [string, readonly string[]] => [code, [code]]),
]);

/** The same of what the setting Currency says; `undefined` where its words are not known, so that nothing is held against them. */
function currenciesOf(setting: string): readonly string[] | undefined {
  const words = setting.trim().toUpperCase();
  const known = marks.get(words);
  if (known !== undefined) return known;
  if (/CANAD/.test(words)) return ["CAD"];
  if (/^(U\.?S\.?A?\.?|AMERICAN) ?DOLLARS?$/.test(words)) return ["USD"];
  if (/^EUROS?$/.test(words)) return ["EUR"];
  return /^DOLLARS?$/.test(words) ? dollars : undefined;
}

/** Whether a mark beside a number names money that the workbook's currency cannot be: "€" or "CAD" where it is in US dollars. */
export function isOtherCurrency(mark: string, setting: string): boolean {
  const [typed, own] = [marks.get(mark.trim().toUpperCase()), currenciesOf(setting)];
  return typed !== undefined && own !== undefined && !typed.some((code) => own.includes(code));
}
