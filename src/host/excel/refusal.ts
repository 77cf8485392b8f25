import { HostError } from "../workbookHost";

const protectedWords =
  "Excel does not allow this: the sheet or the workbook is protected, or open for reading only. Unprotect it, then try again.";
const tooOldWords = "This version of Excel cannot do this. An update of Excel may help.";
const goneWords = "Something that Pennyacre was working on is no longer in the workbook. Refresh, then try again.";
const brokenOffWords = "Excel broke off before it was done. Try again.";
const lostWords = "The connection to Excel was lost. Check it, then try again.";
const strangeWords = "What Excel answered could not be understood. Try again; if it stays, close the pane and open it anew.";
const internalWords = "Excel met a fault of its own. Try again; if it stays, save the workbook, close it and open it anew.";
const inTheWayWords = "Rows cannot be added there because something below, such as another table, is in the way. Move it, then try again.";
const overlapWords = "Merged cells, another table or a pivot table are in the way. Unmerge the cells or move the other, then try again.";
const linksWords = "Excel asks whether this workbook may use other workbooks. Answer it (or allow the links), then try again.";
const memoryWords = "Excel has no memory left for this. Close other workbooks or programs, then try again.";

/**
 * What the library reports, by its codes, as a reason and words: every code of `Excel.ErrorCodes` and `OfficeExtension.ErrorCodes`,
 * and of Microsoft's page "Error handling with the application-specific JavaScript APIs" (edition of March 2024).
 */
export const knownCodes: Readonly<Record<string, readonly [HostError["reason"], string]>> = {
  AccessDenied: ["protected", protectedWords],
  BadPassword: ["protected", protectedWords],
  NotAllowed: ["protected", protectedWords],
  InvalidOperationInCellEditMode: ["busy", "A cell is being typed into. Press Enter or Esc in that cell, then try again."],
  InactiveWorkbook: ["busy", "Another workbook is in front. Bring this one to the front, then try again."],
  HostIsBusy: ["busy", "Excel is busy. Wait a moment, then try again."],
  ActivityLimitReached: ["busy", "Excel is busy. Wait a moment, then try again."],
  InvalidState: ["busy", "Excel is busy. Wait a moment, then try again."],
  WriteNotSupportedWhenModalDialogOpen: ["busy", "A dialog is open in Excel. Close it, then try again."],
  RequestAborted: ["busy", brokenOffWords],
  OperationAborted: ["busy", brokenOffWords],
  ServiceNotAvailable: ["busy", "Excel on the web does not answer just now. Try again."],
  Timeout: ["busy", "Excel took too long. Try again."],
  ConnectionFailure: ["busy", lostWords],
  InvalidOrTimedOutSession: ["busy", "Excel on the web has closed this session. Reload the page with the workbook, then try again."],
  Unauthenticated: ["busy", "Excel on the web wants you to sign in again. Do so, then try again."],
  MemoryLimitReached: ["busy", memoryWords],
  Conflict: ["busy", "Somebody else is changing the same place. Wait a moment, then try again."],
  HostRestartNeeded: ["failed", "Excel must be restarted. Save the workbook, close Excel and open it anew."],
  ItemNotFound: ["missing", goneWords],
  ObjectNotFound: ["missing", goneWords],
  InvalidBinding: ["missing", goneWords],
  InvalidObjectPath: ["missing", goneWords],
  InvalidReference: ["missing", "A range that Pennyacre was working on is no longer in the workbook. Refresh, then try again."],
  ItemAlreadyExists: ["taken", "A sheet, table or name of that name is there already."],
  ApiNotFound: ["unsupported", tooOldWords],
  ApiNotAvailable: ["unsupported", tooOldWords],
  NotImplemented: ["unsupported", tooOldWords],
  NotSupported: ["unsupported", tooOldWords],
  UnsupportedFeature: ["unsupported", tooOldWords],
  UnsupportedOperation: ["unsupported", tooOldWords],
  UnsupportedFillType: ["unsupported", tooOldWords],
  UndoNotSupported: ["unsupported", tooOldWords],
  UnsupportedSheet: ["unsupported", "This kind of sheet cannot hold what Pennyacre writes. Choose an ordinary worksheet."],
  InvalidSelection: ["failed", "Select one block of cells in this workbook, then try again."],
  InvalidOperation: [
    "failed",
    "Excel cannot do this to the workbook as it is now: a table, a filter, grouped sheets or a dialog may be in the way. Close or " +
      "clear it, then try again.",
  ],
  InvalidArgument: [
    "failed",
    "Excel did not take a name or a value that Pennyacre gave it. If a name in the workbook (Formulas, Name Manager) is like that " +
      "of one of our tables, rename it, then try again.",
  ],
  InvalidRequest: ["failed", internalWords],
  ContentLengthRequired: ["failed", internalWords],
  GeneralException: ["failed", internalWords],
  ClientError: ["failed", internalWords],
  "Client Error": ["failed", internalWords],
  ServerError: ["failed", internalWords],
  UnexpectedError: ["failed", internalWords],
  CannotRegisterEvent: ["failed", "Excel does not tell of changes just now."],
  PropertyNotLoaded: ["failed", strangeWords],
  ValueNotLoaded: ["failed", strangeWords],
  RequestPayloadSizeLimitExceeded: [
    "failed",
    "This is more than Excel on the web takes in one step (5 MB). Use Excel on the desktop for it.",
  ],
  ResponsePayloadSizeLimitExceeded: [
    "failed",
    "This is more than Excel on the web gives in one step (5 MB). Use Excel on the desktop for it.",
  ],
  RangeExceedsLimit: [
    "failed",
    "This range has more cells than Excel hands over at once. Split the table, or clear unused rows and columns beside it, then try again.",
  ],
  OperationCellsExceedLimit: [
    "failed",
    "This touches more cells than Excel on the web allows. Clear what stands far out on the sheet, or use Excel on the desktop for it.",
  ],
  RangeImageExceedsLimit: ["failed", "This is more than Excel can draw. Make the window smaller, then try again."],
  NonBlankCellOffSheet: [
    "failed",
    "Rows cannot be added because cells at the end of the sheet would be pushed off it. Delete what stands there, then try again.",
  ],
  InsertDeleteConflict: ["failed", inTheWayWords],
  MergedRangeConflict: ["failed", overlapWords],
  PivotTableRangeConflict: ["failed", "A pivot table is in the way. Move it to another place, then try again."],
  FilteredRangeConflict: ["failed", "A filter is in the way. Clear the filter, then try again."],
  FormulaLengthExceedsLimit: ["failed", "A formula is longer than Excel takes."],
  DirtySupportingFormula: [
    "failed",
    "A formula that this rests on is not worked out yet. Wait until Excel has calculated, then try again.",
  ],
  EmptyChartSeries: ["failed", "A chart has nothing to show. Enter figures for it first."],
  RefreshWorkbookLinksBlocked: ["failed", linksWords],
  OpenWorkbookLinksBlocked: ["failed", linksWords],
  PowerQueryRefreshResourceChallenge: [
    "failed",
    "A query of this workbook waits for an answer of yours. Answer or cancel it, then try again.",
  ],
};

/** Whether the library said that a batch was too big for one step, so that smaller ones may pass. */
export const isTooBig = (error: unknown): boolean =>
  isLibraryError(error) && ["ResponsePayloadSizeLimitExceeded", "RangeExceedsLimit", "OperationCellsExceedLimit"].includes(error.code);

/** Whether the library said something of one of the things that were asked for, and not of Excel as a whole. */
export function isOfOneRange(error: unknown): boolean {
  const refused = refusalOf(error);
  return refused instanceof HostError && refused.reason !== "busy";
}

/**
 * An error of the library as a `HostError` with words for the user; the library's own error is its cause. Anything
 * else, such as a fault of ours, is given back as it is.
 */
export function refusalOf(error: unknown): unknown {
  if (error instanceof HostError || !isLibraryError(error)) return error;
  const [reason, words] = knownCodes[error.code] ?? [
    "failed",
    `Excel could not do this, and gives a reason that Pennyacre does not know (${error.code}). Try again.`,
  ];
  return new HostError(reason, words, { cause: error });
}

/** What Excel answered is no answer that the library can read. */
export const notUnderstood = (cause: unknown): HostError => new HostError("busy", strangeWords, { cause });

const isLibraryError = (error: unknown): error is OfficeExtension.Error => error instanceof OfficeExtension.Error;
