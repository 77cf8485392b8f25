/** What is wrong between hybrids and their trials: counted twice, spelled in two ways, or left out of what they net. */
import type { HybridTrial } from "../core/hybrids/hybridEntries";
import { hybridKey, trialKey } from "../core/hybrids/trials";
import { isDried, marketOf } from "../core/hybrids/trialNet";
import { trialName } from "../core/hybrids/comparison";
import type { Season } from "../core/season";
import { hybridColumns, hybridTrialColumns } from "./columns/hybrids";
import type { Named } from "./columns/column";
import type { Place, Problem, ProblemCode, Subject } from "./problem";

const touches: readonly Subject[] = [{ of: "hybrids" }];
const { columns } = hybridTrialColumns;
const at = ({ source }: Pick<HybridTrial, "source">, { heading: column }: Named): Place => ({ ...source, column });

export function hybridProblems(season: Season): readonly Problem[] {
  if (season.hybridTrials.length === 0) return [];
  return [...checksWithoutTrial(season), ...plotsTogether(season), ...trialsAlike(season), ...namesAlike(season), ...gaps(season)];
}

function checksWithoutTrial({ hybrids, hybridTrials }: Season): readonly Problem[] {
  const stood = new Set(hybridTrials.map(({ hybrid, crop }) => `${hybridKey(hybrid)}\n${crop}`));
  const told = new Set<string | null>();
  return hybrids
    .filter(({ isCheck, crop }) => isCheck && !told.has(crop) && told.add(crop))
    .filter(({ name, crop }) => !stood.has(`${hybridKey(name)}\n${crop}`))
    .map(({ name, source }): Problem => ({
      code: "check-without-trial",
      at: { ...source, column: hybridColumns.columns.check.heading },
      found: name,
      touches,
    }));
}

/** A hybrid that stands twice in a trial, told once a trial. */
function plotsTogether({ hybridTrials }: Season): readonly Problem[] {
  const first = new Map<string, HybridTrial>();
  const told = new Set<string>();
  return hybridTrials.flatMap((row): readonly Problem[] => {
    const trial = `${row.crop}\n${trialKey(row)}`;
    const key = `${trial}\n${hybridKey(row.hybrid)}`;
    const known = first.get(key);
    if (known === undefined) first.set(key, row);
    if (known === undefined || told.has(trial)) return [];
    told.add(trial);
    return [{ code: "hybrid-twice", at: at(row, columns.hybrid), found: row.hybrid, other: known.source, touches }];
  });
}

/** Two trials in which the same hybrids, two at least, yielded the same: pasted twice under two names. */
function trialsAlike({ hybridTrials }: Season): readonly Problem[] {
  const trials = new Map<string, HybridTrial[]>();
  for (const row of hybridTrials) {
    const key = `${row.crop}\n${trialKey(row)}`;
    trials.set(key, [...(trials.get(key) ?? []), row]);
  }
  const seen = new Map<string, HybridTrial>();
  return [...trials.values()].flatMap((rows): readonly Problem[] => {
    if (new Set(rows.map(({ hybrid }) => hybridKey(hybrid))).size < 2) return [];
    const yields = rows.map((row) => `${hybridKey(row.hybrid)} ${row.yield.toFixed()}`).sort();
    const key = `${rows[0]!.crop}\n${yields.join("\n")}`;
    const first = seen.get(key);
    if (first === undefined) seen.set(key, rows[0]!);
    return first === undefined
      ? []
      : [{ code: "trial-twice", at: at(rows[0]!, columns.trial), found: trialName(rows[0]!), like: trialName(first), touches }];
  });
}

/** Letters and figures alone: "M-108" and "M 108". */
const bare = (name: string): string => name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");
/** Of a name that is all of another's end, as without its seller's, so many letters at least. */
const shortestEnd = 3;

/** A hybrid of the trials that is none of the farm's, and is spelled nearly like one. */
function namesAlike({ hybrids, fields, hybridTrials }: Season): readonly Problem[] {
  const own = new Map(
    [...hybrids.map(({ name }) => name), ...fields.flatMap(({ variety }) => variety ?? [])].map((name) => [hybridKey(name), name]),
  );
  const told = new Set<string>();
  return hybridTrials.flatMap((row): readonly Problem[] => {
    const key = hybridKey(row.hybrid);
    if (own.has(key) || told.has(key)) return [];
    told.add(key);
    const here = bare(row.hybrid);
    const like = [...own.values()].find((name) => {
      const there = bare(name);
      const [short, long] = here.length < there.length ? [here, there] : [there, here];
      return short === long || (short.length >= shortestEnd && long.endsWith(short));
    });
    return like === undefined ? [] : [{ code: "hybrid-unlike", at: at(row, columns.hybrid), found: row.hybrid, like, touches }];
  });
}

/** Entries whose drying or dock nobody knows, told once a crop. */
function gaps({ crops, settings, hybridTrials }: Season): readonly Problem[] {
  return crops.flatMap((crop): readonly Problem[] => {
    const rows = hybridTrials.filter((row) => row.crop === crop.name);
    const told = (code: ProblemCode, without: readonly HybridTrial[], column: Named): readonly Problem[] =>
      without.length === 0 ? [] : [{ code, at: at(without[0]!, column), found: crop.name, like: String(without.length), touches }];
    return [
      ...(isDried(marketOf(crop, settings))
        ? told(
            "trial-moisture-missing",
            rows.filter(({ moisture }) => moisture === null),
            columns.moisture,
          )
        : []),
      ...told(
        "trial-weight-missing",
        rows.filter(({ dock, testWeight }) => dock === "unknown" && testWeight === null),
        columns.testWeight,
      ),
    ];
  });
}
