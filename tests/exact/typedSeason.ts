/** A season of the core as a workbook that people have typed: cells, headings, order and gaps as they come. */
import type { Decimal } from "../../src/core/numbers/decimal";
import { chargedAsUsed } from "../../src/core/kinds";
import { repaidOn } from "../../src/core/paymentDates";
import type { Target } from "../../src/core/row";
import type { Bill, BudgetLine, Item, Operation, OtherCost, Season } from "../../src/core/season";
import type { AreaUnit } from "../../src/core/numbers/units";
import type { Cell, RawTable, WorkbookContent } from "../../src/workbook/cell";
import { basisWords } from "../../src/workbook/columns/basis";
import type { Habits } from "./typing";

/** One row: what stands under each heading. */
type Typed = Readonly<Record<string, Cell>>;

/** The workbook. Every row of the season is typed in its order, blank rows between them. */
export function typedSeason(season: Season, habits: Habits): WorkbookContent {
  const of = <Row>(name: string, rows: readonly Row[], typed: (row: Row) => Typed): RawTable => tableOf(name, rows.map(typed), habits);
  const tables = [
    tableOf("Season", settingsOf(season, habits), habits),
    of("Crops", season.crops, (crop) => ({
      Crop: crop.name,
      "Yield unit": habits.word(crop.yieldUnit),
      "Weight per bu": habits.number(crop.weightPerBushel),
      "Standard moisture": habits.share(crop.standardMoisture?.div("100") ?? null),
      "Expected price": habits.money(crop.price),
      "Low price": habits.money(crop.lowPrice),
      "High price": habits.money(crop.highPrice),
      "Per-unit selling cost": habits.money(crop.sellingCostPerUnit),
      "Expected harvest moisture": habits.share(crop.expectedHarvestMoisture?.div("100") ?? null),
      "Other income per acre": habits.money(crop.otherIncomePerArea),
    })),
    of("Fields", season.fields, (field) => ({
      Field: field.name,
      Crop: habits.word(field.crop),
      Acres: habits.number(field.area),
      "Yield goal": habits.number(field.yieldGoal),
      "Proven yield": habits.number(field.provenYield),
      Tenure: habits.word(field.tenure),
      "Rent per acre": habits.money(field.rentPerArea),
      // Only where some rent is flexible: the others are typed as they were before there were such columns.
      ...(season.fields.some(({ flexibleRent }) => flexibleRent) && {
        "Base gross per acre": habits.money(field.flexibleRent?.baseGross ?? null),
        "Share above base %": habits.share(field.flexibleRent?.shareAbove ?? null),
        "Most rent": habits.money(field.flexibleRent?.most ?? null),
      }),
      "Land charge per acre": habits.money(field.landChargePerArea),
      "Operator share of crop %": habits.share(field.tenure === "crop share" ? field.operatorShare : null),
      "Planned planting date": habits.date(field.plannedPlanting),
      "Planted date": habits.date(field.planted),
      "Target stand": habits.number(field.targetStand),
      "Harvest done":
        field.harvestDone === null
          ? habits.pick("", "no", habits.blank())
          : field.harvestDone.on === null
            ? habits.pick<Cell>("yes", "Yes", " YES ", true)
            : habits.date(field.harvestDone.on),
      "Same land as": habits.word(field.sameLandAs),
    })),
    of("Items", season.items, (item) => ({
      Item: item.name,
      Kind: habits.word(item.kind),
      "Pack name": item.packName,
      "Pack size": habits.number(item.packSize),
      "Pack unit": habits.pick("lb", "lbs", "LB", "pounds"),
      "Plan price per pack": habits.money(item.planPricePerPack),
      "Operator share of cost %": habits.share(
        item.operatorCostShare.eq("1") ? habits.pick(null, item.operatorCostShare) : item.operatorCostShare,
      ),
      Charged:
        item.charged === (chargedAsUsed.has(item.kind) ? "as used" : "by acres")
          ? habits.pick(habits.blank(), item.charged)
          : habits.word(item.charged),
    })),
    of("Budget", season.budget ?? [], (row) => ({
      For: habits.word(forWhat(row)),
      Kind: habits.word(row.kind),
      Amount: habits.money(row.amount),
      Basis:
        row.basis === "whole"
          ? habits.word("whole")
          : habits.pick(habits.blank(), habits.word(basisWords("per acre", season.settings.areaUnit))),
      Month: habits.date(row.paidOn),
      "Operator share of cost %": habits.share(
        row.operatorCostShare.eq("1") ? habits.pick(null, row.operatorCostShare) : row.operatorCostShare,
      ),
      "All in": row.allIn ? habits.word("yes") : habits.pick("", "no", habits.blank()),
    })),
    tableOf("Purchases", inOneTable(season, habits), habits),
    of("Applications", season.applications, (row) => ({
      "Field or Crop": habits.word(nameOf(row.target)),
      Item: habits.word(row.item),
      Rate: habits.number(row.rate),
      "Rate unit": habits.pick(
        "lb",
        season.settings.areaUnit === "ac" ? "lb/ac" : "lb/ha",
        season.settings.areaUnit === "ac" ? "lb per acre" : "lbs per hectare",
      ),
      Acres: habits.number(row.area),
      Date: habits.date(row.date),
      Status: habits.word(row.status),
    })),
    of("Operations", season.operations, (row) => ({
      "Field or Crop": habits.word(nameOf(row.target)),
      Operation: row.operation,
      Acres: habits.number(row.area),
      Passes: habits.number(row.passes),
      Date: habits.date(row.date),
      Status: habits.word(row.status),
      Kind: habits.word(row.kind),
      ...costOf(row.cost, habits, season.settings.areaUnit),
    })),
    of("Other costs", season.otherCosts, (row) => ({
      Item: row.item,
      Kind: habits.word(row.kind),
      Amount: habits.money(row.amount),
      Basis: habits.word(basisWords(row.basis, season.settings.areaUnit)),
      "Shared over": sharedOver(row, habits),
      Cash: row.cash ? habits.pick("yes", "Yes", "") : habits.word("no"),
      Month: habits.date(row.paidOn),
    })),
    of("Loans", season.loans ?? [], (row) => ({
      Name: row.name,
      Kind: row.kind === "term" ? habits.pick(habits.blank(), "term", "Term") : habits.word(row.kind),
      Balance: habits.money(row.balance),
      Rate: habits.rate(row.rate),
      Payment: habits.money(row.payment),
      "Payments a year": row.paymentsAYear.eq("1") ? habits.pick<Cell>("", 1) : habits.number(row.paymentsAYear),
      "Next due": habits.date(row.nextDue),
      "First due": habits.date(row.firstDue ?? null),
      For: (row.bornBy ?? null) === null ? habits.pick(habits.blank(), "all") : habits.word(nameOf(row.bornBy!)),
    })),
    of("Sales", season.sales, (row) => ({
      Crop: habits.word(row.crop),
      Date: habits.date(row.date),
      Quantity: habits.number(row.quantity),
      Price: habits.money(row.price),
      "Crop year": row.cropYear ?? "",
    })),
    of("Harvest", season.harvest, (row) => ({
      Field: habits.word(row.field),
      Date: habits.date(row.date),
      "Weight or bushels": habits.number(row.quantity),
      Unit: habits.pick("", "bu"),
      "Bushels are": habits.word("dry"),
      Moisture: habits.share(row.moisture?.div("100") ?? null),
    })),
  ];
  return { dateSystem: habits.dateSystem, tables, ranges: new Map() };
}

const forWhat = ({ over }: Pick<BudgetLine, "over">): string => ("all" in over ? "all" : nameOf(over));

/** Purchases and bills that are charged directly, each sort in its order. */
function inOneTable(season: Season, habits: Habits): readonly Typed[] {
  const items = new Map(season.items.map((item) => [item.name, item]));
  const purchases = season.purchases.map((row): Typed => ({
    Date: habits.date(row.date),
    Item: habits.word(row.item),
    ...quantityOf(items.get(row.item)!, row.quantity, habits),
    Amount: habits.money(row.amount),
    Freight: habits.money(row.freight.isZero() ? null : row.freight),
    Rebate: habits.money(row.rebate.isZero() ? null : row.rebate),
    "Paid on": row.paidOn === row.date ? habits.blank() : habits.date(row.paidOn),
  }));
  const bills = (season.bills ?? []).map((bill): Typed => ({
    ...billOf(bill, items.get(bill.name), habits),
    For: habits.word(forWhat(bill)),
  }));
  const mixed: Typed[] = [];
  for (const [own, other] = [[...purchases], [...bills]]; own.length + other.length > 0;)
    mixed.push((other.length === 0 || (own.length > 0 && habits.pick(true, false)) ? own : other).shift()!);
  return mixed;
}

/** A bill of an item that is known has its kind where nothing else is said. */
function billOf({ kind, name, amount, paidOn }: Bill, item: Item | undefined, habits: Habits): Typed {
  const day = habits.pick({ Date: habits.date(paidOn) }, { Date: habits.date("2031-02-03"), "Paid on": habits.date(paidOn) });
  return {
    ...day,
    Item: item === undefined ? name : habits.word(name),
    Kind: item?.kind === kind ? habits.pick(habits.blank(), kind) : habits.word(kind),
    Quantity: habits.blank(),
    Unit: habits.blank(),
    Amount: habits.money(amount),
  };
}

const nameOf = (target: Target): string => ("field" in target ? target.field : target.crop);

function settingsOf({ settings }: Season, habits: Habits): readonly Typed[] {
  const interest = settings.operatingInterest;
  const repaid = repaidOn(settings);
  const rows: readonly (readonly [string, Cell])[] = [
    ["Season year", habits.pick<Cell>(settings.seasonYear!, Number(settings.seasonYear))],
    ["Currency", settings.currency],
    ["Area unit", habits.word(settings.areaUnit)],
    ...(habits.decimalComma ? [["Decimal comma", habits.word("yes")] as const] : []),
    ...(settings.dryingChargePerPoint === null ? [] : [["Drying charge per point", habits.money(settings.dryingChargePerPoint)] as const]),
    ...(settings.landlordsInputs === "repaid" ? [] : [["Landlord's inputs", habits.word("bought by the landlord")] as const]),
    ...(settings.dryingCountedOn === "wet" ? [] : [["Drying counted on", habits.word("dry")] as const]),
    ...(interest === null
      ? []
      : [["Operating interest rate", habits.rate(interest.rate)] as const, ["Interest method", habits.word(interest.method)] as const]),
    ...(interest?.method === "months" ? [["Interest months", habits.number(interest.months)] as const] : []),
    ...(repaid === null ? [] : [["Repayment date", habits.date(repaid)] as const]),
  ];
  return habits.shuffled(rows).map(([setting, value]) => ({ Setting: habits.word(setting), Value: value }));
}

/** In packs where that comes out even, else in the base unit. */
function quantityOf({ packName, packSize }: Item, quantity: Decimal, habits: Habits): Typed {
  const packs = quantity.div(packSize);
  return packs.decimalPlaces() <= 4 && habits.pick(true, false)
    ? { Quantity: habits.number(packs), Unit: habits.pick(packName, `${packName}s`) }
    : { Quantity: habits.number(quantity), Unit: habits.pick("lb", "lbs", "Pounds") };
}

function costOf(cost: Operation["cost"], habits: Habits, areaUnit: AreaUnit): Typed {
  if (cost.basis === "machine") return { Machine: habits.word(cost.machine) };
  const hours = cost.basis === "per hour" ? { Hours: habits.number(cost.hours) } : {};
  return {
    Rate: habits.money(cost.rate),
    Basis: cost.basis === "per acre" ? habits.pick("", habits.word(basisWords("per acre", areaUnit))) : habits.word(cost.basis),
    ...hours,
  };
}

function sharedOver({ over, by }: OtherCost, habits: Habits): Cell {
  const name = "all" in over ? habits.pick("all", "", "All") : nameOf(over);
  return by === "revenue" ? `${name} by revenue` : name === "" ? "" : habits.pick(name, `${name} by acres`);
}

/** Columns in any order, headings in other capitals and spaces, a column of the grower's own, blank rows between. */
function tableOf(name: string, rows: readonly Typed[], habits: Habits): RawTable {
  const headings = habits.shuffled([...new Set(rows.flatMap((row) => Object.keys(row))), "My remarks"]);
  const blank = headings.map(() => "");
  const body = rows.flatMap((row) => {
    const cells = headings.map((heading) => row[heading] ?? (heading === "My remarks" ? habits.pick("", "ask again", "12") : ""));
    return habits.below(6) === 0 ? [blank, cells] : [cells];
  });
  const spelled = (heading: string) =>
    heading === "My remarks" ? heading : habits.pick(heading, heading, heading.toUpperCase(), heading.replaceAll(" ", "  "), ` ${heading}`);
  return {
    name: habits.pick(name, name.replaceAll(" ", "_"), name.replaceAll(" ", "")),
    headers: headings.map(spelled),
    rows: body,
    body: { sheet: name, row: 1, column: 0 },
  };
}
