/** The embedded workbook: over a real `.xlsx` file, without Excel. */
export type { CellEntry } from "./edit/cellEntries";
export { EmbeddedWorkbook, type Options } from "./embeddedWorkbook";
export { newWorkbook, openWorkbook } from "./package/open";
export type { Engine, EngineAnswer, EngineRequest } from "./recalculation/engine";
export type { StepWords } from "./edit/stepWords";
export type { SheetChart } from "./sheet/chartsOfSheet";
