/** The whole calculation of a season: entries in, figures of every crop, field and item out. */
import { sum, zero } from "./numbers/decimal";
import { accounts } from "./accounts";
import { billCosts, billParts, type BillPart } from "./bills/billCosts";
import { withBills, type SetAgainst } from "./bills/setAgainst";
import { fieldLines, type FieldLines } from "./budgetLines/budgetLine";
import { unitsAt, withLines, type FieldCosts } from "./budgetLines/budgetRule";
import type { FieldLine } from "./budgetLines/fieldLine";
import { unusedItems, type Unused } from "./budgetLines/unusedItems";
import { amountByKind, budget, cropBudget, perArea, perUnitByKind } from "./stageBudget";
import { capitalOf } from "./capital";
import { charges, type Cost, type StageCosts } from "./cost";
import { yieldAt, type FieldFacts } from "./fieldFacts";
import type { CropFigures, FieldFigures, ItemFigures, NeverDone, Stage, StageFigures } from "./figures";
import { stepsOfField } from "./flexibleRent";
import { itemCosts, itemFigures, nextCropCosts } from "./itemCosts";
import type { Kind } from "./kinds";
import { landWeights } from "./land";
import type { MachineCost } from "./machines/machineCost";
import { operatingInterest } from "./operatingInterest";
import { once } from "./once";
import { nextCropWork, operationCosts, workAt } from "./operationCosts";
import { dockPerUnit } from "./loadDock";
import { loanCosts } from "./loanCosts";
import { landCosts, movingCosts, otherCosts, rentAboveCosts } from "./sharedCosts";
import { changeFigures, type ChangeFigures } from "./partialBudget/changeFigures";
import { overlays, type CropOverlay } from "./partialBudget/overlay";
import { planterRepairs, type PlanterRepair } from "./planter/planterRepair";
import { isOfSeason, salesFigures } from "./salesFigures";
import type { Operation, Season } from "./season";
import type { FieldOutlook } from "./stand/fieldOutlook";
import type { FieldStand } from "./stand/fieldStand";
import { area, type Area } from "./numbers/units";
import { areaOf, fieldsByCrop, type FieldWork, type WorkByField, type WorkRow } from "./work";

/** What the core says of a season. Money is in the workbook's currency, unrounded; `null` is "there is no answer". */
export type SeasonFigures = {
  readonly crops: readonly CropFigures[];
  readonly items: readonly ItemFigures[];
  /** What each machine costs in the outlook, in the order of its table. */
  readonly machines: readonly MachineCost[];
  /** The fields whose stand was counted. */
  readonly stands: readonly FieldStand[];
  /** What planting, stand and unevenness let expect, of the fields that tell any of them. */
  readonly outlooks: readonly FieldOutlook[];
  /** The planters that were looked at; what is due on them is no cost until it is planned, bought or done. */
  readonly planters: readonly PlanterRepair[];
  /** The changes that are weighed, in the order of their table. */
  readonly changes: readonly ChangeFigures[];
  /** The outlook of every crop beside the same with the changes that are counted in; none where none is. */
  readonly overlays: readonly CropOverlay[];
  /** What of each item budget lines bear because no row takes it, by the item's name. */
  readonly unused: ReadonlyMap<string, Unused>;
  /** What bills charged directly come to in each field, and what of the costs still to come they are set against there. */
  readonly bills: { readonly parts: readonly BillPart[]; readonly setAgainst: ReadonlyMap<string, readonly SetAgainst[]> };
};

/**
 * Plan, outlook and final of every field and crop that has fields, and what is bought and needed of every item.
 *
 * A total function over seasons that the workbook reader lets through; it throws RangeError on one that it would not,
 * such as a field of an unknown crop.
 */
export function seasonFigures(season: Season): SeasonFigures {
  const { facts, days, books, machines, work, kept } = accounts(season);
  const { ofItems, ofOperations: operations } = work;
  const ofWork = kept.of(
    "costs of operations",
    [operations, facts, days, machines],
    () =>
      new Map(
        facts.map((each) => [
          each.field.name,
          [...operations.get(each.field.name)!.values()].map((done) => operationCosts(done, each, days, machines)),
        ]),
      ),
  );
  const costs = fixedCosts(season, facts, { ofItems: books.map((book) => itemCosts(book, facts, days)), ofWork });
  const { budget: entered, bills, settings } = season;
  const lines = kept.of("budget lines", [entered, facts, days], () => fieldLines(entered, facts, days));
  const parts = kept.of("parts of bills", [bills, settings, facts, lines], () => billParts({ bills, settings }, facts, lines));
  const billed = billedCosts(season, facts, costs, parts, lines);
  const unused = unusedItems(books, facts, lines, billed);
  const ofNext = books.map((book) => nextCropCosts(book));
  const besides = ({ field: { name } }: FieldFacts) => {
    const worked = [...(operations.get(name)?.values() ?? [])].filter(({ next }) => next.done.length + next.left.length > 0);
    return {
      neverDone: [...neverDone(ofItems.get(name), ({ item }) => item), ...neverDone(operations.get(name), ({ operation }) => operation)],
      nextCrop: charges(
        [...ofNext.flatMap((byField) => byField.get(name) ?? []), ...worked.flatMap((work) => nextCropWork(work, machines))],
        [],
      ),
    };
  };
  const capital = capitalOf(season);
  const fields = facts.map((each) => {
    const { name } = each.field;
    const { fixed, moving } = billed.get(name)!;
    const lined = linedCosts(each, { fixed: withUnused(fixed, each, unused), moving }, [...(lines.get(name)?.values() ?? [])]);
    return { ...fieldFigures(season, each, lined, capital.get(name) === "charged"), ...besides(each) };
  });
  const crops = cropFigures(season, fields);
  const outlooks = [...accounts(season).outlooks.values()];
  const changes = changeFigures(season, crops);
  const items = books.map((book) => itemFigures(book, unused.get(book.item.name)?.quantity ?? zero));
  return {
    crops,
    items,
    changes,
    planters: planterRepairs(season, items, (machine) => areaOfMachine(operations, machine)),
    overlays: overlays(crops, changes),
    machines: [...machines.outlook.values()],
    stands: outlooks.flatMap(({ stand }) => stand ?? []),
    outlooks,
    unused,
    bills: { parts, setAgainst: new Map([...billed].map(([name, { off }]) => [name, off])) },
  };
}

/** What a machine goes over in the outlook, once for each pass; `null` where no row names it. */
function areaOfMachine(operations: WorkByField<Operation>, machine: string): Area | null {
  const works = [...operations.values()].flatMap((byName) => [...byName.values()]).flatMap((work) => workAt(work, "outlook"));
  const own = works.filter(({ row: { cost } }) => cost.basis === "machine" && cost.machine === machine);
  return own.length === 0 ? null : area(areaOf(own));
}

/** What was planned in a field and never done, by what it is of. */
function neverDone<Row extends WorkRow>(
  works: ReadonlyMap<string, FieldWork<Row>> | undefined,
  name: (row: Row) => string,
): readonly NeverDone[] {
  return [...(works?.values() ?? [])].flatMap(({ neverDone: undone }) =>
    undone.length === 0
      ? []
      : [{ name: name(undone[0]!.row), areaPasses: area(areaOf(undone)), entries: undone.map(({ row }) => row.source) }],
  );
}

type CostsByField = {
  readonly ofItems: readonly ReadonlyMap<string, StageCosts>[];
  readonly ofWork: ReadonlyMap<string, readonly StageCosts[]>;
};

/** The costs of every field that do not move with yield, operating interest not yet among them. */
function fixedCosts(season: Season, facts: readonly FieldFacts[], { ofItems, ofWork }: CostsByField): ReadonlyMap<string, StageCosts> {
  const { days, kept } = accounts(season);
  const isHarvested = facts.some(({ harvested }) => harvested !== null);
  const { otherCosts: entered } = season;
  const shared = kept.of("other costs shared", [entered, facts, days], () =>
    otherCosts(entered, facts, isHarvested ? ["plan", "outlook", "final"] : ["plan", "outlook"], days),
  );
  const ofLoans = loanCosts(accounts(season).loans, facts);
  return new Map(
    facts.map((each) => {
      const name = each.field.name;
      const worked = [...ofItems.flatMap((byField) => byField.get(name) ?? []), ...ofWork.get(name)!];
      const at = (stage: Stage): readonly Cost[] =>
        stage === "final" && each.harvested === null
          ? []
          : [...worked.flatMap((of) => of[stage]), ...shared.get(name)![stage], ...landCosts(each), ...ofLoans.get(name)!];
      return [name, { plan: at("plan"), outlook: at("outlook"), final: at("final") }] as const;
    }),
  );
}

/** What is bought and no row takes is so far where budget lines bear it. */
function withUnused(costs: StageCosts, { field, harvested }: FieldFacts, unused: ReadonlyMap<string, Unused>): StageCosts {
  const borne = [...unused.values()].flatMap((each) => each.costs.get(field.name) ?? []);
  return borne.length === 0
    ? costs
    : { plan: costs.plan, outlook: [...costs.outlook, ...borne], final: harvested === null ? [] : [...costs.final, ...borne] };
}

/** The costs of every field at each stage, those that move with yield apart, with what is billed to it directly. */
function billedCosts(
  season: Season,
  facts: readonly FieldFacts[],
  costs: ReadonlyMap<string, StageCosts>,
  parts: readonly BillPart[],
  lines: FieldLines,
): ReadonlyMap<string, ReturnType<typeof withBills>> {
  const isPlanned = (field: string, kind: Kind) =>
    lines.get(field)?.has(kind) === true || costs.get(field)!.plan.some((cost) => cost.kind === kind);
  const bills = billCosts(parts, accounts(season).days, isPlanned);
  return new Map(
    facts.map((each) => {
      const at = (stage: Stage) => movingCosts(each, season.otherCosts, season.settings.dryingChargePerPoint, stage);
      const [fixed, hasFinal] = [costs.get(each.field.name)!, each.harvested !== null];
      const moving = { plan: at("plan"), outlook: at("outlook"), final: hasFinal ? at("final") : [] };
      const here = bills.get(each.field.name);
      return [
        each.field.name,
        here === undefined ? { fixed, moving, off: [] } : withBills({ fixed, moving }, here, hasFinal, (stage) => unitsAt(each, stage)),
      ] as const;
    }),
  );
}

/** The costs of a field at each stage, with its budget lines. */
const linedCosts = (facts: FieldFacts, costs: FieldCosts, lines: readonly FieldLine[]): ReturnType<typeof withLines> =>
  lines.length === 0 ? { ...costs, lined: [] } : withLines(facts, lines, costs);

type OfField = Omit<FieldFigures, "neverDone" | "nextCrop">;
function fieldFigures(season: Season, facts: FieldFacts, costs: ReturnType<typeof withLines>, chargesCapital: boolean): OfField {
  const { field, crop, harvested } = facts;
  const at = (stage: Stage): StageFigures => {
    const fixed = [...costs.fixed[stage], ...operatingInterest(costs.fixed[stage], season.settings.operatingInterest)];
    const moving = costs.moving[stage];
    const amounts = amountByKind(fixed);
    const perUnit = perUnitByKind(moving);
    const interestInFull = chargesCapital
      ? { fixed: () => zero, moving: zero }
      : { fixed: () => (amounts.get("term interest") ?? zero).div(field.area), moving: perUnit.get("term interest") ?? zero };
    const ofStage = budget({
      area: field.area,
      crop,
      operatorShare: field.operatorShare,
      otherIncome: crop.otherIncomePerArea,
      harvested: harvested !== null,
      yields: { goal: field.yieldGoal, outlook: facts.outlookYield, proven: field.provenYield, used: yieldAt(facts, stage) },
      dock: dockPerUnit(facts, stage),
      rent: stepsOfField(field),
      fixed: () => perArea(amounts, field.area),
      moving: perUnit,
      interestInFull,
    });
    const all = once(() => charges([...fixed, ...rentAboveCosts(facts, ofStage.rentAboveBase)], moving));
    return {
      amountByKind: amounts,
      chargesCapital,
      get charges() {
        return all();
      },
      budget: ofStage,
    };
  };
  return {
    field: field.name,
    crop: crop.name,
    area: field.area,
    plan: at("plan"),
    outlook: at("outlook"),
    final: harvested === null ? null : at("final"),
    weighed: facts.weighed,
    lined: costs.lined,
  };
}

/** The crops that have fields, in the order of their table. */
function cropFigures(season: Season, all: readonly FieldFigures[]): readonly CropFigures[] {
  const byCrop = fieldsByCrop(season.fields);
  const land = landWeights(season.fields);
  return season.crops
    .filter((crop) => byCrop.has(crop.name))
    .map((crop) => {
      const fields = all.filter((field) => field.crop === crop.name);
      const finals = fields.map((field) => field.final);
      const harvested = finals.every((final) => final !== null);
      const stages = {
        plan: cropBudget(
          fields.map((field) => field.plan),
          crop,
          harvested,
        ),
        outlook: cropBudget(
          fields.map((field) => field.outlook),
          crop,
          harvested,
        ),
        final: harvested ? cropBudget(finals, crop, true) : null,
      };
      return {
        crop: crop.name,
        area: stages.outlook.area,
        land: area(sum(land.filter((_, index) => season.fields[index]!.crop === crop.name))),
        yieldUnit: crop.yieldUnit,
        fields,
        ...stages,
        sales: salesFigures(
          season.sales.filter((sale) => sale.crop === crop.name && isOfSeason(sale, season.settings.seasonYear)),
          stages,
        ),
      };
    });
}
