/** A weed as the grower lists it. */
import type { EntryRef, IsoDate, Target } from "../row";

/** One weed where it was seen. */
export type WeedEntry = {
  readonly target: Target;
  readonly weed: string;
  /** Sites that it no longer dies of. */
  readonly resistantTo: readonly string[];
  readonly seenOn: IsoDate | null;
  readonly note: string | null;
  readonly source: EntryRef;
};
