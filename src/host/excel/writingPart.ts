/** Fetches the part of the program that writes, which a pane needs only after it has shown its figures. */
import { HostError } from "../workbookHost";
import type * as WritingModule from "./writing";

export type Writing = typeof WritingModule;

let coming: Promise<Writing> | null = null;

/**
 * What writes; at once where it has come already. After a failure it is asked for anew.
 *
 * @throws HostError where it does not come: nothing has been written then
 */
export function writing(): Promise<Writing> {
  coming ??= import(/* webpackPrefetch: true */ "./writing").catch((cause: unknown) => {
    coming = null;
    throw new HostError("failed", "What writes into the workbook did not arrive from where the pane came from.", { cause, written: "no" });
  });
  return coming;
}
