/** Everything that the pane, the command line and the result sheets say of a season workbook, from one reading. */
import type { SeasonFigures } from "../core/seasonFigures";
import type { EntryRef } from "../core/row";
import type { Season } from "../core/season";
import type { SheetPlace } from "./cell";
import type { Place, Problem, Subject } from "./problem";

/** A workbook as it was understood. What could not be read is left out of `season` and named in `problems`. */
export type SeasonReading = {
  readonly season: Season;
  /** In the order of the tables and their rows. */
  readonly problems: readonly Problem[];
  /**
   * The problems that make the figures of a subject incomplete, those of its farm, crop or items included: a fault in a
   * field's row touches its crop, a fault in an item touches every field that uses it. Empty: the figures are complete.
   */
  readonly problemsOf: (subject: Subject) => readonly Problem[];
  /** The cell of an entry or a problem; the first cell of the row or of the table where no more is said; `null` where there is none. */
  readonly placeOf: (place: Place | EntryRef) => SheetPlace | null;
  /** Our names (`Season`, `Crops`, `Other costs` …) of the tables that the workbook has. */
  readonly tablesFound: ReadonlySet<string>;
};

export type SeasonReport = SeasonReading & { readonly figures: SeasonFigures };
