/** The table Hybrid trials: one hybrid at one trial a row. */
import { wetAndDry } from "../../core/drying";
import type { Hybrid, HybridTrial } from "../../core/hybrids/hybridEntries";
import type { Decimal } from "../../core/numbers/decimal";
import { cropQuantity, plantsPerArea, share, yieldPerArea } from "../../core/numbers/units";
import type { Crop, Field } from "../../core/season";
import { hybridTrialColumns } from "../columns/hybrids";
import type { Subject } from "../problem";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { plain } from "../words";
import type { Docks } from "./dockTables";
import { cropGrown } from "./hybrids";

const { columns } = hybridTrialColumns;
const touches = (): readonly Subject[] => [{ of: "hybrids" }];

/** What the foot of a printed trial says in place of a hybrid's name. Common practice, from memory. */
const summaryWords = /^((grand|overall|trial|test|location|site) )?(means?|averages?|avg)\b|^l\.?s\.?d\b|^c\.?v\b|^p ?[<>=(]/i;

type Around = {
  readonly crops: readonly Crop[];
  readonly fields: readonly Field[];
  readonly hybrids: readonly Hybrid[];
  readonly docks: Docks;
};

export function readHybridTrials(table: TableReader, around: Around): readonly HybridTrial[] {
  if (!table.hasNeeded(hybridTrialColumns)) return [];
  const before = new NamesBefore(table, around);
  return table.rows((row): HybridTrial | null => {
    const [trial, hybrid, typed] = [row.need(columns.trial), row.need(columns.hybrid), row.need(columns.yield)];
    const [moisture, typedWeight, are] = [row.of(columns.moisture), row.of(columns.testWeight), row.of(columns.are) ?? "dry"];
    const [stand, lodged, lsd, by] = [row.of(columns.stand), row.of(columns.lodged), row.of(columns.lsd), row.of(columns.source)];
    const year = yearOf(row, trial !== null && before.hasYear(trial));
    if (hybrid !== null && summaryWords.test(hybrid)) return row.lose("total-row", columns.hybrid);
    if (trial === null || hybrid === null || typed === null || row.lost) return null;
    const crop = before.cropOf(trial, hybrid);
    if (crop === null) return row.lose("hybrid-crop-missing", columns.hybrid);
    if (isOtherUnit(typed, crop, around.fields))
      return row.lose("trial-yield-unlike", columns.yield, { like: `${crop.yieldUnit} of ${crop.name}` });
    const testWeight = around.docks.testWeightOf(row, crop, columns.testWeight, typedWeight);
    // Water that nobody knows of cannot be taken out.
    if (are === "wet" && moisture === null) return row.missing(columns.moisture);
    const dry = are === "dry" ? typed : wetAndDry(cropQuantity(typed), "wet", moisture, crop.standardMoisture).dry;
    return {
      trial,
      year,
      hybrid,
      crop: crop.name,
      yield: yieldPerArea(dry),
      moisture,
      testWeight,
      dock: around.docks.speaksOf(crop.name) ? (around.docks.of(row, crop, testWeight) ?? "unknown") : null,
      stand: stand === null ? null : plantsPerArea(stand),
      lodged: lodged === null ? null : share(lodged),
      lsd: lsd === null ? null : yieldPerArea(lsd),
      by,
      source: row.source,
    };
  }, touches);
}

/** The year, in four figures. Blank where others of the trial have one it would be a trial of its own, so that loses the row. */
function yearOf(row: Row, isWanted: boolean): string | null {
  const typed = row.text(columns.year);
  if (typed === null) return isWanted ? row.missing(columns.year) : null;
  return /(?:^|\D)(\d{4})(?:\D|$)/.exec(typed)?.[1] ?? row.date(columns.year)?.slice(0, 4) ?? row.missing(columns.year);
}

/** How many times the crop's yield goal, or what part of it, no trial yields: bushels and tonnes are 15 and more apart. */
const beyond = "8";

/** Whether a yield is so far from every goal of the crop that it is counted in another unit; nobody can say of a crop without fields. */
function isOtherUnit(typed: Decimal, crop: Crop, fields: readonly Field[]): boolean {
  const goals = fields.filter((field) => field.crop === crop.name && !field.yieldGoal.isZero()).map(({ yieldGoal }) => yieldGoal);
  return !typed.isZero() && goals.length > 0 && goals.every((goal) => typed.gt(goal.times(beyond)) || typed.times(beyond).lt(goal));
}

/** What the whole table says before its rows are read: of which crop a trial is, and whether it has a year. */
class NamesBefore {
  private readonly crops = new Map<string, Set<string>>();
  private readonly dated = new Set<string>();
  private readonly known = new Map<string, string | null>();

  constructor(
    table: TableReader,
    private readonly around: Around,
  ) {
    const [trialAt, hybridAt, yearAt] = [columns.trial, columns.hybrid, columns.year].map(({ heading }) => table.indexOf(heading));
    for (const cells of table.raw.rows) {
      const [trial, hybrid, year] = [trialAt, hybridAt, yearAt].map((at) => String(cells[at!] ?? "").trim());
      if (trial === "") continue;
      if (year !== "") this.dated.add(plain(trial!));
      const crop = this.ownCrop(hybrid!);
      if (crop !== null) this.crops.set(plain(trial!), (this.crops.get(plain(trial!)) ?? new Set()).add(crop));
    }
  }

  hasYear(trial: string): boolean {
    return this.dated.has(plain(trial));
  }

  /** By the table Hybrids, its fields, or the only crop; else that of the others in its trial, where they are of one. */
  cropOf(trial: string, hybrid: string): Crop | null {
    const [beside] = this.crops.get(plain(trial))?.size === 1 ? this.crops.get(plain(trial))! : [];
    const name = this.ownCrop(hybrid) ?? beside;
    return this.around.crops.find((crop) => crop.name === name) ?? null;
  }

  private ownCrop(hybrid: string): string | null {
    const key = plain(hybrid);
    if (!this.known.has(key)) {
      const { crops, fields, hybrids } = this.around;
      const offered = hybrids.find(({ name }) => plain(name) === key);
      this.known.set(key, offered?.crop ?? cropGrown(hybrid, crops, fields));
    }
    return this.known.get(key)!;
  }
}
