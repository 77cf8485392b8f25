/** What a host could not do, as words and a way on. */
import { HostError, type Written } from "../host/workbookHost";

export type Failure = {
  /** What did not work, in a sentence. */
  readonly what: string;
  /** What to do about it. */
  readonly remedy: string;
  /** Whether the very same thing may work when it is tried again. */
  readonly again: boolean;
  /** Whether the host was busy, so that nobody needs to do anything but wait. */
  readonly isBusy?: boolean;
  /** What is in the workbook of what was to be written; left out where nothing is. */
  readonly written?: Written;
};

/** A value, or what the host could not do. */
export type Outcome<Value> = { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly failure: Failure };

const remedies: Record<HostError["reason"], string> = {
  busy: "Try again in a moment.",
  protected: "Take the protection off the sheet (Review, Unprotect sheet), then try again.",
  missing: "Bring it back, or read the workbook again.",
  moved: "Read the workbook again, then try again.",
  taken: "Rename or delete that name (Formulas, Name Manager), then try again.",
  formula: "Change the formula in the cell itself, or clear the cell first.",
  unsupported: "This works in a newer Excel, or beside the embedded workbook.",
  failed: "Try again. If it stays, save the workbook and open it anew.",
};

/** The words for a host's refusal. Where they say already what to do, nothing is added. */
export const failureOf = ({ message, reason, written }: HostError): Failure => ({
  what: message,
  remedy: /try(ing)? again|restarted/i.test(message) ? "" : remedies[reason],
  again: reason !== "unsupported",
  isBusy: reason === "busy",
  written,
});

/** A failure that no host told. */
export const failureOfWords = (what: string, remedy: string): { readonly ok: false; readonly failure: Failure } => ({
  ok: false,
  failure: { what, remedy, again: true },
});

/** A failure in a sentence or two. `not` says that nothing was done, and is said only where that is so. */
export function failureWords({ what, remedy, written }: Failure, not = ""): string {
  const head =
    written === undefined || written === "no"
      ? not
      : written === "partly"
        ? "Only a part was written."
        : "It is not known whether that was written.";
  return [head, what, remedy].filter((part) => part !== "").join(" ");
}

/** Runs something on the host. A refusal comes back as a value; a fault of ours goes on as an exception. */
export async function outcome<Value>(work: () => Promise<Value>): Promise<Outcome<Value>> {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    if (error instanceof HostError) return { ok: false, failure: failureOf(error) };
    throw error;
  }
}
