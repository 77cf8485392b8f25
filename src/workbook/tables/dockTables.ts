/** Tables of the grower's own that say what buyers take off for a low test weight: what the setting Test weight dock names. */
import { dockOf, type DockLine } from "../../core/loadDock";
import type { EntryRef } from "../../core/row";
import type { Crop, Field, HarvestLoad, Settings } from "../../core/season";
import { moneyPerUnit, type MoneyPerUnit } from "../../core/numbers/units";
import type { Decimal } from "../../core/numbers/decimal";
import type { RawTable } from "../cell";
import type { Named } from "../columns/column";
import { harvestColumns } from "../columns/harvest";
import { isBlank } from "../numbers";
import type { Place, Problem } from "../problem";
import { problemsBelow } from "../rowsBelow";
import { TableReader } from "../tableReader";
import type { Row, Style } from "../tableRow";
import { nearest, plain, plainHeading } from "../words";
import { standResponseNames } from "./ownStandTables";

/** Headings that a dock table may have. Common practice, from memory. */
const called = {
  testWeight: ["testweight", "tw", "testwt", "weight", "lbperbu", "lb/bu"],
  off: ["dock", "discount", "off", "dockperbu", "discountperbu", "deduction"],
  crop: ["crop", "commodity"],
} as const;

/** Lines of one table, each for a crop or, where `crop` is `null`, for the only crop that is weighed. */
type Line = DockLine & { readonly crop: string | null };

/** Pounds in a bushel that no grain comes to: the heaviest, wheat, weighs 66 at most (common practice). */
const tooHeavy = "70";
/** By the definitions of the bushel, 2,150.42 cubic inches, and of the pound. */
const poundsABushelOfKilogramsAHectolitre = "0.77689";

export class Docks {
  /** Rows whose test weight was told to be none. */
  private readonly refused = new Set<string>();

  constructor(
    private readonly lines: readonly Line[],
    private readonly isInUse: boolean,
  ) {}

  /** Whether a table says what is taken off a crop. */
  speaksOf(crop: string): boolean {
    return this.linesOf(crop).length > 0;
  }

  /** A test weight as typed; `null` where it is blank, or can be no pounds in a bushel and the grower's own table has none like it. */
  testWeightOf(row: Row, crop: Crop, column: Named, typed: Decimal | null): Decimal | null {
    if (typed === null || crop.yieldUnit !== "bu" || typed.lte(tooHeavy)) return typed;
    if (this.linesOf(crop.name).some(({ from }) => from.gt(tooHeavy))) return typed;
    this.refused.add(placeOf(row.source));
    return row.fault("test-weight-beyond", column, { like: typed.times(poundsABushelOfKilogramsAHectolitre).toFixed(1) });
  }

  /** What is taken off a unit of a load; `null` where no table speaks of its crop, or the load tells no test weight. */
  of(row: Row, crop: Crop, testWeight: Decimal | null): MoneyPerUnit | null {
    const lines = this.linesOf(crop.name);
    if (lines.length === 0 || testWeight === null) return null;
    const off = dockOf(lines, testWeight);
    return off ?? row.fault("dock-outside", harvestColumns.columns.testWeight, { like: lowest(lines).toFixed() });
  }

  /** Tells, field by field, the loads that no dock could be taken of because they have no test weight. */
  tellWithout(table: TableReader, loads: readonly HarvestLoad[], fields: ReadonlyMap<string, Field>): void {
    if (!this.isInUse) return;
    const byField = new Map<string, HarvestLoad[]>();
    for (const load of loads) {
      const crop = fields.get(load.field)?.crop ?? "";
      if (load.testWeight !== null || this.refused.has(placeOf(load.source)) || load.quantity.isZero() || this.linesOf(crop).length === 0)
        continue;
      byField.set(load.field, [...(byField.get(load.field) ?? []), load]);
    }
    for (const [name, without] of byField) {
      const { table: at, row } = without[0]!.source;
      table.problems.push({
        code: "test-weight-missing",
        at: { table: at, row, column: harvestColumns.columns.testWeight.heading },
        found: name,
        like: String(without.length),
        touches: [{ of: "field", name }],
      });
    }
  }

  private linesOf(crop: string): readonly Line[] {
    return this.lines.filter((line) => line.crop === null || line.crop === crop);
  }
}

const lowest = (lines: readonly Line[]): Decimal => lines.reduce((least, { from }) => (from.lt(least) ? from : least), lines[0]!.from);

const placeOf = ({ table, row }: EntryRef): string => `${table}\n${row}`;

type Around = {
  readonly settings: Settings;
  readonly others: readonly string[];
  readonly crops: readonly Crop[];
  readonly style: Style;
  readonly setting: Place;
};

/** @param own the tables and matched ranges of the workbook that are none of ours */
export function readDocks(
  own: readonly RawTable[],
  { settings, others, crops, style, setting }: Around,
): { readonly docks: Docks; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const names = standResponseNames(settings.testWeightDock);
  const lines = names.flatMap((name): readonly Line[] => {
    const raw = own.find((each) => plain(each.name) === plain(name));
    if (raw === undefined) {
      const like = nearest(name, [...own.map((table) => table.name), ...others]);
      problems.push({
        code: "dock-table-unknown",
        at: setting,
        found: name,
        touches: [{ of: "farm" }],
        ...(like === null ? {} : { like }),
      });
      return [];
    }
    problems.push(...problemsBelow(raw, raw.name, [{ of: "farm" }]));
    return linesOf(raw, crops, style, problems);
  });
  return { docks: new Docks(lines, names.length > 0), problems };
}

function linesOf(raw: RawTable, crops: readonly Crop[], style: Style, problems: Problem[]): readonly Line[] {
  const fault = (like: string, at: Omit<Place, "table"> = {}): readonly Line[] => {
    problems.push({ code: "dock-table-fault", at: { table: raw.name, ...at }, found: raw.name, like, touches: [{ of: "farm" }] });
    return [];
  };
  const headingOf = (of: keyof typeof called) =>
    raw.headers.find((heading) => (called[of] as readonly string[]).includes(plainHeading(heading)));
  const [testWeight, off, crop] = [headingOf("testWeight"), headingOf("off"), headingOf("crop")];
  if (testWeight === undefined || off === undefined) return fault(`it has no column ${testWeight === undefined ? "Test weight" : "Dock"}`);
  if (crop === undefined && crops.length > 1) return fault("it has no column Crop, and the season has more than one crop");
  const table = new TableReader(raw.name, raw, style);
  const lines = table.rows(
    (row): Line | null => {
      const [from, amount] = [row.needNumber(testWeight, "above zero"), row.needNumber(off)];
      const typed = crop === undefined ? null : row.needText(crop);
      const named = typed === null ? null : crops.find(({ name }) => plain(name) === plain(typed));
      if (named === undefined) return row.lose("not-in-list", crop, { choices: crops.map(({ name }) => name) });
      return from === null || amount === null ? null : { from, off: moneyPerUnit(amount), crop: named?.name ?? null };
    },
    () => [{ of: "farm" }],
  );
  problems.push(...table.problems);
  if (raw.rows.every((cells) => cells.every(isBlank))) return fault("it has no lines");
  const of = new Map<string | null, Line[]>();
  for (const line of lines) of.set(line.crop, [...(of.get(line.crop) ?? []), line]);
  for (const [name, ofCrop] of of) {
    const top = ofCrop.reduce((best, line) => (line.from.gt(best.from) ? line : best));
    // Without a line of nothing off, good grain would be docked by the first line that it is above.
    if (!top.off.isZero())
      return fault(
        `its highest line${name === null ? "" : ` for ${name}`} takes ${top.off.toFixed()} off, so that nothing says from which ` +
          "test weight nothing is taken",
      );
    if (new Set(ofCrop.map(({ from }) => from.toFixed())).size < ofCrop.length)
      return fault(`two lines${name === null ? "" : ` for ${name}`} begin at one test weight`);
  }
  return lines;
}
