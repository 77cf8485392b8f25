import { HostError } from "../workbookHost";

/** What the library reports, by its codes (`Excel.ErrorCodes`, `OfficeExtension.ErrorCodes`), as a reason and words. */
const known: Readonly<Record<string, readonly [HostError["reason"], string]>> = {
  AccessDenied: ["protected", "Excel does not allow this: the sheet or the workbook is protected, or open for reading only. Unprotect it, then try again."],
  InvalidOperationInCellEditMode: ["busy", "A cell is being typed into. Press Enter or Esc in that cell, then try again."],
  HostIsBusy: ["busy", "Excel is busy. Wait a moment, then try again."],
  ActivityLimitReached: ["busy", "Excel is busy. Wait a moment, then try again."],
  RequestAborted: ["busy", "Excel broke off before it was done. Try again."],
  ServiceNotAvailable: ["busy", "Excel on the web does not answer just now. Try again."],
  ConnectionFailure: ["busy", "The connection to Excel was lost. Check it, then try again."],
  ItemNotFound: ["missing", "Something that Pennyacre was working on is no longer in the workbook. Refresh, then try again."],
  InvalidReference: ["missing", "A range that Pennyacre was working on is no longer in the workbook. Refresh, then try again."],
  ApiNotFound: ["unsupported", "This version of Excel cannot do this. An update of Excel may help."],
  ApiNotAvailable: ["unsupported", "This version of Excel cannot do this. An update of Excel may help."],
  NotImplemented: ["unsupported", "This version of Excel cannot do this. An update of Excel may help."],
  UnsupportedFeature: ["unsupported", "This version of Excel cannot do this. An update of Excel may help."],
  UnsupportedSheet: ["unsupported", "This kind of sheet cannot hold what Pennyacre writes. Choose an ordinary worksheet."],
  UnsupportedOperation: ["unsupported", "This version of Excel cannot do this. An update of Excel may help."],
  InvalidSelection: ["failed", "Select one block of cells, then try again."],
  RequestPayloadSizeLimitExceeded: ["failed", "This is more than Excel on the web takes in one step (5 MB). Use Excel on the desktop for it."],
  ResponsePayloadSizeLimitExceeded: ["failed", "This is more than Excel on the web gives in one step (5 MB). Use Excel on the desktop for it."],
  InsertDeleteConflict: ["failed", "Rows cannot be added there because something below, such as another table, is in the way. Move it, then try again."],
  MergedRangeConflict: ["failed", "Merged cells are in the way. Unmerge them, then try again."],
  FilteredRangeConflict: ["failed", "A filter is in the way. Clear the filter, then try again."],
};

/** Whether the library said that a batch was too big for one step, so that smaller ones may pass. */
export const isTooBig = (error: unknown): boolean =>
  isLibraryError(error) && ["ResponsePayloadSizeLimitExceeded", "RangeExceedsLimit", "OperationCellsExceedLimit"].includes(error.code);

/**
 * An error of the library as a `HostError` with words for the user; the library's own error is its cause. Anything
 * else, such as a fault of ours, is given back as it is.
 */
export function refusalOf(error: unknown): unknown {
  if (error instanceof HostError || !isLibraryError(error)) return error;
  const [reason, words] = known[error.code] ?? ["failed", `Excel could not do this (${error.code}: ${error.message})`];
  return new HostError(reason, words, { cause: error });
}

const isLibraryError = (error: unknown): error is OfficeExtension.Error => error instanceof OfficeExtension.Error;
