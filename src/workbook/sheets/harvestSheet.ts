/**
 * The result sheet *Harvest*: what is in and what is left of every field, the goal against the harvest in yield and in money, and
 * the loads.
 */
import { larger, one, sum, zero, type Decimal } from "../../core/numbers/decimal";
import type { CropFigures, FieldFigures } from "../../core/figures";
import { goalAndHarvest, type GoalAndHarvest } from "../../core/harvestMoney";
import type { HarvestLoad } from "../../core/season";
import { leftOutNotes } from "../harvestNotes";
import type { ResultSheet, SheetCell } from "../resultSheet";
import type { SeasonReport } from "../seasonReport";
import {
  areaCell,
  headings,
  moneyCell,
  moneyOrDash,
  note,
  percentCell,
  quantityCell,
  section,
  standCell,
  subtotal,
  text,
  title,
  wholeMoneyCell,
  yieldCell,
} from "./cells";
import { wholeAmounts } from "./amounts";
import { areaName, caution, fieldMark, incompleteRows, inLines, seasonName } from "./sheetWords";

type Row = readonly SheetCell[];
type Weighed = { readonly crop: CropFigures; readonly field: FieldFigures };
type Done = Weighed & { readonly money: GoalAndHarvest };
const lineLength = 150;
const right = { align: "right" } as const;
/** The layer at which goal and harvest are held against each other in money. */
const layer = "cash";

export function harvestSheet(report: SeasonReport): ResultSheet {
  const { areaUnit, currency } = report.season.settings;
  const area = areaName(report);
  const fields = report.figures.crops.flatMap((crop) => crop.fields.map((field): Weighed => ({ crop, field })));
  const weighed = fields.filter(({ field }) => field.weighed !== null);
  const done = fields
    .flatMap(({ crop, field }): readonly Done[] => {
      const money = goalAndHarvest(crop, field, layer);
      return money === null ? [] : [{ crop, field, money }];
    })
    .sort((a, b) => a.money.harvest.minus(a.money.plan).comparedTo(b.money.harvest.minus(b.money.plan)));
  return {
    name: "Harvest by field",
    columns: [28, 11, 11, 11, 11, 11, 11, 11, 11, 11, 11, 11],
    headingRows: 2,
    charts: [],
    rows: [
      title("Harvest by field"),
      note(`${seasonName(report)}. Dry units at the crop's standard moisture; money in ${currency}, on crop share the operator's.`),
      ...incompleteRows(report, { of: "farm" }),
      [],
      section("Harvest so far, field by field"),
      headings(
        "Field",
        "Crop",
        "Acres",
        "Loads",
        "Dry units",
        "Part of it in",
        "Left",
        `Per ${area}`,
        "Moisture",
        "Test weight",
        "Drying",
        "Dock",
      ),
      ...weighed.map((each) => soFarRow(report, each)),
      ...cropRows(weighed),
      ...(done.length === 0 ? [] : goalRows(report, done)),
      ...buyerRows(report),
      ...loadRows(report),
      [],
      ...[...report.figures.crops.flatMap((crop) => leftOutNotes(report, crop)), dockNote(report), caution]
        .flatMap((words) => inLines(words, lineLength))
        .map(note),
    ],
    page: { orientation: "landscape", paper: areaUnit === "ac" ? "letter" : "a4", pagesTall: 0, footer: `Harvest, ${seasonName(report)}` },
  };
}

const unitsLeft = ({
  field: {
    weighed,
    final,
    outlook: {
      budget: { area, yields },
    },
  },
}: Weighed): Decimal => (final !== null ? zero : larger(yields.outlook.times(area).minus(weighed!.quantity), zero));

function soFarRow(report: SeasonReport, of: Weighed): Row {
  const { field } = of;
  const { quantity, loads, moisture, testWeight, unitPoints, dock } = field.weighed!;
  const { operatorShare } = field.outlook.budget;
  const left = unitsLeft(of);
  const whole = quantity.plus(left);
  return [
    text(`${field.field}${fieldMark(report, field.field)}`),
    text(of.crop.crop, right),
    areaCell(field.area),
    quantityCell(loads),
    quantityCell(quantity),
    field.final !== null ? text("done", right) : percentCell(whole.isZero() ? one : quantity.div(whole)),
    field.final !== null ? text("–", right) : quantityCell(left),
    yieldCell(quantity.div(field.area)),
    percentCell(moisture === null ? null : moisture.div("100")),
    yieldCell(testWeight),
    moneyOrDash(unitPoints.times(report.season.settings.dryingChargePerPoint ?? zero).times(operatorShare)),
    moneyOrDash(dock.times(operatorShare)),
  ];
}

/** What is in of each crop that was weighed, and what is left of its fields that have begun. */
const cropRows = (weighed: readonly Weighed[]): readonly Row[] =>
  [...new Set(weighed.map(({ crop }) => crop))].map((crop) => {
    const own = weighed.filter((each) => each.crop === crop);
    const all = (value: (of: Weighed) => Decimal) => sum(own.map(value));
    const begun = own.length === crop.fields.length ? "" : `, ${own.length} of ${crop.fields.length} fields`;
    return [
      text(`${crop.crop}, ${crop.yieldUnit}${begun}`, subtotal),
      text("", subtotal),
      areaCell(
        all(({ field }) => field.area),
        subtotal,
      ),
      quantityCell(
        all(({ field }) => field.weighed!.loads),
        subtotal,
      ),
      quantityCell(
        all(({ field }) => field.weighed!.quantity),
        subtotal,
      ),
      text("", subtotal),
      quantityCell(all(unitsLeft), subtotal),
      yieldCell(all(({ field }) => field.weighed!.quantity).div(all(({ field }) => field.area)), subtotal),
      ...Array<SheetCell>(4).fill(text("", subtotal)),
    ];
  });

/** Goal against harvest, the field that lost most first. The amounts are whole, so that each line and the total come out as printed. */
function goalRows(report: SeasonReport, done: readonly Done[]): readonly Row[] {
  const area = areaName(report);
  const line = ({ plan, byYield, byPrice, byCost, harvest }: Readonly<Record<keyof GoalAndHarvest, Decimal>>, style = {}) => {
    const parts = wholeAmounts([plan, byYield, byPrice, byCost]);
    return [...parts, harvest].map((value) => wholeMoneyCell(value, style));
  };
  const entered = new Map(report.season.fields.map((field) => [field.name, field]));
  const stands = new Map(report.figures.stands.map(({ field, summary }) => [field.name, summary.mean]));
  const total = (part: keyof GoalAndHarvest) => sum(done.map(({ money }) => money[part]));
  const notAdded =
    done.length === 1
      ? []
      : [
          [
            text("All of these fields", subtotal),
            ...Array<SheetCell>(6).fill(text("", subtotal)),
            ...line(
              {
                plan: total("plan"),
                byYield: total("byYield"),
                byPrice: total("byPrice"),
                byCost: total("byCost"),
                harvest: total("harvest"),
              },
              subtotal,
            ),
          ],
        ];
  return [
    [],
    section("Goal against harvest, the field that lost most first"),
    ...inLines(
      "Net return after cash cost on the whole field: as planned at the price entered, then what yield, price and cost did to it. " +
        `Sold grain at its own price, the rest at the price entered; a dock is in the price. Stand is plants per ${area} as counted.`,
      lineLength,
    ).map(note),
    headings(
      "Field",
      "Planted",
      "Hybrid",
      "Stand",
      "Goal",
      "Harvested",
      "Difference",
      "Planned net",
      "by yield",
      "by price",
      "by cost",
      "Harvest net",
    ),
    ...done.map(({ field, money }): Row => {
      const { goal, used } = field.final!.budget.yields;
      const own = entered.get(field.field);
      return [
        text(`${field.field}${fieldMark(report, field.field)}`),
        text(own?.planted ?? "–", right),
        text(own?.variety ?? "–", { ...right, wrap: true }),
        standCell(stands.get(field.field) ?? null),
        yieldCell(goal),
        yieldCell(used),
        yieldCell(used.minus(goal)),
        ...line(money),
      ];
    }),
    ...notAdded,
  ];
}

/** Who took how much; none where no buyer is entered. */
function buyerRows({ season: { harvest, fields, crops } }: SeasonReport): readonly Row[] {
  if (harvest.every(({ buyer }) => buyer === null)) return [];
  const cropOf = new Map(fields.map(({ name, crop }) => [name, crop]));
  const units = new Map(crops.map(({ name, yieldUnit }) => [name, yieldUnit]));
  const groups = new Map<string, { readonly buyer: string; readonly crop: string; readonly loads: HarvestLoad[] }>();
  for (const load of harvest) {
    const [buyer, crop] = [load.buyer ?? "not said", cropOf.get(load.field) ?? ""];
    const key = `${buyer.toLowerCase()}\n${crop}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { buyer, crop, loads: [load] });
    else group.loads.push(load);
  }
  return [
    [],
    section("Who took it"),
    headings("Buyer", "Crop", "Unit", "Loads", "As weighed", "Dry units", "Dock"),
    ...[...groups.values()].map(({ buyer, crop, loads }): Row => [
      text(buyer),
      text(crop, right),
      text(units.get(crop) ?? "", right),
      { value: loads.length, style: { align: "right" } },
      quantityCell(sum(loads.map(({ wet }) => wet))),
      quantityCell(sum(loads.map(({ quantity }) => quantity))),
      moneyOrDash(sum(loads.map(dockOfLoad))),
    ]),
  ];
}

const dockOfLoad = ({ quantity, dock }: HarvestLoad): Decimal => (dock === null ? zero : quantity.times(dock));

/** Every load, in the order of its table; its dock is that of the whole load, landlord's part included. */
const loadRows = ({ season: { harvest } }: SeasonReport): readonly Row[] => [
  [],
  section("Loads"),
  headings("Field", "Date", "Ticket", "Buyer", "As weighed", "Moisture", "Dry units", "Test weight", "Off a unit", "Dock"),
  ...harvest.map((load): Row => [
    text(load.field),
    text(load.date, right),
    text(load.ticket ?? "", right),
    text(load.buyer ?? "", { ...right, wrap: true }),
    quantityCell(load.wet),
    percentCell(load.moisture === null ? null : load.moisture.div("100")),
    quantityCell(load.quantity),
    yieldCell(load.testWeight),
    moneyCell(load.dock),
    moneyOrDash(dockOfLoad(load)),
  ]),
];

function dockNote({
  season: {
    settings: { testWeightDock },
  },
}: SeasonReport): string {
  return testWeightDock === null
    ? "No test weight is docked: the setting Test weight dock names no table of yours."
    : `Dock by your own table ${testWeightDock}: taken off the income of the loads, per dry unit; a price in Sales is the one before it.`;
}
