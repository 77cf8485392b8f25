/** The mark of figures that entries to fix make uncertain, which names the layer where only one is. */
import { layerCosts, type Layer } from "../core/kinds";
import type { Problem } from "./problem";

/** "incomplete", "full cost incomplete"; `null` where nothing touches the figures. */
export function incompleteMark(problems: readonly Problem[]): string | null {
  if (problems.length === 0) return null;
  if (problems.some(({ layers }) => layers === undefined)) return "incomplete";
  return `${[...new Set(problems.flatMap(({ layers = [] }) => layers))].map((layer) => layerCosts[layer]).join(" and ")} incomplete`;
}

/** The problems that touch the figures of one layer. */
export const ofLayer = (problems: readonly Problem[], layer: Layer): readonly Problem[] =>
  problems.filter(({ layers }) => layers === undefined || layers.includes(layer));
