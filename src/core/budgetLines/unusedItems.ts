/** Items charged as they are used that no row takes: what they cost is so far where a field has nothing but a budget line of their kind. */
import { larger, one, sum, zero, type Decimal } from "../numbers/decimal";
import { isLeft, type Cost } from "../cost";
import type { FieldFacts } from "../fieldFacts";
import { bestPrice, costShare, isCharged, quantityOf, type ItemBook } from "../itemCosts";
import type { Kind } from "../kinds";
import { landWeights } from "../land";
import { averageDays, partBorrowed } from "../boughtByItem";
import { splitToTheCent } from "../numbers/split";
import { itemQuantity, money, type ItemQuantity } from "../numbers/units";
import type { FieldLines } from "./budgetLine";
import type { FieldCosts } from "./budgetRule";
import type { FieldLine } from "./fieldLine";

/**
 * What of an item goes to budget lines: its quantity, the value that each field bears before the landlord's part, and the cost of
 * the operator.
 */
export type Unused = {
  readonly quantity: ItemQuantity;
  readonly shares: ReadonlyMap<string, Decimal>;
  readonly costs: ReadonlyMap<string, Cost>;
};

export const nothingUnused: Unused = { quantity: itemQuantity(zero), shares: new Map(), costs: new Map() };

/**
 * What is bought beyond the use of each item, by its name. It is shared by what bills leave of the lines, before the landlord's
 * part where he repays it; by the lines themselves where nothing is left of any, and by acres where they are nothing. An item is
 * all stock, and not among these, where every field has rows of its kind or no line of it.
 *
 * @param costs of the fields, before any line: what rows there are of a kind
 */
export function unusedItems(
  books: readonly ItemBook[],
  facts: readonly FieldFacts[],
  lines: FieldLines,
  costs: ReadonlyMap<string, FieldCosts>,
): ReadonlyMap<string, Unused> {
  if (lines.size === 0) return new Map();
  const roughOf = new Map<Kind, readonly Rough[]>();
  return new Map(
    books.flatMap((book): readonly (readonly [string, Unused])[] => {
      const { item, bought } = book;
      if (item.charged !== "as used") return [];
      const quantity = larger(bought.quantity.minus(quantityOf(book.uses, "done", "left", "nextDone", "nextLeft")), zero);
      if (quantity.isZero()) return [];
      let rough = roughOf.get(item.kind);
      if (rough === undefined) roughOf.set(item.kind, (rough = roughFields(item.kind, book, facts, lines, costs)));
      const bearing = rough.filter(({ facts: each }) => isCharged(item, each));
      return bearing.length === 0 ? [] : [[item.name, sharedOut(book, quantity, bearing)]];
    }),
  );
}

/** A field with nothing but a line of a kind, and what is left of that line. */
type Rough = { readonly facts: FieldFacts; readonly line: FieldLine; readonly left: Decimal };

function roughFields(
  kind: Kind,
  { landlordsInputs }: ItemBook,
  facts: readonly FieldFacts[],
  lines: FieldLines,
  costs: ReadonlyMap<string, FieldCosts>,
): readonly Rough[] {
  return facts.flatMap((each): readonly Rough[] => {
    const line = lines.get(each.field.name)?.get(kind);
    const {
      fixed: { plan, outlook },
      moving,
    } = costs.get(each.field.name)!;
    const here = outlook.filter((cost) => cost.kind === kind);
    // A selling cost or a drying charge is a row as well.
    const isMoved = [...moving.plan, ...moving.outlook].some((cost) => cost.kind === kind && !cost.perUnit.isZero());
    const hasRows = isMoved || plan.some((cost) => cost.kind === kind) || here.some((cost) => isLeft(cost) || cost.progress === undefined);
    if (line === undefined || hasRows) return [];
    const left = larger(line.ours.minus(sum(here.map(({ amount }) => amount))), zero);
    // A landlord who repays his part has the operator buy for the whole line.
    const wholePerOurs = landlordsInputs !== "repaid" ? one : line.ours.isZero() ? one : line.whole.div(line.ours);
    return [{ facts: each, line, left: line.ours.isZero() && landlordsInputs === "repaid" ? line.whole : left.times(wholePerOurs) }];
  });
}

function sharedOut(book: ItemBook, quantity: Decimal, bearing: readonly Rough[]): Unused {
  const {
    item: { kind, name },
    bought,
  } = book;
  const [value, days] = [money(quantity.times(bestPrice(book))), averageDays(bought)];
  const weights =
    [bearing.map(({ left }) => left), bearing.map(({ line }) => (book.landlordsInputs === "repaid" ? line.whole : line.ours))].find((all) =>
      all.some((weight) => weight.gt("0")),
    ) ?? landWeights(bearing.map(({ facts: { field } }) => field));
  const shares = splitToTheCent(value, weights);
  const part = partBorrowed(bought);
  const borrowed = part === one ? {} : { borrowed: part };
  const entries = () => bought.entries;
  return {
    quantity: itemQuantity(quantity),
    shares: new Map(bearing.map(({ facts: { field } }, index) => [field.name, shares[index]!])),
    costs: new Map(
      bearing.map(({ facts }, index) => {
        const amount = money(shares[index]!.times(costShare(book, facts)));
        return [
          facts.field.name,
          { kind, name, cash: true, amount, moneyDays: amount.times(days), progress: "bill", ...borrowed, entries },
        ];
      }),
    ),
  };
}
