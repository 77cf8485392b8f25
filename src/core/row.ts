/** What rows of the workbook's tables have in common: where they stand, their days, and what they are about. */

/** The row that a figure came from, so that every figure can be opened down to its entries. `row` counts body rows from 1. */
// eslint-disable-next-line no-restricted-syntax -- a place in a table is not a quantity
export type EntryRef = { readonly table: string; readonly row: number };

/** A calendar day as `YYYY-MM-DD`. */
export type IsoDate = string & { readonly __brand?: "IsoDate" };

/** Where a row belongs: one field, or every field of a crop. */
export type Target = { readonly field: string } | { readonly crop: string };
