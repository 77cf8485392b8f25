/** An error that the workbook program reports to the library, by a code of its own. */
export class HostRefusal extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}
