/** Dates whose year is a slip: Excel makes a date of this calendar year of `5/3`, whatever season it is typed into. */
import { monthsOfSeason } from "../core/lender/month";
import type { EntryRef, IsoDate } from "../core/row";
import type { Season } from "../core/season";
import { applicationColumns } from "./columns/applications";
import type { Named } from "./columns/column";
import { harvestColumns } from "./columns/harvest";
import { operationColumns } from "./columns/operations";
import { saleColumns } from "./columns/sales";
import { standCountColumns } from "./columns/standCounts";
import { fieldColumns } from "./columns/fields";
import { purchaseColumns } from "./columns/purchases";
import type { Problem, Subject } from "./problem";

type Dated = { readonly date: IsoDate; readonly source: EntryRef; readonly subject: () => Subject };

/** Days told by date-far already are left to it. */
export function yearsUnlike(season: Season): readonly Problem[] {
  const { seasonYear } = season.settings;
  const span = seasonYear === null ? null : monthsOfSeason(seasonYear);
  const isFar = ({ date }: Dated) => span !== null && (date < `${span.first}-01` || date > `${span.last}-31`);
  return columnsOf(season).flatMap(({ cells, ...column }) =>
    unlikeIn(
      cells.filter((cell) => !isFar(cell)),
      column,
    ),
  );
}

/**
 * The dates that stand right before and after one in its column, or the two next to an end, agree in a year that the date
 * does not have, and the same day of their year would stand nearer to them: seed paid in November before April's is none.
 */
function unlikeIn(cells: readonly Dated[], { column, isRight }: Omit<Column, "cells">): readonly Problem[] {
  if (cells.length < 3) return [];
  const found: Problem[] = [];
  cells.forEach((cell, index) => {
    const { date, source } = cell;
    const [from, to] = index === 0 ? [1, 2] : index === cells.length - 1 ? [index - 1, index - 2] : [index - 1, index + 1];
    const [beside, other] = [cells[from]!, cells[to]!];
    if (isOfOneYear(beside.date, date) || !isOfOneYear(beside.date, other.date)) return;
    const moved = `${beside.date.slice(0, 4)}${date.slice(4)}`;
    if (daysApart(moved, beside.date) >= daysApart(date, beside.date) || isRight(cell)) return;
    const near = { ...beside.source, column };
    found.push({ code: "year-unlike", at: { ...source, column }, other: near, found: date, like: beside.date, touches: [cell.subject()] });
  });
  return found;
}

/** Most dates of a column are of one year, and their first letters are told apart without cutting them off. */
const isOfOneYear = (one: IsoDate, other: IsoDate): boolean => other.startsWith(one.slice(0, 4));

/** Days between two dates, every month counted as 31: enough to tell which of two is nearer. */
const daysApart = (a: IsoDate, b: IsoDate): number => Math.abs(dayNumber(a) - dayNumber(b));
const dayNumber = (date: IsoDate): number => Number(date.slice(0, 4)) * 372 + Number(date.slice(5, 7)) * 31 + Number(date.slice(8, 10));

type Column = {
  readonly column: string;
  readonly cells: readonly Dated[];
  /** Whether a date is known to be right by something else; it is a neighbour and never told. */
  readonly isRight: (cell: Dated) => boolean;
};

function columnsOf({ fields, purchases, applications, operations, sales, harvest, standCounts }: Season): readonly Column[] {
  const cropsOfFields = new Map(fields.map(({ name, crop }) => [name, crop]));
  const cropOf = (subject: Subject) =>
    subject.of === "field" ? cropsOfFields.get(subject.name) : subject.of === "crop" ? subject.name : null;
  // What is done in the year in which its crop is planted is in step with the crop, whatever the rows beside it are about.
  const cropAndYear = (crop: string | null | undefined, date: IsoDate) => `${crop ?? ""} ${date.slice(0, 4)}`;
  const planting = new Set(
    fields.flatMap(({ crop, plannedPlanting, planted }) =>
      [plannedPlanting, planted].flatMap((date) => (date === null ? [] : [cropAndYear(crop, date)])),
    ),
  );
  const column = <Row extends { readonly source: EntryRef }>(
    { heading: name }: Named,
    rows: readonly Row[],
    dateOf: (row: Row) => IsoDate | null,
    subjectOf: (row: Row) => Subject,
  ): Column => ({
    column: name,
    cells: rows.flatMap((row) => {
      const date = dateOf(row);
      return date === null ? [] : [{ date, source: row.source, subject: () => subjectOf(row) }];
    }),
    isRight: ({ date, subject }) => name === purchaseColumns.columns.date.heading && planting.has(cropAndYear(cropOf(subject()), date)),
  });
  const ofField = ({ field }: { readonly field: string }): Subject => ({ of: "field", name: field });
  const ofItem = ({ item }: { readonly item: string }): Subject => ({ of: "item", name: item });
  const ofTarget = ({ target }: Season["operations"][number] | Season["applications"][number]): Subject =>
    "field" in target ? { of: "field", name: target.field } : { of: "crop", name: target.crop };
  return [
    // Winter wheat between two fields of corn is planted in the year before.
    ...[...new Set(fields.map(({ crop }) => crop))]
      .map((crop) => fields.filter((field) => field.crop === crop))
      .flatMap((ofCrop) => [
        column(
          fieldColumns.columns.plannedPlanting,
          ofCrop,
          ({ plannedPlanting }) => plannedPlanting,
          ({ name }) => ({ of: "field", name }),
        ),
        column(
          fieldColumns.columns.planted,
          ofCrop,
          ({ planted }) => planted,
          ({ name }) => ({ of: "field", name }),
        ),
      ]),
    column(purchaseColumns.columns.date, purchases, ({ date }) => date, ofItem),
    column(
      purchaseColumns.columns.paidOn,
      purchases.filter(({ date, paidOn }) => date !== paidOn),
      ({ paidOn }) => paidOn,
      ofItem,
    ),
    column(applicationColumns.columns.date, applications, ({ date }) => date, ofTarget),
    column(operationColumns.columns.date, operations, ({ date }) => date, ofTarget),
    column(
      saleColumns.columns.date,
      sales,
      ({ date }) => date,
      ({ crop }) => ({ of: "crop", name: crop }),
    ),
    column(harvestColumns.columns.date, harvest, ({ date }) => date, ofField),
    column(standCountColumns.columns.date, standCounts, ({ date }) => date, ofField),
  ];
}
