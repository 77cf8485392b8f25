/** The season as JSON for other programs; docs/report-json.md is its description for people. */
import { planningCaution } from "../core/cautions";
import { zero, type Decimal } from "../core/numbers/decimal";
import type { BreakEvens, Budget, CropFigures, FieldFigures, ItemFigures, PerLayer, WithSold } from "../core/figures";
import { accounts } from "../core/accounts";
import { kinds, layers } from "../core/kinds";
import { farmYear } from "../core/lender/farmYear";
import { repayment } from "../core/lender/repayment";
import type { LoanYear } from "../core/loanYear";
import { notPlanned } from "../core/notPlanned";
import type { MachineCost, MachineCostName } from "../core/machines/machineCost";
import type { BreakEven } from "../core/partialBudget/breakEvenOfChange";
import type { Quadrant } from "../core/partialBudget/change";
import type { ChangeFigures } from "../core/partialBudget/changeFigures";
import type { FieldOutlook } from "../core/stand/fieldOutlook";
import type { FieldStand } from "../core/stand/fieldStand";
import type { PlanterPart } from "../core/planter/planterRepair";
import type { Field, Season } from "../core/season";
import { budgetLinesJson, farmJson } from "./budgetJson";
import { changeCautions } from "./changeWords";
import { describe } from "./explain";
import { besidesJson, harvestJson, yieldTableJson } from "./harvestJson";
import { hybridsJson } from "./hybridsJson";
import { toFix } from "./problem";
import { weatherJson } from "./weatherJson";
import { mixesJson, weedsJson } from "./weedsJson";
import { provenFromJson, yearsJson } from "./yearsJson";
import type { SeasonReport } from "./seasonReport";

/** A decimal in plain digits, unrounded; `null` where there is no answer. */
const digits = (value: Decimal | null): string | null => (value === null ? null : value.isZero() ? "0" : value.toFixed());

const perLayer = (values: PerLayer<Decimal | null>) => Object.fromEntries(layers.map((layer) => [layer, digits(values[layer])]));

function budgetJson(budget: Budget) {
  const { yields, costPerArea } = budget;
  return {
    yield: { goal: digits(yields.goal), outlook: digits(yields.outlook), proven: digits(yields.proven), used: digits(yields.used) },
    price: digits(budget.price),
    dockPerUnit: digits(budget.dock),
    costPerAcre: {
      byKind: Object.fromEntries(
        kinds.filter((kind) => costPerArea.byKind.has(kind)).map((kind) => [kind, digits(costPerArea.byKind.get(kind)!)]),
      ),
      ...perLayer(costPerArea.layers),
    },
    costPerUnit: perLayer(budget.costPerUnit),
    breakEvenPrice: perLayer(budget.breakEvenPrice),
    breakEvenYield: perLayer(budget.breakEvenYield),
    incomePerAcre: digits(budget.incomePerArea),
    interestInFull: digits(budget.interestInFull),
    rentAboveBase: digits(budget.rentAboveBase),
    netPerAcre: perLayer(budget.netPerArea),
  };
}

/** Income and net return with what is sold at its own price and the rest at the price entered, stage by stage. */
const withSoldJson = ({ plan, outlook, final }: CropFigures["sales"]["withSold"]) => {
  const stage = (of: WithSold) => ({ incomePerAcre: digits(of.incomePerArea), netPerAcre: perLayer(of.netPerArea) });
  return { plan: stage(plan), outlook: stage(outlook), final: final === null ? null : stage(final) };
};

const cropJson = ({ crop, area, yieldUnit, plan, outlook, final, sales, fields }: CropFigures) => ({
  crop,
  acres: digits(area),
  yieldUnit,
  budget: budgetLinesJson(fields, digits),
  plan: budgetJson(plan),
  outlook: budgetJson(outlook),
  final: final === null ? null : budgetJson(final),
  notPlanned: notPlanned({ fields }, "cashNeed").map((each) => ({ ...each, amount: digits(each.amount) })),
  sales: {
    sold: digits(sales.sold),
    averagePrice: digits(sales.averagePrice),
    unsold: digits(sales.unsold),
    priceNeeded: perLayer(sales.priceNeeded),
    withSold: withSoldJson(sales.withSold),
  },
});

const breakEvensJson = ({ yieldOf, yield: at, priceOf, price, breakEvenPrice, breakEvenYield, netPerArea }: BreakEvens) => ({
  yieldOf,
  yield: digits(at),
  priceOf,
  price: digits(price),
  breakEvenPrice: perLayer(breakEvenPrice),
  breakEvenYield: perLayer(breakEvenYield),
  netPerAcre: perLayer(netPerArea),
});

const flexibleRentJson = ({ flexibleRent, rentPerArea }: Pick<Field, "flexibleRent" | "rentPerArea">) =>
  flexibleRent
    ? {
        base: digits(rentPerArea),
        baseGross: digits(flexibleRent.baseGross),
        shareAbove: digits(flexibleRent.shareAbove),
        most: digits(flexibleRent.most),
      }
    : null;

const fieldJson = (figures: FieldFigures, yieldOutlook: FieldOutlook | undefined, entered: Field) => {
  const { field, crop, area, plan, outlook, final } = figures;
  return {
    field,
    crop,
    acres: digits(area),
    flexibleRent: flexibleRentJson(entered),
    budget: budgetLinesJson([figures], digits),
    plan: budgetJson(plan.budget),
    outlook: budgetJson(outlook.budget),
    final: final === null ? null : budgetJson(final.budget),
    breakEvens: outlook.budget.breakEvens.map(breakEvensJson),
    yieldTable: yieldTableJson(yieldOutlook, digits),
    ...besidesJson(figures, digits),
    provenFrom: provenFromJson(entered),
  };
};

const itemJson = ({ item, unit, averagePrice, bought, used, needed, short, left }: ItemFigures) => ({
  item,
  unit,
  averagePrice: digits(averagePrice),
  bought: digits(bought),
  used: digits(used),
  needed: digits(needed),
  short: digits(short),
  left: digits(left),
});

const standJson = ({ field, summary, parts, emergence, table, chosen, outlook }: FieldStand) => ({
  field: field.name,
  date: summary.to,
  places: digits(summary.places),
  plantsPerAcre: digits(summary.mean),
  low: digits(summary.interval?.low ?? null),
  high: digits(summary.interval?.high ?? null),
  cv: digits(summary.coefficientOfVariation),
  emergence: digits(emergence),
  relativeYield: digits(outlook?.ok === true ? outlook.value.real.relativeYield : null),
  table: table?.name ?? null,
  region: table?.region ?? null,
  chosen,
  yieldOutlook: digits(outlook?.ok === true ? outlook.value.outlook : null),
  parts: parts.map((part) => ({
    part: part.name,
    acres: digits(part.area),
    places: digits(part.summary?.places ?? zero),
    plantsPerAcre: digits(part.summary?.mean ?? field.targetStand),
    yieldOutlook: digits(part.outlook),
  })),
});

function machineJson({ machine, capacity, lines, ownership, perArea }: MachineCost) {
  const of = (name: MachineCostName) => digits(lines.find((line) => line.name === name)?.perArea ?? null);
  return {
    machine: machine.name,
    acresPerHour: digits(capacity),
    perAcre: {
      fuel: of("Fuel"),
      lube: of("Lube"),
      labour: of("Labour"),
      repairs: of("Repairs"),
      ownership: digits(ownership),
      total: digits(perArea),
    },
  };
}

const valueOf = (answer: BreakEven | null) => digits(answer?.found === true ? answer.value : null);

function changeJson(figures: ChangeFigures, season: Season) {
  const { change, net, breakEven, payback } = figures;
  const inAll = (quadrant: Quadrant) => digits(net.quadrants[quadrant].perYear);
  return {
    change: change.name,
    acres: digits(change.area),
    addedReturns: inAll("added returns"),
    reducedCosts: inAll("reduced costs"),
    addedCosts: inAll("added costs"),
    reducedReturns: inAll("reduced returns"),
    netPerAcre: digits(net.net.perArea),
    net: digits(net.net.perYear),
    breakEven: { yieldGain: valueOf(breakEven.yieldGain), price: valueOf(breakEven.price), acres: valueOf(breakEven.area) },
    paybackYears: digits(payback?.simple ?? null),
    layout: change.layout,
    cautions: changeCautions(figures, season),
  };
}

const planterJson = ({ check: { machine, part, row, measured, replaceAt }, state, cost }: PlanterPart) => ({
  machine,
  part,
  row,
  measured: digits(measured),
  replaceAt: digits(replaceAt),
  finding: state,
  cost: digits(cost),
});

const loanJson = ({ loan, interest, principal, opening, closing, payments }: LoanYear) => ({
  loan: loan.name,
  kind: loan.kind,
  interest: digits(interest),
  principal: digits(principal),
  before: digits(opening),
  after: digits(closing),
  payments: payments.map(({ month, payment, interest: ofIt, balance }) => ({
    month,
    payment: digits(payment),
    interest: digits(ofIt),
    owed: digits(balance),
  })),
});

function repaymentJson({ figures }: SeasonReport) {
  const year = farmYear(figures);
  const { capacity, debtService, margin, marginAfterReplacement, termDebtCoverage } = repayment(year);
  return {
    income: digits(year.income),
    cashCosts: digits(year.cashCosts),
    capacity: digits(capacity),
    due: digits(debtService),
    margin: digits(margin),
    marginAfterReplacement: digits(marginAfterReplacement),
    coverage: digits(termDebtCoverage),
  };
}

/** The report as plain data: every quantity a decimal string, "acres" meaning the workbook's own area unit. */
export function reportJson(report: SeasonReport) {
  const { season, figures, problems } = report;
  const outlooks = new Map(figures.outlooks.map((each) => [each.field.name, each]));
  const entered = new Map(season.fields.map((field) => [field.name, field]));
  return {
    caution: planningCaution,
    complete: toFix(problems).length === 0,
    problems: problems.map(describe),
    farm: farmJson(report, digits),
    crops: figures.crops.map(cropJson),
    fields: figures.crops.flatMap((crop) => crop.fields).map((each) => fieldJson(each, outlooks.get(each.field), entered.get(each.field)!)),
    items: figures.items.map(itemJson),
    stands: figures.stands.map(standJson),
    harvest: harvestJson(report, digits),
    weather: weatherJson(report, digits),
    hybrids: hybridsJson(report, digits),
    weeds: weedsJson(report, digits),
    mixes: mixesJson(report, digits),
    years: yearsJson(report, digits),
    machines: figures.machines.map(machineJson),
    planter: figures.planters.flatMap(({ parts }) => parts.map(planterJson)),
    loans: accounts(report.season).loans.map(loanJson),
    repayment: repaymentJson(report),
    changes: figures.changes.map((change) => changeJson(change, season)),
  };
}
