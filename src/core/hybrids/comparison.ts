/**
 * Hybrids held against a check: differences in the trials in which both stood, how far their mean may be off, and what each nets
 * on an area. What stood in one trial is never compared with what stood in another.
 */
import type { ItemFigures } from "../figures";
import { Decimal, sum, zero } from "../numbers/decimal";
import {
  moneyPerArea,
  moneyPerUnit,
  points,
  yieldPerArea,
  type MoneyPerArea,
  type MoneyPerUnit,
  type Points,
  type Yield,
} from "../numbers/units";
import type { EntryRef } from "../row";
import type { Season } from "../season";
import { sampleOf } from "../stand/sample";
import { pointsAbove } from "../weighed";
import { checkOf, type Check } from "./check";
import type { Hybrid, HybridTrial } from "./hybridEntries";
import { plannedRate, seedCost, seedPrice } from "./seedCost";
import { hybridKey, plotsByHybrid, type Plots } from "./trials";
import { marketOf, trialNet, type Market } from "./trialNet";

/** A mean over trials, with the interval around it; no interval for one trial, which says nothing of the spread. */
type MeanOf<Unit extends Decimal> = { readonly mean: Unit; readonly low: Unit | null; readonly high: Unit | null };

/** A trial in which a hybrid stood, with the check beside it or, where the two never met, alone. */
type TrialSide = {
  readonly trial: string;
  readonly yield: Yield;
  readonly checkYield: Yield | null;
  /** Before seed and fees, less the check's; `null` where either is not known. */
  readonly netDifference: MoneyPerArea | null;
  readonly entries: readonly EntryRef[];
};

export type HybridComparison = {
  readonly hybrid: string;
  readonly crop: string;
  readonly check: Check | null;
  readonly isCheck: boolean;
  /** Trials in which it and the check stood; of the check, and where it never stood beside one, all of its own. */
  readonly trials: Decimal;
  /** Trials of it that are left out because the check did not stand there. */
  readonly withoutCheck: readonly string[];
  /** Means over those trials, a trial counting once; moisture and the like over those of them that tell it. */
  readonly yield: Yield | null;
  readonly moisture: Decimal | null;
  readonly moistureDifference: Decimal | null;
  readonly testWeight: Decimal | null;
  readonly stand: Decimal | null;
  readonly lodged: Decimal | null;
  /** The largest least significant difference that one of those trials prints. */
  readonly lsd: Yield | null;
  /** Its yield less the check's; `null` of the check, and where they never stood in one trial. */
  readonly yieldDifference: MeanOf<Yield> | null;
  /**
   * Whether these trials show no difference: the interval holds zero; of one trial, which has none, the difference is less than the
   * least significant one that it prints. `null` where neither is known.
   */
  readonly showsNone: boolean | null;
  /** Seed and fees on an area; `null` where price or rate is not known. */
  readonly seedCost: MoneyPerArea | null;
  /** Yield × price − drying − dock − seed − fees, over the trials in which that is known of both. */
  readonly netPerArea: MoneyPerArea | null;
  /** The same less the check's over the same trials. */
  readonly netDifference: MeanOf<MoneyPerArea> | null;
  /** How many trials the net rests on. */
  readonly netTrials: Decimal;
  /** What drying and dock rest on, in the mean of the trials in which both tell it; `null` where none does. */
  readonly graded: { readonly own: Graded; readonly check: Graded } | null;
  readonly sides: readonly TrialSide[];
};

/** Points above standard, and what is off a unit for its test weight. */
type Graded = { readonly wetPoints: Points; readonly dock: MoneyPerUnit };

type Compared = Pick<Season, "settings" | "crops" | "fields" | "items" | "applications" | "hybrids" | "hybridTrials">;
const count = (all: readonly unknown[]): Decimal => new Decimal(String(all.length));

/** Every hybrid of the table Hybrids and of the trials, crop by crop, in the order of the tables. */
export function hybridComparisons(season: Compared, figures: readonly ItemFigures[]): readonly HybridComparison[] {
  return season.crops.flatMap((crop) => {
    const named = season.hybrids.filter((hybrid) => hybrid.crop === crop.name);
    const plots = plotsByHybrid(season.hybridTrials.filter((row) => row.crop === crop.name));
    const offered = new Map(named.map((hybrid) => [hybridKey(hybrid.name), hybrid]));
    const names = new Map([...plots].map(([key, { name }]) => [key, name]));
    const all = new Map([
      ...[...offered].map(([key, { name }]) => [key, name] as const),
      ...[...names].filter(([key]) => !offered.has(key)),
    ]);
    const check = checkOf(crop.name, season, plots);
    const rate = plannedRate(season, crop.name);
    const market = marketOf(crop, season.settings);
    const seedOf = (name: string, hybrid: Hybrid | null): MoneyPerArea | null => {
      const price = seedPrice(name, hybrid, season.items, figures);
      return price === null || rate === null ? null : moneyPerArea(seedCost(rate, price).plus(hybrid?.traitFee ?? zero));
    };
    const costOf = (key: string) => seedOf(all.get(key)!, offered.get(key) ?? null);
    return [...all].map(([key, hybrid]) => {
      const own: Plots["byTrial"] = plots.get(key)?.byTrial ?? new Map();
      const others = check === null || check.key === key ? null : (plots.get(check.key)?.byTrial ?? new Map<string, Plot>());
      return {
        hybrid,
        crop: crop.name,
        check,
        isCheck: check?.key === key,
        seedCost: costOf(key),
        ...compared(own, others, market, { own: costOf(key), other: check === null ? null : costOf(check.key) }),
      };
    });
  });
}

type Plot = readonly HybridTrial[];
type Side = { readonly plot: Plot; readonly other: Plot | null };

function compared(
  own: Plots["byTrial"],
  others: Plots["byTrial"] | null,
  market: Market,
  cost: { readonly own: MoneyPerArea | null; readonly other: MoneyPerArea | null },
): Omit<HybridComparison, "hybrid" | "crop" | "check" | "isCheck" | "seedCost"> {
  const shared = others === null ? [] : [...own].filter(([trial]) => others.has(trial));
  // A hybrid that never stood beside the check still tells of itself.
  const sides: readonly Side[] =
    shared.length > 0
      ? shared.map(([trial, plot]) => ({ plot, other: others!.get(trial)! }))
      : [...own.values()].map((plot) => ({ plot, other: null }));
  const paired = shared.length > 0;
  const known = sides.map((side) => netsOf(side, market));
  const nets = known.flatMap((net) => net ?? []);
  const differences = paired ? sides.map(({ plot, other }) => meanYield(plot).minus(meanYield(other!))) : [];
  const yieldDifference = meanOf(differences, yieldPerArea);
  const netMean = cost.own === null ? null : (sampleOf(nets.map((each) => each.own))?.mean.minus(cost.own) ?? null);
  const netDifference =
    paired && cost.own !== null && cost.other !== null
      ? meanOf(
          nets.map((each) => each.own.minus(cost.own!).minus(each.other!.minus(cost.other!))),
          moneyPerArea,
        )
      : null;
  const told = (of: (row: HybridTrial) => Decimal | null) => overTrials(sides.map(({ plot }) => meanTold(plot, of)));
  const moistureDifferences = sides.flatMap(({ plot, other }) => {
    const [here, there] = [meanTold(plot, wet), other === null ? null : meanTold(other, wet)];
    return here === null || there === null ? [] : [here.minus(there)];
  });
  const printed = sides.flatMap(({ plot, other }) => [...plot, ...(other ?? [])].flatMap(({ lsd }) => lsd ?? []));
  const lsd = printed.reduce<Yield | null>((most, each) => (most === null || each.gt(most) ? each : most), null);
  return {
    trials: count(sides),
    withoutCheck: others === null ? [] : [...own].filter(([trial]) => !others.has(trial)).map(([, plot]) => trialName(plot[0]!)),
    yield: overTrials(sides.map(({ plot }) => meanYield(plot))) as Yield | null,
    moisture: told(wet),
    moistureDifference: overTrials(moistureDifferences),
    testWeight: told(({ testWeight }) => testWeight),
    stand: told(({ stand }) => stand),
    lodged: told(({ lodged }) => lodged),
    lsd,
    yieldDifference,
    showsNone: yieldDifference === null ? null : isWithin(yieldDifference, lsd),
    netPerArea: netMean === null ? null : moneyPerArea(netMean),
    netDifference,
    netTrials: count(nets),
    graded: gradedOf(sides, market),
    sides: sides.map(({ plot, other }, index): TrialSide => {
      const net = known[index] ?? null;
      return {
        trial: trialName(plot[0]!),
        yield: yieldPerArea(meanYield(plot)),
        checkYield: other === null ? null : yieldPerArea(meanYield(other)),
        netDifference: net === null || net.other === null ? null : moneyPerArea(net.own.minus(net.other)),
        entries: [...plot, ...(other ?? [])].map(({ source }) => source),
      };
    }),
  };
}

function isWithin({ mean, low, high }: MeanOf<Yield>, lsd: Yield | null): boolean | null {
  if (low !== null && high !== null) return low.lte(zero) && high.gte(zero);
  return lsd === null ? null : mean.abs().lt(lsd);
}

/** How a trial is named to people: "Home plot 2030". */
export const trialName = ({ trial, year }: Pick<HybridTrial, "trial" | "year">): string => (year === null ? trial : `${trial} ${year}`);

const wet = ({ moisture }: HybridTrial) => moisture;
const meanYield = (plot: Plot): Decimal => sum(plot.map((row) => row.yield)).div(count(plot));

/** The mean of what the rows of a hybrid in a trial tell; `null` where one of them does not. */
function meanTold(plot: Plot, of: (row: HybridTrial) => Decimal | null): Decimal | null {
  const told = plot.flatMap((row) => of(row) ?? []);
  return told.length < plot.length ? null : sum(told).div(count(plot));
}

const overTrials = (values: readonly (Decimal | null)[]): Decimal | null => sampleOf(values.flatMap((value) => value ?? []))?.mean ?? null;

function gradedOf(sides: readonly Side[], { standardMoisture }: Market): HybridComparison["graded"] {
  const both = sides.flatMap(({ plot, other }) => (other === null ? [] : [{ plot, other }]));
  const wetOf = (row: HybridTrial) => (row.moisture === null ? null : pointsAbove(row.moisture, standardMoisture));
  const dockOf = (row: HybridTrial) => (row.dock === "unknown" ? null : (row.dock ?? zero));
  const pairs = (of: (row: HybridTrial) => Decimal | null) =>
    both.flatMap(({ plot, other }) => {
      const [own, check] = [meanTold(plot, of), meanTold(other, of)];
      return own === null || check === null ? [] : [{ own, check }];
    });
  const [wets, docks] = [pairs(wetOf), pairs(dockOf)];
  if (wets.length === 0) return null;
  const graded = (side: "own" | "check"): Graded => ({
    wetPoints: points(sampleOf(wets.map((each) => each[side]))!.mean),
    dock: moneyPerUnit(sampleOf(docks.map((each) => each[side]))?.mean ?? zero),
  });
  return { own: graded("own"), check: graded("check") };
}

/** A trial in money, both sides in one way: the dock is taken off neither where it is not known of one of them. `null`: not known. */
function netsOf({ plot, other }: Side, market: Market): { readonly own: Decimal; readonly other: Decimal | null } | null {
  const takesDock = [...plot, ...(other ?? [])].every(({ dock }) => dock !== "unknown");
  const net = (rows: Plot): Decimal | null => {
    const each = rows.flatMap((row) => trialNet(row, market, takesDock) ?? []);
    return each.length < rows.length ? null : sum(each).div(count(rows));
  };
  const [here, there] = [net(plot), other === null ? null : net(other)];
  return here === null || (other !== null && there === null) ? null : { own: here, other: there };
}

function meanOf<Unit extends Decimal>(values: readonly Decimal[], unit: (value: Decimal) => Unit): MeanOf<Unit> | null {
  const sample = sampleOf(values);
  if (sample === null) return null;
  const { mean, half } = sample;
  return { mean: unit(mean), low: half === null ? null : unit(mean.minus(half)), high: half === null ? null : unit(mean.plus(half)) };
}
