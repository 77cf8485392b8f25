/** A change at low, expected and high values of what is uncertain. */
import type { Change } from "./change";
import { withEntries, type Setting } from "./entry";
import { netChange, type NetChange } from "./netChange";

export type Strip<Of> = { readonly low: Of; readonly expected: Of; readonly high: Of };

/** The net change three times: each with its own settings on top of the change as it is. */
export const strip = (change: Change, settings: Strip<readonly Setting[]>): Strip<NetChange> => ({
  low: netChange(withEntries(change, settings.low)),
  expected: netChange(withEntries(change, settings.expected)),
  high: netChange(withEntries(change, settings.high)),
});
