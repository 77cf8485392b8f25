/**
 * A season as the core takes it: every cell already a decimal in a known unit, every name already matched.
 *
 * Areas are in the workbook's own area unit (acres or hectares); "per area" is per one of those. Quantities of an item
 * are in the item's base unit (the unit its pack is measured in). Crop quantities and yields are in the crop's yield
 * unit. Shares are fractions from 0 to 1. Names are unique without regard to case; references hold the spelling of the
 * table that defines the name.
 */
import type { PastField } from "./history/pastField";
import type { Decimal } from "./numbers/decimal";
import type { FlexibleRent } from "./flexibleRent";
import type { Hybrid, HybridTrial } from "./hybrids/hybridEntries";
import type { Kind, OperatingKind } from "./kinds";
import type { Policy } from "./lender/guarantee";
import type { Machine } from "./machines/machine";
import type { Measure } from "./numbers/measure";
import type { PlanterCheck } from "./planter/planterCheck";
import type { SeasonChange } from "./partialBudget/seasonChange";
import type { EntryRef, IsoDate, Target } from "./row";
import type { HeatUnitWay, TemperatureUnit } from "./weather/heatUnits";
import type { WeatherDay } from "./weather/record";
import type { WeedEntry } from "./weeds/weedEntry";
import type { StandCount } from "./stand/standCount";
import type { PublishedStandTables, StandTable } from "./stand/standTable";
import type {
  Area,
  AreaUnit,
  CropQuantity,
  ItemQuantity,
  ItemRate,
  Money,
  MoneyPerArea,
  MoneyPerUnit,
  Points,
  Share,
  Yield,
  YieldUnit,
} from "./numbers/units";

/** Grain with the water that it was weighed with, or as it is at the crop's standard moisture. */
export type Wetness = "wet" | "dry";

/**
 * How landlords of crop-shared land bear their part of inputs: the operator buys all and is repaid, or each buys his own, so that
 * only the operator's part is ever bought here.
 */
export const landlordsInputs = ["repaid", "bought by the landlord"] as const;
export type LandlordsInputs = (typeof landlordsInputs)[number];

export type Settings = {
  /** The farm's name, for the pages that go to a lender; `null`: none is printed. */
  readonly farm: string | null;
  readonly seasonYear: string | null;
  readonly currency: string;
  readonly areaUnit: AreaUnit;
  /** `null`: no operating interest is charged. `rate` is a fraction a year. */
  readonly operatingInterest:
    | { readonly method: "by date"; readonly rate: Decimal; readonly repaymentDate: IsoDate }
    | { readonly method: "months"; readonly rate: Decimal; readonly months: Decimal }
    | null;
  /** The day on which operating money is repaid, also where no rate is entered; `null`: not said. */
  readonly repaymentDate: IsoDate | null;
  readonly labourPerHour: Money | null;
  readonly fuelPerGallon: Money | null;
  /** Money per unit of yield and point of moisture above the crop's standard. */
  readonly dryingChargePerPoint: MoneyPerUnit | null;
  /** The units of a load that the drying charge is counted on: as weighed, or as they are when dry. */
  readonly dryingCountedOn: Wetness;
  /**
   * Names of the grower's own tables of what buyers take off for a low test weight, with semicolons; `null`: nothing
   * is taken off.
   */
  readonly testWeightDock: string | null;
  readonly landlordsInputs: LandlordsInputs;
  /** Names of the date × stand tables in use, separated by semicolons, or "none"; `null`: the usual one of each crop. */
  readonly standResponse: string | null;
  /** Of the table Weather; `null`: Fahrenheit with acres, Celsius with hectares. */
  readonly temperatureUnit: TemperatureUnit | null;
  /** Left out or `null`: growing degree 86/50 with Fahrenheit, corn heat units with Celsius. */
  readonly heatUnits: HeatUnitWay | null;
  /** The first killing frost of past autumns; `null`: as the table Weather tells it. */
  readonly firstFrosts: readonly IsoDate[] | null;
};

export type Crop = {
  readonly name: string;
  readonly yieldUnit: YieldUnit;
  /** Pounds in one bushel; `null` where the crop is not measured in bushels or no weight is given. */
  readonly weightPerBushel: Decimal | null;
  /** Points of moisture, e.g. 15.5. */
  readonly standardMoisture: Points | null;
  readonly price: MoneyPerUnit;
  readonly lowPrice: MoneyPerUnit | null;
  readonly highPrice: MoneyPerUnit | null;
  readonly sellingCostPerUnit: MoneyPerUnit;
  readonly expectedHarvestMoisture: Points | null;
  readonly otherIncomePerArea: MoneyPerArea;
  readonly source: EntryRef;
};

export type Tenure = "owned" | "cash rent" | "crop share" | "flexible rent";

export type Field = {
  readonly name: string;
  readonly crop: string;
  readonly area: Area;
  readonly variety: string | null;
  readonly yieldGoal: Yield;
  readonly provenYield: Yield | null;
  /** The years of Past seasons whose mean the proven yield is, the newest first; none where it is entered or not known. */
  readonly provenYears: readonly string[];
  readonly plannedPlanting: IsoDate | null;
  readonly planted: IsoDate | null;
  /** Seeds per area. */
  readonly seedsDropped: Decimal | null;
  /** Plants per area. */
  readonly targetStand: Decimal | null;
  /** Inches (centimetres where the area unit is hectares). */
  readonly rowWidth: Decimal | null;
  readonly tenure: Tenure;
  /** Of a flexible rent its base, paid whatever comes. */
  readonly rentPerArea: MoneyPerArea | null;
  /** What is paid above the base rent; left out or `null`: nothing. */
  readonly flexibleRent?: FlexibleRent | null;
  readonly landChargePerArea: MoneyPerArea | null;
  /** The operator's share of the crop; 1 unless the field is crop-shared. */
  readonly operatorShare: Share;
  /** Percent of the yield lost to gaps and late plants, beyond what the number of plants says; `null`: none. */
  readonly uniformityLoss: Decimal | null;
  /** Filled once the last load is in, with the day where it is told; `null` until then. */
  readonly harvestDone: { readonly on: IsoDate | null } | null;
  /** The field whose acres this crop uses a second time in the year; `null` on land of its own. */
  readonly sameLandAs: string | null;
  /** Where its weather is recorded; `null`: at the only place there is. */
  readonly weatherPlace: string | null;
  readonly source: EntryRef;
};

/** A rough line of the plan: so much of a kind for a field, for every field of a crop or for all fields. */
export type BudgetLine = {
  readonly over: Target | { readonly all: true };
  readonly kind: Kind;
  /** Money per area of land, or for all of it, as the basis says; zero or more. What everybody bears who shares the crop. */
  readonly amount: Decimal;
  readonly basis: "per acre" | "whole";
  /** When it is paid; the first day of a month where only a month is given. */
  readonly paidOn: IsoDate | null;
  /** The operator's part of it on crop-shared fields; 1 elsewhere and where nothing is said. */
  readonly operatorCostShare: Share;
  /** Whether nothing more will come of it. */
  readonly allIn: boolean;
  readonly source: EntryRef;
};

export type Charging = "as used" | "by acres" | "by revenue";

export type Item = {
  readonly name: string;
  readonly kind: OperatingKind;
  /** What one pack is called, e.g. "bag"; the base unit's own name where nothing is packed. */
  readonly packName: string;
  /** Base units in one pack; 1 where nothing is packed. */
  readonly packSize: ItemQuantity;
  /** The base unit of the item. */
  readonly unit: Measure;
  readonly planPricePerPack: Money | null;
  readonly charged: Charging;
  /** The operator's share of this item's cost on crop-shared fields; 1 elsewhere and where nothing is said. */
  readonly operatorCostShare: Share;
  /** The fields in which something else counts this cost already, machine rows for one: it is shown there and not charged. */
  readonly unchargedIn?: ReadonlySet<string>;
  readonly sitesOfAction: string | null;
  /** Weeds that its label says it controls; an empty list: no weed, as of a fungicide; left out: nothing is said. */
  readonly controls?: readonly string[];
  readonly source: EntryRef;
};

export type Purchase = {
  readonly item: string;
  readonly date: IsoDate;
  /** Base units of the item; negative for a return. */
  readonly quantity: ItemQuantity;
  /** Money: price × quantity before freight and rebate; negative for a return. */
  readonly amount: Money;
  readonly freight: Money;
  readonly rebate: Money;
  /** When it was or will be paid; the date of the invoice where nothing else is said. */
  readonly paidOn: IsoDate;
  /** Whether it was left over from last season or paid then: it counts in quantity and price, is not paid again and bears no interest. */
  readonly isOpening: boolean;
  readonly source: EntryRef;
};

/** An invoice line that is charged directly to what it names, by acres, and is no stock of an item. */
export type Bill = {
  readonly over: Target | { readonly all: true };
  readonly kind: Kind;
  /** What was bought, as it is shown. */
  readonly name: string;
  /** Amount and freight less rebate; negative for a return. */
  readonly amount: Money;
  readonly paidOn: IsoDate;
  /** Whether it was paid last season: it is charged, not paid again, and bears no interest. */
  readonly isOpening: boolean;
  /** The operator's part on crop-shared fields; `null` where nothing says it. */
  readonly operatorCostShare: Share | null;
  /** The fields in which machine rows count this cost already: it is paid and not charged there. */
  readonly unchargedIn?: ReadonlySet<string>;
  readonly source: EntryRef;
};

/** An invoice line for another season: paid with this one's money, and no cost of it. */
export type OtherSeasonBill = {
  /** The season that it is for, four digits. */
  readonly season: string;
  readonly kind: Kind;
  readonly name: string;
  /** Amount and freight less rebate. */
  readonly amount: Money;
  readonly paidOn: IsoDate;
  readonly source: EntryRef;
};

/** A planned row that was done as it stood is both: it counts in the plan and in what is done. */
export type Status = "plan" | "done" | "done as planned";

export type Application = {
  readonly target: Target;
  readonly item: string;
  /** Base units of the item per area. */
  readonly rate: ItemRate;
  /** `null`: the whole target. */
  readonly area: Area | null;
  readonly date: IsoDate | null;
  readonly status: Status;
  /** The rate as it was typed: so much of a unit per area of the workbook; left out: base units of the item. */
  readonly asTyped?: { readonly unit: string; readonly perArea: Decimal };
  /** What carries it and in what: gallons per acre and gallons (litres per hectare and litres); left out: nothing is said. */
  readonly tank?: { readonly carrierPerArea: Decimal | null; readonly size: Decimal | null };
  readonly source: EntryRef;
};

export type Operation = {
  readonly target: Target;
  readonly operation: string;
  readonly area: Area | null;
  readonly passes: Decimal;
  readonly cost:
    /** Money per area and pass. */
    | { readonly basis: "per acre"; readonly rate: MoneyPerArea }
    /** Money per hour, and the hours that the whole row took. */
    | { readonly basis: "per hour"; readonly rate: Money; readonly hours: Decimal }
    /** Money for the whole row, passes included. */
    | { readonly basis: "lump sum"; readonly rate: Money }
    | { readonly basis: "machine"; readonly machine: string };
  readonly date: IsoDate | null;
  readonly status: Status;
  readonly kind: OperatingKind;
  readonly source: EntryRef;
};

export type OtherCost = {
  readonly item: string;
  readonly kind: Kind;
  /** Money per area, per unit of the crop, or in all, as the basis says. */
  readonly amount: Decimal;
  readonly basis: "per acre" | "per unit of yield" | "whole farm";
  readonly over: { readonly all: true } | { readonly crop: string } | { readonly field: string };
  readonly by: "acres" | "revenue";
  readonly cash: boolean;
  /** When it is paid; the first day of a month where only a month is given. */
  readonly paidOn: IsoDate | null;
  readonly source: EntryRef;
};

export type Sale = {
  readonly crop: string;
  readonly date: IsoDate;
  readonly quantity: CropQuantity;
  readonly price: MoneyPerUnit;
  /** The first day of the month in which it is delivered and paid; `null`: the date of the sale. */
  readonly delivered: IsoDate | null;
  /** The year in which the grain grew; `null`: the season's. Older grain is in the cash flow alone. */
  readonly cropYear: string | null;
  readonly kind: string | null;
  readonly source: EntryRef;
};

export type HarvestLoad = {
  readonly field: string;
  readonly date: IsoDate;
  /** Yield units at the crop's standard moisture. */
  readonly quantity: CropQuantity;
  /** The same as they came off the field, their water included. */
  readonly wet: CropQuantity;
  /** Points of moisture as weighed. */
  readonly moisture: Points | null;
  /** Pounds in a bushel. */
  readonly testWeight: Decimal | null;
  /** What the buyer takes off a unit for it, by the grower's own table; `null`: nothing. */
  readonly dock: MoneyPerUnit | null;
  /** Its scale ticket and who took it; `null`: not said. */
  readonly ticket: string | null;
  readonly buyer: string | null;
  readonly source: EntryRef;
};

/** A loan as the lender's last statement shows it. */
export type Loan = {
  readonly name: string;
  readonly kind: "operating" | "term";
  /** What is owed before the payment at `nextDue`; of an operating loan, what is carried into the year. */
  readonly balance: Money;
  /** A fraction a year. */
  readonly rate: Decimal;
  /** `null`: nothing regular is paid, as on an operating loan. */
  readonly payment: Money | null;
  /** A divisor of twelve. */
  readonly paymentsAYear: Decimal;
  readonly nextDue: IsoDate | null;
  /** The day of its first payment ever; `null`: it was paid all along. */
  readonly firstDue: IsoDate | null;
  /** The field or crop that bears it; `null`: all land, by acres. */
  readonly bornBy: Target | null;
  readonly source: EntryRef;
};

/** The insurance policy of a crop. */
export type InsurancePolicy = Policy & { readonly crop: string; readonly source: EntryRef };

export type Season = {
  readonly settings: Settings;
  readonly crops: readonly Crop[];
  readonly fields: readonly Field[];
  /** The rough lines of the plan; left out where there are none. */
  readonly budget: readonly BudgetLine[];
  readonly items: readonly Item[];
  readonly purchases: readonly Purchase[];
  /** Invoice lines charged directly; left out where there are none. */
  readonly bills: readonly Bill[];
  /** Invoice lines for another season. */
  readonly otherSeasons: readonly OtherSeasonBill[];
  readonly applications: readonly Application[];
  readonly operations: readonly Operation[];
  readonly otherCosts: readonly OtherCost[];
  readonly sales: readonly Sale[];
  readonly harvest: readonly HarvestLoad[];
  /** What is owed; left out where no loan is entered. */
  readonly loans: readonly Loan[];
  readonly insurance: readonly InsurancePolicy[];
  readonly machines: readonly Machine[];
  readonly standCounts: readonly StandCount[];
  /** Weeds that were seen; left out where none is entered. */
  readonly weeds: readonly WeedEntry[];
  /** Tables of yield by date and stand of the grower's own, beside the published ones. */
  readonly standTables: readonly StandTable[];
  readonly published: PublishedStandTables;
  /** Daily weather of this year and earlier ones; left out where none is entered. */
  readonly weather: readonly WeatherDay[];
  readonly hybrids: readonly Hybrid[];
  /** What hybrids did in trials, a row a hybrid. */
  readonly hybridTrials: readonly HybridTrial[];
  /** What was measured and seen on the planter. */
  readonly planterChecks: readonly PlanterCheck[];
  /** How fields ended in past years. */
  readonly pastSeasons: readonly PastField[];
  /** The changes that are weighed. */
  readonly changes: readonly SeasonChange[];
};
