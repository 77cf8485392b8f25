/** Past years of fields for tests, with as little as matters to the test. All quantities are text. */
import { Decimal } from "../../src/core/numbers/decimal";
import { area, moneyPerArea, moneyPerUnit, share, yieldPerArea } from "../../src/core/numbers/units";
import type { PastField } from "../../src/core/history/pastField";

export type PastTyped = {
  readonly acres?: string;
  readonly crop?: string;
  readonly price?: string;
  readonly net?: string;
  readonly full?: string;
  readonly cash?: string;
  readonly planned?: string;
  readonly share?: string;
  readonly goal?: string;
};

const perArea = (value: string | undefined) => (value === undefined ? null : moneyPerArea(value));

export const past = (season: string, field: string, bushels: string | null, more: PastTyped = {}): PastField => ({
  season,
  field,
  crop: more.crop ?? "Corn",
  hybrid: null,
  area: area(more.acres ?? "100"),
  goal: more.goal === undefined ? null : yieldPerArea(more.goal),
  yield: bushels === null ? null : yieldPerArea(new Decimal(bushels)),
  costs: { operating: null, cash: perArea(more.cash), full: perArea(more.full), cashNeed: null },
  planned: perArea(more.planned),
  price: more.price === undefined ? null : moneyPerUnit(more.price),
  net: perArea(more.net),
  operatorShare: share(more.share ?? "1"),
  planted: null,
  stand: null,
  heatUnits: null,
  rain: null,
  sitesUsed: [],
  source: { table: "Past seasons", row: 1 },
});
