/** What a host could not do, as words and a way on. */
import { HostError } from "../host/workbookHost";

export type Failure = {
  /** What did not work, in a sentence. */
  readonly what: string;
  /** What to do about it. */
  readonly remedy: string;
  /** Whether the very same thing may work when it is tried again. */
  readonly again: boolean;
};

/** A value, or what the host could not do. */
export type Outcome<Value> = { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly failure: Failure };

const remedies: Record<HostError["reason"], string> = {
  busy: "Try again in a moment.",
  protected: "Take the protection off the sheet (Review, Unprotect sheet), then try again.",
  missing: "Bring it back, or read the workbook again.",
  formula: "Change the formula in the cell itself, or clear the cell first.",
  unsupported: "This works in a newer Excel, or beside the embedded workbook.",
  failed: "Try again. If it stays, save the workbook and open it anew.",
};

/** The words for a host's refusal. */
export const failureOf = (error: HostError): Failure =>
  ({ what: error.message, remedy: remedies[error.reason], again: error.reason !== "unsupported" });

/** Runs something on the host. A refusal comes back as a value; a fault of ours goes on as an exception. */
export async function outcome<Value>(work: () => Promise<Value>): Promise<Outcome<Value>> {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    if (error instanceof HostError) return { ok: false, failure: failureOf(error) };
    throw error;
  }
}
