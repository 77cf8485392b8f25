/** Random seasons without what readers tell of and leave out, so that figures of them are complete. */
import type { Kind } from "../../src/core/kinds";
import type { Bill, Season } from "../../src/core/season";

/** What is for a crop that grows nowhere is told elsewhere. */
const grown = ({ fields }: Season, over: Bill["over"]): Bill["over"] =>
  "crop" in over && !fields.some(({ crop }) => crop === over.crop) ? { all: true } : over;

/** Kinds of budget lines that give way to another table are told elsewhere. */
function lineKind({ settings, crops }: Season, kind: Kind): Kind {
  const elsewhere: readonly Kind[] = ["cash rent", "land charge", "term interest", "term principal", "operating interest"];
  if (elsewhere.includes(kind)) return "overhead";
  const isCharged =
    kind === "drying"
      ? settings.dryingChargePerPoint !== null
      : kind === "haul" && crops.some(({ sellingCostPerUnit }) => !sellingCostPerUnit.isZero());
  return isCharged ? "supplies" : kind;
}

/** A bill of an item is the operator's as the item says; one that is of no item says nothing of that. */
function billsAsTyped(season: Season): readonly Bill[] {
  const { bills = [], items, applications } = season;
  const stocked = items.find(({ name }) => !applications.some((row) => row.item === name));
  return bills
    .map(({ unchargedIn: _uncharged, ...each }) => ({ ...each, over: grown(season, each.over) }))
    .map((bill) =>
      bill.operatorCostShare === null || stocked === undefined
        ? { ...bill, operatorCostShare: null }
        : { ...bill, name: stocked.name, operatorCostShare: stocked.operatorCostShare },
    );
}

/**
 * Two entries that would count one cost twice are told elsewhere: here no fuel is bought and also among the other costs,
 * nor are loans and interest. A loan, a budget line and a bill are for what grows somewhere.
 */
export function countedOnce(season: Season): Season {
  const { loans = [], fields } = season;
  const counted = (kind: Kind): Kind => {
    const ofLoans = loans.length > 0 && (kind === "term interest" || kind === "term principal");
    return ofLoans || kind === "operating interest" ? "overhead" : kind;
  };
  const isBought = season.items.some(({ kind, name }) => kind === "fuel" && season.purchases.some(({ item }) => item === name));
  return {
    // Without its year a season is asked for it, which is judged elsewhere.
    ...season,
    settings: { ...season.settings, seasonYear: "2031" },
    items: season.items.map(({ unchargedIn: _uncharged, ...item }) => item),
    budget: (season.budget ?? []).map((line) => ({ ...line, over: grown(season, line.over), kind: lineKind(season, line.kind) })),
    bills: billsAsTyped(season),
    otherCosts: season.otherCosts.map((cost) =>
      isBought && cost.kind === "fuel" ? { ...cost, kind: "supplies" } : { ...cost, kind: counted(cost.kind) },
    ),
    loans: loans.map((loan) => {
      const { bornBy = null } = loan;
      return bornBy !== null && "crop" in bornBy && !fields.some(({ crop }) => crop === bornBy.crop) ? { ...loan, bornBy: null } : loan;
    }),
  };
}
