/** Where a published figure was read, so that every page which uses it can name it. */
export type Source = {
  readonly title: string;
  readonly publisher: string;
  readonly year: string;
  readonly address: string;
  /** Table, page or passage; and what was read, where that is not the publication itself. */
  readonly where: string;
};

/** How sure we are of a figure: read in the source, checked against a printed table, or only remembered. */
export type Certainty = "read" | "checked" | "from memory";
