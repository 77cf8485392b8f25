/** Where in the workbook. `row` counts the body rows of the table from 1, as the grower counts them. */
export type Place = { readonly table: string; readonly row?: number; readonly column?: string };

/** What a problem makes uncertain. A figure of any of these is shown as incomplete. */
export type Subject =
  | { readonly of: "farm" }
  | { readonly of: "crop"; readonly name: string }
  | { readonly of: "field"; readonly name: string }
  | { readonly of: "item"; readonly name: string };

/** A fault in the workbook. The code is for programs and tests; the words for people live in `explain`. */
export type Problem = {
  readonly code: string;
  readonly at: Place;
  readonly found: string;
  readonly touches: readonly Subject[];
};
