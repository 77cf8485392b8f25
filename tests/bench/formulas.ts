/**
 * The heart of the same season as a grower's spreadsheet would have it: bills, average prices, what each application and pass
 * costs, and what that comes to in every field and crop, as formulas that LibreOffice works out. Budget lines, interest, stands,
 * loans, sharing to the cent and all checks are left out, so that it has less to do than we have.
 */
import type { Cell } from "../../src/workbook/cell";
import type { FixtureSheet } from "../host/fixture";
import { recalculated, recalculationTime } from "../support/libreOffice";
import { fileOf } from "../support/xlsx/fixtureFile";
import { product } from "./built";
import { seasonOf } from "./manySeasons";
import { timed, type Times } from "./measured";
import { plainLoop } from "./plainLoop";

export type FormulasMeasured = {
  readonly entries: number;
  readonly formulas: number;
  /** Milliseconds of LibreOffice's processor for all formulas once, without its start, reading the file and writing. */
  readonly recalculation: number;
  readonly figures: Times;
  readonly plain: Times;
};

type Report = ReturnType<Awaited<ReturnType<typeof product>>["seasonReport"]>;

/** Columns of values, and columns of formulas by the row's number as the sheet has it. */
function sheet(name: string, values: readonly (readonly Cell[])[], formulas: readonly ((row: number) => string)[]): FixtureSheet {
  const width = values[0]?.length ?? 0;
  return {
    name,
    cells: values.map((row) => [...row, ...formulas.map(() => 0)]),
    formulas: Object.fromEntries(
      values.flatMap((_, index) =>
        formulas.map((formula, at) => [`${String.fromCharCode(65 + width + at)}${index + 1}`, formula(index + 1)] as const),
      ),
    ),
  };
}

function spreadsheetOf({ season }: Report): readonly FixtureSheet[] {
  const [bills, items, uses, fields] = [season.purchases, season.items, season.applications, season.fields];
  const passes = season.operations.flatMap(({ target, area, passes: times, cost }) =>
    cost.basis === "per acre" && "field" in target ? [{ field: target.field, area, times, rate: cost.rate }] : [],
  );
  const [billed, used, passed, grown] = [bills.length, uses.length, passes.length, fields.length];
  const land = (row: number) => `IF(D${row}="",INDEX(Fields!C$1:C$${grown},MATCH(A${row},Fields!A$1:A$${grown},0)),D${row})`;
  return [
    sheet(
      "Bills",
      bills.map(({ item, quantity, amount, freight, rebate }) => [
        item,
        quantity.toNumber(),
        amount.toNumber(),
        freight.toNumber(),
        rebate.toNumber(),
      ]),
      [(row) => `=C${row}+D${row}-E${row}`],
    ),
    sheet(
      "Items",
      items.map(({ name, planPricePerPack, packSize }) => [name, planPricePerPack?.div(packSize).toNumber() ?? 0]),
      [
        (row) => `=SUMIFS(Bills!B$1:B$${billed},Bills!A$1:A$${billed},A${row})`,
        (row) => `=SUMIFS(Bills!F$1:F$${billed},Bills!A$1:A$${billed},A${row})`,
        (row) => `=IF(C${row}>0,D${row}/C${row},B${row})`,
      ],
    ),
    sheet(
      "Uses",
      uses.map(({ target, item, rate, area }) => [
        "field" in target ? target.field : target.crop,
        item,
        rate.toNumber(),
        area?.toNumber() ?? "",
      ]),
      [
        (row) => `=${land(row)}`,
        (row) => `=C${row}*E${row}*INDEX(Items!E$1:E$${items.length},MATCH(B${row},Items!A$1:A$${items.length},0))`,
      ],
    ),
    sheet(
      "Passes",
      passes.map(({ field, area, times, rate }) => [field, rate.toNumber(), times.toNumber(), area?.toNumber() ?? ""]),
      [(row) => `=B${row}*C${row}*${land(row)}`],
    ),
    sheet(
      "Fields",
      fields.map(({ name, crop, area }) => [name, crop, area.toNumber()]),
      [
        (row) => `=SUMIFS(Uses!F$1:F$${used},Uses!A$1:A$${used},A${row})`,
        (row) => `=SUMIFS(Passes!E$1:E$${passed},Passes!A$1:A$${passed},A${row})`,
        (row) => `=(D${row}+E${row})/C${row}`,
      ],
    ),
    sheet(
      "Crops",
      season.crops.map(({ name }) => [name]),
      [
        (row) => `=SUMIFS(Fields!C$1:C$${grown},Fields!B$1:B$${grown},A${row})`,
        (row) => `=SUMIFS(Fields!D$1:D$${grown},Fields!B$1:B$${grown},A${row})+SUMIFS(Fields!E$1:E$${grown},Fields!B$1:B$${grown},A${row})`,
        (row) => `=IF(B${row}=0,0,C${row}/B${row})`,
      ],
    ),
  ];
}

/** Both must have worked out the same: the average price of every item that was bought, to twelve digits. */
function compare({ season, figures }: Report, items: readonly (readonly string[])[]): void {
  season.items.forEach(({ name, packSize }, index) => {
    const price = figures.items.find(({ item }) => item === name)!.averagePrice;
    const theirs = Number(items[index]![4]);
    const ours = price === null ? 0 : price.div(packSize).toNumber();
    if (Math.abs(theirs - ours) > 1e-12 * Math.abs(ours)) throw new Error(`${name}: a price of ${ours} here, ${theirs} in LibreOffice`);
  });
}

export async function formulas(entries: number): Promise<FormulasMeasured> {
  const { seasonReport } = await product();
  const content = seasonOf(entries);
  const report = seasonReport(content);
  const sheets = spreadsheetOf(report);
  const book = fileOf({ sheets });
  compare(report, recalculated({ book }, false).get("book")!.get("Items")!);
  return {
    entries,
    formulas: sheets.reduce((sum, { formulas: all = {} }) => sum + Object.keys(all).length, 0),
    recalculation: recalculationTime(book),
    figures: await timed(6, () => seasonReport(content)),
    plain: await timed(15, () => plainLoop(content)),
  };
}
