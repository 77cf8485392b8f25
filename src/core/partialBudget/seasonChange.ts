/** A change as the table `Changes` of a season has it: some of its prices follow from the season's own figures. */
import type { Target } from "../row";
import type { Change, ChangeLine } from "./change";
import type { LayoutName } from "./layouts/layout";

export type SeasonChangeLine = ChangeLine & {
  /**
   * Whether it sells (or keeps, or loses) the crop of the change at what a unit nets; `price` is then `null` until the season is
   * computed.
   */
  readonly sellsCrop: boolean;
};

export type SeasonChange = Omit<Change, "lines"> & {
  readonly lines: readonly SeasonChangeLine[];
  /** The field or crop that it is about; `null`: the whole farm. */
  readonly target: Target | null;
  /** The ready layout that it came from, by which its cautions go under any name; `null` where somebody typed it. */
  readonly layout: LayoutName | null;
  /** Whether it is laid over the outlook. */
  readonly countedIn: boolean;
};
