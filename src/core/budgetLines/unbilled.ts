/** Kinds of which the final holds money of budget lines that nobody has billed. */
import type { FieldFigures } from "../figures";
import type { Kind } from "../kinds";
import { notBilled } from "./budgetRule";

/** What stands behind such a kind on paper and on screen; a notice says what it means. */
export const noBillYet = ", no bill yet";

/** Among fields whose harvest is done; a line that is all in leaves nothing of it. */
export const unbilledKinds = (fields: readonly Pick<FieldFigures, "final">[]): ReadonlySet<Kind> =>
  new Set(fields.flatMap(({ final }) => (final?.charges ?? []).filter(({ name }) => name === notBilled).map(({ kind }) => kind)));
