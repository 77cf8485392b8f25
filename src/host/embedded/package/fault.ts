/** Why a file cannot be opened, in words for its owner. */
export type WorkbookFault = {
  readonly code: "not-a-workbook" | "old-format" | "encrypted" | "damaged" | "too-large";
  readonly message: string;
};

/** Something in the package that its own rules forbid; the opener turns it into a fault. */
export class Damaged extends Error {
  override readonly name = "Damaged";
}
