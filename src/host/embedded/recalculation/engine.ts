/** The calculation engine, as plain data, so that it can run in the page, in a worker, or not at all. */
import type { CalculatedValue } from "./formulaBook";

/** What goes into a cell: sheet, row and column from 0, and a value or a formula without its `=`. */
type EngineCell = { readonly sheet: number; readonly row: number; readonly column: number };
export type EngineRequest = {
  readonly sheets: readonly string[];
  readonly constants: readonly (EngineCell & { readonly value: CalculatedValue })[];
  readonly formulas: readonly (EngineCell & { readonly formula: string })[];
};

/** The value of each formula, in the order asked; null where the engine has none. */
export type EngineAnswer = readonly (CalculatedValue | null)[];
export type Engine = (request: EngineRequest) => Promise<EngineAnswer>;
