/** Rows of trials put together: by hybrid, and by the trial in which it stood. */
import type { HybridTrial } from "./hybridEntries";

const plain = (name: string): string => name.toLowerCase().replace(/[\s_]+/g, "");

/** What tells one hybrid from another: its name, case and spaces aside. */
export const hybridKey = plain;

/** One trial of one year; rows of a hybrid in it are plots of one trial and count together. */
export const trialKey = ({ trial, year }: Pick<HybridTrial, "trial" | "year">): string => `${plain(trial)}\n${year ?? ""}`;

/** A hybrid as the trials spell it first, with its rows by trial, in their order. */
export type Plots = { readonly name: string; readonly byTrial: ReadonlyMap<string, readonly HybridTrial[]> };

export function plotsByHybrid(rows: readonly HybridTrial[]): ReadonlyMap<string, Plots> {
  const all = new Map<string, { name: string; byTrial: Map<string, HybridTrial[]> }>();
  for (const row of rows) {
    const key = hybridKey(row.hybrid);
    const known = all.get(key) ?? { name: row.hybrid, byTrial: new Map<string, HybridTrial[]>() };
    all.set(key, known);
    known.byTrial.set(trialKey(row), [...(known.byTrial.get(trialKey(row)) ?? []), row]);
  }
  return all;
}
