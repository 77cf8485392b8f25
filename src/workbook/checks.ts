/** What is wrong between entries that are each right in themselves. */
import { zero } from "../core/numbers/decimal";
import { monthsOfSeason } from "../core/lender/month";
import { fieldKinds, sixMonthsBefore } from "../core/paymentDates";
import type { EntryRef } from "../core/row";
import type { Application, Operation, OtherCost, Season } from "../core/season";
import { boughtByItem, nothingBought } from "../core/boughtByItem";
import { isOfSeason } from "../core/salesFigures";
import { harvestColumns } from "./columns/harvest";
import { itemColumns } from "./columns/items";
import { operationColumns } from "./columns/operations";
import { otherCostColumns } from "./columns/otherCosts";
import { saleColumns } from "./columns/sales";
import { fieldColumns } from "./columns/fields";
import { purchaseColumns } from "./columns/purchases";
import { doneTwice } from "./doneTwice";
import { landProblems } from "./landChecks";
import { plantingProblems } from "./plantingChecks";
import type { Problem, Subject } from "./problem";
import { shownMoney } from "./shown";
import { yearsUnlike } from "./yearChecks";

/** All of them, in the order of the tables that they point at. */
export const crossChecks = (season: Season): readonly Problem[] => [
  ...priceProblems(season),
  ...returnProblems(season),
  ...dateProblems(season),
  ...farDates(season),
  ...doneTwice(season),
  ...plantingProblems(season),
  ...landProblems(season),
  ...yearsUnlike(season),
  ...unplanted(season),
];

const placeOf = ({ table, row }: EntryRef, column?: string) => ({ table, row, ...(column === undefined ? {} : { column }) });

/** Items that are used without any price, or planned without a price of the plan. */
function priceProblems({ items, purchases, applications }: Season): readonly Problem[] {
  const unpriced = new Set(items.filter((item) => item.planPricePerPack === null).map(({ name }) => name));
  if (unpriced.size === 0) return [];
  const bought = new Set(purchases.map((purchase) => purchase.item));
  const byItem = new Map<string, { planned: boolean; touches: Map<string, Subject> }>();
  for (const application of applications) {
    if (!unpriced.has(application.item)) continue;
    const use = byItem.get(application.item) ?? { planned: false, touches: new Map<string, Subject>() };
    const subject = subjectOf(application);
    use.planned ||= application.status !== "done";
    use.touches.set(`${subject.of} ${"name" in subject ? subject.name : ""}`, subject);
    byItem.set(application.item, use);
  }
  return items
    .filter(({ name }) => unpriced.has(name))
    .flatMap((item): readonly Problem[] => {
      const use = byItem.get(item.name);
      if (use === undefined || (bought.has(item.name) && !use.planned)) return [];
      const touches: readonly Subject[] = [{ of: "item", name: item.name }, ...use.touches.values()];
      return [
        {
          code: bought.has(item.name) ? "no-plan-price" : "no-price",
          at: placeOf(item.source, itemColumns.columns.planPrice.heading),
          found: item.name,
          touches,
        },
      ];
    });
}

/**
 * What is entered for a crop that grows in no field is in no figure of a crop: it is asked about once a crop and table, at the
 * first entry.
 */
function unplanted({ crops, fields, settings: { seasonYear }, applications, operations, otherCosts, sales }: Season): readonly Problem[] {
  const grown = new Set(fields.map(({ crop }) => crop));
  const idle = new Set(crops.map(({ name }) => name).filter((name) => !grown.has(name)));
  if (idle.size === 0 || fields.length === 0) return [];
  const entries = [
    ...[...applications, ...operations].map(({ target, source }) => ({ crop: "crop" in target ? target.crop : "", source })),
    ...otherCosts.filter(({ amount }) => !amount.isZero()).map(({ over, source }) => ({ crop: "crop" in over ? over.crop : "", source })),
    ...sales.filter((sale) => isOfSeason(sale, seasonYear)).map(({ crop, source }) => ({ crop, source })),
  ].filter(({ crop }) => idle.has(crop));
  const first = new Map<string, { readonly crop: string; readonly source: EntryRef; count: number }>();
  for (const { crop, source } of entries) {
    const key = `${source.table}\n${crop}`;
    const known = first.get(key);
    if (known === undefined) first.set(key, { crop, source, count: 1 });
    else known.count += 1;
  }
  return [...first.values()].map(({ crop, source, count }) => ({
    code: "crop-unplanted",
    at: placeOf(source),
    found: crop,
    like: count === 1 ? "This entry is" : `${count} entries of this table are`,
    touches: [{ of: "farm" }],
  }));
}

/** Items of which no quantity is left to carry the money of their purchases: a credit alone, or more sent back than bought. */
function returnProblems({ items, purchases }: Season): readonly Problem[] {
  const returned = new Set(purchases.filter(({ quantity }) => quantity.isNegative() || quantity.isZero()).map(({ item }) => item));
  if (returned.size === 0) return [];
  const bought = boughtByItem(
    purchases.filter(({ item }) => returned.has(item)),
    () => zero,
  );
  return items.flatMap((item): readonly Problem[] => {
    const { quantity, value, entries } = bought.get(item.name) ?? nothingBought;
    const isLost = quantity.lt("0") || (quantity.isZero() && !value.isZero() && item.charged === "as used");
    return isLost
      ? [
          {
            code: "nothing-bought",
            at: placeOf(entries.at(-1)!, purchaseColumns.columns.quantity.heading),
            found: item.name,
            like: shownMoney(value).toFixed(2),
            touches: [{ of: "item", name: item.name }],
          },
        ]
      : [];
  });
}

const subjectOf = ({ target }: Pick<Application | Operation, "target">): Subject =>
  "field" in target ? { of: "field", name: target.field } : { of: "crop", name: target.crop };

/**
 * Fields without a planned planting that bear money of field work without a date: by the rule it is paid six months before
 * the loan is repaid, which bears interest by date.
 */
function dateProblems({
  settings: { operatingInterest },
  fields,
  items,
  operations,
  otherCosts,
  budget = [],
  applications,
}: Season): readonly Problem[] {
  if (operatingInterest?.method !== "by date") return [];
  const unplanned = fields.filter(({ plannedPlanting }) => plannedPlanting === null);
  if (unplanned.length === 0) return [];
  const [everywhere, inFields, inCrops] = [{ said: false }, new Set<string>(), new Set<string>()];
  const note = (over: OtherCost["over"]) => {
    if ("all" in over) everywhere.said = true;
    else if ("field" in over) inFields.add(over.field);
    else inCrops.add(over.crop);
  };
  const ofField = new Set(items.filter(({ kind }) => fieldKinds.has(kind)).map(({ name }) => name));
  for (const { date, item, target } of applications) if (date === null && ofField.has(item)) note(target);
  for (const { date, cost, kind, target } of operations)
    if (date === null && (cost.basis === "machine" || fieldKinds.has(kind))) note(target);
  for (const { paidOn, cash, kind, basis, over } of otherCosts) {
    if (paidOn === null && cash && basis !== "per unit of yield" && fieldKinds.has(kind)) note(over);
  }
  for (const { paidOn, kind, over } of budget) if (paidOn === null && fieldKinds.has(kind)) note(over);
  const day = sixMonthsBefore(operatingInterest.repaymentDate);
  return unplanned
    .filter(({ name, crop }) => everywhere.said || inFields.has(name) || inCrops.has(crop))
    .map(({ name, source }) => ({
      code: "date-missing",
      at: placeOf(source, fieldColumns.columns.plannedPlanting.heading),
      found: name,
      like: day,
      touches: [{ of: "field", name }],
    }));
}

/** Dates that a slip has put into another decade, where interest by date or a month of the cash flow would go astray. */
function farDates({
  settings: { seasonYear },
  purchases,
  bills = [],
  applications,
  operations,
  otherCosts,
  budget = [],
  sales,
  harvest,
}: Season): readonly Problem[] {
  if (seasonYear === null) return [];
  const { first, last } = monthsOfSeason(seasonYear);
  const [from, to] = [`${first}-01`, `${last}-31`];
  const problems: Problem[] = [];
  const isFar = (date: string | null): date is string => date !== null && (date < from || date > to);
  const note = (found: string, { table, row }: EntryRef, column: string, subject: Subject) => {
    problems.push({ code: "date-far", at: { table, row, column }, found, like: seasonYear, touches: [subject] });
  };
  for (const { date, paidOn, item, source } of purchases) {
    if (isFar(date)) note(date, source, purchaseColumns.columns.date.heading, { of: "item", name: item });
    if (paidOn !== date && isFar(paidOn)) note(paidOn, source, purchaseColumns.columns.paidOn.heading, { of: "item", name: item });
  }
  for (const { paidOn, over, source } of bills) {
    if (isFar(paidOn))
      note(paidOn, source, purchaseColumns.columns.paidOn.heading, "all" in over ? { of: "farm" } : subjectOf({ target: over }));
  }
  for (const rows of [applications, operations]) {
    for (const row of rows) if (isFar(row.date)) note(row.date, row.source, operationColumns.columns.date.heading, subjectOf(row));
  }
  for (const { paidOn, over, source } of [...otherCosts, ...budget]) {
    if (isFar(paidOn))
      note(paidOn, source, otherCostColumns.columns.month.heading, "all" in over ? { of: "farm" } : subjectOf({ target: over }));
  }
  for (const { date, delivered, crop, source } of sales) {
    if (isFar(date)) note(date, source, saleColumns.columns.date.heading, { of: "crop", name: crop });
    if (isFar(delivered)) note(delivered, source, saleColumns.columns.deliveryMonth.heading, { of: "crop", name: crop });
  }
  for (const { date, field, source } of harvest)
    if (isFar(date)) note(date, source, harvestColumns.columns.date.heading, { of: "field", name: field });
  return problems;
}
