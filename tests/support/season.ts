/** Seasons for tests, written with as little as matters to the test. All quantities are text. */
import { Decimal } from "../../src/core/numbers/decimal";
import { wetAndDry } from "../../src/core/drying";
import type { Hybrid } from "../../src/core/hybrids/hybridEntries";
import type { Machine } from "../../src/core/machines/machine";
import type {
  Application,
  Crop,
  Field,
  HarvestLoad,
  Item,
  Operation,
  OtherCost,
  Purchase,
  Sale,
  Season,
  Settings,
  Status,
} from "../../src/core/season";
import { measureNamed } from "../../src/core/numbers/measure";
import {
  area,
  cropQuantity,
  itemQuantity,
  itemRate,
  money,
  moneyPerArea,
  moneyPerHour,
  moneyPerUnit,
  points,
  share,
  yearlyRate,
  years,
  yieldPerArea,
} from "../../src/core/numbers/units";
import { publishedStandTables } from "../../src/workbook/publishedStandTables";

const from = (table: string) => ({ table, row: 1 });

export const settings: Settings = {
  farm: null,
  seasonYear: "2031",
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

export const corn: Crop = {
  name: "Corn",
  yieldUnit: "bu",
  weightPerBushel: new Decimal("56"),
  standardMoisture: points("15.5"),
  price: moneyPerUnit("4"),
  lowPrice: null,
  highPrice: null,
  sellingCostPerUnit: moneyPerUnit("0"),
  expectedHarvestMoisture: null,
  otherIncomePerArea: moneyPerArea("0"),
  source: from("Crops"),
};

export const field = (name: string, acres: string, goal: string, more: Partial<Field> = {}): Field => ({
  name,
  crop: "Corn",
  area: area(acres),
  variety: null,
  yieldGoal: yieldPerArea(goal),
  provenYield: null,
  provenYears: [],
  plannedPlanting: null,
  planted: null,
  seedsDropped: null,
  targetStand: null,
  rowWidth: null,
  tenure: "owned",
  rentPerArea: null,
  landChargePerArea: null,
  operatorShare: share("1"),
  uniformityLoss: null,
  harvestDone: null,
  sameLandAs: null,
  weatherPlace: null,
  source: from("Fields"),
  ...more,
});

/** An item that is bought and used by the pound, charged as it is used. */
export const item = (name: string, planPrice: string | null, more: Partial<Item> = {}): Item => ({
  name,
  kind: "fertilizer",
  packName: "lb",
  packSize: itemQuantity("1"),
  unit: measureNamed("lb")!,
  charged: "as used",
  planPricePerPack: planPrice === null ? null : money(planPrice),
  operatorCostShare: share("1"),
  sitesOfAction: null,
  source: from("Items"),
  ...more,
});

export const purchase = (of: string, quantity: string, amount: string, more: Partial<Purchase> = {}): Purchase => ({
  item: of,
  date: "2031-04-01",
  quantity: itemQuantity(quantity),
  amount: money(amount),
  freight: money("0"),
  rebate: money("0"),
  paidOn: "2031-04-01",
  isOpening: false,
  source: from("Purchases"),
  ...more,
});

export const application = (of: string, where: string, rate: string, status: Status, more: Partial<Application> = {}): Application => ({
  target: { field: where },
  item: of,
  rate: itemRate(rate),
  area: null,
  date: null,
  status,
  source: from("Applications"),
  ...more,
});

export const operation = (name: string, where: string, rate: string, status: Status, more: Partial<Operation> = {}): Operation => ({
  target: { field: where },
  operation: name,
  area: null,
  passes: new Decimal("1"),
  cost: { basis: "per acre", rate: moneyPerArea(rate) },
  date: null,
  status,
  kind: "custom work",
  source: from("Operations"),
  ...more,
});

export const otherCost = (name: string, amount: string, more: Partial<OtherCost> = {}): OtherCost => ({
  item: name,
  kind: "overhead",
  amount: new Decimal(amount),
  basis: "whole farm",
  over: { all: true },
  by: "acres",
  cash: true,
  paidOn: null,
  source: from("Other costs"),
  ...more,
});

export const sale = (quantity: string, price: string): Sale => ({
  crop: "Corn",
  date: "2031-06-01",
  quantity: cropQuantity(quantity),
  price: moneyPerUnit(price),
  delivered: null,
  kind: null,
  cropYear: null,
  source: from("Sales"),
});

/** A load of so many bushels as weighed, of corn at 15.5 % where it is drier. */
export const load = (of: string, wet: string, moisture: string | null = null, more: Partial<HarvestLoad> = {}): HarvestLoad => {
  const weighed = wetAndDry(cropQuantity(wet), "wet", moisture === null ? null : points(moisture), corn.standardMoisture);
  return {
    field: of,
    date: "2031-10-10",
    quantity: weighed.dry,
    wet: weighed.wet,
    moisture: moisture === null ? null : points(moisture),
    testWeight: null,
    dock: null,
    ticket: null,
    buyer: null,
    source: from("Harvest"),
    ...more,
  };
};

/** The same field, its last load in. */
export const harvested = (of: Field): Field => ({ ...of, harvestDone: { on: null } });

/** A planter that costs something in every way but fuel of its power and repairs. */
export const machine = (name: string, more: Partial<Machine> = {}): Machine => ({
  name,
  tractor: null,
  power: null,
  width: new Decimal("30"),
  speed: new Decimal("5.5"),
  fieldEfficiency: share("0.65"),
  tankSize: null,
  main: {
    name,
    listPrice: money("100000"),
    purchasePrice: money("100000"),
    age: years("0"),
    yearsKept: years("10"),
    hoursAYear: null,
    repairClass: null,
    salvage: { stated: money("20000") },
  },
  realRate: yearlyRate("0"),
  taxesInsuranceHousing: yearlyRate("0"),
  wage: moneyPerHour("26"),
  labour: "hired labour",
  fuelPrice: money("4"),
  fuelPerArea: new Decimal("0.5"),
  source: { table: "Machines", row: 1 },
  ...more,
});

export const hybrid = (name: string, more: Partial<Hybrid> = {}): Hybrid => ({
  name,
  crop: "Corn",
  pricePerBag: null,
  seedsPerBag: null,
  traitFee: null,
  heatUnits: null,
  days: null,
  isCheck: false,
  source: from("Hybrids"),
  ...more,
});

/** The tables that a season has besides, all empty. */
export const noMore = {
  budget: [],
  bills: [],
  loans: [],
  insurance: [],
  machines: [],
  standCounts: [],
  weeds: [],
  standTables: [],
  weather: [],
  hybrids: [],
  hybridTrials: [],
  planterChecks: [],
  pastSeasons: [],
  otherSeasons: [],
  changes: [],
} as const satisfies Partial<Season>;

export const seasonOf = (parts: Partial<Season>): Season => ({
  settings,
  crops: [corn],
  fields: [],
  items: [],
  purchases: [],
  applications: [],
  operations: [],
  otherCosts: [],
  sales: [],
  harvest: [],
  ...noMore,
  published: publishedStandTables,
  ...parts,
});
