/** The table Season: one setting a row. */
import { isYes } from "../synonyms";
import type { Decimal } from "../../core/numbers/decimal";
import { landlordsInputs, type Settings } from "../../core/season";
import { money, moneyPerUnit, type AreaUnit } from "../../core/numbers/units";
import { heatUnitWays } from "../../core/weather/heatUnits";
import type { RawTable } from "../cell";
import type { Problem } from "../problem";
import { wetnesses } from "../columns/harvest";
import { seasonColumns, settingNames } from "../columns/season";
import { TableReader } from "../tableReader";
import type { Row, Style } from "../tableRow";
import { nearest, plain, plainWord } from "../words";

const { setting: settingColumn, value: valueColumn } = seasonColumns.columns;

type SettingName = (typeof settingNames)[number];
type Entered = ReadonlyMap<SettingName, Row>;

const defaultSettings: Settings = {
  farm: null,
  seasonYear: null,
  currency: "USD",
  areaUnit: "ac",
  operatingInterest: null,
  repaymentDate: null,
  labourPerHour: null,
  fuelPerGallon: null,
  dryingChargePerPoint: null,
  dryingCountedOn: "wet",
  testWeightDock: null,
  landlordsInputs: "repaid",
  standResponse: null,
  temperatureUnit: null,
  heatUnits: null,
  firstFrosts: null,
};

/**
 * How the workbook is typed: read before anything else, because it decides how cells are read. What is at fault is told when the
 * settings are read.
 */
export function typingStyle(raw: RawTable | null): Pick<Style, "decimalComma" | "seasonYear" | "areaUnit" | "currency"> {
  if (raw === null) return { decimalComma: false, currency: defaultSettings.currency };
  const table = new TableReader("Season", raw, { decimalComma: false, dateSystem: "1900", dayFirst: false });
  const [name, value] = [table.indexOf(settingColumn.heading), table.indexOf(valueColumn.heading)];
  const typed = (setting: string) =>
    String(raw.rows.find((row) => plain(String(row[name] ?? "")) === plain(setting))?.[value] ?? "").trim();
  return {
    decimalComma: isYes(typed("Decimal comma")),
    seasonYear: yearIn(typed("Season year")),
    areaUnit: /^(ha|hectares?)$/i.test(typed("Area unit")) ? "ha" : "ac",
    currency: typed("Currency") || defaultSettings.currency,
  };
}

/** Whether the workbook writes a decimal comma. */
export const decimalCommaSet = (raw: RawTable | null): boolean => typingStyle(raw).decimalComma;

export function readSettings(raw: RawTable | null, style: Style): { readonly settings: Settings; readonly problems: readonly Problem[] } {
  if (raw === null) return { settings: defaultSettings, problems: [] };
  const table = new TableReader("Season", raw, style);
  if (!table.hasNeeded(seasonColumns)) return { settings: defaultSettings, problems: table.problems };
  const entered = new Map<SettingName, Row>();
  let settings = defaultSettings;
  const rows = table.rows(
    (row) => {
      const typed = row.needText(settingColumn);
      if (typed === null) return null;
      const name = settingNames.find((each) => plainWord(each) === plainWord(typed));
      if (name === undefined) {
        const like = nearest(typed, settingNames);
        return row.lose("setting-unknown", settingColumn, { choices: settingNames, ...(like === null ? {} : { like }) });
      }
      if (entered.has(name)) return row.lose("duplicate-name", settingColumn);
      entered.set(name, row);
      return read(name, row);
    },
    () => [{ of: "farm" }],
  );
  for (const { interest: _interest, ...part } of rows) settings = { ...settings, ...part };
  const interest = interestOf(rows, entered);
  return { settings: { ...settings, operatingInterest: interest.value }, problems: [...table.problems, ...interest.problems] };
}

type Part = Partial<Settings> & {
  readonly interest?: {
    rate?: Decimal | null;
    method?: "by date" | "months" | null;
    months?: Decimal | null;
    repaymentDate?: string | null;
  };
};

function read(name: SettingName, row: Row): Part {
  const amount = () => row.number(valueColumn);
  switch (name) {
    case "Farm":
      return { farm: row.text(valueColumn) };
    case "Season year":
      return { seasonYear: yearOf(row) };
    case "Currency":
      return { currency: row.text(valueColumn) ?? defaultSettings.currency };
    case "Area unit":
      return { areaUnit: areaUnitOf(row) };
    case "Decimal comma":
      row.choice(valueColumn, ["yes", "no"]);
      return {};
    case "Operating interest rate":
      return { interest: { rate: row.interestRate(valueColumn) } };
    case "Interest method":
      return { interest: { method: row.choice(valueColumn, ["by date", "months"]) } };
    case "Interest months":
      return { interest: { months: row.number(valueColumn) } };
    case "Repayment date": {
      const repaymentDate = row.date(valueColumn);
      return { repaymentDate, interest: { repaymentDate } };
    }
    case "Labour per hour":
      return withMoney("labourPerHour", amount());
    case "Fuel per gallon":
      return withMoney("fuelPerGallon", amount());
    case "Drying charge per point": {
      const value = amount();
      return { dryingChargePerPoint: value === null ? null : moneyPerUnit(value) };
    }
    case "Drying counted on":
      return { dryingCountedOn: row.choice(valueColumn, wetnesses) ?? defaultSettings.dryingCountedOn };
    case "Landlord's inputs":
      return { landlordsInputs: row.choice(valueColumn, landlordsInputs) ?? defaultSettings.landlordsInputs };
    case "Test weight dock":
      return { testWeightDock: row.text(valueColumn) };
    case "Temperature unit":
      return { temperatureUnit: row.choice(valueColumn, ["F", "C"]) };
    case "Heat units":
      return { heatUnits: row.choice(valueColumn, heatUnitWays) };
    case "First killing frost":
      return { firstFrosts: row.dates(valueColumn) };
    case "Stand response":
      return { standResponse: row.text(valueColumn) };
  }
}

const withMoney = (name: "labourPerHour" | "fuelPerGallon", value: Decimal | null): Part => ({
  [name]: value === null ? null : money(value),
});

/** The year as typed, or of a date that Excel made of it. Five figures are no year of four with one to spare. */
function yearOf(row: Row): string | null {
  const typed = row.text(valueColumn);
  return typed === null ? null : (yearIn(typed) ?? row.date(valueColumn)?.slice(0, 4) ?? null);
}

/** Four figures that stand alone. */
const yearIn = (text: string): string | null => /(?:^|\D)(\d{4})(?:\D|$)/.exec(text)?.[1] ?? null;

function areaUnitOf(row: Row): AreaUnit {
  const typed = plain(row.text(valueColumn) ?? "ac");
  if (/^(ac|acre|acres)$/.test(typed)) return "ac";
  if (/^(ha|hectare|hectares)$/.test(typed)) return "ha";
  row.fault("not-in-list", valueColumn, { choices: ["ac", "ha"] });
  return "ac";
}

/** Interest is charged once a rate is entered, and then it needs to know for how long. */
function interestOf(rows: readonly Part[], entered: Entered): { value: Settings["operatingInterest"]; problems: readonly Problem[] } {
  const all = Object.assign({}, ...rows.map((part) => part.interest ?? {})) as NonNullable<Part["interest"]>;
  const { rate = null, months = null, repaymentDate = null } = all;
  if (rate === null || rate.isZero()) return { value: null, problems: [] };
  const method = all.method ?? (repaymentDate === null && months !== null ? "months" : "by date");
  if (method === "months" && months !== null) return { value: { method, rate, months }, problems: [] };
  if (method === "by date" && repaymentDate !== null) return { value: { method, rate, repaymentDate }, problems: [] };
  const missing: SettingName = method === "months" ? "Interest months" : "Repayment date";
  const row = (entered.get(missing) ?? entered.get("Operating interest rate"))!.source.row;
  return {
    value: null,
    problems: [
      {
        code: "interest-incomplete",
        at: { table: "Season", row, column: valueColumn.heading },
        found: "",
        like: missing,
        touches: [{ of: "farm" }],
      },
    ],
  };
}
