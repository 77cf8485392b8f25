/** What can be wrong in a workbook, where it is, and which figures it makes uncertain. The words for people are in `explain.ts`. */

import type { Layer } from "../core/kinds";

/** Where in the workbook. `row` counts the body rows of the table from 1, as the grower counts them. */
export type Place = { readonly table: string; readonly row?: number; readonly column?: string };

/** What a problem makes uncertain. A figure of any of these is shown as incomplete. */
export type Subject =
  | { readonly of: "farm" }
  /** What falls in months: the cash flow, the loan's balance and the debt of the year; the budgets do not rest on it. */
  | { readonly of: "cash flow" }
  /** What the repair of the planter will cost; no figure of the season rests on it. */
  | { readonly of: "planter" }
  /** What is sprayed against which weed, and what goes into a tank; no money rests on it. */
  | { readonly of: "weeds" }
  /** What trials say of hybrids; no figure of the season rests on it. */
  | { readonly of: "hybrids" }
  /** Heat, rain and maturity; no money rests on them. */
  | { readonly of: "weather" }
  /** What past years came to. */
  | { readonly of: "years" }
  /** Where spots lie; no figure rests on it. */
  | { readonly of: "map" }
  | { readonly of: "crop"; readonly name: string }
  | { readonly of: "field"; readonly name: string }
  | { readonly of: "item"; readonly name: string }
  | { readonly of: "machine"; readonly name: string }
  | { readonly of: "change"; readonly name: string };

/** How a subject is named in a sentence. */
export const subjectName = (subject: Subject): string => ("name" in subject ? subject.name : `the ${subject.of}`);

export const problemCodes = [
  // A table as a whole.
  "table-missing",
  "column-missing",
  "column-unread",
  "column-twice",
  "table-twice",
  "table-unreadable",
  "range-missing",
  "match-missing",
  "wide-column-unsaid",
  // What a file, a table or a range leaves unclear as a whole.
  "value-differs",
  "rows-below",
  "rows-near",
  "table-almost",
  "table-beside",
  "heading-unit",
  "total-row",
  "sum-row",
  "sum-maybe",
  "sum-left",
  // A row that is none of the grower's.
  "example-row",
  "row-open",
  // One cell.
  "blank",
  "formula-error",
  "not-a-number",
  "other-currency",
  "number-beyond",
  "decimal-comma",
  "negative",
  "not-above-zero",
  "not-a-date",
  "not-in-list",
  "percent-range",
  "rate-unclear",
  "basis-area",
  "unknown-name",
  "duplicate-name",
  "stale-value",
  "unknown-unit",
  "ton-unclear",
  "unit-not-convertible",
  "analysis-missing",
  "not-an-analysis",
  // One row.
  "target-missing",
  "amount-missing",
  "amount-disagrees",
  "amount-sign",
  "rebate-sign",
  "rebate-beyond",
  "pack-incomplete",
  "cost-missing",
  "hours-missing",
  "area-too-large",
  "tenure-conflict",
  "rent-missing",
  "rent-terms-missing",
  "most-rent-low",
  "flexible-rent-one-crop",
  "share-missing",
  "same-land",
  "weight-missing",
  "place-missing",
  "payment-missing",
  "payment-low",
  "payment-unread",
  "first-due-late",
  // Stand counts.
  "part-unnamed",
  "part-acres-missing",
  "part-disagrees",
  "parts-exceed",
  "part-needed",
  "part-unsaid",
  "counted-before-planting",
  "coordinate-alone",
  "coordinates-impossible",
  "coordinates-swapped",
  "coordinates-far",
  "coordinates-east",
  // Planter checks.
  "sizes-incomplete",
  "no-wear",
  "part-unpriced",
  "wage-missing",
  "finding-unlike",
  "beyond-new",
  "part-twice",
  // Changes.
  "quantity-missing",
  "price-missing",
  "years-on-yearly",
  "salvage-unused",
  "change-disagrees",
  "rate-missing",
  "area-missing",
  "no-fields",
  // Entries that do not go together.
  "setting-unknown",
  "interest-incomplete",
  "no-price",
  "no-plan-price",
  "nothing-bought",
  "date-missing",
  "year-missing",
  "season-year-missing",
  "date-far",
  "crop-year-later",
  "crop-unplanted",
  "fuel-twice",
  "stand-outside-table",
  "planned-date-missing",
  "harvest-without-load",
  "harvest-open",
  "load-after-done",
  "next-crop-here",
  "load-disagrees",
  "tare-above-gross",
  "ticket-twice",
  "weed-twice",
  "not-sites",
  "controls-missing",
  "sites-missing",
  "weed-unlike",
  "mix-disagrees",
  "tank-missing",
  "hybrid-twice",
  "hybrid-unlike",
  "hybrid-crop-missing",
  "trial-yield-unlike",
  "trial-twice",
  "trial-moisture-missing",
  "trial-weight-missing",
  "check-twice",
  "check-without-trial",
  "day-twice",
  "low-above-high",
  "temperature-unlike",
  "weather-place-missing",
  "weather-place-unknown",
  "day-later",
  // Past seasons.
  "past-twice",
  "past-unit",
  "past-later",
  "opening-beside",
  "past-unlike",
  "dock-table-unknown",
  "dock-table-fault",
  "dock-outside",
  "test-weight-beyond",
  "test-weight-missing",
  "machine-zero",
  "stand-table-unknown",
  "stand-table-crop",
  "stand-table-fault",
  "line-twice",
  "budget-twice",
  "per-acre-high",
  "kind-sum",
  "sheet-year",
  "sheet-again",
  "bill-of-used",
  "kind-alone",
  "bill-beside-done",
  "all-in-disagrees",
  "price-unlike",
  "year-unlike",
  "quantity-zero",
  "money-alone",
  "cost-none",
  "done-twice",
  "entry-beside",
  "cost-twice",
  "capital-not-charged",
  "tractor-disagrees",
  "tractor-unnamed",
] as const;
export type ProblemCode = (typeof problemCodes)[number];

/**
 * How grave a problem is. An entry to fix leaves every figure that it touches incomplete; one to check is counted as it
 * stands and only told, because it may well be right.
 */
export type Grade = "fix" | "check";

/** The codes of grade `check`; all others are entries to fix. */
export const checkCodes: readonly ProblemCode[] = [
  "rebate-beyond",
  "line-twice",
  "budget-twice",
  "sheet-again",
  "bill-beside-done",
  "price-unlike",
  "year-unlike",
  "money-alone",
  "payment-low",
  "payment-unread",
  "value-differs",
  "table-beside",
  "total-row",
  "row-open",
  "sum-maybe",
  "sum-left",
  "rows-near",
  "harvest-open",
  "load-after-done",
  "ticket-twice",
  "weed-twice",
  "controls-missing",
  "sites-missing",
  "weed-unlike",
  "past-unlike",
  "hybrid-twice",
  "hybrid-unlike",
  "trial-twice",
  "trial-moisture-missing",
  "trial-weight-missing",
  "tank-missing",
  "test-weight-missing",
  "date-missing",
  "done-twice",
  "finding-unlike",
  "beyond-new",
  "part-unsaid",
  "counted-before-planting",
  "coordinates-far",
  "coordinates-east",
  "flexible-rent-one-crop",
];

const ofGradeCheck: ReadonlySet<ProblemCode> = new Set(checkCodes);
export const gradeOf = ({ code }: Pick<Problem, "code">): Grade => (ofGradeCheck.has(code) ? "check" : "fix");

/** Those that leave figures incomplete. */
export const toFix = (problems: readonly Problem[]): readonly Problem[] => problems.filter((problem) => gradeOf(problem) === "fix");
/** Those that are told and leave every figure complete. */
export const toCheck = (problems: readonly Problem[]): readonly Problem[] => problems.filter((problem) => gradeOf(problem) === "check");

/** A fault in the workbook. */
export type Problem = {
  readonly code: ProblemCode;
  readonly at: Place;
  /** The second of two entries that do not go together: the one that counts, where one of them does. */
  readonly other?: Place;
  /** What stands there, as text; empty where nothing does. */
  readonly found: string;
  readonly touches: readonly Subject[];
  /** The layers whose figures it makes uncertain; left out: all. */
  readonly layers?: readonly Layer[];
  /** What may stand there, where that is a list. */
  readonly choices?: readonly string[];
  /** The known name that is most like what was found; or the other thing that the problem is about. */
  readonly like?: string;
};
