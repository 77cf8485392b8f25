/** What the fields are charged with and what the year pays for it, group by group of the cash flow, and every reason for the difference. */
import { larger, sum, zero, type Decimal } from "../numbers/decimal";
import { accounts } from "../accounts";
import { nothingUnused } from "../budgetLines/unusedItems";
import { isOver } from "../over";
import { countsIn, kinds, type Kind } from "../kinds";
import { landArea } from "../land";
import { partsOf, workAt } from "../operationCosts";
import type { SeasonFigures } from "../seasonFigures";
import type { Season } from "../season";
import { linesBack } from "./budgetFlows";
import type { CashFlow } from "./cashFlow";
import { differenceReasons, type Differences } from "./differences";
import { itemDifferences } from "./itemDifferences";
import { billDifferences } from "./billFlows";
import { landlordsGroup } from "./itemFlows";
import { unchargedBills } from "./unchargedBills";
import { linesPerUnit, paidPerUnit } from "./paidPerUnit";
import { operatingRate } from "./operatingRate";

/** charged + all differences = paid. What comes in is paid below zero. */
export type PaidAndCharged = {
  readonly group: string;
  readonly charged: Decimal;
  readonly differences: Differences;
  readonly paid: Decimal;
};

const movingGroup = "drying, haul and selling";
const termGroup = "term loans";
const balanceGroup = "interest on the operating loan";

/** Every group of what goes out, in the order of the cost kinds; groups in which nothing is charged or paid are left out. */
export function paidAndCharged(season: Season, figures: SeasonFigures, flow: CashFlow): readonly PaidAndCharged[] {
  const { facts, books, work, machines, loans: ofLoans } = accounts(season);
  const paid = (group: string): Decimal => sum(flow.months.map(({ flows }) => flows.get(group) ?? zero)).neg();
  const bills = unchargedBills(books, facts, figures);
  const works = [...work.ofOperations.values()].flatMap((byName) => [...byName.values()]);
  const parts = (kind: Kind, of: "season" | "next") =>
    works
      .flatMap((work) => (of === "season" ? workAt(work, "outlook") : [...work.next.done, ...work.next.left]))
      .flatMap((work) => partsOf(work, machines.outlook).map((part) => ({ ...part, isComputed: work.row.cost.basis === "machine" })))
      .filter((part) => part.cash && part.kind === kind)
      .map(({ perUnit, quantity, isComputed }) => ({ amount: perUnit.times(quantity), isComputed }));
  const ofWork = (kind: Kind): Differences => {
    const next = parts(kind, "next");
    const computed = sum([...parts(kind, "season"), ...next].filter(({ isComputed }) => isComputed).map(({ amount }) => amount));
    const bill = bills.get(kind) ?? zero;
    return {
      "next crop": sum(next.map(({ amount }) => amount)),
      "machine work": (bill.lt(computed) ? larger(bill, zero) : computed).neg(),
    };
  };
  const isByBalance = !operatingRate(season.settings, season.loans).isZero();
  const loans = (kind: Kind) =>
    sum(ofLoans.map(({ interest, principal }) => (kind === "term interest" ? interest : kind === "term principal" ? principal : zero)));
  // What is charged at a rate is borne by the balance, and so is what is entered, where a balance bears any.
  const interestCharged = (charged: Decimal): Differences => {
    const lines = figures.crops
      .flatMap(({ fields }) => fields)
      .flatMap(({ lined }) => lined.filter(({ kind }) => kind === "operating interest"));
    const entered = enteredInterest(season).plus(sum(lines.map(({ rest }) => rest.amount)));
    return isByBalance
      ? { "interest by balance": charged.neg() }
      : { "interest by balance": charged.minus(entered).neg(), "no field": bornByNone(season, "operating interest") };
  };
  const ofKind = kinds
    .filter((kind) => countsIn(kind, "cashNeed"))
    .map((kind): PaidAndCharged => {
      const charged = chargedFixed(figures, kind).minus(loans(kind));
      const items = books
        .filter(({ item }) => item.kind === kind)
        .map((book) => itemDifferences(book, facts, figures.unused.get(book.item.name) ?? nothingUnused));
      const others =
        kind === "operating interest"
          ? interestCharged(charged.minus(sum(parts(kind, "season").map(({ amount }) => amount))))
          : { "no field": bornByNone(season, kind) };
      return {
        group: kind,
        charged,
        differences: added([
          ...items,
          ofWork(kind),
          others,
          billDifferences(figures, kind),
          { "other season": sum(season.otherSeasons.filter((bill) => bill.kind === kind).map(({ amount }) => amount)) },
          {
            landlord:
              isByBalance && kind === "operating interest"
                ? zero
                : linesBack(season, figures, (each) => each.kind === kind && !each.rest.isMoving),
          },
        ]),
        paid: paid(kind),
      };
    });
  const carried = sum(ofLoans.filter(({ loan }) => loan.kind === "operating").map(({ interest }) => interest));
  const due = sum(ofLoans.filter(({ loan }) => loan.kind === "term").map(({ interest, principal }) => interest.plus(principal)));
  const borne = sum(flow.months.map(({ interest }) => interest));
  const backFromLandlords = paid(landlordsGroup);
  return [
    ...ofKind,
    {
      group: movingGroup,
      charged: chargedMoving(figures),
      differences: { "beyond yield": movingBeyond(figures), landlord: linesBack(season, figures, ({ rest }) => rest.isMoving) },
      paid: paid(movingGroup),
    },
    { group: termGroup, charged: due, differences: {}, paid: paid(termGroup) },
    { group: balanceGroup, charged: carried, differences: { "interest by balance": borne.minus(carried) }, paid: borne },
    { group: landlordsGroup, charged: zero, differences: { landlord: backFromLandlords }, paid: backFromLandlords },
  ].filter(({ charged, differences, paid: out }) => [charged, out, ...Object.values(differences)].some((amount) => !amount.isZero()));
}

const chargedFixed = ({ crops }: Pick<SeasonFigures, "crops">, kind: Kind): Decimal =>
  sum(
    crops
      .flatMap(({ fields }) => fields)
      .flatMap(({ outlook: { charges } }) => charges.filter((charge) => charge.cash && charge.kind === kind))
      .map(({ amount }) => amount),
  );

/** What moves with yield, on the operator's part of the yields of the outlook. */
const chargedMoving = ({ crops }: Pick<SeasonFigures, "crops">): Decimal =>
  sum(
    crops
      .flatMap(({ fields }) => fields)
      .map(({ outlook: { budget, charges } }) =>
        sum(charges.filter(({ cash, kind }) => cash && countsIn(kind, "cashNeed")).map(({ perUnit }) => perUnit))
          .times(budget.operatorShare)
          .times(budget.yields.used)
          .times(budget.area),
      ),
  );

/** The same on grain that is sold beyond them. */
const movingBeyond = ({ crops }: Pick<SeasonFigures, "crops">): Decimal =>
  sum(crops.map(({ sales, fields }) => larger(sales.unsold.neg(), zero).times(paidPerUnit({ fields }).minus(linesPerUnit({ fields })))));

/** Whole amounts for a crop that stands in no field. */
const bornByNone = ({ otherCosts, fields }: Season, kind: Kind): Decimal =>
  sum(
    otherCosts
      .filter((cost) => cost.cash && cost.kind === kind && cost.basis === "whole farm" && !fields.some((field) => isOver(cost.over, field)))
      .map(({ amount }) => amount),
  );

/** Operating interest that is entered as another cost and falls to fields. */
const enteredInterest = ({ otherCosts, fields }: Season): Decimal =>
  sum(
    otherCosts
      .filter(({ cash, kind, basis }) => cash && kind === "operating interest" && basis !== "per unit of yield")
      .map((cost) => {
        const over = fields.filter((field) => isOver(cost.over, field));
        return cost.basis === "per acre" ? cost.amount.times(landArea(over)) : over.length === 0 ? zero : cost.amount;
      }),
  );

const added = (all: readonly Differences[]): Differences =>
  Object.fromEntries(differenceReasons.map((reason) => [reason, sum(all.map((each) => each[reason] ?? zero))]));
