import { rangeOnSheet } from "../address";

/** Something to read. Each function asks Excel anew, for what was asked in a batch that failed cannot be used again. */
export type TableSource = {
  readonly name: string;
  readonly isMatch: boolean;
  /** The cells, of which nothing is loaded yet. */
  readonly body: () => Excel.Range;
  /** Loads the sheet's name and, unless they are the first row of the cells, the headings. */
  readonly around: () => { readonly sheet: Excel.Worksheet; readonly headers: (() => string[]) | null };
  /** Loads the block that it fills, headings and totals row included, and what is in use of the columns of that. */
  readonly edges: () => Edges;
};

export type Edges = { readonly block: Excel.Range; readonly used: Excel.Range };

const edgesOf = (block: () => Excel.Range): Edges => ({
  block: block().untrack().load("rowIndex,columnIndex,rowCount,columnCount"),
  used: block().untrack().getEntireColumn().untrack().getUsedRangeOrNullObject(true).untrack().load("rowIndex,rowCount"),
});

/** A source as it has been asked of Excel. */
export type Asked = { readonly body: Excel.Range; readonly edges: Edges } & ReturnType<TableSource["around"]>;

/** Asks Excel for a source; nothing of it is known before the next round trip. */
export const ask = ({ body, around, edges }: TableSource): Asked => ({ body: body(), ...around(), edges: edges() });

/** A table of the workbook. */
export const tableSource = (table: Excel.Table): TableSource => ({
  name: table.name,
  isMatch: false,
  body: () => table.getDataBodyRange().untrack(),
  around: () => ({ sheet: table.worksheet.load("name"), headers: askHeadings(table) }),
  edges: () => edgesOf(() => table.getRange()),
});

/** Headings from their row in one piece; a table whose heading row is switched off still has names for its columns. */
function askHeadings(table: Excel.Table): () => string[] {
  if (table.showHeaders) {
    const row = table.getHeaderRowRange().untrack().load("values");
    return () => (row.values[0] ?? []).map(String);
  }
  const columns = table.columns.load("items/name");
  return () => columns.items.map(({ name }) => name);
}

/** A range by its address, as far as it is used, so that whole columns can be matched; null for what is no address. */
export function rangeSource(context: Excel.RequestContext, address: string): TableSource | null {
  const found = rangeOnSheet(address);
  if (found === null) return null;
  const sheet = () => context.workbook.worksheets.getItemOrNullObject(found.sheet);
  return {
    name: address,
    isMatch: true,
    body: () => sheet().getRange(found.range).untrack().getUsedRangeOrNullObject(true).untrack(),
    around: () => ({ sheet: sheet().load("name"), headers: null }),
    edges: () => edgesOf(() => sheet().getRange(found.range)),
  };
}
