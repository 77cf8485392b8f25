/** The embedded workbook: over a real `.xlsx` file, without Excel. */
export type { Entry } from "./cellEntries";
export { EmbeddedWorkbook, type Options } from "./embeddedWorkbook";
export { newWorkbook, openWorkbook } from "./open";
export type { Engine, EngineAnswer, EngineRequest } from "./recalculation/engine";
export type { StepWords } from "./stepWords";
export type { SheetChart } from "./sheetCharts";
